/**
 * Finite volumes on half an axisymmetric cylinder: rings by slices, the mid-plane a plane of symmetry.
 * Cells are numbered slice by slice from the mid-plane, inside a slice from the axis outwards.
 */
import type { Cylinder } from './geometry.ts';

export interface GridSize {
  rings: number;
  slices: number;
}

export interface Grid extends GridSize {
  ringMetres: number;
  sliceMetres: number;
  /** For each ring: inner and outer face over (volume × spacing), 1/m²; the outermost outer is 0. */
  inward: Float64Array;
  outward: Float64Array;
  /** 1/sliceMetres² */
  along: number;
  /** Area of the rim, and of an end, over the volume of the cell behind it, 1/m. */
  rimAreaOverVolume: number;
  endAreaOverVolume: number;
  /** Area of each slice's rim, and of each ring's end, over the whole volume, 1/m. */
  rimShares: Float64Array;
  endShares: Float64Array;
}

/** As many cells as make them about square, five across the shorter way; the same for all members. */
export function gridSizeOf({ radiusMetres, halfLengthMetres }: Cylinder): GridSize {
  const cell = Math.min(radiusMetres, halfLengthMetres) / 5;
  return {
    rings: Math.max(5, Math.min(11, Math.round(radiusMetres / cell))),
    slices: Math.max(5, Math.min(11, Math.round(halfLengthMetres / cell))),
  };
}

export function gridOf(cylinder: Cylinder, { rings, slices }: GridSize): Grid {
  const ringMetres = cylinder.radiusMetres / rings;
  const sliceMetres = cylinder.halfLengthMetres / slices;
  const inward = new Float64Array(rings);
  const outward = new Float64Array(rings);
  const shares = new Float64Array(rings);
  for (let ring = 0; ring < rings; ring += 1) {
    // A ring's face over its volume is r/(r̄ Δr), r̄ the middle of the ring.
    const middle = (ring + 0.5) * ringMetres * ringMetres * ringMetres;
    inward[ring] = (ring * ringMetres) / middle;
    outward[ring] = ring === rings - 1 ? 0 : ((ring + 1) * ringMetres) / middle;
    shares[ring] = (2 * ring + 1) / (rings * rings * slices);
  }
  const rimAreaOverVolume = rings / ((rings - 0.5) * ringMetres);
  const endAreaOverVolume = 1 / sliceMetres;
  return {
    rings,
    slices,
    ringMetres,
    sliceMetres,
    inward,
    outward,
    along: 1 / (sliceMetres * sliceMetres),
    rimAreaOverVolume,
    endAreaOverVolume,
    rimShares: new Float64Array(slices).fill(rimAreaOverVolume * shares[rings - 1]!),
    endShares: shares.map((share) => share * endAreaOverVolume),
  };
}
