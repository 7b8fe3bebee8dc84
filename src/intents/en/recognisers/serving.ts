/** When dinner is, and when it moves. */
import { mealTime, minutesUntil } from '../../moment.ts';
import type { ClockFace } from '../../quantity.ts';
import { faceOf, type Match, type Meaning, type Recogniser } from '../../recogniser.ts';
import { dishNamed } from '../frames/dinner.ts';
import { mealWords } from '../frames/words.ts';
import { phrases } from '../vocabulary.ts';
import { cutOf } from './roast.ts';

const tell = ['statement', 'request', 'intention'] as const;

const shift = (match: Match, sign: number): Meaning | undefined => {
  const minutes = match.minutes('minutes');
  // "the oven I put on 230": a bare number beside the oven, or so large a one, is no delay.
  const bare = match.quantity('minutes')?.kind === 'number';
  if (bare && (minutes > 120 || /(oven|heat|gas|degrees)/.test(match.line))) return undefined;
  return Number.isFinite(minutes) && minutes !== 0
    ? { intent: 'shift-serving', minutes: sign * minutes }
    : undefined;
};

/** "the beans aren't done, they need two more minutes": no guests do. */
const beansNeed = (match: Match): boolean =>
  /^they (need|will need) /.test(match.line) &&
  (match.before.some(({ intent }) => /^report-(?!guests)/.test(intent)) ||
    dishNamed(match.whole, match) !== undefined);

/** "Don't serve till twenty past seven". */
export const notBefore: Recogniser = {
  name: 'not-before',
  moods: ['negative'],
  phrases: phrases(
    [
      '^ not (till|before|until) {clock} $',
      '^ [the] (dinner|lunch|supper|tea|food|roast|meal) (is|will be|does|is going to be) not [be|start|served|ready] (till|before|until) {clock} $',
      '(not|never) (serve|eat|have dinner|sit down|dish up|plate up|serve it|serve dinner|eating|serving|sitting down) (till|before|until) {clock}',
    ],
    (match) => {
      if (match.quantity('clock')?.kind === 'number' && match.face('clock') === undefined)
        return undefined;
      const time = match.mealTime('clock');
      return time ? { intent: 'set-serving-time', time } : undefined;
    },
  ),
};

