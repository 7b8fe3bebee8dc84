/** What the cook was told, as a plan of its own, and as where a better plan's starts are set back to. */
import { origin, weights } from '../problem.ts';
import { conflictsOf, ovensOf } from './conflicts.ts';
import type { Found, Ground } from './ground.ts';
import { ordersOf } from './orders.ts';

/** A start so near to what was told is left there, at a cost of so much a minute. */
const snapMinutes = 4;
const snapWeight = 12;

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

/**
 * The same turns, with every start that moved by a few minutes only back where it was told: the cook
 * is not called to and fro for a minute's better taste. What was added from `ownArcs` on holds starts
 * there, and explains nothing.
 */
export function snapped(
  ground: Ground,
  told: ReadonlyMap<number, number>,
  best: Found,
): { found: Found; ownArcs: number } | undefined {
  const { root, shared, timing } = ground;
  timing.restore(best.state);
  const start = ground.startsNow();
  const isNear = (node: number, at: number): boolean =>
    Math.abs((start[node] ?? 0) - at) <= snapMinutes;
  if (![...told].some(([node, at]) => start[node] !== at && isNear(node, at))) return undefined;
  const ovenOf = Int8Array.from(ovensOf(shared, { start, ovenOf: best.ovenOf, left: best.left }));
  timing.restore(root.state);
  for (const order of ordersOf(shared, { start, ovenOf })) ground.keep(order);
  const ownArcs = timing.count;
  for (const [node, at] of told) {
    if (!isNear(node, at)) continue;
    timing.add(0, node, at, snapWeight);
    timing.add(node, 0, -at, snapWeight);
  }
  const look = { start: timing.start, ovenOf, left: best.left };
  if (conflictsOf(shared, look).length > 0) return undefined;
  const cost = timing.cost(ownArcs) + weights.hard * best.left.size;
  return { found: { ...best, state: timing.save(), ovenOf, cost }, ownArcs };
}
