/** "I can't do this": one step, the next one, and what can be dropped. */
import { minutesBetween } from '../../base/time.ts';
import { menuOf } from '../../kitchen/dinner.ts';
import type { Scene } from '../scene.ts';
import { forEyes, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { currentStepOf, nextStepOf } from './standing.ts';
import { findStep } from './steps.ts';
import { atTime } from './words.ts';

/** What is so far off is nothing for now. */
const soonMinutes = 20;

export function stressWords(scene: Scene): Spoken {
  const current = currentStepOf(scene);
  const next = nextStepOf(scene);
  const soon = next && minutesBetween(scene.now, next.startAt) <= soonMinutes ? next : undefined;
  const now = current ?? soon;
  const after =
    now === undefined
      ? next
      : scene.plan?.steps.find(
          (step) =>
            step.startAt >= now.startAt &&
            step.id !== now.id &&
            (step.state === 'planned' || step.state === 'due') &&
            step.id !== 'rest' &&
            step.id !== 'check',
        );
  return sentences([
    say`You can, one thing at a time${forEyes(say`; the roast does most of it by itself`)}.`,
    now
      ? say`Just this now: ${now.title}.`
      : say`Nothing needs your hands this minute. Sit down and breathe.`,
    after ? say`Then, ${atTime(after.startAt, scene)}: ${after.title}.` : silent,
    droppable(scene),
  ]);
}

/** Dishes not begun and steps that spoil nothing: what the dinner can do without. */
function droppable(scene: Scene): Spoken {
  const { dinner, plan, dishes } = scene;
  const unbegun = menuOf(dinner)
    .filter((card) => (dishes.get(card.id) ?? 'waiting') === 'waiting')
    .map((card) => say`the ${card.title}`);
  const skippable = (plan?.steps ?? [])
    .filter((step) => step.state === 'planned' || step.state === 'due')
    .filter((step) => {
      const found = findStep(dinner, step.id);
      return found?.card.card === 'roast' && found.step.skippable === true;
    })
    .filter(
      (step) => step.handsOn === 'throughout' && minutesBetween(step.startAt, step.endAt) >= 6,
    );
  const longest = [...skippable].sort(
    (a, b) => minutesBetween(b.startAt, b.endAt) - minutesBetween(a.startAt, a.endAt),
  )[0];
  const parts = [...unbegun.slice(0, 2), ...(longest ? [say`"${longest.title}"`] : [])];
  if (parts.length === 0) return say`Nothing else hangs on you.`;
  return {
    text: say`You could drop ${list(parts, 'or')}: say so, and I take it off the plan.`.text,
    speech: say`You could drop ${parts[0] ?? silent}: say so.`.speech,
  };
}
