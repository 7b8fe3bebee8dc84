/** A problem in numbers: its tasks as nodes, its lags as arcs, and the best starts with nothing shared. */
import { origin, type Problem, weights } from '../problem.ts';
import { type Shared, sharedOf, type WayOut } from './conflicts.ts';
import { Timing, type TimingState } from './timing.ts';

/** One thing before another, so many minutes apart. */
export type Order = Extract<WayOut, { what: 'lag' }>;

/** Starts by node (0 is the origin) and the oven of each stay. */
export interface Packing {
  start: Float64Array;
  ovenOf: Int8Array;
}

/** A point of the search: starts that are best for what was decided so far, and what they cost. */
export interface Found {
  state: TimingState;
  /** -1 where a stay has no oven yet. */
  ovenOf: Int8Array;
  /** Conflicts that no plan could be without. */
  left: ReadonlySet<string>;
  cost: number;
}

export class Ground {
  readonly problem: Problem;
  readonly names: readonly string[];
  readonly nodeOf: ReadonlyMap<string, number>;
  readonly timing: Timing;
  readonly shared: Shared;
  /** The lag of each of the problem's arcs; -1 where it only holds a start that is fixed. */
  readonly lagOf: number[] = [];
  readonly movable: readonly number[];
  /** What ending a conflict cost wherever that was tried: the search learns as it goes. */
  readonly prices = new Map<string, { sum: number; count: number }>();
  /** Best with nothing shared: no plan costs less. */
  readonly root: Found;

  constructor(problem: Problem) {
    this.problem = problem;
    this.names = [origin, ...problem.tasks.map((task) => task.id)];
    this.nodeOf = new Map(this.names.map((name, index) => [name, index]));
    this.timing = new Timing(
      this.names.length,
      problem.lags.length + 2 * problem.tasks.length + 64,
    );
    this.shared = sharedOf(problem, this.nodeOf);
    this.movable = problem.tasks.flatMap((task, index) =>
      task.fixedStart === undefined ? [index + 1] : [],
    );
    this.addLags();
    this.timing.settle();
    this.timing.work = 0;
    this.root = {
      state: this.timing.save(),
      ovenOf: Int8Array.from(problem.stays.map((stay) => stay.oven ?? -1)),
      left: new Set(),
      cost: this.timing.cost(),
    };
  }

  node(task: string): number {
    return this.nodeOf.get(task) ?? 0;
  }

  /** One more order to keep; the starts follow, unless it is sure to cost `enough`. */
  keep({ from, to, minutes }: Order, enough = Infinity): void {
    this.timing.add(from.node, to.node, minutes + from.plus - to.plus, weights.hard, enough);
  }

  /** The starts as they now stand, counted from the origin. */
  startsNow(): Float64Array {
    const first = this.timing.start[0] ?? 0;
    return this.timing.start.map((one) => one - first);
  }

  /** What the starts as they now stand cost, a rule's price for each conflict left among it. */
  costNow(left: ReadonlySet<string>): number {
    return this.timing.cost() + weights.hard * left.size;
  }

  /** Rules first: they carry the starts far, and the wishes then find them nearly right. */
  private addLags(): void {
    const fix = 4 * weights.hard;
    for (const task of this.problem.tasks) {
      if (task.fixedStart === undefined) continue;
      this.push(0, this.node(task.id), task.fixedStart, fix, -1);
      this.push(this.node(task.id), 0, -task.fixedStart, fix, -1);
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
}
