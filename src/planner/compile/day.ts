/** What is known of a day before it is planned: the facts that bind, on the planner's grid. */
import { addMinutes, type Instant } from '../../base/time.ts';
import type { RoastCard } from '../../kitchen/card.ts';
import { carveMinutesOf, type Dinner } from '../../kitchen/dinner.ts';
import type { Band, Forecast } from '../../kitchen/forecast.ts';
import { type Grid, gridAt, minuteOf } from '../grid.ts';
import { calledAt, type Item, itemsOf } from '../items.ts';
import {
  leastRestOf,
  type Program,
  plannedRestOf,
  preheatMinutes,
  roastCameOutAt,
  roastOf,
  roastWentInAt,
} from '../roast-day.ts';

export interface Day {
  dinner: Dinner;
  now: Instant;
  grid: Grid;
  items: readonly Item[];
  card: RoastCard;
  program: Program;
  kilograms: number;
  rest: Band;
  /** The shortest rest; a course without one asks for hardly any. */
  restLowMinutes: number;
  /** The rest planned for: it takes up what the forecast cannot know. */
  restPlannedMinutes: number;
  carveMinutes: number;
  /** From the roast going in to its pull, likely, in whole minutes. */
  roastMinutes: number;
  wantedAt: Instant;
  wentInAt: Instant | undefined;
  cameOutAt: Instant | undefined;
  carveBegunAt: Instant | undefined;
  servedAt: Instant | undefined;
  ovenLitAt: Instant | undefined;
  ovenHotAt: Instant | undefined;
}

/** Minutes between a finishing sear and the knife, and between turning the oven up and that sear. */
export const searToCarveMinutes = 4;

/** Dinner in six hours keeps a plan possible before a time was said. */
const wantedOf = (dinner: Dinner, now: Instant): Instant =>
  dinner.servingAt ?? addMinutes(now, 6 * 60);

export function dayOf(
  dinner: Dinner,
  forecast: Pick<Forecast, 'pullMinute'>,
  now: Instant,
): Day | undefined {
  const roast = roastOf(dinner);
  if (!roast) return undefined;
  const { card, program, kilograms, rest } = roast;
  const duration = forecast.pullMinute;
  const begun = (id: string): Instant | undefined =>
    dinner.steps.get(id)?.startedAt ?? dinner.steps.get(id)?.doneAt;
  // Its heat may have been taken back as misheard; that it was lit stands.
  const ovenLitAt =
    dinner.oven.find((one) => one.celsius > 0)?.at ??
    begun('oven-on') ??
    calledAt(dinner, 'oven-on');
  return {
    dinner,
    now,
    grid: gridAt(now),
    items: itemsOf(dinner, card, program.method),
    card,
    program,
    kilograms,
    rest,
    restLowMinutes: leastRestOf(rest, dinner.course?.rest),
    restPlannedMinutes: plannedRestOf(rest, duration),
    carveMinutes: Math.round(carveMinutesOf(dinner, card)),
    roastMinutes: Math.max(1, Math.round(duration.p50)),
    wantedAt: wantedOf(dinner, now),
    wentInAt: roastWentInAt(dinner),
    cameOutAt: roastCameOutAt(dinner),
    carveBegunAt: begun('carve'),
    servedAt: begun('serve'),
    ovenLitAt,
    ovenHotAt:
      ovenLitAt === undefined
        ? undefined
        : (dinner.ovenHotAt ?? addMinutes(ovenLitAt, preheatMinutes)),
  };
}

export const minuteIn = (day: Day, at: Instant): number => minuteOf(day.grid, at);

/** The pull as now believed: once the roast is in it is a date, and never in the past. */
export function pullBandOf(
  day: Day,
  forecast: Forecast,
  roastInAt: Instant,
): { p10: Instant; p50: Instant; p90: Instant } {
  const { cameOutAt, wentInAt, grid } = day;
  if (cameOutAt !== undefined) return { p10: cameOutAt, p50: cameOutAt, p90: cameOutAt };
  const floor = wentInAt === undefined ? 0 : addMinutes(grid.originAt, grid.now);
  const at = (minute: number): Instant =>
    Math.max(floor, addMinutes(roastInAt, Math.round(minute)));
  const { p10, p50, p90 } = forecast.pullMinute;
  return { p10: at(p10), p50: at(Math.max(1, p50)), p90: at(p90) };
}

/** About when the roast goes in if all goes by the table; only where to begin looking. */
export function guessRoastInAt(day: Day): Instant {
  if (day.wentInAt !== undefined) return day.wentInAt;
  const tail = day.restPlannedMinutes + day.carveMinutes + day.roastMinutes;
  return Math.max(day.now, addMinutes(day.wantedAt, -tail));
}
