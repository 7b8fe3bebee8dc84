/**
 * The household on a real mosquitto, in both versions of the protocol: wills, kept messages, sessions
 * and repeated delivery as OASIS MQTT 3.1.1 and 5.0 have them.
 */
import { describe, expect, test } from 'vitest';
import { cuttableLine } from '../../net.ts';
import { bridgesThatEnd } from '../bridging.ts';
import { peer } from '../bus.ts';
import { dueNow, type FakeHouse, fakeHouse, until } from '../fakes.ts';
import { mosquitto } from './mosquitto.ts';

const { ending, bridging } = bridgesThatEnd();

const house = (): Promise<FakeHouse> =>
  fakeHouse({ calls: [], said: [], reply: (text) => `heard ${text}` });
/** What came over the bus. */
const texts = (one: FakeHouse): string[] =>
  (one.world.said ?? []).filter(({ source }) => source === 'mqtt').map(({ text }) => text);

async function onBroker() {
  const broker = await mosquitto();
  ending.push(broker.close);
  const line = await cuttableLine(broker.port);
  ending.push(line.close);
  const other = await peer(broker.url);
  ending.push(other.leave);
  return { broker, line, other };
}

describe.each(['3.1.1', '5'] as const)('MQTT %s', (protocol) => {
  test('words, answers, calls; what is kept is there for who comes later', async () => {
    const { broker, other } = await onBroker();
    const one = await house();
    await bridging(one, broker.url, { protocol });
    await until(() => other.on('roastcall/state').length > 0);
    await other.say('roastcall/say', { id: '1', text: 'next' });
    await until(() => other.on('roastcall/reply').length === 1);
    await one.raise([dueNow(one, 'a'), dueNow(one, 'b')]);
    await until(() => other.on('roastcall/announce').length === 2);
    expect(other.json('roastcall/reply')[0]).toMatchObject({ id: '1', text: 'heard next' });
    expect(other.json('roastcall/announce').map((call) => call.id)).toEqual(['a', 'b']);
    const late = await peer(broker.url);
    ending.push(late.leave);
    await until(() => late.seen.length >= 3);
    expect(late.seen.filter((seen) => seen.retained).map((seen) => seen.topic)).toEqual(
      expect.arrayContaining([
        'roastcall/status',
        'roastcall/state',
        'homeassistant/device/roastcall_a1b2c3d4/config',
      ]),
    );
  });

  test('a broker killed and started again: calls in order, each once; the kept stands anew', async () => {
    const { broker, other } = await onBroker();
    const one = await house();
    await bridging(one, broker.url, { protocol });
    await until(() => other.on('roastcall/state').length > 0);
    await one.raise([dueNow(one, 'a')]);
    await until(() => other.on('roastcall/announce').length === 1);
    await broker.kill();
    await one.raise([
      dueNow(one, 'b'),
      dueNow(one, 'brief', { liveMilliseconds: 1 }),
      dueNow(one, 'c', { urgency: 'high' }),
    ]);
    one.clock.step(-3_600_000);
    await broker.start();
    const witness = await peer(broker.url);
    ending.push(witness.leave);
    await until(
      () => witness.on('roastcall/announce').length === 2,
      () => witness.seen,
    );
    await one.raise([dueNow(one, 'd')]);
    await until(() => witness.on('roastcall/announce').length === 3);
    expect(witness.json('roastcall/announce').map((call) => call.id)).toEqual(['b', 'c', 'd']);
    expect(witness.on('roastcall/status').at(-1)).toBe('online');
    await witness.say('roastcall/say', 'next');
    await until(() => witness.on('roastcall/reply').length === 1);
  });

  test('words sent while the line is down are heard when it is back, once', async () => {
    const { line, other } = await onBroker();
    const one = await house();
    await bridging(one, new URL(`mqtt://127.0.0.1:${line.port}`), { protocol });
    await until(() => other.on('roastcall/state').length > 0);
    line.cut();
    await until(() => other.on('roastcall/status').at(-1) === 'offline');
    await other.say('roastcall/say', 'done');
    await other.say('roastcall/say', { id: '1', text: 'next' });
    line.mend();
    await until(() => other.on('roastcall/reply').length === 2);
    expect(texts(one)).toEqual(['done', 'next']);
  });

  test('words whose receipt got lost are heard once and answered once', async () => {
    const { line, other } = await onBroker();
    const one = await house();
    await bridging(one, new URL(`mqtt://127.0.0.1:${line.port}`), { protocol });
    await until(() => other.on('roastcall/state').length > 0);
    line.withhold();
    await other.say('roastcall/say', 'take that back');
    await until(() => texts(one).length === 1);
    line.cut();
    line.mend();
    await until(() => other.on('roastcall/reply').length === 1);
    await other.say('roastcall/say', 'next');
    await until(() => other.on('roastcall/reply').length === 2);
    expect(texts(one)).toEqual(['take that back', 'next']);
  });

  test('words left for an earlier run, and kept ones, are not heard by the next', async () => {
    const { broker, line, other } = await onBroker();
    const earlier = await house();
    await bridging(earlier, new URL(`mqtt://127.0.0.1:${line.port}`), { protocol });
    await until(() => other.on('roastcall/state').length > 0);
    // The earlier run dies without a farewell, its session still open at the broker.
    line.cut();
    await until(() => other.on('roastcall/status').at(-1) === 'offline');
    await other.say('roastcall/say', 'start over');
    await other.say('roastcall/say', 'the roast is out', { retain: true });
    const later = await house();
    const seen = other.on('roastcall/state').length;
    await bridging(later, broker.url, { protocol });
    await until(() => other.on('roastcall/state').length > seen);
    await other.say('roastcall/say', 'next');
    await until(() => other.on('roastcall/reply').length === 1);
    expect(texts(later)).toEqual(['next']);
  });

  test('a farewell says offline at once and leaves no session behind', async () => {
    const { broker, other } = await onBroker();
    const bridge = await bridging(await house(), broker.url, { protocol });
    await until(() => other.on('roastcall/state').length > 0);
    await bridge.close();
    await until(() => other.on('roastcall/status').at(-1) === 'offline');
    await other.client.subscribeAsync('$SYS/broker/clients/total');
    await until(() => other.on('$SYS/broker/clients/total').length > 0);
    // Only the one that asks is left.
    await until(
      () => other.on('$SYS/broker/clients/total').at(-1) === '1',
      () => other.seen.at(-1),
    );
  });

  test('a password is wanted: without it there is a word of trouble, with it all is well', async () => {
    const broker = await mosquitto({ name: 'cook', password: 'sage & onion' });
    ending.push(broker.close);
    const troubles: string[] = [];
    const trouble = (_: string, why: Error | undefined): unknown =>
      troubles.push(why?.message ?? 'well');
    const options = {
      protocol,
      trouble: (who: string, why: Error | undefined) => void trouble(who, why),
    };
    await bridging(await house(), broker.url, options);
    await until(() => troubles.length > 0);
    expect(troubles[0]).toMatch(/not authorized/i);
    const login = { username: 'cook', password: 'sage & onion', instance: 'e5f6a7b8' };
    await bridging(await house(), broker.url, { ...options, ...login });
    await until(() => troubles.includes('well'));
  });
});

