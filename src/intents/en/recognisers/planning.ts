/** What is cooked, for whom, when and how: roast, serving time, guests, doneness, dishes. */
import type { Doneness } from '../../../kitchen/heard.ts';
import { mealTime } from '../../moment.ts';
import { nameIn } from '../../names.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishIn, dishOrAsSaid, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const tell = ['statement', 'request', 'intention'] as const;

export const units: Recogniser = {
  name: 'units',
  moods: tell,
  phrases: [
    ...phrases(
      [
        '(use|in|switch to|switch over to|speak|work in|change to|go|we use|i use|talk|think in|do|give me|prefer|i work in|set|stick to|have it in|i think in|only speak) [it in|temperatures in|the temperature in|everything in|degrees in|degrees] (celsius|c|metric|fahrenheit|f|imperial|american|kilos|pounds) [and (kilos|pounds|celsius|fahrenheit)] [units|degrees]',
        '^ (celsius|fahrenheit|metric|imperial|kilos|pounds) [units] [and (kilos|pounds|celsius|fahrenheit)] $',
        '^ (celsius|fahrenheit|metric|kilos) not (fahrenheit|celsius|imperial|pounds)',
      ],
      (match) => {
        const said = match.line.replace(/ not .*/, ' ');
        const temperature = /celsius|metric| c /.test(` ${said}`)
          ? 'C'
          : /fahrenheit|imperial|american| f /.test(` ${said}`)
            ? 'F'
            : undefined;
        const weight = /kilos|metric/.test(said)
          ? 'kg'
          : /pounds|imperial|american/.test(said)
            ? 'lb'
            : undefined;
        return temperature || weight
          ? {
              intent: 'set-units',
              ...(temperature ? { temperature } : {}),
              ...(weight ? { weight } : {}),
            }
          : undefined;
      },
    ),
  ],
};

export function donenessOf(words: string): Doneness | undefined {
  if (
    /medium( |-)?rare|between rare and medium|pink/.test(words) &&
    !/no pink|not pink/.test(words)
  )
    return 'medium-rare';
  if (/medium( |-)?well/.test(words)) return 'medium-well';
  if (/well( |-)?done|cooked through|no pink|all the way through|no blood/.test(words))
    return 'well-done';
  if (/medium/.test(words)) return 'medium';
  if (/rare|bloody|mooing|blue/.test(words)) return 'rare';
  return undefined;
}
const donenessWords =
  '(medium rare|medium well [done]|medium|rare|well done|pink|nice and pink|a bit pink|a little pink|pink in the middle|cooked through|blue|still mooing|rare to medium rare|no pink)';

/** Words of a wish before it: "I'd like it rare" and "aiming to eat at eight" speak of all. */
const notAGuest =
  /\b(would|will|aiming|planning|hoping|going|want|wants|to|let|think|should|i|we)\b/;

