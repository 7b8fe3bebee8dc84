/** Calls of the steps: the roast's own moments, the dishes in two beats, the chores. */
import { addMinutes, type Instant, minutesBetween } from '../../base/time.ts';
import { choreOf } from '../../kitchen/chores.ts';
import { type Dinner, roastCardOf } from '../../kitchen/dinner.ts';
import type { Plan, PlannedStep } from '../../kitchen/plan.ts';
import { callNameOf } from '../items.ts';
import { roastCameOutAt, roastInName, roastWentInAt } from '../roast-day.ts';
import { presumed, type Wanted } from './call.ts';
import { isPullCalled, pullName, pullTimes, type Seen } from './pull.ts';

/** How long before a move hands are called to be ready. Common practice, no source. */
const readyBeforeMinutes = 10;

/** The first of two beats before the oven is turned. */
const ovenReadyMinutes = 5;

/** With less than this between them, two beats are one. */
const readyAtLeastMinutes = 3;

/** What the cook has plainly passed: the oven's heat and the fridge by the roast being in, all by the meal. */
function overtaken(dinner: Dinner, step: string): boolean {
  const served = dinner.steps.get('serve');
  const eating = served?.doneAt !== undefined || served?.startedAt !== undefined;
  if (eating && step !== 'put-away' && !choreOf(step)) return true;
  if (step === 'oven-on' && dinner.ovenHotAt !== undefined) return true;
  const needless = step === 'oven-on' || step === 'out-of-fridge';
  return needless && roastWentInAt(dinner) !== undefined;
}

/** A butter is for the roast: once it is on, or too late to go on before the knife, no more of it is called. */
function butterPast(dinner: Dinner, plan: Plan, step: PlannedStep): boolean {
  const own = dinner.cards.find((one) => one.id === step.card);
  const spreading = roastCardOf(dinner)?.steps.find((one) => one.id === 'butter-roast');
  const spread = plan.steps.find((one) => one.id === 'butter-roast');
  const waitsFor = (spreading?.after ?? []).some((one) => one.step.startsWith(`${own?.id}.`));
  if (own?.card === 'butter' && !(spread && waitsFor))
    return dinner.steps.get('carve')?.startedAt !== undefined;
  if (!spreading || !spread || (own?.card !== 'butter' && step.id !== 'butter-roast')) return false;
  const downAt = dinner.steps.get('oven-down')?.doneAt;
  const latest = spreading.ends?.latestMinutes;
  return (
    spread.state === 'done' ||
    spread.state === 'skipped' ||
    roastCameOutAt(dinner) !== undefined ||
    (downAt !== undefined && latest !== undefined && minutesBetween(downAt, step.endAt) > latest)
  );
}

