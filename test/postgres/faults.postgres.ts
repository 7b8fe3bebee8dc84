/** What a server and a network do to a journal: restarts, cut lines, a full disk. Each on a server of its own. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { openPostgres, type PostgresStore } from '../../src/journal/postgres/open.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import { NotWritable, PositionTaken } from '../../src/session/ports.ts';
import { cuttableLine } from '../net.ts';
import { atTheEnd } from './fresh.ts';
import { dinnerWithTimer, oneOfSeveral } from './processes.ts';
import { asked, postgresServer, type Server } from './server.ts';

let server: Server;
beforeEach(async () => {
  server = await postgresServer();
});
afterEach(() => server.close());

const guests = (count: number): NewFact => ({ type: 'guests-counted', count });
const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));

async function opened(url: string): Promise<PostgresStore> {
  const store = await openPostgres({ url });
  atTheEnd(() => store.close());
  return store;
}

test.each(['fast', 'kill'] as const)(
  'the server restarted (%s) while turns are taken: what was acknowledged is there, once',
  async (how) => {
    const url = await server.database();
    const one = await oneOfSeveral(url);
    await one.houses.start();
    await dinnerWithTimer(one.journal, 'supper', one.now(), 8_000);
    const kept = await one.home.dinner('supper');
    let told = 0;
    one.home.follow(kept, () => {
      told += 1;
    });
    const acknowledged: string[] = [];
    const refused: unknown[] = [];
    let talking = true;
    const talk = (async () => {
      for (let n = 0; talking; n += 1) {
        const key = `k${n}`;
        await one.home.say({ text: 'one more is coming', key }, 'supper').then(
          () => acknowledged.push(key),
          (error: unknown) => refused.push(error),
        );
      }
    })();
    await expect.poll(() => acknowledged.length, { timeout: 20_000 }).toBeGreaterThan(5);
    await server.stop(how);
    await pause(500);
    await server.start();
    const before = acknowledged.length;
    await expect.poll(() => acknowledged.length, { timeout: 20_000 }).toBeGreaterThan(before + 5);
    talking = false;
    await talk;
    for (const error of refused) expect(error).toBeInstanceOf(NotWritable);
    const facts = await one.journal.read('supper');
    const keys = facts.flatMap((fact) =>
      fact.type === 'words-heard' && fact.key ? [fact.key] : [],
    );
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toEqual(expect.arrayContaining(acknowledged));
    expect(facts.map(({ position }) => position)).toEqual(facts.map((_, index) => index));
    // The timer rings, and what another process says is heard again on the stream.
    const timer = () => one.raised.filter((call) => call.includes('timer:eggs'));
    const rung = async () =>
      (await one.journal.read('supper')).filter((fact) => fact.type === 'announced').length;
    await expect.poll(rung, { timeout: 20_000 }).toBe(1);
    expect(timer().length).toBeLessThanOrEqual(1);
    const other = await oneOfSeveral(url);
    const toldBefore = told;
    await other.home.say({ text: 'one more is coming' }, 'supper');
    await expect.poll(() => told, { timeout: 5_000 }).toBeGreaterThan(toldBefore);
  },
);

test('a follower whose connection was lost reads on from where it was', async () => {
  const url = await server.database();
  const line = await cuttableLine(server.port);
  atTheEnd(() => line.close());
  const through = new URL(url);
  through.port = String(line.port);
  const [near, far] = [await opened(url), await opened(through.href)];
  await near.journal('home').append('a', 0, 1, [guests(1)]);
  const told: unknown[] = [];
  far.journal('home').follow((change) => told.push(change));
  line.cut();
  await near.journal('home').append('a', 1, 2, [guests(2)]);
  line.mend();
  await expect.poll(() => told, { timeout: 10_000 }).toContain(undefined);
  expect(await far.journal('home').read('a', 1)).toMatchObject([{ count: 2 }]);
  await near.journal('home').append('a', 2, 3, [guests(3)]);
  await expect.poll(() => told, { timeout: 2_000 }).toContainEqual({ dinner: 'a', held: 3 });
});

test('a connection gone dead without a word is found out, and the follower reads on', async () => {
  const { line, near, far } = await behindALine();
  await near.append('a', 0, 1, [guests(1)]);
  const told: unknown[] = [];
  far.follow((change) => told.push(change));
  line.withhold('asked');
  line.withhold('answered');
  await near.append('a', 1, 2, [guests(2)]);
  await pause(7_000);
  expect(told).toEqual([]);
  line.mend();
  await expect.poll(() => told, { timeout: 15_000 }).toContain(undefined);
  expect(await far.read('a', 1)).toMatchObject([{ count: 2 }]);
});

/** A journal behind a line that can be cut, and one that is not behind it. */
async function behindALine() {
  const url = await server.database();
  const line = await cuttableLine(server.port);
  atTheEnd(() => line.close());
  const through = new URL(url);
  through.port = String(line.port);
  const [near, far] = [await opened(url), await opened(through.href)];
  return { line, near: near.journal('home'), far: far.journal('home') };
}

