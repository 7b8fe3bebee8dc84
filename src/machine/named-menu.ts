/**
 * Who names the dishes has named the menu: the usual sides nobody asked for are left out, since a side
 * that is cooked by nobody would hold up the table. Sauces and butters harm nobody and stay.
 */
import type { Card } from '../kitchen/card.ts';
import { begunOf, menuOf } from '../kitchen/dinner.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { Outcome } from '../kitchen/outcome.ts';
import type { Context } from './context.ts';

/** One side named is one more; two are a menu. */
const menuFrom = 2;

/** Whether the sides are the cook's own choice; what has no card is taken for a side. */
export const hasNamedMenu = (added: readonly string[], cards: readonly Card[]): boolean =>
  added.filter((dish) => (cards.find(({ id }) => id === dish)?.card ?? 'side') === 'side').length >=
  menuFrom;

/** "And mash as well": beside what there is. */
const besides = /\b(also|too|as well|add|plus|another|extra|on top|alongside what|more)\b/i;

/** The sides to leave out after words that led to these facts; `context` knows the facts already. */
export function unnamedSides(
  facts: readonly NewFact[],
  context: Context,
): { facts: NewFact[]; outcomes: Outcome[] } {
  const { dinner, standing } = context;
  const named = facts.flatMap((fact) => (fact.type === 'dish-added' ? [fact.dish] : []));
  const early = standing.stage === 'planning' || standing.stage === 'prep';
  const before = dinner.added.filter((dish) => !named.includes(dish));
  if (
    !hasNamedMenu(named, dinner.cards) ||
    !early ||
    before.length > 0 ||
    dinner.dropped.length > 0
  )
    return { facts: [], outcomes: [] };
  const words = context.facts.findLast((fact) => fact.type === 'words-heard');
  if (words?.type === 'words-heard' && besides.test(words.text)) return { facts: [], outcomes: [] };
  const unnamed = menuOf(dinner).filter(
    (card) => card.card === 'side' && !dinner.added.includes(card.id) && !begunOf(dinner, card),
  );
  return {
    facts: unnamed.map(({ id }) => ({ type: 'dish-dropped', dish: id })),
    outcomes: unnamed.map(({ id }) => ({ key: 'dish-unnamed', dish: id })),
  };
}
