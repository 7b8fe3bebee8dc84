/**
 * When the day forces a choice: courses that differ in kind, each to be simulated through the
 * forecast to the plate. Drafts carry the question; the answers make them options.
 */
import { type Instant, minutesBetween } from '../../base/time.ts';
import { celsiusOfFahrenheit } from '../../base/units.ts';
import { isRoastMoment } from '../../kitchen/card.ts';
import { type Dinner, menuOf, type StepRecord } from '../../kitchen/dinner.ts';
import type { Course, Option } from '../../kitchen/facts.ts';
import type { CourseAsked, Forecast, ForecastQuestion } from '../../kitchen/forecast.ts';
import type { OvenMove, Plan, PlannedStep } from '../../kitchen/plan.ts';
import { itemsOf } from '../items.ts';
import {
  firstPullCelsius,
  holdOvenCelsius,
  ovenMovesOf,
  questionOf,
  roastCameOutAt,
  roastOf,
  roastWentInAt,
} from '../roast-day.ts';

export interface OptionDraft {
  kind: Option['kind'];
  course: Course;
  /** What its forecast is asked: the day's own question with another course. */
  instead: CourseAsked;
  ovenCelsius?: number | undefined;
  /** A dish that is left off the table with it. */
  drops?: string | undefined;
  /** Steps that are left out with it. */
  skips?: readonly string[] | undefined;
  /** Steps in the oven that come out for it, and go in again for so many minutes. */
  takesOut?: Option['takesOut'];
}

export interface Choosing {
  dinner: Dinner;
  plan: Plan;
  /** The day's own question and its answer. */
  question: ForecastQuestion;
  forecast: Forecast;
  /** When the table is wanted now. */
  wantedAt: Instant;
  now: Instant;
}

/** A slower oven than this dries a roast and hardly warms it, the less with every look. */
const lowerFahrenheit = [300, 275, 250];
const higherFahrenheit = [350, 400];

/** A table this much late is a reason to ask what could be left out. */
const lateMinutes = 5;

/** The dinner as it would be with a draft taken. */
export function dinnerWith(dinner: Dinner, draft: OptionDraft): Dinner {
  const steps = new Map<string, StepRecord>(dinner.steps);
  for (const step of draft.skips ?? []) steps.set(step, { ...steps.get(step), skipped: true });
  for (const { step, minutes } of draft.takesOut ?? [])
    steps.set(step, { notBegunAt: dinner.lastAt, moreMinutes: minutes });
  const dropped = draft.drops === undefined ? dinner.dropped : [...dinner.dropped, draft.drops];
  return { ...dinner, course: draft.course, dropped, steps };
}

/** Courses worth simulating. Before the roast is in a day that can be had needs none. */
export function draftOptions(choosing: Choosing): OptionDraft[] {
  const { dinner, plan } = choosing;
  if (roastCameOutAt(dinner) !== undefined) return draftsAtRest(choosing);
  if (roastWentInAt(dinner) !== undefined) return draftsInOven(choosing);
  const late = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt) > lateMinutes;
  return late ? draftsBefore(choosing) : [];
}

/** What of the day's question a course changes; before the roast is in only the rest and the pull. */
function asked({ dinner, plan, question }: Choosing, course: Course): CourseAsked {
  const roast = roastOf(dinner);
  const wentInAt = roastWentInAt(dinner);
  const pullCelsius = course.pullCelsius ?? plan.pullCelsius;
  if (!roast || wentInAt === undefined)
    return { oven: question.oven, pullCelsius, rest: course.rest };
  const changed = { ...dinner, course };
  const moves: OvenMove[] = ovenMovesOf(changed, roast.program, wentInAt);
  const { oven, rest, restMinutes, outMinute } = questionOf(changed, roast.card, {
    roastInAt: wentInAt,
    pullCelsius,
    moves,
    withReadings: true,
  });
  return { oven, pullCelsius, rest, restMinutes, outMinute };
}

const drafted = (choosing: Choosing, draft: Omit<OptionDraft, 'instead'>): OptionDraft => ({
  ...draft,
  instead: asked(choosing, draft.course),
});

