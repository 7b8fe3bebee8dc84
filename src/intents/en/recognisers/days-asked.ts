/** Questions of the days around: how big, what to ask the butcher, who is forgotten, what is done ahead. */
import type { Appetite } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { choreIn } from '../chores.ts';
import { phrases } from '../vocabulary.ts';
import { clauseWords } from './subjects.ts';

const headsMark = (line: string): string | undefined =>
  /\bfor (?:about )?(<n\d+>) (?!(?:minutes|hours|degrees|pounds|kilos) )/.exec(line)?.[1] ??
  /(<n\d+>) (?:\w+ )?(?:people|guests|of us|adults|heads|persons)/.exec(line)?.[1];

/** Heads that a question names: "for eight", "eight people". */
function headsIn(match: Match): number | undefined {
  const mark =
    headsMark(match.line) ??
    // "Will it be enough, one kilo six, for seven?"
    headsMark(match.whole);
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  const value = quantity && 'value' in quantity ? quantity.value : undefined;
  return value !== undefined && Number.isInteger(value) && value > 0 ? value : undefined;
}

function appetiteIn(line: string): Appetite | undefined {
  if (
    /\b(hungry|hearty|big eaters|big appetites|good appetites?|great appetites?|good eaters|big appetite|teenagers|starving)\b/.test(
      line,
    )
  )
    return 'hearty';
  return /\b(light eaters|small appetites?|little appetites?|poor eaters|do not eat much|eat like birds|small eaters|lots of sides|many sides)\b/.test(
    line,
  )
    ? 'light'
    : undefined;
}

export const headsOf = (match: Match): { guests?: number } => {
  const guests = headsIn(match);
  return guests === undefined ? {} : { guests };
};

/** A cut named in full in the question: "how big a leg of lamb". */
function cutIn(match: Match): string | undefined {
  const line = ` ${match.line}`;
  const found = match.context.lexicon.cuts
    .flatMap((cut) => cut.names.map((name) => ({ id: cut.id, name: name.toLowerCase() })))
    .filter(({ name }) => name.includes(' ') && line.includes(` ${name} `))
    .sort((a, b) => b.name.length - a.name.length)[0];
  return found?.id;
}

export const sizeAsked = (match: Match): Meaning | undefined => {
  const line = ` ${match.line}`;
  if (/ (oven|tin|pan|board|table|fridge|slices?|pieces|chunks|tray|rack|dish|pot) /.test(line))
    return undefined;
  const guests = headsIn(match);
  const appetite = appetiteIn(line) ?? appetiteIn(match.whole);
  const cut = cutIn(match);
  return {
    intent: 'ask-amount',
    ingredient: 'roast',
    ...(guests === undefined ? {} : { guests }),
    ...(appetite ? { appetite } : {}),
    ...(cut ? { cut } : {}),
  };
};

const howTo = (match: Match): Meaning | undefined => {
  if (/^(but |and )?why\b/.test(match.line)) return undefined;
  const chore = choreIn(match.line.replace(/^.*?\b(?=salt|season|brine|dry brine)/, ''));
  return { intent: 'ask-how', topic: chore ?? 'salt-ahead' };
};

const meat = '(roast|joint|meat|beef|lamb|pork|rib|ribs|rib roast|prime rib|bird|piece|cut)';

