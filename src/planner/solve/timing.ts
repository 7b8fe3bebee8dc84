/**
 * The best starts when only lags bind: minimise the sum of weight times minutes missed over all lags.
 * That is the dual of a greatest-cost circulation whose capacities are the weights, so an optimal flow
 * proves the starts best, and the lags that carry flow are the ones that bind. Lags are added one at
 * a time, each repaired by cheapest augmenting paths (primal-dual), which is what a search by added
 * orders needs. Ahuja, Magnanti, Orlin, Network Flows (1993), chapters 9 and 14, from memory.
 */

export interface TimingState {
  /**
   * One list for a quick copy: the starts by node; the flow of all arcs, the added ones last; then what
   * a search added to the arcs of the problem, four numbers each: from, to, minutes, weight.
   */
  numbers: Float64Array;
  /** How many arcs a search had added. */
  added: number;
  cost: number;
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
  /** What all that is missed costs: each flow sent adds what it proves. */
  private value = 0;
  private readonly headOut: Int32Array;
  private readonly headIn: Int32Array;
  private nextOut: Int32Array;
  private nextIn: Int32Array;
  private baseOut: Int32Array = new Int32Array(0);
  private baseIn: Int32Array = new Int32Array(0);
  private markedCount = 0;
  private markedValue = 0;
  private markedFlow: Float64Array;
  private readonly markedStart: Float64Array;
  private readonly distance: Float64Array;
  private readonly via: Int32Array;
  /** The last search that reached a node, and whether it settled it. */
  private readonly reached: Int32Array;
  private readonly settled: Int32Array;
  private searches = 0;
  /** Nodes that the last search reached, and those it has still to settle. */
  private readonly touched: Int32Array;
  private touchedCount = 0;
  private readonly open: Int32Array;
  private openCount = 0;

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
    this.markedFlow = new Float64Array(this.size);
    this.start = new Float64Array(nodes);
    this.markedStart = new Float64Array(nodes);
    this.headOut = new Int32Array(nodes).fill(-1);
    this.headIn = new Int32Array(nodes).fill(-1);
    this.distance = new Float64Array(nodes);
    this.via = new Int32Array(nodes);
    this.reached = new Int32Array(nodes);
    this.settled = new Int32Array(nodes);
    this.touched = new Int32Array(nodes);
    this.open = new Int32Array(nodes);
  }

  /**
   * start[to] should be at least start[from] + minutes; each minute missed costs `weight`. As soon as
   * all is sure to cost `enough` the starts are left as they are: to be restored, not to be read.
   */
  add(from: number, to: number, minutes: number, weight: number, enough = Infinity): void {
    this.repair(this.append(from, to, minutes, weight), enough);
  }

  /** Takes an added arc back: what it carried goes by the cheapest other ways. */
  remove(arc: number): void {
    const tail = this.from[arc] ?? 0;
    const head = this.to[arc] ?? 0;
    const length = this.length[arc] ?? 0;
    let carried = this.flow[arc] ?? 0;
    if (tail === head) this.value -= Math.max(0, length) * (this.weight[arc] ?? 0);
    this.flow[arc] = 0;
    this.weight[arc] = 0;
    unlink(this.headOut, this.nextOut, tail, arc);
    unlink(this.headIn, this.nextIn, head, arc);
    while (carried > 0) {
      const reach = this.search(tail, head, Infinity);
      this.pushLater(reach);
      const sent = this.send(tail, head, carried);
      this.value += sent * ((this.start[head] ?? 0) - (this.start[tail] ?? 0) - length);
      carried -= sent;
    }
  }

  /** What was added so far belongs to the problem; later arcs can be taken back. */
  settle(): void {
    this.base = this.count;
    this.baseOut = this.headOut.slice();
    this.baseIn = this.headIn.slice();
  }

  /** Where `rewind` comes back to, while arcs are only added. */
  mark(): void {
    this.markedCount = this.count;
    this.markedValue = this.value;
    const { flow, markedFlow, start, markedStart } = this;
    for (let arc = 0; arc < this.count; arc += 1) markedFlow[arc] = flow[arc] ?? 0;
    markedStart.set(start);
  }

  rewind(): void {
    const { flow, markedFlow } = this;
    while (this.count > this.markedCount) {
      this.count -= 1;
      const arc = this.count;
      this.headOut[this.from[arc] ?? 0] = this.nextOut[arc] ?? -1;
      this.headIn[this.to[arc] ?? 0] = this.nextIn[arc] ?? -1;
    }
    for (let arc = 0; arc < this.count; arc += 1) flow[arc] = markedFlow[arc] ?? 0;
    this.start.set(this.markedStart);
    this.value = this.markedValue;
  }

  save(): TimingState {
    const { base, count, nodes } = this;
    let added = 0;
    for (let arc = base; arc < count; arc += 1) if ((this.weight[arc] ?? 0) > 0) added += 1;
    const numbers = new Float64Array(nodes + base + 5 * added);
    let place = 0;
    for (let node = 0; node < nodes; node += 1) numbers[place++] = this.start[node] ?? 0;
    for (let arc = 0; arc < base; arc += 1) numbers[place++] = this.flow[arc] ?? 0;
    let at = place + added;
    for (let arc = base; arc < count; arc += 1) {
      const weight = this.weight[arc] ?? 0;
      if (weight <= 0) continue;
      numbers[place++] = this.flow[arc] ?? 0;
      numbers[at++] = this.from[arc] ?? 0;
      numbers[at++] = this.to[arc] ?? 0;
      numbers[at++] = this.length[arc] ?? 0;
      numbers[at++] = weight;
    }
    return { numbers, added, cost: this.value };
  }

  restore({ numbers, added, cost }: TimingState): void {
    const { base, nodes } = this;
    this.count = base;
    this.headOut.set(this.baseOut);
    this.headIn.set(this.baseIn);
    let place = 0;
    for (let node = 0; node < nodes; node += 1) this.start[node] = numbers[place++] ?? 0;
    for (let arc = 0; arc < base; arc += 1) this.flow[arc] = numbers[place++] ?? 0;
    for (let at = place + added; at < numbers.length; at += 4) {
      this.append(
        numbers[at] ?? 0,
        numbers[at + 1] ?? 0,
        numbers[at + 2] ?? 0,
        numbers[at + 3] ?? 0,
      );
      this.flow[this.count - 1] = numbers[place++] ?? 0;
    }
    this.value = cost;
  }

  /** When a node starts in a saved state; to be compared with others of it. */
  startIn({ numbers }: TimingState, node: number): number {
    return numbers[node] ?? 0;
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
  cost({ from, to }: ArcRange = noArcs): number {
    let sum = this.value;
    for (let arc = from; arc < to; arc += 1)
      sum -= Math.max(0, this.missed(arc)) * (this.weight[arc] ?? 0);
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
    this.markedFlow = wider(this.markedFlow, new Float64Array(this.size));
  }

  /**
   * Ends with the arc's bound kept, or its flow at its weight: then missing it is the cheaper way.
   * Between, the head is pushed later with all that hangs on it, until that would push the tail too;
   * then as much flow as the way back bears goes round.
   */
  private repair(arc: number, enough: number): void {
    const tail = this.from[arc] ?? 0;
    const head = this.to[arc] ?? 0;
    const weight = this.weight[arc] ?? 0;
    if (tail === head) {
      this.value += weight * Math.max(0, this.missed(arc));
      return;
    }
    for (;;) {
      const missed = this.missed(arc);
      if (missed <= 0 || (this.flow[arc] ?? 0) >= weight || this.value >= enough) return;
      const step = Math.min(this.search(head, tail, missed), missed);
      this.pushLater(step);
      if (step >= missed) return;
      const sent = this.send(head, tail, weight - (this.flow[arc] ?? 0));
      this.flow[arc] = (this.flow[arc] ?? 0) + sent;
      this.value += sent * (missed - step);
    }
  }

  /** All that the last search found nearer than `step` starts so much later. */
  private pushLater(step: number): void {
    if (step <= 0) return;
    for (let index = 0; index < this.touchedCount; index += 1) {
      const node = this.touched[index] ?? 0;
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
    const { distance, settled, open, start, flow, weight, length } = this;
    this.work += 1;
    this.searches += 1;
    const round = this.searches;
    this.touchedCount = 0;
    this.openCount = 0;
    this.reach(source, 0, 0);
    while (this.openCount > 0) {
      let best = 0;
      let here = distance[open[0] ?? 0] ?? 0;
      for (let index = 1; index < this.openCount; index += 1) {
        const far = distance[open[index] ?? 0] ?? 0;
        if (far < here) {
          best = index;
          here = far;
        }
      }
      const node = open[best] ?? 0;
      this.openCount -= 1;
      open[best] = open[this.openCount] ?? 0;
      if (here >= limit) return limit;
      if (node === target) return here;
      settled[node] = round;
      const later = here - (start[node] ?? 0);
      for (let arc = this.headOut[node] ?? -1; arc >= 0; arc = this.nextOut[arc] ?? -1) {
        if ((flow[arc] ?? 0) >= (weight[arc] ?? 0)) continue;
        const other = this.to[arc] ?? 0;
        if (settled[other] === round) continue;
        const next = Math.max(here, later + (start[other] ?? 0) - (length[arc] ?? 0));
        this.reach(other, next, arc << 1);
      }
      for (let arc = this.headIn[node] ?? -1; arc >= 0; arc = this.nextIn[arc] ?? -1) {
        if ((flow[arc] ?? 0) <= 0) continue;
        const other = this.from[arc] ?? 0;
        if (settled[other] === round) continue;
        const next = Math.max(here, later + (start[other] ?? 0) + (length[arc] ?? 0));
        this.reach(other, next, (arc << 1) | 1);
      }
    }
    return Infinity;
  }

  /** A way of so much room to a node, by an arc there or back; kept where no other is as short. */
  private reach(node: number, room: number, code: number): void {
    if (this.reached[node] !== this.searches) {
      this.reached[node] = this.searches;
      this.touched[this.touchedCount] = node;
      this.touchedCount += 1;
      this.open[this.openCount] = node;
      this.openCount += 1;
    } else if (room >= (this.distance[node] ?? 0)) return;
    this.distance[node] = room;
    this.via[node] = code;
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
