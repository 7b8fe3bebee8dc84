/** What a draft comes to: the whole day planned with it, dishes and all, and the core at the knife. */
import { type Instant, minutesBetween } from '../../base/time.ts';
import { clamp } from '../../base/units.ts';
import { carveMinutesOf, type Dinner } from '../../kitchen/dinner.ts';
import type { Course, Option } from '../../kitchen/facts.ts';
import { type Band, coreAtMinute, type Forecast, type HoldSpan } from '../../kitchen/forecast.ts';
import type { Plan } from '../../kitchen/plan.ts';
import { comeUpMinutes, comeUpMinutesAtMost } from '../come-up.ts';
import { constraints } from '../constraints/index.ts';
import { holdSpanOf } from '../hold-span.ts';
import type { PlanQuestion } from '../plan.ts';
import {
  riseHighKelvin,
  riseInHoldKelvin,
  riseReadHighKelvin,
  roastCameOutAt,
  roastOf,
} from '../roast-day.ts';
import { type Choosing, dinnerWith, type OptionDraft } from './drafts.ts';

export interface OptionFigures {
  kind: Option['kind'];
  course: Course;
  ovenCelsius?: number | undefined;
  drops?: string | undefined;
  skips?: readonly string[] | undefined;
  takesOut?: Option['takesOut'];
  pullAt: Instant;
  servingAt: Instant;
  restMinutes: number;
  coreAtServingCelsius: Band;
  minutesFromWanted: number;
  onTimeChance: number;
  /** For a hold, how long of the rest the dishes leave the oven to it. */
  hold?: HoldSpan | undefined;
  /** Hard rules that a day with this course breaks; such a course is no option. */
  broken: readonly string[];
  /** Steps that come too late for the table with it. */
  without: readonly string[];
}

/** A dish this late is not on the table. */
const missingMinutes = 5;

/** What is asked of the planner: the day with a draft taken. */
export const dayAsked = (
  { dinner, plan, now }: Choosing,
  draft: OptionDraft,
  forecast: Forecast,
): PlanQuestion => ({
  dinner: dinnerWith(dinner, draft),
  forecast,
  pullCelsius: draft.course.pullCelsius ?? plan.pullCelsius,
  now,
});

export function figuresOf(
  { dinner, plan }: Choosing,
  {
    draft,
    forecast,
    planned,
  }: { draft: OptionDraft; forecast: Forecast; planned?: Plan | undefined },
): OptionFigures {
  const { pullAt, restMinutes, serving, onTimeChance, coreAtServingCelsius } = planned ?? plan;
  const servingAt = serving.likelyAt;
  const noHold =
    planned !== undefined && draft.course.rest === 'low-oven' && !isHold(planned, dinner);
  const held = draft.course.rest === 'low-oven' && !noHold;
  const tooLong = !held && keptTooLong(dinner, restMinutes);
  return {
    kind: kindOf(dinner, draft, restMinutes),
    course: { ...draft.course, servingAt },
    ovenCelsius: draft.ovenCelsius,
    drops: draft.drops,
    skips: draft.skips,
    takesOut: draft.takesOut,
    pullAt: pullAt.p50,
    servingAt,
    restMinutes,
    coreAtServingCelsius,
    minutesFromWanted: minutesBetween(serving.wantedAt, servingAt),
    onTimeChance,
    hold: planned && holdSpanOf(planned, dinnerWith(dinner, draft)),
    broken: [
      // A hold for which the dishes leave the oven no time is none.
      ...(noHold ? ['hold'] : []),
      ...(planned?.shortfalls ?? []).map((one) => one.constraint).filter(isHard),
      ...(tooLong ? ['kept-hot'] : []),
      ...(comeUpMinutes(forecast) > comeUpMinutesAtMost ? ['come-up'] : []),
    ],
    without: [
      ...new Set(
        (planned?.shortfalls ?? []).flatMap((one) =>
          one.constraint === 'off-table' && (one.minutes ?? 0) > missingMinutes && one.step
            ? [one.step]
            : [],
        ),
      ),
    ],
  };
}

