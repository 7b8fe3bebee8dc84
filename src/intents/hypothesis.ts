/** One way to hear a text, and what a language brings to find and weigh others. Types alone. */
import type { Intent } from '../kitchen/heard.ts';
import type { Said } from './addressed.ts';
import type { Clause, Mood } from './clause.ts';
import type { Opinion } from './opinion.ts';
import type { Placed } from './placed.ts';
import type { Match, Meaning } from './recogniser.ts';

/** What was heard in a text, and what it was before it was merged, dropped and completed. */
export interface Hearing {
  said: Said;
  found: readonly Placed[];
}

/** How a way differs from the text as it stands; "open": though it may not be meant for the helper. */
export type Difference =
  | 'none'
  | 'open'
  | 'talk'
  | 'stop'
  | 'stop open'
  | 'whole guessed'
  | 'clause guessed'
  | 'stop, clause guessed'
  | 'less'
  | 'stop, less';

/** One way to hear a text. */
export interface Hypothesis {
  difference: Difference;
  hearing: Hearing;
  /** What would be acted on; nothing where it is talk. */
  placed: readonly Placed[];
  /** How likely a sentence begins where a stop was put; 1 where none was. */
  breath: number;
  /** What was left out. */
  without?: Placed | undefined;
  /** What would be acted on if the text were heard as it stands. */
  asItStands: readonly Placed[];
}

/** What a language brings to hear a text in more than one way. */
export interface Rescoring {
  /** How likely a new sentence begins before each word but the first, of words without stops. */
  breathsOf(match: Match, words: readonly string[]): number[];
  /** What an intent makes of a clause; undefined where it lacks what that intent needs, or may not be guessed. */
  guessed(intent: Intent, match: Match, mood: Mood): readonly Meaning[] | undefined;
  /** A word that says little by itself. */
  isSmall(word: string): boolean;
  /** What speaks for it, as a sum; the greatest wins. */
  worthOf(hypothesis: Hypothesis, opinionsOf: (clause: Clause) => readonly Opinion[]): number;
  /** What the text as it stands is worth more than any other way, being what the rules say. */
  head: number;
}
