/** What of a dinner decides which steps its cards have, and in which words. */
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { Circumstances } from './card.ts';
import type { Dinner } from './dinner.ts';
import type { Method } from './facts.ts';
import { preparedWords } from './heard.ts';

/** The consumer minimum for whole roasts, three minutes' rest with it (USDA FSIS). */
export const consumerMinimumCelsius = celsiusOfFahrenheit(145);

export const circumstancesOf = (dinner: Dinner, method: Method = dinner.method): Circumstances => ({
  method,
  boneless: dinner.roast.boneless ?? dinner.roast.prepared === 'rolled',
  prepared: preparedWords.find((word) => word === dinner.roast.prepared),
  cookOn: cooksOnFor(dinner).length > 0,
});

/**
 * Whose slices are cooked on by themselves: the guests who should not eat them pink, when the roast is
 * not taken to the consumer minimum as a whole. No names: nobody in particular.
 */
export function cooksOnFor(dinner: Dinner): string[] {
  const target = dinner.target?.serveCelsius;
  if (target === undefined || target >= consumerMinimumCelsius - 0.3) return [];
  const names = dinner.notes
    .filter((note) => note.need === 'vulnerable')
    .map((note) => note.who ?? '');
  return [...new Set(names)];
}
