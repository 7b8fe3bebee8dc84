/** Published times, facts of the trade, and what must hold of any roast. */
import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import {
  celsiusOfFahrenheit,
  fahrenheitOfCelsius,
  kilogramsOfPounds,
} from '../../src/base/units.ts';
import type { Band, ForecastQuestion } from '../../src/kitchen/forecast.ts';
import { answer, believe, forecast, project } from '../../src/planner/heat/forecast.ts';

const rib = {
  form: 'rib' as const,
  kilogramsPerBone: 1.05,
  composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
};
interface Simple {
  pounds: number;
  bones?: number;
  ovenFahrenheit: number;
  pullFahrenheit: number;
  readings?: [minute: number, fahrenheit: number][];
}
const ask = ({ pounds, bones, ovenFahrenheit, pullFahrenheit, readings = [] }: Simple) =>
  ({
    roast: { shape: rib, kilograms: kilogramsOfPounds(pounds), bones, startCelsius: 4.4 },
    oven: [{ minute: 0, celsius: celsiusOfFahrenheit(ovenFahrenheit) }],
    readings: readings.map(([minute, fahrenheit]) => ({
      minute,
      celsius: celsiusOfFahrenheit(fahrenheit),
    })),
    nowMinute: Math.max(0, ...readings.map(([minute]) => minute)),
    pullCelsius: celsiusOfFahrenheit(pullFahrenheit),
    rest: 'tented',
    seed: 7,
  }) satisfies ForecastQuestion;

describe('a whole roast', () => {
  it('five pounds at 325 °F to 145 °F: time, rise and loss together', () => {
    // Charts of foodsafety.gov and the Defense Commissary Agency span 100 to 156 minutes; the rise and
    // the loss are Lowe's (Experimental Cookery: 4 to 5 K, 21 %) and the beef industry's (5.6 K).
    const found = forecast(ask({ pounds: 5, ovenFahrenheit: 325, pullFahrenheit: 145 }));
    expect(found.pullMinute.p50).toBeGreaterThan(100);
    expect(found.pullMinute.p50).toBeLessThan(156);
    const rise = found.peak.celsius.p50 - celsiusOfFahrenheit(145);
    expect(rise).toBeGreaterThan(2);
    expect(rise).toBeLessThan(8);
    expect(found.weightLossFraction.p50).toBeGreaterThan(0.13);
    expect(found.weightLossFraction.p50).toBeLessThan(0.3);
  });

  it('ten pounds, four bones, 450 °F for half an hour then 325 °F: common practice', () => {
    const found = forecast({
      ...ask({ pounds: 10, bones: 4, ovenFahrenheit: 450, pullFahrenheit: 110 }),
      oven: [
        { minute: 0, celsius: celsiusOfFahrenheit(450) },
        { minute: 30, celsius: celsiusOfFahrenheit(325) },
      ],
    });
    // Common practice, no source: 12 to 14 minutes a pound to 110 °F; 120 to 130 °F after 15 minutes.
    expect(found.pullMinute.p50 / 10).toBeGreaterThan(11.5);
    expect(found.pullMinute.p50 / 10).toBeLessThan(14.5);
    const quarter = found.afterRest.find((row) => row.minutesAfterPull === 15)!;
    expect(fahrenheitOfCelsius(quarter.celsius.p50)).toBeGreaterThan(118);
    expect(fahrenheitOfCelsius(quarter.celsius.p50)).toBeLessThan(130);
  });
});

describe('readings', () => {
  const good: [number, number][] = [
    [60, 68],
    [75, 84],
    [90, 97],
  ];
  const base = { pounds: 7, bones: 3, ovenFahrenheit: 325, pullFahrenheit: 120 };

  it('narrow the band', () => {
    const width = ({ p10, p90 }: Band): number => p90 - p10;
    const cold = forecast(ask(base));
    const warm = forecast(ask({ ...base, readings: good }));
    expect(width(warm.pullMinute)).toBeLessThan(0.7 * width(cold.pullMinute));
  });

  it('an outlier is named and changes nothing else', () => {
    const plain = forecast(ask({ ...base, readings: good }));
    const doubted = forecast(ask({ ...base, readings: [good[0]!, good[1]!, [80, 140], good[2]!] }));
    expect(doubted.suspectReadings.map((one) => one.index)).toEqual([2]);
    expect(doubted.pullMinute).toEqual(plain.pullMinute);
  });

  it('a figure in the other unit is told from a wrong one', () => {
    const found = forecast(ask({ ...base, readings: [good[0]!, good[1]!, [90, 36]] }));
    expect(found.suspectReadings).toEqual([{ index: 2, why: 'wrong-unit' }]);
  });
});

