/**
 * The best plan of a problem, or the best found within a bounded amount of work. First a dive: resolve
 * one conflict after another by its cheapest way out, as a list heuristic would. Then branch and bound
 * over the same choices, whose bound is the exact optimum of all lags without what is shared
 * (timing.ts); most dinners are proved best here. What is not is then mended by large-neighbourhood
 * search: a few tasks that press on each other are let go and placed anew, as well as can be.
 * Deterministic; work is counted, not timed.
 */
import { type Random, seeded } from '../../base/random.ts';
import { origin, type Problem, weights } from '../problem.ts';
import {
  type Conflict,
  conflictsOf,
  ovensOf,
  type Shared,
  sharedOf,
  type WayOut,
} from './conflicts.ts';
import { ordersOf } from './orders.ts';
import { type Packing, Repacker } from './repack.ts';
import { Timing, type TimingState } from './timing.ts';

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
  work: number;
}

/** Enough to prove most dinners; a replan of a usual one stays well under fifty milliseconds. */
const mostWork = 6_000;

/** Of the conflicts of one moment of the search, so many are weighed against each other. */
const conflictsWeighed = 3;

/** A bigger day has heavier searches, and gets fewer: so many for all its open tasks, past forty fewer still. */
const workForAll = 60_000;
const bigTasks = 40;

/** Of all work, what goes into the proof before mending begins. */
const proofShare = 0.3;
/** By when plans are built, before they are mended. */
const buildShare = 0.55;

/** How many tasks are taken out in one mending, and how many places are tried for them. */
const letGoLow = 2;
const letGoHigh = 5;
const placementsAtMost = 400;
/** A placement tried is so much lighter than a path search. */
const placementsPerSearch = 8;
/** What was told is left for a plan that costs at most this share of it, and so much less. */
const clearlyBetter = 0.9;
const worthMoving = 300;
/** A start so near to what was told is left there, at a cost of so much a minute. */
const snapMinutes = 4;
const snapWeight = 12;
/** Of those, how often it merely changes places with the one it presses on. */
const swapShare = 0.4;
/** How often one task loses its turn. */
const reorderShare = 0.4;
/** How often a whole dish is taken out, and how much of it. */
const chainShare = 0.5;
const chainAtMost = 5;
/** How often tasks are shaken, and how much worse than the best a plan may be to be followed. */
const shakeShare = 0.15;
const followShare = 1.3;
const polishShare = 1.1;
const followAtLeast = 8;
const backEvery = 25;
/** How late a table is tried on purpose. */
const tableTries = [0, 1, 2, 3, 5, 8, 13, 20, 30, 45];
/** Of the plans built, so many are timed exactly. */
const polishedAtMost = 4;
/** Mending that found nothing so many times in a row has found what it can. */
const idleLow = 40;
const idlePerTask = 12;

/** A point of the search: what was decided so far, and the least that it can cost. */
interface Node {
  /** The starts before the last decision; `way` is still to be added to them. */
  state: TimingState;
  way?: Extract<WayOut, { what: 'lag' }> | undefined;
  ovenOf: Int8Array;
  left: ReadonlySet<string>;
  bound: number;
  depth: number;
}

export function solve(problem: Problem, options: SolveOptions = {}): Solution {
  const size = problem.tasks.filter((task) => task.fixedStart === undefined).length;
  const usual = Math.min(mostWork, workForAll / Math.max(1, size));
  const work = options.work ?? usual * Math.min(1, bigTasks / Math.max(1, size));
  return new Search(problem).run(work);
}

class Search {
  private readonly problem: Problem;
  private readonly names: string[];
  private readonly nodeOf: Map<string, number>;
  private readonly timing: Timing;
  private readonly shared: Shared;
  private readonly lagOf: number[] = [];
  private readonly flatLags: { from: number; to: number; minutes: number; weight: number }[];
  private readonly isMovable: boolean[];
  private readonly root: Node;
  private readonly ordered = new Map<number, readonly number[]>();
  private best: Node | undefined;
  /** Arcs from here on hold starts where they were told: they press, but explain nothing. */
  private ownArcs = Number.POSITIVE_INFINITY;

