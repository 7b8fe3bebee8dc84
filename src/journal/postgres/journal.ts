/**
 * The dinners of one household in PostgreSQL. Every statement about dinners stands in this file or in
 * `agenda.ts` and takes the household first: this is where one household is kept from another.
 */
import { randomUUID } from 'node:crypto';
import type { Fact, NewFact } from '../../kitchen/facts.ts';
import { type Journal, PositionTaken } from '../../session/ports.ts';
import { expectGapless, placed } from '../memory.ts';
import { factOf, type Row } from '../record.ts';
import type { Database } from './database.ts';
import type { News } from './news.ts';

/**
 * With every append a dinner is to be looked at so soon, until whoever appended has said when it is
 * next due; so nothing is forgotten if that process ends in between.
 */
export const lookSoonMilliseconds = 5_000;

/** The dinner's row goes from `expected` facts to more, or comes to be; else nothing happens. */
const grown = `
  UPDATE dinners
     SET held = held + $6::integer, last_at = greatest(last_at, $4::bigint), tries = 0,
         due_at = least(due_at, now_milliseconds() + ${lookSoonMilliseconds})
   WHERE household = $1::text AND dinner = $2::text AND held = $3::integer
  RETURNING held`;
const begun = `
  INSERT INTO dinners (household, dinner, opened_at, last_at, held, due_at)
  SELECT $1::text, $2::text, $4::bigint, $4, $6::integer, now_milliseconds() + ${lookSoonMilliseconds}
   WHERE $3::integer = 0
  ON CONFLICT DO NOTHING
  RETURNING held`;
const appended = (dinner: string): string => `
  WITH dinner AS (${dinner}),
       written AS (
         INSERT INTO facts (household, dinner, position, at, turn, type, v, body)
         SELECT $1, $2, $3 + nth - 1, $4, $5::uuid, type, v, body
           FROM dinner, unnest($7::text[], $8::integer[], $9::text[])
                WITH ORDINALITY AS new (type, v, body, nth)
       )
  SELECT held FROM dinner`;
const begin = appended(begun);
const goOn = appended(grown);

const holding = `
  SELECT held, (SELECT turn FROM facts
                 WHERE household = $1 AND dinner = $2 AND position = $3::integer) AS turn
    FROM dinners WHERE household = $1 AND dinner = $2`;

/** Everything of a household's dinners goes, and whoever holds one of them is told. */
export async function eraseDinners(
  household: string,
  database: Database,
  news: News,
): Promise<number> {
  const gone = await database.run<{ dinner: string }>(
    'DELETE FROM dinners WHERE household = $1 RETURNING dinner',
    [household],
  );
  for (const { dinner } of gone) news.tell(household, { dinner, held: 0 });
  return gone.length;
}

export function postgresJournal(household: string, database: Database, news: News): Journal {
  const listed = (dinner?: string) =>
    database.run<{ id: string; openedAt: number; lastAt: number }>(
      `SELECT dinner AS id, opened_at AS "openedAt", last_at AS "lastAt" FROM dinners
        WHERE household = $1 ${dinner === undefined ? '' : 'AND dinner = $2'}
        ORDER BY opened_at DESC, dinner COLLATE "C" DESC`,
      dinner === undefined ? [household] : [household, dinner],
    );

  /** Sent again under the same name after a lost connection, so what became of it is found out. */
  const append = async (
    dinner: string,
    expected: number,
    at: number,
    facts: readonly NewFact[],
  ): Promise<Fact[]> => {
    const added = placed(dinner, expected, at, facts);
    const turn = randomUUID();
    if (added.length > 0) {
      const rows = added.map((one) => one.row);
      const won = await database.run(expected === 0 ? begin : goOn, [
        ...[household, dinner, expected, at, turn, rows.length],
        ...[rows.map((row) => row.type), rows.map((row) => row.v), rows.map((row) => row.body)],
      ]);
      if (won.length > 0) {
        news.tell(household, { dinner, held: expected + rows.length });
        return added.map((one) => one.fact);
      }
    }
    const [there] = await database.run<{ held: number; turn: string | null }>(holding, [
      ...[household, dinner, expected],
    ]);
    if (there?.turn !== turn) {
      expectGapless(dinner, expected, there?.held ?? 0);
      // It held less a moment ago, so somebody else begins it just now.
      if (added.length > 0) throw new PositionTaken(expected);
    } else news.tell(household, { dinner, held: there.held });
    return added.map((one) => one.fact);
  };

  return {
    append,
    async read(dinner, from = 0) {
      const rows = await database.run<Row>(
        `SELECT dinner, position, at, type, v, body FROM facts
          WHERE household = $1 AND dinner = $2 AND position >= $3 ORDER BY position`,
        [household, dinner, from],
      );
      return rows.map((row) => factOf(row));
    },
    dinners: () => listed(),
    find: async (dinner) => (await listed(dinner))[0],
    follow: (told) => news.follow(household, told),
    async writable() {
      await database.run(
        `INSERT INTO room VALUES (1, decode(repeat(md5(random()::text), 512), 'hex'))
         ON CONFLICT (one) DO UPDATE SET bytes = excluded.bytes`,
        [],
      );
    },
    async close() {},
  };
}
