/**
 * Announcements out to sinks over real sockets: a webhook, and the REST call of a home server as its
 * published developer documentation describes it (bearer token, POST /api/services/<domain>/<service>).
 */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, expect, test } from 'vitest';
import { houseSink } from '../../src/bridges/house/sink.ts';
import { webhookSink } from '../../src/bridges/webhook/sink.ts';
import { type Delivery, deliverTo, type Sink } from '../../src/household/deliver.ts';
import { dueNow, type FakeHouse, fakeHouse, until } from './fakes.ts';
import { type Answer, type Received, receiver } from './receiver.ts';

const ending: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of ending.splice(0)) await end();
});

async function delivering(house: FakeHouse, sink: Sink): Promise<Delivery> {
  const { household, clock } = house;
  const delivery = await deliverTo(sink, { household, ticks: clock.ticks });
  ending.push(() => delivery.close());
  return delivery;
}

async function receiving(answer: (request: Received, n: number) => Answer) {
  const one = await receiver(answer);
  ending.push(one.close);
  return one;
}

const ids = (received: readonly Received[]): unknown[] => received.map((one) => one.body.id);

test('a webhook gets each call once and in order, with what it needs to know', async () => {
  const house = await fakeHouse();
  const hook = await receiving(() => ({ status: 200 }));
  await delivering(house, webhookSink(new URL('hook/secret', hook.url)));
  const first = dueNow(house, 'a', { urgency: 'high' });
  await house.raise([first, dueNow(house, 'b')]);
  await until(() => hook.received.length === 2);
  expect(ids(hook.received)).toEqual(['a', 'b']);
  expect(hook.received[0]).toMatchObject({
    method: 'POST',
    path: '/hook/secret',
    headers: { 'content-type': 'application/json', 'idempotency-key': `"${house.dinner}/a"` },
    body: {
      dinner: house.dinner,
      kind: 'step-due',
      text: 'a',
      speech: 'a spoken',
      urgency: 'high',
      at: new Date(first.at).toISOString().replace(/\.\d+Z/, '+00:00'),
    },
  });
});

test.each([
  ['500', { status: 500 }],
  ['a redirect', { status: 302 }],
  ['a cut line', 'cut'],
] as const)(
  '%s is tried again until it arrives, and what follows waits its turn',
  async (_, bad) => {
    const house = await fakeHouse();
    const hook = await receiving((_request, n) => (n <= 2 ? bad : { status: 204 }));
    await delivering(house, webhookSink(hook.url));
    await house.raise([dueNow(house, 'a'), dueNow(house, 'b')]);
    await until(
      () => hook.received.length === 4,
      () => ids(hook.received),
    );
    expect(ids(hook.received)).toEqual(['a', 'a', 'a', 'b']);
    expect(hook.received.every((one) => one.path === '/')).toBe(true);
  },
);

test('a sink that hangs and one that refuses delay neither another sink nor the cook', async () => {
  const house = await fakeHouse();
  const hanging = await receiving(() => 'hang');
  const refusing = await receiving(() => ({ status: 200 }));
  await refusing.shut();
  const well = await receiving(() => ({ status: 200 }));
  for (const one of [hanging, refusing, well]) await delivering(house, webhookSink(one.url));
  await house.raise([dueNow(house, 'a'), dueNow(house, 'b')]);
  await until(() => well.received.length === 2 && hanging.received.length === 1);
  // The dinner hears and answers as ever.
  expect((await house.household.say({ text: 'next' })).replies).toHaveLength(1);
  expect(ids(well.received)).toEqual(['a', 'b']);
  await refusing.open();
  await until(() => refusing.received.length === 2);
  expect(ids(refusing.received)).toEqual(['a', 'b']);
});

test('a clock set on or back by an hour neither drops, repeats nor turns round what is waiting', async () => {
  for (const hour of [3_600_000, -3_600_000]) {
    const house = await fakeHouse();
    let bad = true;
    const hook = await receiving(() => (bad ? { status: 503 } : { status: 200 }));
    const delivery = await delivering(house, webhookSink(hook.url));
    await house.raise([
      dueNow(house, 'a'),
      dueNow(house, 'brief', { liveMilliseconds: 300 }),
      dueNow(house, 'b'),
    ]);
    await until(() => hook.received.length >= 1);
    house.clock.step(hour);
    await new Promise((resolve) => setTimeout(resolve, 350));
    bad = false;
    const before = hook.received.length;
    delivery.hurry();
    await until(
      () => ids(hook.received).includes('b'),
      () => ids(hook.received),
    );
    expect(ids(hook.received.slice(before))).toEqual(['a', 'b']);
  }
});

