/** A chore in time, and the clock it goes by. */
import { addDays, type Instant, instantOf, localTime } from '../../base/time.ts';
import type { ChoreId } from '../../kitchen/chores.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Band } from '../../kitchen/forecast.ts';
import type { PlannedStep, Reason } from '../../kitchen/plan.ts';

export interface Chore {
  id: string;
  kind: ChoreId;
  startAt: Instant;
  minutes: Band;
  handsOn: PlannedStep['handsOn'];
  latestAt: Instant;
  why: readonly Reason[];
}

/** A wall-clock time so many days from the day of an instant. */
export const clockAt = (dinner: Dinner, at: Instant, days: number, time: string): Instant =>
  instantOf(addDays(localTime(at, dinner.timeZone).date, days), time, dinner.timeZone);

/** Since when the dinner is known well enough to be told of chores. */
export const toldAt = (dinner: Dinner): Instant => dinner.completeAt ?? dinner.openedAt;
