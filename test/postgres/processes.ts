/** Households as one process of several has them, in this process; and dinners with a call to come. */

import type { Household } from '../../src/household/household.ts';
import type { Fact, NewFact } from '../../src/kitchen/facts.ts';
import { Houses } from '../../src/main/houses.ts';
import { postgresStore } from '../../src/main/postgres-store.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Journal } from '../../src/session/ports.ts';
import { atTheEnd } from './fresh.ts';

export interface OneOfSeveral {
  houses: Houses;
  home: Household;
  /** Dinner and id of each announcement this process raised. */
  raised: string[];
  troubles: string[];
  journal: Journal;
  now(): number;
  close(): Promise<void>;
}

export async function oneOfSeveral(url: string): Promise<OneOfSeveral> {
  const store = await postgresStore(url);
  const [raised, troubles]: [string[], string[]] = [[], []];
  const houses = new Houses({
    store,
    clock: 'real',
    compute: inThisThread,
    trouble: ({ dinner }, why, setAside) =>
      troubles.push(`${dinner}${setAside ? ' set aside' : ''}: ${why.message}`),
  });
  const home = (await houses.of('home')) as Household;
  home.listen(({ dinner, announcements }) => {
    for (const { id } of announcements) raised.push(`${dinner.id} ${id}`);
  });
  let open = true;
  const close = async (): Promise<void> => {
    if (!open) return;
    open = false;
    await houses.close();
    await store.close();
  };
  atTheEnd(close);
  return { houses, home, raised, troubles, journal: store.journal('home'), now: store.now, close };
}

const opened: NewFact = {
  type: 'dinner-opened',
  timeZone: 'UTC',
  temperatureUnit: 'C',
  weightUnit: 'kg',
  seed: 3,
  language: 'en',
};

/** A dinner with a timer that rings so many milliseconds from now. */
export async function dinnerWithTimer(journal: Journal, id: string, now: number, in_: number) {
  await journal.append(id, 0, now, [opened, { type: 'timer-set', id: 'eggs', dueAt: now + in_ }]);
}

export const announcedIn = (facts: readonly Fact[]) =>
  facts.flatMap((fact) => (fact.type === 'announced' ? [fact] : []));
