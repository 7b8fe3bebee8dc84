/**
 * The best plan of a problem, or the best found within a bounded amount of work. The turns that were
 * told are the first plan; branch and bound proves most dinners (branch.ts); what it does not prove is
 * mended piece by piece by the same search (mend.ts). Deterministic; work is counted, not timed.
 */
import { origin, type Problem } from '../problem.ts';
import { explore } from './branch.ts';
import { ovensOf } from './conflicts.ts';
import { Ground } from './ground.ts';
import { type Hurry, noHurry } from './hurry.ts';
import { mend } from './mend.ts';
import { noArcs } from './timing.ts';
import { held, type Settled, snapped, toldPlan, toldStarts } from './told.ts';

export interface SolveOptions {
  /** Path searches at most; then the best found so far is taken. */
  work?: number | undefined;
}

export interface BindingArc {
  from: string;
  to: string;
  minutes: number;
  /** How much of its weight presses: 0 when it does not bind. */
  flow: number;
  weight: number;
  /** Index among the problem's lags; absent when the search added it for a shared thing. */
  lag?: number | undefined;
  missedMinutes: number;
}

export interface Solution {
  /** Start of each task, in minutes from the origin. */
  starts: ReadonlyMap<string, number>;
  /** The oven of each stay, in the problem's order. */
  ovens: readonly number[];
  /** How many clashes no plan could avoid. */
  clashes: number;
  cost: number;
  /** No plan costs less than this. */
  bound: number;
  /** Whether `cost` is proved to be the least. */
  proven: boolean;
  arcs: readonly BindingArc[];
  /** Minutes by which steps end sooner than they likely would, so that what was told stands (hurry.ts). */
  hurry: Hurry;
  work: number;
}

/** Enough to prove most dinners of twenty steps; a bigger day's searches are heavier, and it gets fewer. */
const mostWork = 40_000;
const usualTasks = 20;
const heavier = 3;

/** Enough for a day of 40 steps in which less work left two things at the same hands or shelf at once. */
const clashingWork = 20_000;

/** Of all work, what goes into the proof before mending begins. */
const proofShare = 0.3;

/** What was told is left for a plan that costs at most this share of it, and so much less. */
const clearlyBetter = 0.9;
const worthMoving = 300;

export function solve(problem: Problem, options: SolveOptions = {}): Solution {
  const ground = new Ground(problem);
  const work = options.work ?? usualWork(ground.movable.length);
  const solution = solvedWithin(ground, work);
  if (
    options.work !== undefined ||
    work >= clashingWork ||
    solution.clashes === 0 ||
    solution.proven
  )
    return solution;
  const again = solvedWithin(new Ground(problem), clashingWork);
  return again.cost < solution.cost ? again : solution;
}

function solvedWithin(ground: Ground, work: number): Solution {
  const told = toldStarts(ground);
  const first = toldPlan(ground, told);
  const explored = explore(ground, ground.root, { best: first, work: work * proofShare });
  let best = explored.best;
  if (!best) throw new Error('a search ends with a plan');
  if (explored.bound < best.cost) best = mend(ground, best, work);
  // What was told stands unless something clearly better is found.
  if (first && best.cost > Math.min(first.cost * clearlyBetter, first.cost - worthMoving))
    best = first;
  const bound = Math.min(explored.bound, best.cost);
  const settled = first && best.left.size === 0 ? held(ground, told, best) : undefined;
  return solutionOf(
    settled ??
      snapped(ground, told, best) ?? { ground, found: best, holds: noArcs, hurry: noHurry },
    { bound, work: ground.timing.work },
  );
}

const usualWork = (size: number): number =>
  mostWork * Math.min(1, usualTasks / Math.max(1, size)) ** heavier;

function solutionOf(
  { ground, found, holds, hurry }: Settled,
  { bound, work }: { bound: number; work: number },
): Solution {
  const { timing, names, shared, problem } = ground;
  timing.restore(found.state);
  const arcs: BindingArc[] = [];
  for (let arc = 0; arc < timing.count; arc += 1) {
    const lag = ground.lagOf[arc];
    if (lag === -1 || (arc >= holds.from && arc < holds.to)) continue;
    arcs.push({
      from: names[timing.from[arc] ?? 0] ?? origin,
      to: names[timing.to[arc] ?? 0] ?? origin,
      minutes: timing.length[arc] ?? 0,
      flow: timing.flow[arc] ?? 0,
      weight: timing.weight[arc] ?? 0,
      lag,
      missedMinutes: Math.max(0, timing.missed(arc)),
    });
  }
  const look = { start: timing.start, ovenOf: found.ovenOf, left: found.left };
  return {
    starts: new Map(problem.tasks.map((task, index) => [task.id, timing.at(index + 1)])),
    ovens: ovensOf(shared, look),
    clashes: found.left.size,
    cost: found.cost,
    bound,
    proven: bound >= found.cost,
    arcs,
    hurry,
    work,
  };
}
