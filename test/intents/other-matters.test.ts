import { describe, expect, it } from 'vitest';
import { read } from '../../src/intents/read.ts';
import { contextOf, rulesRows } from '../corpus/score.ts';

// Invented lines, each beside one in the same words that is told of this dinner.
const context = { ...contextOf(rulesRows[0]!), stage: 'low-roast', expecting: undefined } as const;

const pairs: readonly (readonly [overheard: string, told: string])[] = [
  ['whisk the eggs, fold in the flour and pour into the tin', 'I have beaten the butter'],
  ['the flat went from ninety to one oh five a week', "it's gone from ninety to one oh five"],
  ['hold the ladder still', 'hold on a second'],
  ['could someone top up the glasses', "can someone tell me what's next"],
  ['the nurse said call if it hits one oh three', 'it hits one oh three'],
  ["skip this one, I can't stand her voice", 'skip that step'],
  ['my tooth came out', 'my beef came out'],
  ['no, put it back in the drawer', 'take that back'],
  ['how many cousins have they got', 'how many potatoes do I need for ten'],
  ['it says to wash at sixty', 'it says sixty'],
];

const acts = (text: string): boolean =>
  read(text, context).some(({ intent }) => !/^(unrelated|unclear|courtesy)$/.test(intent));

describe('talk of other matters in the words of the kitchen', () => {
  it.each(pairs)('lets be "%s", hears "%s"', (overheard, told) => {
    expect(acts(overheard)).toBe(false);
    expect(acts(told)).toBe(true);
  });
});
