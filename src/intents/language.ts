/** What a language has to give so that a text in it can be read. A second language is a second folder. */
import type { ReadContext } from '../kitchen/heard.ts';
import type { CalendarNow } from './calendar.ts';
import type { Clause } from './clause.ts';
import type { Quantity } from './quantity.ts';
import type { Meaning, Recogniser } from './recogniser.ts';
import type { Token } from './token.ts';

export interface Language {
  /** Settles spellings, drops sounds without meaning, marks quantities, carries out self-corrections. */
  prepare(tokens: readonly Token[], now: CalendarNow): { tokens: Token[]; quantities: Quantity[] };
  /** Tried on the whole text first, across commas and joining words; in this order. */
  across: readonly Recogniser[];
  /** Cuts what is left into clauses, each with its mood. */
  clausesOf(tokens: readonly Token[], context: ReadContext): Clause[];
  /** Tried on every clause, in this order. */
  within: readonly Recogniser[];
  /** A clause that asks for something, without "can you" or "could we". */
  withoutAsking(tokens: readonly Token[]): Token[];
  /** Merges, drops and completes what was heard, in this order. */
  refiners: readonly Refiner[];
  /** What a text is when nothing was heard in it: not for the helper, or not understood. */
  leftOver(line: string, quantities: readonly Quantity[], context: ReadContext): Meaning;
}

/** Something heard, with where it stands in the prepared tokens. */
export interface Placed {
  meaning: Meaning;
  tokens: readonly Token[];
}

export type Refiner = (heard: readonly Placed[], context: ReadContext) => Placed[];
