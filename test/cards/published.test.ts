/** Cards against figures published outside the project; each source stands beside its check. */
import { describe, expect, test } from 'vitest';
import { kilogramsPerPound } from '../../src/base/units.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import type { Card, Ingredient, RoastCard } from '../../src/kitchen/card.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const roasts = cards.filter((card): card is RoastCard => card.card === 'roast');
const roastOf = (id: string): RoastCard => {
  const card = roasts.find((one) => one.id === id);
  if (!card) throw new Error(`no roast card ${id}`);
  return card;
};
const parts = cards.flatMap((card) => card.ingredients.map((part) => ({ card, part })));

/** Fractions as the cards' sentences write them. */
const spokenAmounts: [RegExp, number][] = [
  [/two thirds of a teaspoon/i, 2 / 3],
  [/a third of a teaspoon/i, 1 / 3],
  [/an eighth of a teaspoon/i, 1 / 8],
  [/a quarter (of a )?teaspoon/i, 1 / 4],
  [/half a teaspoon/i, 1 / 2],
  [/a teaspoon and a half/i, 3 / 2],
  [/a teaspoon and a third/i, 4 / 3],
  [/five teaspoons/i, 5],
];
const teaspoonsSaid = (sentence: string): number | undefined =>
  spokenAmounts.find(([words]) => words.test(sentence))?.[1];

describe('measures and substitutes', () => {
  // NIST, Metric Kitchen: Cooking Measurement Equivalencies (nist.gov/pml/owm): a quarter pound is
  // 114 g rounded; exactly 113.4 g by the pound's definition. A US stick of butter is a quarter pound.
  test('a batch of butter is one stick', () => {
    const butters = cards.filter((card) => card.card === 'butter');
    expect(butters.length).toBeGreaterThanOrEqual(3);
    for (const card of butters) {
      const butter = card.ingredients.find((part) => part.item === 'unsalted butter');
      expect(butter?.unit).toBe('g');
      expect(Math.abs((butter?.amount ?? 0) - (kilogramsPerPound * 1000) / 4)).toBeLessThan(2);
    }
  });

  // Three parts fresh to one part dried, by volume: 1 tbsp fresh for 1 tsp dried (ochef.com/420.htm,
  // Durkee conversion table); secondary sources only, no extension page was found. A tablespoon is
  // three teaspoons (NIST, 15 and 5 mL).
  test('dried herbs stand in for fresh at a third', () => {
    const dried = parts.filter(
      ({ part }) => part.item.startsWith('fresh') && /^Dried \w+ does/.test(part.instead ?? ''),
    );
    expect(dried.length).toBeGreaterThanOrEqual(6);
    for (const { card, part } of dried) {
      expect(part.instead, `${card.id} ${part.item}`).toMatch(/a third as much/);
      if (part.unit === 'tbsp' && part.amount === 1)
        expect(part.instead, `${card.id} ${part.item}`).toMatch(/one teaspoon/);
    }
  });

  // One clove of garlic for an eighth of a teaspoon of garlic powder (substitution tables at
  // recipes.howstuffworks.com and kitchenkrafts.com; secondary sources).
  test('garlic powder stands in for cloves at an eighth of a teaspoon each', () => {
    const garlic = parts.filter(
      ({ part }) => part.unit === 'clove' && /garlic powder/.test(part.instead ?? ''),
    );
    expect(garlic.length).toBeGreaterThanOrEqual(4);
    for (const { card, part } of garlic)
      expect(teaspoonsSaid(part.instead ?? ''), card.id).toBeCloseTo(part.amount / 8, 6);
  });

  // Table salt weighs 5.7 to 6.0 g a teaspoon, light flaky kosher salt 2.8 to 3 g (secondary pages,
  // several agree): a factor of two by the spoon.
  test('table salt by the spoon weighs what the card asks for in grams', () => {
    const salts = parts.filter(
      ({ part }) => part.item === 'kosher salt' && teaspoonsSaid(part.instead ?? '') !== undefined,
    );
    expect(salts.length).toBeGreaterThanOrEqual(8);
    for (const { card, part } of salts) {
      const grams = (teaspoonsSaid(part.instead ?? '') ?? 0) * 5.85;
      expect(grams / part.amount, card.id).toBeGreaterThan(0.9);
      expect(grams / part.amount, card.id).toBeLessThan(1.1);
    }
    for (const roast of roasts)
      expect(roast.ingredients.find((part) => part.item === 'kosher salt')?.instead).toMatch(
        /half as much table salt as light flaky kosher/,
      );
  });

  // Salt for meat, 0.75 to 1.25 % of its weight: trade norm, from memory.
  test('a roast is salted at about one part in a hundred', () => {
    for (const roast of roasts) {
      const salt = roast.ingredients.find((part) => part.item === 'kosher salt');
      expect(salt?.per).toBe('kilogram');
      expect(salt?.amount).toBeGreaterThanOrEqual(7.5);
      expect(salt?.amount).toBeLessThanOrEqual(12.5);
    }
  });

  // One tablespoon of cornstarch thickens as two of flour (kitchenkrafts.com, cookpalette.com and
  // others: substitution tables, secondary sources).
  test('cornstarch thickens gravy at half the flour', () => {
    const flour = cards
      .find((card) => card.id === 'pan-gravy')
      ?.ingredients.find((part) => part.item === 'plain flour');
    expect(flour?.instead).toMatch(/Cornstarch does, half as much/);
  });

  // One teaspoon of vinegar for two of lemon juice (recipes.howstuffworks.com, cookpalette.com).
  test('lemon juice and vinegar stand in for each other at two to one', () => {
    const vinegar = parts.filter(
      ({ part }) => /vinegar$/.test(part.item) && /lemon juice/i.test(part.instead ?? ''),
    );
    const lemon = parts.filter(({ part }) => part.item === 'lemon');
    expect(vinegar.length).toBeGreaterThanOrEqual(3);
    for (const { card, part } of vinegar)
      expect(part.instead, card.id).toMatch(/lemon juice.*twice as much/i);
    expect(lemon.length).toBeGreaterThanOrEqual(2);
    for (const { card, part } of lemon) expect(part.instead, card.id).toMatch(/half as much/);
  });
});

