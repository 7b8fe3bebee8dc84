import { describe, expect, it } from 'vitest';
import { addMinutes } from '../../src/base/time.ts';
import { celsiusOfFahrenheit, kelvinOfFahrenheitDegrees } from '../../src/base/units.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { DinnerRecord, Lesson } from '../../src/kitchen/record.ts';
import { lessonsOf } from '../../src/planner/days/lessons.ts';
import { recordPage } from '../../src/reply/en/record.ts';
import { recordChart } from '../../src/reply/en/record-chart.ts';
import { recordOf } from '../../src/session/record.ts';
import { openSession } from '../../src/session/session.ts';
import { at, cards, compute, opening } from '../harness/day.ts';

const day = [
  ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
  ['16:10', 'the oven is on'],
  ['16:40', 'the roast is in'],
  ['17:00', 'oven is down'],
  ['17:40', 'it reads 73'],
  ['17:50', 'guests are late 30 minutes'],
  ['18:05', 'it reads 91'],
  ['18:40', "it's out"],
  ['19:20', "we're carving"],
  ['19:30', 'dinner is served'],
  ['22:00', 'the leftovers are in the fridge'],
] as const;

const known = new Map<string, Promise<DinnerRecord>>();

/** The same talk is cooked once. */
function cooked(lines: readonly (readonly [string, string])[] = day): Promise<DinnerRecord> {
  const key = JSON.stringify(lines);
  const before = known.get(key) ?? cookedAnew(lines);
  known.set(key, before);
  return before;
}

async function cookedAnew(lines: readonly (readonly [string, string])[]): Promise<DinnerRecord> {
  const session = await openSession({
    dinner: 'a <dinner> & more',
    journal: openMemoryJournal(),
    compute,
    cards,
    opening,
  });
  for (const [time, text] of lines) await session.hear({ text, at: at(time) });
  return recordOf(session.id, await session.facts(), compute);
}

