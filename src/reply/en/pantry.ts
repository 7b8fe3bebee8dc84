/** Amounts, stand-ins and the shopping list, from the cards of this dinner. */
import { assertNever } from '../../base/assert.ts';
import { avoidancesOf, broughtFor, suits } from '../../kitchen/allergens.ts';
import type { Card, Ingredient } from '../../kitchen/card.ts';
import { guestsOf, menuOf, roastCardOf } from '../../kitchen/dinner.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { guestName } from './names.ts';
import { saltBySpoon } from './shopping.ts';
import { count, weight } from './words.ts';

const cardsOf = (scene: Scene): Card[] => {
  const roast = roastCardOf(scene.dinner);
  return [...(roast ? [roast] : []), ...menuOf(scene.dinner)];
};

/** How much of an ingredient this dinner takes, in its own unit. */
export function amountOf(part: Ingredient, scene: Scene): number {
  const { roast } = scene.dinner;
  switch (part.per) {
    case 'guest':
      return part.amount * guestsOf(scene.dinner);
    case 'batch':
      return part.amount;
    case 'kilogram':
      return part.amount * (roast.kilograms ?? (roast.bones ?? 3) * 1.05);
    case 'bone':
      return part.amount * (roast.bones ?? 3);
    default:
      return assertNever(part.per);
  }
}

function measure(amount: number, unit: string, scene: Scene): Spoken {
  const { dinner } = scene;
  if (unit === 'g' && amount >= 450) return weight(amount / 1000, dinner.units);
  if (unit === 'g' && dinner.units.weight === 'lb') {
    const ounces = Math.max(0.5, Math.round((amount / 28.35) * 2) / 2);
    return {
      text: `${Math.round(amount)} g (${ounces} oz)`,
      speech: `${count(Math.round(amount)).speech} grams`,
    };
  }
  const shown = amount >= 10 ? Math.round(amount) : Math.round(amount * 2) / 2;
  const words: Record<string, string> = {
    g: 'grams',
    ml: 'millilitres',
    tsp: 'teaspoons',
    tbsp: 'tablespoons',
  };
  const word = words[unit] ?? (shown === 1 ? unit : unit.endsWith('h') ? `${unit}es` : `${unit}s`);
  const plain = unit === 'piece' ? '' : ` ${word}`;
  return {
    text: `${shown}${unit === 'g' || unit === 'ml' ? ` ${unit}` : plain}`,
    speech: `${count(shown).speech}${plain}`,
  };
}

interface Found {
  card: Card;
  part: Ingredient;
}

/** The ingredient of this dinner that goes by such a name: exactly, or else by a part of it. */
export function ingredientFor(name: string, scene: Scene): Found | undefined {
  const wanted = name.toLowerCase();
  const all = cardsOf(scene).flatMap((card) => card.ingredients.map((part) => ({ card, part })));
  return (
    all.find(({ part }) => part.item === wanted) ??
    all.find(({ part }) =>
      [part.item, ...(part.names ?? [])].some((one) => one.toLowerCase() === wanted),
    ) ??
    all.find(({ part }) =>
      [part.item, ...(part.names ?? [])].some(
        (one) => one.includes(wanted) || wanted.includes(one),
      ),
    )
  );
}

export function amountAnswer(ingredient: string | undefined, scene: Scene): Spoken {
  const found = ingredient === undefined ? undefined : ingredientFor(ingredient, scene);
  if (!found)
    return ingredient
      ? say`None of this dinner's cards asks for ${ingredient}.`
      : say`How much of what? Name it and I will say.`;
  const amount = measure(amountOf(found.part, scene), found.part.unit, scene);
  const salt =
    found.part.unit === 'g' && /\bsalt\b/.test(found.part.item)
      ? saltBySpoon(amountOf(found.part, scene))
      : silent;
  return sentences([
    capital(say`${amount} of ${found.part.item}, for the ${found.card.title}.`),
    salt,
  ]);
}

export function substituteAnswer(ingredient: string | undefined, scene: Scene): Spoken {
  if (ingredient && /\bdried\b/.test(ingredient))
    return say`Yes: a third as much dried as fresh, by volume, and in earlier so that it softens.`;
  const found = ingredient === undefined ? undefined : ingredientFor(ingredient, scene);
  if (!found)
    return say`I know of no stand-in for ${ingredient ?? 'that'}. Leave it out, or tell me the dish to drop.`;
  const others = cardsOf(scene).filter(
    (card) =>
      card.id !== found.card.id && card.ingredients.some((part) => part.item === found.part.item),
  );
  const words = standInWords(found, scene);
  return others.length === 0
    ? words
    : sentences([
        say`In the ${found.card.title}: ${lower(words)}`,
        forEyes(
          say`It is in the ${list(others.map((card) => say`${card.title}`))} too; ask by the dish.`,
        ),
      ]);
}

/** What does in its place; where a guest must not have it, what does for that guest. */
export function standInWords({ card, part }: Found, scene: Scene): Spoken {
  const guests = avoidancesOf(scene.dinner.notes);
  const ruledOut = guests.filter((guest) => !suits(part, guest));
  const keys = [...(part.allergens ?? []), ...(part.meat ? ['meat'] : [])];
  const avoided = keys.filter((key) =>
    ruledOut.some((guest) =>
      key === 'meat' ? guest.meat : (guest.allergens as readonly string[]).includes(key),
    ),
  );
  const free = [...new Set(avoided.map((key) => part.free?.[key]))].filter(
    (one) => one !== undefined,
  );
  if (free.length > 0) return sentences(free.map((one) => say`${one}`));
  if (part.instead === undefined)
    return say`Nothing does the same as ${part.item}; the ${card.title} can go without it.`;
  const brought = guests.flatMap((guest) =>
    broughtFor(part, guest).map((allergen) => ({ allergen, who: guest.who })),
  );
  return sentences([
    say`${part.instead}`,
    ...brought
      .slice(0, 2)
      .map(({ allergen, who }) => say`Mind the label: no ${allergen} for ${guestName(who)}.`),
  ]);
}
