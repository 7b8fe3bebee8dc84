/**
 * What branch and bound could not prove is mended piece by piece: a few steps lose their turns, all
 * others keep theirs, and the search looks below that for a better plan, whole pieces proved. A piece
 * that held nothing better is not looked at again; when small pieces are used up they grow.
 */
import { type Random, seeded } from '../../base/random.ts';
import { explore } from './branch.ts';
import { ovensOf } from './conflicts.ts';
import type { Found, Ground } from './ground.ts';

/** How many steps lose their turns at first, and how much that grows by a piece met again. */
const pieceSteps = 3;
const pieceGrowth = 0.05;
/** Path searches for one piece at most. */
const pieceWork = 500;
/** How often a piece is steps of one dish, and how often it begins with a step that pays. */
const dishShare = 0.6;
const payingShare = 0.5;

export function mend(ground: Ground, from: Found, work: number): Found {
  const { timing, movable } = ground;
  const pieces = new Pieces(ground);
  let best = from;
  let size = pieceSteps;
  const looked = new Set<string>();
  while (timing.work < work) {
    const piece = pieces.next(best, Math.round(size));
    timing.work += 1;
    const name = [...piece].sort((a, b) => a - b).join(' ');
    if (looked.has(name)) {
      size = Math.min(movable.length, size + pieceGrowth);
      continue;
    }
    looked.add(name);
    const without = released(ground, best, piece);
    if (without.cost >= best.cost) continue;
    const found = explore(ground, without, { best, work: timing.work + pieceWork }).best ?? best;
    if (found === best) continue;
    best = found;
    size = pieceSteps;
    looked.clear();
  }
  return best;
}

/** The plan with the turns and ovens of some steps open again. */
function released(ground: Ground, best: Found, piece: ReadonlySet<number>): Found {
  const { timing, shared, problem } = ground;
  const { left } = best;
  timing.restore(best.state);
  const ovenOf = Int8Array.from(
    ovensOf(shared, { start: timing.start, ovenOf: best.ovenOf, left }),
  );
  problem.stays.forEach((stay, index) => {
    if (piece.has(ground.node(stay.task))) ovenOf[index] = stay.oven ?? -1;
  });
  for (let arc = timing.base; arc < timing.count; arc += 1)
    if (piece.has(timing.from[arc] ?? 0) || piece.has(timing.to[arc] ?? 0)) timing.remove(arc);
  return { state: timing.save(), ovenOf, left, cost: ground.costNow(left) };
}

class Pieces {
  private readonly ground: Ground;
  private readonly dice: Random;
  private readonly dishOf: readonly (readonly number[])[];

  constructor(ground: Ground) {
    this.ground = ground;
    this.dice = seeded(ground.problem.tasks.length * 31 + ground.problem.lags.length);
    this.dishOf = dishesOf(ground);
  }

  /** A step with its dish, or with what stands about when it does. */
  next(best: Found, size: number): Set<number> {
    const { movable, timing } = this.ground;
    const when = (node: number): number => timing.startIn(best.state, node);
    const paying = this.dice.uniform() < payingShare ? this.payingIn(best) : movable;
    const first = this.pick(paying.length > 0 ? paying : movable);
    const piece = new Set([first]);
    const grow = (nodes: readonly number[]): void => {
      for (const node of nodes) if (piece.size < size) piece.add(node);
    };
    if (this.dice.uniform() < dishShare) {
      grow(this.dishOf[first] ?? []);
      grow(this.dishOf[this.pick(movable)] ?? []);
    }
    const at = when(first);
    const far = new Map(
      movable.map((node) => [node, (Math.abs(when(node) - at) + 1) * (0.6 + this.dice.uniform())]),
    );
    grow([...movable].sort((a, b) => (far.get(a) ?? 0) - (far.get(b) ?? 0)));
    return piece;
  }

  private pick(nodes: readonly number[]): number {
    return nodes[Math.floor(this.dice.uniform() * nodes.length)] ?? 0;
  }

  /** The ends of every lag that is missed, as often as they are. */
  private payingIn(best: Found): number[] {
    const { timing, movable } = this.ground;
    const when = (node: number): number => timing.startIn(best.state, node);
    const nodes: number[] = [];
    for (let arc = 0; arc < timing.base; arc += 1) {
      const from = timing.from[arc] ?? 0;
      const to = timing.to[arc] ?? 0;
      if (when(from) + (timing.length[arc] ?? 0) <= when(to)) continue;
      nodes.push(...[from, to].filter((node) => movable.includes(node)));
    }
    return nodes;
  }
}

/** For each step, itself and all that order ties to it, nearest first: a dish, most often. */
function dishesOf(ground: Ground): number[][] {
  const { problem, movable } = ground;
  const linked: number[][] = ground.names.map(() => []);
  for (const lag of problem.lags) {
    const a = ground.node(lag.from.task);
    const b = ground.node(lag.to.task);
    if (lag.kind !== 'order' || !movable.includes(a) || !movable.includes(b)) continue;
    linked[a]?.push(b);
    linked[b]?.push(a);
  }
  return ground.names.map((_, node) => {
    const dish = new Set([node]);
    for (const one of dish) for (const other of linked[one] ?? []) dish.add(other);
    return [...dish];
  });
}
