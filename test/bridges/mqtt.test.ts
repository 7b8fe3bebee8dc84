/**
 * The household on an MQTT bus, over real sockets, against a general-purpose broker in this process.
 * Kept messages, repeated delivery, wills and sessions are as OASIS MQTT 3.1.1 has them.
 */
import { type AddressInfo, createServer, type Socket } from 'node:net';
import type { Client } from 'aedes';
import { expect, test } from 'vitest';
import type { MqttOptions } from '../../src/bridges/mqtt/bridge.ts';
import { bridgesThatEnd } from './bridging.ts';
import { broker, peer } from './bus.ts';
import { dueNow, fakeHouse, until } from './fakes.ts';

const { ending, bridging } = bridgesThatEnd();

async function onBus(more: Partial<MqttOptions> = {}) {
  const said: { text: string; at: number; source?: string | undefined }[] = [];
  const house = await fakeHouse({ calls: [], said, reply: (text) => `heard ${text}` });
  const bus = await broker();
  ending.push(bus.die);
  const bridge = await bridging(house, bus.url, more);
  const other = await peer(bus.url);
  ending.push(other.leave);
  await until(() => other.on('roastcall/state').length > 0);
  return { house, bus, bridge, other, said, texts: () => said.map((one) => one.text) };
}

/** The broker's end of the household's line. */
function lineOf(bus: Awaited<ReturnType<typeof broker>>): { destroy(): void } {
  const { clients } = bus.aedes as unknown as { clients: Record<string, Client> };
  return Object.values(clients).find((one) => one.id.startsWith('roastcall-'))!.conn;
}

test('plain words and JSON are heard; the answer goes where it is awaited, with its number', async () => {
  const { other, said } = await onBus();
  await other.say('roastcall/say', 'what is next');
  await other.say('roastcall/say', { id: 7, text: 'it reads 104', device: 'hall' });
  await other.say('roastcall/say', { text: 'done', reply_to: 'house/kitchen/reply' });
  await until(() => other.on('house/kitchen/reply').length === 1);
  expect(said.map(({ text, source }) => [text, source])).toEqual([
    ['what is next', 'mqtt'],
    ['it reads 104', 'mqtt hall'],
    ['done', 'mqtt'],
  ]);
  expect(other.json('roastcall/reply')).toMatchObject([
    { handled: true, text: 'heard what is next', speech: 'heard what is next' },
    { id: '7', device: 'hall', handled: true, text: 'heard it reads 104' },
  ]);
});

test('numbered words act once and get the same answer; other words under the number are other words', async () => {
  const { other, texts } = await onBus();
  const send = async (...messages: object[]): Promise<void> => {
    for (const one of messages) await other.say('roastcall/say', one);
  };
  await send({ id: '1', text: 'done' }, { id: '1', text: 'done' }, { id: '1', text: 'next' });
  await send({ id: '1', text: 'done', device: 'hall' }, { id: '2', text: 'done', device: 'hall' });
  await until(() => other.on('roastcall/reply').length === 5);
  // Without a name for the first device the hall is not known to be another one, so it is heard.
  expect(texts()).toEqual(['done', 'next', 'done', 'done']);
  const [first, again] = other.on('roastcall/reply');
  expect(again).toBe(first);
});

test('the status, the state and the way to be found are kept by the broker', async () => {
  const { bus, bridge } = await onBus();
  const late = await peer(bus.url);
  ending.push(late.leave);
  await until(() => late.seen.length >= 3);
  const kept = new Map(late.seen.map((one) => [one.topic, one]));
  expect(late.seen.every((one) => one.retained)).toBe(true);
  expect(kept.get('roastcall/status')?.text).toBe('online');
  expect(JSON.parse(kept.get('roastcall/state')?.text ?? '')).toMatchObject({ stage: 'planning' });
  const config = JSON.parse(
    kept.get('homeassistant/device/roastcall_a1b2c3d4/config')?.text ?? '',
  ) as { components: Record<string, { platform: string; unique_id: string }> };
  expect(config).toMatchObject({
    device: { identifiers: ['roastcall_a1b2c3d4'] },
    origin: { name: 'roastcall' },
    availability_topic: 'roastcall/status',
    state_topic: 'roastcall/state',
  });
  const parts = Object.values(config.components);
  expect(parts.every((one) => one.platform && one.unique_id)).toBe(true);
  expect(new Set(parts.map((one) => one.unique_id)).size).toBe(parts.length);
  await bridge.close();
  await until(() => late.on('roastcall/status').at(-1) === 'offline');
});