test('an append whose answer was lost with the connection is found to have been made', async () => {
  const { line, near, far } = await behindALine();
  await far.append('a', 0, 1, [guests(1)]);
  // Connections enough are open: a new one could not even be made while answers are withheld.
  await Promise.all(Array.from({ length: 4 }, () => far.read('a')));
  line.withhold('answered');
  const append = far.append('a', 1, 2, [guests(2), guests(3)]);
  await expect.poll(async () => (await near.read('a')).length, { timeout: 5_000 }).toBe(3);
  line.cut();
  line.mend();
  expect(await append).toMatchObject([{ position: 1 }, { position: 2 }]);
  expect(await near.read('a')).toHaveLength(3);
});

test('an append that never reached the server is made when the line is mended', async () => {
  const { line, near, far } = await behindALine();
  await far.append('a', 0, 1, [guests(1)]);
  line.withhold('asked');
  const append = far.append('a', 1, 2, [guests(2)]);
  await pause(300);
  line.cut();
  expect(await near.read('a')).toHaveLength(1);
  line.mend();
  expect(await append).toMatchObject([{ position: 1 }]);
  expect(await near.read('a')).toHaveLength(2);
});

test('an append cut off whose place somebody else took meanwhile has lost it', async () => {
  const { line, near, far } = await behindALine();
  await far.append('a', 0, 1, [guests(1)]);
  line.withhold('asked');
  const append = far.append('a', 1, 2, [guests(2)]).catch((error: unknown) => error);
  await pause(300);
  line.cut();
  await near.append('a', 1, 2, [guests(9)]);
  line.mend();
  expect(await append).toBeInstanceOf(PositionTaken);
  expect(await near.read('a')).toMatchObject([{ count: 1 }, { count: 9 }]);
});

test('a server that stays away is said, in so many words, and is usable when it is back', async () => {
  const url = await server.database();
  const store = await openPostgres({ url, patienceMilliseconds: 1_000 });
  atTheEnd(() => store.close());
  const journal = store.journal('home');
  await journal.append('a', 0, 1, [guests(1)]);
  await server.stop('fast');
  await expect(journal.append('a', 1, 2, [guests(2)])).rejects.toThrow(NotWritable);
  await expect(journal.writable()).rejects.toThrow(/cannot be written just now/);
  await server.start();
  await journal.append('a', 1, 2, [guests(3)]);
  expect(await journal.read('a')).toMatchObject([{ count: 1 }, { count: 3 }]);
});

test('a full disk at the server is said, loses nothing acknowledged, and ends with the fullness', async () => {
  const url = await server.database();
  const journal = (await opened(url)).journal('home');
  await journal.append('a', 0, 1, [guests(0)]);
  await server.stop('fast');
  // No table's file may grow beyond this; the write-ahead log's files are 16 MiB.
  await server.start({ fileMegabytesAtMost: 17 });
  let held = 1;
  let full: unknown;
  while (held < 4_000 && !full)
    await journal.append('a', held, held, [{ type: 'hands-added', who: randomText(30_000) }]).then(
      () => {
        held += 1;
      },
      (error: unknown) => {
        full = error;
      },
    );
  expect(full).toBeInstanceOf(NotWritable);
  expect(await journal.read('a')).toHaveLength(held);
  await server.stop('fast');
  await server.start();
  await journal.append('a', held, held, [guests(1)]);
  expect(await asked(url, 'SELECT held FROM dinners')).toEqual([{ held: held + 1 }]);
});

/** Text that does not shrink when the server packs it. */
const randomText = (length: number): string =>
  Array.from({ length }, () => String.fromCharCode(33 + Math.floor(Math.random() * 90))).join('');
