/** Served core temperatures by word; the word always comes with its number. Common practice. */
import { celsiusOfFahrenheit, fahrenheitOfCelsius } from '../base/units.ts';
import { type Doneness, donenessWords } from './heard.ts';

const serveFahrenheit: Record<Doneness, number> = {
  rare: 125,
  'medium-rare': 130,
  medium: 140,
  'medium-well': 150,
  'well-done': 160,
};

export const serveCelsiusOf = (doneness: Doneness): number =>
  celsiusOfFahrenheit(serveFahrenheit[doneness]);

/** The word nearest a temperature, within four Fahrenheit degrees. */
export function donenessNear(celsius: number): Doneness | undefined {
  const fahrenheit = fahrenheitOfCelsius(celsius);
  return donenessWords.find((word) => Math.abs(serveFahrenheit[word] - fahrenheit) <= 4);
}
