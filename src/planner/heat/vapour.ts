/**
 * Water leaving a wet surface: saturation pressure, and the heat that evaporation draws for each
 * pascal of difference, by the analogy of heat and mass transfer (Lewis).
 */

/** J/kg at about 70 °C; from memory of the steam tables, good to 2 % from 40 to 100 °C. */
export const latentHeat = 2.33e6;

/**
 * Saturation pressure of water in pascals, Celsius in: the Magnus form with the constants of Alduchov
 * and Eskridge (1996, from memory). Within 2 % of the steam tables from 0 to 150 °C.
 */
export const saturationPascals = (celsius: number): number =>
  610.94 * Math.exp((17.625 * celsius) / (celsius + 243.04));

/**
 * Mass flux for each W/(m² K) of convective coefficient and pascal of vapour pressure, kg/(J/K · Pa):
 * ratio of gas constants 0.622 over (pressure × specific heat of air × Lewis number^(2/3)).
 */
export const massPerConvectionPascal = 0.622 / (101_325 * 1006 * 0.91);

/** W/m² for each W/(m² K) of convective coefficient and pascal. */
export const heatPerConvectionPascal = latentHeat * massPerConvectionPascal;

const tableStep = 0.5;
const tableLow = -45;
const tableHigh = 305;
const table = Float64Array.from({ length: (tableHigh - tableLow) / tableStep + 2 }, (_, index) =>
  saturationPascals(tableLow + index * tableStep),
);

/** Index arithmetic is left to the caller's loop, which is the hottest one of the forecast. */
export const vapourTable = { pascals: table, step: tableStep, low: tableLow, high: tableHigh };
