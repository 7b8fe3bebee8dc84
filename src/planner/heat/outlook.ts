/** From tracks and weights to the answer: when, how hot, how sure, when to look. */
import { limits } from '../../base/limits.ts';
import type {
  Band,
  CourseAsked,
  Forecast,
  ForecastAssumption,
  ForecastQuestion,
  SliceOutlook,
} from '../../kitchen/forecast.ts';
import type { Belief } from './belief.ts';
import { trackOptionsOf } from './ensemble.ts';
import { reductionsOver } from './lethality.ts';
import { type Member, massOf, refrigeratorCelsius } from './prior.ts';
import { profilePlaces, type Slice, slicedAfter } from './slice.ts';
import {
  recordMinutes,
  restHorizonMinutes,
  restRecords,
  slicesIfOut,
  type Track,
  trackAt,
} from './track.ts';
import { evenlyChosen, meanAndDeviation, Weighted } from './weighted.ts';

/** What is believed of a kitchen is said from 5 °F of the oven and 1 °F of the thermometer on. */
const worthSayingOvenKelvin = 2.7;
const worthSayingThermometerKelvin = 0.55;
const coreEveryMinutes = 5;
const latestMinute = limits.roastMinutesHigh;
/** The chance of having passed the pull that a look must stay under. */
const lookChance = 0.05;

/** A member's track with the pace it is given from the last evidence on. */
interface Paced {
  track: Track;
  pace: number;
  pullMinute: number;
  /** The track's rest with the member's own climb. */
  rest: Float32Array;
}

export interface OutlookOptions {
  question: ForecastQuestion;
  members: readonly Member[];
  tracks: readonly Track[];
  weights: Float64Array;
  belief: Belief;
  /** The slices are left out where nobody asks for them. */
  only?: CourseAsked['only'];
}

export function outlook(options: OutlookOptions): Forecast {
  const { question, weights, belief, only } = options;
  const { nowMinute } = question;
  const out = question.outMinute !== undefined;
  const from = out ? Number.POSITIVE_INFINITY : belief.evidenceMinute;
  const paced = options.tracks.map((track, index) => {
    const pace = options.members[index]!.pace;
    const past = track.pullMinute <= from;
    const pullMinute = past ? track.pullMinute : from + (track.pullMinute - from) * pace;
    return {
      track,
      pace,
      pullMinute: Math.min(latestMinute, pullMinute),
      rest: out ? track.rest : climbing(track.rest, options.members[index]!.rise),
    };
  });
  const inOven = (one: Paced, minute: number): number =>
    trackAt(one.track.core, minute <= from ? minute : from + (minute - from) / one.pace);
  const coreAt = (one: Paced, minute: number): number => {
    if (out || minute <= Math.max(nowMinute, one.pullMinute)) return inOven(one, minute);
    if (one.pullMinute >= nowMinute) return trackAt(one.rest, minute - one.pullMinute);
    const rise = trackAt(one.rest, minute - nowMinute) - one.rest[0]!;
    return inOven(one, nowMinute) + rise;
  };
  const restMinutes = Math.max(restHorizonMinutes, question.restMinutes ?? 0);
  const bandOf = bandsOf(paced, weights);
  const pulls = new Weighted(
    paced.map((one) => one.pullMinute),
    weights,
  );
  const chance = (holds: (one: Paced) => boolean): number =>
    paced.reduce((sum, one, index) => sum + (holds(one) ? weights[index]! : 0), 0);
  const end = Math.min(
    latestMinute,
    (question.outMinute ?? Math.max(nowMinute, pulls.quantile(0.9))) + restMinutes,
  );
  const minutes = Array.from(
    { length: Math.ceil(end / coreEveryMinutes) + 1 },
    (_, index) => index * coreEveryMinutes,
  );
  return {
    pullMinute: pulls.band,
    neverReachedChance: chance((one) => one.pullMinute >= latestMinute),
    pastPullChance: chance((one) => coreAt(one, nowMinute) >= question.pullCelsius),
    core: minutes.map((minute) => ({ minute, celsius: bandOf((one) => coreAt(one, minute)) })),
    coreNowCelsius: bandOf((one) => coreAt(one, nowMinute)),
    ...restOutlook(paced, weights, restMinutes),
    ...looks(question, pulls, belief.suspects),
    suspectReadings: belief.suspects,
    assumptions: assumptionsOf(question, belief),
    slices:
      only === 'core'
        ? []
        : sliceOutlooks(
            restMinutes,
            paced.map(({ track }) => track.slices),
            weights,
          ),
    ifOut: only === 'core' ? [] : slicesIfOutAt(options, { paced, pulls, from }),
    weightLossFraction: bandOf((one) => one.track.lossAfterRest),
    lethality: {
      now: bandOf((one) => reductionsUntil(one.track, nowMinute)),
      afterRest: bandOf((one) =>
        out
          ? reductionsOver(one.track.core, recordMinutes)
          : reductionsUntil(one.track, one.track.pullMinute) +
            reductionsOver(one.track.rest, recordMinutes),
      ),
    },
    learnt: belief.learnt,
  };
}

