/** A PostgreSQL database as the place of many households' dinners, shared by many processes. */
import type { Journal } from '../../session/ports.ts';
import { Database, type DatabaseOptions } from './database.ts';
import { postgresJournal } from './journal.ts';
import { News } from './news.ts';
import { migrate } from './schema.ts';

export interface PostgresStore {
  /** The dinners of this household and of no other. */
  journal(household: string): Journal;
  close(): Promise<void>;
}

/** Connects, and makes the tables if there are none. Throws JournalTrouble when it cannot be used. */
export async function openPostgres(options: DatabaseOptions): Promise<PostgresStore> {
  const database = new Database(options);
  const news = new News(database);
  try {
    await migrate(database);
    await news.open();
  } catch (error) {
    await news.close();
    await database.close();
    throw error;
  }
  return {
    journal: (household) => postgresJournal(household, database, news),
    async close() {
      await news.close();
      await database.close();
    },
  };
}
