/**
 * A few tasks taken out of a plan and put back where they cost least, all else staying where it is:
 * tried in every way that can still be better, up to a count. What it finds keeps every rule.
 */
import { clamp } from '../../base/units.ts';
import { changeMinutes, origin, type Problem, weights } from '../problem.ts';

/** A plan as bare starts by node (0 is the origin) and the oven of each stay. */
export interface Packing {
  start: Float64Array;
  ovenOf: Int8Array;
}

interface Bound {
  other: number;
  minutes: number;
  weight: number;
  /** Whether the other comes first: start >= start[other] + minutes. */
  after: boolean;
}

interface Span {
  node: number;
  other: number;
  from: number;
  to: number;
  fixed: boolean;
}

interface Candidate {
  at: number;
  oven: number;
  cost: number;
}

/** Places remembered for each task taken out. */
const candidatesAtMost = 14;

/** How far from where it is a task is looked for when no rule bounds it. */
const farMinutes = 360;

export class Repacker {
  private readonly bounds: Bound[][];
  /** Tasks that rules tie rigidly to a leader move with it: node and minutes after the leader. */
  private readonly crew: { node: number; plus: number }[][];
  readonly leaderOf: Int32Array;
  private readonly spans: { capacity: number; list: Span[] }[];
  private readonly spansOf: { resource: number; span: Span }[][];
  private readonly stayOf: number[][];
  private readonly stays: Span[];
  private readonly problem: Problem;
  private readonly change: number[][];
  private readonly out: Uint8Array;
  private readonly start: Float64Array;
  private readonly ovenOf: Int8Array;
  /** Placements tried so far. */
  tried = 0;

  constructor(problem: Problem, nodeOf: ReadonlyMap<string, number>) {
    this.problem = problem;
    const node = (task: string): number => nodeOf.get(task) ?? 0;
    const nodes = problem.tasks.length + 1;
    const fixed = new Set(problem.tasks.filter((t) => t.fixedStart !== undefined).map((t) => t.id));
    fixed.add(origin);
    this.bounds = Array.from({ length: nodes }, () => []);
    for (const lag of problem.lags) {
      const from = node(lag.from.task);
      const to = node(lag.to.task);
      const minutes = lag.minutes + lag.from.plus - lag.to.plus;
      const { weight } = lag;
      this.bounds[to]?.push({ other: from, minutes, weight, after: true });
      this.bounds[from]?.push({ other: to, minutes, weight, after: false });
    }
    const { crew, leaderOf } = crewsOf(this.bounds);
    this.crew = crew;
    this.leaderOf = leaderOf;
    const spanOf = (one: { from: { task: string; plus: number }; to: typeof one.from }): Span => ({
      node: node(one.from.task),
      other: node(one.to.task),
      from: one.from.plus,
      to: one.to.plus,
      fixed: fixed.has(one.from.task) && fixed.has(one.to.task),
    });
    this.spans = problem.resources.map(({ id, capacity }) => ({
      capacity,
      list: problem.uses.filter((use) => use.resource === id).map(spanOf),
    }));
    this.spansOf = Array.from({ length: nodes }, () => []);
    this.spans.forEach(({ capacity, list }, resource) => {
      if (list.length <= capacity) return;
      for (const span of list) this.spansOf[span.node]?.push({ resource, span });
    });
    this.stays = problem.stays.map(spanOf);
    this.stayOf = Array.from({ length: nodes }, () => []);
    this.stays.forEach((span, index) => {
      this.stayOf[span.node]?.push(index);
      if (span.other !== span.node) this.stayOf[span.other]?.push(index);
    });
    const oven = problem.ovens[0];
    this.change = problem.stays.map((a) =>
      problem.stays.map((b) => (oven && a.task !== b.task ? changeMinutes(a, b, oven) : 0)),
    );
    this.out = new Uint8Array(nodes);
    this.start = new Float64Array(nodes);
    this.ovenOf = new Int8Array(problem.stays.length);
  }

