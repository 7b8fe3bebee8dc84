/** What is known of a kitchen: checks of its thermometer, and what a dinner taught. */
import { describe, expect, it } from 'vitest';
import { fahrenheitOfCelsius } from '../../src/base/units.ts';
import { usualKitchen } from '../../src/kitchen/forecast.ts';
import { rememberedKitchen } from '../../src/planner/heat/remember.ts';
import { boilingCelsiusAt, offsetFromCheck } from '../../src/planner/heat/thermometer-check.ts';

describe('checks of a thermometer', () => {
  it.each([
    // Printed table for calibrating meat thermometers by altitude, feet and °F.
    [0, 212],
    [1000, 210.2],
    [2000, 208.4],
    [3000, 206.6],
    [5000, 203],
    [7000, 199.3],
    [10_000, 193.6],
  ])('water boils at %d feet at %d °F, to 0.4 of a degree', (feet, fahrenheit) => {
    expect(
      Math.abs(fahrenheitOfCelsius(boilingCelsiusAt(feet * 0.3048)) - fahrenheit),
    ).toBeLessThan(0.4);
  });

  it('ice tells the offset outright; boiling water without the height hardly', () => {
    expect(offsetFromCheck({ readCelsius: 1.1, in: 'ice' }).mean).toBeCloseTo(1.1);
    const high = offsetFromCheck({ readCelsius: 95, in: 'boiling-water', metresAboveSea: 1524 });
    expect(Math.abs(high.mean)).toBeLessThan(0.3);
    const unknown = offsetFromCheck({ readCelsius: 95, in: 'boiling-water' });
    expect(unknown.deviation).toBeGreaterThan(2 * high.deviation);
  });
});

describe('a kitchen remembered', () => {
  it('keeps what was learnt, a little less surely, never less surely than knowing nothing', () => {
    const learnt = {
      ovenBiasKelvin: { mean: -11, deviation: 4 },
      thermometerOffsetKelvin: { mean: 0.6, deviation: 0.7 },
    };
    const { ovenBiasKelvin, thermometerOffsetKelvin } = rememberedKitchen(learnt);
    expect(ovenBiasKelvin.mean).toBe(-11);
    expect(ovenBiasKelvin.deviation).toBeGreaterThan(4);
    expect(ovenBiasKelvin.deviation).toBeLessThan(usualKitchen.ovenBiasKelvin.deviation);
    expect(thermometerOffsetKelvin.deviation).toBe(usualKitchen.thermometerOffsetKelvin.deviation);
  });
});
