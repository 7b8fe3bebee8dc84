/** Frames of hours and minutes: when dinner is, how far it moves, timers, absences. */
import { comingTime, mealTime, minutesUntil, timeAfter } from '../../moment.ts';
import { stemOf, stemsOfNames } from '../../names.ts';
import { type Frame, faceOf, type Match, type Meaning } from '../../recogniser.ts';
import { meansRoast } from '../steps.ts';
import { after, before, callWords, guestWords, holds, mealWords, otherUnits } from './words.ts';

const telling = ['statement', 'request', 'intention'] as const;

/** The one mark in a clause that can be an hour: said as one, or a number led up to as one. */
export function hourMark(match: Match): string | undefined {
  const said = match.marks('c')[0];
  if (said) return said;
  return match.marks('n').find((mark) => {
    if (otherUnits.test(after(match, mark)) || !faceOf(match.quantityOfMark(mark))) return false;
    const led = before(match, mark);
    if (/ (at|by|around|about|till|before|to|is|be|eat|dinner|after) (the )?$/.test(led))
      return true;
    // "eighteen hundred dinner", "around five forty five we'll eat".
    const quantity = match.quantityOfMark(mark);
    return led.trim() === '' && quantity?.kind === 'number' && quantity.value >= 100;
  });
}

/** A table's hour from a mark of the clause, with the date beside it. */
export function tableAt(match: Match, mark: string | undefined): Meaning | undefined {
  const face = mark ? faceOf(match.quantityOfMark(mark)) : undefined;
  const date = match.dateNearby();
  return face
    ? {
        intent: 'set-serving-time',
        time: mealTime(face, match.context),
        ...(date ? { date } : {}),
      }
    : undefined;
}

/** Minutes said as a duration, or as a bare number that its neighbours make minutes. */
export function minutesIn(match: Match): number | undefined {
  const mark = match.marks('d')[0];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  return quantity?.kind === 'duration' ? quantity.minutes : undefined;
}

const otherEvents =
  / (oven|went|came|took|pulled|probe|reads|kids|children|toddler|train|flight|bus|arrive|arrives|arriving|arrived|land|timer|alarm|remind|started|since|resting|turned|shop|match|game|film|cup|mug|last|fridge|potatoes|beans|carrots|there) /;

/** "when the match ends": an hour nobody can name is asked for, not invented. */
export const openHourFrame: Frame = {
  name: 'open-hour',
  moods: [...telling, 'story', 'question'],
  build(match) {
    const open =
      /(when|after|once|as soon as|at the end of) (the |his |her |their )?(match|game|film|movie|show|race|concert|service|programme|kids|party|speech|news|half time)/;
    return open.test(match.line) && holds(match, mealWords) && match.marks('cd').length === 0
      ? { intent: 'unclear' }
      : undefined;
  },
};

export const servingFrame: Frame = {
  name: 'serving',
  moods: telling,
  build(match) {
    if (!holds(match, mealWords) || holds(match, otherEvents)) return undefined;
    const table = tableAt(match, hourMark(match));
    if (table) return table;
    const minutes = minutesIn(match);
    // "and in an hour to warm the plates" is an errand.
    if (/ in <d\d+> to /.test(` ${match.line}`)) return undefined;
    if (minutes !== undefined && holds(match, / in <d\d+> | <d\d+> (from now|time) /))
      return { intent: 'set-serving-time', time: timeAfter(minutes, match.context) };
    return undefined;
  },
};

const later =
  / (later|late|delay|delayed|behind|back|postpone|push|pushed|shove|hold|stuck|held up|traffic|extra|add|longer|slower|another|away|more|out|tick|delay|slip|slips|wait) /;
const sooner = / (earlier|sooner|early|forward|ahead|prepone|quicker|bring|before) /;
/** "Another ten minutes before we sit down" puts it off. */
const putsOff =
  /^(so )?(give|leave|let us give|make it|let us have|call it|add|need|we need|i need|we want|say) .*<d\d+> (more )?(before|till) (we|they|everyone|the|you|dinner)|(another|more|extra) .*before /;
