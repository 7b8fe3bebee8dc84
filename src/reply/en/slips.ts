/** When hands or dishes run behind: the cook away, a step not done, no rest, minutes lost. */
import { minutesBetween } from '../../base/time.ts';
import { menuOf } from '../../kitchen/dinner.ts';
import type { OutcomeOf } from '../../kitchen/outcome.ts';
import type { PlannedStep } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { capital, list, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { isOvenStep } from './day.ts';
import { tableWords } from './progress.ts';
import { callWords, dishTitle, titleOf } from './steps.ts';
import { clock, duration } from './words.ts';

const takesHands = (step: PlannedStep): boolean =>
  step.state === 'planned' && step.handsOn !== 'none';

/** What falls due while the cook is away is named; what could be moved to after that, too. */
export function awayWords({ until, minutes }: OutcomeOf<'cook-away'>, scene: Scene): Spoken {
  const { now, dinner } = scene;
  const inside = (step: PlannedStep): boolean =>
    takesHands(step) && step.startAt > now && step.startAt < until;
  const steps = scene.plan?.steps ?? [];
  const due = steps.filter(inside).slice(0, 2);
  const moved = (scene.before?.steps ?? []).filter(inside).flatMap((step) => {
    const later = steps.find((one) => one.id === step.id);
    return later && later.startAt >= until ? [step] : [];
  });
  const waits =
    moved.length > 0
      ? say`What waits for you: ${list(
          moved.slice(0, 2).map((step) => say`${step.title}`),
          'then',
        )}.`
      : silent;
  const first = due[0];
  if (!first)
    return sentences([
      say`Nothing needs you for ${duration(minutes)}. Be back by ${clock(until, dinner)}.`,
      waits,
    ]);
  const named = list(due.map((step) => say`${step.title}, at ${clock(step.startAt, dinner)}`));
  // A roast cannot be pulled before it is there.
  const ahead = due.every((step) => step.id !== 'pull');
  return sentences([
    say`Before you are back: ${named}. ${ahead ? 'Somebody must do it, or do it now.' : 'Somebody must do it.'}`,
    waits,
  ]);
}

/** What was forgotten and is due so soon is done at once. */
const soonMinutes = 8;

/** A dish in the oven stays in; what is not due yet keeps its time; the rest gets what it needs. */
export function notDoneWords({ step }: OutcomeOf<'step-not-done'>, scene: Scene): Spoken {
  const { dinner, now } = scene;
  const planned = scene.plan?.steps.find((one) => one.id === step);
  const forgotten = dinner.steps.get(step)?.notBegunAt === now;
  if (forgotten && planned && planned.startAt <= now + soonMinutes * 60_000)
    return say`Now, then: ${lower(callWords(step, scene))}`;
  if (planned?.state === 'planned' && planned.startAt > now + 3 * 60_000)
    return say`No hurry: ${planned.title}, at ${clock(planned.startAt, dinner)}.`;
  if (planned?.state === 'active' && isOvenStep(scene, planned) && planned.endAt > now)
    return sentences([
      say`Leave it in: I count on ${duration(minutesBetween(now, planned.endAt))} more, till ${clock(planned.endAt, dinner)}.`,
    ]);
  return say`Take your time: ${titleOf(dinner, step)}. Tell me when it is done.`;
}

/** Its cost in one clause; then what does not make the table is named. */
export function skippedRest(scene: Scene): Spoken {
  const { plan, dinner, stage } = scene;
  const out = stage === 'rest' || stage === 'hold';
  const head = out
    ? say`Carve now, then. It will bleed a little on the board.`
    : say`No rest, then: carved as soon as it is out, and it will bleed a little on the board.`;
  const servingAt = plan?.serving.likelyAt ?? 0;
  const late = menuOf(dinner).flatMap((card) => {
    const last = (plan?.steps ?? []).filter(
      (step) => step.card === card.id && step.state !== 'done' && step.endAt > servingAt,
    );
    return last.length === 0 ? [] : [{ card, at: Math.max(...last.map((step) => step.endAt)) }];
  });
  if (late.length === 0) return head;
  const at = Math.max(...late.map((one) => one.at));
  return sentences([
    head,
    capital(
      say`${list(late.map(({ card }) => say`${dishTitle(dinner, card.id)}`))} to follow by ${clock(at, dinner)}.`,
    ),
  ]);
}

/** Minutes lost: whether the table feels them, and when the roast goes in where that is to come. */
export function behindWords(scene: Scene): Spoken {
  const { plan, dinner, now } = scene;
  if (!plan) return say`No harm yet.`;
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt);
  const toCome = plan.roastInAt > now && !/^(sear|low-roast|rest|hold|carve)$/.test(scene.stage);
  return sentences([
    late > 5
      ? tableWords(scene)
      : say`There is room for that: dinner stays at ${clock(plan.serving.likelyAt, dinner)}.`,
    toCome ? say`The roast goes in at ${clock(plan.roastInAt, dinner)}.` : silent,
  ]);
}
