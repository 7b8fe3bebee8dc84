/** What people call an allergen, against the names the cards use; and which cards hold it. */
import type { Card, Ingredient } from '../../kitchen/card.ts';
import { menuOf, roastCardOf } from '../../kitchen/dinner.ts';
import type { Scene } from '../scene.ts';

/** The allergens that must be named on food in the European Union (Regulation 1169/2011, annex II). */
const calledSo: readonly (readonly [allergen: string, words: RegExp])[] = [
  ['milk', /\b(milk|dairy|lactose|butter|cream|cheese)\b/],
  ['gluten', /\b(gluten|wheat|coeliac|celiac|flour|bread|barley|rye)\b/],
  ['egg', /\beggs?\b/],
  ['peanuts', /\bpeanuts?\b/],
  ['nuts', /\b(nuts?|tree nuts|almonds?|walnuts?|hazelnuts?|cashews?|pecans?|pistachios?)\b/],
  ['mustard', /\bmustard\b/],
  ['fish', /\b(fish|anchov(y|ies))\b/],
  ['shellfish', /\b(shellfish|prawns?|shrimps?|crab|lobster|crustaceans?)\b/],
  ['molluscs', /\b(molluscs?|mussels?|oysters?|squid)\b/],
  ['celery', /\b(celery|celeriac)\b/],
  ['soya', /\b(soya?|soybeans?|tofu)\b/],
  ['sesame', /\b(sesame|tahini)\b/],
  ['lupin', /\blupin\b/],
  ['sulphites', /\b(sulphites?|sulfites?|sulphur dioxide)\b/],
];

/** The card's names for what somebody must not have; "nuts" may mean peanuts too. */
export function allergensIn(words: string): string[] {
  const found = calledSo.filter(([, shape]) => shape.test(words)).map(([allergen]) => allergen);
  return found.includes('nuts') && /\bnuts?\b/.test(words) ? [...found, 'peanuts'] : found;
}

export interface Holding {
  card: Card;
  part: Ingredient;
}

/** What on this menu holds it: by the card's allergens, or by the thing's own name ("garlic"). */
export function holding(words: string, scene: Scene): Holding[] {
  const wanted = allergensIn(words);
  const plain = words.replace(/s$/, '').toLowerCase();
  return cardsOf(scene).flatMap((card) =>
    card.ingredients
      .filter(
        (part) =>
          (part.allergens ?? []).some((one) => wanted.includes(one)) ||
          (wanted.length === 0 &&
            plain.length > 2 &&
            [part.item, ...(part.names ?? [])].some((name) => name.toLowerCase().includes(plain))),
      )
      .map((part) => ({ card, part })),
  );
}

/** The roast and what goes with it. */
export function cardsOf({ dinner }: Scene): Card[] {
  const roast = roastCardOf(dinner);
  return [...(roast ? [roast] : []), ...menuOf(dinner)];
}

const animal: Record<string, readonly string[]> = {
  vegetarian: ['fish', 'shellfish', 'molluscs'],
  veggie: ['fish', 'shellfish', 'molluscs'],
  vegan: ['fish', 'shellfish', 'molluscs', 'milk', 'egg'],
  pescatarian: [],
  pescetarian: [],
};

/** Whether a diet leaves this card alone, as it is written; undefined for a diet that no card knows. */
export function suits(card: Card, diet: string): boolean | undefined {
  if (diet === 'gluten free')
    return !card.ingredients.some((part) => (part.allergens ?? []).includes('gluten'));
  const against = animal[diet];
  if (!against) return undefined;
  return !card.ingredients.some(
    (part) => part.meat === true || (part.allergens ?? []).some((one) => against.includes(one)),
  );
}
