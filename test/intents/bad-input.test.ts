import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { read } from '../../src/intents/read.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import { languages, type ReadContext } from '../../src/kitchen/heard.ts';
import { at, cards, zone } from '../harness/day.ts';

const contexts: readonly ReadContext[] = languages.map((language) => ({
  language,
  now: at('17:30'),
  timeZone: zone,
  stage: 'low-roast',
  units: { temperature: 'F', weight: 'lb' },
  paused: false,
  dishes: ['roast-potatoes'],
  openSteps: [],
  lexicon: lexiconOf(cards),
}));

/** Heard, these change nothing and answer nothing that was not asked. */
const idle = /^(unrelated|unclear|courtesy|acknowledge|repeat|help|pause)$/;
const expectIdle = (text: string): void => {
  for (const context of contexts) {
    const heard = read(text, context);
    expect(heard.length).toBeGreaterThan(0);
    for (const one of heard) expect(one.intent, JSON.stringify(text.slice(0, 60))).toMatch(idle);
  }
};

describe('bad input', () => {
  it.each([
    '',
    ' ',
    'um',
    'uh... er, um',
    '?!?!',
    '🥩🔥🔥',
    '👩‍🍳🥔',
    'temperature: 9999',
    'it reads 9999 degrees',
    "'; DROP TABLE facts; --",
    'SELECT * FROM dinners WHERE 1=1',
    '<script>alert(104)</script>',
    '<b>dinner</b>',
    '{"intent":"report-reading","temperature":104}',
    '../../etc/passwd',
    '\u202e401 sdaer ti',
    '\u0000\u0001\u0007\u001b[31m',
    '%s%s%s%n',
    'NaN',
    '1e309',
    '-0',
    'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa',
  ])('does nothing on %j', (text) => expectIdle(text));

  it.each(['a', 'the potatoes ', 'it reads ', '104 ', '((((', 'no, ', 'in in out on ', '🔥'])(
    'does nothing on twenty thousand characters of %j',
    (part) => expectIdle(part.repeat(Math.ceil(20_000 / part.length)).slice(0, 20_000)),
  );

  it('does nothing on what is no language at all', () => {
    const signs = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 200 }),
      fc
        .array(
          fc.constantFrom(
            ...'<>{}[]()"\';:/\\|`~@#$^&*_=+\u200f\u202e\u0000\u001b🔥🥩é漢ж'.split(''),
          ),
          { maxLength: 200 },
        )
        .map((all) => all.join('')),
    );
    fc.assert(fc.property(signs, expectIdle), { numRuns: 300, seed: 11 });
  });

  it('never throws on kitchen words in any order', () => {
    const words =
      'it reads oven to half seven no not and the potatoes in out <n0> , . ? dinner at for 104 one oh done wenn Grad halb Braten'.split(
        ' ',
      );
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...words), { maxLength: 40 }), (all) => {
        for (const context of contexts)
          expect(read(all.join(' '), context).length).toBeGreaterThan(0);
      }),
      { numRuns: 150, seed: 12 },
    );
  });
});
