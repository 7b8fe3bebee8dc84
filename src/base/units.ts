/** Conversions between what is said (Fahrenheit, pounds) and what facts hold (Celsius, kilograms). */

export type TemperatureUnit = 'F' | 'C';
export type WeightUnit = 'lb' | 'kg';

/** The international avoirdupois pound, exact by definition (NIST SP 811, appendix B). */
export const kilogramsPerPound = 0.45359237;

export const celsiusOfFahrenheit = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
export const fahrenheitOfCelsius = (celsius: number): number => (celsius * 9) / 5 + 32;

/** A temperature difference carries no offset: ten kelvin are eighteen Fahrenheit degrees. */
export const kelvinOfFahrenheitDegrees = (degrees: number): number => (degrees * 5) / 9;
export const fahrenheitDegreesOfKelvin = (kelvin: number): number => (kelvin * 9) / 5;

export const kilogramsOfPounds = (pounds: number): number => pounds * kilogramsPerPound;
export const poundsOfKilograms = (kilograms: number): number => kilograms / kilogramsPerPound;

export const celsiusOf = (value: number, unit: TemperatureUnit): number =>
  unit === 'F' ? celsiusOfFahrenheit(value) : value;
export const temperatureIn = (celsius: number, unit: TemperatureUnit): number =>
  unit === 'F' ? fahrenheitOfCelsius(celsius) : celsius;
export const kilogramsOf = (value: number, unit: WeightUnit): number =>
  unit === 'lb' ? kilogramsOfPounds(value) : value;
export const weightIn = (kilograms: number, unit: WeightUnit): number =>
  unit === 'lb' ? poundsOfKilograms(kilograms) : kilograms;

/**
 * Oven temperature of a British gas mark, in Fahrenheit: mark 1 is 275 °F and each mark adds 25;
 * a half is 250, a quarter 225. Common practice, no source.
 */
export const fahrenheitOfGasMark = (mark: number): number =>
  mark >= 1 ? 250 + 25 * mark : mark >= 0.5 ? 250 : 225;

export const clamp = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));
