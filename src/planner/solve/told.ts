/** What the cook was told, as a plan of its own, and as where a better plan's starts are set back to. */
import { origin, type Problem, weights } from '../problem.ts';
import { explore } from './branch.ts';
import { conflictsOf, ovensOf, sharedOf } from './conflicts.ts';
import { type Found, Ground } from './ground.ts';
import { type Hurry, type HurryOptions, hurried, isHurried, mostHurry, noHurry } from './hurry.ts';
import { ordersOf } from './orders.ts';
import type { ArcRange } from './timing.ts';

/** A start so near to what was told is left there, at a cost of so much a minute. */
const snapMinutes = 4;
const snapWeight = 12;

/** Only a rule moves what is held so. */
const holdWeight = weights.hard / 50;
const holdWork = 300;
/** What was told is held while no window and no table is missed by more than this for it, */
const bearableMinutes = 1;
/** and while wishes do not come to more than this. */
const bearableWishes = 300;

/** When each task was told to start, by node. */
export function toldStarts(ground: Ground): Map<number, number> {
  const told = new Map<number, number>();
  for (const lag of ground.problem.lags) {
    const node = ground.node(lag.to.task);
    if (lag.kind === 'promise' && lag.from.task === origin && ground.movable.includes(node))
      told.set(node, lag.minutes - lag.to.plus);
  }
  return told;
}

/** The turns that the cook was told, timed anew; undefined when they cannot be any more. */
export function toldPlan(ground: Ground, told: ReadonlyMap<number, number>): Found | undefined {
  if (told.size === 0) return undefined;
  const { root, shared, timing } = ground;
  timing.restore(root.state);
  const start = ground.startsNow();
  for (const [node, at] of told) start[node] = at;
  const ovenOf = Int8Array.from(ovensOf(shared, { start, ovenOf: root.ovenOf, left: root.left }));
  for (const order of ordersOf(shared, { start, ovenOf })) ground.keep(order);
  const cost = timing.cost();
  const look = { start: timing.start, ovenOf, left: root.left };
  if (cost >= root.cost + weights.hard || conflictsOf(shared, look).length > 0) return undefined;
  return { state: timing.save(), ovenOf, left: root.left, cost };
}

export interface Settled {
  ground: Ground;
  found: Found;
  /** What was added to hold starts where they were told: it explains nothing. */
  holds: ArcRange;
  /** What is made up so that they can be. */
  hurry: Hurry;
}

function hold(
  { timing }: Ground,
  told: Iterable<readonly [node: number, at: number]>,
  weight: number,
): ArcRange {
  const from = timing.count;
  for (const [node, at] of told) {
    timing.add(0, node, at, weight);
    timing.add(node, 0, -at, weight);
  }
  return { from, to: timing.count };
}

/**
 * As near to what was told as rules allow: a minute's slip is borne where it falls, and made up in the steps
 * about it where else more would move. Only where that costs nobody more than a minute beside the best plan.
 */
export function held(
  ground: Ground,
  told: ReadonlyMap<number, number>,
  best: Found,
): Settled | undefined {
  const { problem } = ground;
  const missed = missedIn(ground, best);
  const plain = heldIn(ground, told, { missed, bearable: weights.clock, hurry: noHurry });
  const moved = plain ? movedOf(plain, told) : Infinity;
  if (moved === 0) return plain;
  const withHurry = (hurry: Hurry, options: HurryOptions): Settled | undefined => {
    if (!isHurried(hurry)) return undefined;
    // No table is later for a minute that somebody is to make up.
    const limits = { missed, bearable: weights.table, hurry };
    return heldIn(new Ground(hurried(problem, hurry, options)), told, limits);
  };
  const loose = withHurry(mostHurry(problem), { loose: true });
  if (!loose || movedOf(loose, told) >= moved) return plain;
  const settled = withHurry(leastHurry(ground, loose, missed), { loose: false });
  return settled && movedOf(settled, told) < moved ? settled : plain;
}

const missedIn = ({ timing }: Ground, found: Found): number[] => {
  timing.restore(found.state);
  return Array.from({ length: timing.base }, (_, arc) => Math.max(0, timing.missed(arc)));
};

interface HeldLimits {
  /** By the best plan, of each arc. */
  missed: readonly number[];
  /** What weighs as much as this is missed no more than by the best plan. */
  bearable: number;
  hurry: Hurry;
}

