/**
 * The kitchen that the bench cooks in (bench/heat/kitchen): it must itself pass the joint check of charts,
 * rise and loss at its median, and it must not be the forecaster's own model in other clothes.
 */
import { describe, expect, it } from 'vitest';
import { medianDinner } from '../../bench/heat/kitchen/dice.ts';
import { cook } from '../../bench/heat/kitchen/dinner.ts';
import { Kitchen } from '../../bench/heat/kitchen/kitchen.ts';
import { forecast } from '../../src/planner/heat/forecast.ts';

const dinner = medianDinner();
const truth = cook(dinner);

describe('the independent kitchen', () => {
  it('at its median, near five pounds at 325 °F to 145 °F: time, rise and loss', () => {
    // foodsafety.gov and the Defense Commissary Agency; Lowe; as in forecast.test.ts.
    const pounds = truth.kilograms / 0.45359237;
    expect(pounds).toBeGreaterThan(4);
    expect(pounds).toBeLessThan(5.2);
    expect(truth.pullMinute).toBeGreaterThan(100);
    expect(truth.pullMinute).toBeLessThan(156);
    expect(truth.peakCelsius - 62.8).toBeGreaterThan(2);
    expect(truth.peakCelsius - 62.8).toBeLessThan(8);
    expect(truth.lossFraction).toBeGreaterThan(0.13);
    expect(truth.lossFraction).toBeLessThan(0.3);
  });

  it('is another model: told all it can be told, the forecast still errs along the way', () => {
    const found = forecast({
      roast: {
        shape: {
          form: 'rib',
          kilogramsPerBone: 1.05,
          composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
        },
        kilograms: truth.kilograms,
        bones: 2,
        startCelsius: 4.4,
      },
      oven: dinner.program,
      readings: [30, 60, 90].map((minute) => ({ minute, celsius: truth.core[minute]! })),
      nowMinute: 90,
      pullCelsius: dinner.pullCelsius,
      rest: 'tented',
      kitchen: {
        ovenBiasKelvin: { mean: 0, deviation: 0.1 },
        thermometerOffsetKelvin: { mean: 0, deviation: 0.1 },
      },
      seed: 1,
    });
    expect(Math.abs(found.pullMinute.p50 - truth.pullMinute)).toBeGreaterThan(0.5);
    expect(Math.abs(found.pullMinute.p50 - truth.pullMinute)).toBeLessThan(15);
  });

  it('can be stepped: an oven turned down, a door, out on the board and back', () => {
    const kitchen = new Kitchen({ ...dinner, restConvection: 6, dialCelsius: 230 });
    kitchen.wait(20);
    kitchen.setOven(110);
    kitchen.wait(40);
    const wall = kitchen.wallCelsius;
    expect(wall).toBeLessThan(150);
    kitchen.openDoor();
    kitchen.wait(1);
    expect(kitchen.wallCelsius).toBeLessThan(wall + 3);
    const inside = kitchen.coreCelsius;
    kitchen.takeOut({ tented: false });
    kitchen.wait(10);
    expect(kitchen.coreCelsius).toBeGreaterThan(inside);
    kitchen.putIn();
    kitchen.wait(5);
    expect(kitchen.minute).toBe(76);
    expect(kitchen.reading()).toBeGreaterThan(kitchen.coreCelsius - 1);
  });
});
