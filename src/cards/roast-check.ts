/** What a roast's card must have beyond the schema: the moments that the dinner's chart knows. */
import type { RoastCard } from '../kitchen/card.ts';
import { type Fault, guess } from './sentences.ts';

/** Moments of every roast's day, by step id; the dinner's chart knows these and no others. */
export const reservedSteps = [
  'oven-on',
  'roast-in',
  'check',
  'pull',
  'rest',
  'carve',
  'serve',
  'put-away',
] as const;

/** Moments that only one way of cooking has. */
export const methodSteps = {
  'sear-first': ['oven-down'],
  'sear-last': ['oven-up', 'sear'],
} as const;

/** Faults of a roast's card that no other kind of card can have. */
export function roastFaults(card: RoastCard): Fault[] {
  const ids = card.steps.map((step) => step.id);
  const methods = Object.keys(card.methods) as (keyof RoastCard['methods'])[];
  const wanted: { step: string; why: string }[] = reservedSteps.map((step) => ({
    step,
    why: 'every roast',
  }));
  for (const method of methods)
    if (method !== 'steady')
      for (const step of methodSteps[method])
        wanted.push({ step, why: `a roast cooked ${method}` });
  const missing = wanted
    .filter(({ step }) => !ids.includes(step))
    .map(({ step, why }) => ({
      path: ['steps'],
      sentence: `${why} needs a step "${step}"${guess(step, ids)}`,
    }));
  const unbound = card.steps.flatMap((step, index): Fault[] => {
    const method = (['sear-first', 'sear-last'] as const).find((one) =>
      (methodSteps[one] as readonly string[]).includes(step.id),
    );
    if (method === undefined || step.only?.includes(method)) return [];
    const sentence = `"${step.id}" belongs to one way of cooking; write only: [${method}]`;
    return [{ path: ['steps', index, 'id'], sentence }];
  });
  const { water, protein, fat } = card.shape.composition;
  const sum = water + protein + fat;
  return [
    ...missing,
    ...unbound,
    ...(methods.length === 0
      ? [{ path: ['methods'], sentence: 'name at least one: sear-first, sear-last or steady' }]
      : []),
    ...(sum > 1.02 || sum < 0.85
      ? [
          {
            path: ['shape', 'composition'],
            sentence: 'water, protein and fat are fractions of one and make up nearly all of it',
          },
        ]
      : []),
    ...card.restMinutes.flatMap((row, at): Fault[] => {
      const before = card.restMinutes[at - 1];
      return before && before.toKilograms >= row.toKilograms
        ? [{ path: ['restMinutes', at], sentence: 'the rows must go from light to heavy' }]
        : [];
    }),
  ];
}
