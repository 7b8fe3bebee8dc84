import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMinutes, minutesBetween } from '../../src/base/time.ts';
import { celsiusOfFahrenheit } from '../../src/base/units.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import type { Plan } from '../../src/kitchen/plan.ts';
import { ovenTolerance } from '../../src/planner/constraints/oven-tolerance.ts';
import { at, cards, factsOf, lookAt, withMore } from '../harness/day.ts';

type Told = NewFact & { at: number };

async function planned(
  dinner: Parameters<typeof factsOf>[0],
  more: readonly Told[] = [],
  now = at('12:00'),
): Promise<Plan> {
  const { plan } = await lookAt(withMore(factsOf(dinner), more), now);
  if (!plan) throw new Error('no plan');
  return plan;
}

const step = (plan: Plan, id: string) => {
  const found = plan.steps.find((one) => one.id === id);
  if (!found) throw new Error(`no step ${id}`);
  return found;
};

describe('a roast that was put back', () => {
  const wasOut: readonly Told[] = [
    { type: 'step-started', step: 'roast-in', happenedAt: at('16:00'), at: at('16:00') },
    { type: 'step-called', call: 'oven-change:oven-down', at: at('16:20') },
    {
      type: 'reading-taken',
      celsius: celsiusOfFahrenheit(108),
      happenedAt: at('17:28'),
      at: at('17:28'),
    },
    { type: 'step-done', step: 'pull', happenedAt: at('17:30'), at: at('17:30') },
    { type: 'step-called', call: 'oven-change:sides-218', at: at('17:32') },
  ];
  const ovenOf = async (more: readonly Told[]) =>
    (await lookAt(withMore(factsOf(), more), at('17:46'))).question?.oven;

  it('is forecast in the heat that the dishes were given meanwhile', async () => {
    const back: Told = { type: 'step-not-done', step: 'pull', at: at('17:45') };
    expect((await ovenOf([...wasOut, back]))?.at(-1)).toEqual({ minute: 92, celsius: 218 });
    // On its board that heat is the dishes' own.
    expect((await ovenOf(wasOut))?.at(-1)?.minute).toBe(20);
  });
});

describe('one oven and what it must be at when', () => {
  it('gives a sear at the end its own heat, after the dishes that cannot bear it', async () => {
    const plan = await planned({
      method: 'sear-last',
      dishes: ['roast-potatoes', 'green-beans', 'herb-butter'],
    });
    expect(ovenTolerance.check(plan)).toEqual([]);
    const up = step(plan, 'oven-up');
    expect(minutesBetween(step(plan, 'pull').startAt, up.startAt)).toBeGreaterThan(1);
    expect(minutesBetween(up.startAt, step(plan, 'sear').startAt)).toBeGreaterThan(0);
    // 250 degrees is no heat for potatoes, so they have the oven to themselves in the rest.
    const potatoes = step(plan, 'roast-potatoes.in');
    expect(potatoes.startAt).toBeGreaterThanOrEqual(step(plan, 'pull').startAt);
    expect(potatoes.endAt).toBeLessThanOrEqual(step(plan, 'sear').startAt);
    const heats = plan.oven.filter((move) => move.at >= plan.pullAt.p50);
    expect(new Set(heats.map((move) => move.at)).size).toBe(heats.length);
  });

  it('shares one heat among all that go in after the pull', async () => {
    const plan = await planned({
      dishes: ['roast-potatoes', 'batter-puddings', 'warm-rolls'],
      helpers: ['Robin'],
    });
    expect(ovenTolerance.check(plan)).toEqual([]);
    const after = plan.oven.filter((move) => move.at >= plan.pullAt.p50);
    expect(after).toHaveLength(1);
    // Fat for puddings 425 to 475, puddings 400 to 475, potatoes 400 to 500: the cards' own ranges.
    expect(after[0]?.celsius).toBeGreaterThanOrEqual(celsiusOfFahrenheit(422));
    expect(after[0]?.celsius).toBeLessThanOrEqual(celsiusOfFahrenheit(478));
  });

  it('ends a hold in the one oven before puddings bake in it', async () => {
    const now = at('18:30');
    const plan = await planned(
      { dishes: ['batter-puddings'], servingAt: at('20:00'), now: at('12:00') },
      [
        { type: 'step-done', step: 'roast-in', happenedAt: at('16:30'), at: at('16:30') },
        { type: 'step-done', step: 'oven-down', happenedAt: at('16:50'), at: at('16:50') },
        { type: 'step-done', step: 'pull', happenedAt: at('18:25'), at: at('18:25') },
        {
          type: 'course-set',
          course: { oven: [], rest: 'low-oven', servingAt: at('20:00') },
          at: at('18:30'),
        },
      ],
      now,
    );
    expect(ovenTolerance.check(plan)).toEqual([]);
    const hold = plan.oven.find((move) => move.why === 'hold');
    const sides = plan.oven.find((move) => move.why === 'sides');
    expect(hold && sides && hold.at < sides.at).toBe(true);
    expect(step(plan, 'batter-puddings.heat-fat').startAt).toBeGreaterThan(sides?.at ?? 0);
  });

  it('asks of no dish a heat it does not bear, whatever is on the menu', {
    timeout: 120_000,
  }, async () => {
    const dishes = cards.filter((card) => card.card !== 'roast').map((card) => card.id);
    await fc.assert(
      fc.asyncProperty(
        fc.record({
          kilograms: fc.integer({ min: 15, max: 70 }),
          servingMinutes: fc.integer({ min: 120, max: 600 }),
          method: fc.constantFrom('sear-first' as const, 'steady' as const, 'sear-last' as const),
          helpers: fc.constantFrom([], ['Robin']),
          menu: fc.subarray(dishes, { maxLength: 5 }),
        }),
        async ({ kilograms, servingMinutes, method, helpers, menu }) => {
          const plan = await planned({
            roast: { cut: 'rib-roast', kilograms: kilograms / 10, bones: 3 },
            servingAt: addMinutes(at('12:00'), servingMinutes),
            method,
            helpers,
            dishes: menu,
          });
          expect(ovenTolerance.check(plan)).toEqual([]);
        },
      ),
      { numRuns: 20, seed: 20261220 },
    );
  });
});
