/**
 * When the day forces a choice: courses that differ in kind, each to be simulated through the
 * forecast to the plate. Drafts carry the question; the answers make them options.
 */

import { type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit, clamp } from '../base/units.ts';
import { type Dinner, menuOf } from '../kitchen/dinner.ts';
import type { Course, Option } from '../kitchen/facts.ts';
import {
  type Band,
  coreAfterRest,
  type Forecast,
  type ForecastQuestion,
} from '../kitchen/forecast.ts';
import type { OvenMove, Plan } from '../kitchen/plan.ts';
import { constraints } from './constraints/index.ts';
import { plan as planDay } from './plan.ts';
import {
  holdOvenCelsius,
  ovenMovesOf,
  questionOf,
  riseHighKelvin,
  roastCameOutAt,
  roastOf,
  roastWentInAt,
} from './roast-day.ts';

export interface OptionDraft {
  kind: Option['kind'];
  course: Course;
  /** Absent when the roast is out already and nothing new has to be asked of the heat. */
  question?: ForecastQuestion | undefined;
  ovenCelsius?: number | undefined;
}

export interface OptionFigures {
  kind: Option['kind'];
  course: Course;
  ovenCelsius?: number | undefined;
  pullAt: Instant;
  servingAt: Instant;
  restMinutes: number;
  coreAtServingCelsius: Band;
  minutesFromWanted: number;
  /** Hard rules that a day with this course breaks; such a course is no option. */
  broken: readonly string[];
  /** Steps that come too late for the table with it. */
  without: readonly string[];
}

const lowerFahrenheit = [300, 250, 225, 200];
const higherFahrenheit = [350, 400];

/** When what is in the oven now and does not bear that heat will be out. */
function inOvenUntil(dinner: Dinner, plan: Plan, celsius: number): Instant {
  let until = 0;
  for (const step of plan.steps) {
    const card = menuOf(dinner).find((one) => one.id === step.card);
    const oven = card?.steps.find((one) => step.id === `${card.id}.${one.id}`)?.oven;
    if (!oven || step.state !== 'active') continue;
    if (celsius < celsiusOfFahrenheit(oven.lowFahrenheit) - 3) until = Math.max(until, step.endAt);
  }
  return until;
}

export interface DraftOptions {
  dinner: Dinner;
  plan: Plan;
  /** When the table is wanted now. */
  wantedAt: Instant;
  now: Instant;
}