describe('the record of a dinner', () => {
  it('holds what was planned, what happened and each reading beside its forecast', async () => {
    const record = await cooked();
    expect(record.serving).toMatchObject({
      firstWantedAt: at('19:00'),
      wantedAt: at('19:30'),
      servedAt: at('19:30'),
    });
    const moment = (step: string) => record.moments.find((one) => one.step === step);
    expect(moment('roast-in')?.happenedAt).toBe(at('16:40'));
    expect(moment('pull')?.happenedAt).toBe(at('18:40'));
    expect(moment('pull')?.plannedAt).toBeDefined();
    expect(record.readings.map((one) => one.at)).toEqual([at('17:40'), at('18:05')]);
    for (const { forecast } of record.readings) {
      expect(forecast?.p10).toBeLessThan(forecast?.p50 ?? 0);
      expect(forecast?.p50).toBeLessThan(forecast?.p90 ?? 0);
    }
    expect(record.chosen).toHaveLength(1);
    expect(record.learnt).toBeDefined();
  });

  it('compares a reading with the forecast that did not know it', async () => {
    const odd = await cooked(
      day.map(([time, text]) => [time, text === 'it reads 73' ? 'it reads 79' : text] as const),
    );
    const usual = await cooked();
    // The first reading's own forecast is the same whatever it then read.
    expect(odd.readings[0]?.forecast).toEqual(usual.readings[0]?.forecast);
    expect(odd.readings[1]?.forecast).not.toEqual(usual.readings[1]?.forecast);
  });

  it('is the same page twice, with the two-hour rule where it was broken', async () => {
    const [one, two] = [recordPage(await cooked()), recordPage(await cookedAnew(day))];
    expect(one).toBe(two);
    expect(one).toMatch(/stood out for 150 minutes. The USDA's limit is two hours/);
    expect(one).toMatch(/\| put the roast in \|/);
    expect(one).not.toMatch(/undefined|NaN/);
  });

  it('is drawn as well-formed SVG with words beside it, and not at all before the oven', async () => {
    const record = await cooked();
    const svg = recordChart(record) ?? '';
    expect(svg).toMatch(/^<svg [^>]*role="img"/);
    expect(svg).toMatch(/<desc id="desc">2 readings, \d of them within/);
    expect(svg).not.toMatch(/NaN|undefined/);
    const open = svg.match(/<(svg|title|desc|text|g)\b/g)?.length;
    const shut = svg.match(/<\/(svg|title|desc|text|g)>/g)?.length;
    expect(open).toBe(shut);
    expect(svg.match(/<circle/g)).toHaveLength(2);
    expect(recordChart(await cooked(day.slice(0, 1)))).toBeUndefined();
    expect(recordPage(await cooked(day.slice(0, 1)))).toMatch(/nobody told when it was served/);
  });

  it('of a dinner with nothing in it is a page all the same', async () => {
    expect(recordPage(await recordOf('empty', [], compute))).toMatch(/^# Roast/);
  });
});

describe('what to do differently', () => {
  const wanted = at('19:00');
  const blank: Omit<DinnerRecord, 'lessons'> = {
    id: 'd',
    timeZone: 'UTC',
    units: { temperature: 'F', weight: 'lb' },
    openedAt: at('12:00'),
    roast: { title: 'rib roast' },
    method: 'sear-first',
    serveCelsius: celsiusOfFahrenheit(130),
    guests: 6,
    notes: [],
    menu: [],
    serving: { wantedAt: wanted, servedAt: wanted },
    moments: [
      { step: 'pull', title: 'pull', happenedAt: at('18:20'), presumed: false },
      { step: 'put-away', title: 'away', happenedAt: at('20:00'), presumed: false },
    ],
    readings: [
      { at: at('17:00'), celsius: 30, suspect: false },
      { at: at('17:30'), celsius: 40, suspect: false },
    ],
    core: [],
    oven: [],
    chosen: [],
    troubles: [],
    emergencies: [],
  };
  const quiet = { saltAheadCalled: false, saltAheadDone: false, frozen: false };
  const keys = (
    more: Partial<typeof blank>,
    told: Partial<Parameters<typeof lessonsOf>[1]> = {},
  ): Lesson['key'][] =>
    lessonsOf({ ...blank, ...more }, { ...quiet, ...told }).map((one) => one.key);
  const belief = (oven: number, stem: number) => ({
    ovenBiasKelvin: { mean: oven, deviation: 3 },
    thermometerOffsetKelvin: { mean: stem, deviation: 0.3 },
  });

  it('is nothing when all went well', () => {
    expect(keys({})).toEqual([]);
  });

  it.each<[string, Partial<typeof blank>, Partial<Parameters<typeof lessonsOf>[1]>, Lesson['key']]>(
    [
      [
        'eleven minutes late',
        { serving: { wantedAt: wanted, servedAt: addMinutes(wanted, 11) } },
        {},
        'served-late',
      ],
      [
        'eleven minutes early',
        { serving: { wantedAt: wanted, servedAt: addMinutes(wanted, -11) } },
        {},
        'served-early',
      ],
      ['a hot oven', { learnt: belief(8, 0) }, {}, 'oven-hot'],
      ['a cool oven', { learnt: belief(-8, 0) }, {}, 'oven-cool'],
      [
        'a thermometer off by three Fahrenheit degrees',
        { learnt: belief(0, kelvinOfFahrenheitDegrees(3)) },
        {},
        'thermometer-off',
      ],
      ['a pull ten minutes after its call', {}, { pullCalledAt: at('18:10') }, 'pulled-late'],
      ['too done', { coreAtKnifeCelsius: { p10: 56, p50: 58, p90: 60 } }, {}, 'more-done'],
      ['too little done', { coreAtKnifeCelsius: { p10: 48, p50: 50, p90: 52 } }, {}, 'less-done'],
      ['one reading', { readings: blank.readings.slice(0, 1) }, {}, 'few-readings'],
      ['never put away', { moments: blank.moments.slice(0, 1) }, {}, 'put-away-untold'],
      ['salt forgotten', {}, { saltAheadCalled: true }, 'salt-ahead-missed'],
      ['ice in its heart', {}, { frozen: true }, 'still-frozen'],
    ],
  )('%s', (_, more, told, key) => {
    expect(keys(more, told)).toEqual([key]);
  });

  // USDA FSIS: into the fridge within two hours; one minute either side.
  it.each([
    [119, []],
    [120, []],
    [121, ['left-out']],
  ])('%d minutes out: %j', (minutes, wantedKeys) => {
    const moments = [
      blank.moments[0]!,
      { step: 'put-away', title: 'away', happenedAt: addMinutes(wanted, minutes), presumed: false },
    ];
    expect(keys({ moments })).toEqual(wantedKeys);
  });

  it('ten minutes are no lateness, and a bias within its own doubt is none', () => {
    expect(keys({ serving: { wantedAt: wanted, servedAt: addMinutes(wanted, 10) } })).toEqual([]);
    expect(
      keys({
        learnt: {
          ovenBiasKelvin: { mean: 8, deviation: 9 },
          thermometerOffsetKelvin: { mean: 0, deviation: 0.6 },
        },
      }),
    ).toEqual([]);
  });
});
