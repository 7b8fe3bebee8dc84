/** Dishes without a card: heard where they are ordered, and not where food is only talked of. */
import { describe, expect, it } from 'vitest';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { read } from '../../src/intents/read.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import type { ReadContext } from '../../src/kitchen/heard.ts';

const lexicon = lexiconOf(loadCards([builtInCardsFolder()]).cards);

function heard(text: string, change: Partial<ReadContext> = {}): string[] {
  const context: ReadContext = {
    now: Date.UTC(2026, 11, 19, 16),
    timeZone: 'America/Chicago',
    stage: 'planning',
    units: { temperature: 'F', weight: 'lb' },
    paused: false,
    dishes: ['roast-potatoes'],
    openSteps: [],
    lexicon,
    ...change,
  };
  return read(text, context).flatMap((one) =>
    one.intent === 'add-dish' || one.intent === 'drop-dish' ? [`${one.intent} ${one.dish}`] : [],
  );
}

describe('dishes without a card', () => {
  it.each([
    ['add a trifle', ['trifle']],
    ["we're having pigs in blankets as well", ['pigs in blankets']],
    [
      'roasties, carrots, trifle and mint sauce',
      ['roast-potatoes', 'glazed-carrots', 'trifle', 'mint-sauce'],
    ],
    ['trifle, carrots and mint sauce', ['trifle', 'glazed-carrots', 'mint-sauce']],
    ['we want pigs in blankets and roast potatoes', ['pigs in blankets', 'roast-potatoes']],
    ['and a trifle for afters', ['trifle']],
    ['add a tomahawk slaw', ['tomahawk slaw']],
    ['roasties, pigs in blankets and gravy', ['roast-potatoes', 'pigs in blankets', 'pan-gravy']],
  ])('are ordered: %s', (text, dishes) => {
    expect(heard(text)).toEqual(dishes.map((dish) => `add-dish ${dish}`));
  });

  it('are dropped by a part of their name once this dinner has them', () => {
    const dishes = ['roast-potatoes', 'cranberry tart'];
    expect(heard('forget the tart', { dishes, stage: 'low-roast' })).toEqual([
      'drop-dish cranberry tart',
    ]);
  });

  it.each([
    'gran makes a lovely trifle',
    'can we have ice cream',
    'I want ice cream',
    'I had soup for lunch',
    'shall we have chips tonight',
    'no ice cream till you finish your peas',
    'did you make custard',
    'add milk to the list',
    'add a guest',
    'add a bit more time',
    'add me to the group',
    'trifle',
  ])('are no order: %s', (text) => {
    expect(heard(text)).toEqual([]);
    expect(heard(text, { stage: 'low-roast' })).toEqual([]);
  });

  it('are a card’s where a card of the household has the name', () => {
    const own = {
      ...lexicon,
      dishes: [...lexicon.dishes, { id: 'nans-trifle', names: ['trifle'] }],
    };
    expect(heard('add a trifle', { lexicon: own })).toEqual(['add-dish nans-trifle']);
  });
});
