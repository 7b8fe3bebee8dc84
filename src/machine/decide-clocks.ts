/** The dinner's other clocks: guests at the door and a first course, each with a time of its own. */
import { addMinutes, instantOf, localTime, minutesBetween } from '../base/time.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { NewFact } from '../kitchen/facts.ts';
import { type DinnerClock, dinnerClocks, type HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided } from './context.ts';

type Told = HeardOf<'set-serving-time'> & { of: DinnerClock };

/** At that time on the day of the dinner. */
export function setClock({ of: clock, time, date }: Told, { dinner, now }: Context): Decision {
  const day = date ?? localTime(dinner.servingAt ?? now, dinner.timeZone).date;
  const clockAt = instantOf(day, time, dinner.timeZone);
  return decided([{ type: 'clock-set', clock, clockAt }], { key: 'clock-set', clock, clockAt });
}

/** What has not happened yet, and is not to be left out. */
function openClocks(
  { clocks, steps, guestsArrived }: Dinner,
  now: number,
): [DinnerClock, number][] {
  const first = steps.get('first-course');
  const over: Record<DinnerClock, boolean> = {
    'guests-arrive': guestsArrived !== undefined,
    'first-course':
      first?.startedAt !== undefined || first?.doneAt !== undefined || first?.skipped === true,
  };
  return dinnerClocks.flatMap((clock): [DinnerClock, number][] => {
    const at = clocks.get(clock);
    return at === undefined || at <= now || over[clock] ? [] : [[clock, at]];
  });
}

/** Guests who are late are late for all of it. */
export const clocksShifted = ({ dinner, now }: Context, minutes: number): NewFact[] =>
  openClocks(dinner, now).map(([clock, at]) => ({
    type: 'clock-set',
    clock,
    clockAt: Math.max(now, addMinutes(at, minutes)),
  }));

/** A roast that is wanted at or before the other clocks takes them along; otherwise each keeps its own. */
export function clocksBefore({ dinner, now }: Context, servingAt: number): NewFact[] {
  const moved = dinner.servingAt === undefined ? 0 : minutesBetween(dinner.servingAt, servingAt);
  return openClocks(dinner, now)
    .filter(([, at]) => at >= servingAt)
    .map(([clock, at]) => ({
      type: 'clock-set',
      clock,
      clockAt: Math.max(now, addMinutes(at, moved)),
    }));
}

/** So near its time, people who sit down have it before them. */
const nearMinutes = 30;

/** Guests at the table about the time of the first course are eating it. */
export function firstCourseBegun({ dinner, now }: Context): NewFact[] {
  const due = openClocks({ ...dinner, guestsArrived: undefined }, 0).find(
    ([clock]) => clock === 'first-course',
  );
  return due && Math.abs(minutesBetween(due[1], now)) <= nearMinutes
    ? [{ type: 'step-started', step: 'first-course', happenedAt: now }]
    : [];
}
