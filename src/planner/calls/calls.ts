/**
 * What must be said unasked, and when: derived from the plan and the facts, never stored until it is
 * raised. A call goes by "kind:what"; the ones that must not be missed repeat until it is done.
 */
import { addMinutes } from '../../base/time.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Forecast } from '../../kitchen/forecast.ts';
import type { Plan } from '../../kitchen/plan.ts';
import { roastWentInAt } from '../roast-day.ts';
import { asCall, type Call, type Wanted } from './call.ts';
import { checkCalls, watches } from './looks.ts';
import { ovenCalls } from './oven.ts';
import { stepCalls } from './steps.ts';
import { changedCalls, lateCalls } from './table.ts';

/** Every call still to come, soonest first. */
export function callsOf(
  dinner: Dinner,
  plan: Plan | undefined,
  forecast: Forecast | undefined,
): Call[] {
  const wanted: Wanted[] = [...timers(dinner)];
  if (plan && forecast && (plan.complete || roastWentInAt(dinner) !== undefined)) {
    wanted.push(
      ...plan.steps.flatMap((step) => stepCalls({ dinner, plan, forecast }, step)),
      ...ovenCalls(dinner, plan),
      ...checkCalls({ dinner, plan, forecast }),
      ...lateCalls(dinner, plan),
      ...changedCalls(dinner, plan),
      ...cautionCalls(dinner),
      ...watches(dinner, plan, forecast),
    );
  }
  return wanted
    .flatMap((one) => asCall(dinner, one))
    .filter((call) => heardInQuiet(dinner, call))
    .map((call) => afterEmergency(dinner, call))
    .sort((a, b) => a.dueAt - b.dueAt || (a.call < b.call ? -1 : 1));
}

/** "quiet" and "hang on" silence all but the oven-down, the pull, safety and what the cook asked for. */
function heardInQuiet(dinner: Dinner, call: Call): boolean {
  if (!dinner.quiet && !dinner.paused) return true;
  return !waitsForTheCook(call);
}

/** So long after an emergency of which nothing more was heard, calls go on as before. */
const emergencyMinutes = 180;

/** While an emergency keeps the cook away only what cannot wait is called; the rest waits for them. */
function afterEmergency(dinner: Dinner, call: Call): Call {
  const { emergency } = dinner;
  if (!emergency || !waitsForTheCook(call)) return call;
  const dueAt = Math.max(call.dueAt, addMinutes(emergency.at, emergencyMinutes));
  return { ...call, dueAt, expiresAt: Math.max(call.expiresAt, dueAt) };
}

const waitsForTheCook = (call: Call): boolean =>
  call.urgency !== 'high' &&
  call.kind !== 'caution' &&
  call.kind !== 'timer' &&
  call.kind !== 'watch';

/** Raw meat on the counter is counted: two hours by the consumer rule (USDA FSIS). */
function cautionCalls(dinner: Dinner): Wanted[] {
  const outAt =
    dinner.steps.get('out-of-fridge')?.startedAt ?? dinner.steps.get('out-of-fridge')?.doneAt;
  if (outAt === undefined || roastWentInAt(dinner) !== undefined) return [];
  return [
    {
      kind: 'caution',
      what: 'out-of-fridge',
      dueAt: addMinutes(outAt, 120),
      expiryMinutes: 240,
      about: { what: 'out-of-fridge', hours: 2 },
    },
  ];
}

function timers(dinner: Dinner): Wanted[] {
  return dinner.timers.map((timer) => ({
    kind: 'timer' as const,
    what: timer.id,
    dueAt: timer.dueAt,
    expiryMinutes: 30,
    urgency: 'normal' as const,
    about: { what: 'timer' as const, label: timer.label },
  }));
}
