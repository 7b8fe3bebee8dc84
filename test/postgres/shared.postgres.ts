/** Several processes on one database: turns, streams, timers, sinks. */
import { expect, test } from 'vitest';
import { deliverTo, type Sink } from '../../src/household/deliver.ts';
import { atTheEnd, freshDatabase } from './fresh.ts';
import { announcedIn, dinnerWithTimer, type OneOfSeveral, oneOfSeveral } from './processes.ts';
import { asked } from './server.ts';

const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => setTimeout(resolve, milliseconds));

async function several(count: number): Promise<{ url: string; all: OneOfSeveral[] }> {
  const url = await freshDatabase();
  const all = [await oneOfSeveral(url)];
  while (all.length < count) all.push(await oneOfSeveral(url));
  return { url, all };
}

test('any process takes any turn of any dinner; each sees what the others took, within a second', async () => {
  const { all } = await several(2);
  const [one, two] = all as [OneOfSeveral, OneOfSeveral];
  const { view } = await one.home.say({
    text: 'seven pound three bone rib roast, dinner at seven for six, medium rare',
  });
  const theirs = await two.home.dinner(view.id);
  const told: number[] = [];
  two.home.follow(theirs, () => told.push(performance.now()));
  const answered = await Promise.all(
    Array.from({ length: 20 }, (_, n) =>
      (n % 2 === 0 ? one : two).home.say({ text: 'one more is coming' }, view.id),
    ),
  );
  expect(Math.max(...answered.map((turn) => turn.view.guests ?? 0))).toBe(26);
  const last = performance.now();
  await one.home.say({ text: 'two more are coming' }, view.id);
  await expect.poll(() => told.some((at) => at > last), { timeout: 1_000 }).toBe(true);
  expect((await two.home.view(theirs)).guests).toBe(28);
});

test('the same key at two processes at once acts once', async () => {
  const { all } = await several(2);
  const words = { text: 'a two kilo top round, dinner at seven for four', key: 'k' };
  const turns = await Promise.all(all.map(({ home }) => home.say(words)));
  expect(turns[0]?.replies).toEqual(turns[1]?.replies);
  expect(await all[0]?.home.dinners()).toHaveLength(1);
  const log = await (all[1] as OneOfSeveral).journal.read(turns[0]?.view.id ?? '');
  expect(log.filter((fact) => fact.type === 'words-heard')).toHaveLength(1);
});

test('dinners opened at two processes at once have names of their own', async () => {
  const { all } = await several(2);
  const made = await Promise.all(
    Array.from({ length: 8 }, (_, n) => (all[n % 2] as OneOfSeveral).home.create({})),
  );
  expect(new Set(made.map(({ id }) => id)).size).toBe(8);
});

test('what falls due is raised once over all processes, each taking a share', async () => {
  const { all } = await several(3);
  for (const { houses } of all) await houses.start();
  const [{ journal, now }] = all as [OneOfSeveral];
  const ids = Array.from({ length: 60 }, (_, n) => `supper-${n}`);
  for (const [n, id] of ids.entries()) await dinnerWithTimer(journal, id, now(), 6_000 + n * 50);
  const raised = (): string[] => all.flatMap((one) => one.raised);
  await expect.poll(() => raised().length, { timeout: 30_000, interval: 100 }).toBe(60);
  await pause(2_000);
  expect(new Set(raised()).size).toBe(60);
  expect(raised()).toHaveLength(60);
  for (const id of ids) expect(announcedIn(await journal.read(id))).toHaveLength(1);
  expect(all.filter((one) => one.raised.length > 0).length).toBeGreaterThan(1);
});

test('what a dead process had in hand, or had only just appended, is taken over within ten seconds', async () => {
  const { url, all } = await several(2);
  const [dead, alive] = all as [OneOfSeveral, OneOfSeveral];
  await dinnerWithTimer(dead.journal, 'in-hand', dead.now(), 0);
  await dinnerWithTimer(dead.journal, 'just-appended', dead.now(), 0);
  // As a process leaves them that dies the moment after it claimed one.
  await asked(
    url,
    `UPDATE dinners SET due_at = now_milliseconds() + 6000, tries = 1 WHERE dinner = 'in-hand'`,
  );
  await dead.close();
  const from = performance.now();
  await alive.houses.start();
  await expect.poll(() => alive.raised.length, { timeout: 10_000 }).toBe(2);
  expect(performance.now() - from).toBeLessThan(10_000);
});

