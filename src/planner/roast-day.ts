/**
 * The roast's own day: what is fixed by its card, its method and what has happened to it, and the
 * question the forecast is asked of it. No other dish is known here.
 */

import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit, clamp, kelvinOfFahrenheitDegrees } from '../base/units.ts';
import { type RoastCard, stepIdOf } from '../kitchen/card.ts';
import { type Dinner, menuOf, roastCardOf } from '../kitchen/dinner.ts';
import type { Method } from '../kitchen/facts.ts';
import {
  type Band,
  type ForecastQuestion,
  type HoldSpan,
  type KitchenBelief,
  type OvenSetting,
  type RestCover,
  usualKitchen,
} from '../kitchen/forecast.ts';
import type { OvenMove } from '../kitchen/plan.ts';

/** A held roast stands in a box above the 140 °F at which the consumer rule holds cooked meat. */
export const holdOvenCelsius = celsiusOfFahrenheit(170);

/** Minutes from turning the oven on to a hot box. Common practice, no source. */
export const preheatMinutes = 30;

/** The program of a method, in minutes since the roast went in. */
export interface Program {
  method: Method;
  /** What the oven is heated to before the roast goes in. */
  firstCelsius: number;
  searMinutes: number;
  searCelsius: number;
  roastCelsius: number;
}

/** The method wanted, or the nearest the card knows. */
export function programOf(card: RoastCard, wanted: Method): Program {
  const order: Method[] = [wanted, 'sear-first', 'steady', 'sear-last'];
  const method = order.find((one) => card.methods[one] !== undefined) ?? 'steady';
  if (method === 'sear-first' && card.methods['sear-first']) {
    const { searFahrenheit, searMinutes, roastFahrenheit } = card.methods['sear-first'];
    const searCelsius = celsiusOfFahrenheit(searFahrenheit);
    return {
      method,
      firstCelsius: searCelsius,
      searMinutes,
      searCelsius,
      roastCelsius: celsiusOfFahrenheit(roastFahrenheit),
    };
  }
  if (method === 'sear-last' && card.methods['sear-last']) {
    const { searFahrenheit, searMinutes, roastFahrenheit } = card.methods['sear-last'];
    const roastCelsius = celsiusOfFahrenheit(roastFahrenheit);
    return {
      method,
      firstCelsius: roastCelsius,
      searMinutes,
      searCelsius: celsiusOfFahrenheit(searFahrenheit),
      roastCelsius,
    };
  }
  const roastCelsius = celsiusOfFahrenheit(card.methods.steady?.roastFahrenheit ?? 325);
  return {
    method: 'steady',
    firstCelsius: roastCelsius,
    searMinutes: 0,
    searCelsius: roastCelsius,
    roastCelsius,
  };
}

/** Raw mass: as told, or by the bones, or a usual one. */
export function kilogramsOf(dinner: Dinner, card: RoastCard): number {
  const { kilograms, bones } = dinner.roast;
  if (kilograms !== undefined) return kilograms;
  const perBone = card.shape.kilogramsPerBone;
  return bones !== undefined && perBone !== undefined ? bones * perBone : 3;
}

export function restBandOf(card: RoastCard, kilograms: number): Band {
  const row =
    card.restMinutes.find((one) => kilograms <= one.toKilograms) ?? card.restMinutes.at(-1);
  const [p10, p50, p90] = row?.minutes ?? [15, 20, 30];
  return { p10, p50, p90 };
}

/**
 * The least that any roast rests when the table would otherwise wait, and how much longer than usual one
 * that is early may wait under its tent. Common practice, no source.
 */
const leastRestMinutes = 15;
const longerRestMinutes = 30;

/** Between what is called and what is done some minutes pass, in every kitchen. */
const handsLateMinutes = 16;

/** A rest nobody waits for: long enough to set the roast down and find the knife. */
const hardlyAnyRestMinutes = 5;

/** The shortest rest; a course without one asks for hardly any. */
export const leastRestOf = (rest: Band, cover: RestCover | undefined): number =>
  Math.min(rest.p10, cover === 'open' ? hardlyAnyRestMinutes : leastRestMinutes);

