/** HTTP over a real socket. Problems follow RFC 9457; event streams the HTML standard, section 9.2. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { served } from './served.ts';

let house: Awaited<ReturnType<typeof served>>;
beforeAll(async () => {
  house = await served();
});
afterAll(() => house.close());

async function post(path: string, body: unknown) {
  const response = await fetch(house.base + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: typeof body === 'string' ? body : JSON.stringify(body),
  });
  return {
    status: response.status,
    type: response.headers.get('content-type'),
    body: (await response.json()) as Answer,
  };
}

interface Answer {
  id: string;
  detail: string;
  announcements: unknown[];
  view: { guests: number; serving: { wanted: string } };
}

/** Ids and names of the events that come within a moment. */
async function events(dinner: string, last?: number): Promise<string[]> {
  const stop = new AbortController();
  const response = await fetch(`${house.base}/api/dinners/${dinner}/stream`, {
    headers: last === undefined ? {} : { 'last-event-id': String(last) },
    signal: stop.signal,
  });
  let text = '';
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  while (!text.includes('event: view')) text += (await reader.read()).value ?? '';
  stop.abort();
  return [...text.matchAll(/id: (-?\d+)\nevent: (\w+)/g)].map((m) => `${m[1]} ${m[2]}`);
}

test('a dinner is opened, told, moved on, and read again from any position', async () => {
  const opened = await post('/api/dinners', { at: '2026-12-19T13:30:00-06:00' });
  expect(opened.status).toBe(201);
  const { id } = opened.body;
  const words = {
    text: 'seven pound three bone rib roast, dinner at seven for six, medium rare',
    key: 'k1',
  };
  const first = await post(`/api/dinners/${id}/say`, words);
  expect(first.status).toBe(200);
  expect(first.body.view.guests).toBe(6);
  expect(first.body.view.serving.wanted).toBe('2026-12-19T19:00:00-06:00');
  expect((await post(`/api/dinners/${id}/say`, words)).body).toEqual(first.body);

  const moved = await post(`/api/dinners/${id}/clock`, { at: '2026-12-19T17:00:00-06:00' });
  expect(moved.body.announcements.length).toBeGreaterThan(0);
  const back = await post(`/api/dinners/${id}/clock`, { at: '2026-12-19T16:00:00-06:00' });
  expect([back.status, back.type]).toEqual([409, 'application/problem+json; charset=utf-8']);

  const all = await events(id, -1);
  expect(all.filter((one) => one.endsWith('announcement'))).toHaveLength(
    moved.body.announcements.length,
  );
  expect(all.filter((one) => one.endsWith('turn'))).toHaveLength(1);
  const middle = Number(all[1]!.split(' ')[0]);
  expect(await events(id, middle)).toEqual(all.slice(2));

  const log = await (await fetch(`${house.base}/api/dinners/${id}/log`)).text();
  const positions = log
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line).position);
  expect(positions).toEqual(positions.map((_, index) => index));
});

test.each([
  [422, '/api/say', { text: 'next', bogus: 1 }, /bogus/],
  [422, '/api/say', {}, /text/],
  [400, '/api/say', '{"text"', /JSON/],
  [404, '/api/dinners/none/say', { text: 'next' }, /none/],
  [413, '/api/say', { text: 'x'.repeat(300_000) }, /./],
] as const)('%i for what %s cannot take', async (status, path, body, detail) => {
  const answer = await post(path, body);
  expect(answer.status).toBe(status);
  expect(answer.type).toContain('application/problem+json');
  expect(answer.body.detail).toMatch(detail);
});

test('a page of another site is refused', async () => {
  const response = await fetch(`${house.base}/healthz`, {
    headers: { origin: 'http://a.invalid' },
  });
  expect(response.status).toBe(403);
});
