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
import { openPostgres, type PostgresStore } from '../../src/journal/postgres/open.ts';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import type { Journal } from '../../src/session/ports.ts';
import { postgresServer, type Server } from '../../test/postgres/server.ts';
import { calibration, line, quantile } from '../measure.ts';
import { type Process, started, stopped } from '../process.ts';
import { callsInOneMinute } from './calls.ts';
import { appendsASecond, openingMilliseconds } from './journals.ts';
import { roasts } from './roasts.ts';
import { type Route, Talk } from './talked.ts';

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
/** Each way is talked to in so many rounds. */
const rounds = 6;

const stores: PostgresStore[] = [];
const folders: string[] = [];
const folder = (): string => {
  const made = mkdtempSync(join(tmpdir(), 'bench-many-'));
  folders.push(made);
  return made;
};

/** A way of serving the dinners, and the journal in which its turns are looked for afterwards. */
interface Way {
  talk: Talk;
  /** The journal as it is when the servers have ended. */
  journal(): Promise<Journal>;
}

async function onSqlite(): Promise<Way> {
  const data = folder();
  const path = join(data, 'journal.sqlite');
  const journal = openSqliteJournal(path);
  const ids = await roasts(journal, dinners);
  await journal.close();
  const processes = [await started(['--data', data])];
  const talk = new Talk({ name: 'SQLite, one process', processes, ids, route: 'any' });
  return { talk, journal: async () => openSqliteJournal(path) };
}

async function onPostgres(
  server: Server,
  { name, count, route }: { name: string; count: number; route: Route },
): Promise<Way> {
  const url = await server.database();
  const open = async (): Promise<Journal> => {
    const store = await openPostgres({ url });
    stores.push(store);
    return store.journal('home');
  };
  const ids = await roasts(await open(), dinners);
  const processes: Process[] = [];
  for (let n = 0; n < count; n += 1)
    processes.push(await started(['--journal', url, '--data', folder()]));
  const database = server.pid();
  return { talk: new Talk({ name, processes, ids, route, database }), journal: open };
}

async function report({ talk, journal }: Way): Promise<void> {
  const { figures } = talk;
  for (const one of talk.evening.processes) await stopped(one);
  const kept = await journal();
  let [lost, doubled] = [0, 0];
  for (const [id, keys] of talk.answered) {
    const heard = (await kept.read(id)).flatMap((fact) =>
      fact.type === 'words-heard' && fact.key ? [fact.key] : [],
    );
    lost += keys.filter((key) => !heard.includes(key)).length;
    doubled += heard.length - new Set(heard).size;
  }
  line(
    `${talk.evening.name}: ${figures.turns} turns, ${figures.turnsASecond.toFixed(1)}/s, p50 ${figures.p50.toFixed(0)} ms, p99 ${figures.p99.toFixed(0)} ms; ` +
      `processor time a turn ${figures.serversMilliseconds.toFixed(1)} ms in the servers, ${figures.databaseMilliseconds.toFixed(1)} ms in the database; ` +
      `${figures.failed} failed, ${lost} lost, ${doubled} doubled; ${figures.megabytes.map((mb) => mb.toFixed(0)).join(' + ')} MB resident`,
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
  for (const kill of [false, true])
    line(await callsInOneMinute(await server.database(), { calls, kill, folder }));
  const ways = [
    await onSqlite(),
    await onPostgres(server, { name: 'PostgreSQL, one process', count: 1, route: 'any' }),
    await onPostgres(server, {
      name: 'PostgreSQL, three processes, a dinner keeps to one',
      count: 3,
      route: 'own',
    }),
    await onPostgres(server, {
      name: 'PostgreSQL, three processes, any turn at any',
      count: 3,
      route: 'any',
    }),
  ];
  for (const { talk } of ways) await talk.warm();
  // In turns, since what else this machine does changes from minute to minute.
  const loops: number[] = [];
  for (let round = 0; round < rounds; round += 1)
    for (const { talk } of ways) {
      loops.push(calibration());
      await talk.round(seconds / rounds);
    }
  line(
    `${dinners} open dinners; calibration loop between the rounds p50 ${quantile(loops, 0.5).toFixed(1)} ms, p90 ${quantile(loops, 0.9).toFixed(1)} ms`,
  );
  for (const way of ways) await report(way);
} finally {
  for (const store of stores) await store.close();
  await server.close();
  for (const one of folders) rmSync(one, { recursive: true, force: true });
}
