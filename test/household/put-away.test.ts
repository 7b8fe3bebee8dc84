/** Where others hold the dinners too, one process holds so many and opens the rest again when asked. */
import { expect, test } from 'vitest';
import { instantOf } from '../../src/base/time.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { Household } from '../../src/household/household.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { inThisThread } from '../../src/session/compute.ts';
import type { Due } from '../../src/session/ports.ts';
import { openSession } from '../../src/session/session.ts';

const now = instantOf('2026-12-19', '13:30', 'America/Chicago');

/** A household that may hold so many dinners, and what it told the agenda of each. */
function shared(heldAtMost: number) {
  const journal = openMemoryJournal();
  const { cards } = loadCards([builtInCardsFolder()]);
  const settled = new Map<string, Due>();
  const opened: string[] = [];
  const household = new Household({
    journal,
    clock: 'real',
    now: () => now,
    ticks: () => 0,
    heldAtMost,
    opening: () => ({
      timeZone: 'America/Chicago',
      units: { temperature: 'F', weight: 'lb' },
      seed: 1,
      language: 'en',
    }),
    open: (dinner, opening) => {
      opened.push(dinner);
      return openSession({ dinner, journal, cards, compute: inThisThread, opening });
    },
    agenda: {
      settle: async (dinner, due) => void settled.set(dinner, due),
      claim: async () => true,
    },
  });
  return { household, opened };
}

test('the dinner used least lately is put away, and comes back as it was', async () => {
  const { household, opened } = shared(2);
  const first = await household.create({});
  await household.say({ text: 'a five pound rib roast, dinner at seven for four' }, first.id);
  const before = await household.view(first);
  const second = await household.create({});
  // Used again, the first is no longer the one to go.
  await household.dinner(first.id);
  const third = await household.create({});
  expect(household.size).toBe(2);
  await household.dinner(first.id);
  await household.dinner(third.id);
  expect(opened).toEqual([first.id, second.id, third.id]);

  await household.dinner(second.id);
  expect(household.size).toBe(2);
  const again = await household.dinner(first.id);
  expect(again).not.toBe(first);
  expect(opened).toEqual([first.id, second.id, third.id, second.id, first.id]);
  expect(await household.view(again)).toEqual(before);
  household.close();
});

test('a dinner that somebody follows stays, however many others are opened', async () => {
  const { household, opened } = shared(2);
  const watched = await household.create({});
  const off = household.follow(watched, () => undefined);
  for (let n = 0; n < 4; n += 1) await household.create({});
  expect(household.size).toBe(2);
  expect(await household.dinner(watched.id)).toBe(watched);
  off();
  for (let n = 0; n < 2; n += 1) await household.create({});
  expect(await household.dinner(watched.id)).not.toBe(watched);
  expect(opened.filter((id) => id === watched.id)).toHaveLength(2);
  household.close();
});