test('MQTT 5: the answer goes to the response topic with its correlation, a call bears its expiry', async () => {
  const broker = await mosquitto();
  ending.push(broker.close);
  const one = await house();
  await bridging(one, broker.url, { protocol: '5' });
  const other = await peer(broker.url, 5);
  ending.push(other.leave);
  const properties: Record<string, unknown>[] = [];
  other.client.on('message', (topic, _payload, packet) => {
    if (topic === 'answers/7' || topic === 'roastcall/announce')
      properties.push(packet.properties ?? {});
  });
  await until(() => other.on('roastcall/state').length > 0);
  await other.say('roastcall/say', 'next', {
    properties: { responseTopic: 'answers/7', correlationData: Buffer.from('no. 7') },
  });
  await until(() => other.on('answers/7').length === 1);
  await one.raise([dueNow(one, 'a', { liveMilliseconds: 90_000 })]);
  await until(() => other.on('roastcall/announce').length === 1);
  expect(String(properties[0]?.correlationData)).toBe('no. 7');
  expect(properties[1]?.messageExpiryInterval).toBeGreaterThan(80);
  expect(properties[1]?.messageExpiryInterval).toBeLessThanOrEqual(90);
  // A topic that would be heard as words is not answered to.
  await other.say('roastcall/say', 'done', { properties: { responseTopic: 'roastcall/say' } });
  await until(() => other.on('roastcall/reply').length === 1);
  expect(texts(one)).toEqual(['next', 'done']);
});
