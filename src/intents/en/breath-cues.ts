/**
 * The cues by which a new sentence is expected between two words of speech without stops: the words on
 * either side by their stems and kinds, alone and together. What they mean is not asked here.
 */
import type { Match } from '../recogniser.ts';
import { type IsKnown, kindOfWordIn } from './opinion-cues.ts';
import { wordKinds } from './word-kinds.ts';

/** Words on one side of a gap, the nearest first; '^' and '$' where the text ends. */
type Side = readonly [string, string, string];

/** What speaks for or against a stop before each word of a line but the first; one list a gap. */
export function breathCues(match: Match, words: readonly string[], isKnown: IsKnown): string[][] {
  const kinds = words.map((word) => kindOfWordIn(word, match, isKnown));
  const at = (index: number): string => kinds[index] ?? (index < 0 ? '^' : '$');
  return words.slice(1).map((_, gap) => {
    const before: Side = [at(gap), at(gap - 1), at(gap - 2)];
    const after: Side = [at(gap + 1), at(gap + 2), at(gap + 3)];
    const cues = [
      'always',
      `${before[0]}|`,
      `${before[1]}_${before[0]}|`,
      `${before[2]}_${before[1]}_${before[0]}|`,
      `|${after[0]}`,
      `|${after[0]}_${after[1]}`,
      `|${after[0]}_${after[1]}_${after[2]}`,
      `${before[0]}|${after[0]}`,
      `${before[1]}_${before[0]}|${after[0]}`,
      `${before[0]}|${after[0]}_${after[1]}`,
      `#before${Math.min(4, gap + 1)}`,
      `#after${Math.min(4, words.length - gap - 1)}`,
    ];
    for (const like of wordKinds.get(words[gap]!) ?? []) cues.push(`@${like}|`);
    for (const like of wordKinds.get(words[gap + 1]!) ?? []) cues.push(`|@${like}`);
    return cues;
  });
}
