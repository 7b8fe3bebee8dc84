/**
 * The knife's minute in the rest. A roast that is out climbs on by itself; some minutes of the table are worth less
 * than a middle as it was asked for, so within them the knife goes in when it is there.
 */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import { coreAfterRest, type Forecast } from '../kitchen/forecast.ts';
import type { Plan } from '../kitchen/plan.ts';
import { roastCameOutAt, roastOf } from './roast-day.ts';

/** Guests bear a table so much sooner or later without a word; hands are late rather than early. */
const sooner = 7;
const later = 5;
/** So many minutes of the table weigh as much as a kelvin at the knife. */
const minutesForAKelvin = 5;
/** For less nobody is told another minute. */
const worthMovingMinutes = 2;
/** A kelvin that the forecast sees is no more than it can be wrong by. */
const bearableKelvin = 0.5;

export interface KnifeAsked {
  dinner: Dinner;
  forecast: Forecast;
  /** The rest of the day as the hour of the table has it. */
  plan: Plan;
}

/** By how many minutes the table moves for the sake of the roast's middle; 0 where the hour stands. */
export function knifeMove({ dinner, forecast, plan }: KnifeAsked): number {
  const outAt = roastCameOutAt(dinner);
  const knife = plan.steps.find((step) => step.id === 'carve');
  if (outAt === undefined || knife === undefined || isSettled(dinner, plan)) return 0;
  const rest = minutesBetween(outAt, knife.startAt);
  const target = plan.serveCelsius;
  const costOf = (move: number): number => {
    const miss = Math.abs(coreAfterRest(forecast, rest + move).p50 - target);
    return Math.max(0, miss - bearableKelvin) ** 2 + (move / minutesForAKelvin) ** 2;
  };
  const soonest = Math.max(-sooner, restLeastMinutes(dinner) - rest);
  let best = 0;
  for (let move = Math.ceil(Math.min(0, soonest)); move <= later; move += 1)
    if (costOf(move) < costOf(best)) best = move;
  return Math.abs(best) < worthMovingMinutes ? 0 : best;
}

/** The dinner as it is planned with its table moved by so many minutes. */
export const withTableMoved = (dinner: Dinner, wantedAt: Instant, move: number): Dinner => ({
  ...dinner,
  servingAt: addMinutes(wantedAt, move),
});

/** What waits for more than the roast, or was called already, is not moved for it. */
function isSettled(dinner: Dinner, plan: Plan): boolean {
  const { wantedAt, likelyAt } = plan.serving;
  return (
    plan.method === 'sear-last' ||
    dinner.course?.rest === 'low-oven' ||
    dinner.servingAt === undefined ||
    dinner.target === undefined ||
    dinner.calls.has('carve:carve') ||
    dinner.steps.get('carve')?.startedAt !== undefined ||
    dinner.steps.get('rest')?.skipped === true ||
    Math.abs(minutesBetween(wantedAt, likelyAt)) > worthMovingMinutes
  );
}

const restLeastMinutes = (dinner: Dinner): number => roastOf(dinner)?.rest.p10 ?? 15;