/** The roast is not in yet, and the hour cannot be met: later, or with something left out. */
function draftsBefore(choosing: Choosing): OptionDraft[] {
  const { plan } = choosing;
  const course = (rest: Course['rest']): Course => ({
    oven: [],
    rest,
    servingAt: plan.serving.likelyAt,
  });
  const skips = skippedAhead(choosing);
  return [
    drafted(choosing, { kind: 'serve-later', course: course('tented') }),
    drafted(choosing, { kind: 'skip-rest', course: course('open') }),
    ...(skips.length > 0
      ? [drafted(choosing, { kind: 'skip-steps', course: course('tented'), skips })]
      : []),
    ...inTheWay(choosing).map((drops) =>
      drafted(choosing, { kind: 'drop-dish', course: course('tented'), drops }),
    ),
  ];
}

/** A dish with less time than this to spare may be what the table waits for. */
const littleSlackMinutes = 5;

/** So many dishes are tried without at most: each is a day planned anew. */
const dropsHigh = 4;

/**
 * The dishes without which dinner may be sooner, those first that leave the most to do by hand: worked on before
 * the roast goes in, with no time to spare, or falling short.
 */
function inTheWay({ dinner, plan: { steps, roastInAt, shortfalls } }: Choosing): string[] {
  const open = (dish: string): PlannedStep[] =>
    steps.filter(({ card, state }) => card === dish && state !== 'done' && state !== 'skipped');
  const byHand = (dish: string): number =>
    open(dish)
      .filter(({ handsOn }) => handsOn === 'throughout')
      .reduce((sum, { minutes }) => sum + minutes.p50, 0);
  return dropsOf(dinner)
    .filter(
      (dish) =>
        shortfalls.some(({ step }) => step?.startsWith(`${dish}.`)) ||
        open(dish).some(
          ({ startAt, slackMinutes }) => startAt < roastInAt || slackMinutes < littleSlackMinutes,
        ),
    )
    .sort((a, b) => byHand(b) - byHand(a))
    .slice(0, dropsHigh);
}

/** A step shorter than this is not worth leaving out. */
const worthSkippingMinutes = 5;

/** What of the roast's own preparation can be left out: it keeps the roast from the oven. */
function skippedAhead({ dinner, plan }: Choosing): string[] {
  const roast = roastOf(dinner);
  if (!roast) return [];
  return itemsOf(dinner, roast.card, plan.method)
    .filter(
      (item) =>
        item.card.card === 'roast' &&
        !isRoastMoment(item.id) &&
        item.step.skippable === true &&
        item.handsOn === 'throughout' &&
        item.minutes.p50 >= worthSkippingMinutes &&
        !item.skipped &&
        item.doneAt === undefined,
    )
    .map((item) => item.id);
}

/** Dishes that are not begun: one in the oven or on the stove is no gain any more. */
const dropsOf = (dinner: Dinner): string[] =>
  menuOf(dinner)
    .filter((card) =>
      card.steps.some((step) => dinner.steps.get(`${card.id}.${step.id}`)?.doneAt === undefined),
    )
    .map((card) => card.id);

/** Out of the oven: a rest, long or short, a hold, or none. */
function draftsAtRest(choosing: Choosing): OptionDraft[] {
  const { dinner, wantedAt } = choosing;
  const usual = { oven: [], pullCelsius: dinner.course?.pullCelsius, servingAt: wantedAt };
  return [
    drafted(choosing, { kind: 'rest-longer', course: { ...usual, rest: 'tented' } }),
    drafted(choosing, {
      kind: 'pull-and-hold',
      course: { ...usual, rest: 'low-oven' },
      ovenCelsius: holdOvenCelsius,
    }),
    drafted(choosing, { kind: 'skip-rest', course: { ...usual, rest: 'open' } }),
    ...latecomers(choosing),
  ];
}

