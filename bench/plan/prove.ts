/** One day's optimum by a general-purpose mixed-integer solver (the package highs). */
import highsLoader, { type LegacyHighs } from 'highs';
import type { Problem } from '../../src/planner/problem.ts';
import { milpOf } from './milp.ts';

/** The package is one function, whatever its types say of the module. */
const load = highsLoader as unknown as () => Promise<LegacyHighs>;

export interface Proof {
  /** The least cost, or undefined when the solver did not get there in time. */
  optimum: number | undefined;
  seconds: number;
}

/** `costAtMost` is the cost of some known plan: dearer ones need not be looked at. */
export async function prove(
  problem: Problem,
  {
    costAtMost,
    lastStart,
    secondsAtMost = 60,
  }: { costAtMost: number; lastStart: number; secondsAtMost?: number },
): Promise<Proof> {
  // A fresh instance for each day: one that has been used now and then fails on the next.
  const highs = await load();
  const from = performance.now();
  const text = milpOf(problem, { horizon: lastStart + 8, costAtMost });
  const result = highs.solve(text, { time_limit: secondsAtMost, mip_rel_gap: 0 });
  return {
    optimum: result.Status === 'Optimal' ? Math.round(result.ObjectiveValue) : undefined,
    seconds: (performance.now() - from) / 1000,
  };
}