export const notes: Recogniser = {
  name: 'notes',
  moods: ['statement', 'negative', 'intention', 'request'],
  phrases: [
    ...phrases(
      [
        `{who:thing} (wants|want|likes|like|would like|prefers|prefer|has|have|takes|needs|eats|will have|will want|will only eat|is having) (his|hers|her|their|theirs|it|his slice|her slice|meat|his meat|hers cooked|his cooked|their meat|her beef|his beef|their beef|one|his bit|her bit|theirs done|his done) [done|cooked|to be] (well done|rare|medium rare|medium well|medium|cooked through|pink|well cooked|blue|no pink)`,
        '(well done|rare|medium rare|medium well|medium) for {who:thing} $',
      ],
      (match) => {
        const who = person(match.words('who'));
        const value = /well cooked/.test(match.line)
          ? 'well-done'
          : donenessOf(match.line.slice(match.line.indexOf(who)));
        if (
          notAGuest.test(who) ||
          /^(i|we|us|everyone|everybody|all|you|it|all of us|me)?$/.test(who)
        )
          return undefined;
        return value ? { intent: 'note-guest', who, need: 'doneness', value } : undefined;
      },
    ),
    ...phrases(
      [
        '{who:thing} (eat|eats|eating|need to eat|needs to eat|have to eat|will eat|want to eat|are eating|is eating|have their tea|has his tea|has her tea|must eat|need feeding|want feeding|needs feeding|need their dinner|want their dinner|need their tea) [first|early|earlier|separately] [at|by|before|around] {clock}',
      ],
      (match) => {
        const who = person(match.words('who'));
        const value = match.mealTime('clock');
        if (
          !who ||
          notAGuest.test(who) ||
          /^(i|we|us|everyone|everybody|you|all|all of us|let us|dinner|are|is|am|be|will|will be|want to|(i|we|you) (am|are|will|will be|want to))$/.test(
            who,
          )
        )
          return undefined;
        return value ? { intent: 'note-guest', who, need: 'eats-at', value } : undefined;
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has got|has) [a bit|very|severely|badly] (allergic to|intolerant to|intolerant of) {value:thing} $',
        '{who:thing} (has|have|has got|got) (a|an) [bad|severe|serious] {value:word} (allergy|intolerance)',
        '{who:thing} (can not|must not|does not|do not|should not) (eat|have|touch|do|tolerate|handle) [any] {value:thing} $',
        '{who:thing} (is|are) (coeliac|celiac|lactose intolerant|dairy free|gluten intolerant|nut free) ',
        '(nut|dairy|gluten|egg|shellfish|mustard|milk|garlic|peanut|wheat) (allergy|allergies) (at the table|for {who:thing}|tonight) $',
      ],
      (match) => {
        const who = person(match.words('who'));
        if (
          /^(i|we|it|they|you|the .*oven)$/.test(who) &&
          !/allerg|coeliac|celiac|intoleran|gluten|dairy|nuts/.test(match.line)
        )
          return undefined;
        const value =
          match.words('value') ||
          /(coeliac|celiac|lactose|dairy|gluten|nut|egg|shellfish|mustard|milk|garlic|peanut|wheat)/.exec(
            match.line,
          )?.[1];
        return value
          ? { intent: 'note-guest', ...(who ? { who } : {}), need: 'allergy', value }
          : undefined;
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has gone|has turned|has become|went|have gone|is a|are both|is now) [now|a|an|both] (vegetarian|vegan|veggie|pescatarian|kosher|halal|gluten free|keto|vegetarians|vegans|teetotal|muslim|jewish|hindu|pescetarian)',
        '{who:thing} (does not|do not|will not) eat (meat|beef|red meat|pork|lamb|dairy|gluten|fish)',
        '{who:thing} (is|are) [a|an] (vegetarian|vegan)',
        '(one|two|{n:number}) (vegetarian|vegan|vegetarians|vegans|veggie)',
      ],
      (match) => {
        const who = person(match.words('who'));
        const value =
          /(vegetarian|vegan|veggie|pescatarian|pescetarian|kosher|halal|gluten free|keto)/.exec(
            match.line,
          )?.[1] ?? (/meat|beef/.test(match.line) ? 'vegetarian' : 'diet');
        return { intent: 'note-guest', ...(who ? { who } : {}), need: 'diet', value };
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are) [six months|heavily|very|now|a bit|quite|over] (pregnant|expecting|immunocompromised|elderly|frail|having chemo|on chemo|immunosuppressed|breastfeeding|undergoing chemo|diabetic|poorly|in her eighties|in his eighties|in her nineties|over eighty|having chemotherapy|on chemotherapy|on immunosuppressants)',
        '{who:thing} (is|are|is nearly|is about to be) {n:number} [years old|$]',
        '(there is|we have|i have|there will be|we will have) (a|an|one) (pregnant|toddler|baby|elderly) [woman|guest|lady|person|friend|$]',
        'one of (them|us|the guests|my guests|our guests) is (pregnant|expecting|immunocompromised)',
      ],
      (match) => {
        const who = person(match.words('who'));
        if (
          match.has('n') &&
          (match.number('n') < 70
            ? !/(toddler|baby|son|daughter|niece|nephew|grandson|granddaughter|kid)/.test(who) ||
              match.number('n') > 6
            : !isPerson(who))
        )
          return undefined;
        return { intent: 'note-guest', ...(who ? { who } : {}), need: 'vulnerable' };
      },
    ),
  ],
};

const people =
  /\b(dad|mum|mother|father|gran|granny|grandma|grandad|grandpa|nan|nana|sister|brother|wife|husband|aunt|auntie|uncle|cousin|niece|nephew|son|daughter|kids|children|toddler|baby|neighbour|guest|friend|she|he)\b/;
const isPerson = (who: string): boolean => people.test(who);
const person = (words: string): string =>
  words
    .replace(/^(and|oh|my|our|the|so|because|note that|remember|remember that|also) /, '')
    .replace(/^(my|our|the) /, '')
    .trim();