/** "It sat out for three hours, is it still safe": said or asked, it wants an answer. */
export const stoodOut: Recogniser = {
  name: 'stood-out',
  moods: ['question', 'statement', 'story', 'negative'],
  phrases: [
    ...phrases(
      [
        '(@it|the meat|the leftovers|leftovers|the raw roast) (sat|stood|was|were|has been|have been|has sat|has stood|been) [left|sat|stood|sitting|standing] (out|on the counter|on the side|at room temperature) [of the fridge|on the counter|on the side] [overnight] [for|about] {d:duration} [*]',
        '(@it|the meat|the raw roast) (is|was|has been|have been|been|sat|stood|has sat|has stood) [left|sat|stood|sitting|standing|lying] (in the (car|boot|trunk|bag|shopping|sun|hall|garage|kitchen)|on the (table|worktop|bench|step|doorstep|porch)) [for|about] {d:duration} [*]',
        '(left|leave) @it (out|on the counter|on the side) [of the fridge] [for] {d:duration} [*] [safe|ok|fine]',
      ],
      (match) => {
        const minutes = match.minutes('d');
        // "I have left it out for ten minutes" while it rests is no question of safety.
        const asked = /\b(safe|ok|all right|fine|still good|throw|bin|eat)\b|\?/.test(match.line);
        return asked && Number.isFinite(minutes)
          ? { intent: 'ask-safety', about: clauseWords(match), minutes }
          : undefined;
      },
    ),
    ...phrases(
      [
        '[the|our|some|all the] (leftovers|left overs|leftover meat|leftover roast|leftover beef|leftover lamb|leftover pork|remains) [that] (sat|stood|was|were|is|are|has been|have been|has sat|have sat|has stood|been) [left|still|all|just] [sitting|standing|lying] (out|on the counter|on the side|on the table|at room temperature) [*] [for|about|since] [{d:duration}|{c:clock}]',
        '(forgot|forgotten|left|leave|leaving) [the|all the|our] (leftovers|left overs|leftover meat|leftover roast|remains) [sitting] (out|on|at room temperature) [on|the|counter|table|side] [*] [for] [{d:duration}]',
        '(@meat|they|it|food|the food) (was|were|have been|has been) left out [*] [for|about|since] [{d:duration}|{c:clock}]',
        '(they|it|@meat|the food) (have been|has been|were|was|sat|stood) [sitting|left|standing] out [*] (since (dinner|lunch|supper|tea|noon|the meal|{c:clock})|all (day|afternoon|evening|night|morning)|overnight)',
        '^ [it|they|@meat] (sat|stood|left|been|been sitting|sitting) out [*] (all (day|afternoon|evening|night|morning)|overnight|since (dinner|lunch|supper|tea|last night)) [, (can|could|should|may|is|are|do) [*] [*]]',
      ],
      (match) => {
        // Before it went in, a roast stands out on purpose; after it has come out, none should.
        const named = /left ?overs?|remains/.test(match.line);
        const asked = /\b(safe|ok|all right|fine|still good|throw|bin|eat)\b|\?/.test(match.whole);
        if (
          !named &&
          !asked &&
          !/^(rest|hold|carve|served|put-away)$/.test(match.context.stage ?? '')
        )
          return undefined;
        if (/\b(not|fridge|timer)\b/.test(match.line)) return undefined;
        // "the roast has been out since six, how long must it rest": it came out then, and rests.
        if (
          !named &&
          !/ (safe|eat|throw|bin|(still|be|is (it|that|this)) (still )?(good|ok|fine|all right)) /.test(
            ` ${match.whole}`,
          ) &&
          !/ (sat|stood|sitting|standing|left|table|counter|side|all day|overnight) /.test(
            ` ${match.line}`,
          ) &&
          !/^(served|put-away)$/.test(match.context.stage ?? '')
        )
          return undefined;
        const minutes = match.has('d') ? match.minutes('d') : undefined;
        return {
          intent: 'ask-safety',
          about: named ? clauseWords(match) : `leftovers ${clauseWords(match)}`,
          ...(minutes !== undefined && Number.isFinite(minutes) ? { minutes } : {}),
        };
      },
    ),
  ],
};

