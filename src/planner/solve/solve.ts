/**
 * The best plan of a problem, or the best found within a bounded amount of work: branch and bound
 * over the orders of what shares hands, tools and ovens. Its bound is the exact optimum of all lags
 * without the sharing (timing.ts); its branches are the ways out of one conflict, cheapest first, so
 * the first dive is a list heuristic and the rest a proof. Deterministic; work is counted, not timed.
 */
import { origin, type Problem, weights } from '../problem.ts';
import {
  type Conflict,
  conflictsOf,
  ovensOf,
  type Shared,
  sharedOf,
  type WayOut,
} from './conflicts.ts';
import { Timing, type TimingState } from './timing.ts';

export interface SolveOptions {
  /** Path searches at most; then the best found so far is taken. */
  work?: number;
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
  work: number;
}

/** Enough to prove most dinners; a replan stays well under fifty milliseconds. */
const usualWork = 1_500;

interface Node {
  state: TimingState;
  ovenOf: Int8Array;
  left: ReadonlySet<string>;
  bound: number;
  depth: number;
}

export function solve(problem: Problem, { work = usualWork }: SolveOptions = {}): Solution {
  const search = new Search(problem);
  return search.run(work);
}

class Search {
  private readonly problem: Problem;
  private readonly names: string[];
  private readonly nodeOf: Map<string, number>;
  private readonly timing: Timing;
  private readonly shared: Shared;
  private readonly lagOf: number[] = [];
  private best: Node | undefined;
  private open: Node[] = [];

  constructor(problem: Problem) {
    this.problem = problem;
    this.names = [origin, ...problem.tasks.map((task) => task.id)];
    this.nodeOf = new Map(this.names.map((name, index) => [name, index]));
    this.timing = new Timing(
      this.names.length,
      problem.lags.length + 2 * problem.tasks.length + 64,
    );
    this.shared = sharedOf(problem, this.nodeOf);
    this.addLags();
    this.timing.settle();
  }

  /** Rules first: they carry the starts far, and the wishes then find them nearly right. */
  private addLags(): void {
    const fix = 4 * weights.hard;
    for (const task of this.problem.tasks) {
      if (task.fixedStart === undefined) continue;
      const node = this.nodeOf.get(task.id) ?? 0;
      this.push(0, node, task.fixedStart, fix, -1);
      this.push(node, 0, -task.fixedStart, fix, -1);
    }
    const order = this.problem.lags
      .map((lag, index) => ({ lag, index }))
      .sort((a, b) => b.lag.weight - a.lag.weight || a.index - b.index);
    for (const { lag, index } of order) {
      const from = this.nodeOf.get(lag.from.task);
      const to = this.nodeOf.get(lag.to.task);
      if (from === undefined || to === undefined) continue;
      this.push(from, to, lag.minutes + lag.from.plus - lag.to.plus, lag.weight, index);
    }
  }

  private push(from: number, to: number, minutes: number, weight: number, lag: number): void {
    this.lagOf[this.timing.count] = lag;
    this.timing.add(from, to, minutes, weight);
  }

  run(work: number): Solution {
    const ovenOf = Int8Array.from(this.problem.stays.map((stay) => stay.oven ?? -1));
    this.timing.work = 0;
    this.open = [
      {
        state: this.timing.save(),
        ovenOf,
        left: new Set(),
        bound: this.timing.cost(),
        depth: 0,
      },
    ];
    let bound = this.open[0]?.bound ?? 0;
    while (this.open.length > 0) {
      const node = this.take();
      bound = node.bound;
      if (this.best && node.bound >= this.best.bound) break;
      if (this.best && this.timing.work >= work) break;
      this.dive(node, work);
    }
    const best = this.best;
    if (!best) throw new Error('a search ends with a plan');
    return this.solutionOf(best, Math.min(bound, best.bound));
  }

  /** The open node that promises most; the deepest of equals, so that plans come soon. */
  private take(): Node {
    let index = 0;
    for (let one = 1; one < this.open.length; one += 1) {
      const a = this.open[one];
      const b = this.open[index];
      if (a && b && (a.bound < b.bound || (a.bound === b.bound && a.depth > b.depth))) index = one;
    }
    const [node] = this.open.splice(index, 1);
    if (!node) throw new Error('no node is open');
    return node;
  }

  private dive(from: Node, work: number): void {
    let node: Node | undefined = from;
    while (node) {
      if (this.best && node.bound >= this.best.bound) return;
      this.timing.restore(node.state);
      const conflicts = conflictsOf(this.shared, {
        start: this.timing.start,
        ovenOf: node.ovenOf,
        left: node.left,
      });
      if (conflicts.length === 0) {
        this.best = node;
        return;
      }
      const children = this.branch(node, conflicts, work);
      node = children[0];
      for (const other of children.slice(1))
        if (!this.best || other.bound < this.best.bound) this.open.push(other);
    }
  }

  /** The conflict whose cheapest way out costs most tells most; its ways out, cheapest first. */
  private branch(node: Node, conflicts: readonly Conflict[], work: number): Node[] {
    const rushed = this.timing.work >= work;
    let chosen: Node[] = [];
    let least = -1;
    for (const { key, ways } of conflicts.slice(0, rushed ? 1 : conflicts.length)) {
      const children = ways.map((way) => this.child(node, way)).sort((a, b) => a.bound - b.bound);
      // Nothing mends it but breaking another rule: it stays, at a rule's price, and is told.
      if ((children[0]?.bound ?? 0) >= node.bound + weights.hard)
        children.unshift({
          ...node,
          left: new Set([...node.left, key]),
          bound: node.bound + weights.hard,
          depth: node.depth + 1,
        });
      const bound = children[0]?.bound ?? 0;
      if (bound > least) {
        least = bound;
        chosen = children;
      }
    }
    return chosen;
  }

  private child(node: Node, way: WayOut): Node {
    const depth = node.depth + 1;
    if (way.what === 'oven') {
      const ovenOf = node.ovenOf.slice();
      ovenOf[way.stay] = way.oven;
      return { ...node, ovenOf, depth };
    }
    this.timing.restore(node.state);
    this.timing.add(
      way.from.node,
      way.to.node,
      way.minutes + way.from.plus - way.to.plus,
      weights.hard,
    );
    // What was left at odds keeps its price.
    const bound = this.timing.cost() + weights.hard * node.left.size;
    return { ...node, state: this.timing.save(), bound, depth };
  }

  private solutionOf(best: Node, bound: number): Solution {
    this.timing.restore(best.state);
    const { timing, names } = this;
    const arcs: BindingArc[] = [];
    for (let arc = 0; arc < timing.count; arc += 1) {
      const lag = this.lagOf[arc] ?? -1;
      const added = arc >= this.lagOf.length;
      if (lag < 0 && !added) continue;
      arcs.push({
        from: names[timing.from[arc] ?? 0] ?? origin,
        to: names[timing.to[arc] ?? 0] ?? origin,
        minutes: timing.length[arc] ?? 0,
        flow: timing.flow[arc] ?? 0,
        weight: timing.weight[arc] ?? 0,
        lag: added ? undefined : lag,
        missedMinutes: Math.max(0, timing.missed(arc)),
      });
    }
    return {
      starts: new Map(this.problem.tasks.map((task, index) => [task.id, timing.at(index + 1)])),
      ovens: ovensOf(this.shared, { start: timing.start, ovenOf: best.ovenOf, left: best.left }),
      clashes: best.left.size,
      cost: best.bound,
      bound,
      proven: bound >= best.bound,
      arcs,
      work: timing.work,
    };
  }
}