/** A roast that is early may wait so long under its tent. */
export const longestRestOf = (rest: Band): number => rest.p90 + longerRestMinutes;

/** A rest this long takes up what the forecast cannot know and what hands are late. */
export const safeRestOf = (rest: Band, pullMinute: Band): number =>
  rest.p10 + pullMinute.p90 - pullMinute.p50 + handsLateMinutes;

/** The rest planned for: as long as is safe, within what the roast bears. */
export const plannedRestOf = (rest: Band, pullMinute: Band): number =>
  Math.round(clamp(safeRestOf(rest, pullMinute), rest.p50, longestRestOf(rest)));

const stepStart = (dinner: Dinner, id: string): Instant | undefined => {
  const record = dinner.steps.get(id);
  return record?.startedAt ?? record?.doneAt;
};

/** A roast that was called and said not to be in yet is called again by another name. */
export const roastInName = (dinner: Dinner): string =>
  dinner.steps.get('roast-in')?.notDoneAt === undefined ? 'roast-in' : 'roast-in-again';

/** When the roast went in: as told, or as called if nobody has said otherwise. */
export function roastWentInAt(dinner: Dinner): Instant | undefined {
  const told = stepStart(dinner, 'roast-in');
  if (told !== undefined) return told;
  return dinner.calls.get(`step-due:${roastInName(dinner)}`)?.firstAt;
}

export const roastCameOutAt = (dinner: Dinner): Instant | undefined =>
  dinner.steps.get('pull')?.doneAt ?? stepStart(dinner, 'rest');

/** Moves of the oven that the method and the course ask for, given when the roast goes or went in. */
export function ovenMovesOf(dinner: Dinner, program: Program, roastInAt: Instant): OvenMove[] {
  const moves: OvenMove[] = [];
  const ovenOn = dinner.calls.get('oven-change:oven-on')?.firstAt;
  moves.push({
    at: Math.min(ovenOn ?? Number.POSITIVE_INFINITY, addMinutes(roastInAt, -preheatMinutes)),
    celsius: program.firstCelsius,
    why: 'preheat',
  });
  if (program.method === 'sear-first') {
    const called = dinner.calls.get('oven-change:oven-down')?.firstAt;
    const planned = addMinutes(roastInAt, program.searMinutes);
    moves.push({ at: called ?? planned, celsius: program.roastCelsius, why: 'roast' });
  }
  const course = dinner.course;
  if (course) {
    for (const move of course.oven)
      moves.push({ at: move.at, celsius: move.celsius, why: 'course' });
  }
  return moves.sort((a, b) => a.at - b.at);
}

/**
 * The oven over time as the forecast should see it: what was really set, and after the last of that
 * the moves still to come. A move that was called and not denied counts from when it was called.
 */
export function ovenSettingsOf(
  dinner: Dinner,
  moves: readonly OvenMove[],
  roastInAt: Instant,
): OvenSetting[] {
  const lastToldAt = dinner.oven.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  // Put back once the oven was turned up for the dishes, it stands in their heat.
  const isIn = roastCameOutAt(dinner) === undefined;
  const told = isIn
    ? settingsSoFar(dinner).filter((one) => (one.oven ?? 0) === 0)
    : dinner.oven.map(({ at, celsius }) => ({ at, celsius }));
  const later = moves.filter((move) => move.at > lastToldAt && move.why !== 'sides');
  const all = [...told, ...later].sort((a, b) => a.at - b.at);
  const before = all.filter((one) => one.at <= roastInAt).at(-1);
  const first = before?.celsius && before.celsius > 0 ? before : moves[0];
  const settings: OvenSetting[] = [{ minute: 0, celsius: first?.celsius ?? 163 }];
  for (const one of all) {
    if (one.at > roastInAt)
      settings.push({ minute: minutesBetween(roastInAt, one.at), celsius: one.celsius });
  }
  const back = backAgain(dinner, roastInAt);
  return back === undefined ? settings : [...settings, back].sort((a, b) => a.minute - b.minute);
}

