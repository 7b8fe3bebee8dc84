/** What an oven can do: its room, how fast it heats and cools, how warm it is after some turns of its dial. */
import { type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit, kelvinOfFahrenheitDegrees } from '../base/units.ts';
import type { OvenMove } from '../kitchen/plan.ts';
import type { Oven } from './problem.ts';

/**
 * A household oven: two racks, the lower for the roast with room beside it, so three dishes' room;
 * about twelve Fahrenheit degrees a minute up, eight down. Common practice, no source.
 */
export const householdOven: Oven = {
  shelves: 3,
  heatingKelvinPerMinute: kelvinOfFahrenheitDegrees(12),
  coolingKelvinPerMinute: kelvinOfFahrenheitDegrees(8),
};

const kitchenCelsius = celsiusOfFahrenheit(70);

/** How warm an oven of that heat is so many minutes after its dial was turned to another. */
export const warmedCelsius = (celsius: number, dial: number, minutes: number): number =>
  dial >= celsius
    ? Math.min(dial, celsius + minutes * householdOven.heatingKelvinPerMinute)
    : Math.max(dial, celsius - minutes * householdOven.coolingKelvinPerMinute);

/** How warm one oven really is at an instant, by its dial's moves: a straight way from heat to heat. */
export function trueHeatCelsius(moves: readonly OvenMove[], index: number, at: Instant): number {
  let celsius = kitchenCelsius;
  let dial = kitchenCelsius;
  let since: Instant | undefined;
  const run = (to: Instant): void => {
    if (since === undefined) return;
    celsius = warmedCelsius(celsius, dial, minutesBetween(since, to));
  };
  for (const move of moves) {
    if ((move.oven ?? 0) !== index || move.at > at) continue;
    run(move.at);
    dial = move.celsius > 0 ? move.celsius : kitchenCelsius;
    since = move.at;
  }
  run(at);
  return celsius;
}
