/**
 * The meat of a simulated kitchen: heat conduction in a finite cylinder, half of it by symmetry, in
 * finite volumes stepped explicitly; convection, radiation and evaporation at its surface.
 */

import { seeded } from '../base/random.ts';
import { clamp } from '../base/units.ts';
import type { KitchenSetup } from './script.ts';

export interface RoastBody {
  /** Moves on by so many seconds in surroundings of that temperature. */
  step(seconds: number, place: 'oven' | 'tented' | 'open', surroundingsCelsius: number): void;
  coldest(): number;
}

const rings = 12;
const layers = 12;
const kelvinAtZero = 273.15;
/** Stefan-Boltzmann constant, W/(m² K⁴) (CODATA, exact). */
const radiationConstant = 5.670374419e-8;

/**
 * Beef's density and specific heat (order of published values for raw beef with about 60 % water),
 * from memory; the spread of the seed is wider than their doubt.
 */
const density = 1_060;
const heatCapacity = 3_300;
const conductivity = 0.48;
/**
 * A rib roast's section is about half as wide again as it is thick; such an ellipse conducts like a
 * circle of this share of its equal-area radius: (1/a² + 1/b²)/2 against 1/r².
 */
const sectionShare = 1 / Math.sqrt((1.5 + 1 / 1.5) / 2);
/** Length that one rib takes. Common practice, no source: ribs stand about two inches apart. */
const metresPerBone = 0.05;

/** Surface exchange by place: convection W/(m² K), share of a black body, share of a wet surface. */
const surfaces = {
  oven: { convection: 12, emissivity: 0.9, wet: 0.2 },
  tented: { convection: 4, emissivity: 0.15, wet: 0.1 },
  open: { convection: 7, emissivity: 0.9, wet: 0.2 },
};

/** Saturation pressure of water, Pa (Magnus form, WMO coefficients, from memory). */
const vapourPressure = (celsius: number): number =>
  611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));

export function roastBody(setup: KitchenSetup): RoastBody {
  const random = seeded(setup.seed);
  const vary = (value: number, deviation: number): number =>
    value * Math.exp(deviation * clamp(random.normal(), -2, 2));
  const volume = setup.kilograms / density;
  // Without bones the roast is as long as it is thick, one and a half times.
  const length =
    setup.bones > 0 ? setup.bones * metresPerBone : Math.cbrt((volume * 4 * 1.5 ** 2) / Math.PI);
  const radius = sectionShare * Math.sqrt(volume / (Math.PI * length));
  const grid = {
    dr: radius / rings,
    dz: length / 2 / layers,
    conductivity: vary(conductivity, 0.05),
    capacity: density * heatCapacity,
    convectionShare: vary(1, 0.1),
    wetShare: vary(1, 0.15),
  };
  let cells = Float64Array.from({ length: rings * layers }, () => setup.coreCelsius);
  return {
    step(seconds, place, surroundings) {
      // Half of the explicit method's limit, so that no cell can overshoot.
      const limit = grid.capacity / (4 * grid.conductivity * (1 / grid.dr ** 2 + 1 / grid.dz ** 2));
      const steps = Math.ceil(seconds / limit);
      for (let n = 0; n < steps; n += 1)
        cells = stepped(cells, grid, seconds / steps, { ...surfaces[place], surroundings });
    },
    coldest: () => cells.reduce((low, value) => Math.min(low, value), Number.POSITIVE_INFINITY),
  };
}

type Grid = {
  [K in 'dr' | 'dz' | 'conductivity' | 'capacity' | 'convectionShare' | 'wetShare']: number;
};
type Surface = { [K in 'convection' | 'emissivity' | 'wet' | 'surroundings']: number };

/** One explicit step of all cells; ring 0 is the axis, layer 0 the middle of the length. */
function stepped(
  cells: Float64Array<ArrayBuffer>,
  grid: Grid,
  seconds: number,
  surface: Surface,
): Float64Array<ArrayBuffer> {
  const { dr, dz, conductivity: k } = grid;
  const at = (ring: number, layer: number): number => cells[layer * rings + ring] ?? 0;
  const next = new Float64Array(cells.length);
  for (let layer = 0; layer < layers; layer += 1) {
    for (let ring = 0; ring < rings; ring += 1) {
      const here = at(ring, layer);
      const inner = ring * dr;
      const outer = inner + dr;
      // Areas and volume per radian.
      const face = (outer ** 2 - inner ** 2) / 2;
      const side =
        ring + 1 < rings
          ? (k * (at(ring + 1, layer) - here)) / dr
          : inflow(here, dr / 2, grid, surface);
      const end =
        layer + 1 < layers
          ? (k * (at(ring, layer + 1) - here)) / dz
          : inflow(here, dz / 2, grid, surface);
      const in_ = ring > 0 ? (k * (at(ring - 1, layer) - here)) / dr : 0;
      const down = layer > 0 ? (k * (at(ring, layer - 1) - here)) / dz : 0;
      const heat = (side * outer + in_ * inner) * dz + (end + down) * face;
      next[layer * rings + ring] = here + (heat * seconds) / (grid.capacity * face * dz);
    }
  }
  return next;
}

/**
 * Heat into the outermost cell, W/m²: what the surface takes from the room is what it conducts
 * inward, and the surface temperature for which that holds is found by bisection.
 */
function inflow(cell: number, depth: number, grid: Grid, surface: Surface): number {
  const conducted = (skin: number): number => (grid.conductivity * (skin - cell)) / depth;
  let low = Math.min(cell, surface.surroundings) - 30;
  let high = Math.max(cell, surface.surroundings);
  for (let n = 0; n < 18; n += 1) {
    const skin = (low + high) / 2;
    if (taken(skin, grid, surface) > conducted(skin)) low = skin;
    else high = skin;
  }
  return conducted((low + high) / 2);
}

/** What the surface takes from its surroundings at a temperature of its own, W/m². */
function taken(skin: number, grid: Grid, surface: Surface): number {
  const { surroundings } = surface;
  const convection = surface.convection * grid.convectionShare;
  const radiated =
    surface.emissivity *
    radiationConstant *
    ((surroundings + kelvinAtZero) ** 4 - (skin + kelvinAtZero) ** 4);
  // Lewis relation: mass follows heat. The air is a room's, taken to hold 1 kPa of vapour.
  const latentPerPascal = (convection * 0.622 * 2.3e6) / (101_325 * 1_007);
  const wet = surface.wet * grid.wetShare;
  // Above the boiling point what is left to evaporate is given by the heat, not by the air.
  const evaporated =
    wet * latentPerPascal * Math.max(0, vapourPressure(Math.min(skin, 100)) - 1_000);
  return convection * (surroundings - skin) + radiated - evaporated;
}
