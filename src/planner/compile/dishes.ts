/** The work of the cards as tasks: what was begun stays, what is open is to be placed. */
import type { Instant } from '../../base/time.ts';
import { celsiusOfFahrenheit, clamp } from '../../base/units.ts';
import { type Anchor, isRoastMoment } from '../../kitchen/card.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import { endOf, handsMinutesOf, type Item, predecessorsOf } from '../items.ts';
import { origin, weights } from '../problem.ts';
import { type Day, minuteIn } from './day.ts';
import { type Draft, hands, hob, point } from './draft.ts';
import { type PrepTurn, prepTurns } from './prep.ts';

/** An oven's dial and a dish's range are no closer than this. */
const toleranceKelvin = 3;

/** The task that an anchor of the cards stands for, and minutes after it. */
export function momentOf(day: Day, anchor: Anchor): string {
  switch (anchor) {
    case 'oven-down':
      return day.program.method === 'sear-first' ? 'oven-down' : 'roast-in';
    case 'table':
      return 'serve';
    default:
      return anchor;
  }
}

/** Open: neither begun nor done nor left out, and not a moment of the roast. */
export const isOpen = (item: Item): boolean =>
  !isRoastMoment(item.id) &&
  !item.skipped &&
  item.doneAt === undefined &&
  item.startedAt === undefined;

const whole = (item: Item): { low: number; likely: number; high: number } => ({
  low: Math.round(item.minutes.p10),
  likely: Math.max(1, Math.round(item.minutes.p50)),
  high: Math.max(1, Math.round(item.minutes.p90)),
});

export function draftDishes(draft: Draft, day: Day): void {
  for (const item of day.items) {
    if (isRoastMoment(item.id) || item.skipped) continue;
    if (isOpen(item)) draft.task(item.id, whole(item));
    else draftBegun(draft, day, item);
  }
  const turns = prepTurns(day);
  for (const item of day.items) {
    if (!isOpen(item)) continue;
    draft.notBefore(item.id, day.grid.now);
    draft.use(hands, item.id, 0, Math.ceil(handsMinutesOf(item)));
    for (const tool of item.needs) draft.use(`tool ${tool}`, item.id, 0, draft.minutesOf(item.id));
    if (item.step.hob) draft.use(hob, item.id, 0, draft.minutesOf(item.id));
    draftDrippings(draft, item);
    draftComing(draft, day, item);
    draftOrder(draft, day, item);
    draftWindow(draft, day, item, turns.get(item.id));
    draftStay(draft, day, item);
    draftPromise(draft, day, item);
  }
  draftRoastOrder(draft, day);
}

/** What is under way keeps its hands and its place in the oven until it ends. */
function draftBegun(draft: Draft, day: Day, item: Item): void {
  const endAt = endOf(item, day.dinner);
  if (endAt === undefined || item.doneAt !== undefined || endAt <= day.now) return;
  const startAt = item.startedAt ?? day.now;
  const minutes = minuteIn(day, endAt) - minuteIn(day, startAt);
  draft.task(item.id, begunSpan(day, item, Math.max(1, minutes)), minuteIn(day, startAt));
  draft.use(
    hands,
    item.id,
    0,
    item.handsOn === 'throughout' ? minutes : Math.ceil(handsMinutesOf(item)),
  );
  if (item.step.hob) draft.use(hob, item.id, 0, minutes);
  draftStay(draft, day, item);
}

/** It can still be done a little sooner than it likely is, unless the cook said how long it takes. */
function begunSpan(
  day: Day,
  item: Item,
  likely: number,
): { low: number; likely: number; high: number } {
  const { notDoneAt } = day.dinner.steps.get(item.id) ?? {};
  if (notDoneAt !== undefined || item.startedAt === undefined)
    return { low: likely, likely, high: likely };
  const sofar = day.grid.now - minuteIn(day, item.startedAt);
  const { low, high } = whole(item);
  return { low: clamp(Math.max(low, sofar), 1, likely), likely, high: Math.max(likely, high) };
}

/** Minutes from the roast's coming out until its pan can be tipped. */
const panMinutes = 2;

/** The roast's pan is one stock: there is none before the roast is out, and one takes from it at a time. */
function draftDrippings(draft: Draft, item: Item): void {
  if (!item.step.drippings) return;
  draft.use('tool drippings', item.id, 0, draft.minutesOf(item.id));
  draft.after(point('pull', panMinutes), point(item.id), 0, 'order', weights.hard);
}

/** Nothing is begun before what it is made of, or done with, is in the house. */
function draftComing(draft: Draft, day: Day, item: Item): void {
  for (const thing of [item.card.id, item.id, ...item.needs]) {
    const at = day.dinner.coming.get(thing);
    if (at !== undefined && at > day.now) draft.notBefore(item.id, minuteIn(day, at));
  }
}

