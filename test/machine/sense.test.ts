/**
 * A leave-in thermometer's numbers, stage by stage. Water boils at 100 °C (212 °F) at sea level, the
 * fixed point of the Celsius scale; wet meat does not pass it.
 */
import { expect, test } from 'vitest';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { Stage } from '../../src/kitchen/heard.ts';
import type { Context } from '../../src/machine/context.ts';
import { type Sensed, sensed } from '../../src/machine/sense.ts';
import { standingOf } from '../../src/machine/stage.ts';
import { factsOf } from '../harness/day.ts';

const facts = factsOf();
const dinner = dinnerOf('written', facts);
const now = dinner.lastAt + 3_600_000;

function taken(reading: Sensed, stage: Stage, lastAt?: number): unknown[] {
  const before = {
    position: 9,
    celsius: 20,
    toldAt: lastAt ?? 0,
    thermometer: 'leave-in' as const,
  };
  const context = {
    dinner: {
      ...dinner,
      readings: lastAt === undefined ? [] : [{ ...before, happenedAt: lastAt }],
    },
    standing: { ...standingOf('written', facts), stage },
    now,
  };
  return sensed(reading, context as unknown as Context);
}

test.each([
  ['planning', false],
  ['prep', false],
  ['preheat', false],
  ['sear', true],
  ['low-roast', true],
  ['rest', true],
  ['hold', true],
  ['carve', false],
  ['served', false],
  ['put-away', false],
] as const)('%s: the tip is in the meat: %s', (stage, inMeat) => {
  expect(taken({ temperature: 104 }, stage)).toHaveLength(inMeat ? 1 : 0);
});

test('in the household unit unless it says, kept in SI beside what was sent', () => {
  const celsius = (reading: Sensed): unknown => taken(reading, 'low-roast')[0];
  expect(celsius({ temperature: 104 })).toMatchObject({
    type: 'reading-taken',
    celsius: 40,
    said: { value: 104, unit: 'F' },
    happenedAt: now,
    thermometer: 'leave-in',
  });
  expect(celsius({ temperature: 40, unit: 'C' })).toMatchObject({ celsius: 40 });
});

test.each([
  [211.9, 1],
  [212.1, 0],
  [32, 1],
  [31, 0],
  [Number.NaN, 0],
  [Number.POSITIVE_INFINITY, 0],
])('%d °F: %d readings', (temperature, count) => {
  expect(taken({ temperature }, 'low-roast')).toHaveLength(count);
});

test.each([
  [10_000, 0],
  [49_000, 0],
  [55_000, 1],
  [600_000, 1],
])('%d milliseconds after the last: %d', (ago, count) => {
  expect(taken({ temperature: 104 }, 'low-roast', now - ago)).toHaveLength(count);
});
