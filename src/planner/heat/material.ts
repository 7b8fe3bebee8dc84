/**
 * Thermal properties of meat from its composition: the property equations of Choi and Okos (1986),
 * as the refrigeration handbook of ASHRAE prints them, mixed by mass (density, specific heat) and by
 * volume (conductivity, parallel model). Temperatures in Celsius; each row is a + bT + cT².
 */

type Row = readonly [a: number, b: number, c: number];

export interface ComponentRows {
  /** W/(m K) */
  conductivity: Row;
  /** kg/m³ */
  density: Row;
  /** kJ/(kg K) */
  specificHeat: Row;
  /** 1e-7 m²/s; published beside the others, so that a slip in any of them shows. */
  diffusivity: Row;
}

export const components = {
  water: {
    conductivity: [0.57109, 1.7625e-3, -6.7036e-6],
    density: [997.18, 3.1439e-3, -3.7574e-3],
    specificHeat: [4.1762, -9.0864e-5, 5.4731e-6],
    diffusivity: [1.3168, 6.2477e-3, -2.4022e-5],
  },
  protein: {
    conductivity: [0.17881, 1.1958e-3, -2.7178e-6],
    density: [1329.9, -0.5184, 0],
    specificHeat: [2.0082, 1.2089e-3, -1.3129e-6],
    diffusivity: [0.68714, 4.7578e-3, -1.4646e-5],
  },
  fat: {
    conductivity: [0.18071, -2.7604e-4, -1.7749e-7],
    density: [925.59, -0.41757, 0],
    specificHeat: [1.9842, 1.4733e-3, -4.8008e-6],
    diffusivity: [0.98777, -1.2569e-3, -3.8286e-7],
  },
  ash: {
    conductivity: [0.32962, 1.4011e-3, -2.9069e-6],
    density: [2423.8, -0.28063, 0],
    specificHeat: [1.0926, 1.8896e-3, -3.6817e-6],
    diffusivity: [1.2461, 3.7321e-3, -1.2244e-5],
  },
} as const satisfies Record<string, ComponentRows>;

const at = ([a, b, c]: Row, celsius: number): number => a + b * celsius + c * celsius * celsius;

export interface Properties {
  /** W/(m K) */
  conductivity: number;
  /** kg/m³ */
  density: number;
  /** J/(kg K) */
  specificHeat: number;
}

/** Of one component at a temperature. */
export function componentProperties(rows: ComponentRows, celsius: number): Properties {
  return {
    conductivity: at(rows.conductivity, celsius),
    density: at(rows.density, celsius),
    specificHeat: 1000 * at(rows.specificHeat, celsius),
  };
}

/** The published diffusivity of one component, m²/s. */
export const componentDiffusivity = (rows: ComponentRows, celsius: number): number =>
  1e-7 * at(rows.diffusivity, celsius);

/** Of a meat; what its three named fractions leave of the whole is counted as ash, at most 2 %. */
export function meatProperties(
  composition: { water: number; protein: number; fat: number },
  celsius: number,
): Properties {
  const { water, protein, fat } = composition;
  const ash = Math.min(0.02, Math.max(0, 1 - water - protein - fat));
  const total = water + protein + fat + ash;
  const parts = [
    { fraction: water / total, ...componentProperties(components.water, celsius) },
    { fraction: protein / total, ...componentProperties(components.protein, celsius) },
    { fraction: fat / total, ...componentProperties(components.fat, celsius) },
    { fraction: ash / total, ...componentProperties(components.ash, celsius) },
  ];
  let volume = 0;
  let specificHeat = 0;
  for (const part of parts) {
    volume += part.fraction / part.density;
    specificHeat += part.fraction * part.specificHeat;
  }
  let conductivity = 0;
  for (const part of parts)
    conductivity += (part.fraction / part.density / volume) * part.conductivity;
  return { conductivity, density: 1 / volume, specificHeat };
}