test('two addresses of one host are two sinks, and neither name tells the secret in it', () => {
  const names = ['one', 'two'].map(
    (id) => webhookSink(new URL(`http://house.invalid/api/webhook/${id}-secret`)).name,
  );
  expect(new Set(names).size).toBe(2);
  expect(names.join()).not.toMatch(/secret/);
  const house = (service: string) =>
    houseSink({ url: new URL('http://house.invalid'), token: 't0ken', service, data: {} }).name;
  expect(house('a.b')).not.toBe(house('a.c'));
  expect(house('a.b')).not.toMatch(/t0ken/);
});

/** The home server: who asks without the token is told so, and a satellite has a state. */
async function homeServer(states: string[] = [], calls: Answer[] = []) {
  return receiving(({ headers, method, path }) => {
    if (headers.authorization !== 'Bearer t0ken') return { status: 401 };
    if (method === 'GET' && path === '/house/api/states/assist_satellite.kitchen')
      return { status: 200, body: { state: states.shift() ?? 'idle' } };
    if (method === 'POST' && path.startsWith('/house/api/services/'))
      return calls.shift() ?? { status: 200 };
    return { status: 404 };
  });
}

const announcing = (url: URL, more: { token?: string; service?: string } = {}): Sink =>
  houseSink({
    url: new URL('house', url),
    token: more.token ?? 't0ken',
    service: more.service ?? 'assist_satellite.announce',
    data: { entity_id: 'assist_satellite.kitchen' },
  });

const spoken = (received: readonly Received[]): Received[] =>
  received.filter((one) => one.method === 'POST');

test('a home server is asked for the service, with the token, the entity and the words for ears', async () => {
  const house = await fakeHouse();
  const server = await homeServer();
  await delivering(house, announcing(server.url));
  await house.raise([dueNow(house, 'a')]);
  await until(() => spoken(server.received).length === 1);
  expect(spoken(server.received)[0]).toMatchObject({
    path: '/house/api/services/assist_satellite/announce',
    headers: { authorization: 'Bearer t0ken', 'content-type': 'application/json' },
    body: { entity_id: 'assist_satellite.kitchen', message: 'a spoken' },
  });
});

test('a message for a screen is the written one, and no satellite is asked', async () => {
  const house = await fakeHouse();
  const server = await homeServer();
  await delivering(house, announcing(server.url, { service: 'notify.phone' }));
  await house.raise([dueNow(house, 'a')]);
  await until(() => server.received.length === 1);
  expect(server.received[0]).toMatchObject({
    path: '/house/api/services/notify/phone',
    body: { message: 'a' },
  });
});

test('a satellite that talks with the cook is left alone, save for what is urgent', async () => {
  const house = await fakeHouse();
  const server = await homeServer(Array(50).fill('listening'));
  await delivering(house, announcing(server.url));
  await house.raise([dueNow(house, 'a'), dueNow(house, 'pull', { urgency: 'high' })]);
  await until(() => spoken(server.received).length === 1);
  expect(spoken(server.received)[0]?.body.message).toBe('pull spoken');
  const calm = await homeServer(['processing', 'idle']);
  await delivering(house, announcing(calm.url));
  await house.raise([dueNow(house, 'b')]);
  await until(() => spoken(calm.received).some((one) => one.body.message === 'b spoken'));
  expect(calm.received.filter((one) => one.method === 'GET').length).toBeGreaterThan(1);
});

test('401, 500, no answer for long and no server at all: nothing is lost, order holds', async () => {
  const house = await fakeHouse();
  const slow: Answer = { status: 200, afterMilliseconds: 700 };
  const server = await homeServer([], [{ status: 401 }, { status: 500 }, slow, 'cut']);
  await server.shut();
  const delivery = await delivering(house, announcing(server.url));
  await house.raise([dueNow(house, 'a'), dueNow(house, 'b')]);
  await server.open();
  while (spoken(server.received).length < 5) {
    delivery.hurry();
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  const messages = spoken(server.received).map((one) => one.body.message);
  expect(messages).toEqual(['a spoken', 'a spoken', 'a spoken', 'b spoken', 'b spoken']);
});

test('a server whose answers never end, or are no states, is still asked to speak, once', async () => {
  for (const state of ['{"state":', '[]', 'null', 'endless'] as const) {
    const spoken: string[] = [];
    const server = createServer((request, response) => {
      request.resume();
      if (request.method === 'POST') spoken.push(request.url ?? '');
      response.writeHead(200, { 'content-type': 'application/json' });
      if (request.method === 'GET' && state !== 'endless') return response.end(state);
      const more = setInterval(() => response.write('x'.repeat(65_536)), 1);
      response.on('close', () => clearInterval(more));
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    ending.push(() => {
      server.close();
      server.closeAllConnections();
    });
    const { port } = server.address() as AddressInfo;
    const house = await fakeHouse();
    await delivering(house, announcing(new URL(`http://127.0.0.1:${port}/`)));
    await house.raise([dueNow(house, 'a'), dueNow(house, 'b')]);
    await until(() => spoken.length === 2);
    expect(new Set(spoken)).toEqual(new Set(['/house/api/services/assist_satellite/announce']));
  }
});
