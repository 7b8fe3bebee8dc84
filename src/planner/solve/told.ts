/** What the cook was told, as a plan of its own, and as where a better plan's starts are set back to. */
import { origin, weights } from '../problem.ts';
import { explore } from './branch.ts';
import { conflictsOf, ovensOf } from './conflicts.ts';
import type { Found, Ground } from './ground.ts';
import { ordersOf } from './orders.ts';
import type { ArcRange } from './timing.ts';

/** A start so near to what was told is left there, at a cost of so much a minute. */
const snapMinutes = 4;
const snapWeight = 12;

/** Only a rule moves what is held so. */
const holdWeight = weights.hard / 4;
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
  found: Found;
  /** What was added to hold starts where they were told: it explains nothing. */
  holds: ArcRange;
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
 * As near to what was told as rules allow: a minute's slip is borne where it falls. Only where that
 * costs nobody more than a minute beside the best plan.
 */
export function held(
  ground: Ground,
  told: ReadonlyMap<number, number>,
  best: Found,
): Settled | undefined {
  const { root, timing } = ground;
  timing.restore(best.state);
  const missed = Array.from({ length: timing.base }, (_, arc) => Math.max(0, timing.missed(arc)));
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
    if (weight < weights.rest) wishes += more * weight;
    else if (more > (weight < weights.clock ? bearableMinutes : 0)) return undefined;
  }
  if (wishes > bearableWishes) return undefined;
  return { found: { ...found, cost: timing.cost(holds) }, holds };
}

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
  return { found: { ...best, state: timing.save(), ovenOf, cost }, holds };
}
