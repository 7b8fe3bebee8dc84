/**
 * The store of one process: "home" in the data folder itself, any other household under
 * `households/`, each with a journal, settings and cards of its own.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, stringify } from 'yaml';
import { drawersIn } from '../access/shelf.ts';
import { takeLock } from '../journal/lock.ts';
import { openSqliteJournal } from '../journal/sqlite.ts';
import type { Journal } from '../session/ports.ts';
import { systemClock } from './clock.ts';
import { Refusal } from './refusal.ts';
import { faultOf, home, householdPattern, type Store, settingsSchema } from './store.ts';

export function folderStore(data: string): Store {
  const folderOf = (household: string): string =>
    household === home ? data : join(data, 'households', household);
  const settingsFile = (household: string): string => join(folderOf(household), 'household.yaml');
  const journalFile = (household: string): string => join(folderOf(household), 'journal.sqlite');
  const isThere = (household: string): boolean =>
    household === home || (householdPattern.test(household) && existsSync(folderOf(household)));
  const journals = new Map<string, Journal>();
  const locks: { release(): void }[] = [];
  const others = (): string[] => {
    const folder = join(data, 'households');
    return existsSync(folder) ? readdirSync(folder).filter((n) => householdPattern.test(n)) : [];
  };
  return {
    households: async () => [home, ...others().sort()],
    async settings(household) {
      if (!isThere(household)) return undefined;
      const path = settingsFile(household);
      if (!existsSync(path)) return {};
      const read = settingsSchema.safeParse(parse(readFileSync(path, 'utf8')) ?? {});
      if (read.success) return read.data;
      throw new Refusal(`${path}: ${faultOf(read.error)}`, 1);
    },
    async set(household, settings) {
      mkdirSync(folderOf(household), { recursive: true });
      writeFileSync(settingsFile(household), stringify(settings));
    },
    journal(household) {
      const open = journals.get(household) ?? openSqliteJournal(journalFile(household));
      journals.set(household, open);
      return open;
    },
    cards(household) {
      const own = join(folderOf(household), 'cards');
      return existsSync(own) ? own : undefined;
    },
    drawers: drawersIn(data),
    hold(what) {
      const name =
        what === 'serving'
          ? 'serve'
          : what.household === home
            ? what.dinner
            : `${what.household} ${what.dinner}`;
      mkdirSync(join(data, 'locks'), { recursive: true });
      const lock = takeLock(join(data, 'locks', `${encodeURIComponent(name)}.lock`));
      if (lock) return void locks.push(lock);
      throw new Refusal(
        what === 'serving'
          ? 'Another roastcall serves this folder; close it or name another with --data.'
          : `Dinner ${what.dinner} is being cooked by another roastcall; close that one, or name another dinner.`,
        1,
      );
    },
    shared: undefined,
    now: systemClock.now,
    async erase(household) {
      const journal = openSqliteJournal(journalFile(household));
      const dinners = await journal.dinners();
      await journal.close();
      const own = ['', '-wal', '-shm'].map((ending) => `${journalFile(household)}${ending}`);
      if (household !== home) rmSync(folderOf(household), { recursive: true });
      else for (const path of [...own, settingsFile(home)]) rmSync(path, { force: true });
      return dinners.length;
    },
    async close() {
      for (const journal of journals.values()) await journal.close();
      for (const lock of locks) lock.release();
    },
  };
}
