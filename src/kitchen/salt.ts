/** How much salt, by the meat's weight and by which salt. */

/**
 * Grams in a level teaspoon. Kitchen writers' tables agree within these ranges (secondary sources):
 * table salt 5.7 to 6.0, dense kosher 4.8 to 5, light flaky kosher 2.8 to 3.
 */
export const saltGramsPerTeaspoon = {
  table: 5.9,
  'dense kosher': 4.9,
  'light flaky kosher': 2.9,
} as const;
export type Salt = keyof typeof saltGramsPerTeaspoon;

/** Salt by weight of meat that a roast takes: three quarters to one and a quarter per cent (from memory). */
export const saltShareLow = 0.0075;
export const saltShareHigh = 0.0125;

/** Level teaspoons of a salt for so many grams, to the half. */
export const teaspoonsOf = (grams: number, salt: Salt): number =>
  Math.max(0.5, Math.round((grams / saltGramsPerTeaspoon[salt]) * 2) / 2);
