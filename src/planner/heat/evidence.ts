/**
 * How well a member agrees with what the thermometer said. A reading is the true core, plus what the
 * tip's distance from it adds (never less than nothing), plus this thermometer's offset, plus a slip.
 * Readings of one thermometer in one place share distance and offset; both are integrated out, the
 * distance over a few nodes, the offset in closed form.
 */
import type { KitchenBelief, ProbeReading } from '../../kitchen/forecast.ts';
import { type Track, trackAt } from './track.ts';

/**
 * Where the tip may sit, metres from the coldest point, and how likely: half-normal with a centimetre's
 * deviation. A centimetre is what a careful hand misses by; common practice, no source.
 */
export const tipMetres = [0.001, 0.005, 0.009, 0.014, 0.02, 0.028] as const;
const tipDeviation = 0.011;
const tipPrior = (() => {
  const density = tipMetres.map((metres, index) => {
    const left = tipMetres[index - 1] ?? 0;
    const right = tipMetres[index + 1] ?? 0.036;
    return (Math.exp(-0.5 * (metres / tipDeviation) ** 2) * (right - left)) / 2;
  });
  const sum = density.reduce((a, b) => a + b, 0);
  return density.map((value) => value / sum);
})();
const meanSquareMetres = tipMetres.reduce((sum, d, node) => sum + tipPrior[node]! * d * d, 0);
const meanFourthMetres = tipMetres.reduce((sum, d, node) => sum + tipPrior[node]! * d ** 4, 0);

/** A reading's own slip (dial, eye, a moment too soon) and what the model cannot follow, kelvin. */
const slipKelvin = 0.5;
const modelKelvin = 0.6;
/** An uneven hand: the share of the gradient's effect that changes from one reading to the next. */
const replacedShare = 0.3;

/** Readings by thermometer and place; indices into the question's readings. */
export function groupsOf(readings: readonly ProbeReading[], kept: readonly number[]): number[][] {
  const groups = new Map<string, number[]>();
  for (const index of kept) {
    const { thermometer, where } = readings[index]!;
    const key = `${thermometer ?? ''}|${where ?? ''}`;
    const group = groups.get(key);
    if (group) group.push(index);
    else groups.set(key, [index]);
  }
  return [...groups.values()];
}

export interface Agreement {
  logLikelihood: number;
  /** The offset that this member would give the thermometer. */
  offsetKelvin: number;
}

/** One member against one group of readings. */
export function agreement(
  track: Track,
  readings: readonly ProbeReading[],
  group: readonly number[],
  { mean, deviation }: KitchenBelief['thermometerOffsetKelvin'],
): Agreement {
  const count = group.length;
  const logs = new Array<number>(tipMetres.length);
  const offsets = new Array<number>(tipMetres.length);
  for (let node = 0; node < tipMetres.length; node += 1) {
    const square = tipMetres[node]! ** 2;
    let precision = 0;
    let pull = 0;
    let misfit = 0;
    for (let i = 0; i < count; i += 1) {
      const reading = readings[group[i]!]!;
      const rise = trackAt(track.curvature, reading.minute) * square;
      const residual = reading.celsius - trackAt(track.core, reading.minute) - rise - mean;
      const variance =
        slipKelvin * slipKelvin + modelKelvin * modelKelvin + (replacedShare * rise) ** 2;
      precision += 1 / variance;
      pull += residual / variance;
      misfit += (residual * residual) / variance + Math.log(variance);
    }
    const offsetPrecision = 1 / (deviation * deviation);
    offsets[node] = mean + pull / (precision + offsetPrecision);
    logs[node] =
      Math.log(tipPrior[node]!) -
      0.5 *
        (misfit -
          (pull * pull) / (precision + offsetPrecision) +
          Math.log(1 + precision / offsetPrecision));
  }
  const top = Math.max(...logs);
  let sum = 0;
  let offset = 0;
  for (let node = 0; node < logs.length; node += 1) {
    const share = Math.exp(logs[node]! - top);
    sum += share;
    offset += share * offsets[node]!;
  }
  return { logLikelihood: top + Math.log(sum), offsetKelvin: offset / sum };
}

/** What a member expects a thermometer to say at a minute, tip and offset at their usual. */
export const expectedReading = (track: Track, minute: number): number =>
  trackAt(track.core, minute) + trackAt(track.curvature, minute) * meanSquareMetres;

/** Variance of one reading that no other shares. */
export const readingVariance = (track: Track, minute: number): number =>
  slipKelvin ** 2 +
  modelKelvin ** 2 +
  (replacedShare * trackAt(track.curvature, minute) * meanSquareMetres) ** 2;

/** Variance that all readings of one thermometer in one place share: its offset, and where its tip is. */
export const sharedVariance = (track: Track, minute: number, offsetDeviation: number): number =>
  offsetDeviation ** 2 +
  trackAt(track.curvature, minute) ** 2 * (meanFourthMetres - meanSquareMetres ** 2);

export interface Posterior {
  /** Adds up to one. */
  weights: Float64Array;
  offsetKelvin: { mean: number; deviation: number };
  effectiveMembers: number;
}

export function weigh(
  tracks: readonly Track[],
  readings: readonly ProbeReading[],
  kept: readonly number[],
  offset: KitchenBelief['thermometerOffsetKelvin'],
  logPrior?: Float64Array,
): Posterior {
  const logs = new Float64Array(tracks.length);
  if (logPrior) logs.set(logPrior);
  const offsets = new Float64Array(tracks.length);
  for (const group of groupsOf(readings, kept)) {
    for (let member = 0; member < tracks.length; member += 1) {
      const fit = agreement(tracks[member]!, readings, group, offset);
      logs[member]! += fit.logLikelihood;
      offsets[member] = fit.offsetKelvin;
    }
  }
  const weights = normalised(logs);
  let mean = 0;
  let square = 0;
  let concentration = 0;
  for (let member = 0; member < weights.length; member += 1) {
    mean += weights[member]! * offsets[member]!;
    square += weights[member]! * offsets[member]! ** 2;
    concentration += weights[member]! ** 2;
  }
  const spread = Math.sqrt(Math.max(0, square - mean * mean));
  return {
    weights,
    offsetKelvin:
      kept.length === 0
        ? { ...offset }
        : { mean, deviation: Math.min(offset.deviation, Math.hypot(spread, offset.deviation / 2)) },
    effectiveMembers: 1 / concentration,
  };
}

function normalised(logs: Float64Array): Float64Array {
  let top = Number.NEGATIVE_INFINITY;
  for (const log of logs) if (log > top) top = log;
  let sum = 0;
  const weights = logs.map((log) => Math.exp(log - top));
  for (const weight of weights) sum += weight;
  return weights.map((weight) => weight / sum);
}
