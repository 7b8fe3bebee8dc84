/**
 * The rules a plan must keep, hard ones first, each with an id and a sentence for the cook. A rule
 * looks at a finished plan only, so that the same rules judge any way of planning.
 */
import type { Plan, Shortfall } from '../../kitchen/plan.ts';
import type { Constraint } from './constraint.ts';
import { handsOnce } from './hands-once.ts';
import { ovenTolerance } from './oven-tolerance.ts';
import { restBeforeCarve } from './rest-before-carve.ts';
import { tableOnTime } from './table-on-time.ts';

export const constraints: readonly Constraint[] = [
  handsOnce,
  ovenTolerance,
  restBeforeCarve,
  tableOnTime,
];

export const checkShortfalls = (plan: Plan): Shortfall[] =>
  constraints.flatMap((constraint) => constraint.check(plan));
