/** What on this menu a guest must not have, and which dishes they can eat as written. */
import { avoidancesOf, suits } from '../../kitchen/allergens.ts';
import type { Card, Ingredient } from '../../kitchen/card.ts';
import { type GuestNote, menuOf, roastCardOf } from '../../kitchen/dinner.ts';
import type { Scene } from '../scene.ts';

export interface Holding {
  card: Card;
  part: Ingredient;
}

/** The ingredients of this menu that the note rules out. */
export function holding(note: GuestNote, scene: Scene): Holding[] {
  const guests = avoidancesOf([note]);
  return cardsOf(scene).flatMap((card) =>
    card.ingredients
      .filter((part) => guests.some((guest) => !suits(part, guest)))
      .map((part) => ({ card, part })),
  );
}

/** The roast and what goes with it. */
export function cardsOf({ dinner }: Scene): Card[] {
  const roast = roastCardOf(dinner);
  return [...(roast ? [roast] : []), ...menuOf(dinner)];
}

/** Dishes that suit the note as they are written; undefined for a diet that no rule here knows. */
export function dishesFor(note: GuestNote, scene: Scene): Card[] | undefined {
  const [guest] = avoidancesOf([note]);
  if (!guest || (guest.food !== undefined && !guest.meat)) return undefined;
  return menuOf(scene.dinner).filter((card) =>
    card.ingredients.every((part) => suits(part, guest)),
  );
}
