/** Once the rest is in the fridge: until when it is eaten, and what the bones are good for. */
import { figureOf } from '../../kitchen/safety.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences } from '../spoken.ts';
import { weekdayName } from './words.ts';

const dayMilliseconds = 86_400_000;

export function afterWords({ dinner, now }: Scene): Spoken {
  const cooledAt = dinner.steps.get('serve')?.doneAt ?? now;
  const days = figureOf('leftovers', 'in the fridge').value;
  const latest = weekdayName(cooledAt + days * dayMilliseconds, dinner);
  const best = weekdayName(cooledAt + (days - 1) * dayMilliseconds, dinner);
  return sentences([
    say`All put away. That was the dinner.`,
    say`Eat what is left by ${best}, ${latest} at the latest, or freeze it.`,
    dinner.roast.boneless === true || dinner.roast.bones === undefined
      ? say`Ask me how to reheat it.`
      : say`Ask me how to reheat it, or to make stock from the bones.`,
  ]);
}