export const guests: Recogniser = {
  name: 'guests',
  moods: ['statement', 'intention', 'request', 'negative'],
  phrases: [
    ...phrases(
      [
        '@guests (is|are|have|has|is all|are all|have all|has all|all) [just|all|now|finally] (here|arrived|turned up|shown up|come|pulled up|through the door|got here|at the door|come in|in the house|landed|present|made it) [now|already|early|$]',
        '(they|everyone|everybody|the lot of them|people) (is|are|have|has) [just|all|now] (here|arrived|turned up|at the door|got here|come|through the door|landed|all here|all arrived|pulled up|pulling up|parking|on the doorstep) [now|already|early] $',
        '(that is|there goes|there is) (the doorbell|the door|them)',
        '(doorbell|the bell) (just|has|is) [just] (gone|rang|ringing|went)',
        '(guests|the guests|everyone|everybody|they|company|my parents|the in laws) (arrived|turned up|got here|showed up|just arrived|just got here|just walked in|walked in) [just|now|early|$]',
        '(here they are|they are all here|we are all here)',
      ],
      // "half of them are here" is not everybody.
      (match) =>
        / (half|some|most|few|couple|several) /.test(` ${match.line}`)
          ? undefined
          : { intent: 'report-guests', state: 'arrived' },
    ),
    ...phrases(
      [
        '[@guests|they|everyone|everybody|people|we] (is|are|is all|are all|have|has) [just|all|now|already] (sitting down|seated|sat down|at the table|sitting|sat|sat at the table|taking their seats|round the table|around the table|settled at the table|in their seats|at the dinner table)',
      ],
      { intent: 'report-guests', state: 'seated' },
    ),
    ...phrases(
      [
        '(half|some|most|a few|a couple|several) [of] [them|the guests|our guests|the family|us|people] (is|are|have|has) [just|now|already] (here|arrived|turned up|come|got here)',
        '{n:number} [of] [them|the guests|guests|people|of them] (is|are|have|has) [just|now|already] (here|arrived|turned up|come|got here|at the door)',
        '(dad|mum|gran|{who:word}) (is|has) [just|already] (here|arrived|turned up) [,|but] (the others|the rest) (are not|have not)',
      ],
      (match) => {
        const count = match.has('n') ? match.count('n') : undefined;
        return {
          intent: 'report-guests',
          state: 'partly-arrived',
          ...(count === undefined ? {} : { count }),
        };
      },
    ),
    ...phrases(
      [
        '{n:number} (more|extra|additional|extras) [people|guests|friends|for dinner|of them|heads|mouths|plates|$] [is|are|will be] [coming|joining|turning up|on the way|for dinner|$]',
        '(another|an extra|an additional|plus|add|and another|there is another|there are another|we have another|we have got another) {n:number} [people|guests|for dinner|friends|more|coming|to the table|$] [is|are|coming|joining|$]',
        '{n:number} (extra|more|others|friends|people) (are|is|have) (coming|joining|joining us|invited|turning up)',
        '(bringing|invited|have invited|brought) {n:number} [more|extra|friends|people|others]',
      ],
      (match) => {
        const change = match.count('n');
        if (
          change === undefined ||
          / (minutes|hours|degrees|pounds|bones?|potatoes|kilos|option) /.test(` ${match.line}`)
        )
          return undefined;
        return { intent: 'set-guests', change };
      },
    ),
    ...phrases(
      [
        '(one more|an extra one|an extra person|an extra guest|one extra|another person|another guest|another one|someone else) [is|are] [coming|joining [us]|for dinner|person|guest]',
        '(bringing|brings|is bringing|invited|have invited) (a friend|a date|a plus one|her boyfriend|his girlfriend|a guest|someone)',
        'plus one $',
      ],
      (match) =>
        /minutes|hour/.test(match.line) ? undefined : { intent: 'set-guests', change: 1 },
    ),
    ...phrases(
      [
        '(a couple more|another couple|a couple extra|a couple of extra) [people|guests|are|is|of|coming|joining|for dinner]',
      ],
      { intent: 'set-guests', change: 2 },
    ),
    ...phrases(
      [
        '{n:number} (fewer|less|down) [people|guests|of us|for dinner|$]',
        '{n:number} [of them|of the guests|people|guests|of us] (can not|could not|are not|is not|will not|have) (make it|coming|come|be coming|be able to make it|be here|cancelled|dropped out|pulled out|joining [us])',
        '(minus|lose|take off|drop) {n:number} [people|guests]',
        '{n:number} (dropped out|have dropped out|cancelled|have cancelled|pulled out|have pulled out)',
      ],
      (match) => {
        const count = match.count('n');
        return count === undefined || /minutes|pounds|degrees/.test(match.line)
          ? undefined
          : { intent: 'set-guests', change: -count };
      },
    ),
    ...phrases(
      [
        '(one fewer|one less|one down|one of them can not make it|one of them is not coming|one person less|one less person)',
        '{who:thing} (can not|could not|is not|will not be|is not going to|will not) (make it|coming|come|be coming|joining us|come tonight|be here|be joining us) [tonight|today|after all|any more|anymore|now|$]',
        '{who:thing} (has cancelled|cancelled|has dropped out|dropped out|has pulled out|is ill and not coming|bailed|has bailed)',
      ],
      (match) => {
        const who = match.words('who');
        if (/^(i|it|we|you|they|that)$/.test(who)) return undefined;
        return { intent: 'set-guests', change: -1 };
      },
    ),
    ...phrases(
      [
        '{n:number} (adults|grown ups|grownups|big ones) [and|,|plus] {m:number} (kids|children|little ones|littlies|toddlers|babies|teenagers)',
      ],
      (match) => ({ intent: 'set-guests', count: match.number('n') + match.number('m') }),
    ),
    ...phrases(
      [
        '(there will be|there is going to be|there are going to be|there are|we are|we will be|it is|it will be|it is for|there is|we have|we have got|i have|i have got|now there are|that makes|that is|makes|make it|we are going to be|having|expecting|we are expecting|i am expecting|serving|feeding|cooking for|it is just|i am cooking for|i am feeding|we are feeding|dinner is for|the table is for|laying for|catering for|table for|party of|a party of|group of|down to|up to|now|count on|call it) [now|only|all|about] {n:number} [hungry] (of us|people|guests|persons|heads|adults|at the table|for dinner|to dinner|coming|coming for dinner|eating|mouths|mouths to feed|diners|round the table|tonight|coming to dinner|$) ',
        '(dinner|supper|lunch|roast|meal|food|tea|it|cooking|table|party|served|serve) for {n:number} [people|of us|guests|adults|persons|$] ',
        'for {n:number} [hungry] (people|of us|guests|adults|persons|heads|mouths|diners)',
        '{n:number} (of us|people|guests|diners|heads|adults|persons|mouths to feed|at the table|for dinner|eating|coming)',
        '(feeds|feed|feeding|serves|serve) {n:number} [people|$]',
        '(cooking for|party of|table of|group of) {n:number}',
      ],
      (match) => {
        const count = match.count('n');
        const said = match.groups.n!;
        const after = match.line.slice(match.line.indexOf(said) + said.length);
        if (
          count === undefined ||
          count < 1 ||
          /^(minutes|hours|degrees|pounds|bones?|ribs?|percent|pm|oclock|to|at (?!<)|or|and a|%|°|hundred|thousand)/.test(
            after,
          )
        )
          return undefined;
        if (
          / (it is|that is|call it|make it|now|up to|down to) <n\d+> $/.test(` ${match.line}`) &&
          match.context.expecting !== 'guests'
        )
          return undefined;
        return { intent: 'set-guests', count };
      },
    ),
    // "dinner at seven for six": once the hour is taken, the number left over is of heads.
    ...phrases(
      [
        '^ [and|it is|that is|tonight|this evening|today] for {n:number} [people|of us|guests] [tonight|this evening|today] $',
        '^ for {n:number}',
      ],
      (match) => {
        const count = match.count('n');
        const hourHeard = match.before.some(
          (one) => one.intent === 'set-serving-time' || one.intent === 'describe-roast',
        );
        return count === undefined ||
          count < 1 ||
          !(hourHeard || match.context.expecting === 'guests')
          ? undefined
          : { intent: 'set-guests', count };
      },
    ),
    ...phrases(['(just the two of us|the two of us|both of us)'], {
      intent: 'set-guests',
      count: 2,
    }),
  ],
};

