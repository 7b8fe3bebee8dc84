/** The forecast as lines: every unit both ways, each mistake by its field, any legal question finite. */
import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { cutNames, cutOf } from '../../src/bridges/lines/cuts.ts';
import { forecastLine } from '../../src/bridges/lines/forecast.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import type { RoastCard } from '../../src/kitchen/card.ts';

const answered = (question: unknown): Record<string, unknown> => {
  const { milliseconds: _, ...answer } = JSON.parse(
    forecastLine(JSON.stringify(question), () => 0),
  );
  return answer;
};

const roast = { cut: 'rib-roast', pounds: 7.1, bones: 3, startFahrenheit: 42 };
const plain = {
  roast,
  oven: [
    { minute: 0, fahrenheit: 450 },
    { minute: 20, fahrenheit: 325 },
  ],
  readings: [{ minute: 60, fahrenheit: 71 }],
  now: 66,
  pullFahrenheit: 110,
  rest: 'tented',
  members: 48,
};

describe('a line', () => {
  it('answers all that the contract of the line names, twice the same', () => {
    const answer = answered(plain);
    for (const field of ['pull', 'afterRest', 'peak', 'core', 'nextCheck', 'suspectReadings'])
      expect(answer, field).toHaveProperty(field);
    expect(answer.afterRest).toHaveLength(12);
    expect(answer.assumptions).toEqual(expect.arrayContaining([expect.any(String)]));
    expect(answered(plain)).toEqual(answer);
  });

  it('is the same question in kilograms and Celsius', () => {
    const metric = {
      ...plain,
      roast: { cut: 'rib-roast', kilograms: 7.1 * 0.45359237, bones: 3, startCelsius: 50 / 9 },
      oven: [
        { minute: 0, celsius: 418 / 1.8 },
        { minute: 20, celsius: 293 / 1.8 },
      ],
      readings: [{ minute: 60, celsius: 39 / 1.8 }],
      pullFahrenheit: undefined,
      pullCelsius: 78 / 1.8,
    };
    expect(answered(metric).pull).toEqual(answered(plain).pull);
  });

  it.each([
    ['oven', { ...plain, oven: [] }],
    ['roast.pounds', { ...plain, roast: { ...roast, pounds: -1 } }],
    ['roast.pounds', { ...plain, roast: { ...roast, kilograms: 3 } }],
    ['readings[0].minute', { ...plain, now: 30 }],
    ['pullFahrenheit', { ...plain, pullFahrenheit: undefined }],
    ['colour', { ...plain, colour: 'red' }],
    [
      'kitchen.thermometerCheck.readFahrenheit',
      { ...plain, kitchen: { thermometerCheck: { in: 'ice' } } },
    ],
  ])('names %s when it is wrong', (field, question) => {
    expect(answered(question)).toMatchObject({ error: { field } });
  });

  it('a thermometer that reads high in ice moves the pull later, as an offset told does', () => {
    const checked = { thermometerCheck: { readFahrenheit: 36, in: 'ice' } };
    const told = { thermometerOffsetFahrenheit: { mean: 4, deviation: 0.45 } };
    const minute = (kitchen: object | undefined): number =>
      (answered({ ...plain, kitchen }).pull as { minute: { p50: number } }).minute.p50;
    expect(minute(checked)).toBeGreaterThan(minute(undefined) + 2);
    expect(minute(checked)).toBeCloseTo(minute(told), 0);
  });
});

describe('any legal question', () => {
  const setting = fc.record({
    minute: fc.integer({ min: -30, max: 400 }),
    fahrenheit: fc.integer({ min: 0, max: 575 }),
    event: fc.constantFrom(undefined, undefined, 'door-open', 'out'),
  });
  const reading = fc.record({
    minute: fc.integer({ min: 0, max: 300 }),
    fahrenheit: fc.integer({ min: 0, max: 250 }),
    thermometer: fc.constantFrom(undefined, 'leave-in', 'quick'),
  });
  const question = fc.record({
    roast: fc.record({
      cut: fc.constantFrom(...cutNames),
      pounds: fc.constantFrom(undefined, 1, 2.5, 7, 16, 30),
      bones: fc.constantFrom(undefined, 1, 3, 7),
      boneless: fc.constantFrom(undefined, true, false),
      frozen: fc.constantFrom(undefined, true),
      minutesOutOfFridge: fc.constantFrom(undefined, 0, 120),
    }),
    oven: fc.array(setting, { minLength: 1, maxLength: 5 }),
    fan: fc.boolean(),
    onRack: fc.constantFrom(undefined, true, false),
    readings: fc.array(reading, { maxLength: 5 }),
    pullFahrenheit: fc.integer({ min: 90, max: 170 }),
    rest: fc.constantFrom('tented', 'open', 'low-oven'),
    out: fc.constantFrom(undefined, undefined, 45, 150),
    members: fc.constant(16),
  });
  property.prop([question], { numRuns: 40 })(
    'has a finite answer with its bands in order',
    (asked) => {
      const answer = answered(asked);
      const text = JSON.stringify(answer);
      expect(text).not.toMatch(/null|"error"/);
      const bands = [...text.matchAll(/"p10":([-\d.e+]+),"p50":([-\d.e+]+),"p90":([-\d.e+]+)/g)];
      expect(bands.length).toBeGreaterThan(20);
      for (const [, low, middle, high] of bands) {
        expect(Number(low)).toBeLessThanOrEqual(Number(middle));
        expect(Number(middle)).toBeLessThanOrEqual(Number(high));
      }
    },
  );
});

describe('the cuts of a line', () => {
  it('are the shapes of the cards, figure for figure', () => {
    const { cards } = loadCards([builtInCardsFolder()]);
    const roasts = cards.filter((card): card is RoastCard => card.card === 'roast');
    expect(roasts.length).toBeGreaterThan(4);
    for (const card of roasts) {
      const { source: _, ...shape } = card.shape;
      expect(cutOf(card.id)?.shape, card.id).toEqual(shape);
    }
  });
});
