/** Where the dinner stands, for whoever words it: the open step, the next one, the core now. */
import { minutesBetween } from '../../base/time.ts';
import { coreTold } from '../../kitchen/core-told.ts';
import type { Band } from '../../kitchen/forecast.ts';
import type { PlannedStep } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { say } from '../spoken.ts';

export const noPlan = say`There is no plan yet: tell me the roast, the hour, how many, and how you like it.`;

/** What only takes hands at its start has let go of them by then. */
const handsAtStartMinutes = 3;

export function currentStepOf(scene: Scene): PlannedStep | undefined {
  const steps = scene.plan?.steps ?? [];
  const open = steps.filter(
    (step) =>
      step.state === 'active' &&
      step.id !== 'rest' &&
      (step.handsOn === 'throughout' ||
        (step.handsOn === 'start' &&
          minutesBetween(step.startAt, scene.now) <= handsAtStartMinutes)),
  );
  return (
    open.filter((step) => minutesBetween(step.startAt, scene.now) < 90).at(-1) ??
    steps.find((step) => step.state === 'due')
  );
}

export function nextStepOf(scene: Scene): PlannedStep | undefined {
  return scene.plan?.steps.find(
    (step) =>
      (step.state === 'planned' || step.state === 'due') &&
      step.id !== 'rest' &&
      step.id !== 'check',
  );
}

/** The planned step that a topic names: its id, its dish, or words of its title. */
export function stepAbout(about: string, scene: Scene): PlannedStep | undefined {
  const steps = scene.plan?.steps ?? [];
  const roast = about === 'roast' || about === scene.dinner.roast.cut;
  if (roast)
    return (
      steps.find((step) => step.id === 'pull' && step.state !== 'done') ??
      steps.find((step) => step.id === 'carve')
    );
  if (about === 'dinner') return steps.find((step) => step.id === 'serve');
  return (
    steps.find((step) => step.id === about) ??
    steps.find((step) => step.card === about && step.state !== 'done') ??
    steps.find((step) => step.title.includes(about))
  );
}

export const carveAt = (scene: Scene): number =>
  scene.plan?.steps.find((step) => step.id === 'carve')?.startAt ?? scene.now;

/** Where the roast is. */
export const isInOven = ({ stage }: Scene): boolean => stage === 'sear' || stage === 'low-roast';
export const isResting = ({ stage }: Scene): boolean => stage === 'rest' || stage === 'hold';

/** The core now, as it is told everywhere. */
export function coreNow(scene: Scene): Band | undefined {
  const { plan, forecast, dinner, now } = scene;
  if (!plan || !forecast) return undefined;
  return coreTold({ dinner, forecast, roastInAt: plan.roastInAt }, now, isInOven(scene));
}
