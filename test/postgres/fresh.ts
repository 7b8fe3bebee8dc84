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

export async function freshDatabase(): Promise<string> {
  const server = inject('server');
  made += 1;
  const name = `test_${process.pid}_${made}_${Date.now()}`;
  await asked(server, `CREATE DATABASE ${name}`);
  atTheEnd(() => asked(server, `DROP DATABASE ${name} WITH (FORCE)`));
  const url = new URL(server);
  url.pathname = name;
  return url.href;
}

export async function openStore(url: string): Promise<PostgresStore> {
  const store = await openPostgres({ url });
  atTheEnd(() => store.close());
  return store;
}