describe('the roasts', () => {
  // University of Idaho Extension, Perfect Prime Rib (2016): a pound gives 2 to 3 cooked servings of
  // 3 oz on the bone, 3 to 4 boneless; most guests eat 2 to 3 servings.
  test.each([
    ['rib-roast', 2, 3],
    ['leg-of-lamb', 2, 3],
    ['strip-loin', 3, 4],
    ['tenderloin', 3, 4],
    ['top-round', 3, 4],
    ['eye-of-round', 3, 4],
    ['pork-loin', 3, 4],
  ])('%s is bought for two to three servings a guest', (id, fewest, most) => {
    const meat = roastOf(id).ingredients.find((part) => part.shelf === 'butcher');
    expect(meat).toMatchObject({ unit: 'g', per: 'guest', meat: true });
    const pounds = (meat?.amount ?? 0) / 1000 / kilogramsPerPound;
    expect(pounds).toBeGreaterThanOrEqual(2 / most);
    expect(pounds).toBeLessThanOrEqual(3 / fewest);
  });

  // Beef industry roasting guidelines (paperzz.com/doc/8898447): 4 to 6 lb is two ribs, 6 to 8 lb two
  // to four, 8 to 10 lb four to five.
  test.each([
    [2, 4, 6],
    [3, 6, 8],
    [4, 8, 10],
  ])('%i ribs weigh between %i and %i pounds', (bones, low, high) => {
    const pounds = (bones * (roastOf('rib-roast').shape.kilogramsPerBone ?? 0)) / kilogramsPerPound;
    expect(pounds).toBeGreaterThanOrEqual(low);
    expect(pounds).toBeLessThanOrEqual(high);
  });

  // USDA National Nutrient Database, standard reference, grams per 100 g raw; the row's number.
  // The strip loin: USDA FoodData Central 168721, water by difference (about 1 g of ash).
  test.each([
    ['rib-roast', '13824', 55.24, 16.53, 26.1],
    ['tenderloin', '23336', 71.5, 21.67, 6.93],
    ['top-round', '13891', 69.04, 22.06, 7.93],
    ['eye-of-round', '23330', 73.09, 23.27, 3.44],
    ['leg-of-lamb', '17230', 66.38, 18.47, 14.42],
    ['pork-loin', '10020', 66.92, 19.74, 12.58],
    ['strip-loin', '168721', 100 - 19 - 22.17 - 1, 19, 22.17],
  ])('%s has the composition of row %s', (id, row, water, protein, fat) => {
    const { composition, source } = roastOf(id).shape;
    expect(source).toContain(row);
    expect(Math.abs(composition.water * 100 - water)).toBeLessThan(0.5);
    expect(composition.protein * 100).toBeCloseTo(protein, 2);
    expect(composition.fat * 100).toBeCloseTo(fat, 2);
  });

  // foodsafety.gov, Meat and Poultry Roasting Charts: the oven each cut's time is given for.
  test.each([
    ['rib-roast', 325],
    ['top-round', 325],
    ['eye-of-round', 325],
    ['tenderloin', 425],
    ['leg-of-lamb', 325],
    ['pork-loin', 350],
  ])('%s roasts steadily at the published %i degrees', (id, fahrenheit) => {
    expect(roastOf(id).methods.steady?.roastFahrenheit).toBe(fahrenheit);
  });

  // foodsafety.gov: roast at 325 F or higher. FDA Food Code 3-401.11(B): a dry oven of 250 F at least,
  // and that for ten pounds and more; the slow way of sear-last rests on this lower bound.
  test('no oven is lower than the authorities name', () => {
    for (const { id, methods } of roasts) {
      expect(methods['sear-first']?.roastFahrenheit, id).toBeGreaterThanOrEqual(325);
      expect(methods.steady?.roastFahrenheit, id).toBeGreaterThanOrEqual(325);
      expect(methods['sear-last']?.roastFahrenheit, id).toBeGreaterThanOrEqual(250);
    }
  });

  // About 15 minutes to 4 lb, 20 to 30 to 8 lb, 30 to 45 above: common practice, no source.
  test('large roasts rest longer, as the trade does', () => {
    for (const { id, restMinutes } of roasts) {
      const likely = (kilograms: number): number =>
        restMinutes.find((row) => kilograms <= row.toKilograms)?.minutes[1] ?? Number.NaN;
      expect(likely(1.7), id).toBeGreaterThanOrEqual(10);
      expect(likely(1.7), id).toBeLessThanOrEqual(20);
      expect(likely(5), id).toBeGreaterThan(likely(1.7));
      expect(likely(15), `${id} has a row for the largest`).toBeLessThanOrEqual(45);
    }
    expect(roastOf('rib-roast').restMinutes.map((row) => row.minutes[1])).toEqual([15, 25, 35]);
  });
});

