/** What a household must know of a dinner without computing a forecast or a plan. */
import type { Instant } from '../base/time.ts';
import { dinnerOf } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { Stage } from '../kitchen/heard.ts';
import { standingOf } from '../machine/stage.ts';

export interface Glance {
  stage: Stage;
  timeZone: string;
  /** When the table is wanted, once that is known. */
  servingAt?: Instant | undefined;
  openedAt: Instant;
  lastAt: Instant;
}

/** Undefined for a dinner of which nothing is written. */
export function glanceOf(id: string, facts: readonly Fact[]): Glance | undefined {
  const first = facts[0];
  if (!first) return undefined;
  const { timeZone, servingAt } = dinnerOf(id, facts);
  const lastAt = facts.reduce((latest, fact) => Math.max(latest, fact.at), 0);
  return { stage: standingOf(id, facts).stage, timeZone, servingAt, openedAt: first.at, lastAt };
}
