/**
 * "The carrots, the beans and the mash are all done": what is told of several dishes at once is told of
 * each, so that every one stands in a clause of its own.
 */
import type { ReadContext } from '../../kitchen/heard.ts';
import { lineOf } from '../clause.ts';
import type { Token } from '../token.ts';
import { dishExactlyIn, longestNameAt } from './steps.ts';

/** With fewer than three an "and" between the names keeps them together anyway. */
const namesLow = 3;
const article = /^(the|my|our|those|these)$/;
/** What can be told of dishes; the list of names itself may be taken up by a pronoun. */
const verb =
  /^(?:(?:that|those|these|they|which) (?:is|are) |all |both |(?:are|is|have|has|went|were) )/;
const ends = /^([,.?!|]|and|but|so|then|because|while)$/;

/** What may be told of a dish is none of its name. */
const notInAName = /^(is|are|was|were|has|have|went|been|not|made|the|my|in|out|on|off|done)$/;

interface Named {
  words: readonly Token[];
  /** Where the next word stands. */
  next: number;
}

/** The dish that is named from here on, by as many words as name one. */
function namedFrom(tokens: readonly Token[], at: number, context: ReadContext): Named | undefined {
  const start = article.test(tokens[at]?.word ?? '') ? at + 1 : at;
  const next = longestNameAt(
    tokens,
    start,
    (words) =>
      words.every((word) => /^[a-z-]+$/.test(word) && !notInAName.test(word)) &&
      dishExactlyIn(words.join(' '), context) !== undefined,
  );
  return next === undefined ? undefined : { words: tokens.slice(at, next), next };
}

/** The names that follow each other from here, parted by commas, an "and" or nothing at all. */
function listFrom(tokens: readonly Token[], at: number, context: ReadContext): Named[] {
  const names: Named[] = [];
  let next = at;
  for (;;) {
    const one = namedFrom(tokens, next, context);
    if (!one) return names;
    names.push(one);
    next = one.next;
    while (/^(,|and|plus)$/.test(tokens[next]?.word ?? '')) next += 1;
  }
}

export function verbToEach(tokens: readonly Token[], context: ReadContext): Token[] {
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const begins = at === 0 || ends.test(tokens[at - 1]!.word);
    const names = begins ? listFrom(tokens, at, context) : [];
    const start = names.at(-1)?.next ?? at;
    const told = tokens.slice(start, start + 8);
    const stop = told.findIndex(({ word }) => ends.test(word) || article.test(word));
    const predicate = stop < 0 ? told : told.slice(0, stop);
    if (names.length < namesLow || !verb.test(lineOf(predicate))) {
      out.push(tokens[at]!);
      continue;
    }
    const taken = /^(that|those|these|they|which)$/.test(predicate[0]!.word) ? 1 : 0;
    for (const [index, { words }] of names.entries())
      out.push(
        ...(index > 0 ? [{ ...words[0]!, word: ',' }] : []),
        ...words,
        ...predicate.slice(taken),
      );
    at = start + predicate.length - 1;
    // "the mash that is all ready the puddings not": what follows is another matter.
    if (article.test(tokens[at + 1]?.word ?? '')) out.push({ ...tokens[at + 1]!, word: ',' });
  }
  return out;
}
