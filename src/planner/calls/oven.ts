/** Calls to turn an oven where no step does it. */
import type { Dinner } from '../../kitchen/dinner.ts';
import type { OvenMove, Plan } from '../../kitchen/plan.ts';
import { roastCameOutAt } from '../roast-day.ts';
import type { Wanted } from './call.ts';

/** Moves of the oven that belong to no step: a course taken, or heat for the dishes. */
export function ovenCalls(dinner: Dinner, plan: Plan): Wanted[] {
  if (dinner.steps.get('serve')?.doneAt !== undefined) return [];
  const last = dinner.oven.at(-1);
  // Nobody turns a dial while there is no power.
  if (last && last.celsius <= 0 && !last.ownChoice) return [];
  return (
    plan.oven
      .filter((move) => move.why === 'course' || move.why === 'sides' || move.why === 'hold')
      // What waits for the roast to be out of its oven is not called while it is in.
      .filter(
        (move) => move.why === 'course' || move.oven === 1 || roastCameOutAt(dinner) !== undefined,
      )
      .filter(
        (move) =>
          !last ||
          move.oven === 1 ||
          (move.at > last.at && Math.abs(move.celsius - last.celsius) > 3),
      )
      .map((move) => ({
        kind: 'oven-change' as const,
        what: moveName(move),
        dueAt: move.at,
        expiryMinutes: 10,
        urgency: move.why === 'course' ? ('high' as const) : ('normal' as const),
        repeats: move.why === 'course' ? 4 : 0,
        about: {
          what: 'oven' as const,
          celsius: move.celsius,
          why: move.why,
          second: move.oven === 1,
        },
      }))
  );
}

/** A course is told for its instant; a heat for the dishes goes by the heat, however it slides. */
const moveName = ({ why, at, celsius, oven }: OvenMove): string =>
  why === 'course'
    ? `course@${Math.round(at / 60_000)}`
    : `${why}-${Math.round(celsius)}${oven === 1 ? '-second' : ''}`;
