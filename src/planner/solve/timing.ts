/**
 * The best starts when only lags bind: minimise the sum of weight times minutes missed over all lags.
 * That is the dual of a greatest-cost circulation whose capacities are the weights, so an optimal flow
 * proves the starts best, and the lags that carry flow are the ones that bind. Lags are added one at
 * a time, each repaired by cheapest augmenting paths (primal-dual), which is what a search by added
 * orders needs. Ahuja, Magnanti, Orlin, Network Flows (1993), chapters 9 and 14, from memory.
 */

export interface TimingState {
  count: number;
  flow: Float64Array;
  start: Float64Array;
  added: AddedArc | undefined;
}

/** Arcs that a search added to those of the problem, newest first. */
export interface AddedArc {
  from: number;
  to: number;
  minutes: number;
  weight: number;
  before: AddedArc | undefined;
}

export class Timing {
  readonly nodes: number;
  private size: number;
  private base = 0;
  count = 0;
  from: Int32Array;
  to: Int32Array;
  length: Float64Array;
  weight: Float64Array;
  flow: Float64Array;
  readonly start: Float64Array;
  /** Augmentations and searches so far: the measure of work, equal on every machine. */
  work = 0;
  private added: AddedArc | undefined;
  private readonly headOut: Int32Array;
  private readonly headIn: Int32Array;
  private nextOut: Int32Array;
  private nextIn: Int32Array;
  private baseOut: Int32Array = new Int32Array(0);
  private baseIn: Int32Array = new Int32Array(0);
  private readonly distance: Float64Array;
  private readonly via: Int32Array;
  private readonly settled: Uint8Array;

  constructor(nodes: number, arcs: number) {
    this.nodes = nodes;
    this.size = Math.max(16, arcs);
    this.from = new Int32Array(this.size);
    this.to = new Int32Array(this.size);
    this.length = new Float64Array(this.size);
    this.weight = new Float64Array(this.size);
    this.flow = new Float64Array(this.size);
    this.nextOut = new Int32Array(this.size);
    this.nextIn = new Int32Array(this.size);
    this.start = new Float64Array(nodes);
    this.headOut = new Int32Array(nodes).fill(-1);
    this.headIn = new Int32Array(nodes).fill(-1);
    this.distance = new Float64Array(nodes);
    this.via = new Int32Array(nodes);
    this.settled = new Uint8Array(nodes);
  }

  /** start[to] should be at least start[from] + minutes; each minute missed costs `weight`. */
  add(from: number, to: number, minutes: number, weight: number): void {
    const arc = this.append(from, to, minutes, weight);
    this.added = { from, to, minutes, weight, before: this.added };
    this.repair(arc);
  }

  /** What was added so far belongs to the problem; later arcs can be taken back. */
  settle(): void {
    this.base = this.count;
    this.added = undefined;
    this.baseOut = this.headOut.slice();
    this.baseIn = this.headIn.slice();
  }

  save(): TimingState {
    return {
      count: this.count,
      flow: this.flow.slice(0, this.count),
      start: this.start.slice(),
      added: this.added,
    };
  }

  restore(state: TimingState): void {
    this.count = this.base;
    this.headOut.set(this.baseOut);
    this.headIn.set(this.baseIn);
    const arcs: AddedArc[] = [];
    for (let one = state.added; one; one = one.before) arcs.push(one);
    for (let index = arcs.length - 1; index >= 0; index -= 1) {
      const one = arcs[index];
      if (one) this.append(one.from, one.to, one.minutes, one.weight);
    }
    this.flow.set(state.flow);
    this.start.set(state.start);
    this.added = state.added;
  }

  /** Minutes by which an arc's bound is missed; negative is room. */
  missed(arc: number): number {
    return (
      (this.length[arc] ?? 0) +
      (this.start[this.from[arc] ?? 0] ?? 0) -
      (this.start[this.to[arc] ?? 0] ?? 0)
    );
  }

  cost(): number {
    let sum = 0;
    for (let arc = 0; arc < this.count; arc += 1) {
      const missed = this.missed(arc);
      if (missed > 0) sum += missed * (this.weight[arc] ?? 0);
    }
    return sum;
  }

  /** A node's start, counted from node 0. */
  at(node: number): number {
    return (this.start[node] ?? 0) - (this.start[0] ?? 0);
  }

  private append(from: number, to: number, minutes: number, weight: number): number {
    if (this.count === this.size) this.grow();
    const arc = this.count;
    this.count += 1;
    this.from[arc] = from;
    this.to[arc] = to;
    this.length[arc] = minutes;
    this.weight[arc] = weight;
    this.flow[arc] = 0;
    this.nextOut[arc] = this.headOut[from] ?? -1;
    this.headOut[from] = arc;
    this.nextIn[arc] = this.headIn[to] ?? -1;
    this.headIn[to] = arc;
    return arc;
  }