/** When something that is no open task has ended, if it ever will. */
function endedAt(day: Day, id: string): Instant | undefined {
  const item = day.items.find((one) => one.id === id);
  return item ? endOf(item, day.dinner) : undefined;
}

function draftOrder(draft: Draft, day: Day, item: Item): void {
  for (const { step, minMinutes, maxMinutes } of predecessorsOf(item, day.items)) {
    if (draft.has(step)) {
      const end = point(step, draft.minutesOf(step));
      draft.after(end, point(item.id), minMinutes, 'order', weights.hard);
      if (maxMinutes !== undefined)
        draft.within(end, point(item.id), maxMinutes, 'window', weights.window);
      continue;
    }
    const at = endedAt(day, step);
    if (at === undefined) continue;
    const end = minuteIn(day, at);
    if (end + minMinutes > day.grid.now) draft.notBefore(item.id, end + minMinutes, 'order');
    if (maxMinutes !== undefined)
      draft.within(
        point(origin),
        point(item.id),
        Math.max(day.grid.now, end + maxMinutes),
        'window',
        weights.window,
      );
  }
}

/**
 * The last thing done for a dish: without it the dish is not on the table. When nobody would even wait
 * for the rest, the table waits for no dish.
 */
function isLast(item: Item, items: readonly Item[]): boolean {
  const siblings = items.filter((one) => one.card === item.card);
  return item.card.card !== 'roast' && siblings.at(-1) === item && item.step.skippable !== true;
}

function draftWindow(draft: Draft, day: Day, item: Item, turn: PrepTurn | undefined): void {
  const end = point(item.id, draft.minutesOf(item.id));
  const ends = item.step.ends;
  if (!ends) {
    if (!turn) return;
    draft.within(point(origin), point(item.id), turn.minute, 'wish', 1);
    draft.after(point(origin), point(item.id), turn.minute, 'wish', 1);
    return;
  }
  const moment = point(momentOf(day, ends.anchor));
  const { earliestMinutes, likelyMinutes, latestMinutes } = ends;
  // A wide window means that minutes matter little, a narrow one that the dish spoils by them.
  const near = clamp(Math.round(160 / Math.max(1, latestMinutes - earliestMinutes)), 2, 8);
  const waited = isLast(item, day.items) && !day.dinner.steps.get('rest')?.skipped;
  const late = waited ? weights.missing : weights.window;
  draft.within(moment, end, latestMinutes, 'window', late);
  draft.after(moment, end, earliestMinutes, 'window', weights.window);
  draft.within(moment, end, likelyMinutes, 'wish', near);
  draft.after(moment, end, likelyMinutes, 'wish', near);
}

function draftStay(draft: Draft, day: Day, item: Item): void {
  const range = item.step.oven;
  if (!range) return;
  draft.stays.push({
    task: item.id,
    from: point(item.id),
    to: point(item.id, draft.minutesOf(item.id)),
    lowCelsius: celsiusOfFahrenheit(range.lowFahrenheit) - toleranceKelvin,
    highCelsius: celsiusOfFahrenheit(range.highFahrenheit) + toleranceKelvin,
    likelyCelsius: celsiusOfFahrenheit(range.likelyFahrenheit),
    shelves: 1,
    doorShutMinutes: 0,
    oven: day.dinner.steps.get(item.id)?.oven,
  });
}

const toldStart = (dinner: Dinner, id: string): Instant | undefined =>
  dinner.told?.starts.find((one) => one.step === id)?.at;

/** What the cook was told holds, unless something that matters speaks against it. */
function draftPromise(draft: Draft, day: Day, item: Item): void {
  const at = toldStart(day.dinner, item.id);
  if (at === undefined || at < day.now) return;
  const weight = item.step.ends ? 1 : weights.promise;
  draft.after(point(origin), point(item.id), minuteIn(day, at), 'promise', weight);
  draft.within(point(origin), point(item.id), minuteIn(day, at), 'promise', weight);
}

/** What the cards say the roast's own moments wait for. */
function draftRoastOrder(draft: Draft, day: Day): void {
  for (const item of day.items) {
    if (item.id !== 'roast-in' && item.id !== 'carve') continue;
    const open =
      item.id === 'roast-in' ? day.wentInAt === undefined : day.carveBegunAt === undefined;
    if (!open) continue;
    for (const { step, minMinutes } of item.after) {
      const before = day.items.find((one) => one.id === step);
      if (!before || isRoastMoment(step) || before.skipped) continue;
      // The table does not wait for what may be left out.
      const weight = before.step.skippable || item.id === 'carve' ? weights.window : weights.hard;
      if (draft.has(step))
        draft.after(
          point(step, draft.minutesOf(step)),
          point(item.id),
          minMinutes,
          'order',
          weight,
        );
    }
  }
}