test('what a process wrote and did not live to tell is told by whoever looks after it', async () => {
  const { url, all } = await several(2);
  const [one, two] = all as [OneOfSeveral, OneOfSeveral];
  await dinnerWithTimer(one.journal, 'supper', one.now(), 3_600_000);
  await one.houses.start();
  const due = async () =>
    (await asked(url, 'SELECT due_at - now_milliseconds() > 60000 AS later FROM dinners'))[0]
      ?.later;
  await expect.poll(due, { timeout: 20_000 }).toBe(true);
  const kept = await two.home.dinner('supper');
  let told = 0;
  two.home.follow(kept, () => {
    told += 1;
  });
  await pause(1_000);
  told = 0;
  await asked(
    url,
    `WITH fact AS (
       INSERT INTO facts VALUES
         ('home', 'supper', 2, now_milliseconds(), 'talk-paused', 1, gen_random_uuid(), '{}'))
     UPDATE dinners SET held = 3, due_at = now_milliseconds() + 1000`,
  );
  await expect.poll(() => told, { timeout: 10_000 }).toBeGreaterThan(0);
  expect(await two.home.facts(kept)).toHaveLength(3);
});

test('a dinner that throws is tried a few times and set aside; the rest go on; a word brings it back', async () => {
  const { url, all } = await several(1);
  const [one] = all as [OneOfSeveral];
  for (const id of ['poison', 'good-1', 'good-2'])
    await dinnerWithTimer(one.journal, id, one.now(), 0);
  await asked(url, `UPDATE facts SET body = '{' WHERE dinner = 'poison' AND position = 1`);
  await asked(url, `UPDATE dinners SET tries = 3 WHERE dinner = 'poison'`);
  await one.houses.start();
  await expect.poll(() => one.troubles.length, { timeout: 30_000 }).toBe(2);
  expect(one.raised.sort()).toEqual([
    expect.stringContaining('good-1'),
    expect.stringContaining('good-2'),
  ]);
  expect(one.troubles[0]).toMatch(/^poison: Fact 1 of dinner poison/);
  expect(one.troubles[1]).toMatch(/^poison set aside/);
  await pause(8_000);
  expect(one.troubles).toHaveLength(2);
  await asked(url, `UPDATE facts SET body = '{"id":"eggs","dueAt":0}' WHERE body = '{'`);
  await one.home.say({ text: 'what is next' }, 'poison');
  expect(await asked(url, `SELECT tries FROM dinners WHERE dinner = 'poison'`)).toEqual([
    { tries: 0 },
  ]);
  await expect
    .poll(async () => announcedIn(await one.journal.read('poison')).length, { timeout: 10_000 })
    .toBe(1);
});

test('one sink at two processes gets each announcement once, also when the one that sends dies', async () => {
  const { url, all } = await several(2);
  const arrived: string[] = [];
  const dinners = ['a', 'b', 'c', 'd'];
  for (const id of dinners) {
    const { journal, now } = all[0] as OneOfSeveral;
    await dinnerWithTimer(journal, id, now(), 0);
  }
  // A third process began to send d and died.
  await asked(
    url,
    `INSERT INTO sendings VALUES ('home', 'd', 'timer:eggs#1', 'bell',
       '00000000-0000-4000-8000-000000000000', now_milliseconds() + 6000)`,
  );
  for (const { home, houses } of all) {
    const sink: Sink = {
      name: 'bell',
      send: async ({ id }, dinner) => {
        await pause(200);
        arrived.push(`${dinner.id} ${id}`);
      },
    };
    const delivery = await deliverTo(sink, { household: home, ticks: () => performance.now() });
    atTheEnd(() => delivery.close());
    await houses.start();
  }
  await expect.poll(() => arrived.length, { timeout: 30_000 }).toBe(4);
  await pause(2_000);
  expect(arrived.sort()).toEqual(dinners.map((id) => `${id} timer:eggs#1`));
});
