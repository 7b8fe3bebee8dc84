/**
 * Where a roast is pulled, from facts and from a forecast made by hand: a core that climbs straight in the
 * oven and by an exponential in the rest, so that every pull can be reckoned with a pencil.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMinutes } from '../../src/base/time.ts';
import { celsiusOfFahrenheit, fahrenheitOfCelsius } from '../../src/base/units.ts';
import { type Dinner, dinnerOf } from '../../src/kitchen/dinner.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import type { Forecast } from '../../src/kitchen/forecast.ts';
import {
  aimedPull,
  fetchMinutesOf,
  soonestKnifeMinutes,
  usualPull,
} from '../../src/planner/aim.ts';
import { riseHighKelvin, riseReadHighKelvin, roastOf } from '../../src/planner/roast-day.ts';
import { at, factsOf, withMore } from '../harness/day.ts';

const target = celsiusOfFahrenheit(130);
const inAt = at('16:00');

const sure = (value: number) => ({ p10: value, p50: value, p90: value });

interface Straight {
  pullCelsius: number;
  /** Minutes from the roast going in to that pull. */
  pullMinute: number;
  kelvinPerMinute: number;
  /** How far a rest without end would carry the core. */
  riseKelvin: number;
}

/** A third of an hour brings two thirds of the rise, roughly. */
const restMinutes = 20;

function straight({ pullCelsius, pullMinute, kelvinPerMinute, riseKelvin }: Straight): Forecast {
  const rows = Array.from({ length: 40 }, (_, row) => 5 * row);
  return {
    pullMinute: sure(pullMinute),
    core: rows.map((minute) => ({
      minute,
      celsius: sure(pullCelsius + (minute - pullMinute) * kelvinPerMinute),
    })),
    afterRest: rows.slice(1, 19).map((minutes) => ({
      minutesAfterPull: minutes,
      celsius: sure(pullCelsius + riseKelvin * (1 - Math.exp(-minutes / restMinutes))),
    })),
    peak: { celsius: sure(pullCelsius + riseKelvin), minutesAfterPull: sure(90) },
  } as unknown as Forecast;
}

/** The usual dinner with the roast in at four, and what came after. */
function dinnerWith(more: readonly (NewFact & { at: number })[], servingAt = at('19:00')): Dinner {
  const went = { type: 'step-done', step: 'roast-in', happenedAt: inAt, at: inAt } as const;
  return dinnerOf('aim', withMore(factsOf({ servingAt }), [went, ...more]));
}

const read = (time: string, fahrenheit: number): NewFact & { at: number } => ({
  type: 'reading-taken',
  celsius: celsiusOfFahrenheit(fahrenheit),
  happenedAt: at(time),
  at: at(time),
});

function aimed(dinner: Dinner, forecast: Straight, leastRestMinutes?: number): number {
  const roast = roastOf(dinner);
  if (!roast) throw new Error('no roast');
  const { pullCelsius } = forecast;
  const aim = { dinner, roast, serveCelsius: target, forecast: straight(forecast), pullCelsius };
  return aimedPull({ ...aim, roastInAt: inAt, leastRestMinutes });
}

const usual: Straight = {
  pullCelsius: celsiusOfFahrenheit(110),
  pullMinute: 100,
  kelvinPerMinute: 0.4,
  riseKelvin: 10,
};