const notDinners =
  / (oven|timer|alarm|resting|rest|roast|joint|reads|degrees|potatoes|beans|carrots|gravy|turned|went|out for|been|gone|in the oven|upstairs|shop|boil|last|ago|shower|pull|probe) /;
const self = /^(i|i am|we|we are|am|got|running|have got|i have|we have) /;

export const shiftFrame: Frame = {
  name: 'shift',
  moods: telling,
  build(match) {
    const minutes = minutesIn(match);
    if (minutes === undefined || minutes === 0 || holds(match, notDinners)) return undefined;
    if (/ (out|in|on|up|down) <d\d+> (early|late) /.test(` ${match.line}`)) return undefined;
    const meal = holds(match, mealWords) || holds(match, / (it|that|things|everything) /);
    if (holds(match, / (behind|off schedule|off track|late|over|slow|lost) /)) {
      if ((self.test(match.line) && !meal) || / behind /.test(` ${match.line}`)) {
        const others = / (they|guests|everyone|everybody|train|people|he|she) /;
        if (!holds(match, others)) return { intent: 'running-behind', minutes };
      }
    }
    const words = match.line.trim().split(' ').length;
    const guests =
      holds(match, guestWords) ||
      / (late|delayed|delay|traffic|train|prepone|postpone|push|shove|add) /.test(
        ` ${match.whole}`,
      );
    if (!meal && !guests && words > 5) return undefined;
    if (putsOff.test(match.line)) return { intent: 'shift-serving', minutes };
    if (holds(match, sooner)) return { intent: 'shift-serving', minutes: -minutes };
    if (!holds(match, later)) return undefined;
    // "another twenty minutes" alone is of nothing in particular.
    if (
      !meal &&
      !holds(match, / (late|later|delayed|delay|behind|held up|stuck|traffic|away) /) &&
      !guests
    )
      return undefined;
    return { intent: 'shift-serving', minutes };
  },
};

const stopWords =
  / (cancel|stop|kill|delete|clear|off|remove|scrap|forget|drop|end|lose|bin|never mind|no need|do not need|get rid|scrub|silence|dismiss|on the head|done with) /;

export const timerFrame: Frame = {
  name: 'timer',
  moods: [...telling, 'negative'],
  build(match): Meaning | undefined {
    if (holds(match, / (smoke|fire|car|burglar|carbon monoxide) (alarms?|detectors?) /))
      return undefined;
    const named = holds(match, / (timer|timers|alarm|countdown|reminder|clock) /);
    const minutes = minutesIn(match);
    if (holds(match, / (timer|timers|alarm|reminder|countdown) /) && holds(match, stopWords))
      return {
        intent: 'cancel-timer',
        ...(minutes === undefined ? {} : { minutes }),
        ...timedLabel(
          match,
          / (?:for|on) (?:the )?([a-z]+) |(?:the|my|^) ?([a-z]+) (?:timer|alarm) /,
        ),
      };
    if (match.marks('tw').length > 0 || holds(match, / (later|late|behind|ago|went|been) /))
      return undefined;
    const asked = holds(match, callWords) || named || holds(match, / (count|time|put me) /);
    if (!asked) return undefined;
    const face =
      match.marks('c')[0] ??
      / (?:alarm|reminder) (?:for|at) (<n\d+>) $/.exec(` ${match.line}`)?.[1];
    const until = face ? faceOf(match.quantityOfMark(face)) : undefined;
    const wait =
      minutes ??
      (until ? minutesUntil(comingTime(until, match.context), match.context) : undefined) ??
      bareMinutes(match);
    if (wait === undefined || wait <= 0) return undefined;
    return {
      intent: 'set-timer',
      minutes: wait,
      ...timedLabel(
        match,
        / (?:for|on|about|of|check) (?:the |my |those )?([a-z]+(?: [a-z]+)?) | time the ([a-z]+) /,
      ),
    };
  },
};

