/**
 * The Wyoming service at its edges: who may speak, how long, and what a house relies on. Required
 * keys of `info` are those that the protocol's published reference library insists on.
 */
import { type AddressInfo, connect, type Server } from 'node:net';
import { afterEach, expect, test } from 'vitest';
import { frameOf, type WyomingEvent } from '../../src/bridges/wyoming/frame.ts';
import { peersOf } from '../../src/bridges/wyoming/peers.ts';
import { type WyomingOptions, wyomingServer } from '../../src/bridges/wyoming/server.ts';
import { type FakeHouse, fakeHouse, until } from './fakes.ts';

const servers: Server[] = [];
afterEach(() => {
  for (const server of servers.splice(0)) server.close();
});

async function serving(more: Partial<WyomingOptions> = {}) {
  const said: NonNullable<FakeHouse['world']['said']> = [];
  const reply = (text: string): string => `Heard ${text}. Now what?`;
  const house = await fakeHouse({ calls: [], said, reply });
  const server = wyomingServer({ household: house.household, version: '0', ...more });
  servers.push(server);
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { house, said, port: (server.address() as AddressInfo).port };
}

/** Sends, keeps its half open unless told, and gives what came until the other side ended it. */
function talk(port: number, pieces: readonly Buffer[], end = true) {
  const socket = connect(port, '127.0.0.1').setNoDelay(true);
  const got: Buffer[] = [];
  socket.on('data', (chunk) => got.push(chunk)).on('error', () => undefined);
  for (const piece of pieces) socket.write(piece);
  if (end) socket.end();
  const closed = new Promise<void>((resolve) => socket.on('close', () => resolve()));
  return { socket, closed, events: () => parsed(Buffer.concat(got)) };
}

async function ask(port: number, ...pieces: Buffer[]): Promise<WyomingEvent[]> {
  const one = talk(port, pieces);
  await one.closed;
  return one.events();
}

function parsed(bytes: Buffer): WyomingEvent[] {
  const events: WyomingEvent[] = [];
  for (let at = 0; at < bytes.length; ) {
    const end = bytes.indexOf(10, at);
    const header = JSON.parse(bytes.subarray(at, end).toString());
    at = end + 1 + (header.data_length ?? 0);
    const data = header.data_length ? JSON.parse(bytes.subarray(end + 1, at).toString()) : {};
    events.push({ type: header.type, data });
  }
  return events;
}

const words = (text: string, context?: object): Buffer =>
  frameOf({ type: 'transcript', data: { text, language: 'en', ...(context ? { context } : {}) } });
const describe = Buffer.from('{"type": "describe", "version": "1.9.0"}\n');

test('info has every key that the reference library insists on, and no program that hides it', async () => {
  const { port } = await serving({ languages: ['en'] });
  const [info] = await ask(port, describe);
  const { handle, intent, satellite } = info!.data as {
    handle: Record<string, unknown>[];
    intent: unknown[];
    satellite?: unknown;
  };
  expect([intent, satellite]).toEqual([[], undefined]);
  const [program] = handle;
  const models = program?.models as Record<string, unknown>[];
  for (const one of [program, ...models])
    expect(one).toMatchObject({
      name: expect.stringMatching(/./),
      attribution: { name: expect.any(String), url: expect.any(String) },
      installed: true,
    });
  expect(models.map((one) => one.languages)).toEqual([['en']]);
});

test('the context comes back; the same dinner hears, whatever conversation it belongs to', async () => {
  const { port, said, house } = await serving();
  const contexts = ['one', 'two'].map((id) => ({ conversation_id: id, satellite_id: `sat-${id}` }));
  const answers = [
    ...(await ask(port, words('next', contexts[0]))),
    ...(await ask(port, words('done', contexts[1]))),
    ...(await ask(port, words('next please'))),
  ];
  expect(answers.map(({ data }) => data.context)).toEqual([...contexts, undefined]);
  expect(said.map((one) => one.source)).toEqual(['wyoming sat-one', 'wyoming sat-two', 'wyoming']);
  expect(await house.household.dinners()).toHaveLength(1);
});

test('one sentence heard by two satellites at once acts once, and both are answered', async () => {
  const { port, said } = await serving();
  const satellite = (id: string) => ({ conversation_id: id, satellite_id: id });
  const answers = await Promise.all([
    ask(port, words('It reads 104.', satellite('hall'))),
    ask(port, words('it reads 104', satellite('kitchen'))),
    // One that repeats itself, and one that comes late.
    ask(port, words('it reads 104', satellite('hall'))),
    new Promise((resolve) => setTimeout(resolve, 100)).then(() =>
      ask(port, words('it reads 104', satellite('landing'))),
    ),
  ]);
  expect(said.map((one) => one.text)).toHaveLength(1);
  for (const [answer] of answers as WyomingEvent[][])
    expect(answer).toMatchObject({
      type: 'handled',
      data: { text: expect.stringMatching(/^Heard/) },
    });
  await ask(port, words('it reads 105', satellite('hall')));
  expect(said).toHaveLength(2);
});

