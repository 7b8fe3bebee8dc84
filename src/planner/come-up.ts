/**
 * How long the middle is on its way up through the heat in which bacteria grow: from 50 to 130 °F within
 * six hours (USDA FSIS, Appendix A, its come-up time for meat that is cooked slowly; from memory).
 */
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { Forecast } from '../kitchen/forecast.ts';

export const comeUpMinutesAtMost = 6 * 60;
const lowCelsius = celsiusOfFahrenheit(50);
const highCelsius = celsiusOfFahrenheit(130);

/** Minutes that the likely core climbs between the two, as far as the forecast looks. */
export function comeUpMinutes({ core }: Pick<Forecast, 'core'>): number {
  let minutes = 0;
  core.forEach((row, index) => {
    const next = core[index + 1];
    const { p50 } = row.celsius;
    if (next && p50 >= lowCelsius && p50 < highCelsius && next.celsius.p50 >= p50)
      minutes += next.minute - row.minute;
  });
  return minutes;
}