/** How long a helper stays is not when dinner is. */
const stays =
  / (here|around|free|helping|staying|stays|available|with me|with us|mine|off work) (till|until|before) | is (minding|watching|tending|handling|making|doing|on|looking after) (?:the |my )?(?:\w+ ){1,2}(till|until) /;

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
        '(push|move|shift) (it|dinner|everything|things) {minutes} $',
        '(delay|postpone|hold|hold off|stall) [on] [@dinner|it|everything|things|serving|the whole thing] [for|by|another|a further] {minutes}',
        '[make it|make dinner|have dinner|dinner|eat|serve|lunch|supper|let us eat|we will eat|we eat|serving|dinner is|dinner will be|everything|say|do it|we are eating|food|we are going to eat] {minutes} later',
        '(need|give me|buy me|we need|they need|i need) [another|an extra] {minutes} [more|extra] (before dinner|before we eat|before serving|till dinner|till we eat|before they (arrive|get here|come))',
        '(push|move|put|slide) [@dinner|it|everything] {minutes} (back|later|out)',
        '(stuck in traffic|held up|flat tyre|flight is delayed|train is delayed|missed the train|delayed) [,|by|for|and] * [another|about|late|be] {minutes}',
        '(guests|they|everyone) (need|want|asked for|have asked for|will need) [another|an extra|again|still] {minutes} [more|$]',
        '^ ([said|they said|they say] [to] give them|(said|they said|they say) [to] give (us|me)) [another|an extra|about] {minutes:duration} [more|extra] $',
        'late by {minutes}',
        'dinner is delayed [by] {minutes}',
      ],
      (match) =>
        /\b(i|we|me)$/.test(match.words('who')) ||
        /^(it|that|there|oven|potatoes|beans|roast|dinner|he said|what|i|we)$/.test(
          match.words('who'),
        ) ||
        /early|sooner|earlier/.test(match.line) ||
        beansNeed(match)
          ? undefined
          : shift(match, 1),
    ),
    ...phrases(
      [
        '(@guests|they|everyone|everybody|{who:word}) (is|are|will be|is going to be|are going to be|came|arrived|is here|are here|arriving|coming|are arriving|are coming|will get here|get here|running|are running|turned up) [running|all|about|going to be|here] [early by] {minutes} (early|earlier|sooner|ahead|ahead of time)',
        '(bring|move|pull|shift|push|put) [@dinner|it|everything|things|the whole thing|serving] (forward|up|earlier|ahead|sooner) [by|about|a] {minutes}',
        '[make it|make dinner|have dinner|dinner|eat|serve|lunch|supper|let us eat|we will eat|we eat|everything|serving|we want to eat|we are eating|ready|be ready|have it ready] {minutes} (earlier|sooner|early)',
        '(push|move|bring) [@dinner|it|everything] {minutes} (forward|earlier|up|sooner)',
        '(anticipate|advance|prepone) [the] (@dinner|it|everything|things) [by|of|for] {minutes}',
      ],
      (match) => {
        // "whipped it out a minute early": the minutes are of what was reported beside them.
        const beside =
          match.line.includes('|') && /^report-/.test(match.before.at(-1)?.intent ?? '');
        // "they went in two early" is of what went in.
        const went = / (went|came|put|took|taken|going|gone) (\w+ )?(in|out|on) /.test(
          ` ${match.line}`,
        );
        return beside || went || /^(it|that|oven|what)$/.test(match.words('who'))
          ? undefined
          : shift(match, -1);
      },
    ),
    ...phrases(
      [
        '[@dinner|we|serve|have it ready|ready|eat|eating|serving|want it|table|on the table|sit down|sitting down|dinner is|dinner will be|we are eating|we will eat|we want to eat|to eat|move dinner|push dinner|make dinner|move it|push it|push dinner back|move dinner back|bring it forward|bring dinner forward|push it back|delay dinner|make it|let us eat|aim|aiming|aiming to eat|planning to eat|plan to eat|everything ready|food on the table|plates on the table|sit down to eat|delay it|let us say|change dinner|change it|change the time|have dinner|have lunch|have supper|want to eat|want to serve|dinner now|make that] [on|for|is|will be|now|ready|back|it] [{date}] (at|for|by|to|till|around|before|is|time is) [{when:date} at] {clock} [[on|for|,] {day:date}]',
      ],
      timeMeaning,
    ),
    ...phrases(
      [
        '(@dinner|eat|eating|serve|serving|on the table|sit down|ready|we eat) [on|for|is|will be|now] [{date}] {clock:face} [{day:date}]',
        '^ (make it|make that|let us say|let us make it|say|at|by|for|around|we said|how about|shall we say|change it to|let us do|we would like|ideally|aiming for|aim for|we are aiming for|call it|it is at|it is) [{date} at] {clock:face} [{day:date}] [instead|then|$]',
        '^ (call it|make it|make that|say|let us say|let us do|do) {clock:number} (instead|then|tonight) $',
        '^ (call it|make it|make that|say) {clock:number} $',
        '^ [so] (we|i) will say {clock} [then|instead|$] $',
        '(it|that|dinner|we|lunch|supper) (will|is going to) have to be [at] [more like] {clock} [now|instead|$] $',
        '(aiming|aim|going|shooting) for [a] {clock} (start|kick off|sit down|dinner|finish)',
        '^ [{date}] [at] {clock:face} [for (dinner|lunch|supper|tea)|dinner|lunch|supper] [{day:date}] [instead|then|tonight] $',
        '(at|by|for) {clock:face} [{day:date}]',
        '{date} (at|by|around) {clock} [for dinner|$]',
        '^ at {clock} {day:date} $',
        '(@dinner|eating|serving) {clock:number} [{date}] $',
        '^ [so] (we|we will|we are) (start|starting) [eating] (at|by) {clock} $',
      ],
      timeMeaning,
    ),
  ],
};

/** "we said seven but it will have to be quarter past": of the hour that was named. */
function withHourSaid(face: ClockFace | undefined, match: Match): ClockFace | undefined {
  if (!face || face.hour !== undefined) return face;
  // "at seven, well, half past".
  const before = match.before.at(-1);
  if (before?.intent === 'set-serving-time' && before.time.endsWith(':00') && face.minute <= 30)
    return { hour: Number(before.time.slice(0, 2)), minute: face.minute, half: 'day' };
  const hours = [
    ...match.whole.matchAll(
      /<[nc]\d+>(?! (?:of us|people|guests|persons|adults|bones?|degrees|minutes) )/g,
    ),
  ]
    .map(([mark]) => faceOf(match.quantityOfMark(mark)))
    .filter((one) => one?.hour !== undefined && one.minute === 0);
  const hour = hours.length === 1 ? hours[0]!.hour! : undefined;
  if (hour === undefined || hour > 12) return face;
  return { ...face, hour: face.minute > 30 ? ((hour + 10) % 12) + 1 : hour };
}