/** Courses worth simulating, none before the roast is in: then the plan itself just starts later. */
export function draftOptions({ dinner, plan, wantedAt, now }: DraftOptions): OptionDraft[] {
  const roast = roastOf(dinner);
  const wentInAt = roastWentInAt(dinner);
  if (!roast || wentInAt === undefined) return [];
  const usual = { oven: [], pullCelsius: dinner.course?.pullCelsius, servingAt: wantedAt };
  if (roastCameOutAt(dinner) !== undefined) {
    return [
      {
        kind: 'rest-longer',
        course: { ...usual, rest: 'tented' },
      },
      {
        kind: 'pull-and-hold',
        course: { ...usual, rest: 'low-oven' },
        ovenCelsius: holdOvenCelsius,
      },
      { kind: 'skip-rest', course: { ...usual, rest: 'open' } },
    ].map((draft) => ({ ...draft, question: ask(draft.course as Course) }) as OptionDraft);
  }

  function ask(course: Course): ForecastQuestion | undefined {
    if (!roast || wentInAt === undefined) return undefined;
    const changed = { ...dinner, course };
    const moves: OvenMove[] = ovenMovesOf(changed, roast.program, wentInAt);
    return questionOf(changed, roast.card, {
      roastInAt: wentInAt,
      pullCelsius: course.pullCelsius ?? plan.pullCelsius,
      moves,
      withReadings: true,
    });
  }

  const draft = (
    kind: Option['kind'],
    course: Course,
    more: { ovenCelsius?: number } = {},
  ): OptionDraft => ({ kind, course, question: ask(course), ...more });

  // The sear is finished first; a change of the oven counts from then.
  const from =
    plan.method === 'sear-first' && dinner.steps.get('oven-down') === undefined
      ? Math.max(now, plan.steps.find((step) => step.id === 'oven-down')?.startAt ?? now)
      : now;
  const current = plan.ovenNowCelsius > 0 ? plan.ovenNowCelsius : roast.program.roastCelsius;
  const roasting = Math.min(current, roast.program.roastCelsius + 1);
  const drafts: OptionDraft[] = [
    draft('carry-on', { ...usual, rest: dinner.course?.rest ?? 'tented' }),
    draft('pull-and-hold', { ...usual, rest: 'low-oven' }, { ovenCelsius: holdOvenCelsius }),
    draft('skip-rest', { ...usual, rest: 'open' }),
  ];
  // Once the pull is due only what happens after it can still be chosen.
  if (minutesBetween(now, plan.pullAt.p50) < 3) return drafts;
  for (const fahrenheit of lowerFahrenheit) {
    const celsius = celsiusOfFahrenheit(fahrenheit);
    if (celsius > roasting - 8) continue;
    const at = Math.max(from, inOvenUntil(dinner, plan, celsius));
    // Turned down only once the roast is out, it would slow nothing.
    if (minutesBetween(at, plan.pullAt.p50) < 3) continue;
    drafts.push(
      draft(
        'lower-oven',
        { ...usual, rest: 'tented', oven: [{ at, celsius }] },
        {
          ovenCelsius: celsius,
        },
      ),
    );
  }
  for (const fahrenheit of higherFahrenheit) {
    const celsius = celsiusOfFahrenheit(fahrenheit);
    if (celsius < roasting + 8) continue;
    drafts.push(
      draft(
        'raise-oven',
        { ...usual, rest: 'tented', oven: [{ at: from, celsius }] },
        { ovenCelsius: celsius },
      ),
    );
  }
  return drafts;
}

/**
 * A draft and the forecast it asked for, as figures: the whole day is planned with it, dishes and all,
 * so that the table it promises is one that everything can be on.
 */
export function figuresOf(
  { dinner, plan, now }: DraftOptions,
  draft: OptionDraft,
  forecast: Forecast,
): OptionFigures {
  const pullCelsius = draft.course.pullCelsius ?? plan.pullCelsius;
  const planned = planDay({
    dinner: { ...dinner, course: draft.course },
    forecast,
    pullCelsius,
    now,
  });
  const { pullAt, restMinutes, serving } = planned ?? plan;
  const servingAt = serving.likelyAt;
  return {
    kind: draft.kind,
    course: { ...draft.course, servingAt },
    ovenCelsius: draft.ovenCelsius,
    pullAt: pullAt.p50,
    servingAt,
    restMinutes,
    coreAtServingCelsius: coreAfterRest(forecast, restMinutes),
    minutesFromWanted: minutesBetween(serving.wantedAt, servingAt),
    broken: [
      ...(planned?.shortfalls ?? []).map((one) => one.constraint).filter(isHard),
      ...(keptTooLong(dinner, draft.course, restMinutes) ? ['kept-hot'] : []),
    ],
    without: (planned?.shortfalls ?? []).flatMap((one) =>
      one.constraint === 'ends-in-time' && (one.minutes ?? 0) > 10 && one.step ? [one.step] : [],
    ),
  };
}

/** Out of the oven a whole roast keeps as long as its card says, after the rest it likes. */
function keptTooLong(dinner: Dinner, course: Course, restMinutes: number): boolean {
  const roast = roastOf(dinner);
  if (!roast || course.rest === 'low-oven') return false;
  return restMinutes > roast.rest.p90 + roast.card.hold.minutes;
}

const isHard = (id: string): boolean =>
  id === 'order' || id === 'shared' || constraints.some((one) => one.id === id && one.hard);

