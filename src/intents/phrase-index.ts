/**
 * Which phrases a line can hold at all: every phrase stands under the words of the set that it can least
 * do without, so that a line is compared with the few phrases its own words bring up and not with all.
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
    const wordless: number[] = [];
    for (const [at, { phrase }] of this.entries.entries()) {
      const [least] = phrase.pattern.needs;
      if (least === undefined) wordless.push(at);
      for (const word of least ?? []) {
        const known = this.byWord.get(word);
        if (known) known.push(at);
        else this.byWord.set(word, [at]);
      }
    }
    this.wordless = wordless;
  }

  /** The phrases that a line of these words may hold in this mood, in the order in which they are tried. */
  candidates(mood: Mood, words: ReadonlySet<string>): Phrase[] {
    const places = new Set(this.wordless);
    for (const word of words) for (const at of this.byWord.get(word) ?? []) places.add(at);
    return [...places]
      .sort((a, b) => a - b)
      .map((at) => this.entries[at]!)
      .filter(({ phrase, moods }) => moods.includes(mood) && mayMatch(phrase.pattern, words))
      .map(({ phrase }) => phrase);
  }
}
