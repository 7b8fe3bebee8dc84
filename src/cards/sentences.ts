/** What the schema says is wrong, as sentences for someone who cooks rather than programs. */

import type { CardPath } from './error.ts';
import { fieldNames } from './glossary.ts';

/** The parts of a schema issue that are read here. */
export interface SchemaIssue {
  code: string;
  path: (string | number)[];
  message: string;
  keys?: string[];
  expected?: string;
  values?: unknown[];
  origin?: string;
  minimum?: number;
  inclusive?: boolean;
}

export interface Fault {
  path: CardPath;
  sentence: string;
}

export function sentencesOf(issue: SchemaIssue, card: unknown): Fault[] {
  const path = issue.path;
  const found = valueAt(card, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return (issue.keys ?? []).map((key) => ({
        path: [...path, key],
        sentence: `"${key}" is not a field here${guess(key, fieldNames)}`,
      }));
    case 'invalid_type':
      if (path.length === 0)
        return [{ path, sentence: 'a card is a list of fields, and this file holds none' }];
      return [
        {
          path,
          sentence:
            found === undefined || found === null
              ? `this field is missing; it wants ${kind(issue.expected)}`
              : `this wants ${kind(issue.expected)}, not ${shown(found)}`,
        },
      ];
    case 'invalid_value':
      return [{ path, sentence: `this must be ${oneOf(issue.values ?? [])}, not ${shown(found)}` }];
    case 'invalid_union':
      if (path.at(-1) === 'usual')
        return [{ path, sentence: `this wants true, false or a list of ids of roasts` }];
      return [
        {
          path,
          sentence: `a card is a roast, side, sauce or butter, and this says ${shown(found)}`,
        },
      ];
    case 'too_small':
      return [{ path, sentence: tooSmall(issue, found) }];
    case 'too_big':
      return [{ path, sentence: `this list is too long: ${shown(found)}` }];
    default:
      return [{ path, sentence: `${lead(found)}${issue.message}` }];
  }
}

function tooSmall(issue: SchemaIssue, found: unknown): string {
  const least = issue.minimum ?? 0;
  if (issue.origin === 'array') return `this list wants at least ${least}, and has fewer`;
  if (issue.origin === 'string') return `this wants words, at least ${least} letters of them`;
  return issue.inclusive === false
    ? `this must be more than ${least}, not ${shown(found)}`
    : `this must be ${least} or more, not ${shown(found)}`;
}

const lead = (found: unknown): string =>
  found === undefined || typeof found === 'object' ? '' : `${shown(found)} will not do: `;

function kind(expected: string | undefined): string {
  switch (expected) {
    case 'string':
      return 'words';
    case 'number':
      return 'a plain number, without a unit';
    case 'boolean':
      return 'true or false';
    case 'array':
    case 'tuple':
      return 'a list';
    case 'object':
      return 'fields of its own';
    default:
      return expected ?? 'something else';
  }
}

function shown(found: unknown): string {
  if (found === undefined || found === null) return 'nothing';
  if (Array.isArray(found)) return 'a list';
  if (typeof found === 'object') return 'a group of fields';
  return typeof found === 'string' ? `the words "${found}"` : String(found);
}

const oneOf = (values: unknown[]): string => {
  const words = values.map(String);
  const last = words.pop() ?? '';
  return words.length === 0 ? last : `${words.join(', ')} or ${last}`;
};

const valueAt = (root: unknown, path: CardPath): unknown =>
  path.reduce<unknown>(
    (value, part) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string | number, unknown>)[part]
        : undefined,
    root,
  );

/** A guess at what was meant, to end a sentence with; empty when nothing is near. */
export const guess = (word: string, candidates: readonly string[]): string => {
  const near = nearest(word, candidates);
  return near === undefined ? '' : `; did you mean "${near}"?`;
};

/** The candidate within two changed letters of the word (one, for words under five letters). */
function nearest(word: string, candidates: readonly string[]): string | undefined {
  const allowed = word.length < 5 ? 1 : 2;
  let best: { word: string; changes: number } | undefined;
  for (const candidate of candidates) {
    const changes = lettersChanged(word.toLowerCase(), candidate.toLowerCase());
    if (changes <= allowed && (best === undefined || changes < best.changes))
      best = { word: candidate, changes };
  }
  return best?.word;
}

/** Edit distance with swaps of neighbours counted as one (optimal string alignment). */
function lettersChanged(a: string, b: string): number {
  const rows: number[][] = [Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    const above = rows[i - 1]!;
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows[a.length]![b.length]!;
}
