/**
 * What a kitchen has only so much of, and what is not in it yet, each alone at its edge. That a hob has four
 * rings and that fat is tipped from a pan two minutes after the roast is out: common practice, no source.
 */
import { describe, expect, it } from 'vitest';
import { minutesBetween } from '../../src/base/time.ts';
import type { Plan } from '../../src/kitchen/plan.ts';
import { at, cards, factsOf, lookAt, stepOf } from '../harness/day.ts';

type Dinner = Parameters<typeof factsOf>[0];

const planned = async (dinner: Dinner): Promise<Plan> => {
  const { plan } = await lookAt(factsOf(dinner), at('12:00'));
  if (!plan) throw new Error('no plan');
  return plan;
};

const onTheHob = new Set(
  cards.flatMap((card) =>
    card.steps.filter((step) => step.hob).map((step) => `${card.id}.${step.id}`),
  ),
);

/** The most pots that stand on the hob at once. */
const mostRings = (plan: Plan): number => {
  const pots = plan.steps.filter((step) => onTheHob.has(step.id));
  return Math.max(
    ...pots.map(
      ({ startAt }) => pots.filter((pot) => pot.startAt <= startAt && startAt < pot.endAt).length,
    ),
  );
};

const potsAllOver = {
  dishes: ['green-beans', 'broccoli', 'peas', 'glazed-carrots', 'mashed-potatoes', 'pan-gravy'],
  helpers: ['Robin'],
};

describe('the rings of the hob', () => {
  it('are used no more than there are', async () => {
    expect(mostRings(await planned({ ...potsAllOver, rings: 2 }))).toBe(2);
    expect(mostRings(await planned(potsAllOver))).toBeLessThanOrEqual(4);
  });

  it('are used more where there are more', async () => {
    expect(mostRings(await planned(potsAllOver))).toBeGreaterThan(2);
  });
});

describe('the drippings of the pan', () => {
  it('are taken once the roast is out, by one dish at a time', async () => {
    const plan = await planned({ dishes: ['pan-gravy', 'batter-puddings'] });
    const gravy = stepOf(plan, 'pan-gravy.pour-off');
    const puddings = stepOf(plan, 'batter-puddings.heat-fat');
    for (const step of [gravy, puddings])
      expect(minutesBetween(plan.pullAt.p50, step.startAt)).toBeGreaterThanOrEqual(1.5);
    expect(gravy.endAt <= puddings.startAt || puddings.endAt <= gravy.startAt).toBe(true);
  });
});

describe('carving', () => {
  const carving = async (guests: number, carvers?: number): Promise<number> =>
    (await planned({ guests, carvers, dishes: [] })).carveMinutes;

  it('takes each carver their own minutes, and so much for each guest of theirs', async () => {
    const rib = cards.find((card) => card.card === 'roast' && card.id === 'rib-roast');
    if (rib?.card !== 'roast') throw new Error('no card of a rib roast');
    const minutes = (each: number): number =>
      Math.round(rib.carve.fixedMinutes + each * rib.carve.minutesPerGuest);
    expect(await carving(9)).toBe(minutes(9));
    expect(await carving(9, 2)).toBe(minutes(5));
    expect(await carving(9, 3)).toBe(minutes(3));
    expect(minutes(3)).toBeLessThan(minutes(9));
  });
});

describe('what is not in the house yet', () => {
  it('holds up what is made of it, and nothing else', async () => {
    const beans = { dishes: ['green-beans'] };
    const usual = stepOf(await planned(beans), 'green-beans.trim');
    const comesAt = at('18:10');
    expect(usual.startAt).toBeLessThan(comesAt);
    const plan = await planned({ ...beans, comes: [{ thing: 'green-beans', comesAt }] });
    const wait = minutesBetween(comesAt, stepOf(plan, 'green-beans.trim').startAt);
    expect(wait).toBeGreaterThanOrEqual(0);
    // The hands have the roast to see to.
    expect(wait).toBeLessThanOrEqual(10);
    expect(plan.serving.likelyAt).toBe(at('19:00'));
  });

  it('holds up the step that it is for, and the roast behind it', async () => {
    const comesAt = at('16:00');
    const plan = await planned({
      dishes: ['mashed-potatoes'],
      comes: [
        { thing: 'truss', comesAt },
        { thing: 'ricer', comesAt: at('18:30') },
      ],
    });
    expect(stepOf(plan, 'truss').startAt).toBeGreaterThanOrEqual(comesAt);
    expect(plan.roastInAt).toBeGreaterThanOrEqual(stepOf(plan, 'truss').endAt);
    expect(stepOf(plan, 'mashed-potatoes.mash').startAt).toBeGreaterThanOrEqual(at('18:30'));
  });
});
