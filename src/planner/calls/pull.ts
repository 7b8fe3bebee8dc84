/** The pull's own call: how it goes by, and when it can be due at the soonest. */
import { addMinutes, type Instant, minutesBetween } from '../../base/time.ts';
import { type Dinner, helpersAt } from '../../kitchen/dinner.ts';
import type { Plan } from '../../kitchen/plan.ts';

/**
 * A core climbs no faster than this: what a small roast does in a hot oven. Common practice, no source.
 */
const climbKelvinPerMinute = 1.1;

/** A reading so far below the pull says that its call came too soon. */
const shortKelvin = 1;

/**
 * The pull is called by the forecast; a reading that falls short of it afterwards withdraws that call,
 * and the next, at its new time, is a call of its own.
 */
export function pullName(dinner: Dinner, plan: Plan): string {
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? 'pull' : `pull-${n}`;
    const made = dinner.calls.get(`pull:${name}`);
    const tooSoon = dinner.readings.some(
      ({ toldAt, celsius }) =>
        made !== undefined && toldAt > made.firstAt && celsius < plan.pullCelsius - shortKelvin,
    );
    if (!tooSoon) return name;
  }
}

/** The soonest that the core can stand at the pull, by a look that is fresh. */
export function reachableAt(dinner: Dinner, plan: Plan): Instant {
  const last = dinner.readings.at(-1);
  if (!last || minutesBetween(last.happenedAt, plan.pullAt.p50) > 12) return 0;
  const short = plan.pullCelsius - last.celsius;
  return short <= 0 ? 0 : addMinutes(last.happenedAt, short / climbKelvinPerMinute);
}

/** A number older than this does not carry a pull: it is looked at once more before. */
const freshMinutes = 15;
/** How long the pull waits for that number; it is asked for so long before, so that waiting makes no pull late. */
const waitForLookMinutes = 8;
export const lookBeforePullMinutes = waitForLookMinutes;

export const lookBeforePull = (dinner: Dinner): string =>
  `before-pull-${dinner.readings.length + 1}`;

export function isFresh(dinner: Dinner, plan: Plan): boolean {
  const last = dinner.readings.at(-1);
  return last !== undefined && minutesBetween(last.happenedAt, plan.pullAt.p50) <= freshMinutes;
}

/** No roast is called out by a forecast alone while somebody may still look; nobody waits long for it. */
export function lookedForAt(dinner: Dinner, plan: Plan): Instant {
  if (isFresh(dinner, plan) || dinner.lacks.some((one) => one.includes('thermometer'))) return 0;
  // Where looks are not asked for, the pull cannot wait for one.
  if (dinner.quiet || dinner.paused || dinner.emergency || isAway(dinner)) return 0;
  if (dinner.calls.has(`pull:${pullName(dinner, plan)}`)) return 0;
  const asked = dinner.calls.get(`check-due:${lookBeforePull(dinner)}`);
  return addMinutes(asked?.firstAt ?? plan.pullAt.p50, waitForLookMinutes);
}

/** Nobody is there to look. */
const isAway = (dinner: Dinner): boolean =>
  helpersAt(dinner, dinner.lastAt).length === 0 && (dinner.awayUntil ?? 0) > dinner.lastAt;
