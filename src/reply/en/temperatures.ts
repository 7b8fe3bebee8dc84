/** Which temperature is wanted: of the core, of the oven, of a dish. */
import { celsiusOf, celsiusOfFahrenheit } from '../../base/units.ts';
import { serveCelsiusOf } from '../../kitchen/doneness.ts';
import type { Band } from '../../kitchen/forecast.ts';
import type { Doneness, HeardOf } from '../../kitchen/heard.ts';
import type { Plan } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { nextTimes } from './day.ts';
import { coreNow, noPlan, stepAbout } from './standing.ts';
import { dishTitle, findStep, pullShown } from './steps.ts';
import { authorityDegrees, clock, degrees, ovenDegrees } from './words.ts';

/** How the middle of the slice looks and eats. Common practice, no source. */
const looks: Record<Doneness, string> = {
  rare: 'deep red, cool and soft',
  'medium-rare': 'red going pink, warm and juicy',
  medium: 'pink all through, firm',
  'medium-well': 'a trace of pink, quite firm',
  'well-done': 'no pink, firm and drier',
};

export function temperatureAnswer(heard: HeardOf<'ask-temperature'>, scene: Scene): Spoken {
  const { plan, dinner } = scene;
  if (heard.doneness !== undefined)
    return capital(
      say`${heard.doneness.replace('-', ' ')} is ${degrees(serveCelsiusOf(heard.doneness), dinner.units)} in the middle: ${looks[heard.doneness]}.`,
    );
  if (heard.temperature !== undefined && plan) {
    const celsius = celsiusOf(heard.temperature, heard.unit ?? dinner.units.temperature);
    const gap = plan.pullCelsius - celsius;
    if (gap > 1)
      return say`${degrees(celsius, dinner.units)} is short of the pull: that is ${degrees(plan.pullCelsius, dinner.units)}, likely at ${clock(plan.pullAt.p50, dinner)}.`;
    return say`${degrees(celsius, dinner.units)} is at or past the pull, ${degrees(plan.pullCelsius, dinner.units)}. If the core reads that, pull it.`;
  }
  const core = heard.when === 'now' ? coreNow(scene) : undefined;
  if (core && plan) return coreWords(core, plan, scene);
  const step = heard.about === undefined ? undefined : stepAbout(heard.about, scene);
  const dish = dinner.cards.find((card) => card.id === (step?.card ?? heard.about));
  const own = step ? findStep(dinner, step.id)?.step.oven : undefined;
  const oven =
    own ?? (dish?.card === 'roast' ? undefined : dish?.steps.find((one) => one.oven)?.oven);
  if (dish && dish.card !== 'roast' && dish.coreFahrenheit !== undefined)
    return say`${authorityDegrees(dish.coreFahrenheit, dinner.units)} in the middle of the ${dish.title} before it is served.`;
  if (oven)
    return say`${ovenDegrees(celsiusOfFahrenheit(oven.likelyFahrenheit), dinner.units)} for the ${dishTitle(dinner, step?.card ?? '')}.`;
  if (heard.about === 'oven' && plan)
    return plan.ovenNowCelsius > 0
      ? say`The oven belongs at ${ovenDegrees(plan.ovenNowCelsius, dinner.units)} now.`
      : say`The oven is off for now; ${lower(nextTimes(scene))}`;
  if (!plan) return noPlan;
  return say`Pull it at ${pullShown(plan, dinner)}; the rest carries it to about ${degrees(plan.coreAtServingCelsius.p50, dinner.units)}, for ${degrees(plan.serveCelsius, dinner.units)}.`;
}

/** What the middle is likely to read now, and what it is on its way to. */
function coreWords(core: Band, plan: Plan, { dinner, stage }: Scene): Spoken {
  const shown = (celsius: number): Spoken => degrees(celsius, dinner.units);
  const resting = stage === 'rest' || stage === 'hold';
  return sentences([
    say`About ${shown(core.p50)} in the middle, by my reckoning, somewhere between ${shown(core.p10)} and ${shown(core.p90)}.`,
    resting
      ? say`Likely ${shown(plan.coreAtServingCelsius.p50)} at the knife.`
      : say`Pull at ${pullShown(plan, dinner)}, likely at ${clock(plan.pullAt.p50, dinner)}.`,
    resting ? silent : say`A reading tells more.`,
  ]);
}
