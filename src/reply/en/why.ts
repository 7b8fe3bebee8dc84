/** Why a step stands where it stands. */
import { assertNever } from '../../base/assert.ts';
import type { HeardOf } from '../../kitchen/heard.ts';
import type { PlannedStep, Reason } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { stepForTopic } from './how.ts';
import { loreOf } from './lore.ts';
import { currentStepOf, nextStepOf, noPlan, stepAbout } from './standing.ts';
import { dishTitle, fill, findStep, titleOf } from './steps.ts';
import { clock, duration, ovenDegrees } from './words.ts';

export function whyAnswer({ topic, text }: HeardOf<'ask-why'>, scene: Scene): Spoken {
  const { plan } = scene;
  if (!plan) return noPlan;
  const step = topic === undefined ? undefined : stepAbout(topic, scene);
  const known = loreOf(`${text} ${topic ?? ''}`, step !== undefined, scene);
  if (known) return known;
  if (!step && topic !== undefined) {
    const found = stepForTopic(topic, scene);
    if (found?.step.why) return fill(found.step.why, scene, found.step);
  }
  const meant = step ?? currentStepOf(scene) ?? nextStepOf(scene);
  if (!meant) return say`Nothing stands in the plan that wants a reason.`;
  const of = findStep(scene.dinner, meant.id)?.step;
  const why = of?.why ? fill(of.why, scene, of) : silent;
  return sentences([reasonWords(meant, scene), why]);
}

/** Why a step stands where it stands. */
export function reasonWords(step: PlannedStep, scene: Scene): Spoken {
  const { dinner, plan } = scene;
  const head = say`${step.title} at ${clock(step.startAt, dinner)}`;
  const parts = step.why
    .map((reason) => reasonPart(reason, step, scene))
    .filter((part) => part.text !== '');
  return parts.length === 0 || !plan
    ? capital(say`${head}.`)
    : capital(say`${head}, ${list(parts)}.`);
}

function reasonPart(reason: Reason, step: PlannedStep, scene: Scene): Spoken {
  const { dinner } = scene;
  switch (reason.key) {
    case 'told':
      return step.id === 'serve' ? say`since that is when you want it` : say`since it is under way`;
    case 'asked':
      return say`since you want it then`;
    case 'before-table':
      return say`since the table wants ${duration(reason.minutes)} after it`;
    case 'before-pull':
      return say`since the pull is likely at ${clock(reason.pullAt, dinner)} and it needs ${duration(reason.minutes)}`;
    case 'with-anchor':
      return say`since it has ${duration(Math.abs(reason.minutes))} to go ${reason.minutes >= 0 ? 'before' : 'after'} ${anchorWords(reason.anchor)} at ${clock(reason.anchorAt, dinner)}`;
    case 'after-step':
      return say`since it follows "${titleOf(dinner, reason.step)}"`;
    case 'before-step':
      return say`since "${titleOf(dinner, reason.step)}" comes ${duration(reason.minutes)} later`;
    case 'hands-free':
      return say`since your hands are free`;
    case 'hands-busy':
      return reason.step.startsWith('away')
        ? say`since the hands for it are away until then`
        : say`since your hands are busy before it with "${titleOf(dinner, reason.step)}"`;
    case 'oven-too-cool':
      return say`since the oven at ${ovenDegrees(reason.celsius, dinner.units)} is no heat for it`;
    case 'oven-busy':
      return say`since the oven is taken by the ${dishTitle(dinner, reason.dish)}`;
    case 'roast-takes':
      return say`since the roast likely takes ${duration(reason.minutes)}`;
    case 'rest-takes':
      return say`since the rest takes ${duration(reason.minutes)}`;
    case 'as-soon-as-possible':
      return say`since your hands are free and it can be done ahead`;
    case 'course':
      return say`since that is the course you took`;
    default:
      return assertNever(reason);
  }
}

function anchorWords(anchor: string): string {
  const words: Record<string, string> = {
    'roast-in': 'the roast goes in',
    'oven-down': 'the oven goes down',
    pull: 'the pull',
    carve: 'the carving',
    table: 'dinner',
  };
  return words[anchor] ?? anchor;
}
