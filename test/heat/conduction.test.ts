/**
 * The inside of the roast against exact series. Source: the series solutions for convection at the
 * surface in Carslaw and Jaeger, "Conduction of Heat in Solids", and any heat-transfer handbook; Bessel
 * functions from the general-purpose `bessel` package, good to 1e-8.
 */
import { besselj } from 'bessel';
import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { gridOf } from '../../src/planner/heat/grid.ts';
import {
  type Body,
  coreCelsius,
  type Surroundings,
  scratchOf,
  startState,
  step,
  stepSeconds,
} from '../../src/planner/heat/roast.ts';

/** Roots of f, rising, one in each bracket. */
function root(f: (x: number) => number, low: number, high: number): number {
  let a = low;
  let b = high;
  for (let i = 0; i < 200; i += 1) {
    const middle = (a + b) / 2;
    if (f(a) * f(middle) <= 0) b = middle;
    else a = middle;
  }
  return (a + b) / 2;
}

/** Centre of a slab: zeta tan(zeta) = Bi. */
function slabCentre(biot: number, fourier: number): number {
  let sum = 0;
  for (let n = 0; n < 60; n += 1) {
    const zeta = root(
      (x) => x * Math.sin(x) - biot * Math.cos(x),
      n * Math.PI,
      n * Math.PI + Math.PI / 2,
    );
    const share = (4 * Math.sin(zeta)) / (2 * zeta + Math.sin(2 * zeta));
    sum += share * Math.exp(-zeta * zeta * fourier);
  }
  return sum;
}

/** Centre of a long cylinder: zeta J1(zeta) = Bi J0(zeta). */
function cylinderCentre(biot: number, fourier: number): number {
  const f = (x: number): number => x * besselj(x, 1) - biot * besselj(x, 0);
  let sum = 0;
  let found = 0;
  for (let x = 0.001; found < 25; x += 0.02) {
    if (f(x) * f(x + 0.02) > 0) continue;
    found += 1;
    const zeta = root(f, x, x + 0.02);
    const j0 = besselj(zeta, 0);
    const j1 = besselj(zeta, 1);
    sum += ((2 / zeta) * j1 * Math.exp(-zeta * zeta * fourier)) / (j0 * j0 + j1 * j1);
  }
  return sum;
}

/** Centre of a sphere: 1 - zeta cot(zeta) = Bi. */
function sphereCentre(biot: number, fourier: number): number {
  let sum = 0;
  for (let n = 0; n < 60; n += 1) {
    const zeta = root(
      (x) => (1 - biot) * Math.sin(x) - x * Math.cos(x),
      n * Math.PI + 1e-9,
      (n + 1) * Math.PI,
    );
    const share = (4 * (Math.sin(zeta) - zeta * Math.cos(zeta))) / (2 * zeta - Math.sin(2 * zeta));
    sum += share * Math.exp(-zeta * zeta * fourier);
  }
  return sum;
}

const dry: Surroundings = {
  airCelsius: 163,
  radiantCelsius: 163,
  convection: 20,
  radiation: 0,
  vapourPascals: 0,
  vapourPasses: 0,
};
const body: Body = {
  conductivity: 0.45,
  heatCapacity: 1030 * 3300,
  density: 1030,
  wetness: 0,
  dryingLoss: 5,
};

interface Run {
  radiusMetres: number;
  halfLengthMetres: number;
  cells: number;
  seconds: number;
  /** Steps for each that stability asks for. */
  fineness?: number;
}

function numericCore(run: Run): number {
  const { radiusMetres, halfLengthMetres, cells, seconds, fineness = 1 } = run;
  const grid = gridOf({ radiusMetres, halfLengthMetres }, { rings: cells, slices: cells });
  const state = startState(grid, 4.4, undefined);
  const steps = fineness * Math.ceil(seconds / stepSeconds(grid, body));
  const scratch = scratchOf(grid);
  for (let i = 0; i < steps; i += 1) step(state, grid, body, dry, seconds / steps, scratch);
  return coreCelsius(state, grid);
}

function exactCore({ radiusMetres, halfLengthMetres, seconds }: Omit<Run, 'cells'>): number {
  const diffusivity = body.conductivity / body.heatCapacity;
  const theta =
    slabCentre(
      (dry.convection * halfLengthMetres) / body.conductivity,
      (diffusivity * seconds) / halfLengthMetres ** 2,
    ) *
    cylinderCentre(
      (dry.convection * radiusMetres) / body.conductivity,
      (diffusivity * seconds) / radiusMetres ** 2,
    );
  return 163 - theta * (163 - 4.4);
}

