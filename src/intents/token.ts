/**
 * Tokens: the words of a text with the place each came from, so that what was understood can be
 * shown in the cook's own words. Knows letters and digits, no language.
 */

export interface Token {
  /** Lower case; a mark such as "," or "?"; or the mark of a quantity such as "<n0>". */
  word: string;
  /** Where in the original text it began and ended. */
  from: number;
  to: number;
}

/** A mark between sentences or parts of one, or the gap that a phrase left. */
export const isStop = (word: string): boolean => /^[,.?!;:|]$/.test(word);

// A letter written onto a number names a thing, such as a road, and counts nothing.
const shape =
  /(?<![\p{L}\p{N}])\p{L}\d{1,3}(?![\p{L}\p{N}]|[.,:]\d)|\d+(?:[.,:]\d+)*|[⅛¼⅓⅜½⅝⅔¾⅞]|[\p{L}\p{M}]+(?:['’ʼ][\p{L}]+)*['’]?|[.,;:!?…–—/%#°+-]|[°℉℃]|\S/gu;

/** Splits a text; control characters, emoji and marks of direction are left out. */
export function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  for (const match of text.matchAll(shape)) {
    const word = match[0].toLowerCase().replaceAll(/[’ʼ]/g, "'");
    if (!/[\p{L}\p{N}.,;:!?…–—/%#°℉℃+-]/u.test(word)) continue;
    tokens.push({ word, from: match.index, to: match.index + match[0].length });
  }
  return tokens;
}

/** The stretch of the original text that some tokens cover. */
export function wordsBetween(text: string, tokens: readonly Token[]): string {
  const first = tokens[0];
  const last = tokens.at(-1);
  if (!first || !last) return '';
  return text.slice(
    Math.min(...tokens.map((token) => token.from)),
    Math.max(...tokens.map((token) => token.to)),
  );
}
