/**
 * The scored corpus: utterances the rules were not written against when each set was added. A line is
 * "origin | expecting | text => intent slot=value, intent ..."; "none" is no action at all.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import type { Expectation, Heard, ReadContext } from '../../src/kitchen/heard.ts';

const folder = new URL('./scored/', import.meta.url);
const lexicon = lexiconOf(loadCards([builtInCardsFolder()]).cards);
const passive = new Set(['unrelated', 'unclear', 'courtesy', 'acknowledge']);

export interface Row {
  origin: string;
  expecting: string;
  text: string;
  wanted: string;
}

export const rows: Row[] = readdirSync(folder)
  .flatMap((file) => readFileSync(new URL(file, folder), 'utf8').split('\n'))
  .filter((line) => line.trim() !== '' && !line.startsWith('#'))
  .map((line) => {
    const [said = '', wanted = ''] = line.split(' => ');
    const [origin = '', expecting = '', ...text] = said.split('|').map((part) => part.trim());
    return { origin, expecting, text: text.join('|'), wanted };
  });

/** "It's out and resting" is the roast out or the rest begun, alike. */
const same = (heard: unknown, wanted: string | undefined): boolean =>
  heard === wanted || (heard === 'report-started' && wanted === 'report-out');

/** Whether what was heard is what was meant: every intent in order, every number exact. */
export function right(row: Row, heard: readonly Heard[]): boolean {
  if (row.wanted === 'none') return heard.every((one) => passive.has(one.intent));
  const wanted = row.wanted.split(', ').map((part) => part.split(' '));
  if (wanted.length !== heard.length) return false;
  return wanted.every(([intent, ...slots], at) => {
    const one = heard[at] as unknown as Record<string, unknown>;
    return (
      same(one.intent, intent) &&
      slots.every((slot) => {
        const [name = '', value = ''] = slot.split('=');
        return String(one[name]) === value;
      })
    );
  });
}

/** The situation a line of the corpus is said in. */
export const contextOf = (row: Row): ReadContext => ({
  now: Date.parse('2026-12-19T17:30:00Z'),
  timeZone: 'UTC',
  expecting: (row.expecting || undefined) as Expectation | undefined,
  units: { temperature: row.origin === 'metric' ? 'C' : 'F', weight: 'lb' },
  paused: false,
  dishes: ['roast-potatoes', 'green-beans'],
  openSteps: [],
  lexicon,
});
