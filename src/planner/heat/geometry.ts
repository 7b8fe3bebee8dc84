/**
 * The cylinder that stands for a cut: radius and half-length from form, mass, bones and density. A
 * rib roast grows along the spine, so its length follows its bones and its cross-section what is left;
 * other forms keep their proportions.
 */
import type { CutShape } from '../../kitchen/forecast.ts';

export interface Cylinder {
  radiusMetres: number;
  halfLengthMetres: number;
}

/** Width of one rib with its meat along the spine, metres. Common practice, no source. */
export const metresPerBone = 0.046;
/** A boneless rib, tied, is longer than thick; common practice, no source. */
export const bonelessRibAspect = 1.35;
export const defaultAspect = { 'long-cylinder': 2.5, ellipsoid: 1.4 } as const;
export const defaultKilogramsPerBone = 1.05;

/**
 * A cross-section is no circle: at equal area an oval of 3 to 2 cools as fast as a circle of some
 * 0.95 of the radius (first eigenvalue of the ellipse). An ellipsoid ends in a point where the
 * cylinder has a corner, which the same volume in a cylinder makes 4 % too quick.
 */
const roundness = { rib: 0.95, 'long-cylinder': 0.96, ellipsoid: 1.02 } as const;
/**
 * Grooves, bones and tapered ends bring the heat nearer to the core than in a smooth cylinder: all
 * lengths shrink so far. Set so that the medians fall among the published charts (docs/heat.md).
 */
const irregularity = 0.87;

export interface CylinderOptions {
  shape: CutShape;
  kilograms: number;
  bones: number | undefined;
  boneless: boolean;
  density: number;
  /** Multiplies length over diameter at equal volume; one unknown of a roast. */
  aspectFactor: number;
  /** Multiplies all lengths: what the true shape differs from a cylinder. */
  sizeFactor: number;
}

export function cylinderOf(options: CylinderOptions): Cylinder {
  const volume = options.kilograms / options.density;
  const aspect = aspectOf(options, volume) * options.aspectFactor;
  const diameter = Math.cbrt((4 * volume) / (Math.PI * aspect));
  const scale = options.sizeFactor * irregularity;
  return {
    radiusMetres: (diameter / 2) * scale * roundness[options.shape.form],
    halfLengthMetres: ((diameter * aspect) / 2) * scale,
  };
}

function aspectOf({ shape, kilograms, bones, boneless }: CylinderOptions, volume: number): number {
  if (shape.form !== 'rib') return shape.aspect ?? defaultAspect[shape.form];
  const perBone = shape.kilogramsPerBone ?? defaultKilogramsPerBone;
  if (boneless) {
    // Without the bones the same length of rib weighs about three quarters; tied, it keeps its
    // cross-section however long it is, so a heavy one is no thicker.
    const length = (kilograms / (0.75 * perBone)) * metresPerBone;
    return Math.max(bonelessRibAspect * 0.6, aspectOfLength(length * 1.15, volume));
  }
  const count = bones ?? Math.max(1, kilograms / perBone);
  return aspectOfLength(count * metresPerBone, volume);
}

/** Length over diameter of the cylinder with that length and volume. */
const aspectOfLength = (length: number, volume: number): number =>
  length / Math.sqrt((4 * volume) / (Math.PI * length));
