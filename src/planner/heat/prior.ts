/**
 * What is not known of a roast, its oven and its cook, as independent standard normals, and the member
 * that each set of them stands for. Medians come from the published charts and the figures named beside
 * each line; widths are meant for one roast in one kitchen, not for the mean of many.
 */
import { seeded } from '../../base/random.ts';
import { clamp } from '../../base/units.ts';
import { type ForecastQuestion, usualKitchen } from '../../kitchen/forecast.ts';
import { type Cylinder, cylinderOf, defaultKilogramsPerBone, usualAxisOf } from './geometry.ts';
import { meatProperties } from './material.ts';
import type { OvenHabit } from './oven.ts';
import type { Body } from './roast.ts';

/** The unknowns, in the order in which they stand in a draw. */
const unknowns = [
  'size',
  'aspect',
  'flatness',
  'conductivity',
  'convection',
  'radiation',
  'wetness',
  'drying',
  'start',
  'bias',
  'wanderSine',
  'wanderCosine',
  'lag',
  'rest',
  'weight',
  'frozen',
  'pace',
  'rise',
] as const;
type Unknown = (typeof unknowns)[number];
export const unknownCount = unknowns.length;

export interface Member {
  cylinder: Cylinder;
  body: Body;
  oven: OvenHabit;
  convection: number;
  radiation: number;
  startCelsius: number;
  frozenShare: number;
  /** Multiplies how strongly the board, the tent and the room draw heat in the rest. */
  restFactor: number;
  /** Multiplies the climb in the rest: what the model's shape and skin get wrong of it. */
  rise: number;
  /** Multiplies the time left from the last evidence on: what no parameter of the model can express. */
  pace: number;
}

/** Widths are standard deviations, of the logarithm where a factor is meant. */
const widths = {
  size: 0.07,
  aspect: 0.15,
  flatness: 0.14,
  conductivity: 0.1,
  convection: 0.28,
  radiation: 0.14,
  wetness: 0.55,
  drying: 0.7,
  lag: 0.45,
  rest: 0.35,
  riseOfRib: 0.06,
  riseOfOther: 0.16,
  pace: 0.06,
  weight: 0.02,
  weightFromBones: 0.13,
  weightTypical: 0.3,
  startKnownKelvin: 0.8,
  startFridgeKelvin: 2.2,
  wanderKelvin: 5,
} as const;

/** A rack lets the oven at the underside, a pan shades it; both by a little. Common practice, no source. */
const exposure = { rack: 1.03, unsaid: 1, pan: 0.96 } as const;

/** Household refrigerators stand at 3 to 5 °C; the core follows. */
export const refrigeratorCelsius = 4;

/** The coldest that meat can be without a word of frost. */
const unfrozenCelsius = 0;

/** The core's rise on the counter: some 5 K in the first two hours for a joint. Common practice. */
export const startAfterCounter = (minutes: number): number =>
  refrigeratorCelsius + 16 * (1 - Math.exp(-((minutes / 420) ** 1.3)));

/** Mass as told, or from its bones, or a usual one; and how it was come by. */
export function massOf({ roast }: ForecastQuestion): {
  kilograms: number;
  from: 'told' | 'bones' | 'typical';
} {
  if (roast.kilograms !== undefined) return { kilograms: roast.kilograms, from: 'told' };
  const perBone = roast.shape.kilogramsPerBone ?? defaultKilogramsPerBone;
  if (roast.bones !== undefined)
    return {
      kilograms: roast.bones * perBone * (roast.boneless === true ? 0.75 : 1),
      from: 'bones',
    };
  return { kilograms: 2.5, from: 'typical' };
}

/** Latin hypercube: every unknown's range is cut in equal shares, each used once. Row by row. */
export function drawNormals(count: number, seed: number): Float64Array {
  const random = seeded(seed);
  const normals = new Float64Array(count * unknownCount);
  const order = Int32Array.from({ length: count }, (_, index) => index);
  for (let unknown = 0; unknown < unknownCount; unknown += 1) {
    for (let i = count - 1; i > 0; i -= 1) {
      const other = Math.floor(random.uniform() * (i + 1));
      const kept = order[i]!;
      order[i] = order[other]!;
      order[other] = kept;
    }
    for (let i = 0; i < count; i += 1)
      normals[i * unknownCount + unknown] = normalQuantile(
        (order[i]! + 0.02 + 0.96 * random.uniform()) / count,
      );
  }
  return normals;
}

