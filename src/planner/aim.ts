/**
 * Where the roast is to be pulled so that it stands at its target under the knife. Before any reading the
 * usual rest decides; then what the readings say of this roast, and the hour.
 */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit, clamp, fahrenheitOfCelsius } from '../base/units.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import { coreAfterRest, coreAtMinute, type Forecast } from '../kitchen/forecast.ts';
import {
  carveMinutesOf,
  leastRestOf,
  longestRestOf,
  plannedRestOf,
  type Roast,
  riseHighKelvin,
  roastCameOutAt,
} from './roast-day.ts';

/** From hearing the call to the roast on its board. Common practice, no source. */
const fetchMinutes = 2;
/** A pull is no nearer the target than this, whatever the forecast says. */
const leastRiseKelvin = 2;
/** How finely a pull is looked for, and how far two may lie apart before a new one is told. */
const stepKelvin = 0.25;
const worthTellingKelvin = 0.8;

export interface Aim {
  dinner: Dinner;
  roast: Roast;
  serveCelsius: number;
  /** Asked for `pullCelsius`. */
  forecast: Forecast;
  pullCelsius: number;
}

/** The pull of a roast that nobody has read yet: its usual rest carries it. */
export function usualPull({ dinner, roast, serveCelsius, forecast, pullCelsius }: Aim): number {
  const rest = plannedRestOf(roast.rest, forecast.pullMinute);
  const rise = climbWhileFetched(forecast, pullCelsius) + restRise(forecast, pullCelsius, rest);
  return told(serveCelsius - clamp(rise, leastRiseKelvin, riseHighKelvin), dinner);
}

/**
 * The lowest pull from which the roast still gets there by the hour of the knife: pulled later it rests
 * the less. One that is late waits for its shortest rest.
 */
export function aimedPull(aim: Aim & { roastInAt: Instant }): number {
  const { dinner, roast, serveCelsius, forecast, pullCelsius, roastInAt } = aim;
  const read = dinner.readings.some((reading) => reading.happenedAt >= roastInAt);
  if (roastCameOutAt(dinner) !== undefined) return dinner.told?.pullCelsius ?? pullCelsius;
  if (!read || dinner.servingAt === undefined) return pullCelsius;
  const carveAt = addMinutes(
    dinner.servingAt,
    -carveMinutesOf(roast.card, dinner.guests ?? usualGuests),
  );
  const pullAt = addMinutes(roastInAt, forecast.pullMinute.p50);
  const fetched = climbWhileFetched(forecast, pullCelsius);
  const kelvinPerMinute = Math.max(slowestKelvinPerMinute, fetched / fetchMinutes);
  const least = leastRestOf(roast.rest, dinner.course?.rest);
  const longest = longestRestOf(roast.rest);
  const highest = serveCelsius - leastRiseKelvin;
  for (let pull = serveCelsius - riseHighKelvin; pull < highest; pull += stepKelvin) {
    const later = (pull - pullCelsius) / kelvinPerMinute;
    const rest = clamp(minutesBetween(pullAt, carveAt) - later, least, longest);
    if (pull + fetched + restRise(forecast, pullCelsius, rest) < serveCelsius) continue;
    const exact = told(pull, dinner);
    return Math.abs(exact - pullCelsius) < worthTellingKelvin ? pullCelsius : exact;
  }
  return told(highest, dinner);
}

const usualGuests = 6;
const slowestKelvinPerMinute = 0.15;

function climbWhileFetched(forecast: Forecast, pullCelsius: number): number {
  const before = coreAtMinute(forecast, forecast.pullMinute.p50 - 2 * fetchMinutes);
  return before ? Math.max(0, pullCelsius - before.p50) / 2 : 0;
}

const restRise = (forecast: Forecast, pullCelsius: number, minutes: number): number =>
  coreAfterRest(forecast, minutes).p50 - pullCelsius;

/** In whole degrees of the household's unit. */
const told = (celsius: number, { units }: Dinner): number =>
  units.temperature === 'C'
    ? Math.round(celsius)
    : celsiusOfFahrenheit(Math.round(fahrenheitOfCelsius(celsius)));