test('answers in pieces, when switched on, are the whole answer, which also comes', async () => {
  const { port } = await serving({ streaming: true });
  const [info, start, ...rest] = await ask(port, describe, words('next', { conversation_id: 'c' }));
  expect(info).toMatchObject({ data: { handle: [{ supports_handled_streaming: true }] } });
  expect(start).toEqual({ type: 'handled-start', data: { context: { conversation_id: 'c' } } });
  const chunks = rest.filter((one) => one.type === 'handled-chunk').map((one) => one.data.text);
  expect(chunks).toEqual(['Heard next. ', 'Now what?']);
  expect(rest.slice(chunks.length)).toEqual([
    { type: 'handled', data: { text: 'Heard next. Now what?', context: { conversation_id: 'c' } } },
    { type: 'handled-stop', data: {} },
  ]);
});

test('odd but lawful frames: no data, null data, a payload cut in two, unknown events, CRLF', async () => {
  const { port } = await serving();
  const unknown = Buffer.from(
    '{"type":"audio-start","data":null,"data_length":8,"payload_length":6}\n{"a": 1}',
  );
  const pieces = [
    Buffer.from('{"type":"voice-started","data":null}\r\n'),
    Buffer.concat([unknown, Buffer.from([0x7b, 0x0a])]),
    Buffer.from([0xff, 0x0a, 0x7d, 0x0a]),
    Buffer.from('\n{"type":"ping"}\n'),
    Buffer.from('{"type":"transcript"}\n'),
    Buffer.from('{"type":"transcript","data":{"text":"next"}}\n'),
  ];
  expect((await ask(port, ...pieces)).map((one) => one.type)).toEqual([
    'pong',
    'not-handled',
    'handled',
  ]);
});

test('what is asked before the noise begins is answered; what comes after it is not read', async () => {
  const { port, said } = await serving();
  const noise = Buffer.from('\0\0 what? \n');
  const answers = await ask(port, Buffer.concat([describe, words('next'), noise, words('done')]));
  expect(answers.map((one) => one.type)).toEqual(['info', 'handled']);
  expect(said.map((one) => one.text)).toEqual(['next']);
});

test('a household that fails is apologised for, not passed on', async () => {
  const { port, house } = await serving();
  house.household.say = () => Promise.reject(new Error('disk full'));
  const [answer] = await ask(port, words('next'));
  expect(answer?.type).toBe('handled');
  expect(answer?.data.text).toMatch(/say it again/);
  expect(answer?.data.text).not.toMatch(/disk/);
});

test('an address that was not let in gets nothing, and is told of once', async () => {
  const told: string[] = [];
  const { port, said } = await serving({
    peers: { allows: () => false },
    turnedAway: (address) => told.push(address),
  });
  expect([...(await ask(port, words('next'))), ...(await ask(port, describe))]).toEqual([]);
  expect([said, told]).toEqual([[], ['127.0.0.1']]);
});

test.each([
  [[], '127.0.0.1', true],
  [[], '::1', true],
  [[], '::ffff:127.0.0.1', true],
  [[], '192.168.1.20', false],
  [['192.168.1.20'], '192.168.1.20', true],
  [['192.168.1.20'], '::ffff:192.168.1.20', true],
  [['192.168.1.20'], '192.168.1.21', false],
  [['192.168.1.0/24', 'fd00::/8'], '192.168.1.255', true],
  [['192.168.1.0/24', 'fd00::/8'], '192.168.2.0', false],
  [['192.168.1.0/24', 'fd00::/8'], 'fd12::7', true],
  [['192.168.1.0/24', 'fd00::/8'], '2001:db8::7', false],
  [['192.168.1.20'], '', false],
] as const)('with %j let in, %s speaks: %s', (named, address, allowed) => {
  expect(peersOf(named)?.allows(address)).toBe(allowed);
});

test.each([
  'kitchen.local',
  '192.168.1.0/33',
  '192.168.1.0/',
  '::/129',
  '1.2.3',
  '1.2.3.4/8/9',
  '',
])('%j is no address', (named) => {
  expect(peersOf([named])).toBeUndefined();
});

test('one who says nothing, and one who says it too slowly, are let go', async () => {
  const { port } = await serving({ limits: { idleMilliseconds: 400, eventMilliseconds: 750 } });
  await talk(port, [], false).closed;
  const slow = talk(port, [], false);
  let sent = 0;
  const drip = setInterval(() => {
    sent += 1;
    slow.socket.write('{');
  }, 100);
  await slow.closed;
  clearInterval(drip);
  // Each byte came well inside the idle time; only the event as a whole was too long.
  expect(sent).toBeGreaterThan(3);
  const patient = talk(port, [describe], false);
  await until(() => patient.events().length === 1);
  patient.socket.destroy();
});

test('one who takes no answers, and one connection too many, are let go; others go on', async () => {
  const { port } = await serving({ limits: { connections: 2, unreadBytes: 32 * 1024 } });
  const deaf = connect(port, '127.0.0.1').on('error', () => undefined);
  deaf.pause();
  const gone = new Promise<void>((resolve) => deaf.on('close', () => resolve()));
  const many = Buffer.concat(Array.from({ length: 2_000 }, () => describe));
  const flood = setInterval(() => deaf.writable && deaf.write(many), 5);
  await gone;
  clearInterval(flood);
  const held = [talk(port, [describe], false), talk(port, [describe], false)];
  await until(() => held.every((one) => one.events().length === 1));
  const third = talk(port, [describe], false);
  await third.closed;
  expect(third.events()).toEqual([]);
  for (const one of held) one.socket.destroy();
  await Promise.all(held.map((one) => one.closed));
  expect(await ask(port, describe)).toHaveLength(1);
});
