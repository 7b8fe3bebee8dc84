/** The work of a dinner: every step of every card on the menu, as things to be placed in time. */
import { addMinutes, type Instant } from '../base/time.ts';
import {
  type Card,
  type CardStep,
  isRoastMoment,
  type RoastCard,
  stepApplies,
  stepIdOf,
} from '../kitchen/card.ts';
import { circumstancesOf } from '../kitchen/circumstances.ts';
import { type Dinner, menuOf, missingOf } from '../kitchen/dinner.ts';
import type { Method } from '../kitchen/facts.ts';
import type { Band } from '../kitchen/forecast.ts';

export interface Item {
  id: string;
  card: Card;
  step: CardStep;
  title: string;
  minutes: Band;
  handsOn: CardStep['hands'];
  after: readonly { step: string; minMinutes: number; maxMinutes?: number | undefined }[];
  needs: readonly string[];
  /** Set once it was begun, called, finished or skipped. */
  startedAt?: Instant | undefined;
  doneAt?: Instant | undefined;
  skipped: boolean;
  presumed: boolean;
}

/** Minutes of hands a step that only needs them at its start takes. */
export const startMinutes = 2;

function belongs(
  card: Card,
  step: CardStep,
  dinner: Dinner,
  method: Method,
  ids: Set<string>,
): boolean {
  if (!stepApplies(step, circumstancesOf(dinner, method))) return false;
  if (card.card !== 'roast') return true;
  // A step of the roast that waits for a dish nobody makes has nothing to work with.
  return (step.after ?? []).every(({ step: before }) => !before.includes('.') || ids.has(before));
}

/** Every step that belongs to this dinner, done ones included. */
export function itemsOf(dinner: Dinner, roast: RoastCard, method: Method): Item[] {
  const cards: Card[] = [roast, ...menuOf(dinner)];
  const ids = new Set(cards.flatMap((card) => card.steps.map((step) => stepIdOf(card, step))));
  return cards.flatMap((card) =>
    card.steps
      .filter((step) => belongs(card, step, dinner, method, ids))
      .map((step) => itemOf(dinner, card, step, ids)),
  );
}

function itemOf(dinner: Dinner, card: Card, step: CardStep, ids: ReadonlySet<string>): Item {
  const id = stepIdOf(card, step);
  const record = dinner.steps.get(id);
  const without = (step.without ?? []).find((one) => dinner.lacks.includes(one.tool));
  const extra = without?.extraMinutes ?? 0;
  const pace = paceOf(dinner, id, step);
  const [p10, p50, p90] = step.minutes.map((minutes) => (minutes + extra) * pace) as [
    number,
    number,
    number,
  ];
  const called = calledAt(dinner, id);
  // Taken out half done, it needs what is left of it.
  const left = record?.notBegunAt === undefined ? undefined : record.moreMinutes;
  const share = left === undefined ? 1 : left / p50;
  const startedAt = record?.startedAt ?? (record?.notDoneAt === undefined ? called : undefined);
  return {
    id,
    card,
    step,
    title: step.title,
    minutes: { p10: p10 * share, p50: p50 * share, p90: p90 * share },
    handsOn: step.hands,
    after: (step.after ?? [])
      .map((one) => ({
        step: one.step.includes('.') ? one.step : stepIdOf(card, { id: one.step }),
        minMinutes: one.minMinutes ?? 0,
        maxMinutes: one.maxMinutes,
      }))
      .filter((one) => ids.has(one.step)),
    needs: step.needs ?? [],
    startedAt: startedAt ?? (record?.notDoneAt === undefined ? undefined : called),
    doneAt: record?.doneAt,
    skipped: record?.skipped ?? false,
    presumed:
      record?.presumed ??
      (record?.startedAt === undefined && record?.doneAt === undefined && called !== undefined),
  };
}

/** How many times as long as its card says: hands have their pace, an oven its own unless it was told. */
const paceOf = (dinner: Dinner, id: string, step: CardStep): number =>
  dinner.paceOf.get(id) ??
  dinner.paceOf.get(id.split('.')[0] ?? id) ??
  (step.hands === 'throughout' ? dinner.pace : 1);

/** A step that was called and never begun is called again by another name. */
export const callNameOf = (dinner: Dinner, step: string): string =>
  dinner.steps.get(step)?.notBegunAt === undefined ? step : `${step}-again`;

/** When the step was first called out, by whatever kind of call. */
export function calledAt(dinner: Dinner, step: string): Instant | undefined {
  const id = callNameOf(dinner, step);
  for (const kind of ['step-due', 'side-in', 'oven-change', 'carve', 'serve', 'put-away']) {
    const call = dinner.calls.get(`${kind}:${id}`);
    if (call) return call.firstAt;
  }
  return undefined;
}

/**
 * When a step that was begun is taken to end: as told, or after its likely minutes; one that was
 * said not to be done yet takes what was told, or half as long again.
 */
export function endOf(item: Item, dinner: Dinner): Instant | undefined {
  if (item.doneAt !== undefined) return item.doneAt;
  if (item.startedAt === undefined) return undefined;
  const usual = addMinutes(item.startedAt, item.minutes.p50);
  const { notDoneAt, moreMinutes } = dinner.steps.get(item.id) ?? {};
  return notDoneAt === undefined
    ? usual
    : Math.max(usual, addMinutes(notDoneAt, moreMinutes ?? Math.max(5, item.minutes.p50 / 2)));
}

/** Minutes of hands a step takes. */
export const handsMinutesOf = (item: Item): number =>
  item.handsOn === 'throughout' ? item.minutes.p50 : item.handsOn === 'start' ? startMinutes : 0;

export interface Predecessor {
  step: string;
  minMinutes: number;
  maxMinutes?: number | undefined;
}

/**
 * A card's step waits for the step written before it unless it says what it waits for. What was left
 * out hands on what it waited for itself.
 */
export function predecessorsOf(item: Item, items: readonly Item[]): Predecessor[] {
  const direct = item.step.after ? [...item.after] : writtenBefore(item, items);
  return direct.flatMap((one) => {
    const before = items.find((other) => other.id === one.step);
    if (!before?.skipped || before.doneAt !== undefined) return [one];
    return predecessorsOf(before, items).map(({ step }) => ({ step, minMinutes: 0 }));
  });
}

function writtenBefore(item: Item, items: readonly Item[]): Predecessor[] {
  if (item.card.card === 'roast') return [];
  const siblings = items.filter((one) => one.card === item.card && !isRoastMoment(one.id));
  const before = siblings[siblings.indexOf(item) - 1];
  return before ? [{ step: before.id, minMinutes: 0 }] : [];
}

/** Whether enough is known to plan the whole day. */
export const isComplete = (dinner: Dinner): boolean => missingOf(dinner).length === 0;
