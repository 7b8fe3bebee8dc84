/** One simulated roast as the forecast is asked of it: what was told, what was read, and what came. */
import type { ForecastQuestion } from '../../src/kitchen/forecast.ts';
import { dice, drawDinner, type Told } from './kitchen/dice.ts';
import { cook, type TruthRecord } from './kitchen/dinner.ts';

export interface Reading {
  minute: number;
  celsius: number;
}

export interface Roast {
  seed: number;
  told: Told;
  /** As the scale says it, to a tenth of a pound. */
  kilograms: number;
  pullCelsius: number;
  truth: TruthRecord;
  /** In whole degrees Fahrenheit, as a cook reads them out, until the pull. */
  readings: readonly Reading[];
}

/** Undefined for a roast that never gets there, or is done before a forecast is of any use. */
export function roastOf(seed: number): Roast | undefined {
  const { dinner, told } = drawDinner(seed);
  const truth = cook(dinner);
  if (!Number.isFinite(truth.pullMinute) || truth.pullMinute < 40) return undefined;
  const { normal } = dice(seed + 7919);
  const readings = dinner.doorMinutes
    .filter((minute) => minute < truth.pullMinute)
    .map((minute) => ({
      minute,
      celsius: Math.round((truth.probe[minute]! + 0.4 * normal()) * 1.8) / 1.8,
    }));
  return {
    seed,
    told,
    kilograms: Math.round((truth.kilograms / 0.45359237) * 10) * 0.045359237,
    pullCelsius: dinner.pullCelsius,
    truth,
    readings,
  };
}

/** What a cook could ask at a minute, knowing the readings until then. */
export function questionAt(roast: Roast, nowMinute: number): ForecastQuestion {
  return {
    roast: {
      shape: {
        form: 'rib',
        kilogramsPerBone: 1.05,
        composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
      },
      kilograms: roast.kilograms,
      bones: roast.told.bones,
      startCelsius: roast.told.startCelsius,
    },
    oven: roast.told.oven,
    fan: roast.told.fan,
    readings: roast.readings.filter((reading) => reading.minute <= nowMinute),
    nowMinute,
    pullCelsius: roast.pullCelsius,
    rest: roast.told.tented ? 'tented' : 'open',
    seed: roast.seed,
  };
}
