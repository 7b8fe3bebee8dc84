/**
 * Reads folders of cards. A card is one YAML file; a later folder's card replaces an earlier one of
 * the same id, so a cook's own folder is named last. What cannot be read is an error with its place,
 * never a throw, and the other cards still load. Knows nothing of dinners, plans or clocks.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Card } from '../kitchen/card.ts';
import { crossCheck, danglingSteps, unknownRoasts } from './cross-check.ts';
import type { CardError } from './error.ts';
import { type ReadCard, readCard } from './read.ts';

export { cardErrorLine } from './error.ts';

export interface LoadedCards {
  /** In order of id. */
  cards: Card[];
  errors: CardError[];
}

/** The folder of the cards that come with the program, in a language ("en"). */
export const builtInCardsFolder = (language = 'en'): string =>
  fileURLToPath(new URL(`../../cards/${language}`, import.meta.url));

/**
 * Loads every `*.yaml` and `*.yml` file of the folders, in order. A card with an error is left out,
 * and a card it would have replaced stays out too: cooking from the wrong card is worse than asking.
 */
export function loadCards(folders: readonly string[]): LoadedCards {
  const byId = new Map<string, ReadCard & { card: Card }>();
  const errors: CardError[] = [];
  for (const folder of folders) {
    const here = readFolder(folder, errors);
    const seen = new Map<string, string>();
    for (const read of here) {
      errors.push(...read.errors);
      const twin = read.id === undefined ? undefined : seen.get(read.id);
      if (twin !== undefined) {
        const sentence = `the id "${read.id}" is taken by ${twin} in the same folder`;
        errors.push({ ...read.place(['id']), sentence });
        continue;
      }
      if (read.id === undefined) continue;
      byId.delete(read.id);
      seen.set(read.id, read.file);
      if (read.card !== undefined && read.errors.length === 0)
        byId.set(read.id, { ...read, card: read.card });
    }
  }
  const known = new Map([...byId].map(([id, read]) => [id, read.card]));
  for (const [id, read] of byId) {
    const dangling = [...danglingSteps(read.card, known), ...unknownRoasts(read.card, known)];
    errors.push(...dangling.map(({ path, sentence }) => ({ ...read.place(path), sentence })));
    if (dangling.length > 0) known.delete(id);
  }
  const cards = [...known.values()].sort((a, b) => (a.id < b.id ? -1 : 1));
  return { cards, errors };
}

/** Reads and checks one card's text as far as that can be done without the other cards. */
export function checkCard(text: string, file: string): ReadCard {
  const read = readCard(text, file);
  if (read.card === undefined) return read;
  const faults = crossCheck(read.card).map(({ path, sentence }) => ({
    ...read.place(path),
    sentence,
  }));
  return { ...read, errors: [...read.errors, ...faults] };
}

function readFolder(folder: string, errors: CardError[]): ReadCard[] {
  const place = { file: folder, line: 1, column: 1, field: '' };
  let names: string[];
  try {
    names = readdirSync(folder).filter((name) => /\.ya?ml$/.test(name));
  } catch {
    errors.push({ ...place, sentence: 'this folder of cards cannot be read; is its name right?' });
    return [];
  }
  const reads: ReadCard[] = [];
  for (const name of names.sort()) {
    const file = join(folder, name);
    try {
      reads.push(checkCard(readFileSync(file, 'utf8'), file));
    } catch {
      errors.push({ ...place, file, sentence: 'this file cannot be opened' });
    }
  }
  return reads;
}
