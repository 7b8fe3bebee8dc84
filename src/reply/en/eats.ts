/** What a guest can eat of this menu as it is written, or whether they can have one dish of it. */
import { type Avoidance, allergensOf, avoidancesOf, suits } from '../../kitchen/allergens.ts';
import type { Card, Ingredient } from '../../kitchen/card.ts';
import type { GuestNote } from '../../kitchen/dinner.ts';
import type { HeardOf } from '../../kitchen/heard.ts';
import { inOneBreath } from '../breath.ts';
import type { Scene } from '../scene.ts';
import { capital, forEyes, list, lower, type Spoken, say, sentences, silent } from '../spoken.ts';
import { cardsOf } from './allergens.ts';
import { guestName } from './names.ts';

type Asked = HeardOf<'ask-guests'>;

/** The guest's own notes; or, where a word for a need was said in place of a name, that need. */
function notesFor(who: string, { dinner }: Scene): readonly GuestNote[] {
  const own = dinner.notes.filter((note) => note.who === who);
  if (own.length > 0) return own;
  if (/veg|pesc/.test(who)) return [{ need: 'diet', value: who }];
  return allergensOf(who).length > 0 ? [{ need: 'allergy', value: who }] : [];
}

const partsOf = (card: Card, guests: readonly Avoidance[]): Ingredient[] =>
  card.ingredients.filter((part) => guests.some((guest) => !suits(part, guest)));

const read: Spoken = say`Read the labels; I know only what the cards name.`;

/** Of nobody by name: whoever of those who are noted must not have the dish. */
function ofWhom(card: Card, { dinner }: Scene): Spoken {
  const named = [...new Set(dinner.notes.map((note) => note.who))];
  const kept = named.flatMap((who) => {
    const guests = avoidancesOf(dinner.notes.filter((note) => note.who === who));
    const parts = partsOf(card, guests);
    return parts.length === 0 ? [] : [{ who, parts, guests }];
  });
  if (kept.length === 0)
    return inOneBreath([
      say`Nothing in the ${card.title} is ruled out by what is noted of anyone.`,
      read,
    ]);
  return sentences([
    ...kept.map(
      ({ who, parts }) =>
        say`Not ${guestName(who)}: there is ${list(parts.map((part) => say`${part.item}`))} in the ${card.title}.`,
    ),
    ...kept.slice(0, 1).map(({ parts, guests }) => insteadOf(parts[0]!, guests)),
  ]);
}

export function eatsAnswer({ who = '', dish }: Asked, scene: Scene): Spoken {
  const asked = who === '' ? cardsOf(scene).find((one) => one.id === dish) : undefined;
  if (asked) return ofWhom(asked, scene);
  const notes = notesFor(who, scene);
  const named = notes.some((note) => note.who !== undefined);
  const name = named ? guestName(who) : say`them`;
  const guests = avoidancesOf(notes);
  if (guests.length === 0)
    return notes.some((note) => note.need === 'vulnerable')
      ? capital(say`${name}: all of it, and of the meat only what is cooked on.`)
      : say`Nothing is noted of ${guestName(who)} that rules out a dish. Tell me what they must not have.`;
  const cards = cardsOf(scene);
  if (dish === undefined) return menuFor(cards, guests, name);
  const card = cards.find((one) => one.id === dish);
  if (!card) return say`That is not on the menu.`;
  const parts = partsOf(card, guests);
  if (parts.length === 0)
    return inOneBreath([say`Yes: nothing in the ${card.title} is ruled out for ${name}.`, read]);
  return inOneBreath([
    say`No: there is ${list(parts.map((part) => say`${part.item}`))} in the ${card.title}.`,
    ...parts.slice(0, 1).map((part) => insteadOf(part, guests)),
  ]);
}

/** What does for them in its place, by the card. */
function insteadOf(part: Ingredient, guests: readonly Avoidance[]): Spoken {
  const keys = guests.flatMap((guest) => [...guest.allergens, ...(guest.meat ? ['meat'] : [])]);
  const free = keys.map((key) => part.free?.[key as keyof typeof part.free]).find(Boolean);
  return free === undefined ? silent : say`In its place: ${lower(say`${free}`)}`;
}

function menuFor(cards: readonly Card[], guests: readonly Avoidance[], name: Spoken): Spoken {
  const fit = cards.filter((card) => partsOf(card, guests).length === 0);
  const not = cards.filter((card) => !fit.includes(card));
  const titles = (of: readonly Card[]): Spoken => list(of.map((card) => say`the ${card.title}`));
  return inOneBreath([
    fit.length > 0
      ? say`As written, ${titles(fit)}.`
      : say`Nothing on this menu as written, for ${name}.`,
    not.length > 0 ? say`Not ${titles(not)}${forEyes(say`; ask me by the dish`)}.` : silent,
    read,
  ]);
}
