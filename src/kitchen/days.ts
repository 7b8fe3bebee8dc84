/** What the planner hands up of the days before: how big a roast, and what is to be bought. */
import type { Ingredient } from './card.ts';
import type { Appetite } from './heard.ts';

export interface Size {
  eaters: number;
  appetite: Appetite;
  /** As the cut is usually sold; bones where bones tell its size. */
  kilograms: number;
  bones?: number | undefined;
  /** The same roast off the bone, where it is sold both ways. */
  bonelessKilograms?: number | undefined;
}

export interface SizeWish {
  guests?: number | undefined;
  appetite?: Appetite | undefined;
  /** Another cut than this dinner's. */
  cut?: string | undefined;
}

export const buyUnits = [
  'lb',
  'oz',
  'kg',
  'g',
  'cup',
  'tbsp',
  'tsp',
  'ml',
  'stick',
  'bunch',
  'head',
  'piece',
] as const;
export type BuyUnit = (typeof buyUnits)[number];

/** One line of the shopping list. */
export interface Bought {
  item: string;
  shelf: Ingredient['shelf'];
  amount: number;
  unit: BuyUnit;
  /** Cards that want it, by title. */
  dishes: readonly string[];
  /** The card's own entry, for what it holds and what else does. */
  part: Ingredient;
  /** In the house already. */
  had: boolean;
}

export interface DaysAhead {
  size(
    wish: SizeWish,
  ): (Size & { title: string; butcher?: readonly string[] | undefined }) | undefined;
  /** Usual appetites that this dinner's roast feeds, once its mass is known. */
  feeds?: number | undefined;
  shopping: readonly Bought[];
}
