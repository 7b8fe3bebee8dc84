/** Numbers, temperatures, clock times and durations as English text and as English speech. */
import { addDays, localTime, weekdayOf } from '../../base/time.ts';
import { fahrenheitDegreesOfKelvin, temperatureIn, weightIn } from '../../base/units.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Spoken } from '../spoken.ts';

const ones = [
  'zero',
  'one',
  'two',
  'three',
  'four',
  'five',
  'six',
  'seven',
  'eight',
  'nine',
  'ten',
  'eleven',
  'twelve',
  'thirteen',
  'fourteen',
  'fifteen',
  'sixteen',
  'seventeen',
  'eighteen',
  'nineteen',
] as const;
const tens = [
  '',
  '',
  'twenty',
  'thirty',
  'forty',
  'fifty',
  'sixty',
  'seventy',
  'eighty',
  'ninety',
] as const;

/** A whole number in words, as American English says it: "one hundred four". */
export function numberWords(value: number): string {
  if (value < 0) return `minus ${numberWords(-value)}`;
  const whole = Math.round(value);
  if (whole < 20) return ones[whole] ?? String(whole);
  if (whole < 100) {
    const rest = whole % 10;
    return `${tens[Math.floor(whole / 10)]}${rest === 0 ? '' : `-${ones[rest]}`}`;
  }
  if (whole < 1000) {
    const rest = whole % 100;
    return `${ones[Math.floor(whole / 100)]} hundred${rest === 0 ? '' : ` ${numberWords(rest)}`}`;
  }
  if (whole < 1_000_000) {
    const rest = whole % 1000;
    return `${numberWords(Math.floor(whole / 1000))} thousand${rest === 0 ? '' : ` ${numberWords(rest)}`}`;
  }
  return String(whole);
}

/** A number with at most one decimal, in words. */
export function decimalWords(value: number): string {
  const tenths = Math.round(value * 10);
  if (tenths % 10 === 0) return numberWords(tenths / 10);
  const whole = Math.trunc(tenths / 10);
  return `${numberWords(whole)} point ${ones[Math.abs(tenths % 10)]}`;
}

export type Units = Dinner['units'];

/** A temperature in the household's unit: "104 °F", "one hundred four degrees". */
export function degrees(celsius: number, units: Units): Spoken {
  const value = Math.round(temperatureIn(celsius, units.temperature));
  return {
    text: `${value} °${units.temperature}`,
    speech: `${numberWords(value)} ${Math.abs(value) === 1 ? 'degree' : 'degrees'}`,
  };
}

/** An oven's temperature, to the mark a dial has: five Fahrenheit or Celsius degrees. */
export function ovenDegrees(celsius: number, units: Units): Spoken {
  const value = Math.round(temperatureIn(celsius, units.temperature) / 5) * 5;
  return { text: `${value} °${units.temperature}`, speech: `${numberWords(value)} degrees` };
}

/** Degrees of difference: no offset. */
export function degreesApart(kelvin: number, units: Units): Spoken {
  const value = Math.round(units.temperature === 'F' ? fahrenheitDegreesOfKelvin(kelvin) : kelvin);
  return {
    text: `${value} °${units.temperature}`,
    speech: `${numberWords(value)} ${value === 1 ? 'degree' : 'degrees'}`,
  };
}

/** An authority's figure, with both units in writing since the number is theirs. */
export function authorityDegrees(fahrenheit: number, units: Units): Spoken {
  const celsius = Math.round(((fahrenheit - 32) * 5) / 9);
  return units.temperature === 'C'
    ? { text: `${celsius} °C`, speech: `${numberWords(celsius)} degrees` }
    : { text: `${fahrenheit} °F`, speech: `${numberWords(fahrenheit)} degrees` };
}

/** Clock time: 12 hours in a Fahrenheit household, 24 in a Celsius one; spoken by halves and quarters. */
export function clock(at: number, dinner: Dinner): Spoken {
  const rounded = Math.round(at / 60_000) * 60_000;
  const { time } = localTime(rounded, dinner.timeZone);
  return clockOfTime(time, dinner);
}

/** A wall-clock time "17:30" as a clock shows it. */
export function clockOfTime(time: string, dinner: Dinner): Spoken {
  const hour = Number(time.slice(0, 2));
  const minute = Number(time.slice(3, 5));
  const twelve = hour % 12 === 0 ? 12 : hour % 12;
  const text = dinner.units.temperature === 'F' ? `${twelve}:${time.slice(3, 5)}` : time;
  return { text, speech: clockSpeech(twelve, minute) };
}