/** A rest that is no longer than the cut likes is just what was planned. */
function kindOf(dinner: Dinner, { kind }: OptionDraft, restMinutes: number): Option['kind'] {
  const usual = roastOf(dinner)?.rest.p90 ?? 30;
  return kind === 'rest-longer' && restMinutes <= usual ? 'carry-on' : kind;
}

/** A hold shorter than this is none: the oven is wanted hot again as soon as it has come down. */
const briefestHoldMinutes = 30;

/** Where the dishes need the heat all the while after the pull, or soon again, a hold is one in name only. */
function isHold({ oven, steps, pullAt }: Plan, dinner: Dinner): boolean {
  const own = oven.filter((move) => (move.oven ?? 0) === 0);
  const from = own.findIndex((move) => move.why === 'hold');
  if (from < 0)
    return !own.some(
      (move) => move.why === 'sides' && move.at >= (roastCameOutAt(dinner) ?? pullAt.p50),
    );
  const knife = steps.find((step) => step.id === 'carve')?.startAt ?? 0;
  const until = Math.min(knife, own[from + 1]?.at ?? knife);
  return minutesBetween(own[from]?.at ?? knife, until) >= briefestHoldMinutes;
}

/** Cooked meat stands out for two hours at most (USDA FSIS), carving counted. */
const outAtMostMinutes = 120;

/**
 * Out of the oven a whole roast keeps as long as its card says, after the rest it likes. In a low oven
 * it cooks on and stays hot; how long it may take to come up is a rule of its own.
 */
function keptTooLong(dinner: Dinner, restMinutes: number): boolean {
  const roast = roastOf(dinner);
  if (!roast) return false;
  const carved = carveMinutesOf(dinner, roast.card);
  const keeps = roast.rest.p90 + roast.card.hold.minutes;
  return restMinutes > Math.min(keeps, outAtMostMinutes - carved);
}

const isHard = (id: string): boolean =>
  id === 'order' || id === 'shared' || constraints.some((one) => one.id === id && one.hard);

/** So near the core wanted, a pull is right. */
const nearKelvin = 0.7;

/** So much longer than the cut likes, there is time to look, and to put back what was pulled too soon. */
const mendableRestMinutes = 15;

/** How far under its target a roast may come out: in a hold or a long rest further than the usual. */
function riseTrusted(
  { dinner, plan }: Pick<Choosing, 'dinner' | 'plan'>,
  { rest }: Course,
  restMinutes: number,
): number {
  const long = (roastOf(dinner)?.rest.p90 ?? restMinutes) + mendableRestMinutes;
  if (rest === 'low-oven' ? restMinutes > 30 : rest === 'tented' && restMinutes > long)
    return riseInHoldKelvin;
  const read = dinner.readings.some(({ happenedAt }) => happenedAt >= plan.roastInAt);
  return read ? riseReadHighKelvin : riseHighKelvin;
}

/**
 * The same draft with the pull moved so that its own rest carries the core to the target; undefined
 * when it is near enough already, can be moved no further, or the roast is out.
 */
export function retargeted(
  { dinner, plan, forecast, now }: Choosing,
  draft: OptionDraft,
  {
    coreAtServingCelsius,
    restMinutes,
  }: Pick<OptionFigures, 'coreAtServingCelsius' | 'restMinutes'>,
  /** Kelvin of the pull for one at the knife: more where a sooner pull only rests the longer. */
  gain = 1,
): OptionDraft | undefined {
  const target = dinner.target?.serveCelsius;
  if (target === undefined || roastCameOutAt(dinner) !== undefined) return undefined;
  const off = coreAtServingCelsius.p50 - target;
  if (Math.abs(off) < nearKelvin) return undefined;
  const lowestAimed = target - riseTrusted({ dinner, plan }, draft.course, restMinutes);
  // It is past what it is past: then it is pulled now.
  const coreNow = coreAtMinute(forecast, minutesBetween(plan.roastInAt, now))?.p50 ?? 0;
  const lowest = Math.max(coreNow, lowestAimed);
  const before = draft.instead.pullCelsius;
  const pullCelsius = clamp(before - gain * off, Math.min(lowest, target - 1), target - 1);
  if (Math.abs(pullCelsius - before) < 0.3) return undefined;
  return {
    ...draft,
    course: { ...draft.course, pullCelsius },
    instead: { ...draft.instead, pullCelsius },
  };
}
