/**
 * Members drawn near what the readings say. Among hundreds drawn from the prior only a few fit three
 * readings; so each reading's expectation is taken as linear in the unknowns, the unknowns' normal
 * distribution given the readings follows in closed form, and new members are drawn from it. All are
 * weighed together as drawn from the mixture of both, so that a poor line costs members, not truth.
 */
import type { KitchenBelief, ProbeReading } from '../../kitchen/forecast.ts';
import type { Population } from './ensemble.ts';
import { expectedReading, groupsOf, readingVariance, sharedVariance } from './evidence.ts';
import {
  conditioned,
  type LinearModel,
  linearModelOf,
  logDensity,
  type Normal,
} from './gaussian.ts';
import { unknownCount } from './prior.ts';
import type { Track } from './track.ts';

export interface Evidence {
  readings: readonly ProbeReading[];
  /** Indices of the readings that count. */
  kept: readonly number[];
  offset: KitchenBelief['thermometerOffsetKelvin'];
}

/** What the readings are expected to be, as lines in the unknowns, about the members that weigh most. */
export interface ReadingLines {
  model: LinearModel;
  /** Mean over the members: variance of one reading, and what readings of one place share. */
  own: Float64Array;
  shared: Float64Array;
}

export function readingLines(
  { normals, tracks }: Pick<Population, 'normals' | 'tracks'>,
  weights: ArrayLike<number>,
  { readings, offset }: Pick<Evidence, 'readings' | 'offset'>,
): ReadingLines {
  const values = readings.map(({ minute }) =>
    Float64Array.from(tracks, (track) => expectedReading(track, minute)),
  );
  const model = linearModelOf({ points: normals, size: unknownCount, weights }, values);
  let sum = 0;
  for (let member = 0; member < tracks.length; member += 1) sum += weights[member]!;
  const meanOf = (of: (track: Track) => number): number => {
    let total = 0;
    for (let member = 0; member < tracks.length; member += 1)
      total += weights[member]! * of(tracks[member]!);
    return total / sum;
  };
  return {
    model,
    own: Float64Array.from(readings, ({ minute }) =>
      meanOf((track) => readingVariance(track, minute)),
    ),
    shared: Float64Array.from(readings, ({ minute }) =>
      meanOf((track) => sharedVariance(track, minute, offset.deviation)),
    ),
  };
}

/** The unknowns given the readings that count. */
export function normalGiven(lines: ReadingLines, evidence: Evidence): Normal {
  const { readings, kept, offset } = evidence;
  const { model } = lines;
  const size = kept.length;
  const slopes = new Float64Array(size * unknownCount);
  const away = new Float64Array(size);
  kept.forEach((index, row) => {
    slopes.set(
      model.slopes.subarray(index * unknownCount, (index + 1) * unknownCount),
      row * unknownCount,
    );
    away[row] = readings[index]!.celsius - offset.mean - model.intercepts[index]!;
  });
  return conditioned(slopes, away, errorsAmong(lines, evidence), unknownCount);
}

/** Covariance of what the lines do not explain: each reading's own, and what one place shares. */
export function errorsAmong(lines: ReadingLines, { readings, kept }: Evidence): Float64Array {
  const size = kept.length;
  const errors = new Float64Array(size * size);
  kept.forEach((index, row) => {
    errors[row * size + row] = lines.own[index]! + lines.model.leftOver[index]!;
  });
  for (const group of groupsOf(readings, kept))
    for (const a of group)
      for (const b of group)
        errors[kept.indexOf(a) * size + kept.indexOf(b)]! += Math.sqrt(
          lines.shared[a]! * lines.shared[b]!,
        );
  return errors;
}

/** Standard normals in the same rows become draws of the distribution, a little wider than it is. */
export function drawnFrom({ mean, root }: Normal, normals: Float64Array): Float64Array {
  const size = mean.length;
  const drawn = new Float64Array(normals.length);
  for (let row = 0; row < normals.length / size; row += 1)
    for (let a = 0; a < size; a += 1) {
      let value = mean[a]!;
      for (let b = 0; b <= a; b += 1) value += root[a * size + b]! * normals[row * size + b]!;
      drawn[row * size + a] = value;
    }
  return drawn;
}

export const widened = ({ mean, root }: Normal, by: number): Normal => ({
  mean,
  root: root.map((value) => value * by),
});

export interface Draw {
  count: number;
  from: Normal;
}

/** For each member the logarithm of prior over the mixture that all members were drawn from. */
export function logRatios(normals: Float64Array, draws: readonly Draw[]): Float64Array {
  const count = normals.length / unknownCount;
  const ratios = new Float64Array(count);
  for (let member = 0; member < count; member += 1) {
    const prior = logDensity(standard, normals, member * unknownCount);
    const logs = draws.map(
      ({ count: drawn, from }) =>
        Math.log(drawn / count) + logDensity(from, normals, member * unknownCount),
    );
    const top = Math.max(...logs);
    let sum = 0;
    for (const log of logs) sum += Math.exp(log - top);
    ratios[member] = prior - top - Math.log(sum);
  }
  return ratios;
}

export const standard: Normal = {
  mean: new Float64Array(unknownCount),
  root: Float64Array.from({ length: unknownCount * unknownCount }, (_, i) =>
    i % (unknownCount + 1) === 0 ? 1 : 0,
  ),
};
