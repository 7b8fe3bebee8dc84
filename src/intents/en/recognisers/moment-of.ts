/** When something happened, as the clause around it says. */
import type { ReadContext } from '../../../kitchen/heard.ts';
import { minutesUntil, pastTime } from '../../moment.ts';
import type { Quantity } from '../../quantity.ts';
import { faceOf, type Match } from '../../recogniser.ts';

export type Moment = { minutesAgo?: number; time?: string };

/** Nothing that is told just after it began began so many minutes ago. */
const longAgoMinutes = 300;

/** "It's in at two forty", said at half past two in a metric house: the oven's 240, not an hour of the night. */
export function isSetting(quantity: Quantity | undefined, context: ReadContext): boolean {
  if (quantity?.kind !== 'number' || quantity.face?.hour === undefined) return false;
  const [low, high] = context.units.temperature === 'F' ? [200, 550] : [100, 280];
  if (quantity.value < low || quantity.value > high || quantity.value % 5 !== 0) return false;
  return (1440 - minutesUntil(pastTime(quantity.face, context), context)) % 1440 > longAgoMinutes;
}

/** When it happened, if the clause says: "five minutes ago", "at three", "since half past four". */
export function momentOf(match: Match, options: { lasting?: boolean } = {}): Moment {
  const line = match.line;
  if (match.minutesAgo !== undefined) return { minutesAgo: match.minutesAgo };
  const face = faceOf(match.at);
  if (face) return { time: pastTime(face, match.context) };
  const ago = /(<[d]\d+>) (ago|back|since)/.exec(line)?.[1];
  const lasting = options.lasting
    ? /(?:for|been|in|resting|out) (?:in |out |resting |under foil )?(?:for )?(<d\d+>)/.exec(
        line,
      )?.[1]
    : undefined;
  const minutes = match.quantityOfMark(ago ?? lasting ?? '');
  if (minutes?.kind === 'duration') return { minutesAgo: minutes.minutes };
  // "it's at one ten in the middle": the number that is the temperature is no time.
  const reading = match.groups.temperature?.trim();
  const marks = line.matchAll(
    /(?:at|since|from|around|about|by) (<[cn]\d+>)(?! (?:degrees|pounds))|(<c\d+>)/g,
  );
  const clock = [...marks]
    .map((mark) => mark[1] ?? mark[2]!)
    .find((mark) => mark !== reading && !isSetting(match.quantityOfMark(mark), match.context));
  if (clock) {
    const shown = faceOf(match.quantityOfMark(clock));
    if (shown) return { time: pastTime(shown, match.context) };
  }
  return {};
}
