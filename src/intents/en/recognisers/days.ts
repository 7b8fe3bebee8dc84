/** The days around the dinner: how big, what to buy, what is in the house, who comes later, ahead of time. */
import type { Appetite } from '../../../kitchen/heard.ts';
import { stemsOf } from '../../names.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { choreIn } from '../chores.ts';
import { dishIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';

/** Heads that a question names: "for eight", "eight people". */
function headsIn(match: Match): number | undefined {
  const mark =
    /\bfor (?:about )?(<n\d+>)/.exec(match.line)?.[1] ??
    /(<n\d+>) (?:people|guests|of us|adults|heads|persons)/.exec(match.line)?.[1];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  const value = quantity && 'value' in quantity ? quantity.value : undefined;
  return value !== undefined && Number.isInteger(value) && value > 0 ? value : undefined;
}

function appetiteIn(line: string): Appetite | undefined {
  if (/\b(hungry|hearty|big eaters|big appetites|good eaters|teenagers|starving)\b/.test(line))
    return 'hearty';
  return /\b(light eaters|small appetites|small eaters|lots of sides|many sides)\b/.test(line)
    ? 'light'
    : undefined;
}

/** A cut named in full in the question: "how big a leg of lamb". */
function cutIn(match: Match): string | undefined {
  const line = ` ${match.line}`;
  const found = match.context.lexicon.cuts
    .flatMap((cut) => cut.names.map((name) => ({ id: cut.id, name: name.toLowerCase() })))
    .filter(({ name }) => name.includes(' ') && line.includes(` ${name} `))
    .sort((a, b) => b.name.length - a.name.length)[0];
  return found?.id;
}

const sizeAsked = (match: Match): Meaning | undefined => {
  const line = ` ${match.line}`;
  if (/ (oven|tin|pan|board|table|fridge|slices?|pieces|chunks|tray|rack|dish|pot) /.test(line))
    return undefined;
  const guests = headsIn(match);
  const appetite = appetiteIn(line);
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
  const chore = choreIn(match.line.replace(/^.*?\b(?=salt|season|brine|dry brine)/, ''));
  return { intent: 'ask-how', topic: chore ?? 'salt-ahead' };
};

const meat = '(roast|joint|meat|beef|lamb|pork|rib|ribs|rib roast|prime rib|bird|piece|cut)';

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
      ],
      (match) =>
        /forg|miss|left out|leaving|overlook/.test(match.line)
          ? { intent: 'ask-guests', about: 'forgotten' }
          : undefined,
    ),
    ...phrases(
      [
        '(what|who) (do|have) you (noted|got|know|written|have) [down] [about|for|of|on] [the|my|our] (guests|guest|table|people|anyone)',
        '(who|what) (can not|does not|do not|must not) [anyone|anybody] (eat|have) (what|pink|meat|it pink)',
        '(who|what) (is|are) (allergic|the allergies|vegetarian|pregnant)',
        '(remind me|tell me|say back) [again] (of|about|who|what) [is|you have noted about] [the|my|our] (guests|table|coming)',
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
  ],
};

/** The ingredient of the cards that words name in full, or by its last or first word. */
function ingredientNamed(words: string, match: Match): string | undefined {
  const wanted = stemsOf(words).join(' ');
  if (wanted === '') return undefined;
  const names = match.context.lexicon.ingredients.flatMap((one) =>
    [one.id, ...one.names].map((name) => ({ id: one.id, stems: stemsOf(name).join(' ') })),
  );
  const exact = names.find(({ stems }) => stems === wanted);
  const partly = names.find(
    ({ stems }) => stems.endsWith(` ${wanted}`) || stems.startsWith(`${wanted} `),
  );
  return (exact ?? partly) && words;
}

const participle =
  /^(made|done|put|got|taken|started|finished|been|left|cut|washed|scrubbed|peeled|prepared|seasoned|salted|dried|turned|checked|not|no|to|a (problem|question|feeling)|two|three)\b/;

