/** A fact as a row, and a row as a fact: what both journals share. */
import type { z } from 'zod';
import { type Fact, factSchema, factTypes, factVersion, type NewFact } from '../kitchen/facts.ts';
import { JournalTrouble } from './trouble.ts';
import { type OldBody, type Upcasters, upcast, upcasters } from './upcast.ts';

export interface Row {
  dinner: string;
  position: number;
  at: number;
  type: string;
  v: number;
  /** JSON of what is left of the fact. */
  body: string;
}

/** What a fact's shape is checked against; handed in so that tests can have a newer world. */
export interface Shapes {
  newest: number;
  upcasters: Upcasters;
}

export const shapesOfToday: Shapes = { newest: factVersion, upcasters };

/**
 * The row of a new fact, and the fact as any later reading of that row will give it.
 * Throws JournalTrouble when the fact does not have the shape of its type.
 */
export function recorded(
  place: { dinner: string; position: number; at: number },
  fact: NewFact,
): { row: Row; fact: Fact } {
  const { type, ...body } = fact;
  const row: Row = { ...place, type, v: factVersion, body: JSON.stringify(body) };
  // JSON cannot hold what is not a number and would turn it into null; the check sees that.
  return { row, fact: factOf(row) };
}

/** The fact in a row. Throws JournalTrouble with one sentence when it cannot be understood. */
export function factOf(row: Row, shapes: Shapes = shapesOfToday): Fact {
  const type = factTypes.find((known) => known === row.type);
  if (!type) {
    throw new JournalTrouble(
      'unknown-fact',
      `${where(row)} is of a kind this version does not know ("${row.type}"); use the version that wrote it, nothing was changed.`,
    );
  }
  if (row.v > shapes.newest) {
    throw new JournalTrouble(
      'newer-fact',
      `${where(row)} was written by a newer version (shape ${row.v}, this one knows up to ${shapes.newest}); update roastcall, nothing was changed.`,
    );
  }
  const body = upcast({ type, version: row.v, body: bodyOf(row), ...shapes });
  const { dinner, position, at } = row;
  const checked = factSchema.safeParse({ ...body, type, dinner, position, at, v: shapes.newest });
  if (checked.success) return checked.data;
  throw new JournalTrouble(
    'broken-fact',
    `${where(row)} does not have the shape of "${type}" (${firstIssue(checked.error)}); restore the file from a copy or start another dinner, nothing was changed.`,
  );
}

function bodyOf(row: Row): OldBody {
  try {
    const body: unknown = JSON.parse(row.body);
    if (typeof body === 'object' && body !== null) return body as OldBody;
  } catch {
    // Told below, with its place.
  }
  throw new JournalTrouble(
    'broken-fact',
    `${where(row)} is not JSON; restore the file from a copy or start another dinner, nothing was changed.`,
  );
}

const where = (row: Row): string => `Fact ${row.position} of dinner ${row.dinner}`;

function firstIssue(error: z.ZodError): string {
  const issue = error.issues[0];
  if (!issue) return 'unknown fault';
  return `${issue.path.join('.') || 'fact'}: ${issue.message}`;
}
