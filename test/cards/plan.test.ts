/**
 * Every card planned alone and in a full dinner. The forecast is a plain stand-in with a round number
 * of minutes: what is looked at here is whether the cards' own minutes, windows and ovens fit a day.
 */
import { describe, expect, test } from 'vitest';
import { instantOf, minutesBetween } from '../../src/base/time.ts';
import { celsiusOfFahrenheit } from '../../src/base/units.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { type Card, comesWith, stepApplies, stepIdOf } from '../../src/kitchen/card.ts';
import { type Dinner, dinnerOf } from '../../src/kitchen/dinner.ts';
import { type Fact, type Method, methods } from '../../src/kitchen/facts.ts';
import type { Band, Forecast } from '../../src/kitchen/forecast.ts';
import type { Plan } from '../../src/kitchen/plan.ts';
import { plan } from '../../src/planner/plan.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const zone = 'Europe/Dublin';
const noon = instantOf('2026-12-19', '12:00', zone);
const seven = instantOf('2026-12-19', '19:00', zone);
const usualWith = (roast: Card): Card[] =>
  cards.filter((card) => card.card !== 'roast' && comesWith(card, roast.id));
const dishes = cards.filter((card) => card.card !== 'roast');
const roasts = cards.filter((card) => card.card === 'roast');
const rib = roasts.find((card) => card.id === 'rib-roast')!;
const usual = usualWith(rib);

const band = (p50: number, spread: number): Band => ({
  p10: p50 - spread,
  p50,
  p90: p50 + spread,
});

function standIn(minutes: number): Forecast {
  return {
    pullMinute: band(minutes, 10),
    neverReachedChance: 0,
    pastPullChance: 0,
    core: [],
    coreNowCelsius: band(5, 0),
    afterRest: [5, 15, 30, 45, 60].map((minutesAfterPull) => ({
      minutesAfterPull,
      celsius: band(54, 1),
    })),
    peak: { celsius: band(55, 1), minutesAfterPull: band(15, 5) },
    nextCheckMinute: minutes - 30,
    latestLookMinute: minutes - 20,
    suspectReadings: [],
    assumptions: [],
    slices: [
      {
        greyBandMillimetres: band(2, 1),
        pinkFraction: band(0.6, 0.1),
        minutesAfterPull: 20,
        radiusMillimetres: 60,
        profile: [],
      },
    ],
    ifOut: [],
    weightLossFraction: band(0.2, 0.02),
    lethality: { now: band(0, 0), afterRest: band(1, 0.5) },
    learnt: {
      ovenBiasKelvin: { mean: 0, deviation: 6 },
      thermometerOffsetKelvin: { mean: 0, deviation: 0.6 },
    },
  };
}

interface Supper {
  roast: Card;
  with: readonly Card[];
  method?: Method;
  boneless?: boolean;
  helper?: boolean;
}

function dinnerWith(supper: Supper): Dinner {
  const bodies = [
    {
      type: 'dinner-opened',
      timeZone: zone,
      temperatureUnit: 'F',
      weightUnit: 'lb',
      seed: 7,
      language: 'en',
    },
    ...[supper.roast, ...supper.with].map((card) => ({ type: 'card-taken', card })),
    ...supper.with.map((card) => ({ type: 'dish-added', dish: card.id })),
    {
      type: 'roast-described',
      cut: supper.roast.id,
      kilograms: 3.2,
      boneless: supper.boneless ?? false,
    },
    { type: 'method-set', method: supper.method ?? 'sear-first' },
    { type: 'serving-time-set', servingAt: seven, because: 'said' },
    { type: 'guests-counted', count: 6 },
    { type: 'doneness-set', doneness: 'medium-rare', serveCelsius: 54.4 },
    ...(supper.helper ? [{ type: 'hands-added', who: 'Sam' }] : []),
  ];
  const facts = bodies.map((body, position) => ({
    dinner: 'supper',
    position,
    at: noon,
    happenedAt: noon,
    v: 1,
    ...body,
  })) as unknown as Fact[];
  return dinnerOf('supper', facts);
}

