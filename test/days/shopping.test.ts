import { describe, expect, it } from 'vitest';
import { comesWith } from '../../src/kitchen/card.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { Fact, NewFact } from '../../src/kitchen/facts.ts';
import { shoppingOf } from '../../src/planner/days/shopping.ts';
import { at, cards, factsOf, withMore } from '../harness/day.ts';

const listOf = (more: readonly NewFact[] = [], facts: Fact[] = factsOf()) =>
  shoppingOf(
    dinnerOf(
      'written',
      withMore(
        facts,
        more.map((fact) => ({ ...fact, at: at('12:01') })),
      ),
    ),
  );
const row = (item: string, more: readonly NewFact[] = []) =>
  listOf(more).find((one) => one.item === item);

describe('the shopping list', () => {
  it('merges what several dishes want', () => {
    const butter = row('unsalted butter');
    const amounts = cards
      .filter((card) => card.card !== 'roast' && comesWith(card, 'rib-roast'))
      .flatMap((card) => card.ingredients.filter((part) => part.item === 'unsalted butter'))
      .map((part) => (part.per === 'guest' ? part.amount * 6 : part.amount));
    expect(butter?.dishes.length).toBe(amounts.length);
    expect(amounts.length).toBeGreaterThan(1);
    // A stick is a quarter of a pound: 113.4 g (NIST: 454 g a pound). Up to the next half stick.
    const grams = amounts.reduce((sum, one) => sum + one, 0);
    expect(butter?.unit).toBe('stick');
    expect((butter?.amount ?? 0) * 113.4).toBeGreaterThanOrEqual(grams - 0.1);
    expect(((butter?.amount ?? 0) - 0.5) * 113.4).toBeLessThan(grams);
  });

  it('asks for the roast as heavy as the cook said', () => {
    // 3.2 kg are 7.05 lb; sold by the half pound.
    expect(row('beef rib roast')).toMatchObject({ amount: 7.5, unit: 'lb', had: false });
  });

  it('never asks for less than the dishes take, in either household', () => {
    // NIST, cooking measurement equivalencies: teaspoon 5 ml, tablespoon 15, cup 240; ounce 28 g.
    const millilitres: Partial<Record<string, number>> = { tsp: 5, tbsp: 15, cup: 240, ml: 1 };
    const grams: Partial<Record<string, number>> = {
      oz: 28.349,
      lb: 453.592,
      g: 1,
      kg: 1000,
      stick: 113.398,
    };
    for (const units of [
      [],
      [{ type: 'units-set', temperatureUnit: 'C', weightUnit: 'kg' }] as NewFact[],
    ]) {
      for (const one of listOf(units)) {
        const { part } = one;
        const wanted = part.amount * (part.per === 'guest' ? 6 : part.per === 'kilogram' ? 3.2 : 1);
        const scale = part.unit === 'g' ? grams[one.unit] : millilitres[one.unit];
        if (scale === undefined || one.dishes.length > 1 || part.per === 'bone') continue;
        if (one.item === 'beef rib roast') continue;
        const own = part.unit === 'g' ? wanted : wanted * (millilitres[part.unit] ?? Number.NaN);
        expect(one.amount * scale, one.item).toBeGreaterThanOrEqual(own - 0.01);
      }
    }
  });

  it('strikes off what is in the house, by the name people use', () => {
    expect(row('unsalted butter', [{ type: 'thing-had', thing: 'butter' }])?.had).toBe(true);
    expect(row('fresh thyme leaves', [{ type: 'thing-had', thing: 'thyme' }])?.had).toBe(true);
    expect(row('olive oil', [{ type: 'thing-had', thing: 'butter' }])?.had).toBe(false);
    const lost: NewFact[] = [
      { type: 'thing-had', thing: 'butter' },
      { type: 'thing-lacked', thing: 'butter' },
    ];
    expect(row('unsalted butter', lost)?.had).toBe(false);
  });

  it('takes a frozen roast to be in the freezer', () => {
    expect(row('beef rib roast', [{ type: 'roast-described', frozen: true }])?.had).toBe(true);
  });

  it('goes by shelf', () => {
    const shelves = listOf().map((one) => one.shelf);
    expect([...new Set(shelves)]).toEqual(shelves.filter((one, i) => one !== shelves[i - 1]));
  });
});
