/**
 * The best starts when only lags bind: minimise the sum of weight times minutes missed over all lags.
 * That is the dual of a greatest-cost circulation whose capacities are the weights, so an optimal flow
 * proves the starts best, and the lags that carry flow are the ones that bind. Lags are added one at
 * a time, each repaired by cheapest augmenting paths (primal-dual), which is what a search by added
 * orders needs. Ahuja, Magnanti, Orlin, Network Flows (1993), chapters 9 and 14, from memory.
 */

export interface TimingState {
  /** Of all arcs, the added ones last and in the order of `added`. */
  flow: Float64Array;
  start: Float64Array;
  /** What a search added to the arcs of the problem, four numbers each: from, to, minutes, weight. */
  added: Float64Array;
}

/** Arcs by their index, the last not included. */
export interface ArcRange {
  from: number;
  to: number;
}

export const noArcs: ArcRange = { from: 0, to: 0 };

export class Timing {
  readonly nodes: number;
  private size: number;
  /** Arcs of the problem; those from here on a search added. */
  base = 0;
  /** Arcs so far, with those taken back. */
  count = 0;
  from: Int32Array;
  to: Int32Array;
  length: Float64Array;
  weight: Float64Array;
  flow: Float64Array;
  readonly start: Float64Array;
  /** Augmentations and searches so far: the measure of work, equal on every machine. */
  work = 0;
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
    this.repair(this.append(from, to, minutes, weight));
  }

  /** Takes an added arc back: what it carried goes by the cheapest other ways. */
  remove(arc: number): void {
    const tail = this.from[arc] ?? 0;
    const head = this.to[arc] ?? 0;
    let carried = this.flow[arc] ?? 0;
    this.flow[arc] = 0;
    this.weight[arc] = 0;
    unlink(this.headOut, this.nextOut, tail, arc);
    unlink(this.headIn, this.nextIn, head, arc);
    while (carried > 0) {
      const reach = this.search(tail, head, Infinity);
      this.pushLater(reach);
      carried -= this.send(tail, head, carried);
    }
  }

  /** What was added so far belongs to the problem; later arcs can be taken back. */
  settle(): void {
    this.base = this.count;
    this.baseOut = this.headOut.slice();
    this.baseIn = this.headIn.slice();
  }

  save(): TimingState {
    const { base, count } = this;
    let kept = 0;
    for (let arc = base; arc < count; arc += 1) if ((this.weight[arc] ?? 0) > 0) kept += 1;
    const flow = new Float64Array(base + kept);
    flow.set(this.flow.subarray(0, base));
    const added = new Float64Array(4 * kept);
    let index = 0;
    for (let arc = base; arc < count; arc += 1) {
      const weight = this.weight[arc] ?? 0;
      if (weight <= 0) continue;
      added[4 * index] = this.from[arc] ?? 0;
      added[4 * index + 1] = this.to[arc] ?? 0;
      added[4 * index + 2] = this.length[arc] ?? 0;
      added[4 * index + 3] = weight;
      flow[base + index] = this.flow[arc] ?? 0;
      index += 1;
    }
    return { flow, start: this.start.slice(), added };
  }

  restore({ flow, start, added }: TimingState): void {
    this.count = this.base;
    this.headOut.set(this.baseOut);
    this.headIn.set(this.baseIn);
    for (let at = 0; at < added.length; at += 4)
      this.append(added[at] ?? 0, added[at + 1] ?? 0, added[at + 2] ?? 0, added[at + 3] ?? 0);
    this.flow.set(flow);
    this.start.set(start);
  }

  /** Minutes by which an arc's bound is missed; negative is room. */
  missed(arc: number): number {
    return (
      (this.length[arc] ?? 0) +
      (this.start[this.from[arc] ?? 0] ?? 0) -
      (this.start[this.to[arc] ?? 0] ?? 0)
    );
  }

  /** What all arcs but some cost. */
  cost(but: ArcRange = noArcs): number {
    let sum = 0;
    for (let arc = 0; arc < this.count; arc += 1) {
      if (arc >= but.from && arc < but.to) continue;
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
      const step = Math.min(this.search(head, tail, missed), missed);
      this.pushLater(step);
      if (step >= missed) return;
      const most = weight - (this.flow[arc] ?? 0);
      this.flow[arc] = (this.flow[arc] ?? 0) + this.send(head, tail, most);
    }
  }

  /** All that the last search found nearer than `step` starts so much later. */
  private pushLater(step: number): void {
    if (step <= 0) return;
    for (let node = 0; node < this.nodes; node += 1) {
      const distance = this.distance[node] ?? Infinity;
      if (distance < step) this.start[node] = (this.start[node] ?? 0) + step - distance;
    }
  }

  /** Flow along the way that the last search found, as much as it bears and `most` allows. */
  private send(source: number, target: number, most: number): number {
    let sent = most;
    for (let node = target; node !== source; ) {
      const code = this.via[node] ?? 0;
      const arc = code >> 1;
      const flow = this.flow[arc] ?? 0;
      const forward = (code & 1) === 0;
      sent = Math.min(sent, forward ? (this.weight[arc] ?? 0) - flow : flow);
      node = (forward ? this.from[arc] : this.to[arc]) ?? source;
    }
    for (let node = target; node !== source; ) {
      const code = this.via[node] ?? 0;
      const arc = code >> 1;
      const forward = (code & 1) === 0;
      this.flow[arc] = (this.flow[arc] ?? 0) + (forward ? sent : -sent);
      node = (forward ? this.from[arc] : this.to[arc]) ?? source;
    }
    return sent;
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

/** Takes an arc out of the list of its node. */
function unlink(heads: Int32Array, next: Int32Array, node: number, arc: number): void {
  if (heads[node] === arc) {
    heads[node] = next[arc] ?? -1;
    return;
  }
  for (let one = heads[node] ?? -1; one >= 0; one = next[one] ?? -1)
    if (next[one] === arc) {
      next[one] = next[arc] ?? -1;
      return;
    }
}
