/** RFC 9457 problems: what went wrong, in one sentence that names the field. */
import type { z } from 'zod';
import { HouseholdTrouble } from '../../household/trouble.ts';
import { NotWritable } from '../../session/ports.ts';

export class Problem extends Error {
  readonly status: number;
  readonly title: string;
  constructor(status: number, title: string, detail: string) {
    super(detail);
    this.name = 'Problem';
    this.status = status;
    this.title = title;
  }
}

const statusOf = {
  'unknown-dinner': [404, 'Not found'],
  'backwards-clock': [409, 'The clock does not go back'],
  'real-clock': [409, 'The clock is real'],
  'bad-value': [422, 'Not understood'],
} as const;

/** Checks a body; an absent one counts as empty. */
export function bodyOf<S extends z.ZodType>(schema: S, body: unknown): z.infer<S> {
  const checked = schema.safeParse(body ?? {});
  if (checked.success) return checked.data;
  const told = checked.error.issues.map((issue) => {
    const path = issue.path.join('.');
    if (issue.code === 'unrecognized_keys') {
      const names = issue.keys.map((key) => [path, key].filter(Boolean).join('.')).join(', ');
      return `${names}: unknown field`;
    }
    return `${path || 'body'}: ${issue.message}`;
  });
  throw new Problem(422, 'Not understood', told.join('; '));
}

/** Any failure as a problem; what is nobody's fault outside says nothing of the inside. */
export function problemOf(error: unknown): Problem {
  if (error instanceof Problem) return error;
  if (error instanceof HouseholdTrouble) {
    const [status, title] = statusOf[error.kind];
    return new Problem(status, title, error.message);
  }
  if (error instanceof NotWritable) return new Problem(503, 'Not written', error.message);
  const status =
    error instanceof Error && 'statusCode' in error ? Number(error.statusCode) : undefined;
  if (status !== undefined && status >= 400 && status < 500)
    return new Problem(status, 'Not accepted', (error as Error).message);
  return new Problem(500, 'Internal error', 'That did not work; nothing is lost, try again.');
}
