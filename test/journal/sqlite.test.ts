import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { takeLock } from '../../src/journal/lock.ts';
import { schemaVersion } from '../../src/journal/schema.ts';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import { JournalTrouble } from '../../src/journal/trouble.ts';

let folder: string;
let path: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'journal-'));
  path = join(folder, 'journal.sqlite');
});
afterEach(() => rmSync(folder, { recursive: true }));

/** Writes a row past the journal, as another version of the program might have. */
async function rowOf(change: { type?: string; v?: number; body?: string }): Promise<void> {
  const journal = openSqliteJournal(path);
  await journal.append('a', 0, 1, [{ type: 'guests-counted', count: 6 }]);
  await journal.close();
  const database = new Database(path);
  for (const [column, value] of Object.entries(change))
    database.prepare(`UPDATE facts SET ${column} = ?`).run(value);
  database.close();
}

const trouble = async (): Promise<JournalTrouble> => {
  const journal = openSqliteJournal(path);
  const error = await journal.read('a').catch((thrown: unknown) => thrown);
  await journal.close();
  expect(error).toBeInstanceOf(JournalTrouble);
  return error as JournalTrouble;
};

describe('what this version cannot understand', () => {
  it('names the place and the kind of a fact of a newer version', async () => {
    await rowOf({ v: 99 });
    const error = await trouble();
    expect(error.kind).toBe('newer-fact');
    expect(error.message).toMatch(/Fact 0 of dinner a .*newer version.*nothing was changed\.$/);
  });

  it('names a type it does not know', async () => {
    await rowOf({ type: 'guests-sang' });
    expect((await trouble()).kind).toBe('unknown-fact');
  });

  it.each(['{"count":"six"}', '{"count":6,"mood":"fine"}', '{}', '{"count":', 'null'])(
    'names a body that is broken: %s',
    async (body) => {
      await rowOf({ body });
      expect((await trouble()).kind).toBe('broken-fact');
    },
  );

  it('refuses a file with newer tables, and leaves it as it was', async () => {
    await rowOf({});
    const database = new Database(path);
    database.pragma(`user_version = ${schemaVersion + 1}`);
    database.close();
    expect(() => openSqliteJournal(path)).toThrow(/newer version.*update roastcall/);
    const after = new Database(path);
    expect(after.pragma('user_version', { simple: true })).toBe(schemaVersion + 1);
    expect(after.prepare('SELECT count(*) FROM facts').pluck().get()).toBe(1);
    after.close();
  });

  it('refuses a path it cannot open, in one sentence', () => {
    expect(() => openSqliteJournal(join(folder, 'no', 'such', 'folder'))).toThrow(/cannot be used/);
  });
});

describe('how the file is kept', () => {
  it('writes ahead into a log and stamps the file with the version of its tables', async () => {
    const journal = openSqliteJournal(path);
    await journal.append('a', 0, 1, [{ type: 'guests-counted', count: 6 }]);
    const database = new Database(path);
    expect(database.pragma('journal_mode', { simple: true })).toBe('wal');
    expect(database.pragma('user_version', { simple: true })).toBe(schemaVersion);
    database.close();
    await journal.close();
  });

  it('is shared by two openings: what one wrote takes the place from the other', async () => {
    const [one, two] = [openSqliteJournal(path), openSqliteJournal(path)];
    await one.append('a', 0, 1, [{ type: 'guests-counted', count: 6 }]);
    await expect(two.append('a', 0, 1, [{ type: 'guests-counted', count: 7 }])).rejects.toThrow(
      /taken/,
    );
    expect(await two.read('a')).toHaveLength(1);
    await one.close();
    await two.close();
  });

  it('locks a dinner against a second process and lets go on release', () => {
    const lock = takeLock(join(folder, 'a.lock'));
    expect(lock).toBeDefined();
    expect(takeLock(join(folder, 'a.lock'))).toBeUndefined();
    expect(takeLock(join(folder, 'b.lock'))).toBeDefined();
    lock?.release();
    expect(takeLock(join(folder, 'a.lock'))).toBeDefined();
  });
});
