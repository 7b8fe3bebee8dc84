/** `roastcall serve`: the household behind HTTP and the bridges that are switched on. */
import { randomInt } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import type { AddressInfo, Server } from 'node:net';
import { join } from 'node:path';
import { webServer } from '../../bridges/web/server.ts';
import { webhookSink } from '../../bridges/webhook/sink.ts';
import { wyomingServer } from '../../bridges/wyoming/server.ts';
import { deliverTo } from '../../household/deliver.ts';
import { Household } from '../../household/household.ts';
import { takeLock } from '../../journal/lock.ts';
import { inThisThread } from '../../session/compute.ts';
import type { Journal } from '../../session/ports.ts';
import { openSession } from '../../session/session.ts';
import { systemClock } from '../clock.ts';
import { cardsOf, dataFolder, journalOf, openingOf } from '../household.ts';
import { Refusal } from '../refusal.ts';

export interface ServeCommandOptions {
  host: string;
  port: string;
  clock: 'real' | 'simulated';
  data?: string;
  cards?: string;
  token?: string;
  withoutToken?: boolean;
  wyoming?: string;
  wyomingHost: string;
  announceTo?: string[];
}

export async function serveCommand(options: ServeCommandOptions, version: string): Promise<number> {
  const token = options.token ?? process.env.ROASTCALL_TOKEN;
  const loopbackOnly = isLoopback(options.host);
  if (!loopbackOnly && !token && !options.withoutToken)
    throw new Refusal(
      `Beyond this machine (${options.host}) a token is needed: set ROASTCALL_TOKEN, or say --without-token if everyone on the network may cook.`,
      2,
    );
  const port = portOf(options.port, '--port');
  const wyomingPort =
    options.wyoming === undefined ? undefined : portOf(options.wyoming, '--wyoming');
  const targets = (options.announceTo ?? []).map(urlOf);
  const folder = dataFolder(options.data);
  const locks = locksIn(folder);
  locks.take(
    'serve',
    'Another roastcall serves this folder; close it or name another with --data.',
  );
  const journal = journalOf(folder);
  const household = householdOf({ ...options, journal, locks });
  const ended = new AbortController();
  const now = systemClock.now;
  const writable = async (): Promise<void> => {
    // An append of nothing begins and commits a write.
    const dinner = (await journal.dinners())[0]?.id ?? 'health';
    await journal.append(dinner, (await journal.read(dinner)).length, now(), []);
  };
  const app = webServer({ household, version, token, loopbackOnly, writable });
  const wyoming = wyomingPort === undefined ? undefined : wyomingServer({ household, version });
  try {
    await app.listen({ host: options.host, port });
    if (wyoming && wyomingPort !== undefined)
      await listening(wyoming, wyomingPort, options.wyomingHost);
  } catch (error) {
    await app.close();
    throw new Refusal(
      `Cannot listen (${(error as Error).message}); choose another port or host.`,
      1,
    );
  }
  const zone = async (dinner: string): Promise<string> =>
    (await household.view(await household.dinner(dinner))).timeZone;
  for (const url of targets)
    await deliverTo(webhookSink(url, zone), { household, now, signal: ended.signal });
  await household.start();
  const address = app.server.address() as AddressInfo;
  const host = address.family === 'IPv6' ? `[${address.address}]` : address.address;
  process.stdout.write(`Listening on http://${host}:${address.port}\n`);
  if (wyoming) {
    const own = wyoming.address() as AddressInfo;
    process.stdout.write(`Wyoming on ${own.address}:${own.port}\n`);
  }
  await stopAsked();
  ended.abort();
  household.close();
  await app.close();
  wyoming?.close();
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

const isLoopback = (host: string): boolean => /^(localhost|127(\.\d{1,3}){3}|::1)$/.test(host);

function portOf(text: string, option: string): number {
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65_535) return port;
  throw new Refusal(`${option} wants a port, 0 to 65535, not "${text}".`, 2);
}

function urlOf(text: string): URL {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url && /^https?:$/.test(url.protocol)) return url;
  throw new Refusal(`--announce-to wants an http or https address, not "${text}".`, 2);
}

const listening = (server: Server, port: number, host: string): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve());
  });

const stopAsked = (): Promise<void> =>
  new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
