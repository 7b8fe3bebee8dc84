/** What earlier dinners taught of this kitchen, said once, with how to change it. */
import type { Dinner } from '../../kitchen/dinner.ts';
import { forEyes, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { degreesApart } from './words.ts';

/** From 5 °F of the oven and 1 °F of the thermometer on it is worth saying; as in the assumptions. */
const worthSaying = { ovenKelvin: 2.7, thermometerKelvin: 0.55 };

export function rememberedWords({ kitchen, ovenBiasKelvin, units }: Dinner): Spoken {
  if (!kitchen) return silent;
  const oven = ovenBiasKelvin === undefined ? kitchen.ovenBiasKelvin.mean : 0;
  const thermometer = kitchen.thermometerOffsetKelvin.mean;
  const learnt = [
    Math.abs(oven) < worthSaying.ovenKelvin
      ? []
      : [say`your oven runs ${degreesApart(Math.abs(oven), units)} ${oven > 0 ? 'hot' : 'cool'}`],
    Math.abs(thermometer) < worthSaying.thermometerKelvin
      ? []
      : [
          say`your thermometer reads ${degreesApart(Math.abs(thermometer), units)} ${thermometer > 0 ? 'high' : 'low'}`,
        ],
  ].flat();
  if (learnt.length === 0) return silent;
  const named = Math.abs(oven) < worthSaying.ovenKelvin ? 'thermometer' : 'oven';
  return sentences([
    say`From earlier dinners, ${list(learnt)}; I count on that.`,
    forEyes(say`If not, tell me by how much, or say "forget what you know of the ${named}".`),
  ]);
}
