/** Which rule of safety a question is about. */
import { fahrenheitOfCelsius } from '../../base/units.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences, silent } from '../spoken.ts';
import { safetyRules } from './safety.ts';
import { degrees } from './words.ts';

export function safetyAnswer(about: string | undefined, scene: Scene): Spoken {
  const { dinner } = scene;
  const topic = (about ?? '').toLowerCase();
  if (/pregnan|child|kid|baby|toddler|elder|old|grand|gran|ill|sick|immun|chemo/.test(topic))
    return safetyRules.vulnerable.sentence(scene);
  if (/left ?over|fridge|keep|next day|tomorrow|reheat/.test(topic))
    return safetyRules.leftovers.sentence(scene);
  if (/hold|warm|wait/.test(topic)) return safetyRules.hold.sentence(scene);
  if (/counter|out of|sat out|left out|overnight|room temp/.test(topic))
    return safetyRules['out-of-fridge'].sentence(scene);
  if (/chicken|turkey|poultry|stuffing|mince|ground/.test(topic))
    return safetyRules.poultry.sentence(scene);
  if (
    dinner.roast.prepared &&
    dinner.roast.prepared !== 'whole' &&
    dinner.roast.prepared !== 'tied-back'
  )
    return safetyRules['surface-inside'].sentence(scene);
  const serve = dinner.target?.serveCelsius;
  const below = serve !== undefined && fahrenheitOfCelsius(serve) < 144.5;
  return sentences([
    safetyRules['below-145'].sentence(scene),
    below && serve !== undefined
      ? say`Yours is set for ${degrees(serve, dinner.units)}: your choice to make.`
      : silent,
  ]);
}
