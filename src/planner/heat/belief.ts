/** What is believed of one roast at the last evidence: members, weights, and which readings to doubt. */
import type { ForecastQuestion, KitchenBelief, OvenSetting } from '../../kitchen/forecast.ts';
import { type Suspect, suspectsAmong } from './doubt.ts';
import { type Ensemble, ensembleOf } from './ensemble.ts';
import { weigh } from './evidence.ts';
import { usualKitchen } from './prior.ts';
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

/** Weighs the ensemble of the question by its readings. Pure: the same question, the same belief. */
export function believe(asked: ForecastQuestion): Belief {
  const question = { ...asked, oven: ovenInOrder(asked.oven) };
  const ensemble = ensembleOf(question);
  const { readings } = question;
  const offset = (question.kitchen ?? usualKitchen).thermometerOffsetKelvin;
  const safeOffset = { mean: offset.mean, deviation: Math.max(0.05, offset.deviation) };
  const suspects = suspectsAmong({ tracks: ensemble.tracks, readings, offset: safeOffset });
  const doubted = new Set(suspects.map((suspect) => suspect.index));
  const kept = readings.map((_, index) => index).filter((index) => !doubted.has(index));
  const posterior = weigh(ensemble.tracks, readings, kept, safeOffset);
  return {
    question,
    ensemble,
    weights: posterior.weights,
    evidenceMinute: Math.max(0, ...kept.map((index) => readings[index]!.minute)),
    kept,
    suspects,
    learnt: {
      ovenBiasKelvin: meanAndDeviation(
        ensemble.members.map((member) => member.oven.biasKelvin),
        posterior.weights,
      ),
      thermometerOffsetKelvin: posterior.offsetKelvin,
    },
    effectiveMembers: posterior.effectiveMembers,
  };
}

/** By minute, with what was set before the roast went in left out but for the last of it. */
export function ovenInOrder(oven: readonly OvenSetting[]): OvenSetting[] {
  const sorted = oven.toSorted((a, b) => a.minute - b.minute);
  const before = sorted.findLastIndex((setting) => setting.minute <= 0);
  return sorted.slice(Math.max(0, before));
}
