import { addMinutes } from '../../base/time.ts';
import type { Plan, PlannedStep } from '../../kitchen/plan.ts';
import { trueHeatCelsius } from '../household-oven.ts';
import type { Constraint } from './constraint.ts';

/** A thermostat swings by more than this. */
const swingKelvin = 1;

/** Minutes of a stay at which the oven, as its dial is turned, is out of what the dish bears. */
function minutesAmiss(plan: Plan, step: PlannedStep): number {
  if (!step.oven) return 0;
  const { index, lowCelsius, highCelsius } = step.oven;
  let amiss = 0;
  for (let at = step.startAt; at <= step.endAt; at = addMinutes(at, 1)) {
    const celsius = trueHeatCelsius(plan.oven, index, at);
    if (celsius < lowCelsius - swingKelvin || celsius > highCelsius + swingKelvin) amiss += 1;
  }
  return amiss;
}

/** A dish is in an oven only at a heat that it bears. Steps already begun are the cook's affair. */
export const ovenTolerance: Constraint = {
  id: 'oven-tolerance',
  hard: true,
  sentence: 'A dish is in the oven only at a heat it bears.',
  check: (plan) =>
    plan.steps
      .filter((step) => step.state === 'planned' || step.state === 'due')
      .map((step) => ({ step, minutes: minutesAmiss(plan, step) }))
      .filter(({ minutes }) => minutes > 0)
      .map(({ step, minutes }) => ({ constraint: 'oven-tolerance', step: step.id, minutes })),
};
