/** `roastcall serve`: the household behind HTTP and the bridges that are switched on. */
import { randomInt } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { webServer } from '../../bridges/web/server.ts';
import { Household } from '../../household/household.ts';
import { takeLock } from '../../journal/lock.ts';
import { inThisThread } from '../../session/compute.ts';
import type { Journal } from '../../session/ports.ts';
import { openSession } from '../../session/session.ts';
import { pause, systemClock } from '../clock.ts';
import { cardsOf, dataFolder, journalOf, openingOf } from '../household.ts';
import { Refusal } from '../refusal.ts';
import { type BridgeOptions, bridgesOf, isLoopback, portOf } from './serve-bridges.ts';

export interface ServeCommandOptions extends BridgeOptions {
  host: string;
  port: string;
  clock: 'real' | 'simulated';
  data?: string;
  cards?: string;
  token?: string;
  withoutToken?: boolean;
}

/** What is half way out to a bridge has so long to arrive when the program ends. */
const farewellMilliseconds = 2_500;

export async function serveCommand(options: ServeCommandOptions, version: string): Promise<number> {
  const token = options.token ?? process.env.ROASTCALL_TOKEN;
  const loopbackOnly = isLoopback(options.host);
  if (!loopbackOnly && !token && !options.withoutToken)
    throw new Refusal(
      `Beyond this machine (${options.host}) a token is needed: set ROASTCALL_TOKEN, or say --without-token if everyone on the network may cook.`,
      2,
    );
  const port = portOf(options.port, '--port');
  const folder = dataFolder(options.data);
  const bridges = bridgesOf(options, version, folder);
  const locks = locksIn(folder);
  locks.take(
    'serve',
    'Another roastcall serves this folder; close it or name another with --data.',
  );
  const journal = journalOf(folder);
  const household = householdOf({ ...options, journal, locks });
  const now = systemClock.now;
  const writable = async (): Promise<void> => {
    // An append of nothing begins and commits a write.
    const dinner = (await journal.dinners())[0]?.id ?? 'health';
    await journal.append(dinner, (await journal.read(dinner)).length, now(), []);
  };
  const app = webServer({ household, version, token, loopbackOnly, writable });
  let open: string[];
  try {
    await app.listen({ host: options.host, port });
    open = await bridges.open(household);
  } catch (error) {
    await app.close();
    throw new Refusal(
      `Cannot listen (${(error as Error).message}); choose another port or host.`,
      1,
    );
  }
  await household.start();
  const address = app.server.address() as AddressInfo;
  const host = address.family === 'IPv6' ? `[${address.address}]` : address.address;
  process.stdout.write(`Listening on http://${host}:${address.port}\n`);
  for (const line of open) process.stdout.write(`${line}\n`);
  await stopAsked();
  household.close();
  await Promise.race([bridges.close(), pause(farewellMilliseconds)]);
  await app.close();
  await journal.close();
  locks.release();
  // Connections of a bridge may linger; everything acknowledged is written.
  setTimeout(() => process.exit(0), 500).unref();
  return 0;
}

function householdOf(options: {
  clock: 'real' | 'simulated';
  cards?: string;
  journal: Journal;
  locks: Locks;
}): Household {
  const cards = cardsOf(options.cards);
  const { journal, locks } = options;
  return new Household({
    journal,
    clock: options.clock,
    now: systemClock.now,
    opening: () => openingOf(randomInt(1, 2 ** 31)),
    open: async (dinner, opening) => {
      locks.take(dinner, `Dinner ${dinner} is being cooked by another roastcall; close that one.`);
      return openSession({ dinner, journal, compute: inThisThread, cards, opening });
    },
  });
}

interface Locks {
  take(name: string, otherwise: string): void;
  release(): void;
}

function locksIn(folder: string): Locks {
  const held: { release(): void }[] = [];
  mkdirSync(join(folder, 'locks'), { recursive: true });
  return {
    take(name, otherwise) {
      const lock = takeLock(join(folder, 'locks', `${encodeURIComponent(name)}.lock`));
      if (!lock) throw new Refusal(otherwise, 1);
      held.push(lock);
    },
    release: () => {
      for (const lock of held) lock.release();
    },
  };
}

const stopAsked = (): Promise<void> =>
  new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
