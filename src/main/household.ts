/** What a command finds around it: folders, cards, the journal, the zone and the heat. */
import { mkdirSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { builtInCardsFolder, cardErrorLine, loadCards } from '../cards/load.ts';
import type { Card } from '../kitchen/card.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { Journal, Opening } from '../session/ports.ts';
import { Refusal } from './refusal.ts';

/** `--data`, or roastcall's place among the user's data (XDG base directories). */
export function dataFolder(given: string | undefined): string {
  const share = process.env.XDG_DATA_HOME || join(homedir(), '.local', 'share');
  const folder = given ?? join(share, 'roastcall');
  try {
    mkdirSync(folder, { recursive: true });
    return folder;
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Refusal(`The folder ${folder} cannot be made (${why}); name another with --data.`, 1);
  }
}

/** What the journal holds of a dinner; a refusal that names the newest where it holds none of it. */
export async function factsOf(dinner: string, journal: Journal): Promise<Fact[]> {
  const facts = await journal.read(dinner);
  const dinners = await journal.dinners();
  if (facts.length > 0) return facts;
  const known = dinners.slice(0, 5).map((one) => one.id);
  const ask = known.length > 0 ? `the newest are ${known.join(', ')}` : 'there is none yet';
  throw new Refusal(`There is no dinner "${dinner}" in the journal; ${ask}.`, 1);
}

/** The built-in cards and those of the cook's own folders; a card in error is named and left out. */
export function cardsOf(...own: readonly (string | undefined)[]): Card[] {
  const folders = [builtInCardsFolder(), ...own.filter((folder) => folder !== undefined)];
  const { cards, errors } = loadCards(folders);
  for (const error of errors) process.stderr.write(`${cardErrorLine(error)}\n`);
  return cards;
}

/** How a dinner of this household begins. */
export const openingOf = (seed: number): Opening => ({
  timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
  units: { temperature: 'F', weight: 'lb' },
  seed,
  language: 'en',
});
