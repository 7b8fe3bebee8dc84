/** A journal that lives as long as the process: for rehearsals, plans on paper and tests. */
import type { Fact, NewFact } from '../kitchen/facts.ts';
import { type Journal, type ListedDinner, PositionTaken } from '../session/ports.ts';
import { factOf, type Row, recorded } from './record.ts';

export function openMemoryJournal(): Journal {
  const streams = new Map<string, Row[]>();
  const listed = (): ListedDinner[] =>
    [...streams]
      .map(([id, rows]) => ({
        id,
        openedAt: rows[0]?.at ?? 0,
        lastAt: Math.max(...rows.map((row) => row.at)),
      }))
      .sort(newestFirst);
  return {
    async append(dinner, expected, at, facts) {
      const rows = streams.get(dinner) ?? [];
      expectGapless(dinner, expected, rows.length);
      const added = placed(dinner, expected, at, facts);
      if (added.length > 0) streams.set(dinner, [...rows, ...added.map((one) => one.row)]);
      return added.map((one) => one.fact);
    },
    async read(dinner, from = 0) {
      return (streams.get(dinner) ?? []).slice(from).map((row) => factOf(row));
    },
    dinners: async () => listed(),
    find: async (dinner) => listed().find((one) => one.id === dinner),
    // Nobody else holds it.
    follow: () => () => undefined,
    async writable() {},
    async close() {},
  };
}

export const newestFirst = (
  a: { id: string; openedAt: number },
  b: { id: string; openedAt: number },
): number => b.openedAt - a.openedAt || (a.id < b.id ? 1 : -1);

/** The facts at their places, checked before any of them is kept. */
export const placed = (
  dinner: string,
  expected: number,
  at: number,
  facts: readonly NewFact[],
): { row: Row; fact: Fact }[] =>
  facts.map((fact, index) => recorded({ dinner, position: expected + index, at }, fact));

/** Holds the promise that positions have no gaps and are given once. */
export function expectGapless(dinner: string, expected: number, held: number): void {
  if (held > expected) throw new PositionTaken(expected);
  if (held < expected)
    throw new RangeError(`dinner ${dinner} holds ${held} facts, ${expected} were expected`);
}
