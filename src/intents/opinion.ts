/**
 * A second opinion on what a text means, asked where no phrase and no frame found anything: every cue
 * of the text speaks for some intents and against others by weights learnt from labelled lines, and
 * the best supported intent wins. Pure and language-free; a language brings cues and weights.
 */
import type { Intent } from '../kitchen/heard.ts';

export interface OpinionWeights {
  intents: readonly Intent[];
  /**
   * What a cue adds to the score of each intent that it says anything about: an index of `intents` and a
   * weight by turns, in one flat array, as thousands of them are added up for every clause.
   */
  addedBy(cue: string): Float64Array | undefined;
}

export interface Opinion {
  intent: Intent;
  likelihood: number;
}

/** How likely each intent is meant, in the order of `weights.intents`. */
export function opinionOf(cues: readonly string[], weights: OpinionWeights): Opinion[] {
  const scores = new Float64Array(weights.intents.length);
  for (const cue of cues) {
    const added = weights.addedBy(cue);
    if (added === undefined) continue;
    for (let at = 0; at < added.length; at += 2)
      scores[added[at]!] = scores[added[at]!]! + added[at + 1]!;
  }
  const likelihoods = softmax(scores);
  return weights.intents.map((intent, at) => ({ intent, likelihood: likelihoods[at]! }));
}

/** Likelihoods that add up to one, by scores that may be of any size. */
export function softmax(scores: Float64Array): Float64Array {
  const high = Math.max(...scores);
  const raised = scores.map((score) => Math.exp(score - high));
  const sum = raised.reduce((all, one) => all + one, 0);
  return raised.map((one) => one / sum);
}

/** As little as either opinion may give what the other is sure of. */
const least = 1e-5;

/**
 * All intents by how likely they are meant, the likeliest first: the geometric mean of two opinions, or the one where the
 * other has none.
 */
export function agreed(
  one: readonly Opinion[],
  other: ((intent: Intent) => number) | undefined,
): readonly Opinion[] {
  if (other === undefined) return byLikelihood(one);
  const together = one.map(({ intent, likelihood }) => ({
    intent,
    likelihood: Math.sqrt((likelihood + least) * (other(intent) + least)),
  }));
  const sum = together.reduce((all, { likelihood }) => all + likelihood, 0);
  for (const each of together) each.likelihood /= sum;
  return byLikelihood(together);
}

const byLikelihood = (opinions: readonly Opinion[]): Opinion[] =>
  [...opinions].sort((a, b) => b.likelihood - a.likelihood);

/**
 * Weights as they are written down: a cue, then "intent:tenths" joined by commas, and so on. A cue's are made
 * numbers when it is first met: few of the tens of thousands ever are, and nobody waits for them at the start.
 */
export function unpacked(intents: readonly Intent[], learnt: string): OpinionWeights {
  const byCue = new Map<string, string | Float64Array>();
  const parts = learnt.trim().split(/\s+/);
  for (let at = 0; at + 1 < parts.length; at += 2) byCue.set(parts[at]!, parts[at + 1]!);
  return {
    intents,
    addedBy(cue) {
      const known = byCue.get(cue);
      if (typeof known !== 'string') return known;
      const added = addedIn(known);
      byCue.set(cue, added);
      return added;
    },
  };
}

const addedIn = (written: string): Float64Array =>
  Float64Array.from(
    written.split(',').flatMap((pair) => {
      const [intent, tenths] = pair.split(':').map(Number);
      return [intent!, tenths! / 10];
    }),
  );
