/**
 * Quantities found in a text, before anyone has decided what they are for. A bare number keeps every
 * reading it may have ("one twenty five": 125, or 1:25); the slot it lands in decides.
 */
import type { TemperatureUnit, WeightUnit } from '../base/units.ts';

/** A time on a clock's face; `half` is undefined where nobody said which half of the day. */
export interface ClockFace {
  /** Undefined in "twenty to", where only the minute was said. */
  hour: number | undefined;
  minute: number;
  /** "to" and "of" count back from the hour to come. */
  half?: 'am' | 'pm' | 'day' | undefined;
}

export type Quantity =
  | { kind: 'number'; value: number; face?: ClockFace | undefined }
  | { kind: 'temperature'; value: number; unit?: TemperatureUnit | undefined }
  | { kind: 'gas-mark'; value: number }
  | { kind: 'weight'; value: number; unit: WeightUnit }
  | { kind: 'duration'; minutes: number }
  | { kind: 'clock'; face: ClockFace }
  | { kind: 'date'; date: string };

/** The letter by which a quantity stands in the text that phrases are matched against. */
export const markLetters: Record<Quantity['kind'], string> = {
  number: 'n',
  temperature: 't',
  'gas-mark': 'g',
  weight: 'w',
  duration: 'd',
  clock: 'c',
  date: 'y',
};

export const markOf = (quantity: Quantity, index: number): string =>
  `<${markLetters[quantity.kind]}${index}>`;

/** Rounds away what binary fractions add: 7 lb 6 oz is 7.375, three point two is 3.2. */
export const tidy = (value: number): number => Math.round(value * 1e6) / 1e6;

/** A calendar date found in a run of words. */
export interface CalendarFound {
  /** Index of its first word, and of the first word after it. */
  at: number;
  next: number;
  /** YYYY-MM-DD */
  date: string;
}

/** Finds the calendar dates in a run of words. */
export type DateReader = (words: readonly string[]) => CalendarFound[];