test('every figure that a home server is told to show stands in the state', async () => {
  const { other } = await onBus();
  const [state] = other.json('roastcall/state');
  const [config] = other.json('homeassistant/device/roastcall_a1b2c3d4/config');
  const named = [...JSON.stringify(config).matchAll(/value_json\.(\w+)/g)].map((one) => one[1]);
  const ofCalls = ['kind', 'text', 'urgency'];
  expect(named.length).toBeGreaterThan(8);
  expect(named.filter((name) => !ofCalls.includes(name ?? '') && !(name! in state!))).toEqual([]);
});

test('a home server that starts anew is told again', async () => {
  const { other } = await onBus();
  const topic = 'homeassistant/device/roastcall_a1b2c3d4/config';
  const before = other.on(topic).length;
  await other.say('homeassistant/status', 'online');
  await until(() => other.on(topic).length === before + 1);
});

test('a kept command is not obeyed, and clearing one is no command', async () => {
  const house = await fakeHouse({ calls: [], said: [] });
  const bus = await broker();
  ending.push(bus.die);
  const other = await peer(bus.url);
  ending.push(other.leave);
  await other.say('roastcall/say', 'start over', { retain: true });
  await bridging(house, bus.url);
  await until(() => other.on('roastcall/state').length > 0);
  await other.say('roastcall/say', '', { retain: true });
  await other.say('roastcall/say', 'next');
  await until(() => other.on('roastcall/reply').length === 1);
  expect(house.world.said?.map((one) => one.text)).toEqual(['next']);
});

test('what is not words is refused with an answer, or is taken as the words it is', async () => {
  const { other, texts } = await onBus();
  for (const [payload, handled] of [
    ['  ', false],
    [{ id: '1' }, false],
    [{ id: '2', text: 5 }, false],
    ['{"text": "cut sho', true],
    [Buffer.from([0xff, 0xfe, 0x00, 0x31]), true],
    ['x'.repeat(300_000), true],
    [`{"text":${'['.repeat(50_000)}`, true],
  ] as const) {
    const before = other.on('roastcall/reply').length;
    await other.say('roastcall/say', payload);
    await until(() => other.on('roastcall/reply').length === before + 1);
    expect(other.json('roastcall/reply').at(-1)).toMatchObject({ handled });
  }
  expect(texts()).toHaveLength(4);
});

test.each([
  'roastcall/say',
  'roastcall/state',
  'roastcall/status',
  'roastcall',
  '$SYS/x',
  'a/+/b',
  'a/#',
  'a\0b',
  '',
  'x'.repeat(2_000),
  7,
])('%#: an answer does not go where it would be heard, believed or refused', async (topic) => {
  const { other, texts } = await onBus();
  await other.say('roastcall/say', { text: 'next', reply_to: topic });
  await until(() => other.on('roastcall/reply').length === 1);
  await other.say('roastcall/say', 'done');
  await until(() => other.on('roastcall/reply').length === 2);
  expect(texts()).toEqual(['next', 'done']);
});

test('a message that the broker gives again for a lost receipt is heard once', async () => {
  const { bus, other, texts } = await onBus();
  const line = lineOf(bus);
  bus.aedes.authorizeForward = (client, packet) => {
    // The line dies when the words have gone out on it, so their receipt never comes back.
    if (packet.topic === 'roastcall/say' && client.id.startsWith('roastcall-'))
      setImmediate(() => line.destroy());
    return packet;
  };
  await other.say('roastcall/say', 'undo that');
  await other.say('roastcall/say', { id: '1', text: 'next' });
  await until(
    () => other.on('roastcall/reply').length === 2,
    () => other.seen,
  );
  expect(texts()).toEqual(['undo that', 'next']);
});

