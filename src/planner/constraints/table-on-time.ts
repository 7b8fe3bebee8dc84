import { minutesBetween } from '../../base/time.ts';
import type { Constraint } from './constraint.ts';

/** Dinner is on the table when it was wanted; what gives is said, never hidden. */
export const tableOnTime: Constraint = {
  id: 'table-on-time',
  hard: false,
  sentence: 'Dinner is on the table at the time wanted.',
  check: ({ serving }) => {
    const late = minutesBetween(serving.wantedAt, serving.likelyAt);
    return late > 1 ? [{ constraint: 'table-on-time', minutes: late }] : [];
  },
};
