/** A PostgreSQL database as the place of many households' dinners, shared by many processes. */
import type { Due, Journal } from '../../session/ports.ts';
import { type AgendaOptions, PostgresAgenda } from './agenda.ts';
import { Database, type DatabaseOptions } from './database.ts';
import { eraseDinners, postgresJournal } from './journal.ts';
import { News } from './news.ts';
import { postgresRecords } from './records.ts';
import { migrate } from './schema.ts';

export interface PostgresStore {
  /** The dinners of this household and of no other. */
  journal(household: string): Journal;
  /** What of them is due when, and who sends what. */
  agenda(household: string): {
    settle(dinner: string, due: Due): Promise<void>;
    claim(sending: { dinner: string; announcement: string; sink: string }): Promise<boolean>;
  };
  /** Small texts by name. */
  records(shelf: string): ReturnType<typeof postgresRecords>;
  /** The database's time. */
  now(): number;
  /** From now on this process takes its share of what falls due. */
  work(options: AgendaOptions): void;
  /** Every dinner of a household, for good; gives how many there were. */
  erase(household: string): Promise<number>;
  close(): Promise<void>;
}

/** Connects, and makes the tables if there are none. Throws JournalTrouble when it cannot be used. */
export async function openPostgres(options: DatabaseOptions): Promise<PostgresStore> {
  const database = new Database(options);
  const news = new News(database);
  const agenda = new PostgresAgenda(database, news);
  try {
    await migrate(database);
    await news.open();
    await agenda.askTime();
  } catch (error) {
    await news.close();
    await database.close();
    throw error;
  }
  return {
    journal: (household) => postgresJournal(household, database, news),
    agenda: (household) => ({
      settle: (dinner, due) => agenda.settle(household, dinner, due),
      claim: (sending) => agenda.claim(household, sending),
    }),
    records: (shelf) => postgresRecords(database, shelf),
    now: () => agenda.now(),
    work: (work) => agenda.start(work),
    erase: (household) => eraseDinners(household, database, news),
    async close() {
      await agenda.close();
      await news.close();
      await database.close();
    },
  };
}
