/**
 * A household's time. It follows the clock on the wall when that is set on, or the machine slept;
 * when that is set back it runs on by ticks, since a roast does not cook backwards and a call that
 * waited for the wall to catch up would come too late.
 */
import type { Instant } from '../base/time.ts';

export interface SteadyClock {
  now(): Instant;
  /** Time was here already, told by an earlier run. */
  notBefore(at: Instant): void;
}

/** A last fact further ahead than this was written by a clock that nobody should follow. */
const aheadAtMostMilliseconds = 12 * 3_600_000;

export function steadyClock(wall: { now(): Instant; ticks(): number }): SteadyClock {
  let last = wall.now();
  let lastTick = wall.ticks();
  const now = (): Instant => {
    const tick = wall.ticks();
    const shown = wall.now();
    last = shown >= last ? shown : Math.round(last + tick - lastTick);
    lastTick = tick;
    return last;
  };
  return {
    now,
    notBefore: (at) => {
      if (at > now() && at - last <= aheadAtMostMilliseconds) last = at;
    },
  };
}