/** Bands of one thing after another over the same samples: as a rule each lies much as the one before. */
function bandsOf<T>(
  samples: readonly T[],
  weights: ArrayLike<number>,
): (value: (one: T) => number) => Band {
  let latest: Weighted | undefined;
  return (value) => {
    latest = new Weighted(samples.map(value), weights, latest);
    return latest.band;
  };
}

/** One for each rest, over the members. */
const sliceOutlooks = (
  restMinutes: number,
  members: readonly (readonly Slice[])[],
  weights: ArrayLike<number>,
): SliceOutlook[] =>
  slicedAfter(restMinutes).map((minutesAfterPull, rest) =>
    sliceOutlook(
      minutesAfterPull,
      members.map((slices) => slices[rest]!),
      weights,
    ),
  );

function sliceOutlook(
  minutesAfterPull: number,
  slices: readonly Slice[],
  weights: ArrayLike<number>,
): SliceOutlook {
  const bandOf = bandsOf(slices, weights);
  const { mean } = meanAndDeviation(
    slices.map((slice) => slice.depthMetres),
    weights,
  );
  return {
    greyBandMillimetres: bandOf((slice) => slice.greyMillimetres),
    pinkFraction: bandOf((slice) => slice.pinkFraction),
    minutesAfterPull,
    radiusMillimetres: 1000 * mean,
    profile: Array.from({ length: profilePlaces }, (_, place) => ({
      outward: place / (profilePlaces - 1),
      celsius: bandOf((slice) => slice.celsius[place]!),
      hottestCelsius: bandOf((slice) => slice.hottestCelsius[place]!),
    })),
  };
}

/** A picture needs one member in so many, and no more minutes than this. */
const membersForOne = 9;
const mostFollowedAgain = 20;
const minutesIfOut = 8;
const leastMinutesApart = 8;

/** The slices if it came out sooner or later than at its pull: from now to some time past the pull. */
function slicesIfOutAt(
  { question, members, weights, belief }: OutlookOptions,
  { paced, pulls, from }: { paced: readonly Paced[]; pulls: Weighted; from: number },
): Forecast['ifOut'] {
  if (question.outMinute !== undefined) return [];
  const { nowMinute } = question;
  const last = Math.min(latestMinute, Math.max(nowMinute, pulls.quantile(0.9)) + 10);
  const apart = Math.max(leastMinutesApart, (last - nowMinute) / (minutesIfOut - 1));
  const count = 1 + Math.max(0, Math.ceil((last - nowMinute) / apart - 1e-9));
  const minutes = Array.from({ length: count }, (_, row) => nowMinute + row * apart);
  // As many members as are followed again, spread evenly over what is believed of the pull.
  const chosen = evenlyChosen(
    paced.map((one) => one.pullMinute),
    weights,
    Math.min(mostFollowedAgain, Math.ceil(members.length / membersForOne)),
  );
  const followed = chosen.map((row) => {
    const { pace } = paced[row]!;
    const own = minutes.map((minute) => (minute <= from ? minute : from + (minute - from) / pace));
    return slicesIfOut(members[row]!, trackOptionsOf(question, belief.ensemble.size), own);
  });
  const even = chosen.map(() => 1);
  return minutes.map((minute, row) => ({
    minute,
    slices: sliceOutlooks(
      restHorizonMinutes,
      followed.map((minutes) => minutes[row]!),
      even,
    ),
  }));
}

