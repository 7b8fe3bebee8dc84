import { describe, expect, it } from 'vitest';
import type { Plan, PlannedStep } from '../../src/kitchen/plan.ts';
import { handsOnce } from '../../src/planner/constraints/hands-once.ts';
import { restBeforeCarve } from '../../src/planner/constraints/rest-before-carve.ts';
import { tableOnTime } from '../../src/planner/constraints/table-on-time.ts';
import { at } from '../harness/day.ts';

const step = (
  id: string,
  from: string,
  to: string,
  more: Partial<PlannedStep> = {},
): PlannedStep => ({
  id,
  card: 'rib-roast',
  title: id,
  startAt: at(from),
  endAt: at(to),
  minutes: { p10: 5, p50: 10, p90: 15 },
  state: 'planned',
  hands: ['you'],
  handsOn: 'throughout',
  needs: [],
  why: [],
  slackMinutes: 0,
  presumed: false,
  ...more,
});

const planOf = (steps: PlannedStep[], likely = '19:00'): Plan => ({
  complete: true,
  method: 'sear-first',
  steps,
  serving: {
    wantedAt: at('19:00'),
    likelyAt: at(likely),
    earliestAt: at('18:50'),
    latestAt: at('19:20'),
  },
  onTimeChance: 0.9,
  roastInAt: at('16:40'),
  pullAt: { p10: at('18:00'), p50: at('18:20'), p90: at('18:40') },
  pullCelsius: 44,
  serveCelsius: 54.4,
  restMinutes: 30,
  carveMinutes: 8,
  oven: [],
  ovenNowCelsius: 0,
  coreAtServingCelsius: { p10: 53, p50: 54, p90: 56 },
  shortfalls: [],
});

describe('one pair of hands does one thing at a time', () => {
  it('lets one step begin as another ends', () => {
    expect(
      handsOnce.check(planOf([step('a', '14:00', '14:10'), step('b', '14:10', '14:20')])),
    ).toEqual([]);
  });
  it('finds the minute they share', () => {
    expect(
      handsOnce.check(planOf([step('a', '14:00', '14:11'), step('b', '14:10', '14:20')])),
    ).toHaveLength(1);
  });
  it('lets two cooks share it', () => {
    const other = step('b', '14:05', '14:20', { hands: ['Robin'] });
    expect(handsOnce.check(planOf([step('a', '14:00', '14:11'), other]))).toEqual([]);
  });
  it('counts only the first minutes of a step that needs hands to start', () => {
    const start = step('a', '14:00', '15:00', { handsOn: 'start' });
    expect(handsOnce.check(planOf([start, step('b', '14:02', '14:20')]))).toEqual([]);
    expect(handsOnce.check(planOf([start, step('b', '14:01', '14:20')]))).toHaveLength(1);
    const sooner = { ...start, handsSoonerMinutes: 1 };
    expect(handsOnce.check(planOf([sooner, step('b', '14:01', '14:20')]))).toEqual([]);
    expect(handsOnce.check(planOf([sooner, step('b', '14:00', '14:20')]))).toHaveLength(1);
  });
});

describe('the knife waits for the rest', () => {
  const rest = step('rest', '18:20', '18:50', { hands: [], handsOn: 'none' });
  it('holds at the minute the rest ends', () => {
    expect(restBeforeCarve.check(planOf([rest, step('carve', '18:50', '19:00')]))).toEqual([]);
  });
  it('fails a minute before', () => {
    expect(restBeforeCarve.check(planOf([rest, step('carve', '18:49', '19:00')]))[0]?.minutes).toBe(
      1,
    );
  });
});

describe('dinner on time', () => {
  it('holds to the minute and says how late it is', () => {
    expect(tableOnTime.check(planOf([], '19:01'))).toEqual([]);
    expect(tableOnTime.check(planOf([], '19:12'))[0]?.minutes).toBe(12);
  });
});
