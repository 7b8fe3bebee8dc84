/**
 * The cylinder that stands for a cut: radius and half-length from form, mass, bones and density. A cut is
 * thought of as a body with three diameters. A rib roast grows along the spine, so its length follows its
 * bones and its cross-section what is left; other forms keep their proportions. The two diameters that
 * are nearest to each other become the cylinder's circle, the third its axis: a long rib is a thick disc
 * on its bones, a tenderloin a rod.
 */
import type { CutShape } from '../../kitchen/forecast.ts';

export interface Cylinder {
  radiusMetres: number;
  halfLengthMetres: number;
}

/** Width of one rib with its meat along the spine, metres. Common practice, no source. */
export const metresPerBone = 0.046;
/** What stands beyond its first and last bone, together, metres. Common practice, no source. */
const metresBeyondBones = 0.02;
/** A boneless rib, tied, is longer than thick; common practice, no source. */
export const bonelessRibAspect = 1.35;
export const defaultAspect = { 'long-cylinder': 2.5, ellipsoid: 1.4 } as const;
export const defaultKilogramsPerBone = 1.05;

/** Width over height of the cross-section. Common practice, no source. */
const usualFlatness = { rib: 1.7, 'long-cylinder': 1.5, ellipsoid: 1.4 } as const;

/**
 * Grooves, bones and tapered ends bring the heat nearer to the core than in a smooth cylinder: all
 * lengths shrink so far. Set so that the medians fall among the published charts (docs/heat.md).
 */
const irregularity = 0.855;

/** Which of a cut's three ways is the cylinder's axis. */
export type Axis = 'height' | 'width' | 'length';

export interface CylinderOptions {
  shape: CutShape;
  kilograms: number;
  bones: number | undefined;
  boneless: boolean;
  density: number;
  /** Multiplies length over diameter at equal volume; one unknown of a roast. */
  aspectFactor: number;
  /** Multiplies width over height at equal cross-section. */
  flatnessFactor: number;
  /** Multiplies all lengths: what the true shape differs from a cylinder. */
  sizeFactor: number;
  /** The axis of the usual roast, so that all members of an ensemble lie alike; absent: its own. */
  axis?: Axis | undefined;
}

interface Diameters {
  height: number;
  width: number;
  length: number;
}

export function cylinderOf(options: CylinderOptions): Cylinder {
  const diameters = diametersOf(options);
  const cylinder = lying(diameters, options.axis ?? axisOf(options.shape.form, diameters));
  const scale =
    options.sizeFactor *
    irregularity *
    (options.shape.form === 'rib' ? likeBlock(cylinder, diameters) : 1);
  return {
    radiusMetres: scale * cylinder.radiusMetres,
    halfLengthMetres: scale * cylinder.halfLengthMetres,
  };
}

function lying({ height, width, length }: Diameters, axis: Axis): Cylinder {
  switch (axis) {
    case 'length':
      return { radiusMetres: across(height, width) / 2, halfLengthMetres: length / 2 };
    case 'height':
      return { radiusMetres: across(width, length) / 2, halfLengthMetres: height / 2 };
    case 'width':
      return { radiusMetres: across(height, length) / 2, halfLengthMetres: width / 2 };
  }
}

/** Squares of the first roots for a slab and a cylinder whose surface is held: how fast each settles. */
const slabRate = (Math.PI / 2) ** 2;
const cylinderRate = 2.404826 ** 2;
/** Between a block's (the slab's) and an oval's (half the cylinder's) for each half-diameter. */
const blockRate = 2.65;

/**
 * A rib is a rounded block whichever way its cylinder lies: the factor by which the cylinder settles as
 * that block does, so that nothing jumps where a longer roast turns from a rod into a disc.
 */
function likeBlock(cylinder: Cylinder, { height, width, length }: Diameters): number {
  const own = cylinderRate / cylinder.radiusMetres ** 2 + slabRate / cylinder.halfLengthMetres ** 2;
  const block = 4 * blockRate * (1 / height ** 2 + 1 / width ** 2 + 1 / length ** 2);
  return Math.sqrt(own / block);
}

/** The axis that leaves the two diameters that are most alike. */
export function usualAxisOf(options: CylinderOptions): Axis {
  return axisOf(options.shape.form, diametersOf(options));
}

function axisOf(form: CutShape['form'], { height, width, length }: Diameters): Axis {
  const unlike = (a: number, b: number): number => Math.abs(Math.log(a / b));
  const rod = unlike(height, width);
  const disc = unlike(width, length);
  const across = unlike(height, length);
  // A rib stays a disc however long it is: only its plan grows.
  if (form !== 'rib' && rod <= disc && rod <= across) return 'length';
  return disc <= across ? 'height' : 'width';
}

/** The circle that loses heat as fast as an oval: by the first eigenvalue, and by surface over area. */
const across = (a: number, b: number): number => Math.sqrt(2 / (1 / (a * a) + 1 / (b * b)));

function diametersOf(options: CylinderOptions): Diameters {
  const volume = options.kilograms / options.density;
  const aspect = aspectOf(options, volume) * options.aspectFactor;
  const diameter = Math.cbrt((4 * volume) / (Math.PI * aspect));
  const flatness = Math.sqrt(usualFlatness[options.shape.form] * options.flatnessFactor);
  return { height: diameter / flatness, width: diameter * flatness, length: diameter * aspect };
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
  return aspectOfLength(metresBeyondBones + count * metresPerBone, volume);
}

/** Length over diameter of the cylinder with that length and volume. */
const aspectOfLength = (length: number, volume: number): number =>
  length / Math.sqrt((4 * volume) / (Math.PI * length));
