/**
 * What a clock's face means in a dinner. Nobody says "pm" over a roast: a meal's time is the afternoon
 * or evening to come, a moment that is past is the last one the clock showed.
 */
import { localTime } from '../base/time.ts';
import type { ClockFace } from './quantity.ts';

const pad = (value: number): string => String(value).padStart(2, '0');
const text = (hour: number, minute: number): string => `${pad(hour % 24)}:${pad(minute)}`;

export interface MomentNow {
  now: number;
  timeZone: string;
}

const minutesNow = ({ now, timeZone }: MomentNow): number => {
  const { time } = localTime(now, timeZone);
  return Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
};

/** The hour that "twenty to" or "half past" leaves unsaid: the next (or last) time that minute comes. */
function hourOf(face: ClockFace, now: MomentNow, direction: 'ahead' | 'back'): number {
  const minutes = minutesNow(now);
  const hour = Math.floor(minutes / 60);
  if (direction === 'ahead') return face.minute > minutes % 60 ? hour : (hour + 1) % 24;
  return face.minute <= minutes % 60 ? hour : (hour + 23) % 24;
}

/** HH:MM of a meal: one to ten are after noon; eleven is the one still to come. */
export function mealTime(face: ClockFace, now: MomentNow): string {
  if (face.hour === undefined) return text(hourOf(face, now, 'ahead'), face.minute);
  const { hour, minute } = face;
  if (face.half === 'day' || hour > 12 || hour === 0) return text(hour, minute);
  if (face.half === 'am') return text(hour % 12, minute);
  if (face.half === 'pm') return text((hour % 12) + 12, minute);
  if (hour === 12) return text(12, minute);
  if (hour === 11) return text(minutesNow(now) < 11 * 60 + minute ? 11 : 23, minute);
  return text(hour + 12, minute);
}

/** HH:MM of something that has happened: the last time the clock showed it. */
export function pastTime(face: ClockFace, now: MomentNow): string {
  return nearest(face, now, 'back');
}

/** HH:MM of something to come within half a day. */
export function comingTime(face: ClockFace, now: MomentNow): string {
  return nearest(face, now, 'ahead');
}

function nearest(face: ClockFace, now: MomentNow, direction: 'ahead' | 'back'): string {
  if (face.hour === undefined) return text(hourOf(face, now, direction), face.minute);
  const { hour, minute } = face;
  if (face.half === 'day' || hour > 12) return text(hour, minute);
  if (face.half === 'am') return text(hour % 12, minute);
  if (face.half === 'pm') return text((hour % 12) + 12, minute);
  const here = minutesNow(now);
  const away = (candidate: number): number =>
    ((direction === 'back' ? here - candidate : candidate - here) + 1440) % 1440;
  const morning = (hour % 12) * 60 + minute;
  const evening = morning + 720;
  return away(morning) <= away(evening) ? text(hour % 12, minute) : text((hour % 12) + 12, minute);
}

/** Minutes from now to a clock time, today or, if that is past, tomorrow. */
export function minutesUntil(time: string, now: MomentNow): number {
  const then = Number(time.slice(0, 2)) * 60 + Number(time.slice(3));
  return (then - minutesNow(now) + 1440) % 1440;
}

/** HH:MM so many minutes from now. */
export const timeAfter = (minutes: number, { now, timeZone }: MomentNow): string =>
  localTime(now + Math.round(minutes) * 60_000, timeZone).time.slice(0, 5);
