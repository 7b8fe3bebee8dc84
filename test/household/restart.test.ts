/** A household that was away while three hundred dinners fell due in the same second. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Household } from '../../src/household/household.ts';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import { inThisThread } from '../../src/session/compute.ts';
import { openSession } from '../../src/session/session.ts';
import { cards, opening } from '../harness/day.ts';

const noon = Date.parse('2026-12-19T12:00:00Z');
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'restart-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function house(now: number) {
  const journal = openSqliteJournal(join(folder, 'journal.sqlite'));
  const household = new Household({
    journal,
    clock: 'real',
    now: () => now,
    ticks: () => 0,
    opening: () => opening,
    open: (dinner, first) =>
      openSession({ dinner, journal, compute: inThisThread, cards, opening: first }),
  });
  const announced: string[] = [];
  household.listen(({ dinner, announcements }) => {
    for (const { id } of announcements) announced.push(`${dinner.id} ${id}`);
  });
  const close = async (): Promise<void> => {
    household.close();
    await journal.close();
  };
  return { household, announced, close };
}

test('each of three hundred timers is announced once, and never again', async () => {
  const before = house(noon);
  for (let n = 0; n < 300; n += 1) {
    const { id } = await before.household.create({});
    await before.household.say({ text: 'set a timer for one minute' }, id);
  }
  await before.close();
  const after = house(noon + 61_000);
  await after.household.start();
  await after.close();
  expect(new Set(after.announced).size).toBe(300);
  expect(after.announced).toHaveLength(300);
  const later = house(noon + 62_000);
  await later.household.start();
  await later.close();
  expect(later.announced).toEqual([]);
});
