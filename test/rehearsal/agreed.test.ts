/** The hour by which the dinners bench judges a table that guests have moved. */
import { describe, expect, it } from 'vitest';
import { agreedBetween } from '../../bench/dinners/agreed.ts';

describe('an hour that guests move', () => {
  it('is theirs where it is answered so', () => {
    expect(agreedBetween(360, 390, 390)).toBe(390);
    expect(agreedBetween(360, 345, 345)).toBe(345);
  });

  it('is no later than they ask for where the roast lags as well', () => {
    expect(agreedBetween(360, 390, 412)).toBe(390);
  });

  it('lies between where a roast cannot be as early as they are, and no later than before', () => {
    expect(agreedBetween(360, 340, 352)).toBe(352);
    expect(agreedBetween(360, 340, 371)).toBe(360);
  });

  it('is no earlier than either', () => {
    expect(agreedBetween(360, 390, 350)).toBe(360);
  });
});
