/**
 * The shopping list: every card's ingredients for this table, merged over the dishes, in amounts that
 * a shop sells and the household's units. What is in the house is struck off, not left out.
 */
import { assertNever } from '../../base/assert.ts';
import { kilogramsOfPounds, kilogramsPerPound, poundsOfKilograms } from '../../base/units.ts';
import type { Card, Ingredient } from '../../kitchen/card.ts';
import type { Bought, BuyUnit } from '../../kitchen/days.ts';
import { type Dinner, guestsOf, menuOf, roastCardOf } from '../../kitchen/dinner.ts';
import { kilogramsOf } from '../roast-day.ts';

const shelves = [
  'butcher',
  'vegetables',
  'dairy',
  'dry',
  'spices',
  'bottles',
  'household',
] as const satisfies readonly Ingredient['shelf'][];

/** Millilitres of the measures cards use (NIST, cooking measurement equivalencies: 5, 15, 240). */
const millilitresIn: Partial<Record<string, number>> = { ml: 1, tsp: 5, tbsp: 15, cup: 240 };

/** A stick of butter is a quarter of a pound. */
const gramsPerStick = kilogramsPerPound * 250;
const gramsPerOunce = (kilogramsPerPound * 1000) / 16;
/** Common practice, no source: what a bunch of soft herbs gives chopped, and cloves in a head. */
const tablespoonsPerBunch = 6;
const clovesPerHead = 10;

/** How much of an ingredient this dinner takes, in the card's own unit. */
function amountFor(part: Ingredient, dinner: Dinner): number {
  const roast = roastCardOf(dinner);
  switch (part.per) {
    case 'guest':
      return part.amount * guestsOf(dinner);
    case 'batch':
      return part.amount;
    case 'kilogram':
      return part.amount * (roast ? kilogramsOf(dinner, roast) : 3);
    case 'bone':
      return part.amount * (dinner.roast.bones ?? 3);
    default:
      return assertNever(part.per);
  }
}

interface Wanted {
  part: Ingredient;
  amount: number;
  kind: 'mass' | 'volume' | 'count';
  dishes: string[];
}

export function shoppingOf(dinner: Dinner): Bought[] {
  const roast = roastCardOf(dinner);
  const cards: Card[] = [...(roast ? [roast] : []), ...menuOf(dinner)];
  const wanted = new Map<string, Wanted>();
  for (const card of cards)
    for (const part of card.ingredients) {
      const volume = millilitresIn[part.unit];
      const kind = part.unit === 'g' ? 'mass' : volume === undefined ? 'count' : 'volume';
      const told = isTheRoast(card, part) ? dinner.roast.kilograms : undefined;
      const amount = told !== undefined ? told * 1000 : amountFor(part, dinner) * (volume ?? 1);
      const key = `${part.item}|${kind === 'count' ? part.unit : kind}`;
      const known = wanted.get(key);
      if (known) {
        known.amount += amount;
        if (!known.dishes.includes(card.title)) known.dishes.push(card.title);
      } else wanted.set(key, { part, amount, kind, dishes: [card.title] });
    }
  return [...wanted.values()]
    .map((one) => boughtOf(one, dinner))
    .sort((a, b) => shelves.indexOf(a.shelf) - shelves.indexOf(b.shelf));
}

/** The roast itself, whose weight the cook may have told. */
const isTheRoast = (card: Card, part: Ingredient): boolean =>
  card.card === 'roast' && part.shelf === 'butcher' && part.per === 'guest';

function boughtOf({ part, amount, kind, dishes }: Wanted, dinner: Dinner): Bought {
  const roast = roastCardOf(dinner);
  // A frozen roast is in the freezer already.
  const inFreezer =
    dinner.roast.frozen === true && roast !== undefined && roast.ingredients.includes(part);
  return {
    item: part.item,
    shelf: part.shelf,
    ...soldAs(part, amount, kind, dinner.units.weight),
    dishes,
    part,
    had:
      (inFreezer && roast !== undefined && isTheRoast(roast, part)) ||
      dinner.had.some((thing) => isCalled(part, thing)),
  };
}

/** "butter" strikes off the unsalted butter; "potatoes" the small waxy ones. */
function isCalled(part: Pick<Ingredient, 'item' | 'names'>, thing: string): boolean {
  const said = thing.toLowerCase();
  return [part.item, ...(part.names ?? [])].some((name) => {
    const own = name.toLowerCase();
    return own === said || own.endsWith(` ${said}`) || own.startsWith(`${said} `);
  });
}

/** Up to the next step, but not for a sliver that came from converting. */
const upTo = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;

function soldAs(
  part: Ingredient,
  amount: number,
  kind: Wanted['kind'],
  household: Dinner['units']['weight'],
): { amount: number; unit: BuyUnit } {
  switch (kind) {
    case 'mass':
      return household === 'lb' ? massInPounds(part, amount) : massInKilograms(amount);
    case 'volume':
      return volumeOf(part, amount, household);
    case 'count':
      if (part.unit === 'clove') return { amount: upTo(amount / clovesPerHead, 1), unit: 'head' };
      if (part.unit === 'sprig' || part.unit === 'bunch')
        return { amount: Math.max(1, upTo(part.unit === 'bunch' ? amount : 1, 1)), unit: 'bunch' };
      return { amount: upTo(amount, 1), unit: 'piece' };
    default:
      return assertNever(kind);
  }
}

function massInPounds(part: Ingredient, grams: number): { amount: number; unit: BuyUnit } {
  if (/\bbutter\b/.test(part.item))
    return { amount: upTo(grams / gramsPerStick, 0.5), unit: 'stick' };
  // A roast is asked for by the half pound, everything else by the quarter.
  if (grams >= kilogramsOfPounds(0.75) * 1000)
    return {
      amount: upTo(poundsOfKilograms(grams / 1000), part.meat === true ? 0.5 : 0.25),
      unit: 'lb',
    };
  return { amount: upTo(grams / gramsPerOunce, 0.5), unit: 'oz' };
}

const massInKilograms = (grams: number): { amount: number; unit: BuyUnit } =>
  grams >= 1000
    ? { amount: upTo(grams / 1000, 0.1), unit: 'kg' }
    : { amount: upTo(grams, grams >= 100 ? 10 : 5), unit: 'g' };

function volumeOf(
  part: Ingredient,
  millilitres: number,
  household: Dinner['units']['weight'],
): { amount: number; unit: BuyUnit } {
  const spoons = millilitres / 15;
  if (part.shelf === 'vegetables' && spoons <= 4 * tablespoonsPerBunch)
    return { amount: upTo(spoons / tablespoonsPerBunch, 1), unit: 'bunch' };
  if (millilitres < 15) return { amount: upTo(millilitres / 5, 0.5), unit: 'tsp' };
  if (household === 'kg') return { amount: upTo(millilitres, 10), unit: 'ml' };
  if (millilitres < 60) return { amount: upTo(spoons, 0.5), unit: 'tbsp' };
  return { amount: upTo(millilitres / 240, 0.25), unit: 'cup' };
}
