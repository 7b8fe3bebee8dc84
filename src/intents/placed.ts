/** Something heard, with where it stands; what the steps of reading hand on. */
import type { Clause } from './clause.ts';
import type { Meaning } from './recogniser.ts';
import type { Token } from './token.ts';

/** Something heard, with where it stands in the prepared tokens. */
export interface Placed {
  meaning: Meaning;
  tokens: readonly Token[];
  /** The clause it was heard in; undefined where a phrase reached over clauses. */
  clause?: Clause | undefined;
  /** Found by a frame, of the clause as a whole: no phrase vouches for its words. */
  framed?: boolean | undefined;
  /** Named by the second opinion alone, where nothing was found. */
  guessed?: boolean | undefined;
  /** How likely a second opinion holds its intent to be what its clause says. */
  likelihood?: number | undefined;
}

/** Found by a phrase, which vouches for its words. */
export const isFound = ({ framed, guessed }: Placed): boolean => !framed && !guessed;

/** By what it was found tells how far it may be trusted. */
export const howFound = ({ framed, guessed }: Placed): string =>
  guessed ? 'guess' : framed ? 'frame' : 'phrase';

/** Heard, these ask for no deed and no answer. */
export const asksNothing = ({ meaning: { intent } }: Placed): boolean =>
  /^(unrelated|unclear|courtesy|acknowledge)$/.test(intent);

/** What was found is nobody's word to the helper: no answer is owed, not even that it was not understood. */
export const talk: readonly Placed[] = [{ meaning: { intent: 'unrelated' }, tokens: [] }];

const startOf = (placed: Placed): number => placed.tokens[0]?.from ?? 0;
/** In the order of speech. */
export const inOrder = (placed: readonly Placed[]): Placed[] =>
  [...placed].sort((a, b) => startOf(a) - startOf(b));