const shift = (match: Match, sign: number): Meaning | undefined => {
  const minutes = match.minutes('minutes');
  return Number.isFinite(minutes) && minutes !== 0
    ? { intent: 'shift-serving', minutes: sign * minutes }
    : undefined;
};

export const serving: Recogniser = {
  name: 'serving',
  moods: tell,
  phrases: [
    ...phrases(
      [
        `(@guests|they|everyone|everybody|{who:word}|train|the train|their train|their flight) (is|are|will be|is going to be|are going to be|have been|has been|is running|are running|running|will all be|might be|could be) [running|all|about|going to be|at least|another] {minutes} (late|later|behind|delayed|away|out|or so late)`,
        '(@guests|they|everyone|everybody|{who:word}) (is|are|will be|is running|are running|running) [running] (late|delayed|held up|behind|stuck in traffic|stuck) [by|,|about|for|another|maybe|of] {minutes}',
        '(guests|they|people|everyone|family) [is|are] {minutes} (late|behind|delayed|away)',
        '(guests|everyone|they) (will come|are coming|arrive|will arrive|get here|will get here|coming|will be here) {minutes} late',
        '(push|shove|put|move|shift|knock|set|slide|bump|delay|postpone|hold|pull) [@dinner|it|that|everything|the whole thing|things|serving|us|the time] (back|out|later|off|along|by|on) [by|for|another|about|maybe|a further] {minutes} [later|$]',
        '(delay|postpone|hold|hold off|stall) [on] [@dinner|it|everything|things|serving|the whole thing] [for|by|another|a further] {minutes}',
        '[make it|make dinner|have dinner|dinner|eat|serve|lunch|supper|let us eat|we will eat|we eat|serving|dinner is|dinner will be|everything|say|do it|we are eating|food|we are going to eat] {minutes} later',
        '(need|give me|buy me|we need|they need|i need) [another|an extra] {minutes} [more|extra] (before dinner|before we eat|before serving|till dinner|till we eat|before they (arrive|get here|come))',
        '(push|move|put|slide) [@dinner|it|everything] {minutes} (back|later|out)',
        '(stuck in traffic|held up|flat tyre|flight is delayed|train is delayed|missed the train|delayed) [,|by|for|and] * [another|about|late|be] {minutes}',
        '(guests|they|everyone) (need|want|asked for|have asked for|will need) [another|an extra] {minutes} [more|$]',
        'late by {minutes}',
        'dinner is delayed [by] {minutes}',
      ],
      (match) =>
        /\b(i|we|me)$/.test(match.words('who')) ||
        /^(it|that|there|oven|potatoes|beans|roast|dinner|he said|what|i|we)$/.test(
          match.words('who'),
        ) ||
        /early|sooner|earlier/.test(match.line)
          ? undefined
          : shift(match, 1),
    ),
    ...phrases(
      [
        '(@guests|they|everyone|everybody|{who:word}) (is|are|will be|is going to be|are going to be|came|arrived|is here|are here|arriving|coming|are arriving|are coming|will get here|get here|running|are running|turned up) [running|all|about|going to be|here] [early by] {minutes} (early|earlier|sooner|ahead|ahead of time)',
        '(bring|move|pull|shift|push|put) [@dinner|it|everything|things|the whole thing|serving] (forward|up|earlier|ahead|sooner) [by|about|a] {minutes}',
        '[make it|make dinner|have dinner|dinner|eat|serve|lunch|supper|let us eat|we will eat|we eat|everything|serving|we want to eat|we are eating|ready|be ready|have it ready] {minutes} (earlier|sooner|early)',
        '(push|move|bring) [@dinner|it|everything] {minutes} (forward|earlier|up|sooner)',
      ],
      (match) => (/^(it|that|oven|what)$/.test(match.words('who')) ? undefined : shift(match, -1)),
    ),
    ...phrases(
      [
        '[@dinner|we|serve|have it ready|ready|eat|eating|serving|want it|table|on the table|sit down|sitting down|dinner is|dinner will be|we are eating|we will eat|we want to eat|to eat|move dinner|push dinner|make dinner|move it|push it|push dinner back|move dinner back|bring it forward|bring dinner forward|push it back|delay dinner|make it|let us eat|aim|aiming|aiming to eat|planning to eat|plan to eat|everything ready|food on the table|plates on the table|sit down to eat|delay it|let us say|change dinner|change it|change the time|have dinner|have lunch|have supper|want to eat|want to serve|dinner now|make that] [on|for|is|will be|now|ready|back|it|us] [{date}] (at|for|by|to|till|around|before|is|time is) [{when:date} at] {clock} [[on|for|,] {day:date}]',
      ],
      timeMeaning,
    ),
    ...phrases(
      [
        '(@dinner|eat|eating|serve|serving|on the table|sit down|ready|we eat) [on|for|is|will be|now] [{date}] {clock:face} [{day:date}]',
        '^ (make it|make that|let us say|let us make it|say|at|by|for|around|we said|how about|shall we say|change it to|let us do|we would like|ideally|aiming for|aim for|we are aiming for|call it|it is at|it is) [{date} at] {clock:face} [{day:date}] [instead|then|$]',
        '^ [{date}] [at] {clock:face} [for (dinner|lunch|supper|tea)] [{day:date}] $',
        '(at|by|for) {clock:face} [{day:date}]',
        '{date} (at|by|around) {clock} [for dinner|$]',
        '(@dinner|eating|serving) {clock:number} [{date}] $',
      ],
      timeMeaning,
    ),
  ],
};

