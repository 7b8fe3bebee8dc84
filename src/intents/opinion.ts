/**
 * A second opinion on what a text means, asked where no phrase and no frame found anything: every cue
 * of the text speaks for some intents and against others by weights learnt from labelled lines, and
 * the best supported intent wins. Pure and language-free; a language brings cues and weights.
 */
import type { Intent } from '../kitchen/heard.ts';

/**
 * For each cue, what it adds to the score of each intent that it says anything about: an index of
 * `intents` and a weight by turns, in one flat array, as thousands of them are added up for every clause.
 */
export interface OpinionWeights {
  intents: readonly Intent[];
  byCue: ReadonlyMap<string, Float64Array>;
}

export interface Opinion {
  intent: Intent;
  likelihood: number;
}

/** All intents by how likely they are meant, the likeliest first. */
export function opinionsOf(cues: readonly string[], weights: OpinionWeights): Opinion[] {
  const scores = new Float64Array(weights.intents.length);
  for (const cue of cues) {
    const added = weights.byCue.get(cue);
    if (added === undefined) continue;
    for (let at = 0; at < added.length; at += 2)
      scores[added[at]!] = scores[added[at]!]! + added[at + 1]!;
  }
  const high = Math.max(...scores);
  const raised = scores.map((score) => Math.exp(score - high));
  const sum = raised.reduce((all, one) => all + one, 0);
  return weights.intents
    .map((intent, at) => ({ intent, likelihood: raised[at]! / sum }))
    .sort((a, b) => b.likelihood - a.likelihood);
}

/** Weights as they are written down: a cue, then "intent:tenths" joined by commas, and so on. */
export function unpacked(intents: readonly Intent[], learnt: string): OpinionWeights {
  const byCue = new Map<string, Float64Array>();
  const parts = learnt.trim().split(/\s+/);
  for (let at = 0; at + 1 < parts.length; at += 2)
    byCue.set(
      parts[at]!,
      Float64Array.from(
        parts[at + 1]!.split(',').flatMap((pair) => {
          const [intent, tenths] = pair.split(':').map(Number);
          return [intent!, tenths! / 10];
        }),
      ),
    );
  return { intents, byCue };
}
