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
  clause: '(?:[^ |,]+ ){1,24}',
  whole: '(?:[^ |]+ ){1,30}',
};

export type Vocabulary = Record<string, string>;

/** A compiled phrase: tried only on lines that hold a word of every set it cannot do without. */
export interface Pattern {
  regex(): RegExp;
  needs: readonly ReadonlySet<string>[];
  /** The words that stand for themselves in it. */
  words: ReadonlySet<string>;
}

const marks = /\{[^}]+\}|@[a-z-]+|[()[\]|^$*]|[^\s()[\]|{}^$*@]+/g;

/** A part of a phrase: its regular expression, and the words of which a match must hold one. */
interface Part {
  source: string;
  /** Undefined where a match may do without any particular word. */
  need: ReadonlySet<string> | undefined;
}

/** Throws on a phrase that is itself misspelt: that is a mistake in this program. */
export function patternOf(phrase: string, vocabulary: Vocabulary): Pattern {
  const words = new Set<string>();
  const parser = new Parser(phrase, vocabulary, words, 0);
  const { parts } = parser.alternatives(undefined);
  const source = `(?<![^ ])(?:${parts.map((sequence) => sequence.map((part) => part.source).join('')).join('|')})`;
  let compiled: RegExp | undefined;
  const needs =
    parts.length === 1
      ? parts[0]!.flatMap((part) => (part.need ? [part.need] : []))
      : [eitherOf(parts)].filter((need) => need !== undefined);
  return {
    // Most phrases are never tried on most texts: the expression is made when it is first needed.
    regex: () => {
      compiled ??= new RegExp(source, 'g');
      return compiled;
    },
    // What fewest words meet is asked first: it most often settles that a pattern cannot match.
    needs: needs.toSorted((a, b) => a.size - b.size),
    words,
  };
}

/** What alternatives need: a word of any of them, if each of them needs one. */
function eitherOf(parts: readonly Part[][]): ReadonlySet<string> | undefined {
  const either = new Set<string>();
  for (const sequence of parts) {
    const needs = sequence.flatMap((part) => (part.need ? [part.need] : []));
    const least = needs.sort((a, b) => a.size - b.size)[0];
    if (!least) return undefined;
    for (const word of least) either.add(word);
  }
  return either;
}

class Parser {
  private readonly tokens: string[];
  private at = 0;
  private readonly phrase: string;
  private readonly vocabulary: Vocabulary;
  private readonly words: Set<string>;
  private readonly depth: number;

  constructor(phrase: string, vocabulary: Vocabulary, words: Set<string>, depth: number) {
    if (depth > 6) throw new Error(`the vocabulary goes round in circles at: ${phrase}`);
    this.phrase = phrase;
    this.vocabulary = vocabulary;
    this.words = words;
    this.depth = depth;
    this.tokens = [...phrase.matchAll(marks)].map(([mark]) => mark);
  }

  /** Sequences parted by "|", up to what closes them. */
  alternatives(close: string | undefined): { parts: Part[][] } {
    const parts: Part[][] = [[]];
    for (;;) {
      const mark = this.tokens[this.at];
      if (mark === undefined) {
        if (close !== undefined) throw new Error(`a bracket is never closed in: ${this.phrase}`);
        return { parts };
      }
      this.at += 1;
      if (mark === close) return { parts };
      if (mark === ')' || mark === ']')
        throw new Error(`a bracket closes too soon in: ${this.phrase}`);
      if (mark === '|') parts.push([]);
      else parts.at(-1)!.push(this.part(mark));
    }
  }

  private part(mark: string): Part {
    if (mark === '(' || mark === '[') {
      const { parts } = this.alternatives(mark === '(' ? ')' : ']');
      const body = parts.map((sequence) => sequence.map((part) => part.source).join('')).join('|');
      return mark === '('
        ? { source: `(?:${body})`, need: eitherOf(parts) }
        : { source: `(?:${body})?`, need: undefined };
    }
    if (mark === '^') return { source: '(?:(?<=^|[|,.?!] ))', need: undefined };
    if (mark === '$') return { source: '(?=$|[|,.?!] )', need: undefined };
    if (mark === '*') return { source: '(?:[^ |,]+ ){0,3}?', need: undefined };
    if (mark.startsWith('@')) return this.listed(mark);
    if (mark.startsWith('{')) return this.slot(mark);
    this.words.add(mark);
    return { source: `${mark.replaceAll(/[.*+?\\/]/g, '\\$&')} `, need: new Set([mark]) };
  }

  private listed(mark: string): Part {
    const list = this.vocabulary[mark.slice(1)];
    if (list === undefined) throw new Error(`no words are named ${mark} in: ${this.phrase}`);
    const inner = new Parser(list, this.vocabulary, this.words, this.depth + 1);
    const { parts } = inner.alternatives(undefined);
    const body = parts.map((sequence) => sequence.map((part) => part.source).join('')).join('|');
    return { source: `(?:${body})`, need: eitherOf(parts) };
  }

  private slot(mark: string): Part {
    const [slot = '', kind = slot] = mark.slice(1, -1).split(':');
    const shape = kinds[kind];
    if (shape === undefined) throw new Error(`no slot of kind ${kind} in: ${this.phrase}`);
    const letters = /^<\[?([a-z]+)\]?\\d/.exec(shape)?.[1];
    return {
      source: `(?<${slot}>${shape})`,
      need:
        letters === undefined ? undefined : new Set([...letters].map((letter) => `<${letter}>`)),
    };
  }
}

const markShape = /^<[a-z]\d+>$/;

/** The words of a line, with marks of quantities by their letter: what `needs` is compared with. */
export function wordsOfLine(line: string): Set<string> {
  const words = new Set<string>();
  for (const word of line.split(' '))
    words.add(word.startsWith('<') && markShape.test(word) ? `<${word[1]}>` : word);
  return words;
}

/** Whether a line holds a word of each set; if not, the pattern cannot match it. */
export function mayMatch(pattern: Pattern, words: ReadonlySet<string>): boolean {
  return pattern.needs.every((need) => {
    if (need.size > words.size) {
      for (const word of words) if (need.has(word)) return true;
      return false;
    }
    for (const word of need) if (words.has(word)) return true;
    return false;
  });
}
