/**
 * The rest of the day, from a dinner's facts, a forecast and an instant. Pure: the same three give
 * the same plan. It knows no clock, no words and no charts.
 */

import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { isRoastMoment } from '../kitchen/card.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import { coreAfterRest, type Forecast } from '../kitchen/forecast.ts';
import type { OvenMove, Plan, PlannedStep, StepState } from '../kitchen/plan.ts';
import { checkShortfalls } from './constraints/index.ts';
import { endOf, type Item, itemsOf } from './items.ts';
import { ovenAt, type Placed, type Placement, place } from './place.ts';
import { holdOvenCelsius, ovenMovesOf, roastOf, roastWentInAt } from './roast-day.ts';
import { isComplete, type Timeline, timelineOf } from './timeline.ts';

export interface PlanQuestion {
  dinner: Dinner;
  /** Asked with the readings, for `pullCelsius`. */
  forecast: Forecast;
  pullCelsius: number;
  now: Instant;
}

/** The plan, or undefined while no roast is known. */
export function plan({ dinner, forecast, pullCelsius, now }: PlanQuestion): Plan | undefined {
  const roast = roastOf(dinner);
  if (!roast) return undefined;
  const items = itemsOf(dinner, roast.card, roast.program.method);
  const base = {
    dinner,
    card: roast.card,
    program: roast.program,
    rest: roast.rest,
    forecast,
    now,
  };
  const first = timelineOf({ ...base, readyAt: now });
  const readyAt = prepReadyAt(dinner, items, first, now);
  const timeline = timelineOf({ ...base, readyAt });
  const moves = ovenMovesOf(dinner, roast.program, timeline.roastInAt);
  const placement = place({ dinner, items, timeline, now, moves });
  const oven = ovenOf(dinner, moves, placement, timeline);
  const steps = [...placement.placed.values()]
    .map((placed) => plannedStep(dinner, placed, now))
    .sort((a, b) => a.startAt - b.startAt || (a.id < b.id ? -1 : 1));
  const made: Plan = {
    complete: isComplete(dinner),
    method: roast.program.method,
    steps,
    serving: {
      wantedAt: timeline.wantedAt,
      likelyAt: timeline.serveAt,
      earliestAt: timeline.earliestAt,
      latestAt: timeline.latestAt,
    },
    onTimeChance: timeline.onTimeChance,
    roastInAt: timeline.roastInAt,
    pullAt: timeline.pull,
    pullCelsius,
    serveCelsius: dinner.target?.serveCelsius ?? pullCelsius + 9,
    restMinutes: timeline.restMinutes,
    carveMinutes: timeline.carveMinutes,
    oven,
    ovenNowCelsius: ovenAt(oven, now),
    checkAt: checkAtOf(dinner, forecast, timeline, now),
    coreAtServingCelsius: coreAfterRest(forecast, timeline.restMinutes),
    shortfalls: placement.shortfalls,
  };
  return { ...made, shortfalls: [...placement.shortfalls, ...checkShortfalls(made)] };
}

/** When the steps that the roast cannot go in without can be done, were they begun now. */
function prepReadyAt(
  dinner: Dinner,
  items: readonly Item[],
  timeline: Timeline,
  now: Instant,
): Instant {
  const before = items.find((item) => item.id === 'roast-in');
  if (!before || roastWentInAt(dinner) !== undefined) return now;
  const needed = new Set<string>();
  const visit = (id: string): void => {
    if (needed.has(id)) return;
    needed.add(id);
    for (const { step } of items.find((one) => one.id === id)?.after ?? []) visit(step);
  };
  for (const { step } of before.after) visit(step);
  const prep = items.filter((item) => needed.has(item.id) && !isRoastMoment(item.id));
  const soon = { ...timeline, roastInAt: now };
  const { placed } = place({ dinner, items: prep, timeline: soon, now, moves: [], prepOnly: true });
  return Math.max(
    now,
    ...[...placed.values()]
      .filter((one) => one.item.doneAt === undefined && one.item.step.skippable !== true)
      .map((one) => one.endAt),
  );
}

/** The oven's whole program: what was set, what the roast asks for, what dishes ask for after it. */
function ovenOf(
  dinner: Dinner,
  moves: readonly OvenMove[],
  placement: Placement,
  timeline: Timeline,
): OvenMove[] {
  const told = dinner.oven.map(({ at, celsius }): OvenMove => ({ at, celsius, why: 'roast' }));
  const lastToldAt = told.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  const finish: OvenMove[] =
    timeline.searAgainAt === undefined
      ? []
      : [
          {
            at: timeline.pull.p50,
            celsius: roastOf(dinner)?.program.searCelsius ?? 260,
            why: 'finish-sear',
          },
        ];
  const hold: OvenMove[] =
    dinner.course?.rest === 'low-oven'
      ? [{ at: timeline.pull.p50, celsius: holdOvenCelsius, why: 'hold' }]
      : [];
  const later = [...moves, ...hold, ...placement.ovenForDishes, ...finish].filter(
    (one) => one.at > lastToldAt,
  );
  return [...told, ...later].sort((a, b) => a.at - b.at);
}

function stateOf(dinner: Dinner, item: Item, now: Instant, startAt: Instant): StepState {
  if (item.skipped) return 'skipped';
  if (item.doneAt !== undefined) return 'done';
  const endAt = endOf(item, dinner);
  if (item.startedAt !== undefined) {
    const openEnded = item.handsOn !== 'none' || dinner.steps.get(item.id)?.startedAt !== undefined;
    return openEnded || (endAt ?? now) > now ? 'active' : 'done';
  }
  return startAt <= now ? 'due' : 'planned';
}

function plannedStep(dinner: Dinner, placed: Placed, now: Instant): PlannedStep {
  const { item } = placed;
  return {
    id: item.id,
    card: item.card.id,
    title: item.title,
    startAt: placed.startAt,
    endAt: placed.endAt,
    minutes: item.minutes,
    state: stateOf(dinner, item, now, placed.startAt),
    hands: placed.hands,
    handsOn: item.handsOn,
    needs: item.needs,
    why: placed.why,
    slackMinutes: Number.isFinite(placed.latestEndAt)
      ? Math.max(0, Math.round(minutesBetween(placed.endAt, placed.latestEndAt)))
      : 0,
    presumed: item.presumed,
  };
}

/** The next look: what the forecast says, no sooner than now, and none once it is out. */
function checkAtOf(
  dinner: Dinner,
  forecast: Forecast,
  timeline: Timeline,
  now: Instant,
): Instant | undefined {
  if (timeline.out) return undefined;
  const at = addMinutes(timeline.roastInAt, forecast.nextCheckMinute);
  const lastTold = dinner.readings.at(-1)?.happenedAt;
  return Math.max(at, lastTold ?? 0, roastWentInAt(dinner) === undefined ? 0 : Math.min(now, at));
}