  private grow(): void {
    this.size *= 2;
    const wider = <T extends Int32Array | Float64Array>(old: T, fresh: T): T => {
      fresh.set(old as never);
      return fresh;
    };
    this.from = wider(this.from, new Int32Array(this.size));
    this.to = wider(this.to, new Int32Array(this.size));
    this.length = wider(this.length, new Float64Array(this.size));
    this.weight = wider(this.weight, new Float64Array(this.size));
    this.flow = wider(this.flow, new Float64Array(this.size));
    this.nextOut = wider(this.nextOut, new Int32Array(this.size));
    this.nextIn = wider(this.nextIn, new Int32Array(this.size));
  }

  /**
   * Ends with the arc's bound kept, or its flow at its weight: then missing it is the cheaper way.
   * Between, the head is pushed later with all that hangs on it, until that would push the tail too;
   * then as much flow as the way back bears goes round.
   */
  private repair(arc: number): void {
    const tail = this.from[arc] ?? 0;
    const head = this.to[arc] ?? 0;
    const weight = this.weight[arc] ?? 0;
    if (tail === head) return;
    for (;;) {
      const missed = this.missed(arc);
      if (missed <= 0 || (this.flow[arc] ?? 0) >= weight) return;
      const reach = this.search(head, tail, missed);
      const step = Math.min(reach, missed);
      if (step > 0)
        for (let node = 0; node < this.nodes; node += 1) {
          const distance = this.distance[node] ?? Infinity;
          if (distance < step) this.start[node] = (this.start[node] ?? 0) + step - distance;
        }
      if (step >= missed) return;
      let most = weight - (this.flow[arc] ?? 0);
      for (let node = tail; node !== head; ) {
        const code = this.via[node] ?? 0;
        const used = code >> 1;
        const forward = (code & 1) === 0;
        const room = forward
          ? (this.weight[used] ?? 0) - (this.flow[used] ?? 0)
          : (this.flow[used] ?? 0);
        if (room < most) most = room;
        node = (forward ? this.from[used] : this.to[used]) ?? head;
      }
      for (let node = tail; node !== head; ) {
        const code = this.via[node] ?? 0;
        const used = code >> 1;
        const forward = (code & 1) === 0;
        this.flow[used] = (this.flow[used] ?? 0) + (forward ? most : -most);
        node = (forward ? this.from[used] : this.to[used]) ?? head;
      }
      this.flow[arc] = (this.flow[arc] ?? 0) + most;
    }
  }

  /** Least room from `source` to every node nearer than `limit`; returns that to `target`. */
  private search(source: number, target: number, limit: number): number {
    const { distance, settled, via } = this;
    this.work += 1;
    distance.fill(Infinity);
    settled.fill(0);
    distance[source] = 0;
    const open: number[] = [source];
    while (open.length > 0) {
      let best = 0;
      for (let index = 1; index < open.length; index += 1)
        if ((distance[open[index] ?? 0] ?? 0) < (distance[open[best] ?? 0] ?? 0)) best = index;
      const node = open[best] ?? 0;
      open[best] = open[open.length - 1] ?? 0;
      open.pop();
      if (settled[node]) continue;
      const here = distance[node] ?? 0;
      if (here >= limit) return limit;
      if (node === target) return here;
      settled[node] = 1;
      const startHere = this.start[node] ?? 0;
      for (let arc = this.headOut[node] ?? -1; arc >= 0; arc = this.nextOut[arc] ?? -1) {
        if ((this.flow[arc] ?? 0) >= (this.weight[arc] ?? 0)) continue;
        const other = this.to[arc] ?? 0;
        const room = (this.start[other] ?? 0) - startHere - (this.length[arc] ?? 0);
        const next = here + Math.max(0, room);
        if (next < (distance[other] ?? Infinity)) {
          distance[other] = next;
          via[other] = arc << 1;
          open.push(other);
        }
      }
      for (let arc = this.headIn[node] ?? -1; arc >= 0; arc = this.nextIn[arc] ?? -1) {
        if ((this.flow[arc] ?? 0) <= 0) continue;
        const other = this.from[arc] ?? 0;
        const room = (this.start[other] ?? 0) - startHere + (this.length[arc] ?? 0);
        const next = here + Math.max(0, room);
        if (next < (distance[other] ?? Infinity)) {
          distance[other] = next;
          via[other] = (arc << 1) | 1;
          open.push(other);
        }
      }
    }
    return Infinity;
  }
}
