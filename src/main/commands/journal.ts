/** `roastcall journal copy`, and a household's whole log out of a store: `household export`, `household erase`. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Pairing } from '../../access/pairing.ts';
import { Tokens } from '../../access/tokens.ts';
import { copyDinner } from '../../journal/copy.ts';
import { inThisThread } from '../../session/compute.ts';
import type { Journal } from '../../session/ports.ts';
import { openSession } from '../../session/session.ts';
import { openingOf } from '../household.ts';
import { isAddress, type Place, withStore } from '../place.ts';
import { Refusal } from '../refusal.ts';
import { home, type Store } from '../store.ts';
import { known } from './access.ts';

export async function copyCommand(
  from: string,
  to: string,
  options: { household?: string },
): Promise<number> {
  if (!isAddress(from) && !existsSync(join(from, 'journal.sqlite')))
    throw new Refusal(`There is no journal in ${from}; name a data folder or postgres://….`, 1);
  return withStore(placeOf(from), (source) =>
    withStore(placeOf(to), async (target) => {
      // A journal that grows meanwhile would not be the same at the end.
      source.hold('serving');
      target.hold('serving');
      if (options.household !== undefined) await known(source, options.household);
      const names = options.household ? [options.household] : await source.households();
      for (const name of names) await copyHousehold(name, source, target);
      return 0;
    }),
  );
}

/** A name here is a folder or an address, never what the environment says. */
const placeOf = (text: string): Place =>
  isAddress(text) ? { journal: text } : { data: text, journal: '' };

async function copyHousehold(name: string, source: Store, target: Store): Promise<void> {
  const settings = await source.settings(name);
  const isNew = (await target.settings(name)) === undefined || name === home;
  if (settings && isNew && Object.keys(settings).length + Number(name !== home) > 0)
    await target.set(name, settings);
  await copyTokens(name, source, target);
  const [from, to] = [source.journal(name), target.journal(name)];
  const dinners = await from.dinners();
  let facts = 0;
  for (const { id, lastAt } of [...dinners].reverse()) {
    facts += await copyDinner(from, to, id);
    if ((await viewOf(from, id, lastAt)) !== (await viewOf(to, id, lastAt)))
      throw new Refusal(`Dinner ${id} of ${name} does not look the same there; do not use it.`, 1);
  }
  process.stdout.write(
    `${name}: ${dinners.length} dinners, ${facts} facts copied; each looks the same there.\n`,
  );
}

async function copyTokens(name: string, source: Store, target: Store): Promise<void> {
  const [from, to] = [source.drawers('tokens'), target.drawers('tokens')];
  for (const { id, household } of await new Tokens(source.drawers).list()) {
    const text = household === name ? await from.get(id) : undefined;
    if (text !== undefined) await to.put(id, text);
  }
}

async function viewOf(journal: Journal, dinner: string, at: number): Promise<string> {
  const opening = openingOf(1);
  const compute = inThisThread;
  const session = await openSession({ dinner, journal, compute, cards: [], opening });
  return JSON.stringify(await session.view(at));
}

export const exportCommand = (name: string, options: Place): Promise<number> =>
  withStore(options, async (store) => {
    await known(store, name);
    const print = (line: object): void => void process.stdout.write(`${JSON.stringify(line)}\n`);
    print({ household: name, settings: await store.settings(name) });
    for (const token of await new Tokens(store.drawers).list())
      if (token.household === name) print({ token });
    const journal = store.journal(name);
    for (const { id } of [...(await journal.dinners())].reverse())
      for (const fact of await journal.read(id)) print(fact);
    return 0;
  });

export const eraseCommand = (name: string, options: Place & { sure?: boolean }): Promise<number> =>
  withStore(options, async (store) => {
    await known(store, name);
    if (!options.sure) {
      const { length } = await store.journal(name).dinners();
      throw new Refusal(
        `That would erase ${length} dinners of ${name}, its settings and its tokens, for good; export them first, then say --sure.`,
        2,
      );
    }
    store.hold('serving');
    const tokens = new Tokens(store.drawers);
    await tokens.revokeAll(name);
    await new Pairing(store.drawers, tokens).withdraw(name);
    const dinners = await store.erase(name);
    process.stdout.write(`${name} is erased: ${dinners} dinners, its settings and its tokens.\n`);
    return 0;
  });