  constructor(problem: Problem) {
    this.problem = problem;
    this.names = [origin, ...problem.tasks.map((task) => task.id)];
    this.nodeOf = new Map(this.names.map((name, index) => [name, index]));
    this.timing = new Timing(
      this.names.length,
      problem.lags.length + 2 * problem.tasks.length + 64,
    );
    this.shared = sharedOf(problem, this.nodeOf);
    this.flatLags = problem.lags.map((lag) => ({
      from: this.nodeOf.get(lag.from.task) ?? 0,
      to: this.nodeOf.get(lag.to.task) ?? 0,
      minutes: lag.minutes + lag.from.plus - lag.to.plus,
      weight: lag.weight,
    }));
    this.isMovable = [false, ...problem.tasks.map((task) => task.fixedStart === undefined)];
    this.addLags();
    this.timing.settle();
    this.timing.work = 0;
    this.root = {
      state: this.timing.save(),
      ovenOf: Int8Array.from(problem.stays.map((stay) => stay.oven ?? -1)),
      left: new Set(),
      bound: this.timing.cost(),
      depth: 0,
    };
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
    const told = this.keepTold();
    let bound = this.explore(this.root, work * proofShare);
    if (this.best && bound < this.best.bound) {
      const repacker = new Repacker(this.problem, this.nodeOf);
      this.buildSome(repacker, work * buildShare);
      this.mend(repacker, work);
    }
    let best = this.best;
    if (!best) throw new Error('a search ends with a plan');
    // What was told stands unless something clearly better is found.
    const worth = told ? Math.min(told.bound * clearlyBetter, told.bound - worthMoving) : 0;
    if (told && best.bound > worth) best = told;
    bound = Math.min(bound, best.bound);
    return this.solutionOf(this.snapped(best) ?? best, bound);
  }

  /** When each task was told to start, by node. */
  private toldStarts(): Map<number, number> {
    const told = new Map<number, number>();
    for (const lag of this.problem.lags) {
      const node = this.nodeOf.get(lag.to.task) ?? 0;
      if (lag.kind === 'promise' && lag.from.task === origin && this.isMovable[node])
        told.set(node, lag.minutes - lag.to.plus);
    }
    return told;
  }

  /**
   * The same turns, with every start that moved by a few minutes only back where it was told: the cook
   * is not called to and fro for a minute's better taste.
   */
  private snapped(best: Node): Node | undefined {
    const told = this.toldStarts();
    if (told.size === 0) return undefined;
    this.best = best;
    const { start, ovenOf } = this.packed();
    const near = [...told].filter(
      ([node, at]) => start[node] !== at && Math.abs((start[node] ?? 0) - at) <= snapMinutes,
    );
    if (near.length === 0) return undefined;
    this.timing.restore(this.root.state);
    for (const order of ordersOf(this.shared, { start, ovenOf })) this.addWay(order);
    this.ownArcs = this.timing.count;
    for (const [node, at] of told) {
      if (Math.abs((start[node] ?? 0) - at) > snapMinutes) continue;
      this.timing.add(0, node, at, snapWeight);
      this.timing.add(node, 0, -at, snapWeight);
    }
    const look = { start: this.timing.start, ovenOf, left: best.left };
    if (conflictsOf(this.shared, look).length > 0) return undefined;
    const now = this.timing.start.map((one) => one - (this.timing.start[0] ?? 0));
    const bound = this.costOf(now) + weights.hard * best.left.size;
    return { ...best, state: this.timing.save(), ovenOf, bound };
  }

  /** The turns that the cook was told, timed anew: where the search begins, if they still can be. */
  private keepTold(): Node | undefined {
    const start = this.timing.start.map((one) => one - (this.timing.start[0] ?? 0));
    const told = this.toldStarts();
    if (told.size === 0) return undefined;
    for (const [node, at] of told) start[node] = at;
    const ovenOf = Int8Array.from(
      ovensOf(this.shared, { start, ovenOf: this.root.ovenOf, left: this.root.left }),
    );
    for (const order of ordersOf(this.shared, { start, ovenOf })) this.addWay(order);
    const bound = this.timing.cost();
    const state = this.timing.save();
    const look = { start: this.timing.start, ovenOf, left: this.root.left };
    if (bound >= this.root.bound + weights.hard || conflictsOf(this.shared, look).length > 0)
      return undefined;
    this.best = { ...this.root, state, ovenOf, bound };
    return this.best;
  }

  /** Branch and bound below a node until `work` is spent; returns what no plan below it undercuts. */
  private explore(from: Node, work: number): number {
    const open: Node[] = [from];
    for (;;) {
      const node = takeBest(open);
      if (!node) return Infinity;
      if (this.best && (node.bound >= this.best.bound || this.timing.work >= work))
        return node.bound;
      this.dive(node, open, work);
    }
  }