function timeMeaning(match: Match): Meaning | undefined {
  const quantity = match.quantity('clock');
  const line = ` ${match.line}`;
  const said = match.groups.clock!;
  const after = line.slice(line.indexOf(said) + said.length);
  if (quantity?.kind === 'number') {
    if (
      /^(people|of us|guests|degrees|pounds|bones?|ribs?|minutes|hours|adults|persons|kilos|more|celsius|fahrenheit)/.test(
        after,
      )
    )
      return undefined;
    const before = line.slice(0, line.indexOf(said));
    if (
      / for $/.test(before) &&
      !/ (at|time) /.test(before) &&
      !/^(on|tonight|tomorrow|<y)/.test(after) &&
      !/(dinner|it|back|move|change|aim\w*|ready) for $/.test(before)
    )
      return undefined;
    if (
      /(dinner|lunch|supper|roast|table|cooking|food|meal|tea) for $/.test(before) &&
      !quantity.face
    )
      return undefined;
    if (
      / (went|put|came|started|roast in|oven|reads?|reading|degrees|temperature|turned|pull|option) /.test(
        before,
      )
    )
      return undefined;
    if (/ (back|forward|on|out) by $/.test(before)) return undefined;
    if (/ (to|it|that|is) $/.test(before) && quantity.value > 24 && !quantity.face)
      return undefined;
    if (
      !/(@|dinner|supper|lunch|tea|eat|serv|table|sit|ready|meal|food|aim|time|say|want it|make it|move|push)/.test(
        before,
      ) &&
      match.context.expecting !== 'serving-time' &&
      !match.before.some((one) => one.intent === 'set-guests')
    )
      return undefined;
    if (
      /(make it|make that|let us say|aim|want it|move it|push it) /.test(before) &&
      match.context.expecting !== undefined &&
      match.context.expecting !== 'serving-time' &&
      !/ at $/.test(before)
    )
      return undefined;
    if (/(oven|turned|degrees|down) /.test(line) && !/(dinner|eat|serv)/.test(before))
      return undefined;
  } else if (
    /(went|put|came|started|since|been|ago|took|turned|resting|arriv|kids|in at|leav|out at)/.test(
      line.slice(0, line.indexOf(said)),
    )
  )
    return undefined;
  const face = match.face('clock');
  if (!face) return undefined;
  const date = match.date('date') ?? match.date('when') ?? match.date('day') ?? match.dateNearby();
  return {
    intent: 'set-serving-time',
    time: mealTime(face, match.context),
    ...(date ? { date } : {}),
  };
}

