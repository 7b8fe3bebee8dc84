/**
 * The other clocks of a dinner beside the roast's: guests at the door, and a first course at the table. Each
 * keeps the time it was told; the roast comes when the first course has been eaten.
 */
import { type Instant, minutesBetween } from '../../base/time.ts';
import { firstCourseMinutes } from '../../kitchen/chores.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import { calledAt } from '../items.ts';
import { origin, weights } from '../problem.ts';
import { type Day, minuteIn } from './day.ts';
import { type Draft, hands, point } from './draft.ts';

/** Hands before it and with it: plated, carried in. Common practice, no source. */
const platingMinutes = 5;
const carryingMinutes = 5;
/** At the door: coats, hands shaken. Common practice, no source. */
const welcomeMinutes = 5;
/** What was to be out so long ago and nobody spoke of has been. */
const forgottenMinutes = 45;

/** When the first course went out, as told, or as called and not denied. */
export const firstCourseOutAt = (dinner: Dinner): Instant | undefined => {
  const record = dinner.steps.get('first-course');
  return record?.startedAt ?? record?.doneAt ?? calledAt(dinner, 'first-course');
};

/** The first course while it is still to come. */
export function firstCourseWanted(dinner: Dinner, now: Instant): Instant | undefined {
  const at = dinner.clocks.get('first-course');
  if (at === undefined || dinner.steps.get('first-course')?.skipped) return undefined;
  if (firstCourseOutAt(dinner) !== undefined || minutesBetween(at, now) > forgottenMinutes)
    return undefined;
  return at;
}

/** Guests who are still to come, all at one time. */
export function guestsWanted(dinner: Dinner, now: Instant): Instant | undefined {
  const at = dinner.clocks.get('guests-arrive');
  return at !== undefined && at > now && dinner.guestsArrived === undefined ? at : undefined;
}

export function draftClocks(draft: Draft, day: Day): void {
  const { dinner, now } = day;
  const guestsAt = guestsWanted(dinner, now);
  if (guestsAt !== undefined) {
    draft.task('guests-arrive', welcomeMinutes);
    draft.use(hands, 'guests-arrive', 0, welcomeMinutes);
    nearly(draft, day, 'guests-arrive', guestsAt, weights.window);
  }
  if (day.servedAt === undefined) draftFirstCourse(draft, day);
}

function draftFirstCourse(draft: Draft, day: Day): void {
  const { dinner, now } = day;
  const wantedAt = firstCourseWanted(dinner, now);
  const outAt = firstCourseOutAt(dinner);
  if (wantedAt === undefined) {
    // Cleared already, or never to be waited for.
    if (outAt === undefined || dinner.steps.get('first-course')?.doneAt !== undefined) return;
    draft.task('first-course', firstCourseMinutes, minuteIn(day, outAt));
  } else {
    draft.task('first-course', firstCourseMinutes);
    draft.use(hands, 'first-course', -platingMinutes, carryingMinutes);
    // It waits for a pull that falls into it; no other work moves it.
    nearly(draft, day, 'first-course', wantedAt, weights.clock);
  }
  draft.after(
    point('first-course', firstCourseMinutes),
    point('serve'),
    0,
    'order',
    weights.missing,
  );
}

/** At the minute it was told, and no sooner than now. */
function nearly(draft: Draft, day: Day, task: string, at: Instant, weight: number): void {
  const minute = Math.max(day.grid.now, minuteIn(day, at));
  draft.notBefore(task, day.grid.now);
  draft.after(point(origin), point(task), minute, 'release', weight);
  draft.within(point(origin), point(task), minute, 'table', weight);
}

/** The other clocks as a plan keeps them. */
export interface Clocks {
  guestsAt?: Instant | undefined;
  firstCourseAt?: Instant | undefined;
}

export function clocksOf(
  { dinner, now }: Pick<Day, 'dinner' | 'now'>,
  startOf: (task: string) => Instant | undefined,
): Clocks {
  const guestsAt = guestsWanted(dinner, now);
  const outAt = firstCourseOutAt(dinner);
  const firstCourseAt = outAt ?? startOf('first-course');
  return {
    ...(guestsAt === undefined ? {} : { guestsAt }),
    ...(firstCourseAt === undefined ? {} : { firstCourseAt }),
  };
}