function draftsInOven(choosing: Choosing): OptionDraft[] {
  const { dinner, plan, wantedAt, now } = choosing;
  const roast = roastOf(dinner);
  if (!roast) return [];
  // A pull that an earlier choice moved is the earlier choice's: each is aimed from the usual one.
  const pullCelsius =
    dinner.course?.pullCelsius === undefined
      ? undefined
      : firstPullCelsius(dinner.target?.serveCelsius ?? plan.serveCelsius);
  const usual = { oven: [], pullCelsius, servingAt: wantedAt };
  // The sear is finished first; a change of the oven counts from then.
  const from =
    plan.method === 'sear-first' && dinner.steps.get('oven-down') === undefined
      ? Math.max(now, plan.steps.find((step) => step.id === 'oven-down')?.startAt ?? now)
      : now;
  const current = plan.ovenNowCelsius > 0 ? plan.ovenNowCelsius : roast.program.roastCelsius;
  const roasting = Math.min(current, roast.program.roastCelsius + 1);
  const afterSear = from > now ? roasting : current;
  const drafts: OptionDraft[] = [
    drafted(choosing, {
      kind: 'carry-on',
      course: {
        oven: dinner.course?.oven ?? [],
        pullCelsius: dinner.course?.pullCelsius,
        rest: dinner.course?.rest ?? 'tented',
        servingAt: wantedAt,
      },
    }),
    drafted(choosing, {
      kind: 'pull-and-hold',
      course: { ...usual, rest: 'low-oven' },
      ovenCelsius: holdOvenCelsius,
    }),
    drafted(choosing, { kind: 'skip-rest', course: { ...usual, rest: 'open' } }),
    ...latecomers(choosing),
  ];
  // Once the pull is due only what happens after it can still be chosen.
  if (minutesBetween(now, plan.pullAt.p50) < 3) return drafts;
  const turned = (
    kind: 'lower-oven' | 'raise-oven',
    at: Instant,
    celsius: number,
    takesOut?: OptionDraft['takesOut'],
  ): OptionDraft =>
    drafted(choosing, {
      kind,
      course: { ...usual, rest: 'tented', oven: [{ at, celsius }] },
      ovenCelsius: celsius,
      takesOut,
    });
  for (const fahrenheit of lowerFahrenheit) {
    const celsius = celsiusOfFahrenheit(fahrenheit);
    if (celsius > roasting - 8) continue;
    const inside = tooCoolFor(dinner, plan, celsius);
    const at = Math.max(from, ...inside.map((step) => step.endAt));
    // Turned down only once the roast is out, it would slow nothing.
    if (minutesBetween(at, plan.pullAt.p50) >= 3) drafts.push(turned('lower-oven', at, celsius));
    // What stands in its heat can come out instead, and go in again while the roast rests.
    if (inside.length > 0)
      drafts.push(
        turned(
          'lower-oven',
          from,
          celsius,
          inside.map((step) => ({ step: step.id, minutes: leftOf(step, now) })),
        ),
      );
  }
  for (const fahrenheit of higherFahrenheit) {
    const celsius = celsiusOfFahrenheit(fahrenheit);
    if (celsius >= afterSear + 8) drafts.push(turned('raise-oven', from, celsius));
  }
  return drafts;
}

/** Each dish that comes too late, or for which the table waits, could be left off it. */
function latecomers(choosing: Choosing): OptionDraft[] {
  const { dinner, plan, wantedAt } = choosing;
  const tableWaits = minutesBetween(plan.serving.wantedAt, plan.serving.likelyAt) > lateMinutes;
  const late = plan.shortfalls.flatMap((one) =>
    one.constraint === 'off-table' && (one.minutes ?? 0) > lateMinutes && one.step
      ? [one.step.split('.')[0]]
      : [],
  );
  return dropsOf(dinner)
    .filter((dish) => tableWaits || late.includes(dish))
    .map((drops) =>
      drafted(choosing, {
        kind: 'drop-dish',
        course: dinner.course ?? { oven: [], rest: 'tented', servingAt: wantedAt },
        drops,
      }),
    );
}

/** What is in the roast's oven now and does not bear that heat. */
function tooCoolFor(dinner: Dinner, plan: Plan, celsius: number): PlannedStep[] {
  return plan.steps.filter((step) => {
    const card = menuOf(dinner).find((one) => one.id === step.card);
    const oven = card?.steps.find((one) => step.id === `${card.id}.${one.id}`)?.oven;
    if (!oven || step.state !== 'active' || (step.oven?.index ?? 0) > 0) return false;
    return celsius < celsiusOfFahrenheit(oven.lowFahrenheit) - 3;
  });
}

/** Out of the heat and in again, a dish takes what it had left and some minutes to be hot once more. */
const heatedAgainMinutes = 8;

const leftOf = (step: PlannedStep, now: Instant): number =>
  Math.round(
    Math.min(step.minutes.p50, Math.max(0, minutesBetween(now, step.endAt)) + heatedAgainMinutes),
  );
