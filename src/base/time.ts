/**
 * Instants, and the only place that knows of time zones. Inside, a moment is an Instant; a zone
 * matters only where a person reads or says a clock time, or a wire format wants an offset.
 */

/** Milliseconds since 1970-01-01T00:00:00Z. */
export type Instant = number;

export const minuteMilliseconds = 60_000;
export const hourMilliseconds = 60 * minuteMilliseconds;

export const addMinutes = (at: Instant, minutes: number): Instant =>
  at + Math.round(minutes * minuteMilliseconds);
export const minutesBetween = (from: Instant, to: Instant): number =>
  (to - from) / minuteMilliseconds;

/** A calendar date and a wall-clock time, as a person in some zone reads them. */
export interface LocalTime {
  /** YYYY-MM-DD */
  date: string;
  /** HH:MM, 24 hours */
  time: string;
  second: number;
}

const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(timeZone: string): Intl.DateTimeFormat {
  let format = formats.get(timeZone);
  if (!format) {
    format = new Intl.DateTimeFormat('en-CA', {
      timeZone,
      hourCycle: 'h23',
      year: 'numeric',
      month: '2-digit',
      day: '2-digit',
      hour: '2-digit',
      minute: '2-digit',
      second: '2-digit',
    });
    formats.set(timeZone, format);
  }
  return format;
}

/** Whether the name is a zone this runtime knows, such as "Europe/Dublin". */
export function isTimeZone(timeZone: string): boolean {
  try {
    formatOf(timeZone);
    return true;
  } catch {
    return false;
  }
}

/** The wall clock of a zone at that instant, read as if it were UTC. */
function wallClock(at: Instant, timeZone: string): Instant {
  const parts: Record<string, string> = {};
  for (const part of formatOf(timeZone).formatToParts(at)) parts[part.type] = part.value;
  return Date.parse(
    `${parts.year}-${parts.month}-${parts.day}T${parts.hour}:${parts.minute}:${parts.second}Z`,
  );
}

/** Zones change their clocks at a quarter of an hour, never within one. */
const quarterMilliseconds = 15 * minuteMilliseconds;
const offsets = new Map<string, number>();
/** Some weeks of quarters; then they are asked anew. */
const offsetsAtMost = 4_096;

/** Minutes the zone is ahead of UTC at that instant. */
export function offsetMinutes(at: Instant, timeZone: string): number {
  const quarter = Math.floor(at / quarterMilliseconds);
  const key = `${quarter} ${timeZone}`;
  let offset = offsets.get(key);
  if (offset === undefined) {
    const begins = quarter * quarterMilliseconds;
    offset = (wallClock(begins, timeZone) - begins) / minuteMilliseconds;
    if (offsets.size >= offsetsAtMost) offsets.clear();
    offsets.set(key, offset);
  }
  return offset;
}

export function localTime(at: Instant, timeZone: string): LocalTime {
  const local = new Date(at + offsetMinutes(at, timeZone) * minuteMilliseconds).toISOString();
  return {
    date: local.slice(0, 10),
    time: local.slice(11, 16),
    second: Number(local.slice(17, 19)),
  };
}

const pad = (value: number): string => String(value).padStart(2, '0');

/**
 * The instant at which clocks in the zone show that date and time. A time skipped by a clock change
 * becomes the moment as long after the change as the clock would have shown; of a time that happens
 * twice the first is meant.
 */
export function instantOf(
  date: string,
  time: string,
  timeZone: string,
  options: { second?: number } = {},
): Instant {
  const asUtc = Date.parse(`${date}T${time}:${pad(options.second ?? 0)}Z`);
  const before =
    asUtc - offsetMinutes(asUtc - 24 * hourMilliseconds, timeZone) * minuteMilliseconds;
  if (localTime(before, timeZone).time === time) return before;
  const after = asUtc - offsetMinutes(asUtc + 24 * hourMilliseconds, timeZone) * minuteMilliseconds;
  return localTime(after, timeZone).time === time ? after : before;
}

/** ISO 8601 with the zone's offset, to the second: "2026-12-19T19:00:00-06:00". */
export function isoWithOffset(at: Instant, timeZone: string): string {
  const local = localTime(at, timeZone);
  const offset = offsetMinutes(at, timeZone);
  const size = Math.abs(offset);
  const sign = offset < 0 ? '-' : '+';
  return `${local.date}T${local.time}:${pad(local.second)}${sign}${pad(Math.floor(size / 60))}:${pad(size % 60)}`;
}

/** The calendar date so many days after another. */
export function addDays(date: string, days: number): string {
  return new Date(Date.parse(`${date}T12:00:00Z`) + days * 24 * hourMilliseconds)
    .toISOString()
    .slice(0, 10);
}

/** The weekday of a calendar date, 0 for Sunday. */
export const weekdayOf = (date: string): number =>
  new Date(Date.parse(`${date}T12:00:00Z`)).getUTCDay();