/** Most outages are over by then; the cook is asked to tell. Common practice, no source. */
const outageMinutes = 30;

/** An oven that went dead with the roast in it is counted on again, where it was, until more is told. */
function backAgain(dinner: Dinner, roastInAt: Instant): OvenSetting | undefined {
  const last = dinner.oven.at(-1);
  const lit = dinner.oven.findLast((one) => one.celsius > 0);
  if (!last || !lit || last.celsius > 0 || last.ownChoice || last.at < roastInAt) return undefined;
  return {
    minute: minutesBetween(roastInAt, last.at) + outageMinutes,
    celsius: lit.celsius,
  };
}

/** A middle that reads less is ice still, whatever was said; the tip and the hand are good to this much. */
const iceCelsius = -1;

export interface QuestionOptions {
  roastInAt: Instant;
  /** The forecast is asked as of the last evidence, so that time alone changes nothing. */
  pullCelsius: number;
  moves: readonly OvenMove[];
  withReadings: boolean;
  /** Of a rest in a low oven, when the plan has it in. */
  hold?: HoldSpan | undefined;
}

export function questionOf(
  dinner: Dinner,
  card: RoastCard,
  { roastInAt, pullCelsius, moves, withReadings, hold }: QuestionOptions,
): ForecastQuestion {
  const outAt = roastCameOutAt(dinner);
  const readings = withReadings
    ? dinner.readings
        .filter((reading) => reading.happenedAt >= roastInAt)
        .map((reading) => ({
          minute: minutesBetween(roastInAt, reading.happenedAt),
          celsius: reading.celsius,
          where: reading.where,
          thermometer: reading.thermometer,
        }))
    : [];
  const evidence = [...readings.map((reading) => reading.minute), 0];
  return {
    roast: {
      shape: card.shape,
      kilograms: dinner.roast.kilograms,
      bones: dinner.roast.bones,
      boneless: dinner.roast.boneless,
      startCelsius: dinner.roast.startCelsius,
      frozen: readings.some(({ celsius }) => celsius < iceCelsius) || dinner.roast.frozen,
    },
    oven: ovenSettingsOf(dinner, moves, roastInAt),
    fan: dinner.setup.fan,
    onRack: dinner.setup.rack,
    readings,
    nowMinute: Math.max(...evidence),
    pullCelsius,
    outMinute: withReadings && outAt !== undefined ? minutesBetween(roastInAt, outAt) : undefined,
    rest: dinner.course?.rest ?? (dinner.setup.tent === false ? 'open' : 'tented'),
    hold,
    restMinutes: longRestMinutes(dinner, outAt ?? addMinutes(roastInAt, Math.max(...evidence))),
    kitchen: kitchenOf(dinner),
    seed: dinner.seed,
  };
}

/** No roast is kept whole for longer; a forecast of its rest looks no further. */
const longestRestMinutes = 300;
const longestPlainRestMinutes = 90;

/** How far a rest must be followed that a course, or the table, has made longer than an hour. */
function longRestMinutes(dinner: Dinner, from: Instant): number | undefined {
  const { servingAt, course } = dinner;
  if (servingAt === undefined || roastWentInAt(dinner) === undefined) return undefined;
  // Until it is out and no course made the rest longer, it is a plain tent's at most.
  const plain = !course && roastCameOutAt(dinner) === undefined;
  const longest = plain ? longestPlainRestMinutes : longestRestMinutes;
  const minutes = clamp(minutesBetween(from, servingAt), 0, longest);
  return minutes > 60 ? 30 * Math.ceil(minutes / 30) : undefined;
}

/** What is believed of the oven and the thermometer: as told today, else as earlier dinners taught. */
export function kitchenOf(dinner: Dinner): KitchenBelief | undefined {
  const { kitchen: belief, ovenBiasKelvin: bias, thermometerOffsetKelvin: offset } = dinner;
  if (bias === undefined && offset === undefined) return belief;
  return {
    ovenBiasKelvin:
      bias === undefined ? (belief ?? usualKitchen).ovenBiasKelvin : { mean: bias, deviation: 6 },
    thermometerOffsetKelvin:
      offset === undefined
        ? (belief ?? usualKitchen).thermometerOffsetKelvin
        : { mean: offset, deviation: 0.4 },
  };
}