export function stepCalls(seen: Seen, step: PlannedStep): Wanted[] {
  const { dinner, plan } = seen;
  if (step.state === 'done' || step.state === 'skipped') return [];
  if (overtaken(dinner, step.id) || butterPast(dinner, plan, step)) return [];
  // Begun without being called: the cook is ahead of us.
  if (dinner.steps.get(step.id)?.startedAt !== undefined) return [];
  const dueAt = step.startAt;
  const one = { what: step.id, step: step.id, dueAt };
  const ready = (minutes: number): Wanted[] => readyCall(dinner, one, minutes);
  switch (step.id) {
    case 'oven-on':
      return [{ kind: 'oven-change', ...one, expiryMinutes: 20, repeats: 1 }];
    case 'roast-in':
      return [
        ...ready(readyBeforeMinutes),
        {
          kind: 'step-due',
          ...one,
          what: roastInName(dinner),
          expiryMinutes: 15,
          // The whole day counts from it.
          repeats: 3,
          presumes: presumed(dinner, ['oven-on']),
        },
      ];
    case 'oven-up':
    case 'oven-down':
      if (step.id === 'oven-down' && courseTurns(dinner, dueAt)) return [];
      // The sear at the end begins with the roast out; until that is told there is nothing to turn up.
      if (step.id === 'oven-up' && roastCameOutAt(dinner) === undefined) return [];
      return [
        ...ready(ovenReadyMinutes),
        {
          kind: 'oven-change',
          ...one,
          expiryMinutes: 10,
          urgency: 'high',
          repeats: 3,
          presumes: presumed(dinner, ['oven-on', 'roast-in']),
        },
      ];
    case 'check':
    case 'rest':
      return [];
    case 'pull': {
      const what = pullName(dinner, plan);
      return [
        // Once it was called there is nothing to be ready for any more.
        ...(isPullCalled(seen) ? [] : ready(readyBeforeMinutes)),
        {
          kind: 'pull',
          ...one,
          what,
          expiryMinutes: 10,
          urgency: 'high',
          ...pullTimes(dueAt, seen),
          presumes: presumed(dinner, ['oven-on', 'roast-in', 'oven-down']),
        },
      ];
    }
    case 'carve':
      return roastCameOutAt(dinner) === undefined
        ? []
        : [
            ...(dinner.steps.get('rest')?.skipped
              ? []
              : [
                  {
                    kind: 'rest-over' as const,
                    ...one,
                    dueAt: addMinutes(dueAt, -3),
                    expiryMinutes: 10,
                  },
                ]),
            { kind: 'carve', ...one, expiryMinutes: 30 },
          ];
    case 'serve':
      return roastCameOutAt(dinner) === undefined
        ? []
        : [{ kind: 'serve', ...one, expiryMinutes: 30, presumes: presumed(dinner, ['carve']) }];
    case 'put-away':
      return roastCameOutAt(dinner) === undefined
        ? []
        : [
            {
              kind: 'put-away',
              ...one,
              expiryMinutes: 120,
              repeats: 1,
              presumes: presumed(dinner, ['carve', 'serve']),
            },
          ];
    // Who comes is met, not called.
    case 'guests-arrive':
      return ready(readyBeforeMinutes);
    case 'first-course':
      return [...ready(readyBeforeMinutes), { kind: 'step-due', ...one, expiryMinutes: 20 }];
    default:
      return dishCalls(dinner, plan, step, ready(readyBeforeMinutes));
  }
}

/** The first of two beats, while there is time for it; a little late, it says the minutes that are left. */
function readyCall(
  dinner: Dinner,
  one: { what: string; step: string; dueAt: Instant },
  minutes: number,
): Wanted[] {
  const saidAt = Math.max(addMinutes(one.dueAt, -minutes), dinner.lastAt);
  const left = Math.min(minutes, Math.round(minutesBetween(saidAt, one.dueAt)));
  if (left < readyAtLeastMinutes) return [];
  return [
    {
      kind: 'get-ready',
      ...one,
      dueAt: addMinutes(one.dueAt, -minutes),
      expiryMinutes: minutes,
      about: { what: 'ready-in', minutes: left },
    },
  ];
}

/** A course that was chosen turns the oven itself, at the end of the sear or since. */
const courseTurns = (dinner: Dinner, ovenDownAt: Instant): boolean =>
  (dinner.course?.oven ?? []).some(
    (move) => minutesBetween(ovenDownAt, move.at) < 3 || move.at <= dinner.lastAt,
  );

/** A dish's step, or the roast's own mise en place. Going into the oven comes in two beats. */
function dishCalls(dinner: Dinner, plan: Plan, step: PlannedStep, ready: Wanted[]): Wanted[] {
  const card = dinner.cards.find((one) => one.id === step.card);
  const found = card?.steps.find((one) => step.id.endsWith(one.id));
  const one = { what: callNameOf(dinner, step.id), step: step.id, dueAt: step.startAt };
  if (found?.oven) {
    return [
      ...ready,
      {
        kind: 'side-in',
        ...one,
        expiryMinutes: 20,
        repeats: 1,
        presumes: presumed(dinner, ['oven-on', 'roast-in', 'oven-down']),
      },
    ];
  }
  // A chore of the days before is still worth hearing some hours later.
  const expiryMinutes = choreOf(step.id) ? 6 * 60 : 30;
  return plan.complete ? [{ kind: 'step-due', ...one, expiryMinutes }] : [];
}