const cutWords: readonly [RegExp, string][] = [
  [/strip ?loin|strip roast|new york strip/, 'strip-loin'],
  [/tenderloin|fillet/, 'tenderloin'],
  [/eye (of )?round/, 'eye-of-round'],
  [/top ?(round|side)/, 'top-round'],
  [/lamb/, 'leg-of-lamb'],
  [/pork/, 'pork-loin'],
  [/rib|prime/, 'rib-roast'],
  [/sirloin/, 'strip-loin'],
];

function cutOf(line: string, match: Match): string | undefined {
  const found = cutWords.find(([shape]) => shape.test(line));
  if (!found) return undefined;
  const known = match.context.lexicon.cuts.some((cut) => cut.id === found[1]);
  if (known) return found[1];
  const named = nameIn(match.context.lexicon.cuts, found[0].exec(line)![0]);
  return named ?? (found[1] === 'eye-of-round' ? 'eye-round' : found[1]);
}

const prepared: readonly [RegExp, 'whole' | 'tied-back' | 'rolled' | 'stuffed' | 'tenderised'][] = [
  [/tied back|cut off and tied|bones? tied|cut off the bone and tied/, 'tied-back'],
  [/rolled|boned and rolled/, 'rolled'],
  [/stuffed/, 'stuffed'],
  [/tenderised|needled|jaccarded/, 'tenderised'],
  [/\bwhole\b/, 'whole'],
];

export const roast: Recogniser = {
  name: 'roast',
  moods: ['statement', 'intention', 'request', 'negative'],
  phrases: [
    ...phrases(
      [
        '[it is|we have|we have got|i have got|i have|i am doing|i am roasting|i am cooking|we are doing|we are having|got|bought|cooking|roasting|doing|starting with|the roast is|the joint is|the beef is|this is|with|it weighs|there is] [a|an|the|one|my|our] [about|big|nice|lovely|small|large|whole|beautiful|half|good|massive|boneless|frozen|bone in] [{w:weight}] [of|,|in weight] [a|,] [beef|bone in|boneless|boned and rolled|boned|rolled|whole|standing|tied|stuffed|frozen|grass fed|dry aged] [{n:number} (bone|bones|boned|rib|ribs|-) [in|,]] [bone in|boneless|boned|rolled|standing|beef|whole|stuffed|frozen|prime] @cut [roast|joint|of beef|of lamb|of pork|of meat] [,] [that is|at|weighing|weighs|is|about|of|it is|which is|with|,] [{v:weight}] [and|with|on] [{m:number} (bones|bone|ribs)]',
        '{n:number} (bone|bones|ribs|rib|boned) [in] [rib|roast|joint|prime rib|standing rib roast|rib roast|$]',
        '(bone in|boneless|boned and rolled|off the bone|on the bone|no bones|rolled|still frozen|it is frozen|frozen solid|tied back|stuffed|tenderised|frozen in the middle)',
        '{w:weight} [of (beef|meat|lamb|pork)] [on the bone|bone in|boneless|$]',
        '{w:weight}',
        '(it is|@it is|comes out|starting|starts|start|it started) [still|at] (starting at|starts at|at|from|coming out of the fridge at|out of the fridge at) {s:temperature} (out of the fridge|from the fridge|to start|fridge cold|to start with|in the fridge|raw)',
        '(starting temperature|start temperature|it starts|starting|fridge temperature|it came out of the fridge|came out of the fridge|out of the fridge) (is|at|of|from|was) {s:temperature}',
      ],
      (match) => {
        const line =
          match.groups.w || match.groups.v || match.groups.n || match.groups.m || match.groups.s
            ? match.line
            : match.line;
        const weight = match.quantity('w') ?? match.quantity('v');
        const bones = match.has('n') ? match.count('n') : match.count('m');
        const kind = cutOf(line, match);
        const start = match.has('s') ? match.temperature('s') : undefined;
        // "took it out of the fridge at one" tells a time.
        if (match.quantity('s')?.kind === 'number' && (start?.temperature ?? 0) <= 12)
          return undefined;
        const boneless = /boneless|boned|off the bone|no bones/.test(line)
          ? true
          : /bone in|on the bone/.test(line) && bones === undefined
            ? false
            : undefined;
        const how = prepared.find(([shape]) => shape.test(line))?.[1];
        const frozen = /not frozen|frozen peas|frozen (potatoes|beans|puddings|veg)/.test(line)
          ? undefined
          : /frozen/.test(line)
            ? true
            : undefined;
        const something =
          weight !== undefined ||
          bones !== undefined ||
          start !== undefined ||
          boneless === true ||
          boneless === false ||
          (how !== undefined && how !== 'whole') ||
          frozen;
        const bare =
          /^((it is|we have( got)?|i have( got)?|i am (doing|roasting|cooking|making)|we are (doing|having)|got|cooking|roasting|doing|having|making|with|this is) )?(a |an |the |my |our )?(\w+ ){1,5}$/.test(
            match.line,
          );
        const named =
          kind !== undefined &&
          (match.context.expecting === 'roast' || bare) &&
          !/ (is|out|in|done|ready|burnt|resting|down|put|went|medium|well|rare|was|has) /.test(
            ` ${match.line.replace(/^(it|this) is /, '').replace(/(bone in|we are|i am)/, '')}`,
          ) &&
          kind !== undefined &&
          /^((it is|we have( got)?|i have( got)?|i am (doing|roasting|cooking|making)|we are (doing|having)|got|cooking|roasting|doing|having|making|with|this is|bought) |a |an |boneless |bone in |beef |rib |prime |standing |leg |pork |strip |top |eye |whole |tender|fillet|sirloin|fore|topside|one )/.test(
            match.line,
          );
        if (!something && !named) return undefined;
        if (
          /(butter|potatoes|carrots|flour|cream|sprouts|beans|thyme|sugar|onions|guinea|lost|lose|weighs? (less|more)|how|each|per) /.test(
            line,
          ) &&
          weight !== undefined &&
          kind === undefined
        )
          return undefined;
        return {
          intent: 'describe-roast',
          ...(kind ? { cut: kind } : {}),
          ...(weight?.kind === 'weight' ? { weight: weight.value, weightUnit: weight.unit } : {}),
          ...(bones === undefined ? {} : { bones }),
          ...(boneless === undefined ? {} : { boneless }),
          ...(how ? { prepared: how } : {}),
          ...(frozen ? { frozen } : {}),
          ...(start
            ? {
                startTemperature: start.temperature,
                ...(start.unit ? { startTemperatureUnit: start.unit } : {}),
              }
            : {}),
        };
      },
    ),
  ],
};

