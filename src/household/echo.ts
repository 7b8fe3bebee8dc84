/**
 * One sentence of the cook, heard by two microphones of the house or twice by one, is one sentence.
 * Words that are the same, soon after each other, get the first one's answer.
 */

/** Which microphone heard: its name in the house, or `unnamed` when the bridge cannot tell. */
export const unnamed = '';

export interface HeardWords {
  text: string;
  device: string;
  /** The sender numbers its words, so two numbers are two sentences. */
  key?: string | undefined;
}

/** Two recognisers are done with one sentence so far apart at most. Common practice, no source. */
const apartMilliseconds = 3_000;
/** Nobody hears an answer out and says the same again sooner than this. */
const stutterMilliseconds = 1_500;
const kept = 16;

interface Earlier<T> extends HeardWords {
  atTick: number;
  answer: Promise<T>;
  answered: boolean;
}

export class Echoes<T> {
  private readonly ticks: () => number;
  private earlier: Earlier<T>[] = [];

  constructor(ticks: () => number) {
    this.ticks = ticks;
  }

  /** The answer that these words got already, or the one that `hear` gives. */
  once(words: HeardWords, hear: () => Promise<T>): Promise<T> {
    const atTick = this.ticks();
    const text = plain(words.text);
    const before = this.earlier.find(
      (one) => one.text === text && same(one, words, atTick - one.atTick),
    );
    if (before) return before.answer;
    const answer = hear();
    const one: Earlier<T> = { ...words, text, atTick, answer, answered: false };
    this.earlier = [one, ...this.earlier].slice(0, kept);
    answer.then(
      () => {
        one.answered = true;
      },
      // Words that failed to be heard may be said again at once.
      () => {
        this.earlier = this.earlier.filter((other) => other !== one);
      },
    );
    return answer;
  }
}

function same<T>(before: Earlier<T>, words: HeardWords, age: number): boolean {
  if (before.device === words.device) {
    if (before.key !== undefined && words.key !== undefined) return false;
    return !before.answered || (words.device !== unnamed && age < stutterMilliseconds);
  }
  if (!before.answered) return true;
  return before.device !== unnamed && words.device !== unnamed && age < apartMilliseconds;
}

/** Case, marks and spaces differ between recognisers; words do not. */
const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
