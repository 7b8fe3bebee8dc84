/**
 * A leave-in thermometer on the bus. Paths are singular queries of JSONPath (RFC 9535, section
 * 2.3.5.1), which also gives the examples of names in brackets.
 */
import { expect, test } from 'vitest';
import { mqttBridge } from '../../src/bridges/mqtt/bridge.ts';
import { pathOf, readingIn } from '../../src/bridges/mqtt/reading.ts';
import { broker, peer } from './bus.ts';
import { until } from './fakes.ts';
import { served } from './served.ts';

test.each([
  ['', '54.3', { temperature: 54.3 }],
  ['', ' 129 ', { temperature: 129 }],
  ['', '54.3 °C', { temperature: 54.3, unit: 'C' }],
  ['', '129F', { temperature: 129, unit: 'F' }],
  ['', '-4', { temperature: -4 }],
  ['', '{"temperature": 54.3, "unit": "°C"}', { temperature: 54.3, unit: 'C' }],
  ['', '{"value": "129", "unit": "fahrenheit"}', { temperature: 129, unit: 'F' }],
  ['', '{"celsius": 54}', { temperature: 54, unit: 'C' }],
  ['', '"54.3"', { temperature: 54.3 }],
  [
    'probes[1].core',
    '{"probes":[{"core":1},{"core":54}],"unit":"C"}',
    { temperature: 54, unit: 'C' },
  ],
  ['$.probes[-1]', '{"probes":[1,54.5]}', { temperature: 54.5 }],
  ["$['core temp']['°']", '{"core temp":{"°":54}}', { temperature: 54 }],
  ['core', '{"core":{"value":54,"unit":"C"}}', { temperature: 54, unit: 'C' }],
  ['', 'unavailable', undefined],
  ['', '', undefined],
  ['', 'NaN', undefined],
  ['', 'null', undefined],
  ['', '[54]', undefined],
  ['core', '54', undefined],
  ['core', '{"core":null}', undefined],
  ['core', '{"other":54}', undefined],
  ['constructor', '{}', undefined],
  ['a', '{"a":', undefined],
] as const)('%j finds in %j', (path, payload, reading) => {
  const found = readingIn(payload, pathOf(path === '' ? '$' : path) ?? ['no path']);
  expect(found && JSON.parse(JSON.stringify(found))).toEqual(reading);
});

test.each(['a..b', '$.*', '$..a', 'a[?@.b]', 'a[0:2]', '$a b', "['a\\'b']"])(
  '%j is more than one place, or none',
  (path) => {
    expect(pathOf(path)).toBeUndefined();
  },
);

test('a thermometer left in feeds the forecast every minute, without a word', async () => {
  const house = await served();
  const bus = await broker();
  const bridge = await mqttBridge({
    household: house.household,
    ticks: () => performance.now(),
    url: bus.url,
    protocol: '3.1.1',
    base: 'roastcall',
    instance: 'a1b2c3d4',
    version: '0',
    reading: { topic: 'probe/data', path: ['core'], unit: 'C' },
  });
  const other = await peer(bus.url);
  const day = (time: string): number => Date.parse(`2026-12-19T${time}:00-06:00`);
  const say = (text: string, at: string) => house.household.say({ text, at: day(at) });
  const kept = async () => (await house.household.current())!;
  const view = async () => house.household.view(await kept());
  /** What was sent before an answer came has been taken. */
  let asked = 0;
  const taken = async (): Promise<void> => {
    asked += 1;
    await other.say('roastcall/say', { id: String(asked), text: 'next' });
    await until(() => other.on('roastcall/reply').length === asked);
  };
  try {
    await other.say('probe/data', { core: 21 });
    await taken();
    await say('seven pound three bone rib roast, dinner at seven for six, medium rare', '13:30');
    await other.say('probe/data', { core: 22 });
    await taken();
    await say('the roast went in', '16:40');
    await say('turned it down to 325', '17:00');
    const before = await view();
    const replies = (await house.household.facts(await kept())).filter((f) => f.type === 'replied');

    for (const [minute, celsius] of [8, 9.1, 10.2].entries()) {
      await house.household.advance((await kept()).id, day(`17:${String(10 + minute)}`));
      await other.say('probe/data', { core: celsius });
      // The same minute again, a slipped tip and a dead probe are no readings.
      await other.say('probe/data', { core: celsius + 0.2 });
      await other.say('probe/data', { core: 163 });
      await other.say('probe/data', { core: 'unknown' });
      await taken();
    }
    const facts = await house.household.facts(await kept());
    const readings = facts.filter((fact) => fact.type === 'reading-taken');
    expect(readings.map((one) => one.said?.value)).toEqual([8, 9.1, 10.2]);
    expect(readings.every((one) => one.thermometer === 'leave-in')).toBe(true);
    // Nothing was said, asked or presumed about them.
    const answered = facts.filter((fact) => fact.type === 'replied');
    expect(answered.length - replies.length).toBe(3);
    expect((await view()).asking).toBeUndefined();
    const width = (v: typeof before): number =>
      v.forecast!.coreNowFahrenheit.p90 - v.forecast!.coreNowFahrenheit.p10;
    expect(width(await view())).toBeLessThan(width(before));
    expect((await view()).forecast!.coreNowFahrenheit.p50).toBeCloseTo(10.2 * 1.8 + 32, -1);
  } finally {
    await bridge.close();
    await other.leave();
    await bus.die();
    await house.close();
  }
});
