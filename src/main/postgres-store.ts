/** The store of many processes: everything of every household in one PostgreSQL database. */
import { openPostgres } from '../journal/postgres/open.ts';
import { Refusal } from './refusal.ts';
import { faultOf, home, type Store, settingsSchema } from './store.ts';

export async function postgresStore(url: string): Promise<Store> {
  const database = await openPostgres({ url });
  const households = database.records('households');
  return {
    households: async () => [home, ...(await households.names()).filter((one) => one !== home)],
    async settings(household) {
      const text = await households.get(household);
      if (text === undefined) return household === home ? {} : undefined;
      const read = settingsSchema.safeParse(JSON.parse(text));
      if (read.success) return read.data;
      throw new Refusal(`Household ${household}: ${faultOf(read.error)}`, 1);
    },
    set: (household, settings) => households.put(household, JSON.stringify(settings)),
    journal: (household) => database.journal(household),
    cards: () => undefined,
    drawers: (name) => database.records(name),
    // Any process may take any turn.
    hold: () => undefined,
    shared: {
      agenda: (household) => database.agenda(household),
      work: (share) => database.work(share),
    },
    now: () => database.now(),
    async erase(household) {
      const dinners = await database.erase(household);
      await households.take(household);
      return dinners;
    },
    close: () => database.close(),
  };
}
