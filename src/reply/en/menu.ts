/** The menu beside the roast in words: its dishes, those without a card, and what another cut changes. */
import { avoidancesOf } from '../../kitchen/allergens.ts';
import { comesWith, type DishCard } from '../../kitchen/card.ts';
import { type Dinner, menuOf, roastCardOf, uncardedOf } from '../../kitchen/dinner.ts';
import type { Scene } from '../scene.ts';
import { capital, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { guestName } from './names.ts';
import { count } from './words.ts';

/** Dishes without a card are the cook's own: "your trifle". */
export const uncardedTitles = (dinner: Dinner): Spoken[] =>
  uncardedOf(dinner).map((dish) => say`your ${dish}`);

export const menuTitles = (dinner: Dinner): Spoken[] => [
  ...menuOf(dinner).map((card) => say`${card.title}`),
  ...uncardedTitles(dinner),
];

/** The whole menu, for whoever asks for it. */
export function menuAnswer(dinner: Dinner): Spoken {
  const roast = roastCardOf(dinner);
  const menu = menuTitles(dinner);
  if (menu.length === 0)
    return roast
      ? say`The ${roast.title}, and nothing beside it yet.`
      : say`Nothing yet. Tell me the roast, and what goes with it.`;
  return roast ? say`With the ${roast.title}: ${list(menu)}.` : say`So far: ${list(menu)}.`;
}

/** A long menu is for eyes. */
const menuSpoken = 4;

export function besideWords(dinner: Dinner): Spoken {
  const menu = menuTitles(dinner);
  if (menu.length === 0) return say`Nothing beside the roast now.`;
  const words = say`Beside the roast now: ${list(menu)}.`;
  if (menu.length <= menuSpoken) return words;
  return {
    text: words.text,
    speech: say`That makes ${count(menu.length)} beside the roast.`.speech,
  };
}

/**
 * Who names several dishes has a menu in mind: what was only taken for granted is told apart. Who has
 * dropped a dish knows how.
 */
export function presumedDishes(dinner: Dinner): Spoken {
  if (dinner.dropped.length > 0) return silent;
  const menu = menuOf(dinner);
  const presumed = menu.filter((card) => card.card !== 'butter' && !dinner.added.includes(card.id));
  const [first] = presumed;
  if (!first || presumed.length === menu.length) return silent;
  const named = list(presumed.map((card) => say`${card.title}`));
  return presumed.length === 1
    ? say`You did not ask for ${named}: shall it stay?`
    : {
        text: say`You did not ask for ${named}: say which to leave out.`.text,
        speech: `${capital(count(presumed.length)).speech} you did not ask for: say what to leave out.`,
      };
}

/** Nothing of them is planned; and what is in them nobody here can know. */
export function uncardedWords(dishes: readonly Spoken[], { dinner }: Scene): Spoken {
  const many = dishes.length > 1 || dishes.some((dish) => /[^s]s$/.test(dish.text));
  const [it, goes] = many ? ['them', 'they go'] : ['it', 'it goes'];
  const careful = avoidancesOf(dinner.notes);
  return sentences([
    say`I have no card for ${list(dishes, 'or')}, so I do not plan ${it}: set a timer when ${goes} in, or write a card.`,
    careful.length > 0
      ? say`Whether ${list(
          [...new Set(careful.map(({ who }) => guestName(who).text))].map((who) => say`${who}`),
          'or',
        )} can eat ${it}, I cannot know.`
      : silent,
  ]);
}

/** What another cut brings along unasked, and what went with the one before. */
export function cutChangedWords(before: string | undefined, { dinner }: Scene): Spoken {
  const cut = dinner.roast.cut;
  if (before === undefined || cut === undefined) return silent;
  const menu = menuOf(dinner);
  const named = (dishes: readonly DishCard[]): Spoken =>
    list(dishes.map((card) => say`${card.title}`));
  const came = menu.filter((card) => comesWith(card, cut) && !comesWith(card, before));
  const gone = dinner.cards.filter(
    (card): card is DishCard =>
      card.card !== 'roast' &&
      comesWith(card, before) &&
      !menu.includes(card) &&
      !dinner.dropped.includes(card.id),
  );
  if (came.length === 0) return gone.length === 0 ? silent : say`No ${named(gone)} with it.`;
  return gone.length === 0
    ? say`With it, ${named(came)}.`
    : say`With it, ${named(came)} in place of ${named(gone)}.`;
}