function planned(supper: Supper): Plan {
  const made = plan({
    dinner: dinnerWith(supper),
    forecast: standIn(150),
    pullCelsius: 49,
    now: noon,
  });
  expect(made?.complete).toBe(true);
  return made!;
}

/** The steps of these cards that belong to this way of cooking, each once, and no others. */
function expectAllPlaced(made: Plan, supper: Supper): void {
  const all = [supper.roast, ...supper.with];
  const present = new Set(all.map((card) => card.id));
  const wanted = all.flatMap((card) =>
    card.steps
      .filter((step) =>
        stepApplies(step, {
          method: supper.method ?? 'sear-first',
          boneless: supper.boneless ?? false,
        }),
      )
      .filter((step) =>
        (step.after ?? []).every(
          ({ step: before }) => !before.includes('.') || present.has(before.split('.')[0] ?? ''),
        ),
      )
      .map((step) => stepIdOf(card, step))
      // A reading is called for by the forecast, not by the clock.
      .filter((id) => id !== 'check'),
  );
  expect(
    made.steps
      .map((step) => step.id)
      .filter((id) => id !== 'check')
      .sort(),
  ).toEqual(wanted.sort());
}

const ovenAt = (made: Plan, at: number): number =>
  made.oven.filter((move) => move.at <= at).at(-1)?.celsius ?? 0;

/** Every dish in the oven stands at a temperature it tolerates, when it goes in and half way through. */
function expectOvenTolerated(made: Plan, supper: Supper): void {
  for (const card of supper.with)
    for (const step of card.steps) {
      const placed = made.steps.find((one) => one.id === stepIdOf(card, step));
      if (!step.oven || !placed) continue;
      for (const at of [placed.startAt, (placed.startAt + placed.endAt) / 2]) {
        const celsius = ovenAt(made, at);
        const name = `${placed.id} at ${Math.round(celsius)} C`;
        expect(celsius, name).toBeGreaterThanOrEqual(
          celsiusOfFahrenheit(step.oven.lowFahrenheit) - 3,
        );
        expect(celsius, name).toBeLessThanOrEqual(
          celsiusOfFahrenheit(step.oven.highFahrenheit) + 3,
        );
      }
    }
}

describe.each(roasts.map((card) => [card.id, card] as const))('%s', (_id, roast) => {
  test.each(methods)('plans alone and with the usual dinner, %s', (method) => {
    for (const dishesWith of [[], usualWith(roast)]) {
      const supper: Supper = { roast, with: dishesWith, method, helper: true };
      const made = planned(supper);
      expectAllPlaced(made, supper);
      if (method !== 'sear-last') {
        expect(made.shortfalls).toEqual([]);
        expectOvenTolerated(made, supper);
      }
      const at = (id: string): number => made.steps.find((step) => step.id === id)?.startAt ?? 0;
      expect(at('season')).toBeLessThan(at('roast-in'));
      expect(at('carving-setup')).toBeLessThan(at('pull'));
      expect(minutesBetween(made.serving.wantedAt, made.serving.likelyAt)).toBeCloseTo(0, 0);
    }
  });

  test('boneless, nobody frenches a bone', () => {
    const made = planned({ roast, with: [], boneless: true });
    expect(made.steps.map((step) => step.id)).not.toContain('french');
  });
});

describe.each(dishes.map((card) => [card.id, card] as const))('%s', (_id, dish) => {
  test.each([
    ['alone with the roast', [dish]],
    ['in the usual dinner', [...usual.filter((card) => card.id !== dish.id), dish]],
  ])('fits, two pairs of hands, %s', (_title, menu) => {
    const supper: Supper = { roast: rib, with: menu, helper: true };
    const made = planned(supper);
    expectAllPlaced(made, supper);
    expect(made.shortfalls).toEqual([]);
    expectOvenTolerated(made, supper);
  });
});

test('one cook alone can make the usual dinner with gravy', () => {
  const gravy = cards.filter((card) => card.id === 'pan-gravy');
  expect(planned({ roast: rib, with: [...usual, ...gravy] }).shortfalls).toEqual([]);
});
