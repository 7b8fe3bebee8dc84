/**
 * What a number from the board does: the knife's minute, the look that is asked for, and a roast that goes back in. By
 * a forecast made by hand, so that each minute can be reckoned with a pencil, and by the real one where it is the day's.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addMinutes, minutesBetween } from '../../src/base/time.ts';
import { celsiusOfFahrenheit } from '../../src/base/units.ts';
import { type Dinner, dinnerOf } from '../../src/kitchen/dinner.ts';
import type { Fact, NewFact } from '../../src/kitchen/facts.ts';
import type { Forecast } from '../../src/kitchen/forecast.ts';
import type { Plan } from '../../src/kitchen/plan.ts';
import { isMendable } from '../../src/kitchen/short-core.ts';
import { knifeMove } from '../../src/planner/knife.ts';
import { ovenSettingsOf } from '../../src/planner/roast-day.ts';
import { at, factsOf, lookAt, withMore } from '../harness/day.ts';

const target = celsiusOfFahrenheit(130);
const outAt = at('18:10');
const knifeAt = at('18:50');
const sure = (value: number) => ({ p10: value, p50: value, p90: value });

/** A rest in which the core climbs straight and stands at `celsius` at the knife's minute. */
const climbing = (celsius: number, kelvinPerMinute: number): Forecast =>
  ({
    afterRest: Array.from({ length: 24 }, (_, row) => 5 * (row + 1)).map((minutes) => ({
      minutesAfterPull: minutes,
      celsius: sure(celsius + (minutes - 40) * kelvinPerMinute),
    })),
    peak: { celsius: sure(celsius), minutesAfterPull: sure(40) },
  }) as unknown as Forecast;

const planOf = (celsius: number, more: Partial<Plan> = {}): Plan =>
  ({
    method: 'sear-first',
    serveCelsius: target,
    coreAtServingCelsius: sure(celsius),
    steps: [{ id: 'carve', startAt: knifeAt }],
    serving: { wantedAt: at('19:00'), likelyAt: at('19:00') },
    ...more,
  }) as unknown as Plan;

const told = (fact: NewFact, time: string) => ({ ...fact, at: at(time) });
const wentIn = told({ type: 'step-done', step: 'roast-in', happenedAt: at('16:00') }, '16:00');
const cameOut = [
  told({ type: 'step-done', step: 'pull', happenedAt: outAt }, '18:10'),
  told({ type: 'step-started', step: 'rest', happenedAt: outAt }, '18:10'),
];
const read = (time: string, fahrenheit: number) =>
  told(
    { type: 'reading-taken', celsius: celsiusOfFahrenheit(fahrenheit), happenedAt: at(time) },
    time,
  );
const facts = (more: readonly (NewFact & { at: number })[]): Fact[] =>
  withMore(factsOf({ servingAt: at('19:00') }), [wentIn, ...more]);
const dinnerWith = (more: readonly (NewFact & { at: number })[]): Dinner =>
  dinnerOf('knife', facts(more));

describe('the minute of the knife', () => {
  const resting = dinnerWith(cameOut);
  const move = (celsius: number, kelvinPerMinute = 0.15, dinner = resting): number =>
    knifeMove({
      dinner,
      forecast: climbing(celsius, kelvinPerMinute),
      plan: planOf(celsius),
    });

  it('stands where the middle is as it was asked for at the hour', () => {
    expect(move(target)).toBe(0);
    expect(move(target + 0.6)).toBe(0);
  });

  it('comes sooner for a middle that will be past it, later for one that is not there, by some minutes', () => {
    expect(move(target + 2.5)).toBeLessThan(-2);
    expect(move(target - 2.5)).toBeGreaterThan(2);
    expect(move(target + 20)).toBeGreaterThanOrEqual(-7);
    expect(move(target - 20)).toBeLessThanOrEqual(5);
  });

  it('never brings the middle further from what was asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -8, max: 8, noNaN: true }),
        fc.double({ min: -0.2, max: 0.4, noNaN: true }),
        (off, pace) => {
          const minutes = move(target + off, pace);
          expect(Math.abs(off + minutes * pace)).toBeLessThanOrEqual(Math.abs(off) + 1e-9);
        },
      ),
    );
  });

  it('is moved neither before the roast is out nor after it was called', () => {
    expect(move(target + 5, 0.15, dinnerWith([]))).toBe(0);
    const called = told({ type: 'step-called', step: 'carve', call: 'carve:carve' }, '18:40');
    expect(move(target + 5, 0.15, dinnerWith([...cameOut, called]))).toBe(0);
  });
});

