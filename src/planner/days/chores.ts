/**
 * When the chores of the days before fall, and those of guests who keep other hours. What would have
 * been due before the dinner was told is left out, but for the thaw, which then begins at once.
 */
import { addMinutes, type Instant } from '../../base/time.ts';
import { aheadDishesOf, seasoningStep } from '../../kitchen/chores.ts';
import type { Dinner, StepRecord } from '../../kitchen/dinner.ts';
import type { Band } from '../../kitchen/forecast.ts';
import type { Plan, PlannedStep, Reason, StepState } from '../../kitchen/plan.ts';
import { calledAt } from '../items.ts';
import { roastWentInAt } from '../roast-day.ts';
import { type Chore, clockAt, toldAt } from './chore.ts';
import { cutBeforeSalting, eveningOf, testedTheEveningBefore } from './evening.ts';
import { otherClocks, otherHours, withPutAwayAfter } from './other-hours.ts';
import { thawBeganAt, thawOf } from './thaw.ts';

/** Clock times of the day before. Common practice, no source. */
const shoppingTime = '10:00';
const aheadTime = '18:30';
/** On the day itself, to feel whether the heart has thawed. */
const feelingTime = '08:00';

/** Salt on for less than this is neither overnight nor at the oven door. */
const overnightMinutes = 8 * 60;
/** A chore that was called and of which nothing was heard is taken to be over after this. */
const unansweredMinutes = 12 * 60;

export interface DaysQuestion {
  dinner: Dinner;
  plan: Plan;
  now: Instant;
}

/** The plan with the chores among its steps; titles are the words room's, so ids stand for them. */
export function withChores({ dinner, plan, now }: DaysQuestion): Plan {
  if (!plan.complete) return plan;
  const chores = [
    ...daysBefore({ dinner, plan, now }),
    ...otherHours(dinner, plan),
    ...otherClocks(dinner, plan),
  ];
  const salting = chores.find((chore) => chore.kind === 'salt-ahead');
  const tested = plan.steps.map((step) => testedTheEveningBefore(step, dinner, plan, now));
  const steps = salting ? cutBeforeSalting(tested, eveningOf(dinner, plan), dinner, now) : tested;
  const laterAt = chores.filter((chore) => chore.kind === 'carve-later').map((one) => one.startAt);
  return {
    ...plan,
    steps: [
      ...withPutAwayAfter(steps, Math.max(...laterAt), plan),
      ...chores.map((chore) => plannedOf(chore, dinner, now)),
    ].sort((a, b) => a.startAt - b.startAt || (a.id < b.id ? -1 : 1)),
  };
}

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
  const { saltAt } = eveningOf(dinner, plan);
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

/** A person's hour not after an instant: eight in the evening or nine in the morning. */
function eveningBefore(dinner: Dinner, at: Instant): Instant {
  const hours = [
    clockAt(dinner, at, -1, '20:00'),
    clockAt(dinner, at, 0, '09:00'),
    clockAt(dinner, at, 0, '20:00'),
  ];
  return hours.filter((hour) => hour <= at).at(-1) ?? at;
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
  // Eaten and cleared after its own time: nobody reports that.
  if (chore.kind === 'first-course' && begunAt !== undefined && record?.doneAt === undefined)
    return now < addMinutes(begunAt, chore.minutes.p50) ? 'active' : 'done';
  if (record?.doneAt !== undefined) return 'done';
  if (begunAt !== undefined)
    return now < addMinutes(begunAt, chore.minutes.p50 + unansweredMinutes) ? 'active' : 'done';
  return chore.startAt <= now ? 'due' : 'planned';
}
