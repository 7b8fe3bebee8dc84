/** What a plan could not keep, and by how much: read off the bounds that its best answer misses. */
import { isRoastMoment } from '../kitchen/card.ts';
import type { Shortfall } from '../kitchen/plan.ts';
import type { Day } from './compile/day.ts';
import { origin, type Problem, weights } from './problem.ts';
import type { Solution } from './solve/solve.ts';

export function shortfallsOf(day: Day, problem: Problem, solution: Solution): Shortfall[] {
  const open = new Set(problem.tasks.filter((t) => t.fixedStart === undefined).map((t) => t.id));
  const worst = new Map<string, Shortfall>();
  for (const arc of solution.arcs) {
    if (arc.missedMinutes < 1 || arc.weight < weights.window) continue;
    const kind = arc.lag === undefined ? 'shared' : problem.lags[arc.lag]?.kind;
    if (kind === 'table' || kind === 'wish' || kind === 'promise') continue;
    const step = open.has(arc.to) && !isRoastMoment(arc.to) ? arc.to : arc.from;
    if (step === origin || !day.items.some((item) => item.id === step)) continue;
    const constraint =
      kind !== 'window'
        ? kind === 'shared'
          ? 'shared'
          : 'order'
        : arc.weight >= weights.missing
          ? 'off-table'
          : 'ends-in-time';
    const known = worst.get(`${constraint} ${step}`);
    if (known && (known.minutes ?? 0) >= arc.missedMinutes) continue;
    worst.set(`${constraint} ${step}`, { constraint, step, minutes: arc.missedMinutes });
  }
  return [...worst.values()];
}
