/** Fresh databases on the shared server, and what tests open on them, closed after each test. */
import { afterEach, inject } from 'vitest';
import { openPostgres, type PostgresStore } from '../../src/journal/postgres/open.ts';
import { asked } from './server.ts';

const ending: (() => unknown)[] = [];
afterEach(async () => {
  for (const end of ending.splice(0).reverse()) await end();
});

/** Called when the test is over, the last first. */
export const atTheEnd = (end: () => unknown): void => void ending.push(end);

let made = 0;

export async function madeDatabase(name: string): Promise<string> {
  const url = new URL(inject('server'));
  await asked(url.href, `CREATE DATABASE ${name}`);
  url.pathname = name;
  return url.href;
}

export async function droppedDatabase(url: string): Promise<void> {
  await asked(inject('server'), `DROP DATABASE ${new URL(url).pathname.slice(1)} WITH (FORCE)`);
}

/** A database for one test. */
export async function freshDatabase(): Promise<string> {
  made += 1;
  const url = await madeDatabase(`test_${process.pid}_${made}`);
  atTheEnd(() => droppedDatabase(url));
  return url;
}

export async function openStore(url: string): Promise<PostgresStore> {
  const store = await openPostgres({ url });
  atTheEnd(() => store.close());
  return store;
}
