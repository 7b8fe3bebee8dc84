import { describe, expect, it } from 'vitest';
import { minutesBetween } from '../../src/base/time.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import type { Outlook } from '../../src/session/outlook.ts';
import { at, factsOf, lookAt, withMore } from '../harness/day.ts';

const saturday = '2026-12-19';
const wednesday = at('17:30', '2026-12-16');
const told = (more: Partial<Parameters<typeof factsOf>[0]> = {}, now = wednesday) =>
  factsOf({ now, ...more });
const look = (
  facts: ReturnType<typeof factsOf>,
  more: readonly (NewFact & { at: number })[] = [],
  now = wednesday,
): Promise<Outlook> => lookAt(withMore(facts, more), now);
const step = (outlook: Outlook, id: string) => outlook.plan?.steps.find((one) => one.id === id);
const frozen = (kilograms: number) => ({
  roast: { cut: 'rib-roast', kilograms, bones: 3, frozen: true },
});

describe('a dinner told three days ahead', () => {
  it('tests the thermometer, makes ahead, cuts and salts on the evening before', async () => {
    const outlook = await look(told());
    const friday = (time: string): number => at(time, '2026-12-18');
    for (const id of ['make-ahead', 'check-thermometer', 'french', 'trim', 'truss', 'salt-ahead']) {
      const found = step(outlook, id);
      expect(found?.startAt, id).toBeGreaterThanOrEqual(friday('18:00'));
      expect(found?.startAt, id).toBeLessThanOrEqual(friday('20:00'));
    }
    // A salted roast is not trimmed: the knife comes first.
    expect(step(outlook, 'truss')?.endAt).toBeLessThanOrEqual(
      step(outlook, 'salt-ahead')?.startAt ?? 0,
    );
    expect(step(outlook, 'shop')?.startAt).toBe(at('10:00', '2026-12-17'));
    expect(outlook.calls[0]?.step).toBe('shop');
  });

  it('salts no sooner than overnight and never twice', async () => {
    const facts = told();
    const salted = await look(
      facts,
      [
        {
          type: 'step-done',
          step: 'salt-ahead',
          happenedAt: at('20:10', '2026-12-18'),
          at: at('20:10', '2026-12-18'),
        },
      ],
      at('09:00', saturday),
    );
    expect(step(salted, 'salt-ahead')?.state).toBe('done');
    expect(step(salted, 'season')?.state).toBe('planned');
  });

  it('leaves out what would have been due before it was told', async () => {
    const outlook = await look(told({}, at('12:00')), [], at('12:00'));
    for (const id of ['shop', 'make-ahead', 'salt-ahead', 'thaw'])
      expect(step(outlook, id)).toBeUndefined();
    expect(step(outlook, 'check-thermometer')?.startAt).toBeGreaterThan(at('12:00'));
  });

  it('makes the sauces on the day after all when nobody made them ahead', async () => {
    const outlook = await look(told(), [], at('08:00', saturday));
    expect(step(outlook, 'horseradish-cream.mix')?.startAt).toBeGreaterThan(at('08:00', saturday));
  });
});

