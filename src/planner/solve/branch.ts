/**
 * Branch and bound over the ways out of conflicts. The first dive is a list heuristic: one conflict
 * after another, by its cheapest way out. What follows is a proof, as far as the work goes.
 */
import { weights } from '../problem.ts';
import { type Conflict, conflictsOf, type WayOut } from './conflicts.ts';
import type { Found, Ground, Order } from './ground.ts';

/** Of the conflicts never weighed before, so many are weighed at one node. */
const conflictsWeighed = 3;
/** What the dearer way out counts for beside the cheaper. */
const otherWayShare = 0.15;

/** `way` is still to be added to the starts. */
interface Node extends Found {
  way?: Order | undefined;
  depth: number;
}

export interface Explored {
  best: Found | undefined;
  /** No plan below the node costs less. */
  bound: number;
}

/** Below a node until `work` is spent; what costs no less than `best` is left out. */
export function explore(
  ground: Ground,
  from: Found,
  { best, work }: { best: Found | undefined; work: number },
): Explored {
  const branching = new Branching(ground, work);
  branching.best = best;
  const bound = branching.explore(from);
  return { best: branching.best, bound };
}

class Branching {
  best: Found | undefined;
  private readonly ground: Ground;
  private readonly work: number;

  constructor(ground: Ground, work: number) {
    this.ground = ground;
    this.work = work;
  }

  explore(from: Found): number {
    const open: Node[] = [{ ...from, depth: 0 }];
    for (;;) {
      const node = takeBest(open);
      if (!node) return Infinity;
      if (this.best && (node.cost >= this.best.cost || this.ground.timing.work >= this.work))
        return node.cost;
      this.dive(node, open);
    }
  }

  private dive(from: Node, open: Node[]): void {
    const { ground } = this;
    ground.timing.restore(from.state);
    let node: Node | undefined = from;
    while (node) {
      if (this.best && node.cost >= this.best.cost) return;
      if (node.way) ground.keep(node.way);
      const { ovenOf, left, depth }: Node = node;
      // A way that was not weighed to its end costs more than was known of it.
      const cost = ground.costNow(left);
      const { start } = ground.timing;
      const conflicts = conflictsOf(ground.shared, { start, ovenOf, left });
      if (conflicts.length === 0) {
        this.best = { state: ground.timing.save(), ovenOf, left, cost };
        return;
      }
      const children = this.branch({ state: from.state, ovenOf, left, cost, depth }, conflicts);
      ground.timing.rewind();
      this.leaveOpen(children.slice(1), open);
      node = children[0];
    }
  }

  /** What could still hold a better plan is looked at later, from the starts as they now stand. */
  private leaveOpen(nodes: readonly Node[], open: Node[]): void {
    const { best } = this;
    const hopeful = best ? nodes.filter((node) => node.cost < best.cost) : nodes;
    if (hopeful.length === 0) return;
    const state = this.ground.timing.save();
    for (const node of hopeful) open.push({ ...node, state });
  }

  /**
   * The conflict whose ways out cost most tells most; its ways out, cheapest first. What a conflict
   * cost when it was weighed elsewhere stands for what it costs here (pseudo-costs; Achterberg, Koch,
   * Martin, Branching rules revisited, 2005, from memory).
   */
  private branch(node: Node, conflicts: readonly Conflict[]): Node[] {
    const rushed = this.isRushed();
    this.ground.timing.mark();
    let chosen: { conflict: Conflict; children?: Node[] } | undefined;
    // A conflict may even be cheaper ended than left: one of them is always chosen.
    let most = Number.NEGATIVE_INFINITY;
    let weighed = 0;
    for (const conflict of conflicts.slice(0, rushed ? 1 : conflicts.length)) {
      const known = this.ground.prices.get(conflict.key);
      if (!known && weighed >= conflictsWeighed) continue;
      if (!known) weighed += 1;
      const children = known ? undefined : this.weigh(node, conflict);
      const price = known ? known.sum / known.count : this.priceOf(node, children ?? []);
      if (price <= most) continue;
      most = price;
      chosen = children ? { conflict, children } : { conflict };
    }
    return chosen ? (chosen.children ?? this.weigh(node, chosen.conflict)) : [];
  }

  private weigh(node: Node, conflict: Conflict): Node[] {
    const children = this.waysOut(node, conflict);
    const { sum, count } = this.ground.prices.get(conflict.key) ?? { sum: 0, count: 0 };
    const price = this.priceOf(node, children);
    this.ground.prices.set(conflict.key, { sum: sum + price, count: count + 1 });
    return children;
  }

  /** What ending a conflict costs at least, and a little of what the other way would cost more. */
  private priceOf(node: Node, children: readonly Node[]): number {
    const first = (children[0]?.cost ?? 0) - node.cost;
    const second = Math.min(weights.hard, (children[1]?.cost ?? weights.hard) - node.cost);
    return first + otherWayShare * (second - first);
  }

  /** The starts stand, or stood when they were marked, as at the node. */
  private waysOut(node: Node, { key, ways }: Conflict): Node[] {
    const children = (
      this.isRushed() ? this.nearestWays(node, ways) : ways.map((way) => this.child(node, way))
    ).sort((a, b) => a.cost - b.cost);
    // Nothing mends it, or nothing but breaking another rule: it stays, at a rule's price, and is told.
    if ((children[0]?.cost ?? Infinity) >= node.cost + weights.hard)
      children.unshift({
        ...node,
        left: new Set([...node.left, key]),
        cost: node.cost + weights.hard,
        depth: node.depth + 1,
      });
    return children;
  }

  private isRushed(): boolean {
    return this.ground.timing.work >= this.work;
  }

  /** In a hurry only the cheapest is wanted: the nearest first, each no further than it can still be that. */
  private nearestWays(node: Node, ways: readonly WayOut[]): Node[] {
    const { start } = this.ground.timing;
    const far = ways.map((way) =>
      way.what === 'oven'
        ? 0
        : way.minutes +
          (start[way.from.node] ?? 0) +
          way.from.plus -
          (start[way.to.node] ?? 0) -
          way.to.plus,
    );
    const order = ways.map((_, index) => index).sort((a, b) => (far[a] ?? 0) - (far[b] ?? 0));
    const children: Node[] = [];
    let least = Infinity;
    for (const index of order) {
      const way = ways[index];
      if (!way) continue;
      const child = this.child(node, way, least);
      children.push(child);
      least = Math.min(least, child.cost);
      if (least <= node.cost) break;
    }
    return children;
  }

  private child(node: Node, way: WayOut, enough = Infinity): Node {
    const depth = node.depth + 1;
    if (way.what === 'oven') {
      const ovenOf = node.ovenOf.slice();
      ovenOf[way.stay] = way.oven;
      return { ...node, ovenOf, depth };
    }
    const { ground, best } = this;
    ground.timing.rewind();
    const most = Math.min(best?.cost ?? Infinity, enough);
    ground.keep(way, most - weights.hard * node.left.size);
    return {
      state: node.state,
      ovenOf: node.ovenOf,
      left: node.left,
      way,
      cost: ground.costNow(node.left),
      depth,
    };
  }
}

/** The open node that promises most; the deepest of equals, so that plans come soon. */
function takeBest(open: Node[]): Node | undefined {
  let index = 0;
  for (let one = 1; one < open.length; one += 1) {
    const a = open[one];
    const b = open[index];
    if (a && b && (a.cost < b.cost || (a.cost === b.cost && a.depth > b.depth))) index = one;
  }
  const node = open[index];
  const last = open.pop();
  if (last && node && last !== node) open[index] = last;
  return node;
}
