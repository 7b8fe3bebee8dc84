/**
 * Medians against published roasting charts: foodsafety.gov (the current edition, to 145 °F), the Defense
 * Commissary Agency's beef chart, and the beef industry's roasting guidelines (times from the refrigerator,
 * pulled at 135 °F for 145). Every row is listed in docs/heat.md; those that miss are named there with the
 * reason. A chart's row is a band of habits: half a band either side is allowed here.
 */
import { describe, expect, it } from 'vitest';
import {
  celsiusOfFahrenheit,
  fahrenheitOfCelsius,
  kilogramsOfPounds,
} from '../../src/base/units.ts';
import { cutOf } from '../../src/bridges/lines/cuts.ts';
import type { Forecast } from '../../src/kitchen/forecast.ts';
import { forecast } from '../../src/planner/heat/forecast.ts';

interface Roast {
  cut: string;
  pounds: number;
  bones?: number;
  oven: readonly (readonly [minute: number, fahrenheit: number])[];
  pullFahrenheit: number;
}

function roasted({ cut, pounds, bones, oven, pullFahrenheit }: Roast): Forecast {
  const known = cutOf(cut)!;
  return forecast({
    roast: {
      shape: known.shape,
      boneless: known.boneless ? true : undefined,
      kilograms: kilogramsOfPounds(pounds),
      bones,
      startCelsius: celsiusOfFahrenheit(40),
    },
    oven: oven.map(([minute, fahrenheit]) => ({
      minute,
      celsius: celsiusOfFahrenheit(fahrenheit),
    })),
    readings: [],
    nowMinute: 0,
    pullCelsius: celsiusOfFahrenheit(pullFahrenheit),
    rest: 'tented',
    seed: 3,
    members: 96,
  });
}

describe('published charts', () => {
  it.each([
    // foodsafety.gov and the Defense Commissary Agency, minutes a pound.
    ['rib-roast', 4, 325, 23, 30],
    ['rib-roast', 5, 325, 23, 30],
    ['rib-roast', 6, 325, 23, 30],
    ['rib-roast', 8, 325, 19, 25],
    ['rib-roast', 10, 325, 19, 21],
    ['boneless-rib-roast', 4, 325, 28, 43],
    ['boneless-rib-roast', 5, 325, 28, 33],
    ['boneless-rib-roast', 6, 325, 28, 33],
    ['round', 2.5, 325, 30, 35],
    ['round', 3, 325, 30, 35],
    ['round', 4, 325, 30, 35],
    ['round', 5, 325, 20, 25],
    ['leg-of-lamb', 5, 325, 20, 25],
    ['leg-of-lamb', 6, 325, 20, 25],
    ['leg-of-lamb', 7, 325, 20, 25],
    ['leg-of-lamb', 8, 325, 15, 20],
    ['pork-loin', 5, 350, 20, 20],
    ['pork-loin', 3, 325, 20, 30],
    // Minutes in all over the pounds.
    ['tenderloin', 4, 425, 45 / 4, 60 / 4],
    ['tenderloin', 5, 425, 45 / 5, 60 / 5],
    ['tenderloin', 6, 425, 45 / 6, 60 / 6],
  ])('%s of %d lb at %d °F: %d to %d minutes a pound to 145 °F, within a sixth', (...row) => {
    const [cut, pounds, fahrenheit, low, high] = row;
    const found = roasted({ cut, pounds, oven: [[0, fahrenheit]], pullFahrenheit: 145 });
    const rate = found.pullMinute.p50 / pounds;
    expect(rate).toBeGreaterThan((low * 5) / 6);
    expect(rate).toBeLessThan((high * 7) / 6);
  });

  it.each([
    [5, 135, 105, 135],
    [7, 135, 135, 150],
    [9, 135, 150, 180],
    [5, 150, 135, 165],
    [7, 150, 165, 180],
    [9, 150, 180, 210],
  ])('rib of %d lb at 350 °F, pulled at %d °F after %d to %d minutes in all', (...row) => {
    // Beef industry; the middle of each weight band.
    const [pounds, pullFahrenheit, low, high] = row;
    const found = roasted({ cut: 'rib', pounds, oven: [[0, 350]], pullFahrenheit });
    expect(found.pullMinute.p50).toBeGreaterThan(0.94 * low);
    expect(found.pullMinute.p50).toBeLessThan(1.06 * high);
    // The same table: pulled at 135 it shows 145 after fifteen minutes, at 150, 160.
    const quarter = found.afterRest.find((one) => one.minutesAfterPull === 15)!.celsius.p50;
    expect(Math.abs(fahrenheitOfCelsius(quarter) - pullFahrenheit - 10)).toBeLessThan(4);
  });

  it('time grows with mass to a power the charts give, 0.43 to 0.67', () => {
    const minutes = (pounds: number): number =>
      roasted({ cut: 'rib', pounds, oven: [[0, 325]], pullFahrenheit: 145 }).pullMinute.p50;
    const power = Math.log(minutes(10) / minutes(4)) / Math.log(10 / 4);
    expect(power).toBeGreaterThan(0.43);
    expect(power).toBeLessThan(0.67);
  });
});

describe('roasting experiments', () => {
  it('Lowe, Experimental Cookery: seared ribs of 12.1 lb, out at 65 °C, peak at 70', () => {
    const found = roasted({
      cut: 'rib',
      pounds: 12.1,
      oven: [
        [0, 500],
        [20, 300],
      ],
      pullFahrenheit: fahrenheitOfCelsius(65),
    });
    const rise = found.peak.celsius.p50 - 65;
    expect(rise).toBeGreaterThan(3);
    expect(rise).toBeLessThan(8);
  });

  it('a chef’s rise from 110 to 120 °F: 10 to 20 °F in half an hour (common practice, no source)', () => {
    for (const [pounds, bones] of [
      [7, 3],
      [10, 4],
      [12, 5],
    ] as const) {
      const found = roasted({ cut: 'rib', pounds, bones, oven: [[0, 325]], pullFahrenheit: 115 });
      const half = found.afterRest.find((one) => one.minutesAfterPull === 30)!.celsius.p50;
      const rise = fahrenheitOfCelsius(half) - 115;
      expect(rise, `${pounds} lb`).toBeGreaterThan(10);
      expect(rise, `${pounds} lb`).toBeLessThan(20);
    }
  });

  it('a lower oven leaves a narrower grey band and more of the slice near its core', () => {
    const slice = (fahrenheit: number) =>
      roasted({ cut: 'rib', pounds: 7, bones: 3, oven: [[0, fahrenheit]], pullFahrenheit: 120 })
        .slices[0]!;
    const [low, middle, high] = [225, 325, 450].map(slice);
    expect(low!.greyBandMillimetres.p50).toBeLessThan(middle!.greyBandMillimetres.p50);
    expect(middle!.greyBandMillimetres.p50).toBeLessThan(high!.greyBandMillimetres.p50);
    expect(low!.pinkFraction.p50).toBeGreaterThan(middle!.pinkFraction.p50);
    expect(middle!.pinkFraction.p50).toBeGreaterThan(high!.pinkFraction.p50);
    for (const { profile } of [low!, middle!, high!]) {
      expect(profile).toHaveLength(11);
      const hottest = profile.map((one) => one.hottestCelsius.p50);
      expect(hottest).toEqual(hottest.toSorted((a, b) => a - b));
      expect(profile.every((one) => one.celsius.p50 <= one.hottestCelsius.p50 + 1e-9)).toBe(true);
    }
  });
});
