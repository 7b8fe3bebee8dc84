/**
 * Calendar dates, read by chrono-node, and the only file that knows of it. It is given what it reads
 * well ("tomorrow", "Saturday the 19th", "December 24"), never a whole sentence: in a kitchen it
 * takes head counts for hours. It ignores zone names, so the zone's offset is passed in minutes.
 */
import * as chrono from 'chrono-node';
import { addDays, localTime, offsetMinutes, weekdayOf } from '../base/time.ts';

export interface CalendarNow {
  now: number;
  timeZone: string;
}

/**
 * Reads one phrase as a date in the household's zone, forward from now; undefined if it is none.
 * `phrase` holds a date's words and nothing else.
 */
export function readDate(phrase: string, { now, timeZone }: CalendarNow): string | undefined {
  const reference = { instant: new Date(now), timezone: offsetMinutes(now, timeZone) };
  const [found] = chrono.en.casual.parse(phrase, reference, { forwardDate: true });
  if (found?.index !== 0) return undefined;
  const part = (name: 'year' | 'month' | 'day'): number => found.start.get(name) ?? 0;
  const pad = (value: number): string => String(value).padStart(2, '0');
  const date = `${part('year')}-${pad(part('month'))}-${pad(part('day'))}`;
  // On a Saturday "Saturday" is today or in a week: nobody says it of today's dinner.
  const today = localTime(now, timeZone).date;
  if (date === today && found.start.isCertain('weekday')) return addDays(date, 7);
  return date;
}

/** The next day that bears this number in its month: "the 19th". */
export function nextDayOfMonth(day: number, { now, timeZone }: CalendarNow): string | undefined {
  if (day < 1 || day > 31) return undefined;
  const today = localTime(now, timeZone).date;
  for (let ahead = 0; ahead < 62; ahead++) {
    const date = addDays(today, ahead);
    if (Number(date.slice(8)) === day) return date;
  }
  return undefined;
}

/** Two days ahead, which chrono-node does not read. */
export const dayAfterTomorrow = ({ now, timeZone }: CalendarNow): string =>
  addDays(localTime(now, timeZone).date, 2);

/** Days of the year with a name, as month and day, or the weekday that falls within a span. */
export function feastDate(feast: Feast, { now, timeZone }: CalendarNow): string {
  const today = localTime(now, timeZone).date;
  const year = Number(today.slice(0, 4));
  const inYear = (which: number): string =>
    'day' in feast
      ? `${which}-${feast.month}-${feast.day}`
      : nthWeekday(which, feast.month, feast.weekday, feast.nth);
  const date = inYear(year);
  return date >= today ? date : inYear(year + 1);
}

export type Feast =
  | { month: string; day: string }
  | { month: string; weekday: number; nth: number };

function nthWeekday(year: number, month: string, weekday: number, nth: number): string {
  const first = `${year}-${month}-01`;
  const ahead = (weekday - weekdayOf(first) + 7) % 7;
  return addDays(first, ahead + 7 * (nth - 1));
}
