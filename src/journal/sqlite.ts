/**
 * The journal on disk: one SQLite file, append-only, one transaction a turn. It may know the shape
 * of facts and nothing of what they mean. What was acknowledged is there after a power cut: the
 * write-ahead log is synced at every commit (synchronous=FULL).
 */
import Database from 'better-sqlite3';
import { type Journal, type ListedDinner, NotWritable } from '../session/ports.ts';
import { expectGapless, newestFirst, placed } from './memory.ts';
import { factOf, type Row } from './record.ts';
import { migrate } from './schema.ts';
import { JournalTrouble } from './trouble.ts';

/** Longest wait for another process's write, in milliseconds. */
const busyMilliseconds = 5_000;
/** How often a follower looks whether somebody else has written. */
const lookMilliseconds = 500;

/** Opens the file, making it if there is none. Throws JournalTrouble when it cannot be used. */
export function openSqliteJournal(path: string): Journal {
  const database = openFile(path);
  const count = database
    .prepare<[string], number>('SELECT coalesce(max(position) + 1, 0) FROM facts WHERE dinner = ?')
    .pluck();
  const insert = database.prepare<[Row]>(
    'INSERT INTO facts VALUES (@dinner, @position, @at, @type, @v, @body)',
  );
  const select = database.prepare<[string, number], Row>(
    'SELECT * FROM facts WHERE dinner = ? AND position >= ? ORDER BY position',
  );
  const listed = `SELECT first.dinner AS id, first.at AS openedAt,
            (SELECT max(at) FROM facts WHERE dinner = first.dinner) AS lastAt
       FROM facts AS first WHERE first.position = 0`;
  const list = database.prepare<[], ListedDinner>(listed);
  const listOne = database.prepare<[string], ListedDinner>(`${listed} AND first.dinner = ?`);
  const write = database.transaction((dinner: string, expected: number, rows: readonly Row[]) => {
    expectGapless(dinner, expected, count.get(dinner) ?? 0);
    for (const row of rows) insert.run(row);
  });
  const room = database.prepare('INSERT OR REPLACE INTO room VALUES (1, randomblob(32768))');
  return {
    async append(dinner, expected, at, facts) {
      const added = placed(dinner, expected, at, facts);
      const rows = added.map((fact) => fact.row);
      written(() => write.immediate(dinner, expected, rows));
      return added.map((fact) => fact.fact);
    },
    async read(dinner, from = 0) {
      return select.all(dinner, from).map((row) => factOf(row));
    },
    async dinners() {
      return list.all().sort(newestFirst);
    },
    find: async (dinner) => listOne.get(dinner),
    follow(told) {
      // The file's data version changes when another connection has written, and only then.
      const version = (): unknown => database.pragma('data_version', { simple: true });
      let seen = version();
      const timer = setInterval(() => {
        const now = database.open ? version() : seen;
        if (now === seen) return;
        seen = now;
        told(undefined);
      }, lookMilliseconds);
      timer.unref();
      return () => clearInterval(timer);
    },
    async writable() {
      written(() => room.run());
    },
    async close() {
      database.close();
    },
  };
}

/** What SQLite cannot write now it may write later; the transaction is undone. */
function written(work: () => unknown): void {
  try {
    work();
  } catch (error) {
    if (error instanceof Database.SqliteError) throw new NotWritable(error.message);
    throw error;
  }
}

function openFile(path: string): Database.Database {
  let database: Database.Database | undefined;
  try {
    database = new Database(path, { timeout: busyMilliseconds });
    database.pragma('journal_mode = WAL');
    database.pragma('synchronous = FULL');
    migrate(database);
    return database;
  } catch (error) {
    database?.close();
    if (error instanceof JournalTrouble) throw error;
    const why = error instanceof Error ? error.message : String(error);
    throw new JournalTrouble(
      'unreachable',
      `The journal ${path} cannot be used (${why}); check the folder or choose another with --data.`,
    );
  }
}
