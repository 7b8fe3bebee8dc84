/** `roastcall serve --journal postgres://…` as processes of their own, side by side. */
import type { ChildProcessWithoutNullStreams } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ended, printed, start } from '../main/program.ts';
import { atTheEnd, freshDatabase, openStore } from './fresh.ts';
import { announcedIn, dinnerWithTimer } from './processes.ts';

const fiveMinutes = 300_000;

interface Served {
  base: string;
  child: ChildProcessWithoutNullStreams;
}

/** A server whose own clock may be set wrong. */
async function serve(url: string, clockAhead = 0): Promise<Served> {
  const data = mkdtempSync(join(tmpdir(), 'many-'));
  const wrong = `const real = Date.now; Date.now = () => real() + ${clockAhead};`;
  const child = start(['serve', '--journal', url, '--data', data, '--port', '0'], {
    env: { NODE_OPTIONS: `--import=data:text/javascript,${encodeURIComponent(wrong)}` },
  });
  atTheEnd(async () => {
    if (child.exitCode === null && child.signalCode === null) {
      child.kill('SIGKILL');
      await new Promise((resolve) => child.once('close', resolve));
    }
    rmSync(data, { recursive: true, force: true });
  });
  const out = await printed(child, /Listening on \S+\n/);
  return { child, base: /Listening on (\S+)/.exec(out)?.[1] ?? '' };
}

async function say(base: string, body: object, dinner?: string) {
  const path = dinner === undefined ? '/api/say' : `/api/dinners/${dinner}/say`;
  const response = await fetch(base + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });
  const { view } = (await response.json()) as { view: { id: string; at: string; guests?: number } };
  return { status: response.status, view };
}

/** The events of a dinner's stream with when each came, until the test is over. */
async function streamOf(base: string, dinner: string) {
  const stop = new AbortController();
  atTheEnd(() => stop.abort());
  const events: { name: string; data: string; cameAt: number }[] = [];
  const response = await fetch(`${base}/api/dinners/${dinner}/stream`, { signal: stop.signal });
  void (async () => {
    let text = '';
    const decoder = new TextDecoder();
    for await (const part of response.body ?? []) {
      text += decoder.decode(part, { stream: true });
      for (let end = text.indexOf('\n\n'); end !== -1; end = text.indexOf('\n\n')) {
        const [, name = '', data = ''] =
          /^event: (\S+)\ndata: (.*)$/m.exec(text.slice(0, end)) ?? [];
        text = text.slice(end + 2);
        if (name !== '') events.push({ name, data, cameAt: Date.now() });
      }
    }
  })().catch(() => undefined);
  await expect.poll(() => events.length, { timeout: 20_000 }).toBeGreaterThan(0);
  return events;
}

test('two servers side by side: what is said at one is on the page of the other within a second', async () => {
  const url = await freshDatabase();
  const [one, two] = [await serve(url), await serve(url)];
  const { view } = await say(one.base, {
    text: 'seven pound three bone rib roast, dinner at seven for six, medium rare',
  });
  const page = await streamOf(two.base, view.id);
  const before = page.length;
  expect((await say(one.base, { text: 'two more are coming' })).view.guests).toBe(8);
  const answered = Date.now();
  const turn = () => page.slice(before).find(({ name }) => name === 'turn');
  await expect.poll(turn, { timeout: 5_000, interval: 10 }).toBeDefined();
  expect(turn()?.data).toContain('two more are coming');
  expect((turn()?.cameAt ?? 0) - answered).toBeLessThan(1_000);
  expect((await say(two.base, { text: 'one more is coming' })).view).toMatchObject({
    id: view.id,
    guests: 9,
  });
});

test('clocks ten minutes apart keep the time of the database, and calls come when they are due', async () => {
  const url = await freshDatabase();
  const [ahead, behind] = [await serve(url, fiveMinutes), await serve(url, -fiveMinutes)];
  const store = await openStore(url);
  const journal = store.journal('home');
  for (const { base } of [ahead, behind]) {
    const { view } = await say(base, { text: 'what is next' });
    expect(Math.abs(Date.parse(view.at) - store.now())).toBeLessThan(3_000);
  }
  await dinnerWithTimer(journal, 'eggs', store.now(), 6_000);
  const pages = [await streamOf(ahead.base, 'eggs'), await streamOf(behind.base, 'eggs')];
  const calls = () =>
    pages.map((page) => page.filter(({ name }) => name === 'announcement').length);
  await expect.poll(calls, { timeout: 15_000 }).toEqual([1, 1]);
  const facts = await journal.read('eggs');
  const [call] = announcedIn(facts);
  // The database's clock is this machine's.
  for (const page of pages)
    for (const { cameAt } of page.filter(({ name }) => name === 'announcement')) {
      expect(cameAt - (call?.dueAt ?? 0)).toBeGreaterThan(-100);
      expect(cameAt - (call?.dueAt ?? 0)).toBeLessThan(3_000);
    }
  expect(facts.some(({ type }) => type === 'clock-jumped')).toBe(false);
});

test('one of two killed while calls fall due: each comes once, none later than ten seconds', async () => {
  const url = await freshDatabase();
  const [one] = [await serve(url), await serve(url)];
  const store = await openStore(url);
  const journal = store.journal('home');
  const ids = Array.from({ length: 40 }, (_, n) => `supper-${n}`);
  for (const [n, id] of ids.entries())
    await dinnerWithTimer(journal, id, store.now(), 5_000 + n * 100);
  const calledAt = new Map<string, number>();
  journal.follow((change) => {
    // Two facts open such a dinner, the third is the call.
    if (change && change.held > 2 && !calledAt.has(change.dinner))
      calledAt.set(change.dinner, store.now());
  });
  const announced = async () =>
    (await Promise.all(ids.map((id) => journal.read(id)))).map(announcedIn);
  const count = async () => (await announced()).flat().length;
  await expect.poll(count, { timeout: 30_000, interval: 50 }).toBeGreaterThan(8);
  one.child.kill('SIGKILL');
  await expect.poll(count, { timeout: 30_000, interval: 100 }).toBe(40);
  // What is written is heard of a moment later.
  await expect.poll(() => calledAt.size, { timeout: 5_000, interval: 50 }).toBe(40);
  const all = await announced();
  expect(all.every((calls) => calls.length === 1)).toBe(true);
  const late = all.flat().map(({ dinner, dueAt }) => (calledAt.get(dinner) ?? Number.NaN) - dueAt);
  expect(Math.max(...late)).toBeLessThan(10_000);
  expect(Math.min(...late)).toBeGreaterThan(-100);
});

test('what cannot be a journal is refused in one sentence', async () => {
  const address = await ended(['serve', '--journal', 'mysql://x/y', '--port', '0']);
  expect([address.code, address.err]).toEqual([2, expect.stringMatching(/^--journal wants .*\n$/)]);
  const nobody = await ended(['log', 'a', '--journal', 'postgres://127.0.0.1:1/none']);
  expect([nobody.code, nobody.err]).toEqual([1, expect.stringMatching(/cannot be used.*\n$/)]);
});
