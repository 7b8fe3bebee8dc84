/** What is told of the days around the dinner: who comes, what is in the house, who is fed. */
import { hourMilliseconds } from '../base/time.ts';
import { stepIdOf } from '../kitchen/card.ts';
import { aheadDishesOf, choreOf, seasoningStep } from '../kitchen/chores.ts';
import type { NewFact } from '../kitchen/facts.ts';
import type { HeardOf } from '../kitchen/heard.ts';
import { type Context, type Decision, decided } from './context.ts';

export function noteGuest(heard: HeardOf<'note-guest'>): Decision {
  const { who, need, value } = heard;
  return decided([{ type: 'guest-noted', who, need, value }], {
    key: 'guest-noted',
    need,
    who,
    value,
  });
}

/** In the house: off the shopping list, and lacking no more. */
export const have = ({ thing }: HeardOf<'have'>): Decision =>
  decided([{ type: 'thing-had', thing }], { key: 'thing-had', thing });

export const feedPublic = (): Decision =>
  decided([{ type: 'public-fed' }], { key: 'public-noted' });

const overnightMilliseconds = 8 * hourMilliseconds;

/**
 * The chore that a step names: its id, the first open one of a numbered kind, or salting the evening
 * before, which is said in the words of the seasoning.
 */
export function choreMeant(step: string, context: Context): string | undefined {
  const { dinner, expected, now } = context;
  const open = (id: string): boolean => {
    const record = dinner.steps.get(id);
    return expected.starts.has(id) && record?.doneAt === undefined && record?.skipped !== true;
  };
  if (step === seasoningStep) {
    const roastInAt = expected.starts.get('roast-in') ?? now;
    return open('salt-ahead') && roastInAt - now >= overnightMilliseconds
      ? 'salt-ahead'
      : undefined;
  }
  const kind = choreOf(step);
  if (!kind) return undefined;
  if (step !== kind) return step;
  const numbered = [...expected.starts.keys()].filter((id) => choreOf(id) === kind);
  return numbered.find(open) ?? numbered[0] ?? kind;
}

/** What was made ahead is made: every step of every dish that keeps overnight. */
export function madeAhead(at: number, context: Context): Decision {
  const steps = aheadDishesOf(context.dinner).flatMap((card) =>
    card.steps.map((step) => stepIdOf(card, step)),
  );
  const facts = [...steps, 'make-ahead'].map(
    (step): NewFact => ({ type: 'step-done', step, happenedAt: at }),
  );
  return decided(facts, { key: 'step-done', step: 'make-ahead', presumed: [], again: false });
}
