/** Whose hands are busy when. One cook unless more were named; a cook who is away has none. */
import { addMinutes, type Instant } from '../base/time.ts';

export interface Interval {
  from: Instant;
  to: Instant;
  what: string;
}

export class Hands {
  readonly names: readonly string[];
  private readonly busy: Interval[][];

  constructor(names: readonly string[]) {
    this.names = names;
    this.busy = names.map(() => []);
  }

  /** Makes one pair of hands busy, whoever is free, else the first; returns whose. */
  take(from: Instant, minutes: number, what: string): string {
    const to = addMinutes(from, minutes);
    const free = this.names.findIndex((_, who) => this.isFree(who, from, to));
    const who = Math.max(0, free);
    this.busy[who]?.push({ from, to, what });
    return this.names[who] ?? 'you';
  }

  block(who: number, interval: Interval): void {
    this.busy[who]?.push(interval);
  }

  /** What keeps every pair of hands busy then, or undefined when some are free. */
  clash(from: Instant, minutes: number): Interval | undefined {
    const to = addMinutes(from, minutes);
    let first: Interval | undefined;
    for (let who = 0; who < this.names.length; who += 1) {
      const overlap = this.overlap(who, from, to);
      if (!overlap) return undefined;
      if (!first || overlap.to < first.to) first = overlap;
    }
    return first;
  }

  /** The first instant from `from` at which some hands are free for so many minutes. */
  firstFree(from: Instant, minutes: number): Instant {
    let at = from;
    for (let tries = 0; tries < 200; tries += 1) {
      const clash = this.clash(at, minutes);
      if (!clash) return at;
      at = Math.max(clash.to, at + 1);
    }
    return at;
  }

  /** The last start not after `latest` and not before `earliest`, with hands free, if any. */
  lastFree(latest: Instant, minutes: number, earliest: Instant): Instant | undefined {
    let at = latest;
    for (let tries = 0; tries < 200 && at >= earliest; tries += 1) {
      const clash = this.clash(at, minutes);
      if (!clash) return at;
      at = addMinutes(clash.from, -minutes);
    }
    return undefined;
  }

  private isFree(who: number, from: Instant, to: Instant): boolean {
    return this.overlap(who, from, to) === undefined;
  }

  private overlap(who: number, from: Instant, to: Instant): Interval | undefined {
    return this.busy[who]?.find((one) => one.from < to && from < one.to);
  }
}