/** Two courses are one choice when the oven stands the same and the roast comes out at the same time. */
const sameCourse = (a: OptionFigures, b: OptionFigures): boolean =>
  a.course.rest === b.course.rest &&
  a.course.oven.length === b.course.oven.length &&
  a.course.oven.every(
    ({ celsius }, index) => Math.abs(celsius - (b.course.oven[index]?.celsius ?? 0)) < 3,
  ) &&
  Math.abs(minutesBetween(a.pullAt, b.pullAt)) < 3;

/**
 * The same draft with the pull moved so that its own rest carries the core to the target; undefined
 * when it is near enough already or the roast is out.
 */
export function retargeted(
  { dinner }: DraftOptions,
  draft: OptionDraft,
  figures: OptionFigures,
): OptionDraft | undefined {
  const target = dinner.target?.serveCelsius;
  if (!draft.question || target === undefined || roastCameOutAt(dinner) !== undefined)
    return undefined;
  const off = figures.coreAtServingCelsius.p50 - target;
  if (Math.abs(off) < 1) return undefined;
  const pullCelsius = clamp(draft.question.pullCelsius - off, target - riseHighKelvin, target - 1);
  return {
    ...draft,
    course: { ...draft.course, pullCelsius },
    question: { ...draft.question, pullCelsius },
  };
}

/** Minutes late, kelvin off target, rest beyond what the cut likes, and trouble: one figure to rank by. */
function cost(dinner: Dinner, figures: OptionFigures, restHighMinutes: number): number {
  const target = dinner.target?.serveCelsius ?? 54.4;
  const off = figures.coreAtServingCelsius.p50 - target;
  const overcooked = Math.max(0, off);
  const under = Math.max(0, -off);
  const tooLong = Math.max(0, figures.restMinutes - restHighMinutes);
  const trouble: Record<Option['kind'], number> = {
    'carry-on': 0,
    'rest-longer': 0,
    'start-later': 0,
    'lower-oven': 2,
    'raise-oven': 4,
    'pull-and-hold': 3,
    'serve-later': 0,
    'serve-sooner': 0,
    'skip-rest': 14,
  };
  return (
    Math.abs(figures.minutesFromWanted) +
    4 * overcooked +
    2 * under +
    (figures.kind === 'pull-and-hold' ? 0.25 : 1) * tooLong +
    trouble[figures.kind] +
    10 * figures.without.length
  );
}

/**
 * The best of each kind, best first, three at most. What comes with the figures goes with them. A
 * hotter oven or no rest is for a late roast, a cooler oven for one that has time.
 */
export function rankOptions<T extends { figures: OptionFigures }>(
  dinner: Dinner,
  simulated: readonly T[],
): T[] {
  const restHigh = roastOf(dinner)?.rest.p90 ?? 40;
  const costOf = (one: T): number => cost(dinner, one.figures, restHigh);
  const carryOn = simulated.find(
    ({ figures: { kind } }) => kind === 'carry-on' || kind === 'rest-longer',
  );
  const late = (carryOn?.figures.minutesFromWanted ?? 0) > 5;
  const forLate: readonly Option['kind'][] = ['raise-oven', 'skip-rest'];
  const forEarly: readonly Option['kind'][] = ['lower-oven', 'pull-and-hold'];
  const best = new Map<Option['kind'], T>();
  const sound = simulated.filter((one) => one.figures.broken.length === 0);
  for (const one of sound.length > 0 ? sound : simulated.slice(0, 1)) {
    const { kind } = one.figures;
    if (late ? forEarly.includes(kind) : forLate.includes(kind)) continue;
    const known = best.get(kind);
    if (!known || costOf(one) < costOf(known)) best.set(kind, one);
  }
  const ranked = [...best.values()]
    .sort((a, b) => costOf(a) - costOf(b) || (a.figures.kind < b.figures.kind ? -1 : 1))
    .filter(
      (one, index, all) =>
        !all.slice(0, index).some((other) => sameCourse(other.figures, one.figures)),
    );
  const least = ranked[0] ? costOf(ranked[0]) : 0;
  return ranked.filter((one, index) => index < 2 || costOf(one) < least + 40).slice(0, 3);
}