describe('the look on the board', () => {
  const looks = async (more: readonly (NewFact & { at: number })[]) => {
    const known = facts([read('17:20', 88), read('18:05', 111), ...cameOut, ...more]);
    const { calls, plan } = await lookAt(known, addMinutes(outAt, 1));
    const carve = plan?.steps.find((step) => step.id === 'carve')?.startAt ?? 0;
    return { carve, looks: calls.filter((one) => one.kind === 'check-due') };
  };

  it('is asked for once there is something to see and while something can be done', async () => {
    const { carve, looks: asked } = await looks([]);
    expect(asked.map((one) => one.call)).toEqual(['check-due:on-board-1']);
    const dueAt = asked[0]?.dueAt ?? 0;
    expect(minutesBetween(outAt, dueAt)).toBeGreaterThanOrEqual(12);
    expect(minutesBetween(dueAt, carve)).toBeGreaterThanOrEqual(9);
  });

  it('is not asked for when a number came, nor while nothing is to be asked', async () => {
    expect((await looks([read('18:20', 124)])).looks).toEqual([]);
    const quiet = told({ type: 'talk-paused', manner: 'quiet' } as NewFact, '18:11');
    expect((await looks([quiet])).looks).toEqual([]);
  });
});

describe('a roast that falls short on its board', () => {
  const short = target - 3;
  const resting = { plan: planOf(short), forecast: climbing(short, 0) };
  it('goes back in where there is time, by a number from the board alone', () => {
    const dinner = dinnerWith([...cameOut, read('18:13', 112)]);
    expect(isMendable({ dinner, ...resting }, at('18:14'))).toBe(true);
    expect(isMendable({ dinner, ...resting }, at('18:30'))).toBe(false);
    expect(isMendable({ dinner: dinnerWith(cameOut), ...resting }, at('18:14'))).toBe(false);
  });

  it('does not where it was there and only cools until the knife', () => {
    const dinner = dinnerWith([...cameOut, read('18:13', 131)]);
    expect(
      isMendable({ dinner, plan: planOf(short), forecast: climbing(short, -0.1) }, at('18:14')),
    ).toBe(false);
  });

  it('was out meanwhile: its oven is told so, and its middle is the colder for it', async () => {
    const before = [read('17:20', 88), read('18:05', 111), ...cameOut];
    const back = (backAt?: number) =>
      told({ type: 'step-not-done', step: 'pull', backAt }, '18:40');
    const dinner = dinnerWith([...before, back(at('18:40'))]);
    expect(dinner.outings).toEqual([{ from: outAt, to: at('18:40') }]);
    expect(dinner.steps.get('pull')?.doneAt).toBeUndefined();
    const oven = ovenSettingsOf(dinner, [], at('16:00'));
    expect(oven.filter((one) => one.event === 'out').map((one) => one.minute)).toEqual([130]);
    expect(oven.at(-1)).toMatchObject({ minute: 160, celsius: oven.at(-2)?.celsius });
    const coreAt = async (backAt?: number): Promise<number> => {
      const { forecast } = await lookAt(
        facts([...before, back(backAt), read('18:41', 118)]),
        at('18:42'),
      );
      return forecast?.core.at(34)?.celsius.p50 ?? Number.NaN;
    };
    expect(await coreAt(at('18:40'))).toBeLessThan(await coreAt());
  });

  it('is called to its pull anew', async () => {
    const known = facts([
      read('17:20', 88),
      read('18:05', 104),
      told(
        {
          type: 'announced',
          id: 'pull:pull#1',
          call: 'pull:pull',
          repeat: 0,
          kind: 'pull',
          step: 'pull',
          text: 'now',
          speech: 'now',
          urgency: 'high',
          dueAt: outAt,
          expiresAt: outAt,
        } as NewFact,
        '18:09',
      ),
      ...cameOut,
      read('18:13', 106),
      told({ type: 'step-not-done', step: 'pull', backAt: at('18:15') }, '18:15'),
    ]);
    const { calls, plan } = await lookAt(known, at('18:16'));
    expect(calls.filter((one) => one.kind === 'pull').map((one) => one.call)).toEqual([
      'pull:pull-2',
    ]);
    expect(plan?.pullCelsius ?? 0).toBeGreaterThan(celsiusOfFahrenheit(104));
  });
});