describe('safety in the cards', () => {
  // USDA FSIS, safe minimum internal temperatures: stuffing 165 F, in a dish of its own too.
  test('a stuffing is measured, and served at the published temperature', () => {
    const stuffing = cards.find((card) => card.id === 'herb-stuffing');
    expect(stuffing?.card === 'side' && stuffing.coreFahrenheit).toBe(165);
    const out = stuffing?.steps.find((step) => step.id === 'out');
    expect(out?.call).toContain('{coreTemperature}');
    expect(out?.caution).toMatch(/Not served under \{coreTemperature\}/);
  });

  // USDA FSIS: cooked food stands out two hours at most, one above 90 F; cooked leftovers keep three
  // to four days in the refrigerator. The time counts from when the roast leaves the heat.
  test('leftovers are cold within two hours of leaving the oven', () => {
    for (const roast of roasts) {
      const putAway = roast.steps.find((step) => step.id === 'put-away');
      const rest = Math.max(...roast.restMinutes.map((row) => row.minutes[2]));
      expect((putAway?.ends?.latestMinutes ?? Number.NaN) + rest, roast.id).toBeLessThanOrEqual(
        120,
      );
      expect(putAway?.caution).toMatch(/Two hours.*one hour/);
      expect(putAway?.how.join(' ')).toMatch(/three to four days/);
    }
  });

  // USDA FSIS: raw meat, two hours out of the refrigerator at most.
  test('the roast is not planned to stand out two hours', () => {
    for (const roast of roasts) {
      const out = roast.steps.find((step) => step.id === 'out-of-fridge');
      expect(out?.minutes[2]).toBeLessThanOrEqual(60);
      expect(out?.skippable).toBe(true);
      expect(out?.caution).toMatch(/two hours/i);
    }
  });

  // USDA FSIS: cooked leftovers keep three to four days cold.
  test('nothing made ahead waits longer than four days', () => {
    for (const card of cards) expect(card.hold.minutes, card.id).toBeLessThanOrEqual(4 * 24 * 60);
  });

  // Regulation (EU) No 1169/2011, annex II, by the plain nature of the ingredient (from memory).
  const carriers: [RegExp, string][] = [
    [/butter|cream|milk|cheese|creme fraiche/, 'milk'],
    [/\bflour\b|bread/, 'gluten'],
    [/mustard/, 'mustard'],
    [/^eggs?$/, 'egg'],
    [/anchovy/, 'fish'],
    [/\bwine\b|vinegar/, 'sulphites'],
    [/stock/, 'celery'],
  ];
  const carries = (part: Ingredient, words: RegExp): boolean =>
    words.test(part.item) && part.item !== 'butternut squash';

  test.each(carriers)('whatever is %s names %s', (words, allergen) => {
    const carrying = parts.filter(({ part }) => carries(part, words));
    expect(carrying.length).toBeGreaterThan(0);
    for (const { card, part } of carrying)
      expect(part.allergens, `${card.id} ${part.item}`).toContain(allergen);
  });

  test('what comes of a slaughtered animal is marked', () => {
    for (const { card, part } of parts) {
      const meat = part.shelf === 'butcher' || /stock|drippings/.test(part.item);
      expect(part.meat === true, `${card.id} ${part.item}`).toBe(meat);
    }
  });

  test('pork is not served pink by custom, beef and lamb are', () => {
    const pink = (card: Card): boolean => card.card === 'roast' && card.pink;
    for (const roast of roasts) expect(pink(roast), roast.id).toBe(roast.id !== 'pork-loin');
  });
});
