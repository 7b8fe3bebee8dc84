/** What a language has to give so that a text in it can be read. A second language is a second folder. */
import type { ReadContext } from '../kitchen/heard.ts';
import type { Said } from './addressed.ts';
import type { Clause, Mood } from './clause.ts';
import type { Rescoring } from './hypothesis.ts';
import type { Opinion } from './opinion.ts';
import type { Placed } from './placed.ts';
import type { Quantity } from './quantity.ts';
import type { Frame, Match, Meaning, Recogniser } from './recogniser.ts';
import type { Token } from './token.ts';

export interface Language {
  /** Settles spellings, drops sounds without meaning, marks quantities, carries out self-corrections. */
  prepare(
    tokens: readonly Token[],
    context: ReadContext,
  ): { tokens: Token[]; quantities: Quantity[] };
  /** Tried on the whole text first, across commas and joining words; in this order. */
  across: readonly Recogniser[];
  /** Cuts what is left into clauses, each with its mood. */
  clausesOf(
    tokens: readonly Token[],
    quantities: readonly Quantity[],
    context: ReadContext,
  ): Clause[];
  /** Tried on every clause, in this order. */
  within: readonly Recogniser[];
  /** Tried, in this order, on a clause in which no phrase was found. */
  frames: readonly Frame[];
  /** Whether what was heard in a clause can be meant for the helper, and not for others near by. */
  isForHelper(placed: Placed, whole: string, context: ReadContext): boolean;
  /** Which intents the words of a clause speak for, the likeliest first; none where nothing was learnt. */
  opinionsOf(match: Match): readonly Opinion[];
  /** What a clause means after all, by that; undefined leaves what was found in it as it is. */
  overruled(
    match: Match,
    found: readonly Placed[],
    opinions: readonly Opinion[],
    /** How the clause is meant, and of how many clauses the text is made. */
    told: { mood: Mood; clauses: number },
  ): readonly Meaning[] | undefined;
  /** What of a text may be acted on, by how likely the text as a whole is meant for the helper. */
  addressed(said: Said): readonly Placed[];
  /** A clause that asks for something, without "can you" or "could we". */
  withoutAsking(tokens: readonly Token[]): Token[];
  /** Merges, drops and completes what was heard, in this order. */
  refiners: readonly Refiner[];
  /** How a text may be heard otherwise; a language without it is heard as it stands. */
  rescoring?: Rescoring;
  /** What a text is when nothing was heard in it: not for the helper, or not understood. */
  leftOver(said: Said): Meaning;
}

/** `whole` is the whole text as phrases see it. */
export type Refiner = (heard: readonly Placed[], context: ReadContext, whole: string) => Placed[];