function restOutlook(
  paced: readonly Paced[],
  weights: Float64Array,
  restMinutes: number,
): Pick<Forecast, 'afterRest' | 'peak'> {
  const afterRest = [];
  const bandOf = bandsOf(paced, weights);
  for (let minutes = 5; minutes <= restMinutes; minutes += 5)
    afterRest.push({
      minutesAfterPull: minutes,
      celsius: bandOf(({ rest }) => trackAt(rest, minutes)),
    });
  const peakBand = bandsOf(
    paced.map(({ rest }) => peakOf(rest)),
    weights,
  );
  return {
    afterRest,
    peak: {
      celsius: peakBand((peak) => peak.celsius),
      minutesAfterPull: peakBand((peak) => peak.minutes),
    },
  };
}

const climbing = (rest: Float32Array, by: number): Float32Array =>
  rest.map((celsius) => rest[0]! + (celsius - rest[0]!) * by);

function peakOf(rest: Float32Array): { celsius: number; minutes: number } {
  let best = 0;
  for (let row = 1; row < Math.min(rest.length, restRecords); row += 1)
    if (rest[row]! > rest[best]!) best = row;
  return { celsius: rest[best]!, minutes: best * recordMinutes };
}

/** A core climbs no faster than this late on, 1 °F a minute. Common practice, no source. */
const climbKelvinPerMinute = 0.55;
/** After a number that does not fit, the next look settles it. */
const settlingMinutes = 3;

/**
 * The latest look leaves under one chance in twenty of having passed the pull; the next is a good half
 * of the way there, since a reading tells more the nearer the pull is. A last reading that is doubted for
 * being high may still be right: until that is settled, the look is as soon as it asks for.
 */
function looks(
  { nowMinute, outMinute, pullCelsius, readings }: ForecastQuestion,
  pulls: Weighted,
  suspects: Belief['suspects'],
): Pick<Forecast, 'nextCheckMinute' | 'latestLookMinute'> {
  if (outMinute !== undefined)
    return { latestLookMinute: nowMinute, nextCheckMinute: nowMinute + 10 };
  const last = readings.length - 1;
  const doubted = suspects.some((one) => one.index === last) ? readings[last] : undefined;
  const ifRight = doubted
    ? doubted.minute + Math.max(0, pullCelsius - doubted.celsius) / climbKelvinPerMinute
    : Number.POSITIVE_INFINITY;
  const latestLookMinute = Math.max(nowMinute, Math.min(pulls.quantile(lookChance), ifRight));
  const far = latestLookMinute - nowMinute;
  const next = doubted ? settlingMinutes : far > 12 ? 0.6 * far : far;
  return { latestLookMinute, nextCheckMinute: nowMinute + Math.max(2, Math.min(far, next)) };
}

function reductionsUntil(track: Track, minute: number): number {
  const rows = Math.max(0, Math.min(track.core.length, Math.round(minute / recordMinutes) + 1));
  return Number.isFinite(rows) ? reductionsOver(track.core.subarray(0, rows), recordMinutes) : 0;
}

function assumptionsOf(question: ForecastQuestion, belief: Belief): ForecastAssumption[] {
  const { roast, readings } = question;
  const assumptions: ForecastAssumption[] = [];
  const mass = massOf(question);
  if (mass.from === 'bones')
    assumptions.push({ key: 'weight-from-bones', kilograms: mass.kilograms });
  if (mass.from === 'typical')
    assumptions.push({ key: 'weight-typical', kilograms: mass.kilograms });
  if (roast.frozen === true) assumptions.push({ key: 'start-frozen' });
  else if (roast.startCelsius === undefined && roast.minutesOutOfFridge === undefined)
    assumptions.push({ key: 'start-refrigerator', celsius: refrigeratorCelsius });
  const oven = question.kitchen?.ovenBiasKelvin.mean ?? 0;
  const thermometer = question.kitchen?.thermometerOffsetKelvin.mean ?? 0;
  assumptions.push(
    Math.abs(oven) < worthSayingOvenKelvin
      ? { key: 'oven-as-set' }
      : { key: 'oven-biased', kelvin: oven },
  );
  if (Math.abs(thermometer) >= worthSayingThermometerKelvin)
    assumptions.push({ key: 'thermometer-biased', kelvin: thermometer });
  if (readings.length === 0) assumptions.push({ key: 'no-reading-yet' });
  else assumptions.push({ key: 'reading-off-centre' });
  for (const { index } of belief.suspects)
    assumptions.push({ key: 'reading-down-weighted', index });
  assumptions.push({ key: 'rest', cover: question.rest });
  return assumptions;
}
