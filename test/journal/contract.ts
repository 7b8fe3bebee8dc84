/** What every journal promises, whatever keeps it. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NewFact } from '../../src/kitchen/facts.ts';
import { type Change, type Journal, PositionTaken } from '../../src/session/ports.ts';

const opened: NewFact = {
  type: 'dinner-opened',
  timeZone: 'Europe/Dublin',
  temperatureUnit: 'C',
  weightUnit: 'kg',
  seed: 3,
  language: 'en',
};
const guests = (count: number): NewFact => ({ type: 'guests-counted', count });

export interface JournalUnderTest {
  /** A journal that holds nothing yet. */
  open(): Promise<Journal>;
  /** Another holder of the same journal, as another process would be. */
  again?: (() => Promise<Journal>) | undefined;
}

export function journalContract(name: string, { open, again }: JournalUnderTest): void {
  describe(`the ${name} journal`, () => {
    it('gives facts back in their places, as it gave them on writing', async () => {
      const journal = await open();
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
      const journal = await open();
      await journal.append('a', 0, 1, [opened]);
      await expect(journal.append('a', 0, 2, [guests(1), guests(2)])).rejects.toThrow(
        PositionTaken,
      );
      await expect(journal.append('a', 5, 2, [guests(1)])).rejects.toThrow(RangeError);
      expect(await journal.read('a')).toHaveLength(1);
      await journal.close();
    });

    it('lets exactly one of two racing appends win', async () => {
      const journal = await open();
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
      const journal = await open();
      await journal.append('a', 0, 1, [opened]);
      await expect(journal.append('a', 1, 2, [guests(4), bad as NewFact])).rejects.toThrow(
        /Fact 2/,
      );
      expect(await journal.read('a')).toHaveLength(1);
      await journal.close();
    });

    it('keeps dinners apart and lists them newest first', async () => {
      const journal = await open();
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
            const journal = await open();
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
    it('finds one dinner, or that there is none', async () => {
      const journal = await open();
      await journal.append('a', 0, 1_000, [opened]);
      await journal.append('a', 1, 2_000, [guests(2)]);
      expect(await journal.find('a')).toEqual({ id: 'a', openedAt: 1_000, lastAt: 2_000 });
      expect(await journal.find('b')).toBeUndefined();
      await journal.close();
    });

    it('keeps any text as it was said', async () => {
      const journal = await open();
      const who = 'Zoë "the\\nut" \u0000 \n 🍗 \ud800 end';
      const [fact] = await journal.append('a', 0, 1, [{ type: 'hands-added', who }]);
      expect(fact).toMatchObject({ who });
      expect(await journal.read('a')).toEqual([fact]);
      await journal.close();
    });

    if (!again) return;
    it('tells a follower of what others append, within a second', async () => {
      const journal = await open();
      await journal.append('a', 0, 1, [opened]);
      const other = await again();
      const told: (Change | undefined)[] = [];
      const off = other.follow((change) => told.push(change));
      await journal.append('a', 1, 2, [guests(3), guests(4)]);
      await expect.poll(() => told.length, { timeout: 1_000 }).toBe(1);
      expect([undefined, { dinner: 'a', held: 3 }]).toContainEqual(told[0]);
      expect(await other.read('a', 1)).toHaveLength(2);
      off();
      await journal.append('a', 3, 3, [guests(5)]);
      await new Promise((resolve) => setTimeout(resolve, 700));
      expect(told).toHaveLength(1);
      await journal.close();
      await other.close();
    });

    it('lets exactly one of two holders take a position', async () => {
      const one = await open();
      const two = await again();
      const held = { facts: 0 };
      for (let round = 0; round < 20; round += 1) {
        const race = await Promise.allSettled(
          [one, two].map((journal, n) => journal.append('a', held.facts, round, [guests(n + 1)])),
        );
        const lost = race.filter((result) => result.status === 'rejected');
        expect(lost).toHaveLength(1);
        expect(lost[0]?.reason).toBeInstanceOf(PositionTaken);
        held.facts += 1;
      }
      expect(await one.read('a')).toHaveLength(20);
      await one.close();
      await two.close();
    });
  });
}
