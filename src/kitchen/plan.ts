/** What the planner hands up: the rest of the day, with its reasons. Instants in milliseconds. */
import type { Method } from './facts.ts';
import type { Band } from './forecast.ts';

/** Why a step stands where it stands, down to what binds it. The words room phrases it. */
export type Reason =
  | { key: 'told' }
  /** It has a time of its own. */
  | { key: 'asked' }
  | { key: 'before-table'; minutes: number }
  | { key: 'before-pull'; minutes: number; pullAt: number }
  | { key: 'with-anchor'; anchor: string; anchorAt: number; minutes: number }
  | { key: 'after-step'; step: string; minutes: number }
  | { key: 'before-step'; step: string; minutes: number }
  | { key: 'hands-free' }
  | { key: 'hands-busy'; step: string }
  | { key: 'oven-too-cool'; celsius: number }
  | { key: 'oven-busy'; dish: string }
  | { key: 'roast-takes'; minutes: number }
  | { key: 'rest-takes'; minutes: number }
  | { key: 'as-soon-as-possible' }
  | { key: 'course' };

export type StepState = 'planned' | 'due' | 'active' | 'done' | 'skipped';

export interface PlannedStep {
  /** Bare for the roast's own, "dish.step" for the others. */
  id: string;
  card: string;
  title: string;
  startAt: number;
  endAt: number;
  minutes: Band;
  state: StepState;
  /** Names of those whose hands it takes. */
  hands: readonly string[];
  handsOn: 'throughout' | 'start' | 'none';
  /** Hands at its start are back so much sooner than they likely are: a minute is made up. */
  handsSoonerMinutes?: number | undefined;
  needs: readonly string[];
  why: readonly Reason[];
  /** The steps it leans on, one after another, to what binds the day. */
  chain?: readonly string[] | undefined;
  /** The oven it is in (0: the roast's) and the heat it bears, for a step that is in one. */
  oven?: { index: number; lowCelsius: number; highCelsius: number } | undefined;
  /** How much later it could start before the table moves. */
  slackMinutes: number;
  presumed: boolean;
}

export interface OvenMove {
  at: number;
  celsius: number;
  why: 'preheat' | 'sear' | 'roast' | 'course' | 'hold' | 'sides' | 'off' | 'finish-sear';
  /** Absent: the roast's own oven; otherwise 1 for the second. */
  oven?: number | undefined;
}

/** A rule that the plan could not keep, and by how much. */
export interface Shortfall {
  constraint: string;
  step?: string | undefined;
  minutes?: number | undefined;
}

export interface Plan {
  /** Known enough to plan; otherwise only the prep that needs nothing is listed. */
  complete: boolean;
  method: Method;
  steps: readonly PlannedStep[];
  serving: { wantedAt: number; likelyAt: number; earliestAt: number; latestAt: number };
  /** The dinner's other clocks, where they were told: guests at the door, the first course out. */
  guestsAt?: number | undefined;
  firstCourseAt?: number | undefined;
  /** Chance that the table is within ten minutes of the time wanted. */
  onTimeChance: number;
  roastInAt: number;
  pullAt: { p10: number; p50: number; p90: number };
  pullCelsius: number;
  serveCelsius: number;
  restMinutes: number;
  carveMinutes: number;
  oven: readonly OvenMove[];
  /** What the oven should stand at now; 0 is off. */
  ovenNowCelsius: number;
  /** When to look at the core next. */
  checkAt?: number | undefined;
  coreAtServingCelsius: Band;
  /** The step whose usual overrun would use up the most of its room, or more than that. */
  firstToBreak?: { step: string; slackMinutes: number; overrunMinutes: number } | undefined;
  shortfalls: readonly Shortfall[];
}

/** Whether the roast goes back into a low oven, or is in one: a dish that needs the heat can be in the way of it. */
export const isHeld = ({ oven }: Plan): boolean => oven.some((move) => move.why === 'hold');