/** The member that a row of standard normals stands for, for this question. */
export function memberOf(question: ForecastQuestion, normals: Float64Array, row: number): Member {
  const z = (unknown: Unknown): number => normals[row * unknownCount + unknowns.indexOf(unknown)]!;
  const factor = (unknown: Unknown, width: number): number => Math.exp(width * z(unknown));
  const { roast } = question;
  const mass = massOf(question);
  const massWidth = {
    told: widths.weight,
    bones: widths.weightFromBones,
    typical: widths.weightTypical,
  }[mass.from];
  const kilograms = mass.kilograms * factor('weight', massWidth);
  const properties = meatProperties(roast.shape.composition, 40);
  const boneless = roast.boneless === true || roast.shape.form !== 'rib';
  const usual = {
    shape: roast.shape,
    kilograms: mass.kilograms,
    bones: roast.bones,
    boneless,
    density: properties.density,
    aspectFactor: 1,
    flatnessFactor: 1,
    sizeFactor: 1,
  };
  const cylinder = cylinderOf({
    ...usual,
    axis: usualAxisOf(usual),
    kilograms,
    flatnessFactor: factor('flatness', widths.flatness),
    aspectFactor: factor('aspect', widths.aspect),
    sizeFactor: factor('size', widths.size),
  });
  const bias = (question.kitchen ?? usualKitchen).ovenBiasKelvin;
  const fan = question.fan === true;
  const exposed =
    exposure[question.onRack === undefined ? 'unsaid' : question.onRack ? 'rack' : 'pan'];
  return {
    cylinder,
    body: {
      // The parallel model lies 9 to 16 % above measured diffusivities of beef.
      conductivity: properties.conductivity * 0.95 * factor('conductivity', widths.conductivity),
      heatCapacity: properties.density * properties.specificHeat,
      density: properties.density,
      wetness: 1 / (1 + Math.exp(-widths.wetness * z('wetness'))),
      dryingLoss: 1.5 * factor('drying', widths.drying),
    },
    oven: {
      biasKelvin: bias.mean + bias.deviation * z('bias'),
      wanderSineKelvin: widths.wanderKelvin * z('wanderSine'),
      wanderCosineKelvin: widths.wanderKelvin * z('wanderCosine'),
      heatingMinutes: 7 * factor('lag', widths.lag),
      // From 450 to 325 °F in some 25 minutes with the door shut. Common practice, no source.
      coolingMinutes: 62 * factor('lag', widths.lag),
    },
    convection: (fan ? 19 : 10) * exposed * factor('convection', widths.convection),
    radiation: 0.78 * exposed * factor('radiation', widths.radiation),
    startCelsius: startOf(question, z('start')),
    frozenShare: clamp(0.5 + 0.25 * z('frozen'), 0.1, 1),
    restFactor: factor('rest', widths.rest),
    rise: factor('rise', roast.shape.form === 'rib' ? widths.riseOfRib : widths.riseOfOther),
    pace: factor('pace', widths.pace),
  };
}

function startOf({ roast }: ForecastQuestion, z: number): number {
  // What was not said to be frozen is not: a degree too low would hold a core back by half an hour.
  const least = roast.frozen === true ? Number.NEGATIVE_INFINITY : unfrozenCelsius;
  if (roast.startCelsius !== undefined)
    return Math.max(
      Math.min(least, roast.startCelsius),
      roast.startCelsius + widths.startKnownKelvin * z,
    );
  if (roast.minutesOutOfFridge !== undefined)
    return Math.max(least, startAfterCounter(roast.minutesOutOfFridge) + 2 * z);
  return Math.max(least, refrigeratorCelsius + 1 + widths.startFridgeKelvin * z);
}

/** Inverse of the standard normal distribution: Acklam's rational form, good to 1e-9 relative. */
export function normalQuantile(p: number): number {
  const a = [-39.69683028665376, 220.9460984245205, -275.9285104469687, 138.357751867269];
  const b = [-54.47609879822406, 161.5858368580409, -155.6989798598866, 66.80131188771972];
  const c = [-0.007784894002430293, -0.3223964580411365, -2.400758277161838, -2.549732539343734];
  const d = [0.007784695709041462, 0.3224671290700398, 2.445134137142996, 3.754408661907416];
  if (p < 0.02425 || p > 1 - 0.02425) {
    const q = Math.sqrt(-2 * Math.log(Math.min(p, 1 - p)));
    const tail =
      (((((c[0]! * q + c[1]!) * q + c[2]!) * q + c[3]!) * q + 4.374664141464968) * q +
        2.938163982698783) /
      ((((d[0]! * q + d[1]!) * q + d[2]!) * q + d[3]!) * q + 1);
    return p < 0.5 ? tail : -tail;
  }
  const q = p - 0.5;
  const r = q * q;
  return (
    ((((((a[0]! * r + a[1]!) * r + a[2]!) * r + a[3]!) * r - 30.66479806614716) * r +
      2.506628277459239) *
      q) /
    (((((b[0]! * r + b[1]!) * r + b[2]!) * r + b[3]!) * r - 13.28068155288572) * r + 1)
  );
}
