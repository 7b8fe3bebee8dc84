/**
 * Chores: what is done in the days before the dinner, for guests who keep other hours, and by the dinner's
 * other clocks. They are no card's steps, since every roast has them; they stand in the plan beside the cards' steps.
 */
import type { Card, DishCard } from './card.ts';
import { type Dinner, menuOf } from './dinner.ts';

export const choreIds = [
  'shop',
  'thaw',
  'thaw-check',
  'make-ahead',
  'salt-ahead',
  'feed-early',
  'carve-later',
  'guests-arrive',
  'first-course',
] as const;
export type ChoreId = (typeof choreIds)[number];

/** "feed-early-2" is the second early supper. */
export const choreOf = (step: string): ChoreId | undefined =>
  choreIds.find((id) => step === id || (step.startsWith(`${id}-`) && /-\d+$/.test(step)));

/** Which of the guests' notes a numbered chore is for, from 1. */
export const numberOf = (step: string): number => Number(/-(\d+)$/.exec(step)?.[1] ?? 1);

/** The step of a roast's card that salts it, and the one that tests the thermometer. */
export const seasoningStep = 'season';
export const thermometerStep = 'check-thermometer';

/** A first course, from its being carried in until its plates are cleared. Common practice, no source. */
export const firstCourseMinutes = 25;

/** A dish that keeps this long may be made the day before. */
const keepsOvernightMinutes = 12 * 60;

export const isMadeAhead = (card: Card): card is DishCard =>
  card.card !== 'roast' && card.hold.minutes >= keepsOvernightMinutes;

/** Dishes of this dinner that keep overnight and are not made yet. */
export const aheadDishesOf = (dinner: Dinner): DishCard[] =>
  menuOf(dinner)
    .filter(isMadeAhead)
    .filter((card) => {
      const last = card.steps.at(-1);
      const record = last && dinner.steps.get(`${card.id}.${last.id}`);
      return record?.doneAt === undefined && record?.skipped !== true;
    });

/** Nobody asked of this table eats meat. */
export const isMeatless = (diet: string | undefined): boolean =>
  /^(vegetarian|vegan|veggie|pesc[ae]tarian)s?$/.test(diet ?? '');
