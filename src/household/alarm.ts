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
  /** When the timer that runs will ring; undefined while none does. */
  private ringsAt: Instant | undefined;
  private stopped = false;

  constructor(now: () => Instant, ring: () => Promise<void>) {
    this.now = now;
    this.ring = ring;
  }

  /**
   * Rings at the instant, or a little before it to look again; never for `undefined`. A timer that
   * rings soon enough runs on: in a busy house it would otherwise be put off with every word said.
   */
  set(at: Instant | undefined): void {
    if (at === undefined) {
      this.clear();
      return;
    }
    const left = Math.max(shortestSleepMilliseconds, at - this.now());
    const ringAt = this.now() + Math.min(left, longestSleepMilliseconds);
    if (this.ringsAt === undefined || ringAt < this.ringsAt) this.in(ringAt - this.now());
  }

  stop(): void {
    this.stopped = true;
    this.clear();
  }

  private clear(): void {
    clearTimeout(this.timer);
    this.ringsAt = undefined;
  }

  /** What cannot be written just now must not end the calling: it is tried again soon. */
  private in(milliseconds: number): void {
    this.clear();
    if (this.stopped) return;
    this.ringsAt = this.now() + milliseconds;
    this.timer = setTimeout(() => {
      this.ringsAt = undefined;
      void this.ring().catch(() => this.in(retryMilliseconds));
    }, milliseconds);
  }
}
