/** `roastcall serve`: households behind HTTP and the bridges that are switched on. */
import type { AddressInfo } from 'node:net';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { certificateFor } from '../../access/certificate.ts';
import { Pairing } from '../../access/pairing.ts';
import { digestOf, sameDigest } from '../../access/secret.ts';
import { Tokens } from '../../access/tokens.ts';
import { webServer } from '../../bridges/web/server.ts';
import type { Household } from '../../household/household.ts';
import { pause, systemClock } from '../clock.ts';
import { computePool } from '../compute-pool.ts';
import { dataFolder } from '../household.ts';
import { Houses } from '../houses.ts';
import { invitation } from '../invitation.ts';
import { type Place, withStore } from '../place.ts';
import { Refusal } from '../refusal.ts';
import { type DueDinner, home, type Store } from '../store.ts';
import {
  type BridgeOptions,
  type Bridges,
  bridgesOf,
  isLoopback,
  portOf,
} from './serve-bridges.ts';

export interface ServeCommandOptions extends BridgeOptions, Place {
  host: string;
  port: string;
  clock: 'real' | 'simulated';
  cards?: string;
  token?: string;
  pair?: boolean;
  https?: boolean;
  withoutToken?: boolean;
  log: 'errors' | 'requests' | 'words';
}

/** What is half way out to a bridge has so long to arrive when the program ends. */
const farewellMilliseconds = 2_500;

export async function serveCommand(options: ServeCommandOptions, version: string): Promise<number> {
  const port = portOf(options.port, '--port');
  const data = dataFolder(options.data);
  const bridges = bridgesOf(options, version, data);
  return withStore(options, (store) => serve({ ...options, version, port, data, bridges, store }));
}

interface Serving extends Omit<ServeCommandOptions, 'port' | 'data'> {
  version: string;
  port: number;
  data: string;
  bridges: Bridges;
  store: Store;
}

async function serve(options: Serving): Promise<number> {
  const { version, port, data, bridges, store } = options;
  const { now } = store;
  const names = await store.households();
  if (!names.includes(options.bridgeHousehold))
    throw new Refusal(
      `--bridge-household wants one of ${names.join(', ')}, not "${options.bridgeHousehold}".`,
      2,
    );
  const tokens = new Tokens(store.drawers);
  const loopbackOnly = isLoopback(options.host);
  const token = options.token ?? process.env.ROASTCALL_TOKEN;
  const someToken = Boolean(token) || (await tokens.list()).length > 0;
  refuseOpenDoor(options, { loopbackOnly, someToken });
  const compute = computePool();
  const { clock, cards } = options;
  const houses = new Houses({ store, clock, compute, cards, trouble: troubleOnStderr });
  const household = (await houses.of(home)) as Household;
  const bridged = (await houses.of(options.bridgeHousehold)) as Household;
  const tls = options.https ? await certificateOf(options.host, data) : undefined;
  const pairing = new Pairing(store.drawers, tokens);
  const pair = async (code: string, label: string): Promise<string | undefined> =>
    pairing.accept(code, label, now());
  const app = await webServer({
    version,
    now,
    loopbackOnly,
    tls,
    log: options.log,
    pairing: { pair, secure: tls !== undefined },
    admit: doorkeeper({ houses, tokens, token, open: loopbackOnly || options.withoutToken }),
    writable: () => household.writable(),
  });
  let open: string[];
  try {
    await app.listen({ host: options.host, port });
    open = await bridges.open(bridged);
  } catch (error) {
    await app.close();
    await compute.close();
    throw new Refusal(
      `Cannot listen (${(error as Error).message}); choose another port or host.`,
      1,
    );
  }
  await houses.start();
  const base = baseOf(app.server.address() as AddressInfo, tls !== undefined);
  process.stdout.write(`Listening on ${base}\n`);
  if (tls) process.stdout.write(`Certificate of its own, SHA-256 ${tls.fingerprint}\n`);
  if (options.pair)
    process.stdout.write(await invitation({ base, pairing, household: home, now: now() }));
  for (const line of open) process.stdout.write(`${line}\n`);
  await stopAsked();
  await Promise.race([bridges.close(), pause(farewellMilliseconds)]);
  await app.close();
  await houses.close();
  await compute.close();
  // Connections of a bridge may linger; everything acknowledged is written.
  setTimeout(() => process.exit(0), 500).unref();
  return 0;
}

function troubleOnStderr({ household, dinner }: DueDinner, why: Error, setAside: boolean): void {
  const next = setAside ? 'it is set aside until somebody speaks to it' : 'trying again';
  process.stderr.write(`Dinner ${dinner} of ${household}: ${why.message}; ${next}\n`);
}

/** Nothing listens beyond this machine unless somebody must show something, or the user says so. */
function refuseOpenDoor(
  options: Serving,
  { loopbackOnly, someToken }: { loopbackOnly: boolean; someToken: boolean },
): void {
  if (loopbackOnly || someToken || options.pair || options.withoutToken) return;
  throw new Refusal(
    `Beyond this machine (${options.host}) callers must show who they are: add --pair, set ROASTCALL_TOKEN, or say --without-token if everyone on the network may cook.`,
    2,
  );
}

function doorkeeper(options: {
  houses: Houses;
  tokens: Tokens;
  /** The household's own, from the environment or the command line. */
  token: string | undefined;
  /** Whether callers need to show nothing, as long as there is no such token. */
  open: boolean | undefined;
}): (secret: string | undefined) => Promise<Household | undefined> {
  const { houses, tokens, token, open } = options;
  const digest = token === undefined ? undefined : digestOf(token);
  return async (secret) => {
    if (secret === undefined) return open && digest === undefined ? houses.of(home) : undefined;
    if (digest !== undefined && sameDigest(digestOf(secret), digest)) return houses.of(home);
    const name = await tokens.householdOf(secret);
    return name === undefined ? undefined : houses.of(name);
  };
}

const certificateOf = (host: string, data: string) =>
  certificateFor(
    [
      ...new Set([
        'localhost',
        '127.0.0.1',
        hostname(),
        ...(isAny(host) ? ownAddresses() : [host]),
      ]),
    ],
    { folder: join(data, 'tls'), at: systemClock.now() },
  );

const isAny = (host: string): boolean => host === '0.0.0.0' || host === '::';

/** This machine's addresses on the house's network. */
const ownAddresses = (): string[] =>
  Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter((one) => one.family === 'IPv4' && !one.internal)
    .map((one) => one.address);

function baseOf({ address, family, port }: AddressInfo, tls: boolean): string {
  const reached = isAny(address) ? (ownAddresses()[0] ?? '127.0.0.1') : address;
  const host = family === 'IPv6' && reached.includes(':') ? `[${reached}]` : reached;
  return `${tls ? 'https' : 'http'}://${host}:${port}`;
}

const stopAsked = (): Promise<void> =>
  new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
