/**
 * When the day forces a choice: courses that differ in kind, each to be simulated through the
 * forecast to the plate. Drafts carry the question; the answers make them options.
 */

import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
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
import {
  carveMinutesOf,
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
  restMinimumMinutes: number;
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
}

const lowerFahrenheit = [300, 250, 225, 200];
const higherFahrenheit = [350, 400];

/** How long a dish that cannot share a cool oven needs once the roast is out. */
function aloneMinutes(dinner: Dinner, ovenCelsius: number): number {
  let longest = 0;
  for (const card of menuOf(dinner)) {
    for (const step of card.steps) {
      const record = dinner.steps.get(`${card.id}.${step.id}`);
      if (!step.oven || record?.startedAt !== undefined || record?.doneAt !== undefined) continue;
      if (ovenCelsius < celsiusOfFahrenheit(step.oven.lowFahrenheit) - 3)
        longest = Math.max(longest, step.minutes[1] + 3);
    }
  }
  return longest;
}

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
        restMinimumMinutes: roast.rest.p10,
      },
      {
        kind: 'pull-and-hold',
        course: { ...usual, rest: 'low-oven' },
        restMinimumMinutes: roast.rest.p10,
        ovenCelsius: holdOvenCelsius,
      },
      { kind: 'skip-rest', course: { ...usual, rest: 'open' }, restMinimumMinutes: 5 },
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
    more: { ovenCelsius?: number; restMinimumMinutes: number },
  ): OptionDraft => ({ kind, course, question: ask(course), ...more });

  // The sear is finished first; a change of the oven counts from then.
  const from =
    plan.method === 'sear-first' && dinner.steps.get('oven-down') === undefined
      ? Math.max(now, plan.steps.find((step) => step.id === 'oven-down')?.startAt ?? now)
      : now;
  const current = plan.ovenNowCelsius > 0 ? plan.ovenNowCelsius : roast.program.roastCelsius;
  const roasting = Math.min(current, roast.program.roastCelsius + 1);
  const drafts: OptionDraft[] = [
    draft(
      'carry-on',
      { ...usual, rest: dinner.course?.rest ?? 'tented' },
      { restMinimumMinutes: roast.rest.p10 },
    ),
    draft(
      'pull-and-hold',
      { ...usual, rest: 'low-oven' },
      { restMinimumMinutes: roast.rest.p10, ovenCelsius: holdOvenCelsius },
    ),
    draft('skip-rest', { ...usual, rest: 'open' }, { restMinimumMinutes: 5 }),
  ];
  // Once the pull is due only what happens after it can still be chosen.
  if (minutesBetween(now, plan.pullAt.p50) < 3) return drafts;
  for (const fahrenheit of lowerFahrenheit) {
    const celsius = celsiusOfFahrenheit(fahrenheit);
    if (celsius > roasting - 8) continue;
    drafts.push(
      draft(
        'lower-oven',
        {
          ...usual,
          rest: 'tented',
          oven: [{ at: Math.max(from, inOvenUntil(dinner, plan, celsius)), celsius }],
        },
        {
          ovenCelsius: celsius,
          restMinimumMinutes: Math.max(
            roast.rest.p10,
            aloneMinutes(dinner, celsius) - carveMinutesOf(roast.card, dinner.guests ?? 6),
          ),
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
        { ovenCelsius: celsius, restMinimumMinutes: roast.rest.p10 },
      ),
    );
  }
  return drafts;
}

/** A draft and the forecast it asked for, as figures. */
export function figuresOf(
  { dinner, plan, wantedAt }: DraftOptions,
  draft: OptionDraft,
  forecast: Forecast,
): OptionFigures {
  const cameOutAt = roastCameOutAt(dinner);
  const pullAt = cameOutAt ?? addMinutes(plan.roastInAt, forecast.pullMinute.p50);
  const tail = plan.carveMinutes;
  const servingAt = Math.max(wantedAt, addMinutes(pullAt, draft.restMinimumMinutes + tail));
  const restMinutes = minutesBetween(pullAt, servingAt) - tail;
  return {
    kind: draft.kind,
    course: { ...draft.course, servingAt },
    ovenCelsius: draft.ovenCelsius,
    pullAt,
    servingAt,
    restMinutes,
    coreAtServingCelsius: coreAfterRest(forecast, restMinutes),
    minutesFromWanted: minutesBetween(wantedAt, servingAt),
  };
}

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
    trouble[figures.kind]
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
  for (const one of simulated) {
    const { kind } = one.figures;
    if (late ? forEarly.includes(kind) : forLate.includes(kind)) continue;
    const known = best.get(kind);
    if (!known || costOf(one) < costOf(known)) best.set(kind, one);
  }
  const ranked = [...best.values()].sort(
    (a, b) => costOf(a) - costOf(b) || (a.figures.kind < b.figures.kind ? -1 : 1),
  );
  const least = ranked[0] ? costOf(ranked[0]) : 0;
  return ranked.filter((one, index) => index < 2 || costOf(one) < least + 40).slice(0, 3);
}
