/** What moved of the day: the table, and starts that the cook was told. */
import { addMinutes, minutesBetween } from '../../base/time.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Plan, PlannedStep } from '../../kitchen/plan.ts';
import { roastCameOutAt, roastWentInAt } from '../roast-day.ts';
import type { Wanted } from './call.ts';
import { pullName } from './pull.ts';

/** A change of the table that is worth saying unasked. */
const lateWorthSayingMinutes = 10;

export function lateCalls(dinner: Dinner, plan: Plan): Wanted[] {
  if (dinner.steps.get('serve')?.doneAt !== undefined || roastWentInAt(dinner) === undefined)
    return [];
  // Once it was called to the table, nobody waits for the hour any more.
  if (dinner.calls.has('serve:serve')) return [];
  // While nobody says whether it is out, how late dinner is would be a guess about that.
  if (roastCameOutAt(dinner) === undefined && dinner.calls.has(`pull:${pullName(dinner, plan)}`))
    return [];
  const promised = Math.max(dinner.told?.servingAt ?? 0, plan.serving.wantedAt);
  const minutes = minutesBetween(promised, plan.serving.likelyAt);
  if (minutes <= lateWorthSayingMinutes) return [];
  const { likelyAt } = plan.serving;
  return [
    {
      kind: 'running-late',
      what: `${Math.round(promised / 60_000)}+${Math.round(minutes / 15)}`,
      dueAt: dinner.lastAt,
      expiryMinutes: 30,
      about: { what: 'late', likelyAt, minutes },
    },
  ];
}

/** A start that was told is said to have moved from so many minutes on, if it is near. */
const movedWorthSayingMinutes = 10;
const nearMinutes = 60;

/** A day that goes on sliding is told of no more often. */
const againMinutes = 15;

/** Steps that others wait for: the roast's way in, and what goes into an oven or comes to the knife. */
export const isKeyStep = (step: Pick<PlannedStep, 'id' | 'oven'>): boolean =>
  step.oven !== undefined ||
  step.id === 'roast-in' ||
  step.id === 'sear' ||
  step.id === 'first-course';

/** Key steps that stand elsewhere than the cook was told, and soon enough to matter. */
export function movedSteps(
  dinner: Dinner,
  plan: Plan,
): { step: string; at: number; wasAt: number }[] {
  const told = new Map((dinner.told?.starts ?? []).map(({ step, at }) => [step, at]));
  return plan.steps.flatMap((step) => {
    const wasAt = told.get(step.id);
    if (wasAt === undefined || !isKeyStep(step) || step.state !== 'planned') return [];
    const near = minutesBetween(dinner.lastAt, Math.min(step.startAt, wasAt)) <= nearMinutes;
    const moved = Math.abs(minutesBetween(wasAt, step.startAt)) >= movedWorthSayingMinutes;
    return near && moved ? [{ step: step.id, at: step.startAt, wasAt }] : [];
  });
}

/**
 * What moved for a reason that the cook did not just hear. While nobody says whether the roast is out,
 * all that hangs on it is a guess, and is not told.
 */
export function changedCalls(dinner: Dinner, plan: Plan): Wanted[] {
  if (dinner.steps.get('serve')?.doneAt !== undefined) return [];
  if (roastCameOutAt(dinner) === undefined && dinner.calls.has(`pull:${pullName(dinner, plan)}`))
    return [];
  const moves = movedSteps(dinner, plan).slice(0, 2);
  const [first] = moves;
  if (!first) return [];
  const lastChanged = Math.max(
    0,
    ...[...dinner.calls.values()]
      .filter((one) => one.kind === 'plan-changed')
      .map((one) => one.lastAt),
  );
  return [
    {
      kind: 'plan-changed',
      what: moves.map(({ step, at }) => `${step}@${Math.round(at / 60_000)}`).join('+'),
      dueAt: Math.max(addMinutes(dinner.lastAt, 1), addMinutes(lastChanged, againMinutes)),
      expiryMinutes: 15,
      about: { what: 'moved', moves },
    },
  ];
}
