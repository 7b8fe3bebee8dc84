/**
 * Three clocks, hands that come and go, a cook's own pace, and what stands in a second oven, each alone at its
 * edges. That a first course takes 25 minutes: common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { addMinutes, minutesBetween } from '../../src/base/time.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import type { Plan, PlannedStep } from '../../src/kitchen/plan.ts';
import { at, cards, factsOf, lookAt, stepOf, withMore } from '../harness/day.ts';

type Told = NewFact & { at: number };

const planned = async (told: readonly Told[] = [], now = at('12:00')): Promise<Plan> => {
  const { plan } = await lookAt(withMore(factsOf(), told), now);
  if (!plan) throw new Error('no plan');
  return plan;
};

const noon = at('12:00');
const first = (time: string): Told => ({
  type: 'clock-set',
  clock: 'first-course',
  clockAt: at(time),
  at: noon,
});

describe('a first course', () => {
  it('has its own time, and the roast follows when it has been eaten', async () => {
    const plan = await planned([first('18:30')]);
    expect(plan.firstCourseAt).toBe(at('18:30'));
    expect(stepOf(plan, 'first-course').startAt).toBe(at('18:30'));
    expect(plan.serving.likelyAt).toBe(at('19:00'));
  });

  it('is waited for, at the edge of the minute', async () => {
    expect((await planned([first('18:35')])).serving.likelyAt).toBe(at('19:00'));
    expect((await planned([first('18:36')])).serving.likelyAt).toBe(at('19:01'));
  });

  it('takes hands, so no other step of the same hands is begun in it', async () => {
    const plan = await planned([first('18:30')]);
    const plated = { from: at('18:25'), to: at('18:35') };
    const within = plan.steps.filter(
      (step) =>
        step.handsOn === 'throughout' &&
        step.startAt < plated.to &&
        step.endAt > plated.from &&
        step.id !== 'first-course',
    );
    expect(within.map((step) => step.id)).toEqual([]);
  });

  it('begun late, keeps the roast back by as much; cleared, no more', async () => {
    const begun: Told = {
      type: 'step-started',
      step: 'first-course',
      happenedAt: at('18:45'),
      at: at('18:45'),
    };
    const roast: Told[] = [
      { type: 'step-done', step: 'roast-in', happenedAt: at('16:40'), at: at('16:40') },
      { type: 'step-done', step: 'pull', happenedAt: at('18:25'), at: at('18:25') },
    ];
    const bare = cards.filter((card) => card.card !== 'roast');
    const dropped = bare.map((card): Told => ({ type: 'dish-dropped', dish: card.id, at: noon }));
    const late = await planned([first('18:30'), ...dropped, ...roast, begun], at('18:46'));
    expect(late.serving.likelyAt).toBe(at('19:10'));
    const cleared: Told = {
      type: 'step-done',
      step: 'first-course',
      happenedAt: at('18:58'),
      at: at('18:58'),
    };
    const now = await planned([first('18:30'), ...dropped, ...roast, begun, cleared], at('18:58'));
    expect(now.serving.likelyAt).toBeLessThan(at('19:10'));
  });

  it('left out, is waited for by nobody', async () => {
    const skipped: Told = { type: 'step-skipped', step: 'first-course', at: noon };
    const plan = await planned([first('18:50'), skipped]);
    expect(plan.firstCourseAt).toBeUndefined();
    expect(plan.serving.likelyAt).toBe(at('19:00'));
  });
});

describe('hands that come and go', () => {
  const helper = (more: Partial<Extract<NewFact, { type: 'hands-added' }>>): Told => ({
    type: 'hands-added',
    who: 'Robin',
    at: noon,
    ...more,
  });
  const robins = (plan: Plan): PlannedStep[] =>
    plan.steps.filter((step) => step.hands.includes('Robin'));

  it('do nothing after they have left', async () => {
    const plan = await planned([helper({ leavesAt: at('15:00') })]);
    expect(robins(plan).length).toBeGreaterThan(0);
    for (const step of robins(plan)) expect(step.endAt).toBeLessThanOrEqual(at('15:00'));
  });

  it('do nothing before they have come', async () => {
    const plan = await planned([helper({ comesAt: at('17:00') })]);
    for (const step of robins(plan)) expect(step.startAt).toBeGreaterThanOrEqual(at('17:00'));
  });

  it('never work twice at once, whoever is there', async () => {
    const plan = await planned([helper({ comesAt: at('14:00'), leavesAt: at('18:00') })]);
    expect(plan.shortfalls.filter((one) => one.constraint === 'hands-once')).toEqual([]);
  });

  it('have what was given them', async () => {
    const plan = await planned([helper({ does: 'carve' }), helper({ does: 'roast-potatoes' })]);
    expect(stepOf(plan, 'carve').hands).toEqual(['Robin']);
    expect(stepOf(plan, 'roast-potatoes.scrub').hands).toEqual(['Robin']);
    expect(stepOf(await planned([helper({})]), 'carve').hands).toEqual(['you']);
  });
});

describe('a pace of the cook’s own', () => {
  const pace = (factor: number, step?: string): Told => ({
    type: 'pace-told',
    factor,
    step,
    at: noon,
  });

  it('stretches what takes hands, and no oven', async () => {
    const usual = await planned();
    const slow = await planned([pace(2)]);
    const scrub = 'roast-potatoes.scrub';
    expect(stepOf(slow, scrub).minutes.p50).toBe(2 * stepOf(usual, scrub).minutes.p50);
    expect(Math.abs(slow.carveMinutes - 2 * usual.carveMinutes)).toBeLessThanOrEqual(1);
    const inOven = 'roast-potatoes.in';
    expect(stepOf(slow, inOven).minutes).toEqual(stepOf(usual, inOven).minutes);
    expect(slow.serving.likelyAt).toBe(at('19:00'));
  });

  it('is told of one step alone, and told anew it replaces what was told', async () => {
    const usual = await planned();
    const one = await planned([pace(3, 'roast-potatoes.scrub')]);
    expect(stepOf(one, 'roast-potatoes.scrub').minutes.p50).toBe(
      3 * stepOf(usual, 'roast-potatoes.scrub').minutes.p50,
    );
    expect(stepOf(one, 'season').minutes).toEqual(stepOf(usual, 'season').minutes);
    expect((await planned([pace(2), pace(1)])).carveMinutes).toBe(usual.carveMinutes);
  });
});

describe('what stands in a second oven', () => {
  it('leaves the first to the roast, and breaks no rule there', async () => {
    const told: Told[] = [
      { type: 'dish-added', dish: 'potato-gratin', at: noon },
      { type: 'step-done', step: 'roast-in', happenedAt: at('16:00'), at: at('16:00') },
      { type: 'setup-reported', ovens: 2, at: at('17:30') },
      {
        type: 'step-started',
        step: 'roast-potatoes.in',
        happenedAt: at('17:30'),
        oven: 1,
        at: at('17:30'),
      },
    ];
    const plan = await planned(told, addMinutes(at('17:30'), 1));
    expect(stepOf(plan, 'roast-potatoes.in').oven?.index).toBe(1);
    expect(plan.shortfalls.filter((one) => one.constraint === 'shared')).toEqual([]);
    expect(minutesBetween(at('17:30'), stepOf(plan, 'roast-potatoes.in').startAt)).toBe(0);
  });
});
