/** A roast that came out too soon, seen on its board while the oven can still mend it. */
import { type Instant, minutesBetween } from '../base/time.ts';
import type { Dinner, Reading } from './dinner.ts';
import { coreAfterRest, type Forecast } from './forecast.ts';
import type { Plan } from './plan.ts';

/** With a number from the board nobody is sent back to the oven for less. */
const shortOnBoardKelvin = 1.7;
/** An oven reaches the middle no sooner than this: the middle follows its outside slowly. */
const mendedMinutes = 35;

export interface Resting {
  dinner: Dinner;
  plan: Plan;
  forecast: Forecast;
}

/** The last number read on the board since it came out. */
export function readOnBoard(dinner: Dinner): Reading | undefined {
  const outAt = dinner.steps.get('pull')?.doneAt;
  const last = dinner.readings.at(-1);
  return outAt !== undefined && last !== undefined && last.happenedAt > outAt ? last : undefined;
}

/** Whether by a number from the board it will not come to what was asked for, and there is time to put it back. */
export function isMendable({ dinner, plan, forecast }: Resting, at: Instant): boolean {
  const outAt = dinner.steps.get('pull')?.doneAt;
  const knifeAt = plan.steps.find((step) => step.id === 'carve')?.startAt;
  if (outAt === undefined || knifeAt === undefined || readOnBoard(dinner) === undefined)
    return false;
  if (minutesBetween(at, knifeAt) < mendedMinutes) return false;
  // One that is there and cools again by the knife is not mended in an oven.
  const rest = minutesBetween(outAt, knifeAt);
  const highest = Math.max(
    plan.coreAtServingCelsius.p50,
    ...forecast.afterRest
      .filter((one) => one.minutesAfterPull <= rest)
      .map((one) => one.celsius.p50),
    coreAfterRest(forecast, rest).p50,
  );
  return plan.serveCelsius - highest >= shortOnBoardKelvin;
}
