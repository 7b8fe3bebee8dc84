/**
 * When the chores of the days before fall, and those of guests who keep other hours. What would have
 * been due before the dinner was told is left out, but for the thaw, which then begins at once.
 */
import { addDays, addMinutes, type Instant, instantOf, localTime } from '../../base/time.ts';
import {
  aheadDishesOf,
  type ChoreId,
  seasoningStep,
  thermometerStep,
} from '../../kitchen/chores.ts';
import { type Dinner, roastCardOf, type StepRecord } from '../../kitchen/dinner.ts';
import type { Band } from '../../kitchen/forecast.ts';
import type { Plan, PlannedStep, Reason, StepState } from '../../kitchen/plan.ts';
import { figureOf } from '../../kitchen/safety.ts';
import { calledAt } from '../items.ts';
import { roastWentInAt } from '../roast-day.ts';
import { thawBeganAt, thawOf } from './thaw.ts';

/** Clock times of the day before. Common practice, no source. */
const shoppingTime = '10:00';
const aheadTime = '18:30';
const thermometerTime = '19:00';
const saltingTime = '20:00';
/** On the day itself, to feel whether the heart has thawed. */
const feelingTime = '08:00';

/** Salt on for less than this is neither overnight nor at the oven door. */
const overnightMinutes = 8 * 60;
/** A supper of their own is put on so long before they eat. */
const supperMinutes = 15;
/** Those who came later have eaten after so long. */
const lateMealMinutes = 30;
/** A chore that was called and of which nothing was heard is taken to be over after this. */
const unansweredMinutes = 12 * 60;

interface Chore {
  id: string;
  kind: ChoreId;
  startAt: Instant;
  minutes: Band;
  handsOn: PlannedStep['handsOn'];
  latestAt: Instant;
  why: readonly Reason[];
}

export interface DaysQuestion {
  dinner: Dinner;
  plan: Plan;
  now: Instant;
}

/** The plan with the chores among its steps; titles are the words room's, so ids stand for them. */
export function withChores({ dinner, plan, now }: DaysQuestion): Plan {
  if (!plan.complete) return plan;
  const chores = [...daysBefore({ dinner, plan, now }), ...otherHours(dinner, plan)];
  const salting = chores.find((chore) => chore.kind === 'salt-ahead');
  const tested = plan.steps.map((step) => testedTheEveningBefore(step, dinner, plan, now));
  const steps = salting ? cutBeforeSalting(tested, salting.startAt, dinner, now) : tested;
  const laterAt = chores.filter((chore) => chore.kind === 'carve-later').map((one) => one.startAt);
  return {
    ...plan,
    steps: [
      ...withPutAwayAfter(steps, Math.max(...laterAt), plan),
      ...chores.map((chore) => plannedOf(chore, dinner, now)),
    ].sort((a, b) => a.startAt - b.startAt || (a.id < b.id ? -1 : 1)),
  };
}

const clockAt = (dinner: Dinner, at: Instant, days: number, time: string): Instant =>
  instantOf(addDays(localTime(at, dinner.timeZone).date, days), time, dinner.timeZone);

/** Since when the dinner is known well enough to be told of chores. */
const toldAt = (dinner: Dinner): Instant => dinner.completeAt ?? dinner.openedAt;

const isUnder = (dinner: Dinner, id: string): boolean =>
  dinner.steps.has(id) || calledAt(dinner, id) !== undefined;

function daysBefore({ dinner, plan, now }: DaysQuestion): Chore[] {
  const { roastInAt } = plan;
  const since = toldAt(dinner);
  const before = (days: number, time: string): Instant => clockAt(dinner, roastInAt, -days, time);
  const chores: Chore[] = [];
  const add = (chore: Omit<Chore, 'id'>): void => {
    if (chore.startAt >= since || isUnder(dinner, chore.kind))
      chores.push({ ...chore, id: chore.kind });
  };
  const untilRoast = (at: Instant): Reason[] => [
    { key: 'before-step', step: 'roast-in', minutes: (roastInAt - at) / 60_000 },
  ];
  const shopAt = [2, 1].map((days) => before(days, shoppingTime)).find((at) => at >= since);
  if (shopAt !== undefined)
    add({
      kind: 'shop',
      startAt: shopAt,
      minutes: { p10: 30, p50: 60, p90: 120 },
      handsOn: 'start',
      latestAt: before(0, '10:00'),
      why: untilRoast(shopAt),
    });
  chores.push(...thawing(dinner, plan, now));
  if (roastWentInAt(dinner) !== undefined && !isUnder(dinner, 'salt-ahead')) return chores;
  const dishes = aheadDishesOf(dinner);
  const begun = dishes.some((card) =>
    card.steps.some((one) => dinner.steps.has(`${card.id}.${one.id}`)),
  );
  if (dishes.length > 0 && !begun) {
    const likely = dishes
      .flatMap((card) => card.steps)
      .reduce((sum, one) => sum + one.minutes[1], 0);
    const minutes = Math.min(likely, 30);
    const startAt = before(1, aheadTime);
    add({
      kind: 'make-ahead',
      startAt,
      minutes: { p10: minutes / 2, p50: minutes, p90: minutes * 2 },
      handsOn: 'throughout',
      latestAt: roastInAt,
      why: untilRoast(startAt),
    });
  }
  // Told later than that evening's hour, it is salted when it is told.
  const evening = before(1, saltingTime);
  const toldTheDayBefore = since < clockAt(dinner, roastInAt, 0, '00:00');
  const saltAt = toldTheDayBefore ? Math.max(evening, since) : evening;
  const seasoned = dinner.steps.get(seasoningStep)?.doneAt !== undefined;
  const time = (roastInAt - Math.max(saltAt, now)) / 60_000;
  if (!seasoned && (time >= overnightMinutes || isUnder(dinner, 'salt-ahead')))
    add({
      kind: 'salt-ahead',
      startAt: saltAt,
      minutes: { p10: 5, p50: 10, p90: 15 },
      handsOn: 'throughout',
      latestAt: addMinutes(roastInAt, -overnightMinutes),
      why: untilRoast(saltAt),
    });
  return chores;
}

