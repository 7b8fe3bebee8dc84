import type { Plan, Shortfall } from '../../kitchen/plan.ts';

/** One rule of the kitchen: an id, whether it must hold, and what it says. */
export interface Constraint {
  id: string;
  hard: boolean;
  sentence: string;
  check(plan: Plan): Shortfall[];
}
