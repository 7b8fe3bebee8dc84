/**
 * Which readings do not fit the others, and why. Each is held against what the rest of them lead one to
 * expect at its minute; the worst is set aside, and the rest judged again.
 */
import { celsiusOfFahrenheit, fahrenheitOfCelsius } from '../../base/units.ts';
import type { KitchenBelief, ProbeReading, SuspectReason } from '../../kitchen/forecast.ts';
import { expectedReading, readingVariance, weigh } from './evidence.ts';
import type { Track } from './track.ts';

export interface Suspect {
  index: number;
  why: SuspectReason;
}

/** Beyond so many deviations and kelvin a reading is doubted. */
const doubtDeviations = 3.3;
const doubtKelvin = 3.5;
/** Two readings closer than this in time should agree within the second figure. */
const togetherMinutes = 4;
const togetherKelvin = 4.5;

interface Expected {
  celsius: number;
  deviation: number;
}

export interface DoubtOptions {
  tracks: readonly Track[];
  readings: readonly ProbeReading[];
  offset: KitchenBelief['thermometerOffsetKelvin'];
  logPrior?: Float64Array | undefined;
}

export function suspectsAmong(options: DoubtOptions): Suspect[] {
  const { readings } = options;
  const suspects: Suspect[] = [];
  let kept = readings.map((_, index) => index);
  for (;;) {
    const worst = worstOf(options, kept);
    if (worst === undefined || suspects.length >= Math.ceil(readings.length / 2)) break;
    suspects.push(worst);
    kept = kept.filter((index) => index !== worst.index);
  }
  return believed(suspects).sort((a, b) => a.index - b.index);
}

/** One reading under all others is a slip; a second one says that the roast really lags. */
function believed(suspects: readonly Suspect[]): Suspect[] {
  const low = suspects.filter((one) => one.why === 'too-low');
  return low.length >= 2 ? suspects.filter((one) => one.why !== 'too-low') : [...suspects];
}

function worstOf(options: DoubtOptions, kept: readonly number[]): Suspect | undefined {
  const { readings } = options;
  let worst: { index: number; score: number; expected: Expected } | undefined;
  for (const index of kept) {
    const others = kept.filter((other) => other !== index);
    const expected = expectation(options, others, readings[index]!.minute);
    const gap = readings[index]!.celsius - expected.celsius;
    let score = Math.abs(gap) / expected.deviation;
    if (Math.abs(gap) < doubtKelvin) score = 0;
    const stuck = isStuck(options, others, index, expected);
    if (stuck) score = Math.max(score, doubtDeviations + 0.1);
    if (score > doubtDeviations && score > (worst?.score ?? 0)) worst = { index, score, expected };
  }
  if (worst === undefined) return undefined;
  return { index: worst.index, why: reasonFor(options, kept, worst.index, worst.expected) };
}

function expectation(options: DoubtOptions, others: readonly number[], minute: number): Expected {
  const { tracks, readings, offset, logPrior } = options;
  const { weights } = weigh(tracks, readings, others, offset, logPrior);
  let mean = 0;
  let square = 0;
  let own = 0;
  for (let member = 0; member < tracks.length; member += 1) {
    const track = tracks[member]!;
    const celsius = expectedReading(track, minute);
    mean += weights[member]! * celsius;
    square += weights[member]! * celsius * celsius;
    own += weights[member]! * readingVariance(track, minute, offset.deviation);
  }
  return { celsius: mean, deviation: Math.sqrt(Math.max(0, square - mean * mean) + own) };
}

/** The same figure again although the core must have climbed. */
function isStuck(
  options: DoubtOptions,
  others: readonly number[],
  index: number,
  expected: Expected,
): boolean {
  const { readings } = options;
  const reading = readings[index]!;
  const before = readings
    .slice(0, index)
    .findLast((one) => one.thermometer === reading.thermometer && one.where === reading.where);
  if (before === undefined || reading.minute - before.minute < 6) return false;
  if (Math.abs(reading.celsius - before.celsius) > 0.3) return false;
  const then = expectation(options, others, before.minute);
  return expected.celsius - then.celsius > 3.5;
}

function reasonFor(
  options: DoubtOptions,
  kept: readonly number[],
  index: number,
  expected: Expected,
): SuspectReason {
  const { readings } = options;
  const reading = readings[index]!;
  const others = kept.filter((other) => other !== index);
  if (isStuck(options, others, index, expected)) return 'stuck';
  for (const meant of [fahrenheitOfCelsius(reading.celsius), celsiusOfFahrenheit(reading.celsius)])
    if (Math.abs(meant - expected.celsius) < 2 * expected.deviation) return 'wrong-unit';
  const rival = others.find((other) => {
    const one = readings[other]!;
    return (
      Math.abs(one.minute - reading.minute) <= togetherMinutes &&
      Math.abs(one.celsius - reading.celsius) > togetherKelvin
    );
  });
  if (rival !== undefined) return 'disagrees-with-another';
  const before = others.findLast((other) => other < index);
  if (before !== undefined && readings[before]!.celsius > reading.celsius + 1.5) return 'falling';
  if (reading.thermometer === 'leave-in' && others.length >= 2) return 'moved-probe';
  return reading.celsius > expected.celsius ? 'too-high' : 'too-low';
}
