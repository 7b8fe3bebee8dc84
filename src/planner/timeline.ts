/**
 * The roast's moments: backward from the serving time while it is outside the oven, forward from
 * what has happened once it is in.
 */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { clamp } from '../base/units.ts';
import type { RoastCard } from '../kitchen/card.ts';
import { type Dinner, missingOf } from '../kitchen/dinner.ts';
import type { Band, Forecast } from '../kitchen/forecast.ts';
import { calledAt } from './items.ts';
import {
  carveMinutesOf,
  type Program,
  preheatMinutes,
  roastCameOutAt,
  roastWentInAt,
} from './roast-day.ts';

export interface Timeline {
  ovenOnAt: Instant;
  roastInAt: Instant;
  searEndAt?: Instant | undefined;
  pull: { p10: Instant; p50: Instant; p90: Instant };
  out: boolean;
  restMinutes: number;
  rest: Band;
  /** Sear-last: the roast goes back into the hot oven. */
  searAgainAt?: Instant | undefined;
  carveAt: Instant;
  carveMinutes: number;
  serveAt: Instant;
  wantedAt: Instant;
  earliestAt: Instant;
  latestAt: Instant;
  onTimeChance: number;
}

export interface TimelineOptions {
  dinner: Dinner;
  card: RoastCard;
  program: Program;
  rest: Band;
  forecast: Forecast;
  now: Instant;
  /** The prep that must come first is not done before this. */
  readyAt: Instant;
}

/** Dinner at seven by default keeps a plan possible before a time was said. */
const wantedOf = (dinner: Dinner, now: Instant): Instant =>
  dinner.servingAt ?? addMinutes(now, 6 * 60);

export function timelineOf(options: TimelineOptions): Timeline {
  const { dinner, card, program, rest, forecast, now, readyAt } = options;
  const wantedAt = wantedOf(dinner, now);
  const carveMinutes = carveMinutesOf(card, dinner.guests ?? 6);
  const tail = (program.method === 'sear-last' ? program.searMinutes + 4 : 0) + carveMinutes;
  const duration = forecast.pullMinute;
  // The rest absorbs what the forecast cannot know: an early roast rests longer, a late one shorter.
  const spread = duration.p90 - duration.p50;
  const plannedRest = clamp(rest.p10 + spread, rest.p50, rest.p90);

  const wentInAt = roastWentInAt(dinner);
  const ovenLitAt = dinner.oven.find((one) => one.celsius > 0)?.at ?? calledAt(dinner, 'oven-on');
  const hotAt = dinner.ovenHotAt ?? addMinutes(ovenLitAt ?? now, preheatMinutes);
  // Told in fives: nobody puts a roast in at one minute to five.
  const backwardInAt = floorToFive(addMinutes(wantedAt, -(tail + plannedRest + duration.p50)));
  const courseInAt = dinner.course?.roastInAt ?? Number.NEGATIVE_INFINITY;
  const roastInAt = wentInAt ?? Math.max(backwardInAt, courseInAt, now, readyAt, hotAt);
  const ovenOnAt = ovenLitAt ?? Math.max(now, addMinutes(roastInAt, -preheatMinutes));

  const cameOutAt = roastCameOutAt(dinner);
  const at = (minute: number): Instant => addMinutes(roastInAt, minute);
  const pull =
    cameOutAt !== undefined
      ? { p10: cameOutAt, p50: cameOutAt, p90: cameOutAt }
      : {
          p10: Math.max(at(duration.p10), wentInAt === undefined ? 0 : now),
          p50: Math.max(at(duration.p50), wentInAt === undefined ? 0 : now),
          p90: Math.max(at(duration.p90), wentInAt === undefined ? 0 : now),
        };

  const carveBegunAt = dinner.steps.get('carve')?.startedAt ?? dinner.steps.get('carve')?.doneAt;
  const restEnough = addMinutes(pull.p50, rest.p10);
  const wantedCarveAt = addMinutes(wantedAt, -carveMinutes);
  const searTail = tail - carveMinutes;
  const carveAt =
    carveBegunAt ??
    Math.max(
      wantedCarveAt,
      addMinutes(restEnough, searTail),
      cameOutAt === undefined ? 0 : Math.min(now, wantedCarveAt),
    );
  const servedAt = dinner.steps.get('serve')?.startedAt ?? dinner.steps.get('serve')?.doneAt;
  const serveAt = servedAt ?? addMinutes(carveAt, carveMinutes);
  const searAgainAt =
    program.method === 'sear-last'
      ? (dinner.steps.get('sear')?.startedAt ?? addMinutes(carveAt, -searTail))
      : undefined;
  return {
    ovenOnAt,
    roastInAt,
    searEndAt:
      program.method === 'sear-first'
        ? (dinner.calls.get('oven-change:oven-down')?.firstAt ?? at(program.searMinutes))
        : undefined,
    pull,
    out: cameOutAt !== undefined,
    restMinutes: minutesBetween(pull.p50, searAgainAt ?? carveAt),
    rest,
    searAgainAt,
    carveAt,
    carveMinutes,
    serveAt,
    wantedAt,
    earliestAt: servedAt ?? addMinutes(pull.p10, rest.p10 + tail),
    latestAt: servedAt ?? Math.max(serveAt, addMinutes(pull.p90, rest.p50 + tail)),
    onTimeChance: servedAt
      ? Math.abs(minutesBetween(wantedAt, servedAt)) <= 10
        ? 1
        : 0
      : chanceBefore(pull, addMinutes(wantedAt, 10 - tail - rest.p10)),
  };
}

const floorToFive = (at: Instant): Instant => Math.floor(at / 300_000) * 300_000;

/** Whether enough is known to plan the whole day. */
export const isComplete = (dinner: Dinner): boolean => missingOf(dinner).length === 0;

/** Chance that a moment with these percentiles comes before `at`; a split normal between them. */
function chanceBefore(band: { p10: Instant; p50: Instant; p90: Instant }, at: Instant): number {
  const side = at < band.p50 ? band.p50 - band.p10 : band.p90 - band.p50;
  if (side <= 0) return at >= band.p50 ? 1 : 0;
  const z = ((at - band.p50) / side) * 1.2816;
  return 1 / (1 + Math.exp(-1.702 * z));
}
