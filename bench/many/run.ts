/**
 * Many dinners over several processes on a real PostgreSQL server, beside one process on SQLite, under
 * load from this process: turns a second and their latencies, whether every turn that was answered is
 * in the log once, and how late calls come, also when a process is killed in the middle of it.
 *
 * npm run build && npm run bench:many [-- --dinners 1000 --seconds 30 --calls 2000]
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { openPostgres } from '../../src/journal/postgres/open.ts';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import type { Journal } from '../../src/session/ports.ts';
import { postgresServer, type Server } from '../../test/postgres/server.ts';
import { callsInOneMinute } from './calls.ts';
import { appendsASecond, openingMilliseconds } from './journals.ts';
import { type Process, started, stopped } from './process.ts';
import { roasts } from './roasts.ts';
import { calibration, line } from './say.ts';
import { talked } from './talked.ts';

const { values } = parseArgs({
  options: {
    dinners: { type: 'string', default: '1000' },
    seconds: { type: 'string', default: '30' },
    calls: { type: 'string', default: '2000' },
  },
});
const dinners = Number(values.dinners);
const seconds = Number(values.seconds);
const calls = Number(values.calls);

const folders: string[] = [];
const folder = (): string => {
  const made = mkdtempSync(join(tmpdir(), 'bench-many-'));
  folders.push(made);
  return made;
};

async function onSqlite(): Promise<void> {
  const data = folder();
  const journal = openSqliteJournal(join(data, 'journal.sqlite'));
  const ids = await roasts(journal, dinners);
  await journal.close();
  const process = await started(['--data', data]);
  const figures = await talked({ processes: [process], ids, seconds, route: 'any' });
  await stopped(process);
  const after = openSqliteJournal(join(data, 'journal.sqlite'));
  await report('SQLite, one process', figures, after);
  await after.close();
}

async function onPostgres(server: Server, count: number, route: 'any' | 'own'): Promise<void> {
  const url = await server.database();
  const store = await openPostgres({ url });
  const journal = store.journal('home');
  const ids = await roasts(journal, dinners);
  const processes: Process[] = [];
  for (let n = 0; n < count; n += 1)
    processes.push(await started(['--journal', url, '--data', folder()]));
  const figures = await talked({ processes, ids, seconds, route });
  const where =
    count === 1 ? '' : route === 'any' ? ', any dinner at any' : ', a dinner keeps to one';
  await report(
    `PostgreSQL, ${count === 1 ? 'one process' : `${count} processes`}${where}`,
    figures,
    journal,
  );
  for (const one of processes) await stopped(one);
  await store.close();
}

async function report(
  name: string,
  figures: Awaited<ReturnType<typeof talked>>,
  journal: Journal,
): Promise<void> {
  let [lost, doubled] = [0, 0];
  for (const [id, keys] of figures.answered) {
    const heard = (await journal.read(id)).flatMap((fact) =>
      fact.type === 'words-heard' && fact.key ? [fact.key] : [],
    );
    lost += keys.filter((key) => !heard.includes(key)).length;
    doubled += heard.length - new Set(heard).size;
  }
  line(
    `${name}: ${(figures.turns / seconds).toFixed(1)} turns/s, p50 ${figures.p50.toFixed(0)} ms, p99 ${figures.p99.toFixed(0)} ms, ` +
      `${figures.failed} failed, ${lost} lost, ${doubled} doubled; ${figures.megabytes.map((mb) => mb.toFixed(0)).join(' + ')} MB resident; ` +
      `calibration loop p50 ${figures.calibration.toFixed(1)} ms`,
  );
}

line(`calibration loop alone: ${calibration().toFixed(1)} ms`);
const server = await postgresServer();
try {
  const url = await server.database();
  const store = await openPostgres({ url, connectionsAtMost: 16 });
  const sqlite = openSqliteJournal(join(folder(), 'journal.sqlite'));
  for (const [name, journal] of [
    ['SQLite', sqlite],
    ['PostgreSQL', store.journal('home')],
  ] as const) {
    const { alone, together } = await appendsASecond(journal);
    line(
      `${name}: an append of 8 facts p50 ${alone.p50.toFixed(2)} ms, p99 ${alone.p99.toFixed(2)} ms alone; ${together.toFixed(0)} appends/s from 16 at once`,
    );
    const { facts, readMilliseconds, viewMilliseconds } = await openingMilliseconds(journal);
    line(
      `${name}: a dinner of ${facts} facts is read in ${readMilliseconds.toFixed(0)} ms, and its first view takes ${viewMilliseconds.toFixed(0)} ms more`,
    );
  }
  await sqlite.close();
  await store.close();
  await onSqlite();
  await onPostgres(server, 1, 'any');
  await onPostgres(server, 3, 'own');
  await onPostgres(server, 3, 'any');
  for (const kill of [false, true])
    line(await callsInOneMinute(await server.database(), { calls, kill, folder }));
} finally {
  await server.close();
  for (const one of folders) rmSync(one, { recursive: true, force: true });
}
