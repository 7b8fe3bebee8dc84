/**
 * The language in which phrases are written, and its translation to regular expressions.
 *
 *   words            stand for themselves          (a|b c)  one of them
 *   [a|b]            or nothing                    @name    a list of words named in the vocabulary
 *   {slot:kind}      a quantity or some words      {kind}   the same, the slot named for its kind
 *   ^  $             a boundary of the clause      *        up to three words of any kind
 *
 * Every word ends with one blank in the text matched, so no two parts of a pattern can share a
 * character: matching cannot backtrack badly.
 */

const kinds: Record<string, string> = {
  temperature: '<[tn]\\d+> ',
  degrees: '<t\\d+> ',
  number: '<n\\d+> ',
  duration: '<d\\d+> ',
  minutes: '<[dn]\\d+> ',
  clock: '<[cn]\\d+> ',
  face: '<c\\d+> ',
  weight: '<w\\d+> ',
  gas: '<g\\d+> ',
  date: '<y\\d+> ',
  any: '<[a-z]\\d+> ',
  thing: '(?:[^ |,?.!;]+ ){1,6}?',
  word: '[^ |,?.!;<]+ ',
  rest: '(?:[^ |]+ ){1,9}',
};

export type Vocabulary = Record<string, string>;

const marks = /\{[^}]+\}|@[a-z-]+|[()[\]|^$*]|[^\s()[\]|{}^$*@]+/g;

/** Throws on a phrase that is itself misspelt: that is a mistake in this program. */
export function patternOf(phrase: string, vocabulary: Vocabulary): RegExp {
  const body = sourceOf(phrase, vocabulary, 0);
  return new RegExp(`(?<![^ ])(?:${body})`, 'dg');
}

function sourceOf(phrase: string, vocabulary: Vocabulary, depth: number): string {
  if (depth > 6) throw new Error(`the vocabulary goes round in circles at: ${phrase}`);
  let source = '';
  for (const [mark] of phrase.matchAll(marks)) {
    if (mark === '(' || mark === '[') source += '(?:';
    else if (mark === ')') source += ')';
    else if (mark === ']') source += ')?';
    else if (mark === '|') source += '|';
    else if (mark === '^') source += '(?:(?<=^|[|,] ))';
    else if (mark === '$') source += '(?=$|[|,] )';
    else if (mark === '*') source += '(?:[^ |,]+ ){0,3}?';
    else if (mark.startsWith('@')) {
      const list = vocabulary[mark.slice(1)];
      if (list === undefined) throw new Error(`no words are named ${mark} in: ${phrase}`);
      source += `(?:${sourceOf(list, vocabulary, depth + 1)})`;
    } else if (mark.startsWith('{')) {
      const [slot = '', kind = slot] = mark.slice(1, -1).split(':');
      const shape = kinds[kind];
      if (shape === undefined) throw new Error(`no slot of kind ${kind} in: ${phrase}`);
      source += `(?<${slot}>${shape})`;
    } else source += `${mark.replaceAll(/[.*+?\\/]/g, '\\$&')} `;
  }
  return source;
}
