/**
 * One member of the ensemble: explicit finite volumes for the inside, one warm Newton step a surface
 * cell for the skin. The skin holds no heat; it balances convection, radiation, evaporation from its
 * wet part, and conduction to the middle of the cell behind it.
 */
import type { Grid } from './grid.ts';
import { heatPerConvectionPascal, latentHeat, vapourTable } from './vapour.ts';

const stefanBoltzmann = 5.670374419e-8;
const kelvin = 273.15;
/** Meat freezes from about −1 °C down; what freezing holds back, as kelvin of thawed meat. */
export const freezingCelsius = -1;
export const freezingKelvin = 58;

/**
 * A skin never dries up: the front of evaporation withdraws under the crust and goes on giving off this
 * share of what it gave when it was wet. Common practice of drying models, no single source.
 */
const crustShare = 0.2;

/** What a roast is made of, one member's guess. */
export interface Body {
  /** W/(m K) */
  conductivity: number;
  /** J/(m³ K) */
  heatCapacity: number;
  /** kg/m³ */
  density: number;
  /** Wet share of the skin when it goes in, 0 to 1, and the loss (kg/m²) that halves what is above the crust's share. */
  wetness: number;
  dryingLoss: number;
}

/** What surrounds it for one step. */
export interface Surroundings {
  airCelsius: number;
  radiantCelsius: number;
  /** W/(m² K) */
  convection: number;
  /** Emissivity times what of the view is not another cold surface. */
  radiation: number;
  vapourPascals: number;
  /** What of the evaporation a cover lets pass, 0 to 1. */
  vapourPasses: number;
}

export interface RoastState {
  /** Temperatures of the cells; below freezing, what they would be if freezing held nothing back. */
  cells: Float64Array;
  rimSkin: Float64Array;
  endSkin: Float64Array;
  /** kg/m² gone from each skin so far. */
  rimLoss: Float64Array;
  endLoss: Float64Array;
  mayBeFrozen: boolean;
}

export function startState(
  grid: Grid,
  startCelsius: number,
  frozenHeart: { share: number } | undefined,
): RoastState {
  const { rings, slices } = grid;
  const cells = new Float64Array(rings * slices).fill(thawed(startCelsius));
  if (frozenHeart !== undefined) {
    for (let slice = 0; slice < slices; slice += 1) {
      for (let ring = 0; ring < rings; ring += 1) {
        const depth = Math.max((ring + 0.5) / rings, (slice + 0.5) / slices);
        const inside = depth < 0.75;
        cells[slice * rings + ring] = inside
          ? freezingCelsius - frozenHeart.share * freezingKelvin
          : 1;
      }
    }
  }
  const skin = Math.max(0, startCelsius);
  return {
    cells,
    rimSkin: new Float64Array(slices).fill(skin),
    endSkin: new Float64Array(rings).fill(skin),
    rimLoss: new Float64Array(slices),
    endLoss: new Float64Array(rings),
    mayBeFrozen: frozenHeart !== undefined || startCelsius < freezingCelsius,
  };
}

export const copyState = (state: RoastState): RoastState => ({
  cells: state.cells.slice(),
  rimSkin: state.rimSkin.slice(),
  endSkin: state.endSkin.slice(),
  rimLoss: state.rimLoss.slice(),
  endLoss: state.endLoss.slice(),
  mayBeFrozen: state.mayBeFrozen,
});

/** Freezing happens over some three kelvin; below that, ice warms with about half the heat. */
const slushKelvin = 3;
const iceShare = 0.55;

/** The held temperature of a cell from its true one, and back; the two agree above freezing. */
const thawed = (celsius: number): number => {
  const below = freezingCelsius - celsius;
  if (below <= 0) return celsius;
  return below < slushKelvin
    ? freezingCelsius - (freezingKelvin * below) / slushKelvin
    : freezingCelsius - freezingKelvin - iceShare * (below - slushKelvin);
};
const trueCelsius = (held: number): number => {
  const below = freezingCelsius - held;
  if (below <= 0) return held;
  return below < freezingKelvin
    ? freezingCelsius - (slushKelvin * below) / freezingKelvin
    : freezingCelsius - slushKelvin - (below - freezingKelvin) / iceShare;
};

/** Temperature on the axis in the mid-plane, from the two innermost rings and slices. */
export function coreCelsius(state: RoastState, grid: Grid): number {
  const { cells } = state;
  const first = cells[0]!;
  // A parabola flat at the centre through the two innermost cell middles, one way and the other.
  const core = first - (cells[1]! - first) / 8 - (cells[grid.rings]! - first) / 8;
  return state.mayBeFrozen ? trueCelsius(core) : core;
}

/**
 * How the temperature grows with the square of the distance from the core, K/m²: mean of the way out to
 * the rim and the way to an end.
 */
export function curvature({ cells }: RoastState, grid: Grid): number {
  const outward = (cells[1]! - cells[0]!) / (2 * grid.ringMetres * grid.ringMetres);
  const along = (cells[grid.rings]! - cells[0]!) / (2 * grid.sliceMetres * grid.sliceMetres);
  return (outward + along) / 2;
}

/** The longest stable step in seconds, with a margin: the corner cell sets it. */
export function stepSeconds(grid: Grid, body: Body): number {
  const diffusivity = body.conductivity / body.heatCapacity;
  const { ringMetres, sliceMetres } = grid;
  return 0.28 / (diffusivity * (1 / (ringMetres * ringMetres) + 1 / (sliceMetres * sliceMetres)));
}

/** Scratch for the next temperatures, so that a step allocates nothing. */
export const scratchOf = (grid: Grid): Float64Array => new Float64Array(grid.rings * grid.slices);

