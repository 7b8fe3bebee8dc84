/** How a step is done, from its card. */
import type { Card } from '../../kitchen/card.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, sentences } from '../spoken.ts';
import { currentStepOf, nextStepOf } from './standing.ts';
import { findStep, howWords } from './steps.ts';

export function howAnswer(topic: string | undefined, scene: Scene): Spoken {
  const id = topic ?? currentStepOf(scene)?.id ?? nextStepOf(scene)?.id;
  const found = id === undefined ? undefined : stepForTopic(id, scene);
  if (!found)
    return say`I have no card for that${topic ? ` (${topic})` : ''}. Ask me about a step of this dinner.`;
  const lines = howWords(found.step, scene);
  return {
    text: sentences([...lines, say`Right: ${found.step.right}`, say`If not: ${found.step.wrong}`])
      .text,
    speech: sentences(lines.slice(0, 3)).speech,
  };
}

/** The card's step for an id, a dish or a word of its names. */
export function stepForTopic(topic: string, scene: Scene): ReturnType<typeof findStep> {
  const exact = findStep(scene.dinner, topic);
  if (exact) return exact;
  for (const card of scene.dinner.cards) {
    if (card.id === topic && card.steps[0]) return { card, step: mainStep(card) };
    for (const step of card.steps)
      if (
        [step.title, ...(step.names ?? [])].some(
          (name) => name.includes(topic) || topic.includes(name),
        )
      )
        return { card, step };
  }
  return undefined;
}

const mainStep = (card: Card): Card['steps'][number] =>
  card.steps.reduce((best, step) => (step.how.length > best.how.length ? step : best));
