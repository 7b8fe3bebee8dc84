/** Households moved between a folder and a database, exported, and erased to the last row. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Journal } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';
import { cards, opening } from '../harness/day.ts';
import { ran } from '../main/ran.ts';
import { atTheEnd, freshDatabase, openStore } from './fresh.ts';
import { asked } from './server.ts';

const noon = Date.parse('2026-12-19T18:00:00Z');

function freshFolder(): string {
  const made = mkdtempSync(join(tmpdir(), 'moving-'));
  atTheEnd(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

async function cooked(journal: Journal, dinner: string): Promise<void> {
  const session = await openSession({ dinner, journal, compute: inThisThread, cards, opening });
  const say = (text: string, minutes: number) =>
    session.hear({ text, at: noon + minutes * 60_000 });
  await say('seven pound three bone rib roast, dinner at seven for six, medium rare', 0);
  await say('set a timer for ten minutes', 1);
  await say('two more are coming', 20);
}

test('dinners go to a database and back, fact for fact, also when a copy was cut off in the middle', async () => {
  const [data, back] = [freshFolder(), freshFolder()];
  const url = await freshDatabase();
  await ran(['household', 'set', 'harbour', '--temperature', 'C', '--data', data]);
  const token = (await ran(['token', 'make', '--household', 'harbour', '--data', data])).out.trim();
  const sources = [data, join(data, 'households', 'harbour')].map((one) =>
    join(one, 'journal.sqlite'),
  );
  for (const [n, path] of sources.entries()) {
    const journal = openSqliteJournal(path);
    await cooked(journal, `supper-${n}`);
    await cooked(journal, 'feast');
    await journal.close();
  }
  // Half of one dinner is there from a copy that was cut off.
  const store = await openStore(url);
  const source = openSqliteJournal(sources[0] ?? '');
  const [first] = await source.read('feast');
  const { dinner: _, position: __, at, v: ___, ...fact } = first ?? expect.fail('no fact');
  await store.journal('home').append('feast', 0, at, [fact as never]);
  const there = await ran(['journal', 'copy', data, url]);
  expect([there.code, there.err]).toEqual([0, '']);
  expect(there.out).toMatch(/^home: 2 dinners.*\nharbour: 2 dinners/);
  expect((await ran(['journal', 'copy', url, back])).code).toBe(0);
  for (const path of sources) {
    const [before, after] = [openSqliteJournal(path), openSqliteJournal(path.replace(data, back))];
    expect(await after.dinners()).toEqual(await before.dinners());
    for (const { id } of await before.dinners())
      expect(await after.read(id)).toEqual(await before.read(id));
    await before.close();
    await after.close();
  }
  await source.close();
  expect((await ran(['token', 'list', '--journal', url])).out).toContain('harbour');
  expect(token).toMatch(/\./);
  // Again: nothing to do. Another dinner of that name: refused, and left as it was.
  expect((await ran(['journal', 'copy', data, url])).out).toMatch(/^home: 2 dinners, 0 facts/);
  const other = freshFolder();
  const journal = openSqliteJournal(join(other, 'journal.sqlite'));
  await journal.append('feast', 0, noon, [{ type: 'talk-paused' }]);
  await journal.close();
  const refused = await ran(['journal', 'copy', data, other]);
  expect([refused.code, refused.err]).toEqual([1, expect.stringMatching(/Another dinner feast/)]);
});

/** Every row of every table in which the text stands anywhere. */
async function rowsWith(url: string, text: string): Promise<unknown[]> {
  const tables = await asked(
    url,
    `SELECT table_name AS name FROM information_schema.tables WHERE table_schema = 'public'`,
  );
  const found: unknown[] = [];
  for (const { name } of tables)
    found.push(
      ...(await asked(url, `SELECT * FROM ${name} AS one WHERE one::text LIKE $1`, [`%${text}%`])),
    );
  return found;
}

test('a household is exported whole, and erased so that no row knows of it; the others keep theirs', async () => {
  const url = await freshDatabase();
  const at = ['--journal', url];
  const store = await openStore(url);
  for (const name of ['harbour', 'club']) {
    await ran(['household', 'set', name, ...at]);
    await ran(['token', 'make', '--household', name, ...at]);
    await cooked(store.journal(name), `${name}-supper`);
  }
  await ran(['pair', 'http://127.0.0.1:1', '--household', 'harbour', ...at]);
  await store.agenda('harbour').claim({ dinner: 'harbour-supper', announcement: 'x', sink: 'y' });
  const exported = (await ran(['household', 'export', 'harbour', ...at])).out.trim().split('\n');
  const lines = exported.map((one) => JSON.parse(one) as { type?: string; token?: object });
  expect(lines[0]).toEqual({ household: 'harbour', settings: {} });
  expect(lines.filter(({ token }) => token)).toHaveLength(1);
  expect(lines.filter(({ type }) => type)).toEqual(
    await store.journal('harbour').read('harbour-supper'),
  );
  const club = await rowsWith(url, 'club');
  expect(await rowsWith(url, 'harbour')).not.toEqual([]);
  const asks = await ran(['household', 'erase', 'harbour', ...at]);
  expect([asks.code, asks.err]).toEqual([2, expect.stringMatching(/1 dinners of harbour.*--sure/)]);
  expect((await ran(['household', 'erase', 'harbour', '--sure', ...at])).code).toBe(0);
  expect(await rowsWith(url, 'harbour')).toEqual([]);
  expect(await rowsWith(url, 'club')).toEqual(club);
  const gone = await ran(['household', 'export', 'harbour', ...at]);
  expect([gone.code, gone.err]).toEqual([
    1,
    expect.stringMatching(/There is no household "harbour"/),
  ]);
});

test('erased from a folder a household leaves nothing there either', async () => {
  const data = freshFolder();
  const at = ['--data', data];
  await ran(['household', 'set', 'harbour', ...at]);
  await ran(['token', 'make', '--household', 'harbour', ...at]);
  const journal = openSqliteJournal(join(data, 'households', 'harbour', 'journal.sqlite'));
  await cooked(journal, 'supper');
  await journal.close();
  expect((await ran(['household', 'erase', 'harbour', '--sure', ...at])).out).toMatch(/1 dinners/);
  expect(readdirSync(join(data, 'households'))).toEqual([]);
  expect(readdirSync(join(data, 'tokens'))).toEqual([]);
});
