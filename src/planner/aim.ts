/**
 * Where the roast is to be pulled so that it stands at its target under the knife. Before any reading the
 * usual rest decides; then what the readings say of this roast, and the hour.
 */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit, clamp, fahrenheitOfCelsius } from '../base/units.ts';
import { carveMinutesOf, type Dinner } from '../kitchen/dinner.ts';
import {
  type Band,
  coreAfterRest,
  coreAtMinute,
  coreRestedFrom,
  type Forecast,
} from '../kitchen/forecast.ts';
import {
  leastRestOf,
  longestRestOf,
  plannedRestOf,
  type Roast,
  riseHighKelvin,
  riseInHoldKelvin,
  riseReadHighKelvin,
  roastCameOutAt,
} from './roast-day.ts';

/**
 * From hearing the call to the roast on its board: two minutes (common practice, no source), until this
 * cook's looks have shown how soon a call is followed.
 */
const usualFetchMinutes = 2;
/** The usual counts for so many looks, and a look left for longer was forgotten, not slow. */
const usualLooks = 2;
const longestFetchMinutes = 8;
/** A pull is no nearer the target than this, whatever the forecast says. */
const leastRiseKelvin = 2;
/** How finely a pull is looked for, and how far two may lie apart before a new one is told. */
const stepKelvin = 0.25;
const worthTellingKelvin = 0.8;

/** A pull that was told is not told anew for less than this at the knife; for a sooner table it is. */
const bearableKelvin = 0.6;

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
  const fetched = climbWhileFetched(forecast, pullCelsius, usualFetchMinutes);
  const rise = fetched + restRise(forecast, pullCelsius, rest);
  return told(serveCelsius - clamp(rise, leastRiseKelvin, riseHighKelvin), dinner);
}

/**
 * The lowest pull from which the roast still gets there by the hour of the knife: pulled later it rests
 * the less. One that is late waits for its shortest rest.
 */
export function aimedPull(
  aim: Aim & {
    roastInAt: Instant;
    /** What the dishes leave of a short rest. */
    leastRestMinutes?: number | undefined;
  },
): number {
  const { dinner, roast, serveCelsius, forecast, pullCelsius, roastInAt } = aim;
  const read = dinner.readings.some((reading) => reading.happenedAt >= roastInAt);
  if (roastCameOutAt(dinner) !== undefined) return dinner.told?.pullCelsius ?? pullCelsius;
  if (!read || dinner.servingAt === undefined) return pullCelsius;
  const carveAt = addMinutes(dinner.servingAt, -carveMinutesOf(dinner, roast.card));
  const pullAt = addMinutes(roastInAt, forecast.pullMinute.p50);
  const fetchMinutes = fetchMinutesOf(dinner);
  const fetched = climbWhileFetched(forecast, pullCelsius, fetchMinutes);
  const kelvinPerMinute = Math.max(slowestKelvinPerMinute, fetched / fetchMinutes);
  const least = Math.max(leastRestOf(roast.rest, dinner.course?.rest), aim.leastRestMinutes ?? 0);
  // A hold cooks on as long as it lasts.
  const held = dinner.course?.rest === 'low-oven';
  const longest = held ? longestHoldMinutes : longestRestOf(roast.rest);
  const highest = serveCelsius - leastRiseKelvin;
  const trusted = serveCelsius - (held ? riseInHoldKelvin : riseReadHighKelvin);
  // A course that was chosen may come out sooner still.
  const lowest = Math.min(trusted, dinner.course?.pullCelsius ?? trusted);
  /** What a pull comes to at the knife, and how many minutes it lacks for its shortest rest. */
  const outcomeOf = (pull: number): { served: number; lacking: number } => {
    const later = (pull - pullCelsius) / kelvinPerMinute;
    const left = minutesBetween(pullAt, carveAt) - later;
    const rise = restRise(forecast, pullCelsius, clamp(left, least, longest));
    return { served: pull + fetched + rise, lacking: Math.max(0, least - left) };
  };
  const best = (): number => {
    for (let pull = lowest; pull < highest; pull += stepKelvin)
      if (outcomeOf(pull).served >= serveCelsius) return pull;
    return highest;
  };
  const aimed = best();
  const { lacking: needed } = outcomeOf(aimed);
  // A number that was told stands as long as it serves.
  const stands = [dinner.course?.pullCelsius, dinner.told?.pullCelsius].find((pull) => {
    if (pull === undefined) return false;
    const { served, lacking } = outcomeOf(pull);
    return Math.abs(served - serveCelsius) <= bearableKelvin && lacking <= needed;
  });
  const exact = told(aimed, dinner);
  return stands ?? (Math.abs(exact - pullCelsius) < worthTellingKelvin ? pullCelsius : exact);
}

