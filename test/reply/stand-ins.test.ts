/** Stand-ins and ways round, with the guests in mind. */
import { describe, expect, it } from 'vitest';
import { allergensOf, avoidancesOf, suits } from '../../src/kitchen/allergens.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { Fact } from '../../src/kitchen/facts.ts';
import { lackedWords } from '../../src/reply/en/lacking.ts';
import { substituteAnswer } from '../../src/reply/en/pantry.ts';
import type { Scene } from '../../src/reply/scene.ts';
import { at, cards, factsOf, withMore } from '../harness/day.ts';

type Note = { who: string; need: 'allergy' | 'diet'; value: string };

function sceneWith(dishes: readonly string[], notes: readonly Note[] = []): Scene {
  const told = notes.map((note) => ({ type: 'guest-noted' as const, ...note, at: at('12:01') }));
  const facts: Fact[] = withMore(factsOf({ dishes }), told);
  return {
    dinner: dinnerOf('written', facts),
    now: at('12:05'),
    stage: 'prep',
    dishes: new Map(),
    firstPlan: false,
  };
}

const dairy: Note = { who: 'bob', need: 'allergy', value: 'dairy' };

describe('a stand-in', () => {
  // A tablespoon fresh to a teaspoon dried, three to one: household tables, no extension page found.
  it('of dried herbs is a third', () => {
    expect(substituteAnswer('fresh thyme leaves', sceneWith(['herb-butter'])).text).toMatch(
      /a third as much/,
    );
  });

  it('for a guest who must not have milk is free of milk', () => {
    const scene = sceneWith(['herb-butter', 'mashed-potatoes'], [dairy]);
    const { text } = substituteAnswer('butter', scene);
    expect(text).toMatch(/olive oil/i);
    expect(text).not.toMatch(/salted butter/i);
  });

  it('that may bring what a guest must not have says so', () => {
    const scene = sceneWith(['pan-gravy'], [{ who: 'ann', need: 'allergy', value: 'soya' }]);
    expect(substituteAnswer('beef stock', scene).text).toMatch(/no soya for Ann/);
    expect(substituteAnswer('beef stock', sceneWith(['pan-gravy'])).text).not.toMatch(/Ann/);
  });

  it('for a guest who eats no meat holds none', () => {
    const scene = sceneWith(['pan-gravy'], [{ who: 'uncle', need: 'diet', value: 'vegetarian' }]);
    expect(substituteAnswer('beef stock', scene).text).toMatch(/vegetable stock/i);
  });
});

describe('every ingredient that a guest may not stand', () => {
  const parts = cards
    .filter((card) => card.card !== 'roast')
    .flatMap((card) => card.ingredients.map((part) => ({ card: card.id, part })));

  it('has something that does without each of its allergens', () => {
    for (const { card, part } of parts)
      for (const allergen of part.allergens ?? [])
        expect(part.free?.[allergen], `${card}: ${part.item} without ${allergen}`).toBeDefined();
  });

  it('of an animal has something that does without meat', () => {
    for (const { card, part } of parts)
      if (part.meat) expect(part.free?.meat, `${card}: ${part.item}`).toBeDefined();
  });

  // Dairy foods by their common names; what is free of milk names none of them.
  it('and what is free of milk is made of no milk', () => {
    for (const { card, part } of parts)
      expect(
        (part.free?.milk ?? '').replace(/(coconut|oat) cream|like cream|plant milk/g, ''),
        card,
      ).not.toMatch(/butter|cream|cheese|yog|milk/i);
  });

  it('and what a stand-in says it is made of is among what it may bring', () => {
    const brings: readonly [RegExp, string][] = [
      [/\bsoy\b/, 'soya'],
      [/\bceleriac\b/i, 'celery'],
      [/\bDijon|gherkin/i, 'mustard'],
      [/\bbread\b/, 'gluten'],
    ];
    for (const { card, part } of parts)
      for (const [words, allergen] of brings)
        if (words.test(part.instead ?? ''))
          expect(
            [...(part.insteadAllergens ?? []), ...(part.allergens ?? [])],
            `${card}: ${part.instead}`,
          ).toContain(allergen);
  });
});

describe('what guests call an allergen', () => {
  // Names from Regulation (EU) No 1169/2011, annex II, and what people say for them.
  it.each([
    ['dairy', ['milk']],
    ['lactose', ['milk']],
    ['coeliac', ['gluten']],
    ['celiac', ['gluten']],
    ['peanuts', ['peanuts']],
    ['nuts', ['peanuts', 'nuts']],
    ['shellfish', ['crustaceans', 'molluscs']],
    ['fish', ['fish']],
    ['soy', ['soya']],
    ['sulfites', ['sulphites']],
    ['strawberries', []],
  ])('%s', (word, expected) => {
    expect(allergensOf(word).sort()).toEqual([...expected].sort());
  });

  it('a vegan eats neither butter nor anchovy, a pescatarian the anchovy', () => {
    const of = (value: string) => avoidancesOf([{ who: 'x', need: 'diet', value }])[0]!;
    const part = (item: string) =>
      cards.flatMap((card) => card.ingredients).find((one) => one.item === item)!;
    expect(suits(part('unsalted butter'), of('vegan'))).toBe(false);
    expect(suits(part('anchovy fillets'), of('vegan'))).toBe(false);
    expect(suits(part('anchovy fillets'), of('pescatarian'))).toBe(true);
    expect(suits(part('beef stock'), of('pescatarian'))).toBe(false);
  });
});

describe('a tool that is lacking', () => {
  it('is gone round with the minutes it costs, and named where else it is missed', () => {
    const scene = sceneWith(['herb-butter', 'green-herb-sauce']);
    const { text } = lackedWords(
      { key: 'lacked', thing: 'food-processor', step: 'herb-butter.beat' },
      { ...scene, dinner: { ...scene.dinner, lacks: ['food-processor'] } },
    );
    expect(text).toMatch(/mixer, or under a fork/);
    expect(text).toMatch(/4 minutes more/);
  });

  it('an ingredient that is lacking is stood in for', () => {
    const { text } = lackedWords({ key: 'lacked', thing: 'thyme' }, sceneWith(['herb-butter']));
    expect(text).toMatch(/Dried thyme/);
  });
});
