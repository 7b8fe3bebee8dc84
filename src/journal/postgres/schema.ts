/** The tables in PostgreSQL, as steps forward, applied once whoever comes first. */
import type { PoolClient } from 'pg';
import { JournalTrouble } from '../trouble.ts';
import { type Database, unreachable } from './database.ts';

/** Each entry takes the database from its index to the next version. Entries are never edited. */
const migrations: readonly string[] = [
  `CREATE TABLE dinners (
     household text     NOT NULL,
     dinner    text     NOT NULL,
     opened_at bigint   NOT NULL,
     last_at   bigint   NOT NULL,
     held      integer  NOT NULL,
     due_at    bigint,
     tries     smallint NOT NULL DEFAULT 0,
     PRIMARY KEY (household, dinner)
   ) WITH (fillfactor = 70);
   CREATE INDEX dinners_due ON dinners (due_at) WHERE due_at IS NOT NULL AND tries < 5;
   CREATE TABLE facts (
     household text    NOT NULL,
     dinner    text    NOT NULL,
     position  integer NOT NULL,
     at        bigint  NOT NULL,
     type      text    NOT NULL,
     v         integer NOT NULL,
     turn      uuid    NOT NULL,
     body      text    NOT NULL,
     PRIMARY KEY (household, dinner, position),
     FOREIGN KEY (household, dinner) REFERENCES dinners ON DELETE CASCADE
   );
   CREATE TABLE sendings (
     household    text   NOT NULL,
     dinner       text   NOT NULL,
     announcement text   NOT NULL,
     sink         text   NOT NULL,
     holder       uuid   NOT NULL,
     until        bigint NOT NULL,
     PRIMARY KEY (household, dinner, announcement, sink),
     FOREIGN KEY (household, dinner) REFERENCES dinners ON DELETE CASCADE
   );
   CREATE TABLE records (
     shelf text NOT NULL,
     name  text NOT NULL,
     body  text NOT NULL,
     PRIMARY KEY (shelf, name)
   );
   CREATE TABLE room (
     one   integer PRIMARY KEY CHECK (one = 1),
     bytes bytea   NOT NULL
   );
   CREATE FUNCTION now_milliseconds() RETURNS bigint LANGUAGE sql VOLATILE
     AS 'SELECT floor(extract(epoch FROM clock_timestamp()) * 1000)::bigint'`,
];

export const schemaVersion = migrations.length;

/** Any number, as long as it is this one wherever the tables are made. */
const lockOfMigrations = 7_320_415;

/** Brings a database up to today's tables. Throws JournalTrouble when it is ahead of us. */
export async function migrate(database: Database): Promise<void> {
  await database.connected(async (client) => {
    try {
      if ((await versionOf(client)) !== schemaVersion) await step(client);
    } catch (error) {
      if (error instanceof JournalTrouble) throw error;
      throw unreachable(database.options.url, error);
    }
  });
}

async function step(client: PoolClient): Promise<void> {
  await client.query('BEGIN');
  try {
    await client.query('SELECT pg_advisory_xact_lock($1)', [lockOfMigrations]);
    await client.query('CREATE TABLE IF NOT EXISTS tables_version (version integer NOT NULL)');
    // Read again under the lock: another process may have been quicker.
    const version = await versionOf(client);
    if (version > schemaVersion)
      throw new JournalTrouble(
        'newer-journal',
        `The journal was written by a newer version (tables ${version}, this one knows up to ${schemaVersion}); update roastcall or choose another database with --journal, nothing was changed.`,
      );
    for (const one of migrations.slice(version)) await client.query(one);
    await client.query('DELETE FROM tables_version');
    await client.query('INSERT INTO tables_version VALUES ($1)', [schemaVersion]);
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK').catch(() => undefined);
    throw error;
  }
}

async function versionOf(client: PoolClient): Promise<number> {
  const there = await client.query("SELECT to_regclass('tables_version') IS NOT NULL AS there");
  if (!there.rows[0]?.there) return 0;
  const { rows } = await client.query<{ version: number }>('SELECT version FROM tables_version');
  return rows[0]?.version ?? 0;
}
