/** A rule that cannot be broken finds nothing: each is broken here by hand. */
import { expect, it } from 'vitest';
import type { Plan } from '../../src/kitchen/plan.ts';
import type { View } from '../../src/kitchen/view.ts';
import { viewOf } from '../../src/session/view.ts';
import { at, factsOf, lookAt } from '../harness/day.ts';
import {
  adviceIsSafe,
  doneStays,
  nothingIsPast,
  planIsFeasible,
  Violation,
  viewIsAsDescribed,
  wordsAreFit,
} from './rules.ts';

const facts = factsOf();
const outlook = await lookAt(facts, at('15:00'));
const view = viewOf(outlook, facts);
const plan = outlook.plan as Plan;
const cautioned = { text: 'pink', source: 'somebody' };
const sound: View = { ...view, cautions: [cautioned] };

const stepOf = (change: Partial<View['steps'][number]>): View => ({
  ...view,
  steps: view.steps.map((step, row) => (row === 0 ? { ...step, ...change } : step)),
});
const before: View = stepOf({ state: 'done', end: '2026-12-19T12:30:00-06:00' });

const broken: Record<string, () => void> = {
  'words are whole': () => wordsAreFit({ text: 'Out at undefined.', speech: '' }),
  'speech is words': () => wordsAreFit({ text: 'At 4.', speech: 'at 4' }),
  'no unsafe advice: nothing is called safe': () =>
    wordsAreFit({ text: 'Yes, it is safe.', speech: 'Yes, it is safe.' }),
  'the view is what it is said to be': () =>
    viewIsAsDescribed({ ...view, guests: 'six' as unknown as number }),
  'the table is not in the past': () =>
    nothingIsPast({ ...view, serving: { ...view.serving, likely: '2026-12-19T10:00:00-06:00' } }),
  'nothing is planned for the past': () =>
    nothingIsPast(
      stepOf({
        state: 'planned',
        start: '2026-12-19T10:00:00-06:00',
        end: '2026-12-19T23:00:00-06:00',
      }),
    ),
  'a step ends after it starts': () =>
    nothingIsPast(stepOf({ start: '2026-12-19T16:00:00-06:00', end: '2026-12-19T15:00:00-06:00' })),
  'no unsafe advice: a pink core is cautioned of': () => adviceIsSafe({ ...view, cautions: [] }),
  'no unsafe advice: the oven is no hotter than an oven gets': () =>
    adviceIsSafe(withMove({ fahrenheit: 600, why: 'roast' })),
  'no unsafe advice: meat is held hot': () =>
    adviceIsSafe(withMove({ fahrenheit: 120, why: 'hold' })),
  'no done step moves': () =>
    doneStays(before, stepOf({ state: 'done', end: '2026-12-19T12:40:00-06:00' }), []),
  'a plan is feasible or says what gives: hands': () =>
    planIsFeasible({
      ...plan,
      shortfalls: [],
      steps: plan.steps.map((step) => ({
        ...step,
        state: 'planned' as const,
        handsOn: 'throughout' as const,
        hands: ['you'],
        startAt: at('16:00'),
        endAt: at('16:10'),
      })),
    }),
  'a plan is feasible or says what gives: rest': () =>
    planIsFeasible({
      ...plan,
      shortfalls: [],
      steps: plan.steps.map((step) =>
        step.id === 'rest' ? { ...step, endAt: at('23:00') } : { ...step, hands: [] },
      ),
    }),
  'a plan is feasible or says what gives: table': () =>
    planIsFeasible({
      ...plan,
      shortfalls: [],
      serving: { ...plan.serving, likelyAt: plan.serving.wantedAt + 600_000 },
    }),
};

function withMove(move: { fahrenheit: number; why: string }): View {
  const program = [{ at: '2026-12-19T18:00:00-06:00', ...move }];
  return { ...sound, oven: { ...view.oven, program } };
}

it.each(Object.entries(broken))('%s', (rule, breakIt) => {
  let found: unknown;
  try {
    breakIt();
  } catch (error) {
    found = error;
  }
  expect(found).toBeInstanceOf(Violation);
  expect((found as Violation).rule).toBe(rule);
});

it('a sound dinner breaks none', () => {
  viewIsAsDescribed(sound);
  nothingIsPast(sound);
  adviceIsSafe(sound);
  doneStays(sound, sound, []);
  planIsFeasible(plan);
});