describe('one belief, several courses', () => {
  const question = ask({
    pounds: 7,
    bones: 3,
    ovenFahrenheit: 325,
    pullFahrenheit: 140,
    readings: [[70, 80]],
  });

  it('the same question answers bit for bit, remembered or not', () => {
    const first = JSON.stringify(forecast(question));
    for (let seed = 100; seed < 105; seed += 1) forecast({ ...question, seed, members: 16 });
    expect(JSON.stringify(forecast(question))).toBe(first);
    expect(JSON.stringify(answer(believe(question)))).toBe(first);
  });

  it('a lower oven from now on comes later', () => {
    const belief = believe(question);
    const { pullCelsius, rest } = question;
    const oven = [...question.oven, { minute: 75, celsius: celsiusOfFahrenheit(225) }];
    const slower = project(belief, { oven, pullCelsius, rest });
    expect(slower.pullMinute.p50).toBeGreaterThan(answer(belief).pullMinute.p50 + 5);
  });
});

const pounds = fc.double({ min: 1, max: 30, noNaN: true });
const oven = fc.integer({ min: 200, max: 480 });
const members = 24;

describe('any roast', () => {
  property.prop([pounds, oven], { numRuns: 25 })('hotter is never later', (weight, low) => {
    const at = (ovenFahrenheit: number): number =>
      forecast({ ...ask({ pounds: weight, ovenFahrenheit, pullFahrenheit: 125 }), members })
        .pullMinute.p50;
    expect(at(low + 40)).toBeLessThanOrEqual(at(low) + 0.01);
  });

  property.prop([pounds, oven], { numRuns: 25 })('heavier is never sooner', (weight, at) => {
    const of = (heavy: number): number =>
      forecast({ ...ask({ pounds: heavy, ovenFahrenheit: at, pullFahrenheit: 125 }), members })
        .pullMinute.p50;
    expect(of(weight * 1.1)).toBeGreaterThanOrEqual(of(weight) - 0.01);
  });

  property.prop([pounds, oven], { numRuns: 25 })(
    'the core stays between its start and its oven, and all is finite',
    (weight, at) => {
      const question = ask({ pounds: weight, ovenFahrenheit: at, pullFahrenheit: 125 });
      const found = forecast({ ...question, members });
      for (const { celsius } of found.core) {
        expect(celsius.p10).toBeGreaterThan(0);
        expect(celsius.p90).toBeLessThan(question.oven[0]!.celsius + 25);
      }
      expect(JSON.stringify(found)).not.toContain('null');
    },
  );
});

describe('a rest in a low oven that ends before the knife', () => {
  const rested = (rest: 'tented' | 'low-oven', hold?: ForecastQuestion['hold']) =>
    forecast({
      ...ask({ pounds: 9, bones: 4, ovenFahrenheit: 325, pullFahrenheit: 100 }),
      outMinute: 120,
      rest,
      hold,
      restMinutes: 120,
    }).afterRest.map(({ celsius }) => celsius.p50);

  it('is a tent where it ends as it begins, and the whole where it lasts', () => {
    expect(rested('low-oven', { fromMinutes: 0, toMinutes: 0 })).toEqual(rested('tented'));
    expect(rested('low-oven', { fromMinutes: 0, toMinutes: 120 })).toEqual(rested('low-oven'));
  });

  it('is the same as the whole until then, and no warmer after', () => {
    const whole = rested('low-oven');
    const cut = rested('low-oven', { fromMinutes: 0, toMinutes: 60 });
    expect(cut.slice(0, 12)).toEqual(whole.slice(0, 12));
    // To the hundredth: under foil a skin gives off a trace less at first.
    for (const [row, celsius] of cut.entries()) expect(celsius).toBeLessThan(whole[row]! + 0.01);
    expect(whole.at(-1)! - cut.at(-1)!).toBeGreaterThan(1);
    // What went in later is warmed less.
    expect(rested('low-oven', { fromMinutes: 30, toMinutes: 60 }).at(-1)).toBeLessThan(cut.at(-1)!);
  });
});