/** "45 on the clock": with a clock or timer beside it a bare number is minutes. */
function bareMinutes(match: Match): number | undefined {
  const mark = match.marks('n')[0];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  return quantity?.kind === 'number' &&
    (holds(match, / (timer|clock|countdown) /) ||
      (holds(match, / in <n\d+> $/) && holds(match, callWords)))
    ? quantity.value
    : undefined;
}

function labelOf(match: Match, shape: RegExp): { label?: string } {
  const found = shape.exec(` ${match.line.replaceAll(/<\w+>/g, ',')}`);
  const label = (found?.[1] ?? found?.[2])?.replace(/ (in|for|at|to|is|are|from)$/, '');
  return label && !/^(the|a|me|it|that|in|clock|for)$/.test(label) ? { label } : {};
}

const leaving =
  / (dog|lie down|nap|off to|errand|bins|wine|call|mass|meeting|out|away|upstairs|downstairs|outside|shop|shops|store|supermarket|back|gone|leave|leaving|run to|popping|pop|stepping|step|nipping|nip|church|garden|shower|walk|off to|school|ducking|duck|bath|busy|post office|neighbours|next door|dash|driving|drive|pick (?:\w+ ){0,3}up|collect|collecting|fetch|fetching|phone|call) /;

export const awayFrame: Frame = {
  name: 'away',
  moods: ['statement', 'intention', 'request', 'story', 'negative'],
  build(match) {
    const absent = holds(match, / not be (here|around|in the kitchen|back) /);
    if (holds(match, / not /) && !absent) return undefined;
    if (!holds(match, leaving) && !absent) return undefined;
    const others =
      / (they|guests|he|she|roast|joint|potatoes|beans|oven|beef|meat|dinner|power|you|fridge|it is|it has|took|pull|everyone|push|move|behind|late) /;
    if (holds(match, others)) return undefined;
    if (
      !/^(\w+ing|just|i|i am|i will|we|back|be|away|off|out|going|need|have|got|must|popping|nipping|running|heading|stepping|leaving|gone|ducking|will be|quick|away) /.test(
        match.line,
      )
    )
      return undefined;
    if (match.minutesAgo !== undefined || holds(match, / (last|was|were|went|yesterday) /))
      return undefined;
    const minutes = minutesIn(match);
    if (minutes !== undefined) return { intent: 'cook-away', minutes };
    const bare = / back for <n/.test(` ${match.line}`)
      ? undefined
      : /(?:for|back in|in) (<n\d+>) $/.exec(match.line)?.[1];
    const count = bare ? match.quantityOfMark(bare) : undefined;
    if (count?.kind === 'number' && count.value <= 120)
      return { intent: 'cook-away', minutes: count.value };
    const mark =
      match.marks('c')[0] ??
      (holds(match, / (till|at|by|back for) <n\d+> /) ? match.marks('n')[0] : undefined);
    const face = mark ? faceOf(match.quantityOfMark(mark)) : undefined;
    return face && holds(match, / (till|back at|back by|back around|back for|return) /)
      ? {
          intent: 'cook-away',
          minutes: minutesUntil(comingTime(face, match.context), match.context),
        }
      : undefined;
  },
};

/** What a timer is of: as its words lead up to it, else the dish or thing that is named beside it. */
export function timedLabel(match: Match, shape: RegExp): { label?: string } {
  const { dishes, ingredients } = match.context.lexicon;
  const named = match.line
    .trim()
    .split(' ')
    .find(
      (word) =>
        word.length > 3 &&
        !meansRoast(word) &&
        [...dishes, ...ingredients].some((thing) =>
          stemsOfNames(thing).some((stems) => stems.at(-1) === stemOf(word)),
        ),
    );
  const led = labelOf(match, shape);
  return named && !led.label?.includes(named) ? { label: named } : led;
}