/** Advances the state by `seconds`, no longer than stepSeconds allows. Returns the share of mass lost. */
export function step(
  state: RoastState,
  grid: Grid,
  body: Body,
  around: Surroundings,
  seconds: number,
  scratch: Float64Array,
): number {
  diffuse(state, grid, (seconds * body.conductivity) / body.heatCapacity, scratch);
  const { rings, slices } = grid;
  const air = airOf(body, around, seconds);
  const { cells } = state;
  const rim = { first: rings - 1, stride: rings, count: slices };
  const end = { first: (slices - 1) * rings, stride: 1, count: rings };
  const rimGone = exchange(cells, scratch, state.rimSkin, state.rimLoss, rim, air, {
    link: (2 * body.conductivity) / grid.ringMetres,
    gain: (seconds * grid.rimAreaOverVolume) / body.heatCapacity,
    shares: grid.rimShares,
  });
  const endGone = exchange(cells, scratch, state.endSkin, state.endLoss, end, air, {
    link: (2 * body.conductivity) / grid.sliceMetres,
    gain: (seconds * grid.endAreaOverVolume) / body.heatCapacity,
    shares: grid.endShares,
  });
  return (rimGone + endGone) / body.density;
}

/** Conduction inside; leaves the old true temperatures in `old`. */
function diffuse(state: RoastState, grid: Grid, conduction: number, old: Float64Array): void {
  const { cells } = state;
  const { rings, slices, inward, outward } = grid;
  if (state.mayBeFrozen) {
    let frozen = false;
    for (let i = 0; i < cells.length; i += 1) {
      if (cells[i]! < freezingCelsius) frozen = true;
      old[i] = trueCelsius(cells[i]!);
    }
    if (!frozen) state.mayBeFrozen = false;
  } else old.set(cells);
  const along = grid.along * conduction;
  for (let slice = 0; slice < slices; slice += 1) {
    const base = slice * rings;
    const before = slice > 0 ? base - rings : base;
    const after = slice < slices - 1 ? base + rings : base;
    let here = old[base]!;
    let flow = 0;
    for (let ring = 0; ring < rings; ring += 1) {
      const next = ring < rings - 1 ? old[base + ring + 1]! : here;
      const axial = old[before + ring]! + old[after + ring]! - here - here;
      // What flows out to the next ring comes in there, by that ring's own volume.
      const outflow = next - here;
      cells[base + ring]! +=
        conduction * (outward[ring]! * outflow - inward[ring]! * flow) + along * axial;
      flow = outflow;
      here = next;
    }
  }
}

/** What a skin meets in one step, worked out once for all its cells. */
interface Air {
  celsius: number;
  /** W/(m² K) */
  convection: number;
  /** W/(m² K⁴), and what the walls send, W/m². */
  glow: number;
  wallGlow: number;
  vapourPascals: number;
  /** W/m² for each pascal from a skin that has lost nothing, and the loss that halves it, kg/m². */
  draw: number;
  dryingLoss: number;
  seconds: number;
}

function airOf(body: Body, around: Surroundings, seconds: number): Air {
  const wall = around.radiantCelsius + kelvin;
  const glow = around.radiation * stefanBoltzmann;
  return {
    celsius: around.airCelsius,
    convection: around.convection,
    glow,
    wallGlow: glow * wall * wall * wall * wall,
    vapourPascals: around.vapourPascals,
    draw: body.wetness * around.vapourPasses * around.convection * heatPerConvectionPascal,
    dryingLoss: body.dryingLoss,
    seconds,
  };
}

/** Which cells lie behind a skin. */
interface Behind {
  first: number;
  stride: number;
  count: number;
}

interface Skin {
  /** W/(m² K) to the middle of the cell behind. */
  link: number;
  /** Kelvin of that cell for each W/m² in this step. */
  gain: number;
  /** Area of each skin cell over the roast's volume, 1/m. */
  shares: Float64Array;
}

/** One Newton step for each skin cell from where it stood; returns kg evaporated for each m³ of roast. */
function exchange(
  cells: Float64Array,
  old: Float64Array,
  skins: Float64Array,
  losses: Float64Array,
  { first, stride, count }: Behind,
  air: Air,
  { link, gain, shares }: Skin,
): number {
  const { pascals, step: tableStep, low, high } = vapourTable;
  const { celsius, convection, glow, wallGlow, vapourPascals, draw, dryingLoss, seconds } = air;
  let lost = 0;
  let cell = first;
  for (let index = 0; index < count; index += 1) {
    const skin = skins[index]!;
    const behind = old[cell]!;
    const place = (skin - low) / tableStep;
    const row = place | 0;
    const left = pascals[row]!;
    const slope = pascals[row + 1]! - left;
    const pressure = left + slope * (place - row) - vapourPascals;
    const wet = dryingLoss / (dryingLoss + losses[index]!);
    const drawn = pressure > 0 ? draw * (crustShare + (1 - crustShare) * wet) : 0;
    const own = skin + kelvin;
    const cube = glow * own * own * own;
    const net =
      convection * (celsius - skin) +
      wallGlow -
      cube * own -
      drawn * pressure +
      link * (behind - skin);
    const steep = convection + 4 * cube + (drawn * slope) / tableStep + link;
    let next = skin + net / steep;
    if (next > high - 5) next = high - 5;
    if (next < low + 5) next = low + 5;
    skins[index] = next;
    // The loss goes with the balance just struck, not with the skin before it.
    const evaporated = drawn * (pressure + (slope / tableStep) * (next - skin));
    if (evaporated > 0) {
      const gone = (evaporated * seconds) / latentHeat;
      losses[index]! += gone;
      lost += gone * shares[index]!;
    }
    cells[cell]! += gain * link * (next - behind);
    cell += stride;
  }
  return lost;
}
