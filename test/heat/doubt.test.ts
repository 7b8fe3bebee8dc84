/** Readings that cannot be right together: named by index and reason, and kept out of the forecast. */
import { describe, expect, it } from 'vitest';
import { celsiusOfFahrenheit, kilogramsOfPounds } from '../../src/base/units.ts';
import type { ForecastQuestion, ProbeReading } from '../../src/kitchen/forecast.ts';
import { forecast } from '../../src/planner/heat/forecast.ts';

type Row = [minute: number, fahrenheit: number, how?: Partial<ProbeReading>];

const ask = (rows: readonly Row[]): ForecastQuestion => ({
  roast: {
    shape: {
      form: 'rib',
      kilogramsPerBone: 1.05,
      composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
    },
    kilograms: kilogramsOfPounds(7),
    bones: 3,
    startCelsius: 4.4,
  },
  oven: [
    { minute: 0, celsius: celsiusOfFahrenheit(450) },
    { minute: 20, celsius: celsiusOfFahrenheit(325) },
  ],
  readings: rows.map(([minute, fahrenheit, how]) => ({
    minute,
    celsius: celsiusOfFahrenheit(fahrenheit),
    ...how,
  })),
  nowMinute: Math.max(0, ...rows.map(([minute]) => minute)),
  pullCelsius: celsiusOfFahrenheit(120),
  rest: 'tented',
  seed: 7,
});

const leaveIn = { thermometer: 'leave-in' } as const;
const good: Row[] = [
  [60, 72],
  [75, 86],
  [90, 98],
];

describe('doubted readings', () => {
  it.each<[string, Row[], { index: number; why: string }[]]>([
    ['three that agree', good, []],
    [
      'an outlier among them',
      [good[0]!, good[1]!, [80, 140], good[2]!],
      [{ index: 2, why: 'too-high' }],
    ],
    ['the other unit', [good[0]!, good[1]!, [90, 37]], [{ index: 2, why: 'wrong-unit' }]],
    [
      'a core that falls in the oven',
      [good[0]!, good[1]!, [90, 78]],
      [{ index: 2, why: 'falling' }],
    ],
    [
      'a thermometer that is stuck: its first figure may be right',
      [...good, [105, 98], [115, 98]],
      [
        { index: 3, why: 'stuck' },
        { index: 4, why: 'stuck' },
      ],
    ],
    [
      'a leave-in that was moved',
      [
        [60, 72, leaveIn],
        [75, 86, leaveIn],
        [90, 98, leaveIn],
        [93, 120, leaveIn],
      ],
      [{ index: 3, why: 'moved-probe' }],
    ],
    [
      'two places at once: the warmer is not the core',
      [
        [90, 98, { where: 'in the middle' }],
        [90, 115, { where: 'by the bone' }],
      ],
      [{ index: 1, why: 'disagrees-with-another' }],
    ],
    [
      'a quick thermometer that finds a cooler spot than the leave-in',
      [
        [75, 86, leaveIn],
        [90, 98, leaveIn],
        [91, 88, { thermometer: 'quick' }],
      ],
      [{ index: 1, why: 'disagrees-with-another' }],
    ],
    [
      'one far above the two before it',
      [good[0]!, good[1]!, [85, 112]],
      [{ index: 2, why: 'too-high' }],
    ],
    [
      'two that agree, against two older ones',
      [good[0]!, good[1]!, [80, 112], [83, 114]],
      [
        { index: 0, why: 'too-low' },
        { index: 1, why: 'too-low' },
      ],
    ],
  ])('%s', (_, rows, suspects) => {
    expect(forecast(ask(rows)).suspectReadings).toEqual(suspects);
  });

  it('a doubted high number may be right: the look is soon, and the band keeps a width', () => {
    const high = forecast(ask([good[0]!, good[1]!, [85, 112]]));
    expect(high.nextCheckMinute).toBeLessThanOrEqual(88);
    expect(high.latestLookMinute).toBeLessThan(85 + 20);
    const { p10, p90 } = high.pullMinute;
    expect(p90 - p10).toBeGreaterThan(4);
  });

  it('a roast that stalls is believed, and comes late', () => {
    const stalled = forecast(
      ask([
        [60, 60],
        [75, 68],
        [90, 74],
        [105, 79],
        [120, 83],
      ]),
    );
    expect(stalled.suspectReadings).toEqual([]);
    expect(stalled.pullMinute.p50).toBeGreaterThan(forecast(ask(good)).pullMinute.p50 + 45);
    expect(stalled.coreNowCelsius.p50).toBeLessThan(celsiusOfFahrenheit(86));
  });

  it('a thermometer that speaks every minute tells more, but not sixty times as much', () => {
    const every = (minutes: number): Row[] =>
      Array.from({ length: Math.floor(60 / minutes) }, (_, row) => {
        const minute = 45 + row * minutes;
        return [minute, 58 + 0.93 * (minute - 45), leaveIn];
      });
    const width = (rows: Row[]): number => {
      const { p10, p90 } = forecast({ ...ask(rows), nowMinute: 105 }).coreNowCelsius;
      return p90 - p10;
    };
    expect(width(every(1))).toBeGreaterThan(0.5 * width(every(10)));
  });
});