test('calls and answers come through a broker that dies and comes back with nothing kept', async () => {
  const { house, bus, other } = await onBus();
  await house.raise([dueNow(house, 'a')]);
  await until(() => other.on('roastcall/announce').length === 1);
  await bus.die();
  await house.raise([
    dueNow(house, 'b'),
    dueNow(house, 'brief', { liveMilliseconds: 1 }),
    dueNow(house, 'c'),
  ]);
  house.clock.step(3_600_000);
  const again = await broker(bus.port);
  ending.push(again.die);
  const witness = await peer(again.url);
  ending.push(witness.leave);
  await until(
    () => witness.on('roastcall/announce').length >= 2,
    () => witness.seen,
  );
  await house.raise([dueNow(house, 'd')]);
  await until(() => witness.on('roastcall/announce').length >= 3);
  expect(witness.json('roastcall/announce').map((one) => one.id)).toEqual(['b', 'c', 'd']);
  await until(() => witness.on('roastcall/state').length > 0);
  expect(witness.on('roastcall/status')).toEqual(['online']);
  await witness.say('roastcall/say', 'next');
  await until(() => witness.on('roastcall/reply').length === 1);
});

test('a broker that is not there yet holds nobody up', async () => {
  const house = await fakeHouse({ calls: [], said: [] });
  const gone = await broker();
  await gone.die();
  const troubles: string[] = [];
  await bridging(house, gone.url, { trouble: (_, why) => troubles.push(why?.message ?? 'well') });
  await house.raise([dueNow(house, 'a')]);
  const bus = await broker(gone.port);
  ending.push(bus.die);
  const other = await peer(bus.url);
  ending.push(other.leave);
  await until(() => other.on('roastcall/announce').length === 1);
  expect(troubles.at(-1)).toBe('well');
  expect(troubles[0]).toMatch(/REFUSED|refused/);
});

test('a will stands for the household that vanished', async () => {
  const { bus, other } = await onBus();
  lineOf(bus).destroy();
  await until(() => other.on('roastcall/status').includes('offline'));
  await until(() => other.on('roastcall/status').at(-1) === 'online');
});

test('an announcement tells all that the web tells of it', async () => {
  const { house, other } = await onBus();
  await house.raise([dueNow(house, 'a', { urgency: 'high', step: 'pull', kind: 'pull' })]);
  await until(() => other.on('roastcall/announce').length === 1);
  expect(other.json('roastcall/announce')[0]).toMatchObject({
    dinner: house.dinner,
    id: 'a',
    kind: 'pull',
    step: 'pull',
    text: 'a',
    speech: 'a spoken',
    urgency: 'high',
    expiresAt: expect.stringMatching(/^2026-12-19T12:0\d:\d\d\+00:00$/),
  });
});

/** Brokers that nobody should be. Lengths and packet types as in MQTT 3.1.1, section 2.2. */
const connack = Buffer.from([0x20, 0x02, 0x00, 0x00]);
test.each([
  ['says nothing', []],
  ['speaks another protocol', [Buffer.from('HTTP/1.1 400 Bad Request\r\n\r\n')]],
  ['sends noise', [Buffer.from(Array.from({ length: 5_000 }, (_, n) => (n * 73) % 256))]],
  ['welcomes, then sends noise', [connack, Buffer.alloc(2_000, 0xff)]],
  ['welcomes twice', [connack, connack]],
  ['promises a packet without end', [connack, Buffer.from([0x30, 0xff, 0xff, 0xff, 0x7f, 0x00])]],
  ['refuses', [Buffer.from([0x20, 0x02, 0x00, 0x05])]],
] as const)(
  'a broker that %s does no harm: the dinner goes on, and the bridge can be closed',
  async (_, bytes) => {
    const calls: Socket[] = [];
    const server = createServer((socket) => {
      calls.push(socket);
      socket.on('error', () => undefined);
      socket.on('data', () => undefined);
      for (const piece of bytes) socket.write(piece);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    ending.push(() => {
      for (const one of calls) one.destroy();
      server.close();
    });
    const { port } = server.address() as AddressInfo;
    const house = await fakeHouse({ calls: [], said: [] });
    const bridge = await bridging(house, new URL(`mqtt://127.0.0.1:${port}`));
    await until(() => calls.length > 0);
    await house.raise([dueNow(house, 'a')]);
    expect((await house.household.say({ text: 'next' })).replies).toHaveLength(1);
    await bridge.close();
  },
);
