/**
 * One process at a time cooks a dinner. The lock is SQLite's own hold on a file of its own, which the
 * operating system lets go with the process, however it ends: there is no stale lock to remove.
 */
import Database from 'better-sqlite3';

/** Takes the lock at that path, or gives undefined when another process holds it. */
export function takeLock(path: string): { release(): void } | undefined {
  const database = new Database(path, { timeout: 0 });
  try {
    database.exec('BEGIN EXCLUSIVE');
    return { release: () => database.close() };
  } catch (error) {
    database.close();
    if (error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY'))
      return undefined;
    throw error;
  }
}
