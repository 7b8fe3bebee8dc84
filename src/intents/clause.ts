/**
 * Clauses: stretches of a text that are read by themselves, each with the mood it is said in. What is
 * asked, denied, planned or told of another day is no report of what has just happened.
 */
import type { Quantity } from './quantity.ts';
import type { Token } from './token.ts';

export const moods = [
  /** "it reads 104", "dinner at seven" */
  'statement',
  /** "can you set a timer", "could we push dinner back" */
  'request',
  /** "what's next", "is 104 too low" */
  'question',
  /** "it's not done", "don't put them in yet" */
  'negative',
  /** "I'll turn it down in a minute" */
  'intention',
  /** "it was 104 last year", "if it reads 110", "he says it's out" */
  'story',
] as const;
export type Mood = (typeof moods)[number];

export interface Clause {
  tokens: Token[];
  mood: Mood;
  /** How long ago, where the clause says so; the words that say it are no longer among its tokens. */
  minutesAgo?: number | undefined;
  /** The hour at which it happened, likewise. */
  at?: Quantity | undefined;
}

/** A clause as the phrases see it: every word followed by one blank. */
export function lineOf(tokens: readonly Token[]): string {
  let line = '';
  for (const { word } of tokens) line += `${word} `;
  return line;
}

/** What every clause of one text shares. */
export interface Utterance {
  text: string;
  quantities: readonly Quantity[];
}
