/** Choi and Okos (1986) as ASHRAE prints them; compositions from the USDA standard reference. */
import { expect, it } from 'vitest';
import { gridOf } from '../../src/planner/heat/grid.ts';
import {
  componentDiffusivity,
  componentProperties,
  components,
  meatProperties,
} from '../../src/planner/heat/material.ts';
import { coreCelsius, startState } from '../../src/planner/heat/roast.ts';

it('each component’s published diffusivity is k/(rho cp) within 3.5 %, so no figure was mistyped', () => {
  for (const [name, rows] of Object.entries(components)) {
    for (const celsius of [20, 60]) {
      const { conductivity, density, specificHeat } = componentProperties(rows, celsius);
      const ratio = conductivity / (density * specificHeat) / componentDiffusivity(rows, celsius);
      expect(Math.abs(ratio - 1), `${name} at ${celsius}`).toBeLessThan(0.035);
    }
  }
});

it('raw rib (row 13824) at 40 °C has the mixture’s density, specific heat and conductivity', () => {
  const rib = meatProperties({ water: 0.5524, protein: 0.1653, fat: 0.261 }, 40);
  expect(rib.density).toBeCloseTo(1021, -1);
  expect(rib.specificHeat / 1000).toBeCloseTo(3.205, 1);
  expect(rib.conductivity).toBeCloseTo(0.441, 2);
});

it('a cell is held at what it was put in at, frozen or not', () => {
  const grid = gridOf({ radiusMetres: 0.06, halfLengthMetres: 0.08 }, { rings: 5, slices: 6 });
  for (const celsius of [-18, -6, -3.9, -2, -1.2, -0.5, 0, 5, 20])
    expect(coreCelsius(startState(grid, celsius, undefined), grid)).toBeCloseTo(celsius, 9);
});