/** What is in the house; without a word that says so, only what a card asks for and no dish is. */
const inTheHouse =
  (surely: boolean) =>
  (match: Match): Meaning[] | undefined => {
    if (/<[wntdc]\d+>/.test(match.line)) return undefined;
    const things = match
      .words('thing')
      .split(/ (?:and|or|,)(?: and)? /)
      .map((part) => part.replace(/^(the|some|a|an|plenty of|enough|all the|any) /, '').trim())
      .filter((part) => part !== '' && !participle.test(part));
    const meant = things.filter((thing) => {
      if (ingredientNamed(thing, match) === undefined)
        return surely && /^(roast|joint|meat|beef)$/.test(thing);
      return surely || dishIn(thing, match.context) === undefined;
    });
    return meant.length === 0 || meant.length < things.length
      ? undefined
      : meant.map((thing): Meaning => ({ intent: 'have', thing }));
  };

const laterPart =
  '(half|some|most|one|two|three|a few|a couple|the rest|{n:number}) [of] [the|our|my] [guests|them|us|family|people|others|table|$]';

/** Minutes after the table, or the clock time. */
const comesLater = (match: Match): Meaning | undefined => {
  const line = match.line;
  const who =
    /^(half|some|most|one|two|three|four|five|a few|a couple|the rest)\b( of (the |our |my )?(guests|them|us|family|people|others)| the guests| the family)?/.exec(
      line,
    );
  const named = who ? who[0] : match.words('who').replace(/^(my|our|and|but) /, '');
  if (
    named === '' ||
    /^(i|we|it|they|you|dinner|everyone|everybody|guests|the guests|all|food|that|oven|train|the train|he|she)$/.test(
      named,
    )
  )
    return undefined;
  const minutes = match.has('minutes') ? match.minutes('minutes') : undefined;
  const time = match.has('clock') ? match.mealTime('clock') : undefined;
  const value =
    minutes !== undefined && Number.isFinite(minutes) ? String(Math.round(minutes)) : time;
  return {
    intent: 'note-guest',
    who: named.replace(/^half of them$/, 'half of them'),
    need: 'comes-later',
    ...(value ? { value } : {}),
  };
};

/** "I already have butter, thyme and rosemary": a list reaches over commas and "and". */
export const haveList: Recogniser = {
  name: 'have-list',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '^ [but|and] (i|we) (already have|have already got|already got|have plenty of|have enough|have got plenty of|have got enough) {thing:rest} [already|at home|in the house|in the cupboard] $',
        '^ (i|we) (bought|picked up|have bought|have picked up) {thing:rest} $',
        '^ (cross|cross off|strike|strike off|take|tick|tick off) {thing:rest} (off|off the list|off my list|from the list) $',
      ],
      inTheHouse(true),
    ),
  ],
};

