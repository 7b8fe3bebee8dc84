import { minutesBetween } from '../../base/time.ts';
import type { Constraint } from './constraint.ts';

/** The knife waits for the rest. */
export const restBeforeCarve: Constraint = {
  id: 'rest-before-carve',
  hard: true,
  sentence: 'The roast rests before it is carved.',
  check: (plan) => {
    const rest = plan.steps.find((step) => step.id === 'rest');
    const carve = plan.steps.find((step) => step.id === 'carve' && step.state === 'planned');
    if (!rest || !carve) return [];
    const missing = minutesBetween(carve.startAt, rest.endAt);
    return missing > 0.5
      ? [{ constraint: 'rest-before-carve', step: 'carve', minutes: missing }]
      : [];
  },
};
