/** How long of its rest a held roast is in the low oven, as the plan has it. */
import { addMinutes, minutesBetween } from '../base/time.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { HoldSpan } from '../kitchen/forecast.ts';
import type { OvenMove, Plan } from '../kitchen/plan.ts';
import { holdRange } from './compile/roast.ts';
import { householdOven, trueHeatCelsius } from './household-oven.ts';
import { roastCameOutAt, roastOf } from './roast-day.ts';

/** A dial stands so near a heat that it is set to it. */
const sameKelvin = 1;
/** An oven that is off holds nothing hot. */
const offCelsius = 40;

const holds = ({ celsius }: OvenMove): boolean =>
  celsius > offCelsius && celsius <= holdRange.highCelsius + sameKelvin;

const none: HoldSpan = { fromMinutes: 0, toMinutes: 0 };

const calledHold = /^oven-change:hold-(\d+)$/;

/**
 * The roast's oven by its turns. A call for the hold that nobody answered was followed until the dial was told
 * otherwise: what is told later takes it out of the plan, not out of the roast.
 */
function turnsOf(plan: Plan, dinner: Dinner): OvenMove[] {
  const called = [...dinner.calls].flatMap(([call, { firstAt }]): OvenMove[] => {
    const celsius = calledHold.exec(call)?.[1];
    return celsius === undefined ? [] : [{ at: firstAt, celsius: Number(celsius), why: 'hold' }];
  });
  const planned = plan.oven.filter((move) => (move.oven ?? 0) === 0);
  return [...called, ...planned].sort((a, b) => a.at - b.at);
}

/** As near as a plan in whole minutes comes. */
export const isSameHold = (one: HoldSpan, other: HoldSpan | undefined): boolean =>
  other !== undefined &&
  Math.abs(one.fromMinutes - other.fromMinutes) <= 1 &&
  Math.abs(one.toMinutes - other.toMinutes) <= 1;

/** Undefined where no hold is wanted; one that the dishes leave no time for ends as it begins. */
export function holdSpanOf(plan: Plan, dinner: Dinner): HoldSpan | undefined {
  if (dinner.course?.rest !== 'low-oven') return undefined;
  const outAt = roastCameOutAt(dinner) ?? plan.pullAt.p50;
  const own = turnsOf(plan, dinner);
  const standing = own.findLastIndex((move) => move.at <= outAt);
  const first = own.findIndex((move, index) => index >= standing && holds(move));
  const turned = own[first];
  if (!turned) return none;
  const turnedAt = Math.max(outAt, turned.at);
  // Turns before the last that was told are forgotten with it: then it stood as the roast has it.
  const heat =
    standing < 0 ? (roastOf(dinner)?.program.roastCelsius ?? 0) : trueHeatCelsius(own, 0, turnedAt);
  const tooHot = heat - holdRange.highCelsius;
  const cooling = Math.max(0, tooHot) / householdOven.coolingKelvinPerMinute;
  const knifeAt = plan.steps.find((step) => step.id === 'carve')?.startAt;
  const endsAt = own.slice(first).find((move) => !holds(move))?.at ?? knifeAt ?? turnedAt;
  const from = minutesBetween(outAt, addMinutes(turnedAt, cooling));
  const to = minutesBetween(outAt, Math.min(endsAt, knifeAt ?? endsAt));
  return to > from ? { fromMinutes: Math.round(from), toMinutes: Math.round(to) } : none;
}
