/**
 * The bound: a forecast that knows the true roast, oven and rest, and is never wrong but for what the cook
 * does. What the helper falls short of it is the forecast's; what it falls short itself is the cook's.
 */
import type { Band, Forecast, ForecastQuestion, SliceOutlook } from '../../src/kitchen/forecast.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Compute } from '../../src/session/ports.ts';
import { Kitchen } from '../heat/kitchen/kitchen.ts';
import type { Evening } from './evening.ts';

const longestMinutes = 600;
const restMinutes = 120;

const sure = (value: number): Band => ({ p10: value, p50: value, p90: value });

/** The slice is nobody's business here. */
const slice: SliceOutlook = {
  greyBandMillimetres: sure(0),
  pinkFraction: sure(1),
  minutesAfterPull: 20,
  radiusMillimetres: 60,
  profile: [0, 1].map((outward) => ({ outward, celsius: sure(50), hottestCelsius: sure(60) })),
};

interface Cooked {
  /** Every minute, in the oven and then in the rest. */
  core: number[];
  outMinute: number;
}

function cooked(evening: Evening, question: ForecastQuestion): Cooked {
  const { truth } = evening;
  const settings = question.oven;
  const kitchen = new Kitchen({
    ...truth,
    restConvection: truth.rest.convection,
    dialCelsius: settings[0]?.celsius ?? 163,
  });
  const core = [kitchen.coreCelsius];
  const { outMinute, pullCelsius } = question;
  let minute = 0;
  const isOut = (): boolean =>
    outMinute === undefined
      ? (core.at(-1) ?? 0) >= pullCelsius || minute >= longestMinutes
      : minute >= outMinute;
  for (; !isOut(); minute += 1) {
    kitchen.setOven(settings.findLast((one) => one.minute <= minute)?.celsius ?? 163);
    kitchen.wait(1);
    core.push(kitchen.coreCelsius);
  }
  kitchen.takeOut({ tented: question.rest !== 'open' });
  if (question.rest === 'low-oven') kitchen.setOven(holdCelsius);
  for (let rested = 0; rested < restMinutes; rested += 1) {
    if (question.rest === 'low-oven' && kitchen.wallCelsius < holdCelsius + 15) kitchen.putIn();
    kitchen.wait(1);
    core.push(kitchen.coreCelsius);
  }
  return { core, outMinute: minute };
}

const holdCelsius = 80;

function forecastOf({ core, outMinute }: Cooked, question: ForecastQuestion): Forecast {
  const at = (minute: number): number => core[Math.min(core.length - 1, Math.round(minute))] ?? 0;
  const { nowMinute } = question;
  const crossing = core.findIndex((one) => one >= question.pullCelsius);
  const pull = question.outMinute === undefined || crossing < 0 ? outMinute : crossing;
  const rest = core.slice(outMinute);
  const peak = Math.max(...rest);
  const every = (count: number, step: number): number[] =>
    Array.from({ length: count }, (_, row) => row * step);
  const look = nowMinute + Math.max(2, 0.6 * (pull - nowMinute));
  return {
    pullMinute: sure(pull),
    neverReachedChance: pull >= longestMinutes ? 1 : 0,
    pastPullChance: at(nowMinute) >= question.pullCelsius ? 1 : 0,
    core: every(Math.ceil(core.length / 5), 5).map((minute) => ({
      minute,
      celsius: sure(at(minute)),
    })),
    coreNowCelsius: sure(at(nowMinute)),
    afterRest: every(restMinutes / 5, 5).map((minutes) => ({
      minutesAfterPull: minutes + 5,
      celsius: sure(at(outMinute + minutes + 5)),
    })),
    peak: { celsius: sure(peak), minutesAfterPull: sure(rest.indexOf(peak)) },
    nextCheckMinute: question.outMinute === undefined ? look : nowMinute + 10,
    latestLookMinute: Math.max(nowMinute, pull),
    suspectReadings: [],
    assumptions: [],
    slices: [slice],
    ifOut: [],
    weightLossFraction: sure(0.2),
    lethality: { now: sure(0), afterRest: sure(0) },
    learnt: {
      ovenBiasKelvin: { mean: 0, deviation: 9 },
      thermometerOffsetKelvin: { mean: 0, deviation: 0.7 },
    },
  };
}

/** Readings change nothing here, so one cooking serves all questions that differ in them alone. */
export function knowing(evening: Evening): Compute {
  const known = new Map<string, Cooked>();
  return {
    ...inThisThread,
    forecast: async ({ instead, ...asked }) => {
      const question = { ...asked, ...instead };
      const { oven, pullCelsius, outMinute, rest } = question;
      const key = JSON.stringify([
        oven,
        outMinute === undefined ? pullCelsius : 0,
        outMinute,
        rest,
      ]);
      const made = known.get(key) ?? cooked(evening, question);
      known.set(key, made);
      return forecastOf(made, question);
    },
  };
}
