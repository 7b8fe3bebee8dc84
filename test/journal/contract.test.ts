import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import type { NewFact } from '../../src/kitchen/facts.ts';
import { type Journal, PositionTaken } from '../../src/session/ports.ts';

const opened: NewFact = {
  type: 'dinner-opened',
  timeZone: 'Europe/Dublin',
  temperatureUnit: 'C',
  weightUnit: 'kg',
  seed: 3,
  language: 'en',
};
const guests = (count: number): NewFact => ({ type: 'guests-counted', count });

const folders: string[] = [];
const journals: Record<string, () => Journal> = {
  memory: openMemoryJournal,
  sqlite: () => {
    const folder = mkdtempSync(join(tmpdir(), 'journal-'));
    folders.push(folder);
    return openSqliteJournal(join(folder, 'journal.sqlite'));
  },
};
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});

describe.each(Object.entries(journals))('the %s journal', (_, open) => {
  it('gives facts back in their places, as it gave them on writing', async () => {
    const journal = open();
    const written = [
      ...(await journal.append('a', 0, 1_000, [opened, guests(6)])),
      ...(await journal.append('a', 2, 2_000, [guests(8)])),
    ];
    expect(written.map((fact) => [fact.position, fact.at, fact.type])).toEqual([
      [0, 1_000, 'dinner-opened'],
      [1, 1_000, 'guests-counted'],
      [2, 2_000, 'guests-counted'],
    ]);
    expect(await journal.read('a')).toEqual(written);
    expect(await journal.read('a', 2)).toEqual(written.slice(2));
    expect(await journal.read('nobody')).toEqual([]);
    await journal.close();
  });

  it('refuses a position that is taken, whole, and leaves nothing behind', async () => {
    const journal = open();
    await journal.append('a', 0, 1, [opened]);
    await expect(journal.append('a', 0, 2, [guests(1), guests(2)])).rejects.toThrow(PositionTaken);
    await expect(journal.append('a', 5, 2, [guests(1)])).rejects.toThrow(RangeError);
    expect(await journal.read('a')).toHaveLength(1);
    await journal.close();
  });

  it('lets exactly one of two racing appends win', async () => {
    const journal = open();
    await journal.append('a', 0, 1, [opened]);
    const race = await Promise.allSettled(
      [1, 2].map((n) => journal.append('a', 1, 2, [guests(n)])),
    );
    expect(race.map((one) => one.status).sort()).toEqual(['fulfilled', 'rejected']);
    expect(await journal.read('a')).toHaveLength(2);
    await journal.close();
  });

  it.each([
    ['a number that is none', { type: 'guests-counted', count: Number.NaN }],
    ['a field nobody knows', { type: 'guests-counted', count: 3, mood: 'fine' }],
    ['a field that is missing', { type: 'guests-counted' }],
    ['a type nobody knows', { type: 'guests-sang' }],
  ])('refuses %s on writing, with the facts beside it', async (_name, bad) => {
    const journal = open();
    await journal.append('a', 0, 1, [opened]);
    await expect(journal.append('a', 1, 2, [guests(4), bad as NewFact])).rejects.toThrow(/Fact 2/);
    expect(await journal.read('a')).toHaveLength(1);
    await journal.close();
  });

  it('keeps dinners apart and lists them newest first', async () => {
    const journal = open();
    await journal.append('old', 0, 1_000, [opened]);
    await journal.append('new', 0, 5_000, [opened]);
    await journal.append('old', 1, 9_000, [guests(2)]);
    expect(await journal.dinners()).toEqual([
      { id: 'new', openedAt: 5_000, lastAt: 5_000 },
      { id: 'old', openedAt: 1_000, lastAt: 9_000 },
    ]);
    await journal.close();
  });

  it('numbers facts without gaps whatever the sizes of the appends', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.array(fc.integer({ min: 1, max: 60 }), { maxLength: 4 }), { maxLength: 8 }),
        async (turns) => {
          const journal = open();
          let held = 0;
          for (const turn of turns)
            held += (await journal.append('a', held, held, turn.map(guests))).length;
          const facts = await journal.read('a');
          expect(facts.map((fact) => fact.position)).toEqual(facts.map((_, index) => index));
          expect(facts.map((fact) => 'count' in fact && fact.count)).toEqual(turns.flat());
          await journal.close();
        },
      ),
      { numRuns: 15 },
    );
  });
});
