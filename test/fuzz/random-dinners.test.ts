/** Random dinners, every time the same ones; `npm run fuzz` plays others and more of them. */
import { expect, test } from 'vitest';
import { randomDinner } from './random-dinner.ts';

const turnsEach = 30;

test.each(Array.from({ length: 8 }, (_, row) => row + 1))('random dinner %i', async (seed) => {
  expect(await randomDinner(seed, turnsEach)).toBeUndefined();
});