  private dive(from: Node, open: Node[], work: number): void {
    let node: Node | undefined = from;
    while (node) {
      if (this.best && node.bound >= this.best.bound) return;
      const state = this.enter(node);
      const { ovenOf, left }: Node = node;
      const conflicts = conflictsOf(this.shared, { start: this.timing.start, ovenOf, left });
      const here: Node = { ...node, state, way: undefined };
      if (conflicts.length === 0) {
        this.best = here;
        return;
      }
      const children = this.branch(here, conflicts, work);
      node = children[0];
      for (const other of children.slice(1))
        if (!this.best || other.bound < this.best.bound) open.push(other);
    }
  }

  /** The starts at a node, and the state that holds them. */
  private enter(node: Node): TimingState {
    this.timing.restore(node.state);
    if (!node.way) return node.state;
    this.addWay(node.way);
    return this.timing.save();
  }

  private addWay({ from, to, minutes }: Extract<WayOut, { what: 'lag' }>): void {
    this.timing.add(from.node, to.node, minutes + from.plus - to.plus, weights.hard);
  }

  /** The conflict whose cheapest way out costs most tells most; its ways out, cheapest first. */
  private branch(node: Node, conflicts: readonly Conflict[], work: number): Node[] {
    const rushed = this.timing.work >= work;
    let chosen: Node[] = [];
    let least = -1;
    for (const { key, ways } of conflicts.slice(0, rushed ? 1 : conflictsWeighed)) {
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
    this.addWay(way);
    // What was left at odds keeps its price.
    const bound = this.timing.cost() + weights.hard * node.left.size;
    return { ...node, way, bound, depth };
  }

  /**
   * Plans built as cooks build them: the table at one instant or another, the roast before it, then
   * each step where it costs least, from the table back, from now on, or what matters most first.
   */
  private buildSome(repacker: Repacker, work: number): void {
    const { tasks, lags } = this.problem;
    const table = lags.find((lag) => lag.kind === 'table' && lag.from.task === origin);
    const serve = this.nodeOf.get(table?.to.task ?? '') ?? 0;
    this.timing.restore(this.root.state);
    const relaxed = this.timing.start.map((one) => one - (this.timing.start[0] ?? 0));
    const movable = tasks
      .map((task, index) => ({ task, node: index + 1 }))
      .filter(({ task, node }) => task.fixedStart === undefined && repacker.leaderOf[node] === node)
      .map(({ node }) => node);
    const first = repacker.leaderOf[serve] ?? 0;
    const rigid = movable.filter((node) => repacker.crewSize(node) > 1 && node !== first);
    const others = movable.filter((node) => node !== first && !rigid.includes(node));
    const start = (node: number): number => relaxed[node] ?? 0;
    const weight = (node: number): number => this.weightOf(node);
    const ways: ((a: number, b: number) => number)[] = [
      (a, b) => start(b) - start(a) || a - b,
      (a, b) => start(a) - start(b) || a - b,
      (a, b) => weight(b) - weight(a) || start(b) - start(a) || a - b,
    ];
    const built: { packing: Packing; cost: number }[] = [];
    for (const late of serve > 0 ? tableTries : [0]) {
      if (this.timing.work + repacker.tried / placementsPerSearch >= work) break;
      const held = relaxed.slice();
      for (const node of repacker.crewOf(first)) held[node] = (held[node] ?? 0) + late;
      for (const way of ways) {
        const ovenOf = Int8Array.from(this.problem.stays.map((stay) => stay.oven ?? 0));
        const order = [...rigid, ...[...others].sort(way)];
        const packing = repacker.build({ start: held, ovenOf }, order);
        if (packing) built.push({ packing, cost: this.costOf(packing.start) });
      }
    }
    built.sort((a, b) => a.cost - b.cost);
    for (const { packing } of built.slice(0, polishedAtMost)) this.polish(packing);
  }

  private weightOf(node: number): number {
    const name = this.names[node];
    return this.problem.lags.reduce(
      (most, lag) =>
        (lag.from.task === name || lag.to.task === name) && lag.weight < weights.hard
          ? Math.max(most, lag.weight)
          : most,
      0,
    );
  }

  private costOf(start: Float64Array): number {
    let cost = 0;
    for (const { from, to, minutes, weight } of this.flatLags)
      cost += Math.max(0, (start[from] ?? 0) + minutes - (start[to] ?? 0)) * weight;
    return cost;
  }

  /**
   * Takes a few tasks out and puts them back better, or at random and then better: a plan somewhat
   * worse than the best is followed for a while, since the way to a better one may lead over it.
   */
  private mend(repacker: Repacker, work: number): void {
    const dice = seeded(this.problem.tasks.length * 31 + this.problem.lags.length);
    const enough = idleLow + idlePerTask * this.problem.tasks.length;
    const spent = (): number => this.timing.work + repacker.tried / placementsPerSearch;
    let packing = this.packed();
    let cost = this.costOf(packing.start);
    const polish = (): void => {
      const before = this.best?.bound ?? Infinity;
      this.polish(packing);
      const after = this.best?.bound ?? Infinity;
      if (after < before) {
        packing = this.packed();
        cost = this.costOf(packing.start);
      }
    };
    for (let idle = 0; idle < enough && spent() < work; idle += 1) {
      const known = this.best?.bound ?? Infinity;
      if (dice.uniform() < reorderShare) {
        this.reorder(dice);
        if ((this.best?.bound ?? Infinity) >= known) continue;
        packing = this.packed();
        cost = this.costOf(packing.start);
        idle = 0;
        continue;
      }
      const shaken = dice.uniform() < shakeShare ? this.shake(repacker, packing, dice) : undefined;
      const next = shaken ?? repacker.improve(packing, this.letGo(packing, dice), placementsAtMost);
      if (!next) continue;
      const nextCost = this.costOf(next.start);
      if (nextCost > known * followShare + followAtLeast) continue;
      packing = next;
      cost = nextCost;
      if (cost < known * polishShare + followAtLeast) polish();
      if ((this.best?.bound ?? Infinity) < known) idle = 0;
      else if (idle % backEvery === backEvery - 1) packing = this.packed();
    }
    this.timing.work = Math.round(spent());
  }

  /** A task whose turn presses on others loses it; all others keep theirs, and all move as is best. */
  private reorder(dice: Random): void {
    const best = this.best;
    if (!best) return;
    const packing = this.packed();
    const pressing: { node: number; flow: number }[] = [];
    let sum = 0;
    for (let arc = this.lagOf.length; arc < this.timing.count; arc += 1) {
      const flow = Math.sqrt(this.timing.flow[arc] ?? 0);
      if (flow <= 0) continue;
      sum += flow;
      pressing.push({ node: arc, flow });
    }
    let throwAt = dice.uniform() * sum;
    const arc = pressing.find((one) => {
      throwAt -= one.flow;
      return throwAt <= 0;
    })?.node;
    if (arc === undefined) return;
    const ends = [this.timing.from[arc] ?? 0, this.timing.to[arc] ?? 0];
    const which = dice.uniform();
    if (which < swapShare) {
      const [first = 0, second = 0] = ends;
      // The later one takes the earlier one's place, and the earlier one follows it.
      const start = packing.start.slice();
      start[second] = (packing.start[first] ?? 0) - 0.4;
      start[first] = (packing.start[second] ?? 0) + 0.4;
      this.polish({ start, ovenOf: packing.ovenOf });
      return;
    }
    const without = new Set(which < 0.65 ? [ends[0]] : which < 0.9 ? [ends[1]] : ends);
    const free = new Set(
      [...without].filter((node): node is number => node !== undefined && node > 0),
    );
    this.timing.restore(this.root.state);
    for (const order of ordersOf(this.shared, packing, free)) this.addWay(order);
    this.timing.work += 1;
    const bound = this.timing.cost() + weights.hard * best.left.size;
    if (bound >= best.bound) return;
    const ovenOf = packing.ovenOf.slice();
    this.problem.stays.forEach((stay, index) => {
      if (free.has(this.nodeOf.get(stay.task) ?? 0)) ovenOf[index] = stay.oven ?? -1;
    });
    const state = this.timing.save();
    const open: Node[] = [];
    this.dive({ state, ovenOf, left: best.left, bound, depth: 0 }, open, 0);
  }

  /** Some tasks taken out and put back one after another, in an order that dice give. */
  private shake(repacker: Repacker, packing: Packing, dice: Random): Packing | undefined {
    const free = [
      ...new Set(
        [...this.letGo(packing, dice), ...this.letGo(packing, dice)].map(
          (node) => repacker.leaderOf[node] ?? node,
        ),
      ),
    ];
    for (let index = free.length - 1; index > 0; index -= 1) {
      const other = Math.floor(dice.uniform() * (index + 1));
      const here = free[index] ?? 0;
      free[index] = free[other] ?? 0;
      free[other] = here;
    }
    return repacker.build(packing, free);
  }

  private packed(): Packing {
    const best = this.best;
    if (!best) throw new Error('a plan is mended once there is one');
    this.timing.restore(best.state);
    const start = this.timing.start.map((one) => one - (this.timing.start[0] ?? 0));
    const look = { start, ovenOf: best.ovenOf, left: best.left };
    return { start, ovenOf: Int8Array.from(ovensOf(this.shared, look)) };
  }

  /** The best starts for the orders of a packing; they are never worse than the packing's own. */
  private polish(packing: Packing): void {
    const { ovenOf } = packing;
    this.timing.restore(this.root.state);
    for (const order of ordersOf(this.shared, packing)) this.addWay(order);
    const left = this.best?.left ?? this.root.left;
    const bound = this.timing.cost() + weights.hard * left.size;
    if (this.best && bound >= this.best.bound) return;
    // Turns that were changed by hand need not be all that is needed.
    const look = { start: this.timing.start, ovenOf, left };
    if (conflictsOf(this.shared, look).length > 0) return;
    this.best = { state: this.timing.save(), ovenOf, left, bound, depth: 0 };
  }

  /** A task that pays, and some that stand near it in time or wait for it. */
  private letGo({ start }: Packing, dice: Random): number[] {
    const { tasks } = this.problem;
    const paying: number[] = [];
    for (const { from, to, minutes } of this.flatLags) {
      if ((start[from] ?? 0) + minutes <= (start[to] ?? 0)) continue;
      if (this.isMovable[from]) paying.push(from);
      if (this.isMovable[to]) paying.push(to);
    }
    const pick = <T>(list: readonly T[]): T | undefined =>
      list[Math.floor(dice.uniform() * list.length)];
    const movable = tasks.map((_, index) => index + 1).filter((node) => this.isMovable[node]);
    const seed = pick(paying) ?? pick(movable) ?? 1;
    const size = letGoLow + Math.floor(dice.uniform() * (letGoHigh - letGoLow + 1));
    const at = start[seed] ?? 0;
    const near = movable
      .filter((node) => node !== seed)
      .sort((a, b) => Math.abs((start[a] ?? 0) - at) - Math.abs((start[b] ?? 0) - at) || a - b);
    const free = new Set([seed]);
    if (dice.uniform() < chainShare) for (const node of this.chainOf(seed)) free.add(node);
    const full = Math.max(size, free.size + 1 + Math.floor(dice.uniform() * 2));
    for (let tries = 0; free.size < full && tries < 4 * full; tries += 1) {
      const other =
        dice.uniform() < 0.2
          ? pick(paying)
          : near[Math.floor(dice.uniform() * Math.min(near.length, 2 * size))];
      if (other !== undefined) free.add(other);
    }
    return [...free];
  }

  /** The steps before and after a task that only make sense together: a dish, most often. */
  private chainOf(node: number): number[] {
    const chain = [node];
    for (let index = 0; index < chain.length && chain.length < chainAtMost; index += 1)
      for (const other of this.orderedWith(chain[index] ?? 0))
        if (!chain.includes(other)) chain.push(other);
    return chain.slice(0, chainAtMost);
  }

  private orderedWith(node: number): readonly number[] {
    const known = this.ordered.get(node);
    if (known) return known;
    const name = this.names[node];
    const others = this.problem.lags.flatMap((lag) => {
      if (lag.kind !== 'order') return [];
      const other =
        lag.from.task === name ? lag.to.task : lag.to.task === name ? lag.from.task : undefined;
      const index = other === undefined ? 0 : (this.nodeOf.get(other) ?? 0);
      return index > 0 && this.problem.tasks[index - 1]?.fixedStart === undefined ? [index] : [];
    });
    this.ordered.set(node, others);
    return others;
  }

  private solutionOf(best: Node, bound: number): Solution {
    this.timing.restore(best.state);
    const { timing, names } = this;
    const arcs: BindingArc[] = [];
    const end = Math.min(timing.count, best.state.count, this.ownArcs);
    for (let arc = 0; arc < end; arc += 1) {
      const added = arc >= this.lagOf.length;
      const lag = added ? undefined : this.lagOf[arc];
      if (lag === -1) continue;
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
    const look = { start: timing.start, ovenOf: best.ovenOf, left: best.left };
    return {
      starts: new Map(this.problem.tasks.map((task, index) => [task.id, timing.at(index + 1)])),
      ovens: ovensOf(this.shared, look),
      clashes: best.left.size,
      cost: best.bound,
      bound,
      proven: bound >= best.bound,
      arcs,
      work: timing.work,
    };
  }
}

/** The open node that promises most; the deepest of equals, so that plans come soon. */
function takeBest(open: Node[]): Node | undefined {
  let index = 0;
  for (let one = 1; one < open.length; one += 1) {
    const a = open[one];
    const b = open[index];
    if (a && b && (a.bound < b.bound || (a.bound === b.bound && a.depth > b.depth))) index = one;
  }
  const node = open[index];
  const last = open.pop();
  if (last && node && last !== node) open[index] = last;
  return node;
}
