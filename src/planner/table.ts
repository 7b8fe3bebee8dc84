/** When dinner is on the table: likely, at the earliest and latest, and the chance that it is on time. */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import type { Plan } from '../kitchen/plan.ts';
import { type Day, searToCarveMinutes } from './compile/day.ts';
import { instantOfMinute } from './grid.ts';
import type { Problem } from './problem.ts';
import { tableFloor } from './reasons.ts';
import type { Solution } from './solve/solve.ts';

/** On time is within so many minutes. */
const onTimeMinutes = 10;

export function servingOf(
  day: Day,
  problem: Problem,
  solution: Solution,
  { pull, soonestKnifeMinutes }: { pull: Plan['pullAt']; soonestKnifeMinutes: number },
): Pick<Plan, 'serving' | 'onTimeChance'> {
  const { wantedAt, servedAt, rest, carveMinutes, program } = day;
  const plannedAt = instantOfMinute(day.grid, solution.starts.get('serve') ?? day.grid.now);
  // Carved and not yet reported as served: it is not on the table before now.
  const likelyAt = servedAt ?? Math.max(day.now, plannedAt);
  const sear = program.method === 'sear-last' ? program.searMinutes + searToCarveMinutes : 0;
  const tail = sear + carveMinutes;
  if (servedAt !== undefined) {
    const onTime = Math.abs(minutesBetween(wantedAt, servedAt)) <= onTimeMinutes;
    return {
      serving: { wantedAt, likelyAt, earliestAt: servedAt, latestAt: servedAt },
      onTimeChance: onTime ? 1 : 0,
    };
  }
  const floor = tableFloor(day, problem, solution);
  const fromPull = Math.max(floor.fromPull, soonestKnifeMinutes + tail);
  const byAt = addMinutes(wantedAt, onTimeMinutes);
  return {
    serving: {
      wantedAt,
      likelyAt,
      earliestAt: Math.min(likelyAt, Math.max(floor.fromNow, addMinutes(pull.p10, fromPull))),
      latestAt: Math.max(likelyAt, addMinutes(pull.p90, Math.max(fromPull, rest.p50 + tail))),
    },
    onTimeChance: floor.fromNow > byAt ? 0 : chanceBefore(pull, addMinutes(byAt, -fromPull)),
  };
}

/** Chance that a moment with these percentiles comes before `at`; a split normal between them. */
function chanceBefore(band: Plan['pullAt'], at: Instant): number {
  const side = at < band.p50 ? band.p50 - band.p10 : band.p90 - band.p50;
  if (side <= 0) return at >= band.p50 ? 1 : 0;
  const z = ((at - band.p50) / side) * 1.2816;
  return 1 / (1 + Math.exp(-1.702 * z));
}
