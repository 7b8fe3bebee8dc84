/**
 * Allergens and diets: the names cards use, the words guests use for them, and whether an ingredient
 * suits a guest. A card knows the usual ingredient; the label has the last word.
 */
import type { Ingredient } from './card.ts';
import type { GuestNote } from './dinner.ts';

/** The fourteen of Regulation (EU) No 1169/2011, annex II (list from memory). */
export const allergens = [
  'gluten',
  'crustaceans',
  'egg',
  'fish',
  'peanuts',
  'soya',
  'milk',
  'nuts',
  'celery',
  'mustard',
  'sesame',
  'sulphites',
  'lupin',
  'molluscs',
] as const;
export type Allergen = (typeof allergens)[number];

/** What people say for them. A word that means two at once names both: nobody risks the other. */
const saidAs: readonly [RegExp, readonly Allergen[]][] = [
  [/gluten|wheat|c(o)?eliac|flour|bread/, ['gluten']],
  [/crustacean|shrimp|prawn|crab|lobster/, ['crustaceans']],
  [/shell ?fish|seafood/, ['crustaceans', 'molluscs']],
  [/egg/, ['egg']],
  [/(?<!shell ?)fish|anchov|seafood/, ['fish']],
  [/peanut|groundnut/, ['peanuts']],
  [/soy/, ['soya']],
  [/milk|dairy|lactose|butter\b|cream|cheese|casein/, ['milk']],
  [/(?<!pea|ground|coco)nuts?\b|almond|walnut|hazelnut|cashew|pecan|pistachio/, ['nuts']],
  [/\bnuts?\b/, ['peanuts', 'nuts']],
  [/celer/, ['celery']],
  [/mustard/, ['mustard']],
  [/sesame|tahini/, ['sesame']],
  [/sul(ph|f)ite|sul(ph|f)ur|wine/, ['sulphites']],
  [/lupin/, ['lupin']],
  [/mollus[ck]|mussel|oyster|clam|squid/, ['molluscs']],
];

/** The allergens that a guest's word means; none when it is a food that is no allergen here. */
export function allergensOf(word: string): Allergen[] {
  const said = word.toLowerCase();
  return allergens.filter((one) =>
    saidAs.some(([pattern, meant]) => pattern.test(said) && meant.includes(one)),
  );
}

/** What a guest does not eat. */
export interface Avoidance {
  who?: string | undefined;
  allergens: readonly Allergen[];
  /** Nothing of a slaughtered animal. */
  meat: boolean;
  /** A food that is no allergen here, as said: "mushrooms". */
  food?: string | undefined;
}

/** Diets by the words for them; a vegan's honey is named by no card as an allergen. */
const diets: readonly [RegExp, Omit<Avoidance, 'who'>][] = [
  [/vegan|plant[- ]based/, { allergens: ['milk', 'egg', 'fish'], meat: true, food: 'honey' }],
  [/vegetarian|veggie|no meat|meatless/, { allergens: ['fish'], meat: true }],
  [/pesc(a|e)tarian/, { allergens: [], meat: true }],
];

/** What the notes say that guests avoid, one entry each. */
export function avoidancesOf(notes: readonly GuestNote[]): Avoidance[] {
  return notes.flatMap((note): Avoidance[] => {
    if (note.need !== 'allergy' && note.need !== 'diet') return [];
    const word = note.value ?? '';
    const diet = diets.find(([pattern]) => pattern.test(word.toLowerCase()));
    if (diet) return [{ who: note.who, ...diet[1] }];
    const named = allergensOf(word);
    const food = named.length === 0 && word !== '' ? word.toLowerCase() : undefined;
    return [{ who: note.who, allergens: named, meat: false, food }];
  });
}

const namesFood = (part: Ingredient, food: string): boolean => {
  const stem = food.replace(/(es|s)$/, '');
  return [part.item, ...(part.names ?? [])].some((name) => name.toLowerCase().includes(stem));
};

/** Whether the ingredient itself is one the guest may eat. */
export const suits = (part: Ingredient, guest: Avoidance): boolean =>
  !(part.allergens ?? []).some((one) => (guest.allergens as readonly string[]).includes(one)) &&
  !(guest.meat && part.meat === true) &&
  !(guest.food !== undefined && namesFood(part, guest.food));

/** The allergens among those a stand-in brings that the guest avoids. */
export const broughtFor = (part: Ingredient, guest: Avoidance): Allergen[] =>
  guest.allergens.filter((one) => (part.insteadAllergens ?? []).includes(one));
