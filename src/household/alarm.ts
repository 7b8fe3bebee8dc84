/** The one real timer of a household. It sleeps in pieces, since a clock on the wall may be set. */
import type { Instant } from '../base/time.ts';

const longestSleepMilliseconds = 30_000;
/** The shortest sleep before something that stays due is rung for again. */
const shortestSleepMilliseconds = 1_000;
/** How soon to ring again after a failure. */
export const retryMilliseconds = 5_000;

export class Alarm {
  private readonly now: () => Instant;
  private readonly ring: () => Promise<void>;
  private timer: NodeJS.Timeout | undefined;
  private stopped = false;

  constructor(now: () => Instant, ring: () => Promise<void>) {
    this.now = now;
    this.ring = ring;
  }

  /** Rings at the instant, or a little before it to look again; never for `undefined`. */
  set(at: Instant | undefined): void {
    clearTimeout(this.timer);
    if (at === undefined) return;
    const left = Math.max(shortestSleepMilliseconds, at - this.now());
    this.in(Math.min(left, longestSleepMilliseconds));
  }

  stop(): void {
    this.stopped = true;
    clearTimeout(this.timer);
  }

  /** What cannot be written just now must not end the calling: it is tried again soon. */
  private in(milliseconds: number): void {
    clearTimeout(this.timer);
    if (this.stopped) return;
    const ring = (): void => void this.ring().catch(() => this.in(retryMilliseconds));
    this.timer = setTimeout(ring, milliseconds);
  }
}
