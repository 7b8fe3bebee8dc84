/** What the cook takes back: a value said before, or the whole of it. */
import { mealTime } from '../../moment.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { mealWords } from '../frames/words.ts';
import { dishIn, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

/** "Make it an hour later" moves dinner. */
const moves = /^make (?:it|that) <d\d+> (?:later|earlier|sooner) $/;

/** "88, not 98": the number that was wrong, where it is of the same kind. */
function withOld(match: Match, meaning: Meaning | undefined): Meaning | undefined {
  const old = match.quantity('y');
  return meaning?.intent === 'correct' &&
    meaning.temperature !== undefined &&
    (old?.kind === 'number' || old?.kind === 'temperature')
    ? { ...meaning, was: old.value }
    : meaning;
}

const relabel = (match: Match): Meaning | undefined => withOld(match, relabelled(match));

const relabelled = (match: Match): Meaning | undefined => {
  if (moves.test(match.line)) return undefined;
  if (/^(the )?(oven|dial) /.test(match.line)) return undefined;
  // "make it 8 instead", "make it seven thirty": said of nothing before, it is dinner that moves.
  const number = match.quantity('x');
  const hour =
    number?.kind === 'number' && /^make (it|that) /.test(match.line) ? match.face('x') : undefined;
  if (
    hour &&
    !/ (people|of us|guests|bones?|ribs?|pounds|degrees) /.test(` ${match.line}`) &&
    (match.number('x') > 300 || match.number('x') <= 12)
  )
    return { intent: 'set-serving-time', time: mealTime(hour, match.context) };
  // "make it eight o'clock" takes nothing back.
  if (match.quantity('x')?.kind === 'clock' && /^make (it|that) /.test(match.line))
    return undefined;
  const quantity = match.quantity('x');
  // A meal's hour, unless what went in or came out is spoken of.
  const clock = / (went|came|put|took|pulled|in at|out at) /.test(` ${match.line}`)
    ? match.pastTime('x')
    : match.mealTime('x');
  switch (quantity?.kind) {
    case 'weight':
      return { intent: 'correct', weight: quantity.value, weightUnit: quantity.unit };
    case 'duration':
      // "not 20 h, 21 h": an hour of the day.
      if (quantity.minutes > 720 && quantity.minutes < 1440 && quantity.minutes % 60 === 0)
        return {
          intent: 'correct',
          time: mealTime({ hour: quantity.minutes / 60, minute: 0, half: 'day' }, match.context),
        };
      return { intent: 'correct', minutes: quantity.minutes };
    case 'clock':
      return { intent: 'correct', ...(clock ? { time: clock } : {}) };
    case 'date':
      return { intent: 'correct', date: quantity.date };
    case 'gas-mark':
      return { intent: 'report-oven', gasMark: quantity.value };
    default: {
      // "I wrote 7 lb, should've been 7.7": of the kind of the old.
      const old = match.quantity('y');
      if (old?.kind === 'weight')
        return { intent: 'correct', weight: match.number('x'), weightUnit: old.unit };
      const line = ` ${match.line}`;
      // "I said six for dinner, I meant six thirty": of a meal, or on no scale a kitchen has.
      const shown = match.face('x');
      if (
        shown?.hour !== undefined &&
        quantity?.kind === 'number' &&
        (mealWords.test(` ${match.whole}`) ||
          match.context.expecting === 'serving-time' ||
          (quantity.value > 500 && quantity.value % 25 !== 0)) &&
        !/ (people|of us|guests|heads|adults|for <n\d+> (?:,|i meant|$)) /.test(line)
      )
        return { intent: 'correct', time: mealTime(shown, match.context) };
      if (/ (people|of us|guests|heads|adults|we are|there are|coming) /.test(line))
        return { intent: 'correct', count: match.number('x') };
      if (/ (bone|bones|ribs) /.test(line)) return { intent: 'correct', bones: match.number('x') };
      // Neither can be a core's, and the heads were counted long ago: an hour.
      if (
        shown?.hour !== undefined &&
        match.context.expecting === undefined &&
        match.context.stage !== 'planning' &&
        match.context.stage !== undefined &&
        match.number('x') <= 12 &&
        match.has('y') &&
        match.number('y') <= 12
      )
        return { intent: 'correct', time: mealTime(shown, match.context) };
      if (
        match.context.expecting === 'guests' ||
        (match.number('x') < 20 &&
          quantity?.kind === 'number' &&
          match.context.stage === 'planning')
      )
        return { intent: 'correct', count: match.number('x') };
      return { intent: 'correct', ...match.temperature('x') };
    }
  }
};

const event = (match: Match, slot: string): string | undefined => {
  const words = match.words(slot);
  if (/potatoes|beans|carrots|puddings|side|roots|veg/.test(words))
    return stepIn(words, match.context);
  return undefined;
};

/** "I meant the carrots, not the beans": the dish that was meant. */
const dishMeant = (match: Match): Meaning | undefined => {
  const dish = dishIn(match.words('thing'), match.context);
  return dish &&
    match.words('thing').split(' ').length <= 3 &&
    !/ (is|are|was|were|has|have|done|in|out|ready|on|off)\b/.test(match.words('thing'))
    ? { intent: 'correct', dish }
    : undefined;
};

const heads =
  /^(?:no ,? ?|sorry ,? ?)?(?:we|there|they) (?:will be|are|will all be|are going to be) (<n\d+>) /;

function headsInstead(match: Match): Meaning | undefined {
  const mark = heads.exec(match.line)?.[1];
  const count = mark ? match.withGroups({ n: `${mark} ` }).count('n') : undefined;
  return count === undefined ? undefined : { intent: 'set-guests', count };
}

export const correction: Recogniser = {
  name: 'correction',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '^ [no ,|no|sorry ,|sorry|oh] (i meant|i mean|i said) the {thing} [, not the {y:thing}|not the {z:thing}] $',
        '^ (no|no ,|sorry ,|sorry) [,] the {thing} $',
        '^ [no ,|no] not the {y:thing} , [i meant] the {thing} $',
      ],
      dishMeant,
    ),
    ...phrases(
      [
        '[it|that|this] should have been {x:any} [people|guests|bones|pounds|degrees|$] $',
        '^ [it is|it was|i said|i wrote|i put] {y:any} [pounds|people|degrees] [,] [but] [it|that] should have been {x:any} $',
        '^ (you misheard|you misheard me|you heard wrong|you heard me wrong|you got (it|that) wrong|you have (it|that) wrong|that is not what i said) [,|.] [it is|it was|i said] {x:any}',
        '^ [it is|it was|reads] {x:any} [,|.] [sorry] (my mistake|my bad|my error|i misread|i misspoke|i misread it|i said it wrong) $',
        '^ {x:any} [,] i (mean|meant) [,] not {y:any} $',
        '^ {x:any} [,] (not|and not|instead of|rather than) {y:any} [,] (sorry|my mistake|i misread|i meant|i mean) $',
        '^ [no ,|no] (it|that) (is|was) not {y:any} [degrees|ago] [{what:clause}] [,|.] [but|it was|it is] (more|more like|nearer|closer to) {x:any} [ago] $',
        '^ [no ,|no] not {y:any} [degrees|ago] [,|.] i said {x:any} [ago] $',
        '^ [no ,|no] not {y:any} [,] (sorry|but|no|rather) [,] [it is|it was] {x:any} ',
        '^ [oops|whoops|sorry] [,] {x:any} [degrees] [,|.] [i] (typed it wrong|typed wrong|typed that wrong|hit the wrong key|typo|fat fingers|misread it|misread|read it wrong|got it wrong) ',
      ],
      (match) => {
        const [x, y] = [match.quantity('x'), match.quantity('y')];
        if (x?.kind === 'number' && y?.kind === 'weight')
          return { intent: 'correct', weight: x.value, weightUnit: y.unit };
        if (x?.kind === 'number' && y?.kind === 'duration')
          return / ago /.test(match.line)
            ? { intent: 'correct', minutesAgo: x.value }
            : { intent: 'correct', minutes: x.value };
        return relabel(match);
      },
    ),
    ...phrases(
      ['^ [no ,|no|sorry ,] not (today|tonight|tomorrow|{z:date}) [,] [but|it is] {y:date} $'],
      (match) => {
        const date = match.date('y');
        return date ? { intent: 'correct', date } : undefined;
      },
    ),
    ...phrases(
      [
        '^ i said {y:any} [guests|people|of us|bones|pounds] [,] [but] [honestly|really|in fact] [it is|it was|there are|we are] {x:any} ',
        '^ [oh|sorry|no|no ,] [sorry] [i] did not (mean|want) [to] [say] {y:any} [,|.] [but] (i meant|i mean|i wanted|it was|it is|but) {x:any} ',
        '^ {x:any} i (meant|mean) [, not|not] [{y:any}] $',
        '^ [no ,] i (wrote|said|typed|put|told you) {y:any} [,] [but] (should have been|it should be|it should have been|it was|it is|meant|i meant|should be) [really] {x:any} ',
        '^ [no ,] i (wrote|said|typed|put|told you) {y:any} [,] (but|only|except) {why:clause} (it is|it was|there are|we are|it comes to|it came to) [really|more like|at] {x:any} ',
        '^ [wait ,] {y:any} i said wrong [,|.] [it is|i meant] {x:any} ',
        '^ [no ,|no|sorry ,] [we are|there are] [now] {x:any} [now] not {y:any} $',
      ],
      (match) => relabel(match),
    ),
    ...phrases(
      [
        '^ (i meant|i mean|sorry ,|no ,|sorry|no) [that] {who:thing} (went in|went into the oven|came out) at {x:clock} $',
      ],
      (match) => {
        const time = match.pastTime('x');
        const step = event(match, 'who') ?? (/came out/.test(match.line) ? 'pull' : 'roast-in');
        return time ? { intent: 'correct', step, time } : undefined;
      },
    ),
    ...phrases(
      [
        '[no ,|no|sorry ,|sorry|wait ,|actually ,] {who:thing} (went in|went into the oven|started|came out|went on|was in) at {x:clock} [,] not [at] {y:any}',
        '[no ,|no|sorry ,|sorry|wait ,] {who:thing} (went in|started|came out) at {x:clock} [,] (not at|rather than|instead of) {y:any}',
      ],
      (match) => {
        const time = match.pastTime('x');
        const step = event(match, 'who') ?? (/came out/.test(match.line) ? 'pull' : 'roast-in');
        return time ? { intent: 'correct', step, time } : undefined;
      },
    ),
    ...phrases(
      [
        '^ [no ,|no|sorry ,|sorry|wait ,|oh] (i meant|i mean|i should have said|i meant to say|should have been|i said|it should be|make that|that should be|that was|correction ,|correction|rather|scratch that ,|it was|it is|that is|it is actually|more like) {x:any} [degrees] [,] (not|rather than|instead of) {y:any}',
        '^ [no ,|no|sorry ,|sorry] not {y:any} [,|.] [i meant|it is|it was|is|but|but it is|i mean] {x:any}',
        '^ [no ,|no] (it|that) (is|was) not {y:any} [,|.] [but] (it is|it was|i meant|rather) {x:any}',
        '^ [no ,|no] (it|that) (is|was) not {y:any} [,] [but] {x:any} (i wanted to say|i meant|i mean|i wanted|it was|it is)',
        '(it is|it was) {x:any} [people|of us|guests|bones|bone|ribs|pounds] [,] not {y:any}',
        '[no ,|no|sorry ,|sorry] {x:any} [people|of us|guests|bones|degrees] [,] not {y:any}',
      ],
      // "We'll be seven, not five": heads.
      (match) => headsInstead(match) ?? relabel(match),
    ),
    ...phrases(
      [
        '^ [no ,|no|no no|sorry ,|sorry|wait ,|oh|oh no|oh no ,|hang on ,] (i meant|i mean|meant|i was meaning|i wanted to say|i have said it wrong ,|i said it wrong ,|i meant to say|i should have said|it should be|make that|make it|that should be|that should have been|it should have been|correction ,|correction|scratch that ,|i said|i got that wrong ,|i misread it ,|i misread that ,|i misread it|misread it ,|i misspoke ,|my mistake ,|typo ,) [it is|it was|it reads] {x:any} [people|of us|guests|bones|bone|ribs]',
        '^ (no ,|no|nope ,|no no|wrong ,|sorry ,) [it is|it was|it reads|that was|at] {x:any} [people|of us|guests|bones|bone|ribs] $',
        '^ [i] misread (the thing|the number|the dial|the display|that|it|this) [,|.] [it is|it was|it reads] {x:any}',
        '(i read it|i have read it|i saw it|i looked|read it) (wrong|wrongly|badly|bad|upside down|backwards|the wrong way|the wrong way round|from the wrong side|not well|not good) [,|.] [it is|it was|it reads|is] {x:any}',
        '^ (i misread (it|that)|misread it|i got (it|that) wrong|that was wrong|my mistake|i misspoke|i misheard) [,|.] [it is|it was|it reads|it should be] {x:any}',
      ],
      relabel,
    ),
    ...phrases(
      [
        '^ [no ,|no|sorry ,|sorry] [i meant|i mean|i said|make that|make it] (not medium rare|not rare|not medium|not well done) [,] [but] (rare|medium rare|medium|medium well|well done)',
        '^ (no ,|no|sorry ,|sorry|i meant|i said|no i meant|no , i meant|sorry i meant|sorry , i meant) [make it|make that] (rare|medium rare|medium well|medium|well done) $',
      ],
      (match) => {
        const said = /(medium rare|medium well|well done|medium|rare) $/.exec(
          `${match.line.trimEnd()} `,
        );
        return said
          ? { intent: 'correct', doneness: said[1]!.replace(' ', '-') as 'rare' }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ (no ,|no) [not (that|this) one ,|not (that|this) one] [i meant|i mean] the other [one|way|way round|oven|tin|tray|shelf|probe|thermometer|side|end|roast|joint]',
        '^ (the other one|i meant the other one|not that one|wrong one) $',
      ],
      (match) =>
        match.context.expecting === 'choice' && /^the other /.test(match.line)
          ? { intent: 'choose', option: 2 }
          : { intent: 'correct' },
    ),
    ...phrases(
      [
        '(undo|take back|wind back|roll back|belay|scrap|cancel out|forget i said|forget what i said about|forget|cancel|delete|strike|scrub|scratch|ignore|disregard|reverse|revert) (that|it|this|the last one|the last thing|the last bit|what i said|what i just said|the last thing i said|my last|that last one|that last bit|last)',
        'take (that|it|the last one) back',
        '^ [no ,] (undo|scratch that|strike that|as you were|ignore that|go back a step|go back one) $',
        '(disregard|ignore|scrap|strike|forget|scratch|bin|drop) (the|that) ({n:any}|reading|number) (,|.|$|it|that)',
        '(i did not mean|did not mean) (that|it|to say that)',
        '(i take|i will take|let me take) that back',
        '(that was|that is) a mistake',
        '(that|it) was not (meant for|for|to|aimed at) you',
        '(i was not|was not) talking to you',
        '(remove|delete|take off|take out|cancel|drop) (the|my) (last|previous) (entry|thing|one|bit|line|note)',
        'i said that by mistake',
      ],
      (match) =>
        // "that beeping's just the dryer, ignore it".
        /timer|alarm|beep|buzz|ringing|noise|bell|dryer|washer/.test(match.whole)
          ? undefined
          : { intent: 'undo' },
    ),
  ],
};