function timeMeaning(match: Match): Meaning | undefined {
  const quantity = match.quantity('clock');
  const line = ` ${match.line}`;
  if (stays.test(line)) return undefined;
  // "He's coming at six" is one of them.
  if (
    / (he|she) (is|will be|comes|is only) ?(coming|here|free|there)? (at|by|around|from) </.test(
      line,
    )
  )
    return undefined;
  const said = match.groups.clock!;
  const after = line.slice(line.indexOf(said) + said.length);
  if (
    quantity?.kind === 'number' &&
    match.context.expecting !== 'serving-time' &&
    /^(sear|low-roast|rest|hold|carve|served)$/.test(match.context.stage ?? '') &&
    !mealWords.test(line) &&
    !/ (make it|make that|call it|let us do|will say|have to be|push|move|change|delay|postpone|aim) /.test(
      line,
    )
  )
    return undefined;
  if (quantity?.kind === 'number') {
    if (
      /^(people|of us|guests|degrees|pounds|bones?|ribs?|minutes|hours|adults|persons|kilos|more|celsius|fahrenheit)/.test(
        after,
      )
    )
      return undefined;
    const before = line.slice(0, line.indexOf(said));
    // "a rib roast serving six": heads, where "serving at six" is an hour.
    if (
      / (serving|serve|serves) $/.test(before) &&
      !quantity.face &&
      match.context.expecting !== 'serving-time'
    )
      return undefined;
    // "six of us, Jen's lot, that's four": heads still.
    if (
      /^(that is|so|makes|that makes) $/.test(before.trimStart()) &&
      match.before.some((one) => one.intent === 'set-guests')
    )
      return undefined;
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
    // "for Saturday at 7", "eight people at seven", "rib roast for eight at seven".
    const placed =
      / (at|by|around) $/.test(before) &&
      (/ (<y\d+>|for <n\d+>|people|persons|of us|guests|adults|coming) (at|by|around) $/.test(
        before,
      ) ||
        (before === ' at ' && /^(tonight|today|tomorrow|<y)/.test(after)) ||
        cutOf(line, match.context) !== undefined) &&
      !/^(sear|low-roast|rest|hold|carve|served)$/.test(match.context.stage ?? '');
    if (
      !placed &&
      !/(@|dinner|supper|lunch|tea|eat|serv|start|table|sit|ready|meal|food|aim|time|say|want it|make it|call it|let us do|have to be|move|push)/.test(
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
    if (
      /(oven|turned|degrees|down|heat|fan) /.test(line) &&
      !/(dinner|eat|serv|sit|table)/.test(before)
    )
      return undefined;
  } else if (
    /(went|put|came|started|since|been|ago|took|turned|resting|arriv|kids| in at|leav| out at)|^ (i am|i will be|i have to be|i have got to be) (off|out|away|gone|back|busy)/.test(
      line.slice(0, line.indexOf(said)),
    )
  )
    return undefined;
  // "maybe 110 by half past": what it will read by then.
  if (
    /^(preheat|sear|low-roast)$/.test(match.context.stage ?? '') &&
    !mealWords.test(line) &&
    match
      .marks('nt')
      .some((mark) => mark !== said.trim() && match.withGroups({ n: `${mark} ` }).number('n') >= 40)
  )
    return undefined;
  // "nipping out, back at half past": when the cook is back.
  if (
    /^ (i am |i will be |home |be |and )*back (at|by|around|for|before) /.test(line) &&
    !mealWords.test(line)
  )
    return undefined;
  // "we start at four fifty": the oven's number as well as an hour.
  if (/ (start|starting) (eating )?(at|by) <n/.test(line) && match.number('clock') > 12)
    return undefined;
  if (/ (in the (middle|core|centre|center)|internal|degrees|timer|alarm|remind) /.test(line))
    return undefined;
  // Whoever leaves, or the latest it may be, sets no hour beside one that was said.
  if (
    / (leaves|leave|leaving|goes home|has to go|babysitter|sitter|kick off|kickoff|bedtime) /.test(
      line,
    ) &&
    !mealWords.test(line)
  )
    return undefined;
  if (
    / (at the (very )?(outside|latest)|latest|at most|no later) /.test(line) &&
    match.before.some((one) => one.intent === 'set-serving-time')
  )
    return undefined;
  // "make it five", where nothing before it was an hour, may be of heads.
  if (
    quantity?.kind === 'number' &&
    /^ (call it|make it|make that|say) <n\d+> $/.test(line) &&
    !/<c\d+>/.test(match.whole)
  )
    return undefined;
  const face = withHourSaid(match.face('clock'), match);
  if (!face) return undefined;
  // "so three o'clock now": what the clock shows.
  if (
    quantity?.kind === 'clock' &&
    match.whole.includes(`${said}now `) &&
    !mealWords.test(line) &&
    !/ (make|call|say|let|do) /.test(line)
  )
    return undefined;
  // "for the little ones we eat before, at quarter past six": their hour and not the table's.
  const little = / for the (little ones|kids|children|toddlers|bairns|small ones) we eat /.exec(
    ` ${match.whole}`,
  );
  if (little)
    return {
      intent: 'note-guest',
      who: little[1]!,
      need: 'eats-at',
      value: mealTime(face, match.context),
    };
  // "it's half three": what the clock on the wall shows.
  if (/^ (it is|and it is|now it is) (<c\d+> |now <c)/.test(line)) {
    const until = minutesUntil(mealTime(face, match.context), match.context);
    if (until < 10 || until > 1430) return undefined;
  }
  const date = match.date('date') ?? match.date('when') ?? match.date('day') ?? match.dateNearby();
  return {
    intent: 'set-serving-time',
    time: mealTime(face, match.context),
    ...(date ? { date } : {}),
  };
}
