/** What the words room may look at: the dinner, the plan before and after, the forecast, the stage. */
import type { DaysAhead } from '../kitchen/days.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { Option } from '../kitchen/facts.ts';
import type { Forecast } from '../kitchen/forecast.ts';
import type { Stage } from '../kitchen/heard.ts';
import type { Plan } from '../kitchen/plan.ts';
import type { SideState } from '../kitchen/view.ts';

export interface Scene {
  dinner: Dinner;
  now: number;
  stage: Stage;
  dishes: ReadonlyMap<string, SideState>;
  plan?: Plan | undefined;
  before?: Plan | undefined;
  forecast?: Forecast | undefined;
  /** Freshly offered with this reply, first one taken. */
  options?: readonly Option[] | undefined;
  /** What another heat of the oven would make of the roast, where that was asked. */
  supposed?: { ovenCelsius: number; pullCelsius: number; forecast: Forecast } | undefined;
  /** What another hour of dinner would make of the day, and the ways there, where that was asked. */
  supposedHour?: { wantedAt: number; plan: Plan; options: readonly Option[] } | undefined;
  /** The step to do now, and whether this reply is the one that calls it. */
  nextStep?: string | undefined;
  /** Whether the whole day is told for the first time. */
  firstPlan: boolean;
  /** What was planned of the days before; only where it may be asked for. */
  days?: DaysAhead | undefined;
}
