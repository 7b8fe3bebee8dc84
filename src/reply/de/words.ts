/** Numbers, temperatures, clock times and durations in German: decimal comma, 24-hour clock. */
import { localTime } from '../../base/time.ts';
import { temperatureIn, weightIn } from '../../base/units.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Spoken } from '../spoken.ts';

type Units = Dinner['units'];

const alike = (text: string): Spoken => ({ text, speech: text });

export const decimal = (value: number): string =>
  String(Math.round(value * 10) / 10).replace('.', ',');

export const degrees = (celsius: number, units: Units): Spoken => {
  const value = Math.round(temperatureIn(celsius, units.temperature));
  return { text: `${value} °${units.temperature}`, speech: `${value} Grad` };
};

export const ovenDegrees = (celsius: number, units: Units): Spoken => {
  const value = Math.round(temperatureIn(celsius, units.temperature) / 5) * 5;
  return { text: `${value} °${units.temperature}`, speech: `${value} Grad` };
};

/** An authority's figure in the household's unit, to the degree. */
export function authorityDegrees(fahrenheit: number, units: Units): Spoken {
  const value = units.temperature === 'F' ? fahrenheit : Math.round(((fahrenheit - 32) * 5) / 9);
  return { text: `${value} °${units.temperature}`, speech: `${value} Grad` };
}

/** "18:30 Uhr"; spoken "18 Uhr 30". */
export function clock(at: number, dinner: Dinner): Spoken {
  const { time } = localTime(Math.round(at / 60_000) * 60_000, dinner.timeZone);
  const hour = Number(time.slice(0, 2));
  const minute = Number(time.slice(3, 5));
  return { text: `${time} Uhr`, speech: minute === 0 ? `${hour} Uhr` : `${hour} Uhr ${minute}` };
}

export function duration(minutes: number): Spoken {
  const whole = Math.max(0, Math.round(minutes));
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  if (hours === 0) return alike(whole === 1 ? 'eine Minute' : `${whole} Minuten`);
  const long = hours === 1 ? 'eine Stunde' : `${hours} Stunden`;
  return alike(rest === 0 ? long : `${long} ${rest}`);
}

export function weight(kilograms: number, units: Units): Spoken {
  const value = decimal(weightIn(kilograms, units.weight));
  return alike(units.weight === 'kg' ? `${value} kg` : `${value} Pfund (lb)`);
}
