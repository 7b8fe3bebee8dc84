/**
 * What must be said unasked, and when: derived from the plan and the facts, never stored until it is
 * raised. A call goes by "kind:what"; the ones that must not be missed repeat until it is done.
 */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { choreOf } from '../kitchen/chores.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { AnnouncementKind } from '../kitchen/facts.ts';
import type { Forecast } from '../kitchen/forecast.ts';
import type { OvenMove, Plan, PlannedStep } from '../kitchen/plan.ts';
import { roastCameOutAt, roastWentInAt } from './roast-day.ts';

/** A step taken for granted by a later call, since nobody reported it. */
export interface Presumption {
  step: string;
  happenedAt: Instant;
}

export interface Call {
  /** "kind:what"; repeats share it. */
  call: string;
  repeat: number;
  kind: AnnouncementKind;
  step?: string | undefined;
  dueAt: Instant;
  expiresAt: Instant;
  urgency: 'low' | 'normal' | 'high';
  presumes: Presumption[];
  /** What the words need to know beyond the plan. */
  about?: CallMatter | undefined;
}

export type CallMatter =
  | { what: 'oven'; celsius: number; why: OvenMove['why'] }
  | { what: 'timer'; label?: string | undefined }
  | { what: 'watch'; celsius: number }
  | { what: 'late'; likelyAt: Instant; minutes: number }
  | { what: 'out-of-fridge'; hours: number }
  | { what: 'ready-in'; minutes: number };

/** Minutes after a call at which one that must not be missed is called again; other calls wait longer. */
const repeatAfterMinutes = [3, 3, 4, 5, 5, 5, 5, 10, 10, 10, 15, 15, 15];
const gentleRepeatMinutes = 6;

/** How long before a move hands are called to be ready. Common practice, no source. */
const readyBeforeMinutes = 10;

/** The first of two beats before the oven is turned. */
const ovenReadyMinutes = 5;

/** A look so soon after the last, or so soon before the pull, tells nothing new. */
const betweenLooksMinutes = 4;

/**
 * A core climbs no faster than this: what a small roast does in a hot oven. Common practice, no source.
 */
const climbKelvinPerMinute = 1.1;

/** A change of the table that is worth saying unasked. */
const lateWorthSayingMinutes = 10;

interface Wanted {
  kind: AnnouncementKind;
  what: string;
  step?: string;
  dueAt: Instant;
  expiryMinutes: number;
  urgency?: 'low' | 'normal' | 'high';
  repeats?: number;
  about?: CallMatter;
  presumes?: Presumption[];
}