export const daysAsked: Recogniser = {
  name: 'days-asked',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        `(how big|how large|how heavy|what size|what weight) [of] [a|an|the|should] [the|a|my] [@cut|${meat}] [*] (for|do|should|does|would|to|must|$|be)`,
        '(how many|how much) (ribs|bones|pounds|kilos|meat|beef|lamb|pork|roast) [of] [beef|lamb|pork|meat|roast] (do|should|will|for|per|would|to buy|a head|each|$)',
        '(is|will) (it|@it|that|{w:weight}|a {w2:weight} [*]) [be] (enough|big enough) (for|$)',
        '(how many|how many people|how many guests) (does|will|can|would) (it|@it|a {w:weight} [*]|{w2:weight}) (feed|serve|do)',
      ],
      (match) =>
        / (weighs?|left|on it|have i|has it|did i|gone) /.test(` ${match.line}`)
          ? undefined
          : sizeAsked(match),
    ),
    ...phrases(
      [
        '[what|anything] [do|should|shall|can|could|must|to] [i|we] (ask|tell|say to|order from|want from) [the|my|a] butcher [for|to] [*] $',
        '(ask|tell|say to|order from|want from) [the|my|a] butcher',
        '[what|can|should] [should|can|will] [the|my] butcher (to do|do|trim|cut|tie|french)',
        '(which|what) (end|grade) [of] [*]',
      ],
      (match) =>
        / (probe|thermometer|string|table|first|fork|marks?) /.test(` ${match.line}`)
          ? undefined
          : { intent: 'ask-shopping', about: 'butcher' },
    ),
    ...phrases(
      [
        '(who|whom) (have|did|else|am|has) [else] [i|we] [been] [forgotten|forget|missed|miss|left out|forgot|leaving out|overlooked|forgetting]',
        '(have|did|am|has) (i|we) (forgotten|forget|missed|miss|left out|overlooked|forgetting|missing) (anyone|anybody|someone|somebody|a guest|any guest)',
        '(anyone|anybody) [else] [i have|we have|i|we] (forgotten|missed|left out|forgot|overlooked)',
        '(who|whom|which of them|which guests) (have|had|did|do) [not] (i|we) [not] [ask|asked|check|checked|note|noted] [you] (about|for) [their|the] (allergies|allergy|diets|diet|needs) [yet|left out|$] ',
        '(did|have|do) (i|we) (skip|skipped) (anyone|anybody|someone|somebody|a guest) ',
        '(have|do) you (got|have|know) (everyone|everybody) is (allergies|diets|needs) ',
      ],
      (match) =>
        /forg|miss|left out|leaving|overlook|skip|^ (have|do) you .*(allerg|diet|need)| not .*(allerg|diet|need)/.test(
          ` ${match.line}`,
        )
          ? { intent: 'ask-guests', about: 'forgotten' }
          : undefined,
    ),
    ...phrases(
      [
        '(what|who) (do|have) you (noted|got|know|written|have) [down] [about|for|of|on] [the|my|our] (guests|guest|table|people|anyone)',
        '(who|what) (can not|does not|do not|must not) [anyone|anybody] (eat|have) (what|pink|meat|it pink)',
        '(who|what) (is|are) (allergic|the allergies|vegetarian|pregnant)',
        '(remind me|tell me|say back) [again] (of|about|who|what) [is|you (know|noted|have noted|have) [down]] [about|of|on] [the|my|our] (guests|table|coming)',
      ],
      { intent: 'ask-guests' },
    ),
    ...phrases(
      [
        '(should|shall|can|do|must|could|may) (i|we) (salt|season|dry brine|brine) [it|@it] (ahead|overnight|the night before|today|tonight|the day before|early|in advance|now|yet) ',
        '(when|how far ahead|how early|how long before) (do|should|can|must|shall) (i|we) (salt|season|brine) [it|@it]',
        '(should|shall|can|do) (i|we) (dry brine|brine) [it|@it]',
      ],
      howTo,
    ),
    ...phrases(
      [
        '(what|which dishes|how much) (can|could|should|may) (i|we) (do|make|get|prepare) [done] (ahead|in advance|the day before|tonight|today|the night before|beforehand)',
        '(can|could|should|may) (i|we) (make|do|prepare) [the] {thing:thing} (ahead|in advance|the day before|tonight|the night before|beforehand)',
      ],
      { intent: 'ask-how', topic: 'make-ahead' },
    ),
    ...phrases(
      [
        '(how long|how many days|how well) (do|does|will|can|should|would) [the|my|a] (leftovers|left overs|leftover|rest|cooked meat|cooked beef|raw roast|stock|cold roast|slices|@meat) (keep|last|stay good|be kept|stay safe|be good|be left out)',
        'how long (can|may|could|should) (i|we|it|@it) [be] (hold|held|keep warm|kept warm|wait) [it|@it] [warm|hot] [for|$]',
        '(should|can|must|do) (i|we) [need to] (rinse|wash) [it|@it]',
        '(what if|what do i do if|what should i do if|what happens if) * (allergic reaction|allergy)',
        '[can|could|should|may|do] [i|we] [serve|sell|give|cook|hold] [it|@it|this] [rare|pink|at {x:temperature}] [degrees] [to|for] (customers|the public|paying guests|food service|a restaurant|restaurants)',
      ],
      (match) => ({ intent: 'ask-safety', about: clauseWords(match) }),
    ),
    ...phrases(
      [
        'what (do|can|should|could) (i|we) (do|make) with [all] [the|these|my] (bones|bone|carcass)',
      ],
      { intent: 'ask-how', topic: 'stock' },
    ),
    ...phrases(
      [
        'what (do|can|should|could) (i|we) do with [all] [the|these|my] (leftovers|left overs|rest of @it)',
        'how (do|should|can) (i|we) (portion|store|keep|pack|box up) [the|all the|my] (leftovers|left overs|rest)',
      ],
      { intent: 'ask-how', topic: 'portion' },
    ),
    ...phrases(
      [
        '(is|will) (it|@it) [be] [fully|quite] (thawed|defrosted) [yet|by then|in time|by {date}]',
        'how long (does|will|until|till|before) [it|@it] [is|take|takes] [to] (thaw|defrost|thawed|defrosted)',
        'has (it|@it) (thawed|defrosted) [yet]',
      ],
      { intent: 'ask-time-left', about: 'thaw-check' },
    ),
    ...phrases(
      [
        'how (do|can|would) (i|we) (know|tell|check|test|find out) [if|that|whether] [the|my|our] (thermometer|probe) [is|reads|works] [right|true|accurate|off|correct|properly]',
        'is (my|the) (thermometer|probe) (right|accurate|true|off|correct)',
      ],
      { intent: 'ask-how', topic: 'check-thermometer' },
    ),
    ...phrases(
      [
        '[what|at] [temperature|what temperature] [is|does|do|should|will] [the|my] (water boil|boiling point|water be boiling) [of water] [at|be|here|read|up here] [*]',
        '(where|when) does water boil [at|up] [here|{n:number}] [feet|metres|meters|$]',
      ],
      (match) => {
        const mark =
          /(<[nw]\d+>) ?(feet|foot|ft|metres|meters|m)\b/.exec(match.whole) ??
          /(<[nw]\d+>)()/.exec(match.line);
        const quantity = mark ? match.quantityOfMark(mark[1] ?? '') : undefined;
        const altitude = quantity && 'value' in quantity ? quantity.value : undefined;
        const unit = !mark?.[2] ? undefined : /^f/.test(mark[2]) ? 'ft' : 'm';
        return {
          intent: 'ask-temperature',
          about: 'boiling',
          ...(altitude === undefined ? {} : { altitude }),
          ...(unit ? { altitudeUnit: unit } : {}),
        };
      },
    ),
    ...phrases(
      [
        '(how|when) (do|should|can|would|long do|must) (i|we|you) [start to|begin to] (thaw|defrost|thawing|defrosting) [it|@it] [in (cold water|water|the sink|the fridge)]',
        'when (do|should|must|can) (i|we) (take|get|move|put) @it (out of the freezer|in the fridge|into the fridge)',
        'how (do|should|can|would) (i|we|you) (reheat|warm up|heat up) [it|@it|the rest|the slices|the leftovers|what is left] [again|tomorrow|$]',
        'how (do|should|can|would) (i|we|you) (make|boil) [a|the|some] [bone] (stock|broth) [from|out of|with] [the|these] [bones]',
      ],
      (match) =>
        /^when/.test(match.line)
          ? { intent: 'ask-time-left', about: 'thaw' }
          : {
              intent: 'ask-how',
              topic: /stock|broth/.test(match.line)
                ? 'stock'
                : /reheat|warm|heat/.test(match.line)
                  ? 'reheat'
                  : /water|sink/.test(match.line)
                    ? 'thaw-water'
                    : 'thaw',
            },
    ),
  ],
};
