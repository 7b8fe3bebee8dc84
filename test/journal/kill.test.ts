import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { expect, it } from 'vitest';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';

/** Runs the appending process until it has acknowledged so many, then kills it; gives the last. */
function acknowledgedUntilKilled(path: string, appends: number): Promise<number> {
  const child = spawn(
    process.execPath,
    ['--import', 'tsx', join(import.meta.dirname, 'append-forever.ts'), path],
    { stdio: ['ignore', 'pipe', 'inherit'] },
  );
  let output = '';
  child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
    output += chunk;
    if (output.split('\n').length > appends) child.kill('SIGKILL');
  });
  return new Promise((resolve, reject) => {
    child.on('close', (_code, signal) => {
      if (signal !== 'SIGKILL') reject(new Error(`ended by itself: ${signal}`));
      // The last piece may be half a line: only whole lines were acknowledged.
      resolve(Number(output.slice(0, output.lastIndexOf('\n')).split('\n').at(-1)));
    });
  });
}

it('has every acknowledged fact after kill -9, whole transactions only', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'journal-'));
  const path = join(folder, 'journal.sqlite');
  for (const appends of [1, 7, 40]) {
    const acknowledged = await acknowledgedUntilKilled(path, appends);
    const journal = openSqliteJournal(path);
    const facts = await journal.read('a');
    expect(acknowledged).toBeGreaterThan(0);
    expect(facts.length).toBeGreaterThanOrEqual(acknowledged);
    expect(facts.length % 2).toBe(0);
    expect(facts.map((fact) => fact.position)).toEqual(facts.map((_, index) => index));
    await journal.close();
    const database = new Database(path);
    expect(database.pragma('integrity_check', { simple: true })).toBe('ok');
    database.close();
  }
  rmSync(folder, { recursive: true });
});