describe('a frozen roast', () => {
  // USDA FSIS: a day in the fridge for every four to five pounds.
  it.each([
    [3.2, 42],
    [4.1, 54],
    [5.4, 71],
  ])(
    'of %d kg goes into the fridge at least %d hours before its oven',
    async (kilograms, hours) => {
      const outlook = await look(told(frozen(kilograms)));
      const thaw = step(outlook, 'thaw');
      expect(thaw?.startAt).toBeGreaterThanOrEqual(wednesday);
      expect(
        minutesBetween(thaw?.startAt ?? 0, outlook.plan?.roastInAt ?? 0) / 60,
      ).toBeGreaterThanOrEqual(Math.min(hours, 70));
      expect(outlook.question?.roast.frozen).toBe(false);
    },
  );

  it('that thaws in time is forecast as one that never was frozen', async () => {
    const plain = await look(told());
    const thawed = await look(told(frozen(3.2)));
    expect(thawed.plan?.roastInAt).toBe(plain.plan?.roastInAt);
  });

  it('told on the day itself cannot thaw in the fridge, and the forecast says so', async () => {
    const noon = at('11:00');
    const outlook = await look(told(frozen(3.2), noon), [], noon);
    expect(step(outlook, 'thaw')).toBeUndefined();
    expect(outlook.question?.roast.frozen).toBe(true);
    const plain = await look(told({}, noon), [], noon);
    expect(outlook.forecast?.pullMinute.p50).toBeGreaterThan(
      plain.forecast?.pullMinute.p50 ?? Number.POSITIVE_INFINITY,
    );
  });

  it('felt soft is thawed, and told to be hard when it should be soft is not', async () => {
    const facts = told(frozen(3.2));
    const begun: NewFact & { at: number } = {
      type: 'step-started',
      step: 'thaw',
      happenedAt: wednesday,
      at: wednesday,
    };
    const morning = at('08:00', saturday);
    const soft = await look(
      facts,
      [begun, { type: 'step-done', step: 'thaw-check', happenedAt: morning, at: morning }],
      morning,
    );
    expect(soft.question?.roast.frozen).toBe(false);
    expect(step(soft, 'thaw-check')?.state).toBe('done');
    const hard = await look(
      facts,
      [begun, { type: 'roast-described', frozen: true, at: morning }],
      morning,
    );
    expect(hard.question?.roast.frozen).toBe(true);
  });
});

describe('guests who keep other hours', () => {
  const note = (fact: Omit<Extract<NewFact, { type: 'guest-noted' }>, 'type'>) => ({
    type: 'guest-noted' as const,
    ...fact,
    at: wednesday,
  });

  it('have their supper called before they eat, and their piece carved when they come', async () => {
    const outlook = await look(told(), [
      note({ who: 'kids', need: 'eats-at', value: '17:30' }),
      note({ who: 'half the guests', need: 'comes-later', value: '60' }),
      note({ who: 'ola', need: 'comes-later', value: '19:45' }),
    ]);
    const supper = step(outlook, 'feed-early-1');
    expect(supper?.endAt).toBe(at('17:30'));
    expect(step(outlook, 'carve-later-1')?.startAt).toBe(
      (outlook.plan?.serving.likelyAt ?? 0) + 3_600_000,
    );
    expect(step(outlook, 'carve-later-2')?.startAt).toBe(at('19:45'));
    expect(outlook.plan?.serving.wantedAt).toBe(at('19:00'));
  });

  it('put the putting away off, within the two hours of the consumer rule (USDA FSIS)', async () => {
    const outlook = await look(told(), [
      note({ who: 'half the guests', need: 'comes-later', value: '100' }),
    ]);
    const after = minutesBetween(
      outlook.plan?.serving.likelyAt ?? 0,
      step(outlook, 'put-away')?.startAt ?? 0,
    );
    expect(after).toBeGreaterThan(60);
    expect(after).toBeLessThanOrEqual(120);
  });
});

describe('a dinner told late on the evening before', () => {
  it('begins the cuts at once and salts after them, each at its own minute', async () => {
    const late = at('21:30', '2026-12-18');
    const outlook = await look(told({}, late), [], late);
    const times = ['trim', 'french', 'truss', 'salt-ahead'].map(
      (id) => step(outlook, id)?.startAt ?? 0,
    );
    expect(times[0]).toBe(late);
    expect([...times].sort((a, b) => a - b)).toEqual(times);
    expect(new Set(times).size).toBe(times.length);
  });

  it('leaves salting to the oven door when the night is too short', async () => {
    const night = at('03:00');
    const outlook = await look(told({ servingAt: at('12:00') }, night), [], night);
    expect(step(outlook, 'salt-ahead')).toBeUndefined();
    expect(step(outlook, 'season')?.state).not.toBe('skipped');
  });
});