function heldIn(
  ground: Ground,
  told: ReadonlyMap<number, number>,
  { missed, bearable, hurry }: HeldLimits,
): Settled | undefined {
  const { root, timing } = ground;
  timing.restore(root.state);
  const holds = hold(ground, told, holdWeight);
  const from = { ...root, state: timing.save(), cost: timing.cost() };
  const { best: found } = explore(ground, from, { best: undefined, work: timing.work + holdWork });
  if (!found || found.left.size > 0) return undefined;
  timing.restore(found.state);
  let wishes = 0;
  for (const [arc, before] of missed.entries()) {
    const weight = timing.weight[arc] ?? 0;
    const more = Math.max(0, timing.missed(arc)) - before;
    if (weight <= weights.rest) wishes += more * weight;
    else if (more > (weight < bearable ? bearableMinutes : 0)) return undefined;
  }
  if (wishes > bearableWishes) return undefined;
  return { ground, found: { ...found, cost: timing.cost(holds) }, holds, hurry };
}

/** How many of what was told start at another minute. */
function movedOf({ ground, found }: Settled, told: ReadonlyMap<number, number>): number {
  ground.timing.restore(found.state);
  return [...told].filter(([node, at]) => ground.timing.at(node) !== at).length;
}

/** No more is made up than keeps those starts: what bears its likely minutes is given them. */
function leastHurry(
  { problem, nodeOf, names, lagOf }: Ground,
  { ground, found, hurry }: Settled,
  missedByBest: readonly number[],
): Hurry {
  ground.timing.restore(found.state);
  const start = ground.startsNow();
  const look = { start, ovenOf: found.ovenOf, left: found.left };
  const missed = heavyMissed(ground.problem, nodeOf, start);
  for (const [arc, minutes] of missedByBest.entries()) {
    const lag = lagOf[arc] ?? -1;
    if (lag >= 0) missed[lag] = Math.max(missed[lag] ?? 0, minutes);
  }
  const bears = (less: Hurry): boolean => {
    const day = hurried(problem, less, { loose: true });
    const more = heavyMissed(day, nodeOf, start).some((one, lag) => one > (missed[lag] ?? 0));
    return !more && conflictsOf(sharedOf(day, nodeOf), look).length === 0;
  };
  let kept = hurry;
  const give = (what: keyof Hurry, steps: readonly string[]): void => {
    const less = (minutes: number): Hurry => {
      const fewer = new Map(kept[what]);
      for (const step of steps)
        if (minutes === 0) fewer.delete(step);
        else fewer.set(step, minutes);
      return { ...kept, [what]: fewer };
    };
    if (bears(less(0))) kept = less(0);
    else if (steps.length > 1) {
      const half = steps.length >> 1;
      give(what, steps.slice(0, half));
      give(what, steps.slice(half));
    } else
      for (let minutes = (kept[what].get(steps[0] ?? '') ?? 0) - 1; minutes > 0; minutes -= 1)
        if (bears(less(minutes))) kept = less(minutes);
  };
  give(
    'hands',
    names.filter((name) => hurry.hands.has(name)),
  );
  give(
    'ends',
    names.filter((name) => hurry.ends.has(name)),
  );
  return kept;
}

/** Minutes by which everything from a rest's worth up is missed at these starts, by lag. */
const heavyMissed = (
  { lags }: Problem,
  nodeOf: ReadonlyMap<string, number>,
  start: Float64Array,
): number[] =>
  lags.map(({ from, to, minutes, weight }) => {
    if (weight < weights.rest) return 0;
    const begins = (start[nodeOf.get(from.task) ?? 0] ?? 0) + from.plus;
    return Math.max(0, begins + minutes - (start[nodeOf.get(to.task) ?? 0] ?? 0) - to.plus);
  });

/**
 * The same turns, with every start that moved by a few minutes only back where it was told: the cook
 * is not called to and fro for a minute's better taste.
 */
export function snapped(
  ground: Ground,
  told: ReadonlyMap<number, number>,
  best: Found,
): Settled | undefined {
  const { root, shared, timing } = ground;
  timing.restore(best.state);
  const start = ground.startsNow();
  const near = [...told].filter(([node, at]) => Math.abs((start[node] ?? 0) - at) <= snapMinutes);
  if (near.every(([node, at]) => start[node] === at)) return undefined;
  const ovenOf = Int8Array.from(ovensOf(shared, { start, ovenOf: best.ovenOf, left: best.left }));
  timing.restore(root.state);
  for (const order of ordersOf(shared, { start, ovenOf })) ground.keep(order);
  const holds = hold(ground, near, snapWeight);
  const look = { start: timing.start, ovenOf, left: best.left };
  if (conflictsOf(shared, look).length > 0) return undefined;
  const cost = timing.cost(holds) + weights.hard * best.left.size;
  return { ground, found: { ...best, state: timing.save(), ovenOf, cost }, holds, hurry: noHurry };
}
