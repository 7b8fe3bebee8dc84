/** The evening before: the thermometer, the cuts, the salt, one after the other. */
import { addMinutes, type Instant, minutesBetween } from '../../base/time.ts';
import { seasoningStep, thermometerStep } from '../../kitchen/chores.ts';
import { type Dinner, roastCardOf } from '../../kitchen/dinner.ts';
import type { Plan, PlannedStep, Reason } from '../../kitchen/plan.ts';
import { clockAt, toldAt } from './chore.ts';

/** Clock times of the evening. Common practice, no source. */
const thermometerTime = '19:00';
const saltingTime = '20:00';

/**
 * What the card does to the roast before it is salted is done the evening before as well, one after
 * the other: a salted roast is not trimmed and tied. What was begun or skipped stays where it was.
 */
export function cutBeforeSalting(
  steps: readonly PlannedStep[],
  { saltAt, minutes }: Evening,
  dinner: Dinner,
  now: Instant,
): PlannedStep[] {
  const salted = dinner.steps.get('salt-ahead');
  if (salted?.skipped || (salted?.doneAt ?? salted?.startedAt) !== undefined) return [...steps];
  return steps.map((step) => {
    const offset = minutes.get(step.id);
    const untouched = step.state === 'planned' || step.state === 'due';
    if (offset === undefined || !untouched || step.startAt <= saltAt) return step;
    const startAt = addMinutes(saltAt, offset);
    const endAt = addMinutes(startAt, step.minutes.p50);
    const why: Reason[] = [{ key: 'before-step', step: 'salt-ahead', minutes: -offset }];
    return { ...step, startAt, endAt, why, state: startAt <= now ? 'due' : 'planned' };
  });
}

/** When the roast is salted the evening before, and how long before that each cut begins. */
interface Evening {
  saltAt: Instant;
  /** Minutes after `saltAt`, so below zero, by step. */
  minutes: ReadonlyMap<string, number>;
}

/**
 * Salting at its hour, or as soon after the dinner was told as the cuts before it allow. Cuts follow
 * one another in the card's order, whatever was begun of them meanwhile.
 */
export function eveningOf(dinner: Dinner, plan: Plan): Evening {
  const before = beforeSeasoning(dinner);
  const cuts = (roastCardOf(dinner)?.steps ?? []).filter(
    (step) =>
      before.has(step.id) &&
      plan.steps.some((one) => one.id === step.id && one.state !== 'skipped'),
  );
  const total = cuts.reduce((sum, step) => sum + step.minutes[1], 0);
  const minutes = new Map<string, number>();
  let offset = -total;
  for (const step of cuts) {
    minutes.set(step.id, offset);
    offset += step.minutes[1];
  }
  const hour = clockAt(dinner, plan.roastInAt, -1, saltingTime);
  const since = toldAt(dinner);
  const toldTheDayBefore = since < clockAt(dinner, plan.roastInAt, 0, '00:00');
  const saltAt = toldTheDayBefore ? Math.max(hour, addMinutes(since, total)) : hour;
  return { saltAt, minutes };
}

/** The steps of the roast's card that its seasoning waits for, directly or not. */
function beforeSeasoning(dinner: Dinner): ReadonlySet<string> {
  const steps = roastCardOf(dinner)?.steps ?? [];
  const before = new Set<string>();
  const visit = (id: string): void => {
    for (const { step } of steps.find((one) => one.id === id)?.after ?? [])
      if (!before.has(step) && !step.includes('.')) {
        before.add(step);
        visit(step);
      }
  };
  visit(seasoningStep);
  return before;
}

/** Told a day ahead, the thermometer is tested while a new one can still be bought. */
export function testedTheEveningBefore(
  step: PlannedStep,
  dinner: Dinner,
  plan: Plan,
  now: Instant,
): PlannedStep {
  if (step.id !== thermometerStep || step.state === 'done' || step.state === 'active') return step;
  const at = clockAt(dinner, plan.roastInAt, -1, thermometerTime);
  if (at < toldAt(dinner) || step.state === 'skipped') return step;
  const startAt = Math.min(at, step.startAt);
  return {
    ...step,
    startAt,
    endAt: addMinutes(startAt, step.minutes.p50),
    state: startAt <= now ? 'due' : 'planned',
    why: [
      { key: 'before-step', step: 'roast-in', minutes: minutesBetween(startAt, plan.roastInAt) },
    ],
  };
}
