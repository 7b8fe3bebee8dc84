/** Which store a command works on: `--journal`, or the data folder. */

import { folderStore } from './folder-store.ts';
import { dataFolder } from './household.ts';
import { postgresStore } from './postgres-store.ts';
import { Refusal } from './refusal.ts';
import type { Store } from './store.ts';

export interface Place {
  data?: string;
  journal?: string;
}

export function storeOf({ data, journal = process.env.ROASTCALL_JOURNAL }: Place): Promise<Store> {
  if (journal === undefined || journal === '')
    return Promise.resolve(folderStore(dataFolder(data)));
  if (isAddress(journal)) return postgresStore(journal);
  throw new Refusal(
    '--journal wants an address that begins with postgres://; without it the journal is a file in the data folder.',
    2,
  );
}

export const isAddress = (text: string): boolean =>
  /^postgres(ql)?:\/\//.test(text) && URL.canParse(text);

/** A store for as long as the work takes. */
export async function withStore<T>(place: Place, work: (store: Store) => Promise<T>): Promise<T> {
  const store = await storeOf(place);
  try {
    return await work(store);
  } finally {
    await store.close();
  }
}