describe('the pull that is aimed for', () => {
  it('is what the usual rest carries to the target', () => {
    const dinner = dinnerWith([]);
    const roast = roastOf(dinner);
    if (!roast) throw new Error('no roast');
    const of = (riseKelvin: number): number =>
      usualPull({
        dinner,
        roast,
        serveCelsius: target,
        forecast: straight({ ...usual, riseKelvin }),
        pullCelsius: usual.pullCelsius,
      });
    // In whole degrees of the household; a rise of 10 K is reached to nine tenths by then.
    expect(fahrenheitOfCelsius(of(10))).toBeCloseTo(Math.round(fahrenheitOfCelsius(of(10))), 6);
    expect(target - of(10)).toBeGreaterThan(8);
    expect(target - of(10)).toBeLessThan(11);
    // However much is promised, it comes out no lower than the widest rise allows.
    expect(target - of(60)).toBeCloseTo(riseHighKelvin, 1);
  });

  it('stays where it was while nobody has read the roast, and once it is out', () => {
    expect(aimed(dinnerWith([]), usual)).toBe(usual.pullCelsius);
    const out = { type: 'step-done', step: 'pull', happenedAt: at('17:30'), at: at('17:30') };
    const dinner = dinnerWith([read('17:00', 90), out as NewFact & { at: number }]);
    expect(aimed(dinner, { ...usual, pullMinute: 200 })).toBe(usual.pullCelsius);
  });

  it('brings the core to its target under the knife where there is time', () => {
    const dinner = dinnerWith([read('17:00', 90)]);
    const pull = aimed(dinner, usual);
    // By pencil: six guests are carved for in 8.5 minutes, so the knife goes in at 18:51:30.
    const later = (pull - usual.pullCelsius) / usual.kelvinPerMinute;
    const rest = 171.5 - 100 - later;
    const atKnife =
      pull + 2 * usual.kelvinPerMinute + usual.riseKelvin * (1 - Math.exp(-rest / restMinutes));
    expect(Math.abs(atKnife - target)).toBeLessThan(0.6);
  });

  it('counts on the rest that the dishes give a roast that is late anyway', () => {
    const dinner = dinnerWith([read('17:00', 90)]);
    const late = { ...usual, pullMinute: 170 };
    const pull = aimed(dinner, late, 30);
    expect(pull).toBeLessThan(aimed(dinner, late));
    const atKnife =
      pull + 2 * late.kelvinPerMinute + late.riseKelvin * (1 - Math.exp(-30 / restMinutes));
    expect(Math.abs(atKnife - target)).toBeLessThan(0.6);
  });

  it('lies the higher the later the roast, and the lower the more it climbs in the rest', () => {
    const dinner = dinnerWith([read('17:00', 90)]);
    const minutes = fc.integer({ min: 70, max: 200 });
    const rises = fc.double({ min: 2, max: 20, noNaN: true });
    fc.assert(
      fc.property(minutes, minutes, rises, rises, (one, other, rise, more) => {
        const [soon, late] = [Math.min(one, other), Math.max(one, other)];
        const [little, much] = [Math.min(rise, more), Math.max(rise, more)];
        // A new pull is told only where it is worth it: by less than that it may stay behind.
        const leeway = 0.9;
        const of = (pullMinute: number, riseKelvin: number): number =>
          aimed(dinner, { ...usual, pullMinute, riseKelvin });
        expect(of(soon, rise)).toBeLessThanOrEqual(of(late, rise) + leeway);
        expect(of(one, much)).toBeLessThanOrEqual(of(one, little) + leeway);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps between the widest rise and hardly any', () => {
    const dinner = dinnerWith([read('17:00', 90)]);
    const half = 0.3;
    expect(target - aimed(dinner, { ...usual, riseKelvin: 60 })).toBeLessThan(
      riseReadHighKelvin + half,
    );
    const none = target - aimed(dinner, { ...usual, riseKelvin: 0, kelvinPerMinute: 0.05 });
    expect(none).toBeGreaterThan(2 - half);
    expect(none).toBeLessThan(2 + half);
  });

  it('may lie lower where a hold goes on cooking', () => {
    const course = { oven: [], rest: 'low-oven', servingAt: at('20:00') } as const;
    const held = dinnerWith(
      [read('17:00', 90), { type: 'course-set', course: { ...course, oven: [] }, at: at('17:01') }],
      at('20:00'),
    );
    const tented = dinnerWith([read('17:00', 90)], at('20:00'));
    const climbing = { ...usual, riseKelvin: 24 };
    expect(aimed(held, climbing)).toBeLessThan(aimed(tented, climbing) - 3);
  });
});

describe('the soonest knife', () => {
  const soonest = (leastRestMinutes: number, pullFahrenheit: number): number => {
    const pullCelsius = celsiusOfFahrenheit(pullFahrenheit);
    const forecast = straight({ ...usual, pullCelsius });
    return soonestKnifeMinutes(forecast, {
      dinner: dinnerWith([read('17:00', 90)]),
      pullCelsius,
      leastRestMinutes,
    });
  };

  it('waits in the oven for what a cut rest does not bring', () => {
    // By pencil: 110 °F, 0.8 K while it is fetched, 5.3 K in a quarter of an hour; of 11.1 K, less the 0.6 K
    // that nobody is told of, 4.4 K are lacking, at 0.4 K a minute.
    expect(soonest(15, 110)).toBeCloseTo(15 + 11.1, 0);
  });

  it('is the rest itself where that is enough', () => {
    expect(soonest(15, 122)).toBe(15);
  });
});

describe('how soon this cook follows a call', () => {
  const looked = (minutes: readonly number[]): number => {
    const facts = minutes.flatMap((late, index): (NewFact & { at: number })[] => {
      const asked = addMinutes(at('16:40'), 20 * index);
      const told = addMinutes(asked, late);
      return [
        { type: 'step-called', call: `check-due:reading-${index + 1}`, step: 'check', at: asked },
        { type: 'reading-taken', celsius: 20 + 5 * index, happenedAt: told, at: told },
      ];
    });
    return fetchMinutesOf(dinnerWith(facts));
  };

  it('is two minutes until it has been seen, then between that and what was seen', () => {
    expect(looked([])).toBe(2);
    expect(looked([6])).toBeGreaterThan(2);
    expect(looked([6])).toBeLessThan(6);
    expect(looked([6, 6, 6])).toBeGreaterThan(looked([6]));
    expect(looked([0.5, 0.5])).toBeLessThan(2);
  });

  it('takes a look that was forgotten for no slow one', () => {
    expect(looked([90])).toBe(looked([30]));
  });
});
