/**
 * One card's text, parsed and checked against the schema, with a place (line, column, field) for
 * whatever is wrong. May not know of files on disk or of other cards.
 */

import {
  type Document,
  type ErrorCode,
  isMap,
  isScalar,
  LineCounter,
  parseDocument,
  type YAMLParseError,
} from 'yaml';
import { type Card, cardSchema } from '../kitchen/card.ts';
import { danglingAlias } from './alias.ts';
import { type CardError, type CardPath, fieldOf } from './error.ts';
import { type SchemaIssue, sentencesOf } from './sentences.ts';

export interface ReadCard {
  file: string;
  /** What the card says its id is, even when the rest is wrong. */
  id: string | undefined;
  card: Card | undefined;
  errors: CardError[];
  /** Where a field stands, or the nearest thing around it that is there. */
  place(path: CardPath): Omit<CardError, 'sentence'>;
}

export function readCard(text: string, file: string): ReadCard {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const at = (offset: number, path: CardPath): Omit<CardError, 'sentence'> => {
    const { line, col } = lines.linePos(offset);
    return { file, line: Math.max(line, 1), column: Math.max(col, 1), field: fieldOf(path) };
  };
  const place = (path: CardPath) => at(offsetOf(document, path), path);
  const broken = document.errors
    .slice(0, 1 + document.errors.findIndex(({ code }) => throwsOffTheRest(code)) || undefined)
    .map((error) => {
      const opener = unclosedBefore(error, text);
      return opener === undefined
        ? { ...at(error.pos[0], []), sentence: unreadable(error.code) }
        : { ...at(opener, []), sentence: 'what opens here is not closed: a bracket or a brace' };
    })
    .filter((error, index, all) => all.findIndex((one) => one.line === error.line) === index);
  if (broken.length > 0) return { file, id: undefined, card: undefined, errors: broken, place };
  const alias = danglingAlias(document);
  if (alias !== undefined) {
    const sentence =
      'A star here stands for a name given earlier, and there is none; put the text in quotes.';
    return {
      file,
      id: undefined,
      card: undefined,
      errors: [{ ...at(alias, []), sentence }],
      place,
    };
  }
  const value: unknown = document.toJS();
  const said = document.get('id');
  const id = typeof said === 'string' ? said : undefined;
  const parsed = cardSchema.safeParse(value);
  if (parsed.success) return { file, id, card: parsed.data, errors: [], place };
  const errors = parsed.error.issues
    .flatMap((issue) => sentencesOf(issue as SchemaIssue, value))
    .map(({ path, sentence }) => ({ ...place(path), sentence }));
  return { file, id, card: undefined, errors, place };
}

/** The offset of a field's key, or of an item of a list; of the nearest thing around it if absent. */
function offsetOf(document: Document, path: CardPath): number {
  for (let length = path.length; length > 0; length--) {
    const here = path.slice(0, length);
    const parent = length === 1 ? document.contents : document.getIn(here.slice(0, -1), true);
    const last = here[length - 1];
    if (isMap(parent)) {
      const pair = parent.items.find((item) => isScalar(item.key) && item.key.value === last);
      if (pair && isScalar(pair.key) && pair.key.range) return pair.key.range[0];
    } else {
      const node = document.getIn(here, true);
      if (hasRange(node)) return node.range[0];
    }
  }
  return hasRange(document.contents) ? document.contents.range[0] : 0;
}

const hasRange = (node: unknown): node is { range: [number, number, number] } =>
  typeof node === 'object' && node !== null && 'range' in node && Array.isArray(node.range);

/** A line that is pushed in wrongly makes nonsense of those after it: they are not told. */
const throwsOffTheRest = (code: ErrorCode): boolean =>
  code === 'TAB_AS_INDENT' || code === 'BAD_INDENT';

/** Where the bracket opens whose list runs on into the next field, if that is what is wrong. */
function unclosedBefore({ code, message, pos }: YAMLParseError, text: string): number | undefined {
  if (code !== 'BAD_INDENT' || !message.startsWith('Flow')) return undefined;
  const before = text.slice(0, pos[0]);
  const opener = Math.max(before.lastIndexOf('['), before.lastIndexOf('{'));
  return opener < 0 ? undefined : opener;
}

/** What is wrong with the writing itself, before any field is looked at. */
function unreadable(code: ErrorCode): string {
  switch (code) {
    case 'TAB_AS_INDENT':
      return 'this line is pushed in with a tab; use spaces';
    case 'BAD_INDENT':
      return 'this line stands too far in or out for where it belongs';
    case 'DUPLICATE_KEY':
      return 'this field is written twice in the same place';
    case 'BLOCK_AS_IMPLICIT_KEY':
    case 'MULTILINE_IMPLICIT_KEY':
    case 'IMPOSSIBLE':
      return 'a colon and a line break do not fit here; is the line in the right column, or does a sentence with a colon want quotation marks?';
    case 'MISSING_CHAR':
      return 'something that was opened is not closed here: a quotation mark, a bracket or a brace';
    default:
      return `this cannot be read as YAML (${code.toLowerCase().replaceAll('_', ' ')}); look at its colons, quotes and indent`;
  }
}
