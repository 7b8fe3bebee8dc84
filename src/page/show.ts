/** How times, temperatures and spans are written, as this household reads them. */
import { type Instant, localTime, minuteMilliseconds } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { View } from './wire.ts';

export interface Manner {
  timeZone: string;
  temperature: 'F' | 'C';
  hours: '12' | '24';
}

export const mannerOf = (view: View, hours: '12' | '24'): Manner => ({
  timeZone: view.timeZone,
  temperature: view.units.temperature,
  hours,
});

/** To the nearest minute, as the kitchen's words have it. */
export function clock(at: string | Instant, { timeZone, hours }: Manner): string {
  const instant = typeof at === 'string' ? Date.parse(at) : at;
  const minute = Math.round(instant / minuteMilliseconds) * minuteMilliseconds;
  return digits(localTime(minute, timeZone).time, hours);
}

/** The clock on the wall: the minute that is running. */
export const wallClock = (at: Instant, { timeZone, hours }: Manner): string =>
  digits(localTime(at, timeZone).time, hours);

function digits(time: string, hours: '12' | '24'): string {
  if (hours === '24') return time;
  const [hour, minute] = time.split(':');
  return `${Number(hour) % 12 || 12}:${minute}`;
}

export const degreesNumber = (fahrenheit: number, { temperature }: Manner): number =>
  Math.round(temperature === 'F' ? fahrenheit : celsiusOfFahrenheit(fahrenheit));
export const degrees = (fahrenheit: number, manner: Manner): string =>
  `${degreesNumber(fahrenheit, manner)}\u00a0°${manner.temperature}`;

/** "12 min", "1 h 5", "now". */
export function span(milliseconds: number): string {
  const minutes = Math.round(milliseconds / minuteMilliseconds);
  if (minutes <= 0) return 'now';
  if (minutes < 60) return `${minutes}\u00a0min`;
  const rest = minutes % 60;
  return rest === 0 ? `${minutes / 60}\u00a0h` : `${Math.floor(minutes / 60)}\u00a0h\u00a0${rest}`;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