export const doneness: Recogniser = {
  name: 'doneness',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        '(pull|take|take it out|pull it|pull it out|have|take the roast out|pull the roast|cook it|bring it|cook|i pull|i want to pull it|we will pull it|out) [it|@it|out|up] (at|to|when it hits|when it reads|for) {temperature} [degrees|internal|in the middle|instead|$]',
        '(aim|aiming|go|going|shooting|shoot|target|i am aiming|we are aiming|let us go|let us aim) (for|is|of) {temperature} (in the (middle|centre|center|core)|internal|core|at the table|in the meat|served|degrees|$)',
        '(i want|we want|i would like|we like|we would like|want) [@it|it|the middle|a core of|the core] (at|to be|to reach|to get to|to come out at|done to|cooked to) {temperature}',
        '(target|serving|core|internal|final) temperature [of|is|to] {temperature}',
      ],
      (match) => {
        const said = match.temperature('temperature');
        const low = match.context.units.temperature === 'C' && said.unit !== 'F' ? 40 : 90;
        if (
          !(said.temperature >= low) ||
          said.temperature > (said.unit === 'C' ? 100 : 200) ||
          / (oven|turned) /.test(` ${match.line}`)
        )
          return undefined;
        return { intent: 'set-doneness', ...said };
      },
    ),
    ...phrases(
      [
        `[pull|cook|i want|we want|we like|i like|we would like|i would like|make|do|have|let us do|let us go|let us have|go|going|aim|aiming|we will have|we will go|can we have|served|i think|everyone likes|everybody likes|everyone wants|we all like|most like|done|bring] [it|@it|ours|that|mine|theirs] [to be|for|out|at|a|done|with|on the|to|up] ${donenessWords} [all round|in the middle|instead|for everyone|side|$]`,
      ],
      (match) => {
        const value = donenessOf(match.line);
        const line = ` ${match.line}`;
        if (!value) return undefined;
        if (
          /well done (you|everyone|everybody|mate|team|all|that|son|to)/.test(line) ||
          /rarely|medium (heat|size|potatoes|sized|bowl|flame|hob|eggs|wave)|rare (book|bird|thing|occasion|treat|breed|gas)|pink (flowers|shirt|dress|gin|wine|socks|paint|floyd|jumper)|how rare/.test(
            line,
          )
        )
          return undefined;
        if (
          value === 'well-done' &&
          /^well done $/.test(match.line) &&
          match.context.expecting !== 'doneness' &&
          match.context.stage !== undefined &&
          match.context.stage !== 'planning'
        )
          return { intent: 'courtesy' };
        if (
          /(is|was|looks|looking|still|too|bit|gone|a tad|came out|seems) (\w+ )?(rare|pink|well done|medium)/.test(
            line,
          ) &&
          !/(want|like|pull|make)/.test(line)
        )
          return undefined;
        return { intent: 'set-doneness', doneness: value };
      },
    ),
  ],
};

export const method: Recogniser = {
  name: 'method',
  moods: tell,
  phrases: [
    ...phrases(
      [
        '(reverse sear|sear [it|@it] (at the end|last|after|afterwards)|low and slow then sear|sear last|finish with a sear|sear to finish|brown it at the end|low first)',
      ],
      { intent: 'set-method', method: 'sear-last' },
    ),
    ...phrases(
      [
        '(sear [it|@it] first|start [it] (hot|high)|hot first|sear (at the start|to start)|blast it first|high heat first|brown it first|hot start)',
      ],
      { intent: 'set-method', method: 'sear-first' },
    ),
    ...phrases(
      [
        '(no sear|without searing|steady [oven|heat|temperature]|same temperature (all the way|throughout)|one temperature|low and slow [all the way|throughout]|do not sear it|not searing [it])',
      ],
      { intent: 'set-method', method: 'steady' },
    ),
  ],
};