/** Every call still to come, soonest first. */
export function callsOf(
  dinner: Dinner,
  plan: Plan | undefined,
  forecast: Forecast | undefined,
): Call[] {
  const wanted: Wanted[] = [...timers(dinner)];
  if (plan && (plan.complete || roastWentInAt(dinner) !== undefined)) {
    wanted.push(
      ...plan.steps.flatMap((step) => stepCalls(dinner, plan, step)),
      ...ovenCalls(dinner, plan),
      ...checkCalls(dinner, plan),
      ...lateCalls(dinner, plan),
      ...cautionCalls(dinner),
      ...(forecast ? watches(dinner, plan, forecast) : []),
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

function asCall(dinner: Dinner, wanted: Wanted): Call[] {
  const call = `${wanted.kind}:${wanted.what}`;
  const made = dinner.calls.get(call);
  const repeats = wanted.repeats ?? 0;
  const times = made?.times ?? 0;
  if (times > repeats) return [];
  const after =
    wanted.urgency === 'high'
      ? (repeatAfterMinutes[Math.min(times - 1, repeatAfterMinutes.length - 1)] ?? 15)
      : gentleRepeatMinutes;
  const gentler = made?.acknowledged ? 2 : 0;
  const dueAt = made
    ? addMinutes(made.lastAt, after + gentler)
    : Math.max(wanted.dueAt, dinner.openedAt);
  return [
    {
      call,
      repeat: times,
      kind: wanted.kind,
      step: wanted.step,
      dueAt,
      expiresAt: addMinutes(dueAt, wanted.expiryMinutes),
      urgency: wanted.urgency ?? 'normal',
      presumes: made ? [] : (wanted.presumes ?? []),
      about: wanted.about,
    },
  ];
}

/** What an unreported but called roast moment is taken to have been, when a later one falls due. */
function presumed(dinner: Dinner, steps: readonly string[]): Presumption[] {
  return steps.flatMap((step) => {
    const record = dinner.steps.get(step);
    if (record?.doneAt !== undefined || record?.startedAt !== undefined || record?.skipped)
      return [];
    if (record?.notDoneAt !== undefined) return [];
    const kinds = ['oven-change', 'step-due', 'carve', 'serve'];
    const call = kinds.map((kind) => dinner.calls.get(`${kind}:${step}`)).find((one) => one);
    return call ? [{ step, happenedAt: call.firstAt }] : [];
  });
}

/** What the cook has plainly passed: the oven's heat and the fridge by the roast being in, all by the meal. */
function overtaken(dinner: Dinner, step: string): boolean {
  const served = dinner.steps.get('serve');
  const eating = served?.doneAt !== undefined || served?.startedAt !== undefined;
  if (eating && step !== 'put-away' && !choreOf(step)) return true;
  if (step === 'oven-on' && dinner.ovenHotAt !== undefined) return true;
  const needless = step === 'oven-on' || step === 'out-of-fridge';
  return needless && roastWentInAt(dinner) !== undefined;
}

function stepCalls(dinner: Dinner, plan: Plan, step: PlannedStep): Wanted[] {
  if (step.state === 'done' || step.state === 'skipped') return [];
  if (overtaken(dinner, step.id)) return [];
  // Begun without being called: the cook is ahead of us.
  if (dinner.steps.get(step.id)?.startedAt !== undefined) return [];
  const dueAt = step.startAt;
  const one = { what: step.id, step: step.id, dueAt };
  const ready = (minutes: number): Wanted => ({
    kind: 'get-ready',
    ...one,
    dueAt: addMinutes(dueAt, -minutes),
    expiryMinutes: minutes,
    about: { what: 'ready-in', minutes },
  });
  switch (step.id) {
    case 'oven-on':
      return [{ kind: 'oven-change', ...one, expiryMinutes: 20, repeats: 1 }];
    case 'roast-in':
      return [
        ready(readyBeforeMinutes),
        {
          kind: 'step-due',
          ...one,
          expiryMinutes: 15,
          repeats: 1,
          presumes: presumed(dinner, ['oven-on']),
        },
      ];
    case 'oven-up':
    case 'oven-down':
      // The sear at the end begins with the roast out; until that is told there is nothing to turn up.
      if (step.id === 'oven-up' && roastCameOutAt(dinner) === undefined) return [];
      return [
        ready(ovenReadyMinutes),
        {
          kind: 'oven-change',
          ...one,
          expiryMinutes: 10,
          urgency: 'high',
          repeats: 5,
          presumes: presumed(dinner, ['oven-on', 'roast-in']),
        },
      ];
    case 'check':
    case 'rest':
      return [];
    case 'pull':
      return [
        ready(readyBeforeMinutes),
        {
          kind: 'pull',
          ...one,
          what: pullName(dinner, plan),
          dueAt: Math.max(dueAt, reachableAt(dinner, plan)),
          expiryMinutes: 10,
          urgency: 'high',
          repeats: 24,
          presumes: presumed(dinner, ['oven-on', 'roast-in', 'oven-down']),
        },
      ];
    case 'carve':
      return roastCameOutAt(dinner) === undefined
        ? []
        : [
            { kind: 'rest-over', ...one, dueAt: addMinutes(dueAt, -3), expiryMinutes: 10 },
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
    default:
      return dishCalls(dinner, plan, step, ready(readyBeforeMinutes));
  }
}

/** A reading so far below the pull says that its call came too soon. */
const shortKelvin = 1;

/**
 * The pull is called by the forecast; a reading that falls short of it afterwards withdraws that call,
 * and the next, at its new time, is a call of its own.
 */
function pullName(dinner: Dinner, plan: Plan): string {
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

/** A dish's step, or the roast's own mise en place. Going into the oven comes in two beats. */
function dishCalls(dinner: Dinner, plan: Plan, step: PlannedStep, ready: Wanted): Wanted[] {
  const card = dinner.cards.find((one) => one.id === step.card);
  const found = card?.steps.find((one) => step.id.endsWith(one.id));
  const one = { what: step.id, step: step.id, dueAt: step.startAt };
  if (found?.oven) {
    return [
      ready,
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

/** Moves of the oven that belong to no step: a course taken, or heat for the dishes. */
function ovenCalls(dinner: Dinner, plan: Plan): Wanted[] {
  if (dinner.steps.get('serve')?.doneAt !== undefined) return [];
  const last = dinner.oven.at(-1);
  return (
    plan.oven
      .filter((move) => move.why === 'course' || move.why === 'sides' || move.why === 'hold')
      // What waits for the roast to be out of its oven is not called while it is in.
      .filter(
        (move) => move.why === 'course' || move.oven === 1 || roastCameOutAt(dinner) !== undefined,
      )
      .filter(
        (move) =>
          !last ||
          move.oven === 1 ||
          (move.at > last.at && Math.abs(move.celsius - last.celsius) > 3),
      )
      .map((move) => ({
        kind: 'oven-change' as const,
        what: moveName(move),
        dueAt: move.at,
        expiryMinutes: 10,
        urgency: move.why === 'course' ? ('high' as const) : ('normal' as const),
        repeats: move.why === 'course' ? 4 : 0,
        about: { what: 'oven' as const, celsius: move.celsius, why: move.why },
      }))
  );
}

/** A course is told for its instant; a heat for the dishes goes by the heat, however it slides. */
const moveName = ({ why, at, celsius, oven }: OvenMove): string =>
  why === 'course'
    ? `course@${Math.round(at / 60_000)}`
    : `${why}-${Math.round(celsius)}${oven === 1 ? '-second' : ''}`;

/** The soonest that the core can stand at the pull, by a look that is fresh. */
function reachableAt(dinner: Dinner, plan: Plan): Instant {
  const last = dinner.readings.at(-1);
  if (!last || minutesBetween(last.happenedAt, plan.pullAt.p50) > 12) return 0;
  const short = plan.pullCelsius - last.celsius;
  return short <= 0 ? 0 : addMinutes(last.happenedAt, short / climbKelvinPerMinute);
}

/** A look that nobody took is asked for again after so long, sooner where the pull may be near. */
const askAgainMinutes = { usual: 20, nearThePull: 12 };

/** However calm the forecast, nobody leaves a roast unlooked at for longer. Common practice, no source. */
const longestUnseenMinutes = 45;

/**
 * One look per state of the evidence, asked for again until something comes back: nothing but a number
 * narrows a forecast. The pull's own call asks for its number itself.
 */
function checkCalls(dinner: Dinner, plan: Plan): Wanted[] {
  const went = roastWentInAt(dinner);
  if (plan.checkAt === undefined || went === undefined || roastCameOutAt(dinner) !== undefined)
    return [];
  if (dinner.calls.has(`pull:${pullName(dinner, plan)}`)) return [];
  const look = {
    kind: 'check-due' as const,
    step: 'check',
    expiryMinutes: 12,
    presumes: presumed(dinner, ['oven-on', 'roast-in', 'oven-down']),
  };
  const what = `reading-${dinner.readings.length + 1}`;
  const lastAt = dinner.readings.at(-1)?.happenedAt;
  const dueAt =
    lastAt === undefined
      ? plan.checkAt
      : Math.min(
          Math.max(plan.checkAt, addMinutes(lastAt, betweenLooksMinutes)),
          addMinutes(lastAt, longestUnseenMinutes),
        );
  const close = Math.abs(minutesBetween(dueAt, plan.pullAt.p50)) < betweenLooksMinutes;
  if (close && plan.pullAt.p50 > dinner.lastAt) return [];
  let asked = dinner.calls.get(`check-due:${what}`);
  if (!asked || asked.times < 2) return [{ ...look, what, dueAt, repeats: 1 }];
  for (let n = 2; ; n += 1) {
    const again = dinner.calls.get(`check-due:${what}-${n}`);
    if (!again) {
      const usual = addMinutes(asked.lastAt, askAgainMinutes.usual);
      const soonest = addMinutes(asked.lastAt, askAgainMinutes.nearThePull);
      const nearThePull = Math.max(soonest, addMinutes(plan.pullAt.p10, -5));
      return [{ ...look, what: `${what}-${n}`, dueAt: Math.min(usual, nearThePull) }];
    }
    asked = again;
  }
}

function lateCalls(dinner: Dinner, plan: Plan): Wanted[] {
  if (dinner.steps.get('serve')?.doneAt !== undefined || roastWentInAt(dinner) === undefined)
    return [];
  // Once it was called to the table, nobody waits for the hour any more.
  if (dinner.calls.has('serve:serve')) return [];
  // While nobody says whether it is out, how late dinner is would be a guess about that.
  if (roastCameOutAt(dinner) === undefined && dinner.calls.has(`pull:${pullName(dinner, plan)}`))
    return [];
  const promised = Math.max(dinner.told?.servingAt ?? 0, plan.serving.wantedAt);
  const minutes = minutesBetween(promised, plan.serving.likelyAt);
  if (minutes <= lateWorthSayingMinutes) return [];
  const { likelyAt } = plan.serving;
  return [
    {
      kind: 'running-late',
      what: `${Math.round(promised / 60_000)}+${Math.round(minutes / 15)}`,
      dueAt: dinner.lastAt,
      expiryMinutes: 30,
      about: { what: 'late', likelyAt, minutes },
    },
  ];
}

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

/** A watched temperature is called when the forecast's middle says the core stands there. */
function watches(dinner: Dinner, plan: Plan, forecast: Forecast): Wanted[] {
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
