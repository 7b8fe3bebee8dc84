/** One simulated roast as the forecast is asked of it: what was told, what was read, and what came. */
import type { ForecastQuestion } from '../../src/kitchen/forecast.ts';
import { dice, drawDinner, type Told } from './kitchen/dice.ts';
import { cook, type TruthDinner, type TruthRecord } from './kitchen/dinner.ts';

export interface Reading {
  minute: number;
  celsius: number;
}

export interface Roast {
  seed: number;
  dinner: Pick<TruthDinner, 'roast' | 'oven'>;
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
    dinner,
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

/** Nothing is known for certain to a forecast that weighs its readings: so sure, kelvin. */
const certain = 0.05;

/**
 * The same, told the truth wherever the question has a place for it: the mass, the start, the oven's bias,
 * and readings of the core itself. What a forecast errs by even so is its model's.
 */
export function boundQuestionAt(roast: Roast, nowMinute: number): ForecastQuestion {
  const question = questionAt(roast, nowMinute);
  const { dinner, truth } = roast;
  return {
    ...question,
    roast: {
      ...question.roast,
      kilograms: truth.kilograms,
      startCelsius: dinner.roast.startCelsius,
    },
    readings: question.readings.map(({ minute }) => ({ minute, celsius: truth.core[minute]! })),
    kitchen: {
      ovenBiasKelvin: { mean: dinner.oven.biasKelvin, deviation: certain },
      thermometerOffsetKelvin: { mean: 0, deviation: certain },
    },
  };
}
