/** What one dinner taught of a kitchen, as the next one may believe it. */
import { type KitchenBelief, usualKitchen } from '../../kitchen/forecast.ts';

/**
 * An oven is not quite the same next month (another shelf, a seal, a cleaned fan), nor a thermometer
 * (its battery, its hand). So far a belief loosens between dinners, kelvin; common practice, no source.
 */
const ovenLoosensKelvin = 3;
const thermometerLoosensKelvin = 0.25;

/** Never surer than it loosens, never less sure than of a kitchen of which nothing is known. */
export function rememberedKitchen(learnt: KitchenBelief): KitchenBelief {
  return {
    ovenBiasKelvin: loosened(
      learnt.ovenBiasKelvin,
      ovenLoosensKelvin,
      usualKitchen.ovenBiasKelvin.deviation,
    ),
    thermometerOffsetKelvin: loosened(
      learnt.thermometerOffsetKelvin,
      thermometerLoosensKelvin,
      usualKitchen.thermometerOffsetKelvin.deviation,
    ),
  };
}

interface Guess {
  mean: number;
  deviation: number;
}

const rounded = (value: number): number => Math.round(value * 100) / 100;

const loosened = ({ mean, deviation }: Guess, by: number, most: number): Guess => ({
  mean: rounded(mean),
  deviation: rounded(Math.min(most, Math.hypot(deviation, by))),
});
