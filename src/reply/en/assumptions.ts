/** What a forecast took for granted, as sentences. */
import { assertNever } from '../../base/assert.ts';
import type { ForecastAssumption } from '../../kitchen/forecast.ts';
import { type Spoken, say } from '../spoken.ts';
import { degrees, degreesApart, type Units, weight } from './words.ts';

export function assumptionWords(assumption: ForecastAssumption, units: Units): Spoken {
  switch (assumption.key) {
    case 'weight-from-bones':
      return say`The weight is taken from the bones: about ${weight(assumption.kilograms, units)}.`;
    case 'weight-typical':
      return say`The weight is not known; ${weight(assumption.kilograms, units)} is taken.`;
    case 'start-refrigerator':
      return say`It is taken to have gone in at a fridge's ${degrees(assumption.celsius, units)}.`;
    case 'start-frozen':
      return say`Its heart is taken to be still frozen.`;
    case 'oven-as-set':
      return say`The oven is taken to have stood as set.`;
    case 'oven-biased':
      return assumption.kelvin > 0
        ? say`The oven is taken to run ${degreesApart(assumption.kelvin, units)} hot.`
        : say`The oven is taken to run ${degreesApart(-assumption.kelvin, units)} cool.`;
    case 'thermometer-biased':
      return assumption.kelvin > 0
        ? say`The thermometer is taken to read ${degreesApart(assumption.kelvin, units)} high.`
        : say`The thermometer is taken to read ${degreesApart(-assumption.kelvin, units)} low.`;
    case 'no-reading-yet':
      return say`No reading yet, so the band is wide.`;
    case 'reading-off-centre':
      return say`A reading off the centre reads high; the lowest credible one rules.`;
    case 'reading-down-weighted':
      return say`A reading that does not fit counts for less.`;
    case 'rest':
      return assumption.cover === 'tented'
        ? say`It rests under a loose tent.`
        : assumption.cover === 'open'
          ? say`It rests uncovered.`
          : say`It rests in a low oven.`;
    default:
      return assertNever(assumption);
  }
}