/** Into the fridge, and felt on the morning of the day. */
function thawing(dinner: Dinner, plan: Plan, now: Instant): Chore[] {
  const { roastInAt } = plan;
  const feelAt = Math.min(clockAt(dinner, roastInAt, 0, feelingTime), addMinutes(roastInAt, -90));
  const thaw = thawOf(dinner, now, Math.min(feelAt, addMinutes(roastInAt, -240)));
  // What cannot thaw in the fridge by then is thawed in water or roasted frozen; the words say so.
  const hopeless = thawOf(dinner, now, roastInAt)?.fits === 'not';
  const felt = isUnder(dinner, 'thaw-check');
  const startAt =
    thawBeganAt(dinner) ??
    (thaw && !hopeless ? Math.max(now, eveningBefore(dinner, thaw.startAt)) : undefined);
  const chore = (kind: 'thaw' | 'thaw-check', at: Instant, minutes: Band): Chore => ({
    id: kind,
    kind,
    startAt: at,
    minutes,
    handsOn: 'start',
    latestAt: roastInAt,
    why: [{ key: 'before-step', step: 'roast-in', minutes: (roastInAt - at) / 60_000 }],
  });
  if (startAt === undefined) return [];
  const open = feelAt > startAt && roastWentInAt(dinner) === undefined;
  return [
    chore('thaw', startAt, { p10: 2, p50: 5, p90: 10 }),
    ...(open || felt ? [chore('thaw-check', feelAt, { p10: 1, p50: 2, p90: 5 })] : []),
  ];
}

/** The rest is put away once the last have eaten, and within two hours of the table all the same. */
function withPutAwayAfter(
  steps: readonly PlannedStep[],
  laterAt: Instant,
  plan: Plan,
): PlannedStep[] {
  if (!Number.isFinite(laterAt)) return [...steps];
  const latest = addMinutes(plan.serving.likelyAt, figureOf('leftovers', 'out').value - 10);
  return steps.map((step) => {
    if (step.id !== 'put-away' || (step.state !== 'planned' && step.state !== 'due')) return step;
    const startAt = Math.max(step.startAt, Math.min(addMinutes(laterAt, lateMealMinutes), latest));
    return { ...step, startAt, endAt: startAt + (step.endAt - step.startAt) };
  });
}

/** A person's hour not after an instant: eight in the evening or nine in the morning. */
function eveningBefore(dinner: Dinner, at: Instant): Instant {
  const hours = [
    clockAt(dinner, at, -1, '20:00'),
    clockAt(dinner, at, 0, '09:00'),
    clockAt(dinner, at, 0, '20:00'),
  ];
  return hours.filter((hour) => hour <= at).at(-1) ?? at;
}

/** Guests who eat before the table, and those who come after it. */
function otherHours(dinner: Dinner, plan: Plan): Chore[] {
  const table = plan.serving.likelyAt;
  const early = dinner.notes.filter((note) => note.need === 'eats-at' && note.value);
  const later = dinner.notes.filter((note) => note.need === 'comes-later' && note.value);
  const why: Reason[] = [{ key: 'told' }];
  return [
    ...early.flatMap((note, index): Chore[] => {
      const startAt = addMinutes(clockAt(dinner, table, 0, note.value ?? ''), -supperMinutes);
      if (startAt >= table || startAt < toldAt(dinner)) return [];
      return [
        {
          id: `feed-early-${index + 1}`,
          kind: 'feed-early',
          startAt,
          minutes: { p10: 10, p50: supperMinutes, p90: 30 },
          handsOn: 'start',
          latestAt: table,
          why,
        },
      ];
    }),
    ...later.flatMap((note, index): Chore[] => {
      const startAt = laterAt(note.value ?? '', dinner, table);
      if (startAt === undefined || startAt <= table) return [];
      return [
        {
          id: `carve-later-${index + 1}`,
          kind: 'carve-later',
          startAt,
          minutes: { p10: 3, p50: 6, p90: 10 },
          handsOn: 'start',
          latestAt: addMinutes(table, 120),
          why,
        },
      ];
    }),
  ];
}

