/**
 * Base-ten reductions of Salmonella in roast beef by the published time-temperature table of FSIS
 * (Appendix A, 6.5 reductions) and the FDA Food Code 3-401.11(B): one law, 112 minutes at 130 °F and ten
 * times quicker each 10 °F, reproduces every row within 12 %, the rounding of whole minutes included.
 * Nothing below 130 °F is counted. This is information with its authority, never a verdict.
 */
import { fahrenheitOfCelsius } from '../../base/units.ts';

const tableReductions = 6.5;
const tableSecondsAt130 = 6720;
const lowestFahrenheit = 130;

/** Reductions in each second at a temperature. */
export function reductionsPerSecond(celsius: number): number {
  const fahrenheit = fahrenheitOfCelsius(celsius);
  if (fahrenheit < lowestFahrenheit) return 0;
  return (tableReductions / tableSecondsAt130) * 10 ** ((fahrenheit - lowestFahrenheit) / 10);
}

/** Over evenly spaced records; the trapezoid rule. */
export function reductionsOver(celsius: ArrayLike<number>, spacingMinutes: number): number {
  let sum = 0;
  for (let i = 1; i < celsius.length; i += 1)
    sum += (reductionsPerSecond(celsius[i - 1]!) + reductionsPerSecond(celsius[i]!)) / 2;
  return sum * spacingMinutes * 60;
}
