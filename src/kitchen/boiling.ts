/**
 * Where water boils, by height: the standard atmosphere's pressure (ISO 2533) and Antoine's equation
 * for water from 1 to 100 °C (constants as in handbooks of chemistry, from memory). Weather moves it
 * by about a kelvin, so melting ice is the better check of a thermometer.
 */
const seaLevelPascal = 101_325;
const pascalPerTorr = seaLevelPascal / 760;

export const pressurePascal = (metres: number): number =>
  seaLevelPascal * (1 - 2.25577e-5 * metres) ** 5.25588;

export function boilingCelsius(metres: number): number {
  const torr = pressurePascal(metres) / pascalPerTorr;
  return 1730.63 / (8.07131 - Math.log10(torr)) - 233.426;
}

export const metresOfFeet = (feet: number): number => feet * 0.3048;
