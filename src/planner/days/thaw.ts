/**
 * Thawing in the fridge: a day for every four to five pounds (USDA FSIS, safe defrosting methods).
 * The plan counts on the slow rate; whether the heart is still frozen is judged by the quick one.
 */
import { addMinutes, type Instant } from '../../base/time.ts';
import { poundsOfKilograms } from '../../base/units.ts';
import { type Dinner, roastCardOf } from '../../kitchen/dinner.ts';
import { figureOf } from '../../kitchen/safety.ts';
import { calledAt } from '../items.ts';
import { kilogramsOf } from '../roast-day.ts';

const minutesFor = (kilograms: number, of: 'slowest' | 'quickest'): number =>
  poundsOfKilograms(kilograms) * figureOf('thaw-fridge', of).value * 60;

/** Minutes in the fridge until it is surely thawed. */
export const thawMinutes = (kilograms: number): number => minutesFor(kilograms, 'slowest');

/** Minutes in the fridge before which its heart is surely frozen. */
export const thawMinutesAtBest = (kilograms: number): number => minutesFor(kilograms, 'quickest');

/** Cold water, changed every half hour: half an hour a pound (USDA FSIS); cooked at once. */
export const waterThawMinutes = (kilograms: number): number =>
  poundsOfKilograms(kilograms) * figureOf('thaw-water', 'in all').value;

/** When it went into the fridge to thaw, as told, or as called. */
export function thawBeganAt(dinner: Dinner): Instant | undefined {
  const record = dinner.steps.get('thaw');
  return record?.startedAt ?? record?.doneAt ?? calledAt(dinner, 'thaw');
}

export interface Thaw {
  kilograms: number;
  /** When it is to go, or went, into the fridge. */
  startAt: Instant;
  /** When it is surely thawed. */
  readyAt: Instant;
  /** In time for the oven at the slow rate; only at the quick one; or not in the fridge. */
  fits: 'surely' | 'barely' | 'not';
}

/**
 * The thaw of a frozen roast that must be ready by `by`; undefined for one that is not frozen, or was
 * felt to be soft. It begins as late as the slow rate allows on the evening or morning before that,
 * never before `now`.
 */
export function thawOf(dinner: Dinner, now: Instant, by: Instant): Thaw | undefined {
  const card = roastCardOf(dinner);
  if (!card || dinner.roast.frozen !== true) return undefined;
  if (dinner.steps.get('thaw-check')?.doneAt !== undefined) return undefined;
  const kilograms = kilogramsOf(dinner, card);
  const minutes = thawMinutes(kilograms);
  const startAt = thawBeganAt(dinner) ?? Math.max(now, addMinutes(by, -minutes));
  const readyAt = addMinutes(startAt, minutes);
  const atBest = addMinutes(startAt, thawMinutesAtBest(kilograms));
  const fits = readyAt <= by ? 'surely' : atBest <= by ? 'barely' : 'not';
  return { kilograms, startAt, readyAt, fits };
}

/** From when on a hard heart is news: once it was felt when called to, or its quick thaw is over. */
const softFrom = (dinner: Dinner, thaw: Thaw): Instant =>
  Math.min(
    calledAt(dinner, 'thaw-check') ?? Number.POSITIVE_INFINITY,
    addMinutes(thaw.startAt, thawMinutesAtBest(thaw.kilograms)),
  );

/** The roast as it will be when it goes in: a thaw that fits leaves nothing frozen. */
export function asCooked(dinner: Dinner, now: Instant, roastInAt: Instant): Dinner {
  if (dinner.roast.frozen !== true) return dinner;
  const thaw = thawOf(dinner, now, roastInAt);
  const { frozenToldAt } = dinner.roast;
  // Said to be frozen when it should have been soft: the cook knows better.
  const hard =
    thaw !== undefined &&
    frozenToldAt !== undefined &&
    thawBeganAt(dinner) !== undefined &&
    frozenToldAt >= softFrom(dinner, thaw);
  const frozen = thaw !== undefined && (thaw.fits === 'not' || hard);
  return frozen ? dinner : { ...dinner, roast: { ...dinner.roast, frozen: false } };
}
