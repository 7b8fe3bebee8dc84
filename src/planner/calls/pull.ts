/** The pull's own call: how it goes by, and when it can be due at the soonest. */
import { addMinutes, type Instant, minutesBetween } from '../../base/time.ts';
import { lastLook, lastLookAt, mayCallPull } from '../../kitchen/core-told.ts';
import { type Dinner, helpersAt } from '../../kitchen/dinner.ts';
import type { Forecast } from '../../kitchen/forecast.ts';
import type { Plan } from '../../kitchen/plan.ts';
import type { Wanted } from './call.ts';

/**
 * A core climbs no faster than this: what a small roast does in a hot oven. Common practice, no source.
 */
const climbKelvinPerMinute = 1.1;

/** A reading so far below the pull says that its call came too soon. */
const shortKelvin = 1;

/**
 * The pull is called by the forecast; a reading that falls short of it afterwards withdraws that call, as
 * does a day told anew in which it comes well later. The next, at its new time, is a call of its own.
 */
export function pullName(dinner: Dinner, plan: Plan): string {
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? 'pull' : `pull-${n}`;
    const made = dinner.calls.get(`pull:${name}`);
    const tooSoon = dinner.readings.some(
      ({ toldAt, celsius }) =>
        made !== undefined && toldAt > made.firstAt && celsius < plan.pullCelsius - shortKelvin,
    );
    const putOff = dinner.pullPutOffAt.some((at) => made !== undefined && at >= made.firstAt);
    if (!tooSoon && !putOff) return name;
  }
}

/** The soonest that the core can stand at the pull, by a look that is fresh. */
function reachableAt(dinner: Dinner, plan: Plan): Instant {
  const last = lastLook(dinner.readings);
  if (!last || minutesBetween(last.happenedAt, plan.pullAt.p50) > 12) return 0;
  const short = plan.pullCelsius - last.celsius;
  return short <= 0 ? 0 : addMinutes(last.happenedAt, short / climbKelvinPerMinute);
}

/**
 * After so many minutes each, the last of them again and again: soon at first, since a core climbs a kelvin a minute and
 * more; then ever later, for a cook who heard it is busy with it. Common practice, no source.
 */
const pullRemindersMinutes = [3, 6, 12, 20] as const;

/** So near under the pull an answer calls it. */
const nearKelvin = -0.3;

/** A day with a plan, by the forecast that it was made from. */
export interface Seen {
  dinner: Dinner;
  plan: Plan;
  forecast: Forecast;
}

/** When the answer to a number told the cook that the roast comes out now; nothing where none has. */
function pullHeardAt({ dinner, plan, forecast }: Seen): Instant | undefined {
  const roast = { dinner, forecast, roastInAt: plan.roastInAt };
  const look = lastLookAt(roast);
  if (!look || !mayCallPull(look, roast)) return undefined;
  const past = look.celsius - (dinner.thermometerOffsetKelvin ?? 0) - plan.pullCelsius;
  return past >= nearKelvin ? look.toldAt : undefined;
}

/** The cook knows that it comes out now: from its call, or from an answer. */
export const isPullCalled = (seen: Seen): boolean =>
  seen.dinner.calls.has(`pull:${pullName(seen.dinner, seen.plan)}`) ||
  pullHeardAt(seen) !== undefined;

/** When the pull is due, and how often and how soon it is called again until it is done. */
export function pullTimes(
  dueAt: Instant,
  seen: Seen,
): Pick<Wanted, 'dueAt' | 'repeats' | 'againAfterMinutes' | 'heardAt'> {
  const { dinner, plan } = seen;
  const heardAt = pullHeardAt(seen);
  const calledAt = dinner.calls.get(`pull:${pullName(dinner, plan)}`)?.firstAt;
  // Then its own first call is a reminder already.
  const answered = heardAt !== undefined && heardAt <= (calledAt ?? heardAt);
  return {
    dueAt:
      heardAt === undefined
        ? Math.max(dueAt, reachableAt(dinner, plan), lookedForAt(dinner, plan))
        : addMinutes(heardAt, pullRemindersMinutes[0]),
    repeats: 24,
    againAfterMinutes: answered ? pullRemindersMinutes.slice(1) : pullRemindersMinutes,
    ...(heardAt === undefined ? {} : { heardAt }),
  };
}

/** A number older than this does not carry a pull: it is looked at once more before. */
const freshMinutes = 15;
/** How long the pull waits for that number; it is asked for so long before, so that waiting makes no pull late. */
const waitForLookMinutes = 8;
export const lookBeforePullMinutes = waitForLookMinutes;

/** A pull that was put off has a look of its own before it. */
export const lookBeforePull = ({ readings, pullPutOffAt: { length } }: Dinner): string =>
  `before-pull-${readings.length + 1}${length > 0 ? `-${length + 1}` : ''}`;

export function isFresh(dinner: Dinner, plan: Plan): boolean {
  const last = dinner.readings.at(-1);
  return last !== undefined && minutesBetween(last.happenedAt, plan.pullAt.p50) <= freshMinutes;
}

/** No roast is called out by a forecast alone while somebody may still look; nobody waits long for it. */
function lookedForAt(dinner: Dinner, plan: Plan): Instant {
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