  /** A better packing with these tasks and their crews moved, or undefined; `most` placements are tried at most. */
  improve(packing: Packing, nodes: readonly number[], most: number): Packing | undefined {
    this.start.set(packing.start);
    this.ovenOf.set(packing.ovenOf);
    const free = [...new Set(nodes.map((node) => this.leaderOf[node] ?? node))].filter(
      (node) => node > 0,
    );
    for (const node of free) this.setOut(node, 1);
    const among = this.costAmong(free);
    const lists = free.map((node) => ({
      node,
      candidates: this.candidates(node, among, candidatesAtMost),
    }));
    lists.sort((a, b) => a.candidates.length - b.candidates.length || a.node - b.node);
    const least = lists.map((one) => one.candidates[0]?.cost ?? Infinity);
    const rest = least.map((_, index) => least.slice(index).reduce((sum, one) => sum + one, 0));
    let found: Packing | undefined;
    let best = among - 0.5;
    const limit = this.tried + most;
    const place = (index: number, cost: number): void => {
      const one = lists[index];
      if (!one) {
        best = cost - 0.5;
        found = { start: this.start.slice(), ovenOf: this.ovenOf.slice() };
        return;
      }
      for (const candidate of one.candidates) {
        if (this.tried >= limit) return;
        if (cost + candidate.cost + (rest[index + 1] ?? 0) >= best) break;
        this.tried += 1;
        if (!this.fits(one.node, candidate)) continue;
        const pairs = this.pairCost(one.node, candidate.at, lists, index);
        if (cost + candidate.cost + pairs + (rest[index + 1] ?? 0) >= best) continue;
        this.put(one.node, candidate);
        place(index + 1, cost + candidate.cost + pairs);
        this.setOut(one.node, 1);
      }
    };
    if (rest[0] !== undefined && rest[0] < best) place(0, 0);
    for (const node of free) this.setOut(node, 0);
    return found;
  }

  crewOf(leader: number): number[] {
    return (this.crew[leader] ?? []).map(({ node }) => node);
  }

  crewSize(leader: number): number {
    return this.crew[leader]?.length ?? 0;
  }

  private setOut(leader: number, out: 0 | 1): void {
    for (const { node } of this.crew[leader] ?? []) this.out[node] = out;
  }

  private move(leader: number, at: number): void {
    for (const { node, plus } of this.crew[leader] ?? []) this.start[node] = at + plus;
  }

  private put(node: number, { at, oven }: Candidate): void {
    this.move(node, at);
    this.setOut(node, 0);
    if (oven >= 0) for (const stay of this.stayOf[node] ?? []) this.ovenOf[stay] = oven;
  }

  /** What the tasks cost where they are, each lag counted once. */
  private costAmong(free: readonly number[]): number {
    let cost = 0;
    const seen = new Set<number>();
    for (const leader of free)
      for (const { node } of this.crew[leader] ?? []) {
        seen.add(node);
        for (const bound of this.bounds[node] ?? [])
          if (!seen.has(bound.other))
            cost += missed(bound, this.start[node] ?? 0, this.start[bound.other] ?? 0);
      }
    return cost;
  }

  /** Where a task could go beside what stays, cheapest first; none dearer than all pay now. */
  private candidates(leader: number, most: number, howMany: number): Candidate[] {
    const now = this.start[leader] ?? 0;
    let low = now - farMinutes;
    let high = now + farMinutes;
    const soft: { bound: Bound; plus: number }[] = [];
    for (const { node, plus } of this.crew[leader] ?? [])
      for (const bound of this.bounds[node] ?? []) {
        if (this.out[bound.other]) continue;
        const other = this.start[bound.other] ?? 0;
        if (bound.weight < weights.hard) soft.push({ bound, plus });
        else if (bound.after) low = Math.max(low, other + bound.minutes - plus);
        else high = Math.min(high, other - bound.minutes - plus);
      }
    const ovens = this.ovensFor(leader);
    const costAt = (at: number): number =>
      soft.reduce(
        (sum, { bound, plus }) => sum + missed(bound, at + plus, this.start[bound.other] ?? 0),
        0,
      );
    // The cost is convex in the start: it is least at a bend, and climbs from there either way.
    let least = clamp(now, low, high);
    let leastCost = costAt(least);
    for (const { bound, plus } of soft) {
      const other = this.start[bound.other] ?? 0;
      const bend = bound.after ? other + bound.minutes - plus : other - bound.minutes - plus;
      const at = clamp(bend, low, high);
      const cost = costAt(at);
      if (cost < leastCost || (cost === leastCost && at < least)) {
        least = at;
        leastCost = cost;
      }
    }
    const result: Candidate[] = [];
    let left = least;
    let right = least + 1;
    let leftCost = left >= low && low <= high ? leastCost : Infinity;
    let rightCost = right <= high ? costAt(right) : Infinity;
    while (result.length < howMany) {
      const goLeft = leftCost <= rightCost;
      const cost = goLeft ? leftCost : rightCost;
      if (cost >= most) break;
      const at = goLeft ? left : right;
      for (const oven of ovens) {
        this.tried += 1;
        if (this.fits(leader, { at, oven, cost })) result.push({ at, oven, cost });
      }
      if (goLeft) {
        left -= 1;
        leftCost = left >= low ? costAt(left) : Infinity;
      } else {
        right += 1;
        rightCost = right <= high ? costAt(right) : Infinity;
      }
    }
    return result;
  }