const joint = { radiusMetres: 0.06, halfLengthMetres: 0.075, seconds: 7200 };

describe('the series themselves', () => {
  it('agree with printed centre values at a roast’s Fourier number', () => {
    // Full-series values for Bi 2 and 2.5 at Fo 0.2, where one term is wrong by up to 2.6 K.
    expect(slabCentre(2, 0.2)).toBeCloseTo(0.917892, 5);
    expect(cylinderCentre(2, 0.2)).toBeCloseTo(0.789986, 5);
    expect(sphereCentre(2.5, 0.2)).toBeCloseTo(0.598948, 5);
    expect(exactCore(joint)).toBeCloseTo(71.565, 2);
  });

  it('give 132.8 minutes for the spherical roast worked in Kreith, whose one term gives 134', () => {
    const radius = Math.cbrt((3 * 1.5) / (4 * Math.PI * 1000));
    const diffusivity = 0.5 / (1000 * 4000);
    const core = (minutes: number): number =>
      163 -
      (163 - 20) *
        sphereCentre((18 * radius) / 0.5, (diffusivity * minutes * 60) / (radius * radius));
    expect(root((minutes) => core(minutes) - 77, 60, 240)).toBeCloseTo(132.8, 1);
  });
});

describe('the finite volumes', () => {
  it('meet the exact finite cylinder to 0.1 K', () => {
    for (const seconds of [3600, 7200, 10_800])
      expect(
        Math.abs(numericCore({ ...joint, cells: 24, seconds }) - exactCore({ ...joint, seconds })),
      ).toBeLessThan(0.1);
  });

  it('meet a slab and a long cylinder, where one way is too long to matter', () => {
    const slab = { radiusMetres: 0.5, halfLengthMetres: 0.04, seconds: 5400 };
    const long = { radiusMetres: 0.045, halfLengthMetres: 0.5, seconds: 5400 };
    for (const run of [slab, long])
      expect(Math.abs(numericCore({ ...run, cells: 24 }) - exactCore(run))).toBeLessThan(0.1);
  });

  it('stay within half a kelvin on the coarse grid that a forecast uses', () => {
    expect(Math.abs(numericCore({ ...joint, cells: 8 }) - exactCore(joint))).toBeLessThan(0.5);
  });

  it('converge with the second power of the cell', () => {
    const miss = [8, 16, 32].map((cells) =>
      Math.abs(numericCore({ ...joint, cells }) - exactCore(joint)),
    );
    for (let i = 1; i < miss.length; i += 1) {
      const order = Math.log2(miss[i - 1]! / miss[i]!);
      expect(order).toBeGreaterThan(1.7);
      expect(order).toBeLessThan(2.5);
    }
  });

  it('step in time as a general-purpose ODE solver does on the same cells', () => {
    // odex: extrapolated midpoint rule with error control, an independent time stepper.
    const cells = 8;
    const grid = gridOf(joint, { rings: cells, slices: cells });
    const diffusivity = body.conductivity / body.heatCapacity;
    const series = (half: number, spacing: number): number => {
      const link = (2 * body.conductivity) / spacing;
      return (half * (dry.convection * link)) / (dry.convection + link) / body.heatCapacity;
    };
    const rim = series(grid.rimAreaOverVolume, grid.ringMetres);
    const end = series(grid.endAreaOverVolume, grid.sliceMetres);
    const slope = (_: number, y: number[]): number[] =>
      y.map((here, i) => {
        const ring = i % cells;
        const slice = Math.floor(i / cells);
        let rate = 0;
        if (ring > 0) rate += diffusivity * grid.inward[ring]! * (y[i - 1]! - here);
        if (ring < cells - 1) rate += diffusivity * grid.outward[ring]! * (y[i + 1]! - here);
        else rate += rim * (163 - here);
        if (slice > 0) rate += diffusivity * grid.along * (y[i - cells]! - here);
        if (slice < cells - 1) rate += diffusivity * grid.along * (y[i + cells]! - here);
        else rate += end * (163 - here);
        return rate;
      });
    const solver = new Solver(cells * cells);
    const y = solver.solve(slope, 0, new Array<number>(cells * cells).fill(4.4), joint.seconds).y;
    const reference = y[0]! - (y[1]! - y[0]!) / 8 - (y[cells]! - y[0]!) / 8;
    const miss = (fineness: number): number =>
      Math.abs(numericCore({ ...joint, cells, fineness }) - reference);
    expect(miss(1)).toBeLessThan(0.4);
    expect(miss(8)).toBeLessThan(0.05);
    // Explicit steps: half as long, half the miss.
    expect(Math.log2(miss(2) / miss(4))).toBeCloseTo(1, 0);
  });
});
