/**
 * Guests move the table; the hour that is answered them counts as far as it lies between what was agreed
 * before and what they ask for. What it is later than both, the roast is late, and nobody agreed to that.
 */
export const agreedBetween = (before: number, wanted: number, answered: number): number =>
  Math.min(Math.max(before, wanted), Math.max(Math.min(before, wanted), answered));
