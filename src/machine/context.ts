/** What a decision may look at: the dinner, where the charts stand, and what was expected. */
import type { Card } from '../kitchen/card.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { Fact, NewFact } from '../kitchen/facts.ts';
import type { Band } from '../kitchen/forecast.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import type { Standing } from './stage.ts';

/** What the plan and forecast led one to expect before these words; instants in milliseconds. */
export interface Expected {
  /** Core now by the forecast, once the roast is in. */
  coreNowCelsius?: Band | undefined;
  /** Where it is to come out. */
  pullCelsius?: number | undefined;
  /** Planned starts by step id. */
  starts: ReadonlyMap<string, number>;
  /** Open steps, the current one first. */
  open: readonly string[];
  searCelsius: number;
  roastCelsius: number;
  restLowMinutes: number;
  /** The heat that was called last, where that call was of the oven alone and belongs to no step. */
  ovenCalledCelsius?: number | undefined;
}

/** What a bare "done" answers where the last call was of the oven alone: a step of no card. */
export const ovenCallStep = 'oven-call';

export interface Context {
  id: string;
  facts: readonly Fact[];
  dinner: Dinner;
  standing: Standing;
  now: number;
  expected: Expected;
  /** Cards that could be taken into this dinner. */
  library: readonly Card[];
}

export interface Decision {
  facts: NewFact[];
  outcomes: Outcome[];
}

export const nothing: Decision = { facts: [], outcomes: [] };

export const decided = (facts: NewFact[], ...outcomes: Outcome[]): Decision => ({
  facts,
  outcomes,
});
export const said = (...outcomes: Outcome[]): Decision => ({ facts: [], outcomes });
