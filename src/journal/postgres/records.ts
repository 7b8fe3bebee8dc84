/** Small records by shelf and name, as texts: who may come in, and how households begin a dinner. */
import type { Database } from './database.ts';

export function postgresRecords(database: Database, shelf: string) {
  return {
    async put(name: string, text: string): Promise<void> {
      await database.run(
        `INSERT INTO records VALUES ($1, $2, $3)
         ON CONFLICT (shelf, name) DO UPDATE SET body = excluded.body`,
        [shelf, name, text],
      );
    },
    async get(name: string): Promise<string | undefined> {
      const [row] = await database.run<{ body: string }>(
        'SELECT body FROM records WHERE shelf = $1 AND name = $2',
        [shelf, name],
      );
      return row?.body;
    },
    /** Whether it was there: of two who take it at once, one does. */
    async take(name: string): Promise<boolean> {
      const taken = await database.run(
        'DELETE FROM records WHERE shelf = $1 AND name = $2 RETURNING 1',
        [shelf, name],
      );
      return taken.length > 0;
    },
    async names(): Promise<string[]> {
      const rows = await database.run<{ name: string }>(
        'SELECT name FROM records WHERE shelf = $1 ORDER BY name COLLATE "C"',
        [shelf],
      );
      return rows.map(({ name }) => name);
    },
  };
}
