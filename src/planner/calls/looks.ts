/** Calls for a look at the core, and for a temperature that is watched for. */
import { addMinutes, type Instant, minutesBetween } from '../../base/time.ts';
import { type Dinner, helpersAt } from '../../kitchen/dinner.ts';
import type { Forecast } from '../../kitchen/forecast.ts';
import type { Plan } from '../../kitchen/plan.ts';
import { roastCameOutAt, roastWentInAt } from '../roast-day.ts';
import { asCall, presumed, type Wanted } from './call.ts';
import { isFresh, isPullCalled, lookBeforePull, lookBeforePullMinutes, type Seen } from './pull.ts';

/** A look so soon after the last, or so soon before the pull, tells nothing new. */
const betweenLooksMinutes = 4;

/** A look that nobody took is asked for again after so long, then after longer, sooner where the pull may be near. */
const askAgainMinutes = { first: 10, usual: 20, nearThePull: 12 };

/** However calm the forecast, nobody leaves a roast unlooked at for longer. Common practice, no source. */
const longestUnseenMinutes = 45;
/** Where the table may not be kept, a look shows it while an oven can still mend it. */
const longestInDoubtMinutes = 25;
const doubtfulChance = 0.85;

/**
 * One look per state of the evidence, asked for again until something comes back: nothing but a number
 * narrows a forecast. The pull's own call asks for its number itself.
 */
export function checkCalls(seen: Seen): Wanted[] {
  const { dinner, plan } = seen;
  const went = roastWentInAt(dinner);
  if (plan.checkAt === undefined || went === undefined || roastCameOutAt(dinner) !== undefined)
    return [];
  if (isPullCalled(seen)) return [];
  const usual = usualLooks(dinner, plan, plan.checkAt);
  if (isFresh(dinner, plan)) return usual;
  const what = lookBeforePull(dinner);
  const dueAt = addMinutes(plan.pullAt.p50, -lookBeforePullMinutes);
  // The pull's own call is the next to ask for it.
  const before: Wanted = { ...lookOf(dinner), what, dueAt: Math.max(dueAt, awayUntil(dinner)) };
  if (dinner.calls.has(`check-due:${what}`)) return [before];
  // Nor is one asked for just before it, least of all once more.
  const asked = dinner.calls.has(`check-due:${usualName(dinner)}`);
  const apart = asked ? askAgainMinutes.nearThePull : betweenLooksMinutes;
  const latest = addMinutes(dueAt, -apart);
  return [
    ...usual.filter((one) => asCall(dinner, one).some((call) => call.dueAt < latest)),
    before,
  ];
}

const lookOf = (dinner: Dinner): Omit<Wanted, 'what' | 'dueAt'> => ({
  kind: 'check-due',
  step: 'check',
  expiryMinutes: 12,
  presumes: presumed(dinner, ['oven-on', 'roast-in', 'oven-down']),
});

/** Until then nobody is there to look. */
const awayUntil = (dinner: Dinner): Instant =>
  helpersAt(dinner, dinner.lastAt).length === 0 ? (dinner.awayUntil ?? 0) : 0;

const usualName = (dinner: Dinner): string => `reading-${dinner.readings.length + 1}`;

function usualLooks(dinner: Dinner, plan: Plan, checkAt: Instant): Wanted[] {
  const look = lookOf(dinner);
  const what = usualName(dinner);
  const lastAt = dinner.readings.at(-1)?.happenedAt;
  const unseen = plan.onTimeChance < doubtfulChance ? longestInDoubtMinutes : longestUnseenMinutes;
  const dueAt =
    lastAt === undefined
      ? checkAt
      : Math.min(
          Math.max(checkAt, addMinutes(lastAt, betweenLooksMinutes)),
          addMinutes(lastAt, unseen),
        );
  const away = awayUntil(dinner);
  const close = Math.abs(minutesBetween(dueAt, plan.pullAt.p50)) < betweenLooksMinutes;
  if (close && plan.pullAt.p50 > dinner.lastAt) return [];
  let asked = dinner.calls.get(`check-due:${what}`);
  if (!asked || asked.times < 2)
    return [
      {
        ...look,
        what,
        dueAt: Math.max(dueAt, away),
        repeats: 1,
        againAfterMinutes: [askAgainMinutes.first],
      },
    ];
  for (let n = 2; ; n += 1) {
    const repeated = dinner.calls.get(`check-due:${what}-${n}`);
    if (!repeated) {
      const usual = addMinutes(asked.lastAt, askAgainMinutes.usual);
      const soonest = addMinutes(asked.lastAt, askAgainMinutes.nearThePull);
      const nearThePull = Math.max(soonest, addMinutes(plan.pullAt.p10, -5));
      const again = Math.max(away, Math.min(usual, nearThePull));
      return [{ ...look, what: `${what}-${n}`, dueAt: again }];
    }
    asked = repeated;
  }
}

/** A watched temperature is called when the forecast's middle says the core stands there. */
export function watches(dinner: Dinner, plan: Plan, forecast: Forecast): Wanted[] {
  if (roastWentInAt(dinner) === undefined) return [];
  return dinner.watches.flatMap((watch) => {
    const row = forecast.core.find((one) => one.celsius.p50 >= watch.celsius);
    if (!row) return [];
    return [
      {
        kind: 'watch' as const,
        what: String(watch.position),
        dueAt: addMinutes(plan.roastInAt, row.minute),
        expiryMinutes: 20,
        about: { what: 'watch' as const, celsius: watch.celsius },
      },
    ];
  });
}