export const daysTold: Recogniser = {
  name: 'days-told',
  moods: ['statement', 'negative', 'intention', 'request'],
  phrases: [
    ...phrases(
      [
        '(put|moved|got|taken|transferred|move|took) @it [out of the freezer] [and] (in|into|to) the fridge (to|for) (thaw|thawing|defrost|defrosting)',
        '(@it|^ it) is [now] [in the fridge] (thawing|defrosting) [in the fridge]',
        '@it is in the fridge (thawing|to thaw|defrosting|to defrost)',
        '(started|begun|began) (thawing|defrosting) [@it]',
        '(took|taken|got|moved) @it out of the freezer',
      ],
      (match) => ({ intent: 'report-started', step: 'thaw', ...momentOf(match) }),
    ),
    ...phrases(
      [
        '(@it|^ it) (is|has) not [fully|quite|completely|all|really] (thawed|defrosted)',
        '(@it|^ it) (is|has) [only] (half|partly) (thawed|defrosted)',
        '(still|is) (icy|hard|ice|frozen|solid) in (the middle|the centre|the center|its heart|there)',
      ],
      { intent: 'describe-roast', frozen: true },
    ),
    ...phrases(
      [
        '(@it|^ it) (is|has) [all|fully|completely|now|finally|nicely] (thawed|defrosted) [out|through|$]',
        '(soft|thawed) all [the way] through',
      ],
      { intent: 'report-done', step: 'thaw-check' },
    ),
    ...phrases(
      [
        '(salted|seasoned|brined|dry brined) @it (last night|yesterday|overnight|the night before|for overnight|for tomorrow)',
        '@it (was|is|has been) (salted|seasoned|brined) (last night|yesterday|overnight|the night before|for overnight)',
      ],
      { intent: 'report-done', step: 'salt-ahead' },
    ),
    ...phrases(
      ['(shopping) (is|has been) (done|finished)', '(did|done|finished) [all] the shopping'],
      { intent: 'report-done', step: 'shop' },
    ),
    ...phrases(
      [
        '^ [but|and] (i|we) (already have|have already got|have got|already got|have|still have) [plenty of|enough|some|lots of|a lot of|all the|the] {thing:thing} (already|at home|in the house|in the cupboard|in the pantry|in the fridge|in the freezer|in the garden|to hand|in stock) $',
        '^ [but|and] (i|we) (already have|have already got|already got) [plenty of|enough|some|all the|the] {thing:thing} $',
        '^ [but|and] (i|we) (have|have got|got) (plenty of|enough|lots of|loads of) {thing:thing} $',
        '(cross|strike|take|tick|scratch) [off] [the] {thing:thing} [off] (off|off the|off my|from the|from my) list',
        '(cross off|strike off|tick off) [the] {thing:thing} $',
        '(do not|not) need to (buy|get) [any|more|any more|the] {thing:thing} $',
        '^ (i|we) (bought|picked up|have bought|have picked up) [the|some] {thing:thing} $',
        'there (is|are) (plenty of|enough|some) {thing:thing} (at home|in the house|in the cupboard|in the pantry|in the fridge|in the freezer|already) $',
      ],
      inTheHouse(true),
    ),
    ...phrases(
      ['^ [but|and] (i|we) (have|have got) [some|the] {thing:thing} $'],
      inTheHouse(false),
    ),
    ...phrases(
      [
        '(cooking|roasting|this is|it is|doing this|doing it|feeding|catering) [this] [for] (the public|a church supper|a church dinner|a charity dinner|a charity supper|a restaurant|a cafe|a pub|paying guests|customers|a school|a fundraiser|a wedding|a village fete|a soup kitchen|a care home)',
        '(church|charity|fundraising|parish|village|community) (supper|dinner|lunch|meal)',
        '(selling|sell) (it|this|plates|tickets|the slices)',
        '(paying|ticketed) (guests|customers|diners)',
      ],
      { intent: 'feed-public' },
    ),
    ...phrases(
      [
        `^ ${laterPart} (come|are coming|comes|is coming|arrive|are arriving|will come|will be here|are joining|get here|turn up|will arrive|are|will be) [about|only|at least] {minutes:duration} (later|late|after|after dinner|behind)`,
        `^ ${laterPart} (come|are coming|comes|is coming|arrive|are arriving|will come|will be here|are joining|get here|turn up|will arrive) [only|later|late] (at|by|around) {clock}`,
        '{who:thing} (comes|come|is coming|are coming|arrives|arrive|is arriving|joins us|joins|is joining us|is joining|will come|will arrive|gets here|can only come|only comes) [about|only] {minutes:duration} (later|late|after|after dinner|after the others|after us)',
        '{who:thing} (can only come|only comes|will only be here|can not come before|can not be here before|is only coming|only gets here|comes later|is coming later|joins us|is joining us|joins) [at|by|around|only at|later at] {clock}',
      ],
      comesLater,
    ),
    ...phrases(
      [
        '(there is|we have|i have|one guest has|a guest has|one has|someone has|a guest with|someone with|one with|and) (a|an) [bad|severe|serious|nasty] {value:word} (allergy|intolerance)',
      ],
      (match) => ({ intent: 'note-guest', need: 'allergy', value: match.words('value') }),
    ),
    ...phrases(
      [
        '(i can not|can not) (do|manage|handle) (this|it|it all|all this) [any more|anymore|$|!|.|,]',
        '^ [i|i am going to|i want to] (give up|giving up) $',
        '(i am|i will) (about to cry|going to cry|going mad|losing my mind|so stressed|really stressed|completely lost|totally lost|in over my head)',
        '(this is|it is) [all] (hopeless|a disaster|too hard|impossible|going wrong|falling apart)',
      ],
      { intent: 'report-trouble', trouble: 'overwhelmed' },
    ),
  ],
};
