/**
 * What happens in a random dinner, drawn by seed before it is played, so that fewer of the same deeds can
 * be played again.
 */
import { type Random, seeded } from '../../src/base/random.ts';
import { intentLines } from '../../src/rehearsal/suggest.ts';
import { rowsOf } from '../corpus/load.ts';

export type Deed =
  /** Somebody speaks, `after` minutes later; less than none is a clock set back. */
  | { kind: 'says'; after: number; text: string; source: 'cook' | 'earshot' }
  | { kind: 'waits'; minutes: number }
  | { kind: 'restarts' }
  /** A leave-in thermometer sends a number. */
  | { kind: 'senses'; after: number; fahrenheit: number }
  /** A bridge delivers a message so many messages back once more, with its key and its own time. */
  | { kind: 'again'; back: number }
  /** A bridge delivers two messages the later one first, each with its own time. */
  | { kind: 'swapped'; after: number; texts: readonly [string, string] };

const utterances = rowsOf('rules')
  .filter((row) => row.language !== 'de')
  .map((row) => row.text);

const beginnings = [
  'seven pound three bone rib roast, dinner at seven for six, medium rare',
  'three kilos of boneless rib, dinner at half past six for five, medium',
  'a five pound pork loin, eight of us, dinner at seven',
  'leg of lamb, six pounds, dinner at 7 for 6, pink',
  'four pound eye of round for four at six thirty, medium rare',
  'hello',
];

/** What takes a dinner on, so that the later stages are reached too. */
const progress = [
  'the oven is on',
  'the roast is in',
  'oven is down',
  "it's out",
  "we're carving",
  'dinner is served',
  'the leftovers are in the fridge',
  'okay',
  "it's done",
  'potatoes are in',
];

const asAnybodyWould = Object.values(intentLines);

class Draw {
  private readonly random: Random;

  constructor(seed: number) {
    this.random = seeded(seed);
  }

  among<T>(choices: readonly T[]): T {
    return choices[Math.floor(this.random.uniform() * choices.length)] as T;
  }

  deed(index: number): Deed {
    const dice = this.random.uniform();
    if (index === 0 || dice < 0.68) return this.said(this.among([0, 1, 2, 5, 15]), index === 0);
    if (dice < 0.79) return { kind: 'waits', minutes: this.among([1, 5, 20, 60, 240]) };
    if (dice < 0.85) return { kind: 'restarts' };
    // A clock set back, as a bridge in another room may have it.
    if (dice < 0.88) return this.said(-this.among([1, 10, 61]), false);
    if (dice < 0.93)
      return { kind: 'senses', after: this.among([0, 1, 5]), fahrenheit: this.degrees() };
    if (dice < 0.97) return { kind: 'again', back: this.among([1, 1, 2, 5]) };
    const texts = [this.words(), this.words()] as const;
    return { kind: 'swapped', after: this.among([1, 5]), texts };
  }

  private said(after: number, first: boolean): Deed {
    const text = first ? this.among(beginnings) : this.words();
    const source = !first && this.random.uniform() < 0.04 ? 'earshot' : 'cook';
    return { kind: 'says', after, text, source };
  }

  private words(): string {
    const dice = this.random.uniform();
    if (dice < 0.02) return this.among(beginnings);
    if (dice < 0.17) return this.among(progress);
    if (dice < 0.22) return this.among(asAnybodyWould);
    if (dice < 0.26) return `it reads ${this.degrees()}`;
    const one = this.among(utterances);
    return dice < 0.37 ? `${one} and ${this.among(utterances)}` : one;
  }

  /** Mostly what a roast may show; sometimes a tip in the air or on the ice. */
  private degrees(): number {
    const dice = this.random.uniform();
    const [low, high] = dice < 0.9 ? [38, 150] : [-20, 480];
    return Math.round(low + (high - low) * this.random.uniform());
  }
}

export function deedsOf(seed: number, count: number): Deed[] {
  const draw = new Draw(seed);
  return Array.from({ length: count }, (_, index) => draw.deed(index));
}
