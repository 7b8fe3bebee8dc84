/**
 * JSON lines of `roastcall forecast`: a question in, an answer out, each line for itself. A line that
 * cannot be answered gets {"error": {"message", "field"}} in its place. The answer is a function of the
 * line alone, but for `milliseconds`.
 */
import { assertNever } from '../../base/assert.ts';
import { fahrenheitOfCelsius, poundsOfKilograms } from '../../base/units.ts';
import {
  type Band,
  type Forecast,
  type ForecastAssumption,
  type RestCover,
  type SliceOutlook,
  sliceIfOutAt,
  sliceRested,
} from '../../kitchen/forecast.ts';
import { forecast } from '../../planner/heat/forecast.ts';
import { questionOfWire } from './forecast-question.ts';

/** Longer lines are pasted by accident; a question with two hundred readings has 20,000 characters. */
const longestLine = 200_000;

export function forecastLine(
  line: string,
  stopwatch: () => number = () => performance.now(),
): string {
  const started = stopwatch();
  if (line.length > longestLine)
    return failure({ message: `A line may have ${longestLine} characters at most.` });
  let value: unknown;
  try {
    value = JSON.parse(line);
  } catch {
    return failure({ message: 'The line is not JSON; write one question on one line.' });
  }
  const asked = questionOfWire(value);
  if ('error' in asked) return failure(asked.error);
  const answer = wireOf(forecast(asked.question), {
    inCelsius: asked.inCelsius,
    nowMinute: asked.question.nowMinute,
  });
  const milliseconds = Math.round((stopwatch() - started) * 10) / 10;
  return JSON.stringify({ ...answer, milliseconds });
}

const failure = (error: { message: string; field?: string }): string => JSON.stringify({ error });

/** The wire tells the slice after this rest. */
const restMinutes = 20;

/** The answer in the wire's names; asked in Celsius, each temperature comes in both units. */
export function wireOf(
  answer: Forecast,
  { inCelsius, nowMinute }: { inCelsius: boolean; nowMinute: number },
) {
  const temperature = (celsius: Band) => ({
    fahrenheit: rounded(mapped(celsius, fahrenheitOfCelsius), 2),
    ...(inCelsius ? { celsius: rounded(celsius, 2) } : {}),
  });
  const slice = (one: SliceOutlook) => ({
    greyBandMillimetres: rounded(one.greyBandMillimetres, 1),
    pinkFraction: rounded(one.pinkFraction, 3),
    minutesAfterPull: one.minutesAfterPull,
    radiusMillimetres: round(one.radiusMillimetres, 1),
    profile: one.profile.map(({ outward, celsius, hottestCelsius }) => ({
      outward,
      ...temperature(celsius),
      hottestFahrenheit: rounded(mapped(hottestCelsius, fahrenheitOfCelsius), 2),
    })),
  });
  const ifNow = sliceIfOutAt(answer, { outMinute: nowMinute, restMinutes });
  return {
    pull: { minute: rounded(answer.pullMinute, 1) },
    neverReachedChance: round(answer.neverReachedChance, 3),
    pastPullChance: round(answer.pastPullChance, 3),
    coreNow: temperature(answer.coreNowCelsius),
    afterRest: answer.afterRest.map(({ minutesAfterPull, celsius }) => ({
      minutesAfterPull,
      ...temperature(celsius),
    })),
    peak: {
      ...temperature(answer.peak.celsius),
      minutesAfterPull: rounded(answer.peak.minutesAfterPull, 1),
    },
    core: answer.core.map(({ minute, celsius }) => ({ minute, ...temperature(celsius) })),
    nextCheck: { minute: round(answer.nextCheckMinute, 1) },
    latestLook: { minute: round(answer.latestLookMinute, 1) },
    suspectReadings: answer.suspectReadings.map(({ index }) => index),
    suspectReasons: answer.suspectReadings.map(({ index, why }) => ({ index, why })),
    slice: slice(sliceRested(answer.slices, restMinutes)),
    ...(ifNow === undefined ? {} : { sliceIfPulledNow: slice(ifNow) }),
    weightLossFraction: rounded(answer.weightLossFraction, 3),
    lethality: {
      authority: 'FSIS Appendix A, 6.5 reductions; nothing below 130 °F counted; not a verdict',
      now: rounded(answer.lethality.now, 2),
      afterRest: rounded(answer.lethality.afterRest, 2),
    },
    learnt: answer.learnt,
    assumptions: answer.assumptions.map((one) => assumptionSentence(one, { inCelsius })),
  };
}

const round = (value: number, places: number): number => {
  const scale = 10 ** places;
  return Math.round(value * scale) / scale;
};
const mapped = (band: Band, of: (value: number) => number): Band => ({
  p10: of(band.p10),
  p50: of(band.p50),
  p90: of(band.p90),
});
const rounded = (band: Band, places: number): Band => mapped(band, (value) => round(value, places));

const restWords: Record<RestCover, string> = {
  tented: 'under a loose tent of foil',
  open: 'uncovered',
  'low-oven': 'in a low oven',
};

export function assumptionSentence(
  assumption: ForecastAssumption,
  { inCelsius }: { inCelsius: boolean },
): string {
  const degrees = (celsius: number): string =>
    inCelsius ? `${Math.round(celsius)} °C` : `${Math.round(fahrenheitOfCelsius(celsius))} °F`;
  const difference = (kelvin: number): string =>
    inCelsius ? `${Math.abs(round(kelvin, 1))} °C` : `${Math.abs(Math.round(kelvin * 1.8))} °F`;
  const weight = (kilograms: number): string =>
    inCelsius
      ? `${round(kilograms, 1)} kilograms`
      : `${round(poundsOfKilograms(kilograms), 1)} pounds`;
  switch (assumption.key) {
    case 'weight-from-bones':
      return `No weight was given; its bones make it about ${weight(assumption.kilograms)}.`;
    case 'weight-typical':
      return `No weight was given; ${weight(assumption.kilograms)} was taken, so the spread is wide.`;
    case 'start-refrigerator':
      return `It was taken to come from a refrigerator, at about ${degrees(assumption.celsius)}.`;
    case 'start-frozen':
      return 'Its heart was taken to be still frozen, which makes the spread wide.';
    case 'oven-as-set':
      return 'The oven was taken to hold what its dial says, within what household ovens err by.';
    case 'oven-biased':
      return `The oven was taken to run about ${difference(assumption.kelvin)} ${assumption.kelvin > 0 ? 'over' : 'under'} its dial.`;
    case 'thermometer-biased':
      return `The thermometer was taken to read about ${difference(assumption.kelvin)} ${assumption.kelvin > 0 ? 'high' : 'low'}.`;
    case 'no-reading-yet':
      return 'There is no reading that counts yet; the spread is that of roasts of this size.';
    case 'reading-off-centre':
      return 'A reading was taken to be the true core or, off its centre, above it.';
    case 'reading-down-weighted':
      return `Reading number ${assumption.index + 1} does not fit the others and was set aside.`;
    case 'rest':
      return `It was taken to rest ${restWords[assumption.cover]}.`;
    default:
      return assertNever(assumption);
  }
}
