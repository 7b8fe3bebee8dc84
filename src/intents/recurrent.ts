/**
 * An opinion formed by hearing words in their order: a quasi-recurrent network (Bradbury, Merity, Xiong and
 * Socher, 2016, arXiv:1611.01576) of one layer read in both directions. What a word adds is looked up, so a
 * clause costs additions alone and the last step. Pure and language-free; what it weighs is learnt offline by
 * `scripts/train-recurrent.py` and written down as text, six bits to a letter.
 */
import { oncePer } from '../base/once.ts';
import type { Intent } from '../kitchen/heard.ts';
import { softmax } from './opinion.ts';

/** A word as the network is given it. What it adds is kept as long as the object lives: give the same word as the same object. */
export interface HeardWord {
  /** Its stem, or the kind of quantity it stands for. */
  stem: string;
  /** As it was said, to look up what it is like; empty where it stands for a quantity. */
  word: string;
  /** Whether it names somebody, a dish or a thing; or empty. */
  kind: string;
}

/** Numbers as text: every letter six bits, or every two letters twelve, of a range from -high to high. */
export interface WrittenNumbers {
  high: number;
  text: string;
}

/** One named row a line: the name, a blank, and a letter for each number. */
export interface WrittenTable {
  high: number;
  text: string;
}

/** A network as it is written down. Shapes: D `depth`, H `width`, I intents, C cues. */
export interface WrittenNetwork {
  depth: number;
  width: number;
  /** Parted by blanks, as are the cues. */
  intents: string;
  cues: string;
  /** Stems, D numbers each; "?" stands for those that are not known. */
  stems: WrittenTable;
  /** Words by what they are like, D numbers each. */
  words: WrittenTable;
  kinds: WrittenTable;
  /** 3 taps × 4H × D: the word before, the word itself, the word after. */
  taps: WrittenNumbers;
  /** 4H. */
  bias: WrittenNumbers;
  /** C × 4H: what the situation adds at every word. */
  situation: WrittenNumbers;
  /** I × 4H: of the greatest and the mean of both directions. */
  outward: WrittenNumbers;
  /** (C + 1) × I: what the situation speaks for by itself; the last row is always added. */
  direct: WrittenNumbers;
}

/** How likely each intent is meant, in the order of `intents`; adds up to 1. Undefined where no word is. */
export interface Network {
  intents: readonly Intent[];
  likelihoods(words: readonly HeardWord[], cues: readonly string[]): Float64Array | undefined;
}

/** Words beyond these of one text add nothing more. */
const wordsHigh = 60;

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const bitsOf = new Int8Array(128);
for (let at = 0; at < letters.length; at++) bitsOf[letters.charCodeAt(at)] = at;

/** Two letters a number. */
function numbersIn({ high, text }: WrittenNumbers): Float32Array {
  const numbers = new Float32Array(text.length / 2);
  for (let at = 0; at < numbers.length; at++) {
    const steps = bitsOf[text.charCodeAt(2 * at)]! * 64 + bitsOf[text.charCodeAt(2 * at + 1)]!;
    numbers[at] = (steps / 2047.5 - 1) * high;
  }
  return numbers;
}

/** Adds a row of a table to a sum; nothing where the table has no such name. */
function rowsOf({ high, text }: WrittenTable): (name: string, sum: Float32Array) => boolean {
  const rows = new Map<string, string>();
  for (const row of text.split('\n')) {
    const at = row.indexOf(' ');
    if (at > 0) rows.set(row.slice(0, at), row.slice(at + 1));
  }
  return (name, sum) => {
    const row = rows.get(name);
    if (row === undefined) return false;
    for (let at = 0; at < sum.length; at++)
      sum[at] = sum[at]! + (bitsOf[row.charCodeAt(at)]! / 31.5 - 1) * high;
    return true;
  };
}

/** Made ready when it is first asked: nobody waits for it at the start. */
export function networkFrom(written: WrittenNetwork): Network {
  let ready: Network['likelihoods'] | undefined;
  return {
    intents: written.intents.split(' ') as Intent[],
    likelihoods(words, cues) {
      ready ??= opened(written);
      return ready(words, cues);
    },
  };
}

function opened(written: WrittenNetwork): Network['likelihoods'] {
  const { depth, width } = written;
  const both = 2 * width;
  const all = 4 * width;
  const intentsCount = written.intents.split(' ').length;
  const cueAt = new Map(written.cues.split(' ').map((cue, at) => [cue, at]));
  const [addStem, addLike, addKind] = [written.stems, written.words, written.kinds].map(rowsOf);
  const taps = numbersIn(written.taps);
  const bias = numbersIn(written.bias);
  const situation = numbersIn(written.situation);
  const outward = numbersIn(written.outward);
  const direct = numbersIn(written.direct);
  const addedBy = oncePer(sumsOf);
  const nothing = new Float32Array(3 * all);

  /** What a word adds to the word after it, to itself and to the word before it: 3 × 4H. */
  function sumsOf({ stem, word, kind }: HeardWord): Float32Array {
    const vector = new Float32Array(depth);
    if (!addStem!(stem, vector)) addStem!('?', vector);
    addLike!(word, vector);
    addKind!(kind, vector);
    const sums = new Float32Array(3 * all);
    for (let row = 0; row < sums.length; row++) sums[row] = productOf(taps, row * depth, vector);
    return sums;
  }

  return (words, cues) => {
    const said = words.slice(0, wordsHigh).map(addedBy);
    if (said.length === 0) return undefined;
    const known = cues.flatMap((cue) => cueAt.get(cue) ?? []);
    const always = bias.slice();
    for (const cue of known)
      for (let at = 0; at < all; at++) always[at] = always[at]! + situation[cue * all + at]!;
    // The greatest of each unit, then the mean.
    const pooled = new Float32Array(all).fill(Number.NEGATIVE_INFINITY, 0, both);
    const state = new Float32Array(both);
    const read = (place: number, from: number): void => {
      const before = said[place - 1] ?? nothing;
      const here = said[place]!;
      const after = said[place + 1] ?? nothing;
      for (let at = from; at < from + width; at++) {
        const gate = at + both;
        const fresh = always[at]! + before[at]! + here[all + at]! + after[2 * all + at]!;
        const kept = always[gate]! + before[gate]! + here[all + gate]! + after[2 * all + gate]!;
        const keep = kept <= -3 ? 0 : kept >= 3 ? 1 : kept / 6 + 0.5;
        const size = fresh < 0 ? 1 - fresh : 1 + fresh;
        const now = keep * state[at]! + ((1 - keep) * fresh) / size;
        state[at] = now;
        pooled[both + at] = pooled[both + at]! + now;
        if (now > pooled[at]!) pooled[at] = now;
      }
    };
    for (let place = 0; place < said.length; place++) read(place, 0);
    for (let place = said.length - 1; place >= 0; place--) read(place, width);
    for (let at = both; at < all; at++) pooled[at] = pooled[at]! / said.length;
    const scores = new Float64Array(intentsCount);
    for (let one = 0; one < intentsCount; one++) {
      let sum = direct[cueAt.size * intentsCount + one]!;
      for (const cue of known) sum += direct[cue * intentsCount + one]!;
      scores[one] = sum + productOf(outward, one * all, pooled);
    }
    return softmax(scores);
  };
}

function productOf(rows: Float32Array, from: number, by: Float32Array): number {
  let sum = 0;
  for (let at = 0; at < by.length; at++) sum += rows[from + at]! * by[at]!;
  return sum;
}
