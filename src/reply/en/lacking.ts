/** What the kitchen has not: the other way round a tool, or what stands in for an ingredient. */
import { minutesBetween } from '../../base/time.ts';
import { stepIdOf } from '../../kitchen/card.ts';
import type { OutcomeOf } from '../../kitchen/outcome.ts';
import type { Scene } from '../scene.ts';
import { list, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { cardsOf } from './allergens.ts';
import { ingredientFor, standInWords } from './pantry.ts';
import { callWords, findStep, titleOf } from './steps.ts';
import { duration } from './words.ts';

export function lackedWords({ thing, step }: OutcomeOf<'lacked'>, scene: Scene): Spoken {
  if (step !== undefined) return otherWay(thing, step, scene);
  const found = ingredientFor(thing, scene);
  if (found) return sentences([say`No ${found.part.item}, then.`, standInWords(found, scene)]);
  return say`No ${thing.replace(/-/g, ' ')}: noted. Nothing in this dinner needs it.`;
}

/** A step so near is told its other way aloud; a later one is called so when its time comes. */
const nearMinutes = 15;

/** The first step it touches in its other way, what that costs, and what else it touches. */
function otherWay(thing: string, step: string, scene: Scene): Spoken {
  const around = findStep(scene.dinner, step)?.step.without?.find((one) => one.tool === thing);
  const minutes = around?.extraMinutes ?? 0;
  const others = openStepsNeeding(thing, scene).filter((id) => id !== step);
  const planned = scene.plan?.steps.find((one) => one.id === step);
  const near = !planned || minutesBetween(scene.now, planned.startAt) <= nearMinutes;
  const words = sentences([
    say`The other way: ${lower(callWords(step, scene))}`,
    minutes > 0 ? say`It takes ${duration(minutes)} more, and I count on that.` : silent,
    others.length > 0
      ? say`The same goes for this: ${list(others.map((id) => say`${titleOf(scene.dinner, id)}`))}. I say how when it comes.`
      : silent,
  ]);
  const later = say`I call the other way when it comes.`;
  return sentences([
    say`No ${thing.replace(/-/g, ' ')}, then.`,
    { text: words.text, speech: near ? words.speech : later.speech },
  ]);
}

function openStepsNeeding(thing: string, scene: Scene): string[] {
  const planned = new Set((scene.plan?.steps ?? []).map((one) => one.id));
  return cardsOf(scene).flatMap((card) =>
    card.steps
      .filter((one) => (one.without ?? []).some((way) => way.tool === thing))
      .map((one) => stepIdOf(card, one))
      .filter((id) => planned.has(id) && scene.dinner.steps.get(id)?.doneAt === undefined),
  );
}
