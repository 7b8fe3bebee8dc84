/** How big a roast, for how many with what appetite and with what beside it. */
import type { RoastCard } from '../../kitchen/card.ts';
import { isMeatless } from '../../kitchen/chores.ts';
import type { Size } from '../../kitchen/days.ts';
import { type Dinner, menuOf } from '../../kitchen/dinner.ts';
import type { Appetite } from '../../kitchen/heard.ts';

/**
 * Three-ounce cooked servings a guest eats: most two to three (University of Idaho Extension 2016).
 * The card says what a usual appetite of two and a half takes raw; others are scaled from it.
 */
export const servingsPerGuest: Record<Appetite, number> = { light: 2, usual: 2.5, hearty: 3 };

/**
 * Servings from a raw pound: two to three bone-in, three to four boneless (the same sheet). So a rib
 * off the bone does with five sevenths of the weight.
 */
export const servingsPerPound = { 'bone-in': 2.5, boneless: 3.5 } as const;

/** With many dishes beside it guests eat less of the roast. Common practice, no source. */
const manyDishes = 5;

export interface SizeQuestion {
  dinner: Dinner;
  card: RoastCard;
  guests: number;
  appetite?: Appetite | undefined;
}

/** The card's raw grams of roast for one usual appetite. */
const gramsPerGuest = (card: RoastCard): number =>
  card.ingredients.find((part) => part.shelf === 'butcher' && part.per === 'guest')?.amount ?? 450;

/** Raw mass for these guests; those who eat no meat are left out. */
export function sizeOf({ dinner, card, guests, appetite }: SizeQuestion): Size {
  const meatless = dinner.notes.filter(
    (note) => note.need === 'diet' && isMeatless(note.value),
  ).length;
  const eaters = Math.max(1, guests - meatless);
  const usual: Appetite = menuOf(dinner).length >= manyDishes ? 'light' : 'usual';
  const wanted = appetite ?? usual;
  const share = servingsPerGuest[wanted] / servingsPerGuest.usual;
  const kilograms = (eaters * gramsPerGuest(card) * share) / 1000;
  const { kilogramsPerBone } = card.shape;
  if (kilogramsPerBone === undefined) return { eaters, appetite: wanted, kilograms };
  return {
    eaters,
    appetite: wanted,
    kilograms,
    // No butcher sells part of a rib: a third of one short is still enough.
    bones: Math.max(1, Math.ceil(kilograms / kilogramsPerBone - 1 / 3)),
    bonelessKilograms: (kilograms * servingsPerPound['bone-in']) / servingsPerPound.boneless,
  };
}

/** Usual appetites that a roast of this mass feeds. */
export function feedsOf(card: RoastCard, kilograms: number, boneless: boolean): number {
  const offTheBone = boneless && card.shape.kilogramsPerBone !== undefined;
  const grams =
    gramsPerGuest(card) *
    (offTheBone ? servingsPerPound['bone-in'] / servingsPerPound.boneless : 1);
  return Math.floor((kilograms * 1000) / grams + 0.25);
}
