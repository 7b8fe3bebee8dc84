import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMinutes } from '../../src/base/time.ts';
import { celsiusOfFahrenheit } from '../../src/base/units.ts';
import type { OvenMove } from '../../src/kitchen/plan.ts';
import { gridAt } from '../../src/planner/grid.ts';
import { householdOven, trueHeatCelsius } from '../../src/planner/household-oven.ts';
import { dishMoves } from '../../src/planner/oven-moves.ts';
import { changeMinutes, origin, type Problem, type Stay } from '../../src/planner/problem.ts';
import { noHurry } from '../../src/planner/solve/hurry.ts';

interface InOven {
  id: string;
  from: number;
  to: number;
  lowFahrenheit: number;
  highFahrenheit: number;
  likelyFahrenheit?: number;
}

const grid = gridAt(0);
const pullMinute = 60;

const stayOf = ({ id, from, to, ...heat }: InOven): Stay => ({
  task: id,
  from: { task: origin, plus: from },
  to: { task: origin, plus: to },
  lowCelsius: celsiusOfFahrenheit(heat.lowFahrenheit),
  highCelsius: celsiusOfFahrenheit(heat.highFahrenheit),
  likelyCelsius: celsiusOfFahrenheit(
    heat.likelyFahrenheit ?? (heat.lowFahrenheit + heat.highFahrenheit) / 2,
  ),
  shelves: 1,
  doorShutMinutes: 0,
});

/** A roast at 325 until minute 60, and what is in its oven beside it and after it. */
function turned(dishes: readonly InOven[]): { before: OvenMove[]; own: OvenMove[] } {
  const roast: InOven = {
    id: 'roast-in',
    from: 0,
    to: pullMinute,
    lowFahrenheit: 325,
    highFahrenheit: 325,
  };
  const stays = [roast, ...dishes].map(stayOf);
  const problem: Problem = {
    tasks: stays.map((stay) => ({
      id: stay.task,
      minutes: { low: 1, likely: 1, high: 1 },
    })),
    lags: [],
    resources: [],
    uses: [],
    ovens: [householdOven],
    stays,
  };
  const before: OvenMove[] = [
    { at: addMinutes(0, -30), celsius: celsiusOfFahrenheit(325), why: 'preheat' },
  ];
  const own = dishMoves({
    problem,
    grid,
    oven: 0,
    moves: before,
    solution: {
      starts: new Map(),
      ovens: stays.map(() => 0),
      clashes: 0,
      cost: 0,
      bound: 0,
      proven: true,
      arcs: [],
      hurry: noHurry,
      work: 0,
    },
  });
  return { before, own };
}

/** A thermostat swings by more than this. */
const swingKelvin = 1;

function minutesAmiss(dishes: readonly InOven[]): string[] {
  const { before, own } = turned(dishes);
  return dishes.flatMap((dish) => {
    const { lowCelsius, highCelsius } = stayOf(dish);
    const found: string[] = [];
    for (let minute = Math.max(dish.from, pullMinute); minute <= dish.to; minute += 1) {
      const celsius = trueHeatCelsius([...before, ...own], 0, addMinutes(0, minute));
      if (celsius < lowCelsius - swingKelvin || celsius > highCelsius + swingKelvin)
        found.push(`${dish.id} at ${minute}: ${celsius.toFixed(0)} °C`);
    }
    return found;
  });
}

/** Whether every two share a heat or stand apart by the oven's way from one to the other. */
const fits = (dishes: readonly InOven[]): boolean => {
  const stays: InOven[] = [
    { id: 'roast-in', from: 0, to: pullMinute, lowFahrenheit: 325, highFahrenheit: 325 },
    ...dishes,
  ];
  return stays.every((one) =>
    stays.every((other) => {
      const change = changeMinutes(stayOf(one), stayOf(other), householdOven);
      if (change === 0) return true;
      const back = changeMinutes(stayOf(other), stayOf(one), householdOven);
      return one.to + change <= other.from || other.to + back <= one.from;
    }),
  );
};

const dish = (id: string): fc.Arbitrary<InOven> =>
  fc
    .record({
      from: fc.integer({ min: 30, max: 150 }),
      minutes: fc.integer({ min: 5, max: 60 }),
      low: fc.integer({ min: 30, max: 95 }),
      width: fc.integer({ min: 1, max: 30 }),
    })
    .map(({ from, minutes, low, width }) => ({
      id,
      from,
      to: from + minutes,
      lowFahrenheit: 5 * low,
      highFahrenheit: 5 * (low + width),
    }));

describe('the dial of an oven', () => {
  it('takes a dish between the roast and a hotter one part of the way along', () => {
    const dishes: InOven[] = [
      { id: 'gratin', from: 40, to: 75, lowFahrenheit: 300, highFahrenheit: 400 },
      { id: 'puddings', from: 80, to: 100, lowFahrenheit: 450, highFahrenheit: 475 },
    ];
    // 325 to 450 takes eleven minutes, and five of them are left when the gratin is out.
    expect(minutesAmiss(dishes)).toEqual([]);
    const { own } = turned(dishes);
    expect(own).toHaveLength(1);
    expect(own[0]?.at).toBeLessThan(addMinutes(0, 75));
    expect(own[0]?.at).toBeGreaterThanOrEqual(addMinutes(0, pullMinute));
  });

  it('leaves a dial alone that all still to come bear', () => {
    const { own } = turned([
      { id: 'gratin', from: 65, to: 95, lowFahrenheit: 300, highFahrenheit: 400 },
      { id: 'rolls', from: 100, to: 110, lowFahrenheit: 275, highFahrenheit: 350 },
    ]);
    expect(own).toEqual([]);
  });

  it('turns once for what can share a heat, to one that they like', () => {
    const { own } = turned([
      {
        id: 'puddings',
        from: 90,
        to: 115,
        lowFahrenheit: 400,
        highFahrenheit: 475,
        likelyFahrenheit: 425,
      },
      {
        id: 'potatoes',
        from: 85,
        to: 115,
        lowFahrenheit: 375,
        highFahrenheit: 500,
        likelyFahrenheit: 425,
      },
    ]);
    expect(own.map((move) => move.celsius)).toEqual([celsiusOfFahrenheit(425)]);
  });

  // Any two that bear each other leave a way for all: McShane 1934, from memory.
  it('finds a heat for every minute of all that bear each other two by two', () => {
    let judged = 0;
    fc.assert(
      fc.property(fc.tuple(dish('a'), dish('b'), dish('c'), dish('d')), (dishes) => {
        fc.pre(fits(dishes));
        judged += 1;
        expect(minutesAmiss(dishes)).toEqual([]);
      }),
      { numRuns: 300, seed: 20261220, maxSkipsPerRun: 1000 },
    );
    expect(judged).toBeGreaterThan(200);
  });
});
