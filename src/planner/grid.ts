/** Whole minutes from an origin, for the planner; the world outside has instants. */
import { addMinutes, type Instant, minuteMilliseconds } from '../base/time.ts';

export interface Grid {
  originAt: Instant;
  /** The first whole minute that is not before now: nothing new begins earlier. */
  now: number;
}

export const gridAt = (now: Instant): Grid => {
  const originAt = Math.floor(now / minuteMilliseconds) * minuteMilliseconds;
  return { originAt, now: Math.ceil((now - originAt) / minuteMilliseconds) };
};

/** The first whole minute not before an instant. */
export const minuteOf = (grid: Grid, at: Instant): number =>
  Math.ceil((at - grid.originAt) / minuteMilliseconds - 1e-9);

export const instantOfMinute = (grid: Grid, minute: number): Instant =>
  addMinutes(grid.originAt, minute);
