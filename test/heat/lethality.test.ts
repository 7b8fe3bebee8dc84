/** FSIS Appendix A, beef, 6.5 reductions, by way of the Canadian inspection agency's copy of the table. */
import { expect, it } from 'vitest';
import { celsiusOfFahrenheit } from '../../src/base/units.ts';
import { reductionsPerSecond } from '../../src/planner/heat/lethality.ts';

const minutesByFahrenheit = [
  [130, 112],
  [131, 89],
  [132, 71],
  [133, 56],
  [134, 45],
  [135, 36],
  [136, 28],
  [137, 23],
  [138, 18],
  [139, 15],
  [140, 12],
  [145, 4],
  [147, 134 / 60],
  [149, 85 / 60],
  [151, 54 / 60],
  [153, 34 / 60],
  [155, 22 / 60],
] as const;

it('each row of the table comes to 6.5 reductions within its rounding', () => {
  for (const [fahrenheit, minutes] of minutesByFahrenheit) {
    const reductions = 60 * minutes * reductionsPerSecond(celsiusOfFahrenheit(fahrenheit) + 1e-9);
    expect(reductions, `${fahrenheit} °F`).toBeGreaterThan(6.5 * 0.94);
    expect(reductions, `${fahrenheit} °F`).toBeLessThan(6.5 * 1.13);
  }
});

it('counts nothing below 130 °F, and 145 °F for 3 minutes as less than 6.5', () => {
  expect(reductionsPerSecond(celsiusOfFahrenheit(129.9))).toBe(0);
  expect(180 * reductionsPerSecond(celsiusOfFahrenheit(145))).toBeLessThan(6.5);
});