/** "HH:MM", or minutes after the table. */
function laterAt(value: string, dinner: Dinner, table: Instant): Instant | undefined {
  if (/^\d\d:\d\d$/.test(value)) return clockAt(dinner, table, 0, value);
  const minutes = Number(value);
  return Number.isFinite(minutes) ? addMinutes(table, minutes) : undefined;
}

/**
 * What the card does to the roast before it is salted is done the evening before as well, one after
 * the other: a salted roast is not trimmed and tied. What was begun or skipped stays where it was.
 */
function cutBeforeSalting(
  steps: readonly PlannedStep[],
  saltAt: Instant,
  dinner: Dinner,
  now: Instant,
): PlannedStep[] {
  const salted = dinner.steps.get('salt-ahead');
  if (salted?.skipped || (salted?.doneAt ?? salted?.startedAt) !== undefined) return [...steps];
  const before = beforeSeasoning(dinner);
  let endAt = saltAt;
  const moved = new Map<string, PlannedStep>();
  for (const step of [...steps].reverse()) {
    const untouched = step.state === 'planned' || step.state === 'due';
    if (!before.has(step.id) || !untouched || step.startAt <= saltAt) continue;
    const startAt = addMinutes(endAt, -step.minutes.p50);
    moved.set(step.id, { ...step, startAt, endAt, state: startAt <= now ? 'due' : 'planned' });
    endAt = startAt;
  }
  return steps.map((step) => moved.get(step.id) ?? step);
}

/** The steps of the roast's card that its seasoning waits for, directly or not. */
function beforeSeasoning(dinner: Dinner): ReadonlySet<string> {
  const steps = roastCardOf(dinner)?.steps ?? [];
  const before = new Set<string>();
  const visit = (id: string): void => {
    for (const { step } of steps.find((one) => one.id === id)?.after ?? [])
      if (!before.has(step) && !step.includes('.')) {
        before.add(step);
        visit(step);
      }
  };
  visit(seasoningStep);
  return before;
}

/** Told a day ahead, the thermometer is tested while a new one can still be bought. */
function testedTheEveningBefore(
  step: PlannedStep,
  dinner: Dinner,
  plan: Plan,
  now: Instant,
): PlannedStep {
  if (step.id !== thermometerStep || step.state === 'done' || step.state === 'active') return step;
  const at = clockAt(dinner, plan.roastInAt, -1, thermometerTime);
  if (at < toldAt(dinner) || step.state === 'skipped') return step;
  const startAt = Math.min(at, step.startAt);
  return {
    ...step,
    startAt,
    endAt: addMinutes(startAt, step.minutes.p50),
    state: startAt <= now ? 'due' : 'planned',
  };
}

function plannedOf(chore: Chore, dinner: Dinner, now: Instant): PlannedStep {
  const record = dinner.steps.get(chore.id);
  const begunAt = record?.startedAt ?? calledAt(dinner, chore.id);
  const startAt = begunAt ?? record?.doneAt ?? chore.startAt;
  const endAt = record?.doneAt ?? addMinutes(startAt, chore.minutes.p50);
  return {
    id: chore.id,
    card: dinner.roast.cut ?? 'roast',
    title: chore.id,
    startAt,
    endAt,
    minutes: chore.minutes,
    state: stateOf(chore, { record, begunAt, now }),
    hands: ['you'],
    handsOn: chore.handsOn,
    needs: [],
    why: chore.why,
    slackMinutes: Math.max(0, Math.round((chore.latestAt - endAt) / 60_000)),
    presumed: record?.presumed ?? (record === undefined && begunAt !== undefined),
  };
}

function stateOf(
  chore: Chore,
  {
    record,
    begunAt,
    now,
  }: { record: StepRecord | undefined; begunAt: Instant | undefined; now: Instant },
): StepState {
  if (record?.skipped) return 'skipped';
  if (record?.doneAt !== undefined) return 'done';
  if (begunAt !== undefined)
    return now < addMinutes(begunAt, chore.minutes.p50 + unansweredMinutes) ? 'active' : 'done';
  return chore.startAt <= now ? 'due' : 'planned';
}
