/** What the cook has been told of the day: what a new plan keeps to, and what is news when it moves. */
import type { NewFact } from '../kitchen/facts.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import { isKeyStep } from '../planner/calls/table.ts';
import { roastCameOutAt } from '../planner/roast-day.ts';
import type { Outlook } from './outlook.ts';

export interface Telling {
  /** Something was noted, so that the day may have changed. */
  acted: boolean;
  /** The words said why the day moves, so that its moves are no news. */
  heardWhy: boolean;
}

const why: ReadonlySet<Outcome['key']> = new Set<Outcome['key']>([
  'serving-set',
  'serving-moved',
  'chosen',
  'reading-noted',
  'roast-out',
  'running-behind',
  'clock-set',
  'step-not-done',
  'corrected',
  'started-over',
]);

/** Whether the reply to an outcome tells what moves the day, or the whole day. */
export const tellsWhy = (outcome: Outcome): boolean =>
  why.has(outcome.key) ||
  (outcome.key === 'step-skipped' && outcome.step === 'rest') ||
  (outcome.key === 'answer' && outcome.heard.intent === 'ask-plan');

/** What the cook now knows of the day, if it differs from what was told before. */
export function planTold({ plan, dinner }: Outlook, { acted, heardWhy }: Telling): NewFact[] {
  if (!plan?.complete || !acted) return [];
  const before = new Map((dinner.told?.starts ?? []).map(({ step, at }) => [step, at]));
  const starts = plan.steps
    .filter((step) => step.state === 'planned' || step.state === 'due')
    .map((step) => {
      const known = isKeyStep(step) && !heardWhy ? before.get(step.id) : undefined;
      return { step: step.id, at: known ?? step.startAt };
    });
  const same =
    dinner.told?.servingAt === plan.serving.likelyAt &&
    dinner.told.pullCelsius === plan.pullCelsius &&
    starts.length === before.size &&
    starts.every(({ step, at }) => before.get(step) === at);
  if (same && roastCameOutAt(dinner) === undefined) return [];
  return [
    { type: 'plan-told', servingAt: plan.serving.likelyAt, pullCelsius: plan.pullCelsius, starts },
  ];
}
