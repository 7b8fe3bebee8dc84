/** The real clock and the real timer: the only place of the program that has either. */
import type { Instant } from '../base/time.ts';
import type { Alarm } from '../bridges/terminal/talk.ts';
import type { Clock } from '../session/ports.ts';

export const systemClock: Clock = { now: () => Date.now() };

/** Longest sleep in one piece: a lid may close and the clock be set meanwhile. */
const longestMilliseconds = 60_000;

/** Rings once when the clock on the wall has reached the instant. */
export function systemAlarm(clock: Clock = systemClock): Alarm {
  let timer: NodeJS.Timeout | undefined;
  const clear = (): void => clearTimeout(timer);
  const set = (at: Instant, ring: () => void): void => {
    clear();
    const left = at - clock.now();
    if (left <= 0) timer = setTimeout(ring, 0);
    else timer = setTimeout(() => set(at, ring), Math.min(left, longestMilliseconds));
  };
  return { set, clear };
}

export const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));
