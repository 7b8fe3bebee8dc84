/**
 * Which phrases a line can hold at all: every phrase stands under the words of the set that fewest other
 * phrases ask for, so that a line is compared with the few phrases its own words bring up and not with all.
 */
import type { Mood } from './clause.ts';
import { mayMatch } from './phrase.ts';
import type { Phrase, Recogniser } from './recogniser.ts';

interface Entry {
  phrase: Phrase;
  moods: readonly Mood[];
}

export class PhraseIndex {
  private readonly entries: readonly Entry[];
  private readonly byWord = new Map<string, number[]>();
  /** Phrases of slots and boundaries alone: any line may hold them. */
  private readonly wordless: readonly number[];

  constructor(recognisers: readonly Recogniser[]) {
    this.entries = recognisers.flatMap(({ moods, phrases }) =>
      phrases.map((phrase) => ({ phrase, moods })),
    );
    const asked = askedFor(this.entries);
    const wordless: number[] = [];
    for (const [at, { phrase }] of this.entries.entries()) {
      const rarest = rarestOf(phrase, asked);
      if (rarest === undefined) wordless.push(at);
      for (const word of rarest ?? []) {
        const known = this.byWord.get(word);
        if (known) known.push(at);
        else this.byWord.set(word, [at]);
      }
    }
    this.wordless = wordless;
  }

  /** The phrases that a line of these words may hold in this mood, in the order in which they are tried. */
  candidates(mood: Mood, words: ReadonlySet<string>): Phrase[] {
    const places: number[] = [];
    const keep = (at: number): void => {
      const { phrase, moods } = this.entries[at]!;
      if (moods.includes(mood) && mayMatch(phrase.pattern, words)) places.push(at);
    };
    this.wordless.forEach(keep);
    for (const word of words) this.byWord.get(word)?.forEach(keep);
    places.sort((a, b) => a - b);
    // A phrase stands under several words, and a line may hold more than one of them.
    return places
      .filter((place, at) => place !== places[at - 1])
      .map((place) => this.entries[place]!.phrase);
  }
}

/** How many phrases ask for each word: what many ask for is said often and tells little. */
function askedFor(entries: readonly Entry[]): Map<string, number> {
  const asked = new Map<string, number>();
  for (const { phrase } of entries)
    for (const need of phrase.pattern.needs)
      for (const word of need) asked.set(word, (asked.get(word) ?? 0) + 1);
  return asked;
}

/** The set of words that a phrase can least do without; undefined if it needs none. */
function rarestOf(
  { pattern }: Phrase,
  asked: ReadonlyMap<string, number>,
): ReadonlySet<string> | undefined {
  const weight = (need: ReadonlySet<string>): number =>
    [...need].reduce((sum, word) => sum + asked.get(word)!, 0);
  return [...pattern.needs].sort((a, b) => weight(a) - weight(b))[0];
}
