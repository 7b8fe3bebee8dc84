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
