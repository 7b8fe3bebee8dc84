/** The tables of the SQLite journal, as steps forward; the file's user_version counts them. */
import type { Database } from 'better-sqlite3';
import { JournalTrouble } from './trouble.ts';

/** Each entry takes the file from its index to the next version. Entries are never edited. */
const migrations: readonly string[] = [
  `CREATE TABLE facts (
     dinner   TEXT    NOT NULL,
     position INTEGER NOT NULL,
     at       INTEGER NOT NULL,
     type     TEXT    NOT NULL,
     v        INTEGER NOT NULL,
     body     TEXT    NOT NULL,
     PRIMARY KEY (dinner, position)
   ) STRICT, WITHOUT ROWID`,
  // One row of about a long turn's size, written anew to find out whether a turn would fit.
  `CREATE TABLE room (
     one   INTEGER PRIMARY KEY CHECK (one = 1),
     bytes BLOB    NOT NULL
   ) STRICT`,
];

export const schemaVersion = migrations.length;

/** Brings a file up to today's tables. Throws JournalTrouble when the file is ahead of us. */
export function migrate(database: Database): void {
  const version = Number(database.pragma('user_version', { simple: true }));
  if (version > schemaVersion) {
    throw new JournalTrouble(
      'newer-journal',
      `The journal was written by a newer version (tables ${version}, this one knows up to ${schemaVersion}); update roastcall or choose another folder with --data, nothing was changed.`,
    );
  }
  if (version === schemaVersion) return;
  database
    .transaction(() => {
      // Read again inside the transaction: another process may have been quicker.
      const now = Number(database.pragma('user_version', { simple: true }));
      for (const step of migrations.slice(now)) database.exec(step);
      database.pragma(`user_version = ${schemaVersion}`);
    })
    .immediate();
}