  /** Puts tasks in one after another, each where it costs least beside those before it. */
  build(packing: Packing, order: readonly number[]): Packing | undefined {
    this.start.set(packing.start);
    this.ovenOf.set(packing.ovenOf);
    for (const node of order) this.setOut(node, 1);
    let whole = true;
    for (const node of order) {
      const [best] = whole ? this.candidates(node, Infinity, 1) : [];
      if (best) this.put(node, best);
      else whole = false;
      if (!whole) this.setOut(node, 0);
    }
    return whole ? { start: this.start.slice(), ovenOf: this.ovenOf.slice() } : undefined;
  }

  private ovensFor(node: number): number[] {
    const stay = (this.stayOf[node] ?? []).find((one) => this.stays[one]?.node === node);
    if (stay === undefined) return [-1];
    const given = this.problem.stays[stay]?.oven;
    if (given !== undefined) return [given];
    return this.problem.ovens.map((_, oven) => oven);
  }

  /** Soft lags between a crew being placed and those placed before it. */
  private pairCost(
    leader: number,
    at: number,
    lists: readonly { node: number }[],
    placed: number,
  ): number {
    let cost = 0;
    for (const { node, plus } of this.crew[leader] ?? [])
      for (const bound of this.bounds[node] ?? []) {
        const theirs = this.leaderOf[bound.other] ?? 0;
        for (let index = 0; index < placed; index += 1)
          if (lists[index]?.node === theirs)
            cost += missed(bound, at + plus, this.start[bound.other] ?? 0);
      }
    return cost;
  }

  /** Whether a crew can start then beside everything that is in the plan. */
  private fits(leader: number, { at, oven }: Candidate): boolean {
    const crew = this.crew[leader] ?? [];
    const was = this.start[leader] ?? 0;
    const outWas = this.out[leader] ?? 0;
    this.move(leader, at);
    this.setOut(leader, 0);
    const fits = crew.every(
      ({ node }) =>
        this.keepsRules(node) &&
        this.fitsResources(node) &&
        (this.stayOf[node] ?? []).every((stay) => this.fitsOven(stay, oven)),
    );
    this.move(leader, was);
    this.setOut(leader, outWas === 1 ? 1 : 0);
    return fits;
  }

  private keepsRules(node: number): boolean {
    for (const bound of this.bounds[node] ?? []) {
      if (bound.weight < weights.hard || this.out[bound.other]) continue;
      if (missed(bound, this.start[node] ?? 0, this.start[bound.other] ?? 0) > 0) return false;
    }
    return true;
  }

  private fitsResources(node: number): boolean {
    for (const { resource, span } of this.spansOf[node] ?? []) {
      const shared = this.spans[resource];
      if (!shared) continue;
      const from = this.from(span);
      const to = this.to(span);
      if (to <= from) continue;
      if (this.mostBeside(shared.list, span, from, to) >= shared.capacity) return false;
    }
    return true;
  }

  /** The most that others take at once between two instants. */
  private mostBeside(list: readonly Span[], span: Span, from: number, to: number): number {
    let most = 0;
    for (const one of list) {
      if (one === span || this.isOut(one)) continue;
      const when = Math.max(from, this.from(one));
      if (when >= to || when >= this.to(one)) continue;
      let there = 0;
      for (const other of list)
        if (
          other !== span &&
          !this.isOut(other) &&
          this.from(other) <= when &&
          when < this.to(other)
        )
          there += 1;
      if (there > most) most = there;
    }
    return most;
  }

