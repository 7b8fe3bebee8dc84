/** English heard in more than one way: where a sentence may begin, and what speaks for a way. */

import { type KindOfWord, likelihoodOf } from '../addressed.ts';
import type { Clause } from '../clause.ts';
import type { Hypothesis, Rescoring } from '../hypothesis.ts';
import { hypothesisCues } from '../hypothesis-cues.ts';
import type { Opinion } from '../opinion.ts';
import { breathCues } from './breath-cues.ts';
import { breathWeights } from './breath-weights.ts';
import { helperLikelihoodOf } from './gate.ts';
import { hypothesisWeights } from './hypothesis-weights.ts';
import { guessed } from './judge.ts';
import { knownStems } from './opinion-weights.ts';

/** Words that say little by themselves. */
const small =
  /^(the|a|an|and|so|of|to|it|is|are|i|we|you|that|this|my|our|in|on|at|for|just|now|then|well|oh|ok|yes|no|but|with|was|have|has|had|be|am|do|did|not|all|like|please|they|he|she|there|as|or|if|what|up|out)$/;
const isSmall = (word: string): boolean => small.test(word);

/** What speaks for a way to hear a text. */
export const cuesOfHypothesis = (kindOf: KindOfWord) => {
  const helperLikelihood = helperLikelihoodOf(kindOf);
  return (way: Hypothesis, opinionsOf: (clause: Clause) => readonly Opinion[]): string[] =>
    hypothesisCues(way, {
      opinionsOf,
      isSmall,
      forHelper: (placed) => helperLikelihood({ ...way.hearing.said, placed }),
    });
};

export const rescoringOf = (kindOf: KindOfWord): Rescoring => {
  const cuesFor = cuesOfHypothesis(kindOf);
  return {
    breathsOf: (match, words) =>
      breathCues(match, words, (stem) => knownStems.has(stem)).map((cues) =>
        likelihoodOf(cues, breathWeights),
      ),
    guessed,
    isSmall,
    worthOf: (way, opinionsOf) =>
      cuesFor(way, opinionsOf).reduce((sum, cue) => sum + (hypothesisWeights.get(cue) ?? 0), 0),
    head: 0.3,
  };
};
