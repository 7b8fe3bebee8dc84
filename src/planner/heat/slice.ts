/**
 * The slice that the knife cuts: temperatures along the shortest way from the core to the surface, now
 * and the hottest they have been, since colour follows the hottest. Kept while a member is followed.
 */
import type { Grid } from './grid.ts';
import { coreCelsius, type RoastState } from './roast.ts';

/** The rests after which the slice is judged, minutes: within the hour, and each hour of a hold. */
export const slicedAfter = (restMinutes: number): number[] => [
  20,
  40,
  ...Array.from(
    { length: Math.max(1, Math.floor(restMinutes / 60)) },
    (_, hour) => 60 * (hour + 1),
  ),
];
/** Places in the profile: 0 the core, the last the surface. */
export const profilePlaces = 11;
/** Above this muscle is grey right through (common practice, no source). */
const greyCelsius = 65;
/** What still counts as the core's doneness: 5 °F. */
const nearKelvin = 5 / 1.8;

export interface Slice {
  /** From the core to the surface, metres. */
  depthMetres: number;
  /** At even places from the core out. */
  celsius: Float64Array;
  /** The hottest so far, never falling outwards. */
  hottestCelsius: Float64Array;
  /** Depth of the grey rim, and the share of the slice's area no hotter than 5 °F above the core. */
  greyMillimetres: number;
  pinkFraction: number;
}

/** A disc is thinnest along its axis, a rod across it. */
const goesAlongAxis = ({ rings, slices, ringMetres, sliceMetres }: Grid): boolean =>
  slices * sliceMetres < rings * ringMetres;

/** The core, the cells on the way, the skin. */
export const wayLength = (grid: Grid): number =>
  (goesAlongAxis(grid) ? grid.slices : grid.rings) + 2;

function onTheWay(place: number, state: RoastState, grid: Grid): number {
  const along = goesAlongAxis(grid);
  if (place === 0) return coreCelsius(state, grid);
  if (place === wayLength(grid) - 1) return along ? state.endSkin[0]! : state.rimSkin[0]!;
  return state.cells[along ? (place - 1) * grid.rings : place - 1]!;
}

export function noteHottest(hottest: Float64Array, state: RoastState, grid: Grid): void {
  for (let place = 0; place < hottest.length; place += 1) {
    const now = onTheWay(place, state, grid);
    if (now > hottest[place]!) hottest[place] = now;
  }
}

export function sliceOf(hottest: Float64Array, state: RoastState, grid: Grid): Slice {
  const along = goesAlongAxis(grid);
  const count = hottest.length;
  const cells = count - 2;
  const depthMetres = cells * (along ? grid.sliceMetres : grid.ringMetres);
  const places = Float64Array.from({ length: count }, (_, place) =>
    place === 0 ? 0 : place === count - 1 ? 1 : (place - 0.5) / cells,
  );
  const now = Float64Array.from({ length: count }, (_, place) => onTheWay(place, state, grid));
  const rising = hottest.slice();
  for (let place = 1; place < count; place += 1)
    rising[place] = Math.max(rising[place]!, rising[place - 1]!);
  const grey = 1 - reach(places, rising, greyCelsius);
  // The rim is as deep all round, so a slice twice as wide as thick keeps more of its middle.
  const near = 1 - reach(places, rising, now[0]! + nearKelvin);
  const wideMetres = grid.rings * grid.ringMetres;
  const across = 1 - (near * depthMetres) / Math.max(depthMetres, wideMetres);
  return {
    depthMetres,
    celsius: evenly(places, now),
    hottestCelsius: evenly(places, rising),
    greyMillimetres: 1000 * grey * depthMetres,
    pinkFraction: (1 - near) * across,
  };
}

/** What is not known to be otherwise: one temperature throughout. */
export const evenSlice = (celsius: number): Slice => ({
  depthMetres: 0,
  celsius: new Float64Array(profilePlaces).fill(celsius),
  hottestCelsius: new Float64Array(profilePlaces).fill(celsius),
  greyMillimetres: 0,
  pinkFraction: 1,
});

/** How far out, 0 to 1, the values stay at or below a limit. */
function reach(places: Float64Array, values: Float64Array, limit: number): number {
  if (values[0]! > limit) return 0;
  for (let i = 1; i < values.length; i += 1) {
    const before = values[i - 1]!;
    if (values[i]! <= limit) continue;
    return (
      places[i - 1]! + ((places[i]! - places[i - 1]!) * (limit - before)) / (values[i]! - before)
    );
  }
  return 1;
}

function evenly(places: Float64Array, values: Float64Array): Float64Array {
  let row = 1;
  return Float64Array.from({ length: profilePlaces }, (_, index) => {
    const wanted = index / (profilePlaces - 1);
    while (row < places.length - 1 && places[row]! < wanted) row += 1;
    const share = (wanted - places[row - 1]!) / (places[row]! - places[row - 1]!);
    return values[row - 1]! + (values[row]! - values[row - 1]!) * share;
  });
}