/** The first guess of the pull, before a forecast says how far the core climbs in the rest. */
export const firstPullCelsius = (serveCelsius: number): number => serveCelsius - 9;

/**
 * A rest carries a core up by ten to twenty Fahrenheit degrees (common practice, no source), a long one
 * after a sear by some more. A forecast of more yet is not acted on: a roast pulled too early cannot be
 * mended by resting.
 */
export const riseHighKelvin = kelvinOfFahrenheitDegrees(28);

/** What readings say of a rise goes somewhat further. */
export const riseReadHighKelvin = kelvinOfFahrenheitDegrees(31);

/** A hold cooks on, and in a long rest there is time to put it back: it may come out this far under its target. */
export const riseInHoldKelvin = 25;

export interface Roast {
  card: RoastCard;
  program: Program;
  kilograms: number;
  rest: Band;
}

/** What is asked of the roast given the dinner as it stands, or undefined before it is described. */
export function roastOf(dinner: Dinner): Roast | undefined {
  const card = roastCardOf(dinner);
  if (!card) return undefined;
  const kilograms = kilogramsOf(dinner, card);
  return {
    card,
    program: programOf(card, dinner.method),
    kilograms,
    rest: restBandOf(card, kilograms),
  };
}

/** The roast's oven by its moves at an instant, in Celsius; 0 when off. */
export function ovenAt(moves: readonly OvenMove[], at: Instant): number {
  const own = moves.filter((move) => move.at <= at && (move.oven ?? 0) === 0);
  return own.at(-1)?.celsius ?? 0;
}

/** Heats for the dishes go by their degrees in a call's name; see `moveName` in calls/oven.ts. */
const calledHeat = /^oven-change:(sides|hold)-(\d+)(-second)?$/;

/** What the ovens were set to: as told, and as called since if nobody said otherwise. */
export function settingsSoFar(dinner: Dinner): OvenMove[] {
  const told = dinner.oven.map(({ at, celsius }): OvenMove => ({ at, celsius, why: 'roast' }));
  const lastToldAt = told.at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  const called = [...dinner.calls].flatMap(([call, { firstAt }]): OvenMove[] => {
    const [, why, celsius, second] = calledHeat.exec(call) ?? [];
    if (celsius === undefined || (!second && firstAt <= lastToldAt)) return [];
    const move = { at: firstAt, celsius: Number(celsius) };
    return [{ ...move, why: why === 'hold' ? 'hold' : 'sides', ...(second ? { oven: 1 } : {}) }];
  });
  return [...told, ...called, ...besideTheRoast(dinner)].sort((a, b) => a.at - b.at);
}

/** All turns of the dials but those for the dishes to come: what was told, and after that the roast's own. */
export function roastTurns(dinner: Dinner, own: readonly OvenMove[]): OvenMove[] {
  const told = settingsSoFar(dinner);
  const last = told.filter((move) => (move.oven ?? 0) === 0).at(-1)?.at ?? Number.NEGATIVE_INFINITY;
  return [...told, ...own.filter((one) => one.at > last)].sort((a, b) => a.at - b.at);
}

/** A second oven in which a dish was put without a call was hot for it. */
const besideTheRoast = (dinner: Dinner): OvenMove[] =>
  menuOf(dinner).flatMap((card) =>
    card.steps.flatMap((step): OvenMove[] => {
      const record = dinner.steps.get(stepIdOf(card, step));
      if (!step.oven || record?.oven !== 1 || record.startedAt === undefined) return [];
      const celsius = celsiusOfFahrenheit(step.oven.likelyFahrenheit);
      return [
        { at: addMinutes(record.startedAt, -preheatMinutes), celsius, why: 'sides', oven: 1 },
      ];
    }),
  );
