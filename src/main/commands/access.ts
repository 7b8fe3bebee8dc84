/** `roastcall pair`, `token` and `household`: who may come in, and to which kitchen. */
import { Pairing } from '../../access/pairing.ts';
import { Tokens } from '../../access/tokens.ts';
import { systemClock } from '../clock.ts';
import { dataFolder } from '../household.ts';
import { type HouseSettings, houseNames, writeHouse } from '../houses.ts';
import { invitation } from '../invitation.ts';
import { Refusal } from '../refusal.ts';

interface Place {
  data?: string;
}
interface InHousehold extends Place {
  household: string;
}

export async function pairCommand(address: string, options: InHousehold): Promise<number> {
  const base = URL.canParse(address) ? new URL(address) : undefined;
  if (!base || !/^https?:$/.test(base.protocol))
    throw new Refusal(`An address begins with http:// or https://, not "${address}".`, 2);
  const data = dataFolder(options.data);
  known(data, options.household);
  const pairing = new Pairing(data, new Tokens(data));
  const { household } = options;
  process.stdout.write(await invitation({ base: base.origin, pairing, household }));
  return 0;
}

export async function makeTokenCommand(options: InHousehold & { label: string }): Promise<number> {
  const data = dataFolder(options.data);
  known(data, options.household);
  const made = new Tokens(data).make(options.household, options.label, systemClock.now());
  process.stdout.write(`${made.token}\n`);
  process.stderr.write(`Token ${made.id} for ${options.household}; it is not shown again.\n`);
  return 0;
}

export async function listTokensCommand(options: Place): Promise<number> {
  const tokens = new Tokens(dataFolder(options.data)).list();
  for (const { id, household, madeAt, label } of tokens)
    process.stdout.write(`${id}  ${household}  ${madeAt}  ${label}\n`);
  if (tokens.length === 0) process.stderr.write('There are no tokens.\n');
  return 0;
}

export async function revokeTokenCommand(id: string, options: Place): Promise<number> {
  if (!new Tokens(dataFolder(options.data)).revoke(id))
    throw new Refusal(`There is no token "${id}"; see roastcall token list.`, 1);
  process.stdout.write(`Token ${id} is shut out.\n`);
  return 0;
}

export async function addHouseholdCommand(
  name: string,
  options: HouseSettings & Place & { zone?: string },
): Promise<number> {
  const { zone, temperature, weight, language } = options;
  const data = dataFolder(options.data);
  writeHouse(data, name, { timeZone: zone, temperature, weight, language });
  process.stdout.write(`Household ${name} is set; make it a token with roastcall token make.\n`);
  return 0;
}

function known(data: string, household: string): void {
  const names = houseNames(data);
  if (names.includes(household)) return;
  const there = names.join(', ');
  throw new Refusal(`There is no household "${household}"; there are ${there}.`, 1);
}
