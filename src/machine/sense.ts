/**
 * A number from a leave-in thermometer, sent by the thermometer itself. Nobody spoke, so nothing is
 * answered, asked or presumed: it is a reading or it is nothing.
 */
import { limits } from '../base/limits.ts';
import { celsiusOf } from '../base/units.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { Stage } from '../kitchen/heard.ts';
import type { Context } from './context.ts';

/**
 * Wet meat does not pass the boiling point of water; a hotter tip has slipped into the oven's air.
 */
const meatCelsiusHigh = 100;

/** One reading a minute is plenty; a sender's minute may be a little short. */
const leastMilliseconds = 50_000;

/**
 * From the oven to the board the tip is in the meat; before and after it lies about the kitchen.
 */
const tipInMeat: ReadonlySet<Stage> = new Set<Stage>(['sear', 'low-roast', 'rest', 'hold']);

export interface Sensed {
  temperature: number;
  /** The household's unit when the thermometer does not say. */
  unit?: 'F' | 'C' | undefined;
}

/** The fact that the number leads to, or none. */
export function sensed({ temperature, unit }: Sensed, context: Context): NewFact[] {
  const { dinner, standing, now } = context;
  const said = { value: temperature, unit: unit ?? dinner.units.temperature };
  const celsius = celsiusOf(temperature, unit ?? dinner.units.temperature);
  const before = dinner.readings.findLast((one) => one.thermometer === 'leave-in');
  if (
    !tipInMeat.has(standing.stage) ||
    !(celsius >= limits.readingCelsiusLow && celsius <= meatCelsiusHigh) ||
    (before && now - before.happenedAt < leastMilliseconds)
  )
    return [];
  return [{ type: 'reading-taken', celsius, said, happenedAt: now, thermometer: 'leave-in' }];
}
