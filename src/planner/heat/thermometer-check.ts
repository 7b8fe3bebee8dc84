/**
 * What a thermometer says of ice or of boiling water, made into its offset. Ice slush stands at 0 °C
 * everywhere; water boils lower the higher the kitchen, by the standard atmosphere and the saturation
 * line of water. The weather moves the boiling point by some 0.8 °C, so ice is the better check.
 */
import type { KitchenBelief } from '../../kitchen/forecast.ts';
import { saturationPascals } from './vapour.ts';

/** Standard atmosphere below 11 km (ICAO), pascals. */
export const pascalsAtMetres = (metres: number): number =>
  101_325 * Math.max(0.1, 1 - 2.25577e-5 * metres) ** 5.25588;

/** Boiling point of water at a height above the sea, °C. */
export function boilingCelsiusAt(metres: number): number {
  const share = pascalsAtMetres(metres) / 101_325;
  // The saturation line is used as a ratio to its own value at 100 °C, where it must give one.
  const sea = saturationPascals(seaBoilingCelsius);
  let low = 40;
  let high = 120;
  for (let round = 0; round < 50; round += 1) {
    const middle = (low + high) / 2;
    if (saturationPascals(middle) / sea < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** At one standard atmosphere, by the international formulation for water. */
const seaBoilingCelsius = 99.97;

export interface ThermometerCheck {
  readCelsius: number;
  in: 'ice' | 'boiling-water';
  /** Height above the sea; 0 where it is not known, which then counts as much less sure. */
  metresAboveSea?: number | undefined;
}

/** How sure a check is: a slush badly stirred, the weather, a height not told. Common practice. */
const deviations = { ice: 0.25, boilingKnownHeight: 0.6, boilingUnknownHeight: 2 } as const;

/** The offset of this thermometer: what it says above the truth, and how sure that is, kelvin. */
export function offsetFromCheck({
  readCelsius,
  in: water,
  metresAboveSea,
}: ThermometerCheck): KitchenBelief['thermometerOffsetKelvin'] {
  if (water === 'ice') return { mean: readCelsius, deviation: deviations.ice };
  return {
    mean: readCelsius - boilingCelsiusAt(metresAboveSea ?? 0),
    deviation:
      metresAboveSea === undefined
        ? deviations.boilingUnknownHeight
        : deviations.boilingKnownHeight,
  };
}
