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

/** What a roast is made of, one member's guess. */
export interface Body {
  /** W/(m K) */
  conductivity: number;
  /** J/(m³ K) */
  heatCapacity: number;
  /** kg/m³ */
  density: number;
  /** Wet share of the skin when it goes in, 0 to 1, and the loss (kg/m²) that halves it. */
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

/** The held temperature of a cell from its true one, and back; the two agree above freezing. */
const thawed = (celsius: number): number =>
  celsius >= freezingCelsius
    ? celsius
    : freezingCelsius - freezingKelvin + 0.55 * (celsius - freezingCelsius - 3);
const trueCelsius = (held: number): number => {
  if (held >= freezingCelsius) return held;
  const below = freezingCelsius - held;
  // Freezing happens over some three kelvin; below that, ice warms with about half the heat.
  return below < freezingKelvin
    ? freezingCelsius - (3 * below) / freezingKelvin
    : freezingCelsius - 3 - (below - freezingKelvin) / 0.55;
};

/** Temperature on the axis in the mid-plane, from the two innermost rings and slices. */
export function coreCelsius(state: RoastState, grid: Grid): number {
  const { cells } = state;
  const first = cells[0]!;
  // A parabola flat at the centre through the two innermost cell middles, one way and the other.
  const core = first - (cells[1]! - first) / 8 - (cells[grid.rings]! - first) / 8;
  return state.mayBeFrozen ? trueCelsius(core) : core;
}

/** How the temperature grows with the square of the distance from the core, K/m², in the mid-plane. */
export const curvature = (state: RoastState, grid: Grid): number =>
  (state.cells[1]! - state.cells[0]!) / (2 * grid.ringMetres * grid.ringMetres);

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
  const conduction = (seconds * body.conductivity) / body.heatCapacity;
  diffuse(state, grid, conduction, scratch);
  const { rings, slices, ringShare } = grid;
  const { cells, rimSkin, endSkin, rimLoss, endLoss } = state;
  let lost = 0;
  const rimGain = (seconds * grid.rimAreaOverVolume) / body.heatCapacity;
  const rimLink = (2 * body.conductivity) / grid.ringMetres;
  const rimShare = ringShare[rings - 1]! * grid.rimAreaOverVolume;
  for (let slice = 0; slice < slices; slice += 1) {
    const cell = slice * rings + rings - 1;
    const gone = balance(rimSkin, rimLoss, slice, scratch[cell]!, rimLink, body, around, seconds);
    cells[cell]! += rimGain * rimLink * (rimSkin[slice]! - scratch[cell]!);
    lost += gone * rimShare;
  }
  const endGain = (seconds * grid.endAreaOverVolume) / body.heatCapacity;
  const endLink = (2 * body.conductivity) / grid.sliceMetres;
  const last = (slices - 1) * rings;
  for (let ring = 0; ring < rings; ring += 1) {
    const cell = last + ring;
    const gone = balance(endSkin, endLoss, ring, scratch[cell]!, endLink, body, around, seconds);
    cells[cell]! += endGain * endLink * (endSkin[ring]! - scratch[cell]!);
    lost += gone * ringShare[ring]! * grid.endAreaOverVolume;
  }
  return lost / body.density;
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
    for (let ring = 0; ring < rings; ring += 1) {
      const i = base + ring;
      const here = old[i]!;
      let gain = 0;
      if (ring > 0) gain += inward[ring]! * (old[i - 1]! - here);
      if (ring < rings - 1) gain += outward[ring]! * (old[i + 1]! - here);
      let axial = 0;
      if (slice > 0) axial += old[i - rings]! - here;
      if (slice < slices - 1) axial += old[i + rings]! - here;
      cells[i]! += conduction * gain + along * axial;
    }
  }
}

/** One Newton step for one skin cell from where it stood; returns kg/m² evaporated. */
function balance(
  skins: Float64Array,
  losses: Float64Array,
  index: number,
  behind: number,
  link: number,
  body: Body,
  around: Surroundings,
  seconds: number,
): number {
  const skin = skins[index]!;
  const { pascals, step: tableStep, low } = vapourTable;
  const place = (skin - low) / tableStep;
  const row = place | 0;
  const left = pascals[row]!;
  const slope = pascals[row + 1]! - left;
  const pressure = left + slope * (place - row) - around.vapourPascals;
  const wet =
    (body.wetness * body.dryingLoss * around.vapourPasses) / (body.dryingLoss + losses[index]!);
  const draw = pressure > 0 ? wet * around.convection * heatPerConvectionPascal : 0;
  const wall = around.radiantCelsius + kelvin;
  const own = skin + kelvin;
  const ownSquare = own * own;
  const glow = around.radiation * stefanBoltzmann;
  const net =
    around.convection * (around.airCelsius - skin) +
    glow * (wall * wall * wall * wall - ownSquare * ownSquare) -
    draw * pressure +
    link * (behind - skin);
  const steep = around.convection + 4 * glow * ownSquare * own + (draw * slope) / tableStep + link;
  let next = skin + net / steep;
  if (next > vapourTable.high - 5) next = vapourTable.high - 5;
  if (next < vapourTable.low + 5) next = vapourTable.low + 5;
  skins[index] = next;
  // The loss goes with the balance just struck, not with the skin before it.
  const evaporated = draw * (pressure + (slope / tableStep) * (next - skin));
  const gone = evaporated > 0 ? (evaporated * seconds) / latentHeat : 0;
  losses[index]! += gone;
  return gone;
}