const longestHoldMinutes = 240;
const slowestKelvinPerMinute = 0.15;

/** How long this cook takes from a call to the deed: from each look asked for to its number. */
export function fetchMinutesOf({ calls, readings }: Pick<Dinner, 'calls' | 'readings'>): number {
  const taken = readings.flatMap((reading, index) => {
    const asked = [`reading-${index + 1}`, `before-pull-${index + 1}`].flatMap(
      (look) => calls.get(`check-due:${look}`)?.firstAt ?? [],
    );
    const minutes = minutesBetween(Math.min(...asked), reading.toldAt);
    return asked.length > 0 && minutes >= 0 ? [Math.min(minutes, longestFetchMinutes)] : [];
  });
  const sum = taken.reduce((total, minutes) => total + minutes, usualLooks * usualFetchMinutes);
  return sum / (usualLooks + taken.length);
}

/** The pace of the last ten minutes before the pull. */
const paceMinutes = 10;

/** What the core gains between the call and the board, asked for `pullCelsius`. */
export function climbWhileFetched(
  forecast: Forecast,
  pullCelsius: number,
  minutes: number,
): number {
  const before = coreAtMinute(forecast, forecast.pullMinute.p50 - paceMinutes);
  return before ? (Math.max(0, pullCelsius - before.p50) * minutes) / paceMinutes : 0;
}

/** What the knife meets: called at the pull, fetched as this cook fetches, rested. */
export function coreAtKnife(
  forecast: Forecast,
  {
    dinner,
    pullCelsius,
    outMinute,
    restMinutes,
  }: { dinner: Dinner; pullCelsius: number; outMinute: number; restMinutes: number },
): Band {
  const { p10, p50, p90 } = coreRestedFrom(forecast, { outMinute, restMinutes });
  const climb =
    roastCameOutAt(dinner) === undefined
      ? climbWhileFetched(forecast, pullCelsius, fetchMinutesOf(dinner))
      : 0;
  return { p10: p10 + climb, p50: p50 + climb, p90: p90 + climb };
}

/**
 * Minutes from the pull to the knife at the soonest. A rest that is cut carries the core less far, so the
 * roast stays in for what the rest lacks: half an hour less of rest is not half an hour gained.
 */
export function soonestKnifeMinutes(
  forecast: Forecast,
  {
    dinner,
    pullCelsius,
    leastRestMinutes,
  }: { dinner: Dinner; pullCelsius: number; leastRestMinutes: number },
): number {
  const serveCelsius = dinner.target?.serveCelsius;
  if (serveCelsius === undefined || roastCameOutAt(dinner) !== undefined) return leastRestMinutes;
  const fetchMinutes = fetchMinutesOf(dinner);
  const fetched = climbWhileFetched(forecast, pullCelsius, fetchMinutes);
  const kelvinPerMinute = Math.max(slowestKelvinPerMinute, fetched / fetchMinutes);
  const rested = pullCelsius + fetched + restRise(forecast, pullCelsius, leastRestMinutes);
  return leastRestMinutes + Math.max(0, serveCelsius - bearableKelvin - rested) / kelvinPerMinute;
}

const restRise = (forecast: Forecast, pullCelsius: number, minutes: number): number =>
  coreAfterRest(forecast, minutes).p50 - pullCelsius;

/** In whole degrees of the household's unit. */
const told = (celsius: number, { units }: Dinner): number =>
  units.temperature === 'C'
    ? Math.round(celsius)
    : celsiusOfFahrenheit(Math.round(fahrenheitOfCelsius(celsius)));
