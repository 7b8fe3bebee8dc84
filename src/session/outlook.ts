/**
 * A dinner as it looks from one instant: the folded facts, where the charts stand, the forecast and
 * the plan. Derived anew from the facts each time; nothing here is stored.
 */
import { minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import { coreTold } from '../kitchen/core-told.ts';
import { type Dinner, dinnerOf } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { Band, Forecast, ForecastQuestion, HoldSpan } from '../kitchen/forecast.ts';
import type { Plan } from '../kitchen/plan.ts';
import type { Expected } from '../machine/context.ts';
import { lastCalled } from '../machine/decide-steps.ts';
import { type Standing, standingOf } from '../machine/stage.ts';
import { aimedPull, usualPull } from '../planner/aim.ts';
import type { Call } from '../planner/calls/call.ts';
import { callsOf } from '../planner/calls/calls.ts';
import { asCooked } from '../planner/days/thaw.ts';
import { holdSpanOf, isSameHold } from '../planner/hold-span.ts';
import {
  firstPullCelsius,
  ovenMovesOf,
  questionOf,
  roastCameOutAt,
  roastOf,
  roastWentInAt,
} from '../planner/roast-day.ts';
import { planWithChores } from './days.ts';
import type { Compute } from './ports.ts';

export interface Outlook {
  now: number;
  dinner: Dinner;
  standing: Standing;
  forecast?: Forecast | undefined;
  question?: ForecastQuestion | undefined;
  plan?: Plan | undefined;
  calls: readonly Call[];
}

/** Served core taken until a doneness is known: medium rare, 130 °F. */
const usualServeCelsius = celsiusOfFahrenheit(130);

/** Before a plan: a roast goes in about so long before its table. */
const likelyInAt = (dinner: Dinner): number =>
  (dinner.servingAt ?? dinner.openedAt) - 4 * 3_600_000;

const lateMinutes = 2;
const isLate = ({ serving }: Plan): boolean =>
  minutesBetween(serving.wantedAt, serving.likelyAt) > lateMinutes;

/** A shorter hold asks for a later pull, and that makes it shorter again: twice comes near enough. */
const holdRounds = 2;

export async function outlookOf(
  id: string,
  facts: readonly Fact[],
  now: number,
  compute: Compute,
): Promise<Outlook> {
  const dinner = dinnerOf(id, facts);
  const charts = standingOf(id, facts);
  const roast = roastOf(dinner);
  if (!roast)
    return { now, dinner, standing: charts, calls: callsOf(dinner, undefined, undefined) };
  const wentInAt = roastWentInAt(dinner);
  // Before it is in, only the method's own program matters; what the dial did so far is the preheat.
  const thawed = asCooked(dinner, now, wentInAt ?? likelyInAt(dinner));
  const asked: Dinner =
    wentInAt === undefined
      ? { ...thawed, oven: [], course: dinner.course ? { ...dinner.course, oven: [] } : undefined }
      : thawed;
  const roastInAt = wentInAt ?? dinner.servingAt ?? dinner.openedAt;
  const moves = ovenMovesOf(asked, roast.program, roastInAt);
  const serveCelsius = dinner.target?.serveCelsius ?? usualServeCelsius;
  const guess = firstPullCelsius(serveCelsius);
  const usual = await compute.forecast(
    questionOf(asked, roast.card, { roastInAt, pullCelsius: guess, moves, withReadings: false }),
  );
  const aim = { dinner, roast, serveCelsius };
  const firstPull =
    dinner.course?.pullCelsius ?? usualPull({ ...aim, forecast: usual, pullCelsius: guess });
  const aimed = async (leastRestMinutes?: number, hold?: HoldSpan) => {
    const ask = (pullCelsius: number): ForecastQuestion =>
      questionOf(asked, roast.card, { roastInAt, pullCelsius, moves, withReadings: true, hold });
    const first = await compute.forecast(ask(firstPull));
    const from = { forecast: first, pullCelsius: firstPull, roastInAt, leastRestMinutes };
    const pullCelsius = aimedPull({ ...aim, ...from });
    const question = ask(pullCelsius);
    const forecast = pullCelsius === firstPull ? first : await compute.forecast(question);
    const planned = await compute.plan({ dinner, forecast, pullCelsius, now });
    return { pullCelsius, question, forecast, planned };
  };
  let day = await aimed();
  // Where dinner is late and waits for a dish, the roast rests through that: it may come out the sooner.
  if (wentInAt !== undefined && day.planned && isLate(day.planned))
    day = await aimed(day.planned.restMinutes);
  // A hold is planned before it is known how long the dishes leave the oven to it.
  for (let round = 0; round < holdRounds && day.planned; round += 1) {
    const hold = holdSpanOf(day.planned, dinner);
    if (!hold || isSameHold(hold, day.question.hold)) break;
    day = await aimed(undefined, hold);
  }
  const { question, forecast, planned } = day;
  const plan = planned && planWithChores(dinner, planned, now);
  return {
    now,
    dinner,
    standing: charts,
    forecast,
    question,
    plan,
    calls: callsOf(dinner, plan, forecast),
  };
}

/** The core at an instant by the forecast, once the roast is in. */
export function coreAt(outlook: Outlook, at: number): Band | undefined {
  const { forecast, plan, dinner } = outlook;
  if (!forecast || !plan || roastWentInAt(dinner) === undefined) return undefined;
  const cameOutAt = roastCameOutAt(dinner);
  const inOven = cameOutAt === undefined || at < cameOutAt;
  return coreTold({ dinner, forecast, roastInAt: plan.roastInAt }, at, inOven);
}

/** What the machine may know of the plan and the forecast when it decides. */
export function expectedOf(outlook: Outlook): Expected {
  const { dinner, plan, now } = outlook;
  const roast = roastOf(dinner);
  const steps = plan?.steps ?? [];
  const active = steps
    .filter((step) => step.state === 'active' && step.handsOn !== 'none' && step.id !== 'rest')
    .sort((a, b) => b.startAt - a.startAt);
  const due = steps.filter((step) => step.state === 'due');
  const next = steps.filter((step) => step.state === 'planned' && step.startAt - now < 20 * 60_000);
  const called = lastCalled(dinner);
  const answered =
    called !== undefined &&
    now - called.at <= calledMinutes * 60_000 &&
    dinner.steps.get(called.step)?.startedAt === undefined
      ? called.step
      : undefined;
  const open = [...active, ...due, ...next.slice(0, 1)].map((step) => step.id);
  return {
    coreNowCelsius: coreAt(outlook, now),
    pullCelsius: plan?.pullCelsius,
    starts: new Map(steps.map((step) => [step.id, step.startAt])),
    open: answered === undefined ? open : [answered, ...open.filter((id) => id !== answered)],
    searCelsius: roast?.program.firstCelsius ?? celsiusOfFahrenheit(450),
    // A course that was chosen has its own heat after the sear.
    roastCelsius:
      dinner.course?.oven.findLast((move) => move.at - now < 2 * 60_000)?.celsius ??
      roast?.program.roastCelsius ??
      celsiusOfFahrenheit(325),
    restLowMinutes: roast?.rest.p10 ?? 15,
    ovenCalledCelsius: ovenCalled(outlook),
  };
}

/** So long a few words are taken to answer the call that was made last. */
const calledMinutes = 20;

/** A call for the oven's heat is what a bare "done" answers for so long. */
const ovenAnsweredMinutes = 15;

/** The heat that the last call wanted, if that was a call of the oven alone: for a course, the sides, a hold. */
function ovenCalled({ dinner, plan, now }: Outlook): number | undefined {
  const last = dinner.announced.at(-1);
  if (last?.kind !== 'oven-change' || last.step !== undefined) return undefined;
  if (now - last.at > ovenAnsweredMinutes * 60_000) return undefined;
  return plan?.oven
    .filter((move) => /^(course|sides|hold)$/.test(move.why) && move.at <= now + 60_000)
    .at(-1)?.celsius;
}