  private fitsOven(index: number, oven: number): boolean {
    const mine = this.stays[index];
    const stay = this.problem.stays[index];
    if (!mine || !stay || this.isOut(mine)) return true;
    const where = this.stays[index]?.node === 0 || oven < 0 ? (this.ovenOf[index] ?? 0) : oven;
    const from = this.from(mine);
    const to = this.to(mine);
    let beside: number[] | undefined;
    for (let other = 0; other < this.stays.length; other += 1) {
      const theirs = this.stays[other];
      const theirStay = this.problem.stays[other];
      if (other === index || !theirs || !theirStay || this.isOut(theirs)) continue;
      if (theirStay.task === stay.task || (this.ovenOf[other] ?? 0) !== where) continue;
      if (mine.fixed && theirs.fixed) continue;
      const theirFrom = this.from(theirs);
      const theirTo = this.to(theirs);
      const after = this.change[other]?.[index] ?? 0;
      const before = this.change[index]?.[other] ?? 0;
      if (after > 0 && theirTo + after > from && to + before > theirFrom) return false;
      if (inside(from, theirFrom, theirStay.doorShutMinutes)) return false;
      if (inside(to, theirFrom, theirStay.doorShutMinutes)) return false;
      if (inside(theirFrom, from, stay.doorShutMinutes)) return false;
      if (inside(theirTo, from, stay.doorShutMinutes)) return false;
      if (theirFrom < to && from < theirTo) {
        beside ??= [];
        beside.push(other);
      }
    }
    if (!beside) return true;
    const shelves = this.problem.ovens[where]?.shelves ?? 1;
    const need = (one: number): number => this.problem.stays[one]?.shelves ?? 0;
    const fromOf = (one: number): number => (this.stays[one] ? this.from(this.stays[one]) : 0);
    const toOf = (one: number): number => (this.stays[one] ? this.to(this.stays[one]) : 0);
    for (const instant of [from, ...beside.map(fromOf).filter((one) => one > from)]) {
      const taken = beside
        .filter((one) => fromOf(one) <= instant && instant < toOf(one))
        .reduce((sum, one) => sum + need(one), need(index));
      if (taken > shelves) return false;
    }
    return true;
  }

  private from(span: Span): number {
    return (this.start[span.node] ?? 0) + span.from;
  }

  private to(span: Span): number {
    return (this.start[span.other] ?? 0) + span.to;
  }

  private isOut(span: Span): boolean {
    return this.out[span.node] === 1 || this.out[span.other] === 1;
  }
}

/** Groups of tasks that rules hold at fixed minutes from each other; alone, a task leads itself. */
function crewsOf(bounds: readonly (readonly Bound[])[]): {
  crew: { node: number; plus: number }[][];
  leaderOf: Int32Array;
} {
  const leaderOf = new Int32Array(bounds.length).fill(-1);
  const crew: { node: number; plus: number }[][] = bounds.map(() => []);
  for (let leader = 0; leader < bounds.length; leader += 1) {
    if (leaderOf[leader] !== -1) continue;
    const members = [{ node: leader, plus: 0 }];
    leaderOf[leader] = leader;
    for (let index = 0; index < members.length && leader > 0; index += 1) {
      const member = members[index];
      if (!member) break;
      for (const bound of bounds[member.node] ?? []) {
        if (bound.weight < weights.hard || leaderOf[bound.other] !== -1) continue;
        const minutes = bound.after ? -bound.minutes : bound.minutes;
        const rigid = (bounds[member.node] ?? []).some(
          (back) =>
            back.other === bound.other &&
            back.weight >= weights.hard &&
            back.after !== bound.after &&
            (back.after ? -back.minutes : back.minutes) === minutes,
        );
        if (!rigid) continue;
        leaderOf[bound.other] = leader;
        members.push({ node: bound.other, plus: member.plus + minutes });
      }
    }
    crew[leader] = members;
  }
  return { crew, leaderOf };
}

const inside = (when: number, from: number, minutes: number): boolean =>
  minutes > 0 && when > from && when < from + minutes;

function missed(bound: Bound, own: number, other: number): number {
  const minutes = bound.after ? other + bound.minutes - own : own + bound.minutes - other;
  return minutes > 0 ? minutes * bound.weight : 0;
}
