/** How long the low oven is left to a held roast: the dial's turns of its plan decide it. */
import { describe, expect, it } from 'vitest';
import { minutesBetween } from '../../src/base/time.ts';
import { celsiusOfFahrenheit } from '../../src/base/units.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import { holdSpanOf } from '../../src/planner/hold-span.ts';
import { at, factsOf, lookAt, withMore } from '../harness/day.ts';

type Told = NewFact & { at: number };

const heldFrom = async (dishes: string[], more: readonly Told[] = []) => {
  const facts = withMore(factsOf({ dishes, servingAt: at('20:00'), now: at('12:00') }), [
    { type: 'step-done', step: 'roast-in', happenedAt: at('16:00'), at: at('16:00') },
    { type: 'step-done', step: 'oven-down', happenedAt: at('16:20'), at: at('16:20') },
    { type: 'step-done', step: 'pull', happenedAt: at('17:40'), at: at('17:40') },
    {
      type: 'course-set',
      course: { oven: [], rest: 'low-oven', servingAt: at('20:00') },
      at: at('17:41'),
    },
    ...more,
  ]);
  const outlook = await lookAt(facts, more.at(-1)?.at ?? at('17:41'));
  const { plan } = outlook;
  if (!plan) throw new Error('no plan');
  return { outlook, plan, hold: holdSpanOf(plan, dinnerOf('a dinner', facts)) };
};

describe('the hold of a plan', () => {
  it('begins once the oven has come down and ends when the dishes want it hot', async () => {
    const { plan, hold, outlook } = await heldFrom(['batter-puddings']);
    const sides = plan.oven.find((move) => move.why === 'sides');
    const turned = plan.oven.find((move) => move.why === 'hold');
    if (!sides || !turned || !hold) throw new Error('no hold');
    expect(hold.toMinutes).toBe(minutesBetween(at('17:40'), sides.at));
    // From 325 to 175 °F at eight degrees a minute, the household oven's own pace (common practice, no source).
    expect(hold.fromMinutes - minutesBetween(at('17:40'), turned.at)).toBeCloseTo(150 / 8, -0.5);
    // What is forecast is what is planned.
    expect(Math.abs((outlook.question?.hold?.toMinutes ?? 0) - hold.toMinutes)).toBeLessThan(2);
  });

  it('lasts to the knife where no dish wants the oven', async () => {
    const { plan, hold } = await heldFrom(['green-beans']);
    const knifeAt = plan.steps.find((step) => step.id === 'carve')?.startAt ?? 0;
    expect(hold?.toMinutes).toBe(Math.round(minutesBetween(at('17:40'), knifeAt)));
  });

  it('was one too where only the end of it was told', async () => {
    const { hold } = await heldFrom(
      ['batter-puddings'],
      [
        { type: 'step-called', call: 'oven-change:hold-77', at: at('17:42') },
        {
          type: 'oven-stood',
          celsius: celsiusOfFahrenheit(450),
          happenedAt: at('18:50'),
          at: at('18:50'),
        },
      ],
    );
    expect(hold?.toMinutes).toBe(70);
    expect(hold?.fromMinutes).toBeGreaterThan(15);
    expect(hold?.fromMinutes).toBeLessThan(25);
  });

  it('is none where the oven was turned up again at once, and none is asked for without such a course', async () => {
    const { hold, plan } = await heldFrom(
      ['roast-potatoes'],
      [
        {
          type: 'oven-stood',
          celsius: celsiusOfFahrenheit(450),
          happenedAt: at('17:43'),
          at: at('17:43'),
        },
      ],
    );
    expect(hold && hold.toMinutes - hold.fromMinutes).toBe(0);
    expect(holdSpanOf(plan, dinnerOf('a dinner', factsOf()))).toBeUndefined();
  });
});
