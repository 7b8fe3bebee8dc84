/** What is believed of one roast at the last evidence: members, weights, and which readings to doubt. */
import {
  type ForecastQuestion,
  type KitchenBelief,
  type OvenSetting,
  usualKitchen,
} from '../../kitchen/forecast.ts';
import { type Suspect, suspectsAmong } from './doubt.ts';
import { type Ensemble, ensembleOf, followed, type Population } from './ensemble.ts';
import { type Posterior, weigh } from './evidence.ts';
import {
  type Draw,
  drawnFrom,
  type Evidence,
  logRatios,
  normalGiven,
  readingLines,
  standard,
  widened,
} from './near.ts';
import { drawNormals } from './prior.ts';
import { thinned } from './thin.ts';
import { meanAndDeviation } from './weighted.ts';

export interface Belief {
  question: ForecastQuestion;
  ensemble: Ensemble;
  /** One for each member, adding up to one. */
  weights: Float64Array;
  /** The minute of the last reading that counts; the members' paces differ from then on. */
  evidenceMinute: number;
  kept: readonly number[];
  suspects: readonly Suspect[];
  learnt: KitchenBelief;
  effectiveMembers: number;
}

/** New members near the readings, for each drawn from the prior; no fewer than so many. */
const nearShare = 0.6;
const fewestNear = 32;
/** Rounds of them: another where the last has left fewer members that count than this. */
const enough = [0.4, 0.3, 0.12] as const;
/** Fewer give no band. */
const fewestThatCount = 6;
/** How much wider than the normal distribution by the lines the new members lie. */
const widening = 1.1;

/** Weighs the ensemble of the question by its readings. Pure: the same question, the same belief. */
export function believe(asked: ForecastQuestion): Belief {
  const question = { ...asked, oven: ovenInOrder(asked.oven) };
  const prior = ensembleOf(question);
  const { readings } = question;
  const weighed = thinned(readings);
  const usual = (question.kitchen ?? usualKitchen).thermometerOffsetKelvin;
  const offset = { mean: usual.mean, deviation: Math.max(0.05, usual.deviation) };
  const even = new Float64Array(prior.tracks.length).fill(1 / prior.tracks.length);
  const suspects =
    readings.length === 0
      ? []
      : suspectsAmong({
          lines: readingLines(prior, even, { readings, offset }),
          readings,
          weighed,
          offset,
        });
  const doubted = new Set(suspects.map((suspect) => suspect.index));
  const kept = weighed.filter((index) => !doubted.has(index));
  const { population, posterior } = near(question, prior, { readings, kept, offset });
  // Where nothing fits, one member alone would make a band of no width.
  const weights = flattened(posterior.weights, fewestThatCount);
  return {
    question,
    ensemble: { ...population, size: prior.size },
    weights,
    evidenceMinute: Math.max(0, ...kept.map((index) => readings[index]!.minute)),
    kept,
    suspects,
    learnt: {
      ovenBiasKelvin: meanAndDeviation(
        population.members.map((member) => member.oven.biasKelvin),
        weights,
      ),
      thermometerOffsetKelvin: posterior.offsetKelvin,
    },
    effectiveMembers: effective(weights),
  };
}

/** The prior's members and, once there are readings, others drawn near what these say. */
function near(
  question: ForecastQuestion,
  prior: Ensemble,
  evidence: Evidence,
): { population: Population; posterior: Posterior } {
  const { readings, kept, offset } = evidence;
  const draws: Draw[] = [{ count: prior.tracks.length, from: standard }];
  let population: Population = prior;
  let posterior = weigh(prior.tracks, readings, kept, offset);
  if (kept.length === 0) return { population, posterior };
  const count = Math.max(fewestNear, Math.round(nearShare * prior.tracks.length));
  for (let round = 0; round < enough.length; round += 1) {
    if (posterior.effectiveMembers > enough[round]! * count) break;
    const lines = readingLines(population, tempered(posterior.weights), evidence);
    const from = widened(normalGiven(lines, evidence), widening);
    const rows = drawNormals(count, question.seed + 1 + round);
    const drawn = followed(question, prior.size, drawnFrom(from, rows));
    draws.push({ count, from });
    population = joined(population, drawn);
    const ratios = logRatios(population.normals, draws);
    posterior = weigh(population.tracks, readings, kept, offset, ratios);
  }
  return { population, posterior };
}

const joined = (one: Population, other: Population): Population => {
  const normals = new Float64Array(one.normals.length + other.normals.length);
  normals.set(one.normals);
  normals.set(other.normals, one.normals.length);
  return {
    members: [...one.members, ...other.members],
    normals,
    tracks: [...one.tracks, ...other.tracks],
  };
};

/** Weights flattened until enough members count for a line through the unknowns. */
const tempered = (weights: Float64Array): Float64Array =>
  flattened(weights, Math.min(90, 0.3 * weights.length));

function flattened(weights: Float64Array, fewest: number): Float64Array {
  let flat = weights;
  for (let power = 0.5; power > 0.01; power /= 2) {
    if (effective(flat) >= fewest) break;
    flat = weights.map((weight) => weight ** power);
  }
  return flat;
}

function effective(weights: Float64Array): number {
  let sum = 0;
  let square = 0;
  for (const weight of weights) {
    sum += weight;
    square += weight * weight;
  }
  return (sum * sum) / square;
}

/** By minute, with what was set before the roast went in left out but for the last of it. */
export function ovenInOrder(oven: readonly OvenSetting[]): OvenSetting[] {
  const sorted = oven.toSorted((a, b) => a.minute - b.minute);
  const before = sorted.findLastIndex((setting) => setting.minute <= 0);
  return sorted.slice(Math.max(0, before));
}