const dishes = (match: Match, slot: string): string[] =>
  match
    .words(slot)
    .split(/ (?:and|or|plus|with) /)
    .map((part) => part.trim())
    .filter(
      (part) =>
        part !== '' &&
        !/^(it|that|them|me|you|us|time|dinner|lunch|a (drink|beer|look|go|think|word|chat|seat|rest|break|laugh|party|problem|question|minute)|fun|six|kids|guests|people|this|the roast|everything|nothing|something|one)$/.test(
          part,
        ),
    );

/** "I have scrubbed the potatoes" reports; "we'll have mashed potatoes" orders. */
const participle =
  /^(made|done|put|got|taken|started|finished|been|left|cut|washed|scrubbed|peeled|prepared|seasoned|salted|dried|turned|checked|stripped|chopped|trimmed|whipped|mixed|drained|parboiled|tossed|moved|burnt|burned|dropped|forgotten|not|to|no)\b/;

const addDish = (match: Match): Meaning[] | undefined => {
  if (/ (have|has|had) /.test(` ${match.line}`) && participle.test(match.words('thing')))
    return undefined;
  const names = dishes(match, 'thing').filter((name) => !meansRoast(name));
  const known = names.map((name) => dishIn(name, match.context));
  if (
    names.length === 0 ||
    (known.every((id) => id === undefined) &&
      !/(with it|with that|as a side|on the side|as well|alongside|to go with|side of|for the side|to the (menu|plan|list|dinner|meal))/.test(
        match.line,
      ))
  )
    return undefined;
  return names.map((name) => ({
    intent: 'add-dish' as const,
    dish: dishOrAsSaid(name, match.context),
  }));
};

export const menu: Recogniser = {
  name: 'menu',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        '(no|drop|forget|lose|scrap|skip|ditch|cancel|leave out|cut|without|remove|take off|bin|not doing|not making|not having|not going to do|not going to make|not bother with|will not bother with|hold|get rid of|i will skip|never mind|do not bother with|will not have|will not make|do not want|not do|not make|do not need|not bothering with|will not do) [the|any|doing|making] {thing} (after all|any more|anymore|tonight|today|this time|from the menu|from the list|then|$)',
        '{thing} (is|are) off the (menu|list)',
      ],
      (match) => {
        const dish = dishIn(match.words('thing'), match.context);
        return dish ? { intent: 'drop-dish', dish } : undefined;
      },
    ),
    ...phrases(
      [
        '(we will have|we will do|i will do|i will make|we are having|we are doing|i am doing|i am making|having|doing|making|add|we are making|^ with|throw in|also|there will be|we want|i want|let us have|let us do|let us add|serve it with|serving|to go with it|i would like|we would like|i am also doing|we also have|i am also making|have|do|make|include|i am serving|we are serving|plan|go with|it is with|and|and also|i also want|add in|sides are|the sides are|side of|for sides|alongside|on the side|served with|accompanied by|plus|we have got|there is|going to do|going to make|want) [also|some|the|a|have] {thing} [with it|with that|as well|too|as a side|as sides|on the side|alongside|with the (roast|beef|meat|lamb|pork)|to go with (it|that)|to the (menu|plan|list|dinner|meal)|for dinner|for sides|for the side] $',
      ],
      addDish,
    ),
    ...phrases(
      [
        '^ {thing} [with it|with that|as well|too|as a side|on the side|alongside|with the roast|to go with it] $',
      ],
      (match) => {
        const words = match.words('thing');
        // "the potatoes are in" is a report, whatever the stage.
        if (
          /\b(is|are|was|were|in|out|on|off|done|ready|made|burnt|cold|now)\b/.test(words) ||
          /\b\w+ \w{2,}ed$/.test(words)
        )
          return undefined;
        const continues = match.before.at(-1)?.intent;
        if (
          match.context.stage !== undefined &&
          match.context.stage !== 'planning' &&
          match.context.stage !== 'prep' &&
          continues !== 'add-dish'
        )
          return undefined;
        if (match.context.expecting !== undefined && match.context.expecting !== 'roast') {
          if (continues !== 'add-dish') return undefined;
        }
        const names = words.split(/ (?:and|plus) /);
        const ids = names.map((name) => dishIn(name, match.context));
        if (ids.some((id) => id === undefined)) {
          return continues === 'add-dish' &&
            names.every(
              (name) => name.split(' ').length <= 3 && !/^(that|it|is|no|yes|i|we)\b/.test(name),
            ) &&
            !stepIn(words, match.context)
            ? names.map((name) => ({
                intent: 'add-dish' as const,
                dish: dishOrAsSaid(name, match.context),
              }))
            : undefined;
        }
        return ids.map((dish) => ({
          intent: continues === 'drop-dish' ? ('drop-dish' as const) : ('add-dish' as const),
          dish: dish!,
        }));
      },
    ),
  ],
};
