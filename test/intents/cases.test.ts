import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { read } from '../../src/intents/read.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import { intents, type ReadContext } from '../../src/kitchen/heard.ts';
import { at, cards, zone } from '../harness/day.ts';
import { type Case, cases, compounds, harmless } from './cases.ts';

const lexicon = lexiconOf(cards);

const contextOf = (one: Partial<Case>): ReadContext => ({
  now: at('15:30'),
  timeZone: zone,
  stage: (one.stage ?? 'prep') as ReadContext['stage'],
  expecting: one.expecting as ReadContext['expecting'],
  units: { temperature: 'F', weight: 'lb' },
  paused: false,
  dishes: ['roast-potatoes', 'green-beans', 'horseradish-cream', 'herb-butter'],
  openSteps: [],
  lexicon,
});

describe('every intent', () => {
  it.each([...cases, ...compounds])('$text', (one) => {
    const heard = read(one.text, contextOf(one));
    expect(heard.map((each) => each.intent)).toEqual(one.intents);
    if (one.slots) expect(heard[0]).toMatchObject(one.slots);
  });

  it('stands in the table', () => {
    const shown = new Set([...cases, ...compounds].flatMap((one) => one.intents));
    // Asked beside the contract's own intents, in sessions: who was noted; which method.
    const elsewhere = ['unclear', 'ask-guests', 'set-method', 'have', 'feed-public'];
    expect(intents.filter((intent) => !shown.has(intent) && !elsewhere.includes(intent))).toEqual(
      [],
    );
  });
});

describe('what means nothing here', () => {
  it.each(harmless)('%s', (text, allowed) => {
    for (const heard of read(text, contextOf({ stage: 'low-roast' })))
      expect(allowed).toContain(heard.intent);
  });

  it('never throws and never comes back empty, whatever the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ maxLength: 300, unit: 'binary' }), fc.string({ maxLength: 300 })),
        (text) => {
          expect(read(text, contextOf({})).length).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300, seed: 5 },
    );
  });

  it('takes twenty thousand characters for what they are', () => {
    expect(read('it reads '.repeat(2_300), contextOf({})).map((one) => one.intent)).toEqual([
      'unclear',
    ]);
  });
});
