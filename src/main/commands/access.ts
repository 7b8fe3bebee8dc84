/** `roastcall pair`, `token` and `household`: who may come in, and to which kitchen. */
import { Pairing } from '../../access/pairing.ts';
import { Tokens } from '../../access/tokens.ts';
import { invitation } from '../invitation.ts';
import { type Place, withStore } from '../place.ts';
import { Refusal } from '../refusal.ts';
import {
  faultOf,
  type HouseSettings,
  householdPattern,
  type Store,
  settingsSchema,
} from '../store.ts';

interface InHousehold extends Place {
  household: string;
}

export async function pairCommand(address: string, options: InHousehold): Promise<number> {
  const url = URL.canParse(address) ? new URL(address) : undefined;
  if (!url || !/^https?:$/.test(url.protocol))
    throw new Refusal(`An address begins with http:// or https://, not "${address}".`, 2);
  return withStore(options, async (store) => {
    const { household } = options;
    await known(store, household);
    const pairing = new Pairing(store.drawers, new Tokens(store.drawers));
    const now = store.now();
    process.stdout.write(await invitation({ base: url.origin, pairing, household, now }));
    return 0;
  });
}

export const makeTokenCommand = (options: InHousehold & { label: string }): Promise<number> =>
  withStore(options, async (store) => {
    const { household, label } = options;
    await known(store, household);
    const made = await new Tokens(store.drawers).make(household, label, store.now());
    process.stdout.write(`${made.token}\n`);
    process.stderr.write(`Token ${made.id} for ${household}; it is not shown again.\n`);
    return 0;
  });

export const listTokensCommand = (options: Place): Promise<number> =>
  withStore(options, async (store) => {
    const tokens = await new Tokens(store.drawers).list();
    for (const { id, household, madeAt, label } of tokens)
      process.stdout.write(`${id}  ${household}  ${madeAt}  ${label}\n`);
    if (tokens.length === 0) process.stderr.write('There are no tokens.\n');
    return 0;
  });

export const revokeTokenCommand = (id: string, options: Place): Promise<number> =>
  withStore(options, async (store) => {
    if (!(await new Tokens(store.drawers).revoke(id)))
      throw new Refusal(`There is no token "${id}"; see roastcall token list.`, 1);
    process.stdout.write(`Token ${id} is shut out.\n`);
    return 0;
  });

export async function setHouseholdCommand(
  name: string,
  options: HouseSettings & Place & { zone?: string },
): Promise<number> {
  if (!householdPattern.test(name))
    throw new Refusal(
      `A household is named in small letters, digits and dashes, not "${name}".`,
      2,
    );
  const { zone: timeZone, temperature, weight, language } = options;
  const checked = settingsSchema.safeParse({ timeZone, temperature, weight, language });
  if (!checked.success) throw new Refusal(faultOf(checked.error), 2);
  await withStore(options, (store) => store.set(name, checked.data));
  process.stdout.write(`Household ${name} is set; make it a token with roastcall token make.\n`);
  return 0;
}

export async function known(store: Store, household: string): Promise<void> {
  if (await store.settings(household)) return;
  const there = (await store.households()).join(', ');
  throw new Refusal(`There is no household "${household}"; there are ${there}.`, 1);
}