const weekdays = [
  'Sunday',
  'Monday',
  'Tuesday',
  'Wednesday',
  'Thursday',
  'Friday',
  'Saturday',
] as const;

/** The day a moment belongs to; the small hours belong to the evening before. */
export const dayDate = (at: number, dinner: Dinner): string =>
  localTime(at - 4 * 3_600_000, dinner.timeZone).date;

export const weekdayName = (at: number, dinner: Dinner): string =>
  weekdays[weekdayOf(dayDate(at, dinner))] ?? '';

/** "at 7:00", "tomorrow at 7:00", "on Saturday at 7:00": a time as one says it from `now`. */
export function atTime(at: number, { dinner, now }: { dinner: Dinner; now: number }): Spoken {
  const today = dayDate(now, dinner);
  const day = dayDate(at, dinner);
  const time = clock(at, dinner);
  const lead =
    day === today
      ? 'at'
      : day === addDays(today, 1)
        ? 'tomorrow at'
        : `on ${weekdayName(at, dinner)} at`;
  return { text: `${lead} ${time.text}`, speech: `${lead} ${time.speech}` };
}

function clockSpeech(hour: number, minute: number): string {
  const next = (hour % 12) + 1;
  const name = (value: number): string => ones[value] ?? String(value);
  if (minute === 0) return `${name(hour)} o'clock`;
  if (minute === 15) return `quarter past ${name(hour)}`;
  if (minute === 30) return `half past ${name(hour)}`;
  if (minute === 45) return `quarter to ${name(next)}`;
  if (minute % 5 === 0 && minute < 30) return `${numberWords(minute)} past ${name(hour)}`;
  if (minute % 5 === 0) return `${numberWords(60 - minute)} to ${name(next)}`;
  return `${name(hour)} ${minute < 10 ? `oh ${ones[minute]}` : numberWords(minute)}`;
}

/** "45 minutes", "an hour and 10 minutes". */
export function duration(minutes: number): Spoken {
  const whole = Math.max(0, Math.round(minutes));
  const days = whole >= 48 * 60 ? Math.floor(whole / 1440) : 0;
  const hours = Math.floor((whole - days * 1440) / 60);
  const rest = days > 0 ? 0 : whole % 60;
  const unit = (count: number, word: string): Spoken => ({
    text: `${count} ${word}${count === 1 ? '' : 's'}`,
    speech: `${count === 1 && word === 'hour' ? 'an' : numberWords(count)} ${word}${count === 1 ? '' : 's'}`,
  });
  if (days > 0) {
    const day = unit(days, 'day');
    if (hours === 0) return day;
    const more = unit(hours, 'hour');
    return { text: `${day.text} ${more.text}`, speech: `${day.speech} and ${more.speech}` };
  }
  if (hours === 0) return unit(rest, 'minute');
  if (rest === 0) return unit(hours, 'hour');
  const hour = unit(hours, 'hour');
  const minute = unit(rest, 'minute');
  return { text: `${hour.text} ${minute.text}`, speech: `${hour.speech} and ${minute.speech}` };
}

/** "5:50 and 6:25", to stand after "between". */
export const between = (from: Spoken, to: Spoken): Spoken => ({
  text: `${from.text} and ${to.text}`,
  speech: `${from.speech} and ${to.speech}`,
});

export function weight(kilograms: number, units: Units): Spoken {
  const value = weightIn(kilograms, units.weight);
  const shown = Math.round(value * 10) / 10;
  return units.weight === 'lb'
    ? { text: `${shown} lb`, speech: `${decimalWords(shown)} pounds` }
    : { text: `${shown} kg`, speech: `${decimalWords(shown)} kilos` };
}

export const count = (value: number): Spoken => ({
  text: String(value),
  speech: numberWords(value),
});

/** A written sentence for ears too: symbols and figures in words. */
export const aloud = (text: string): Spoken => ({
  text,
  speech: text
    .replace(
      /(\d+(?:\.\d)?) °[FC]/g,
      (_, value: string) => `${decimalWords(Number(value))} degrees`,
    )
    .replace(/\d+(?:\.\d)?/g, (value) => decimalWords(Number(value))),
});
