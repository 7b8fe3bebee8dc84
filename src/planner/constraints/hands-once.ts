import { addMinutes } from '../../base/time.ts';
import type { PlannedStep } from '../../kitchen/plan.ts';
import { startMinutes } from '../items.ts';
import type { Constraint } from './constraint.ts';

const busyUntil = (step: PlannedStep): number =>
  step.handsOn === 'throughout'
    ? step.endAt
    : addMinutes(step.startAt, startMinutes - (step.handsSoonerMinutes ?? 0));

/** One pair of hands does one thing at a time. Steps already begun are the cook's affair. */
export const handsOnce: Constraint = {
  id: 'hands-once',
  hard: true,
  sentence: 'Nobody does two things with the same hands at once.',
  check: (plan) => {
    const open = plan.steps.filter(
      (step) => step.hands.length > 0 && (step.state === 'planned' || step.state === 'due'),
    );
    return open.flatMap((step, index) =>
      open
        .slice(index + 1)
        .filter(
          (other) =>
            step.hands[0] === other.hands[0] &&
            step.startAt < busyUntil(other) &&
            other.startAt < busyUntil(step),
        )
        .map((other) => ({ constraint: 'hands-once', step: other.id })),
    );
  },
};
