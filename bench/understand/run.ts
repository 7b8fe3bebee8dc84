/**
 * Scores the reader on utterances its rules were not written against (test/corpus/scored) and prints
 * a table by origin: wholly right, false actions on overheard talk, and milliseconds.
 * A line is "origin | expecting | text => intent slot=value, intent ..."; "none" is no action at all.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { read } from '../../src/intents/read.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import type { Expectation, Heard } from '../../src/kitchen/heard.ts';

const folder = new URL('../../test/corpus/scored/', import.meta.url);
const lexicon = lexiconOf(loadCards([builtInCardsFolder()]).cards);
const passive = new Set(['unrelated', 'unclear', 'courtesy', 'acknowledge']);

interface Row {
  origin: string;
  expecting: string;
  text: string;
  wanted: string;
}

const rows: Row[] = readdirSync(folder)
  .flatMap((file) => readFileSync(new URL(file, folder), 'utf8').split('\n'))
  .filter((line) => line.trim() !== '' && !line.startsWith('#'))
  .map((line) => {
    const [said = '', wanted = ''] = line.split(' => ');
    const [origin = '', expecting = '', ...text] = said.split('|').map((part) => part.trim());
    return { origin, expecting, text: text.join('|'), wanted };
  });

function right(row: Row, heard: readonly Heard[]): boolean {
  if (row.wanted === 'none') return heard.every((one) => passive.has(one.intent));
  const wanted = row.wanted.split(', ').map((part) => part.split(' '));
  if (wanted.length !== heard.length) return false;
  return wanted.every(([intent, ...slots], at) => {
    const one = heard[at] as unknown as Record<string, unknown>;
    return (
      one.intent === intent &&
      slots.every((slot) => {
        const [name = '', value = ''] = slot.split('=');
        return String(one[name]) === value;
      })
    );
  });
}

const tally = new Map<string, { right: number; all: number }>();
const times: number[] = [];
for (const row of rows) {
  const context = {
    now: Date.parse('2026-12-19T17:30:00Z'),
    timeZone: 'UTC',
    expecting: (row.expecting || undefined) as Expectation | undefined,
    units: { temperature: row.origin === 'metric' ? 'C' : 'F', weight: 'lb' } as const,
    paused: false,
    dishes: ['roast-potatoes', 'green-beans'],
    openSteps: [],
    lexicon,
  };
  read(row.text, context);
  for (let round = 0; round < 5; round++) {
    const start = performance.now();
    read(row.text, context);
    times.push(performance.now() - start);
  }
  const heard = read(row.text, context);
  const ok = right(row, heard);
  const count = tally.get(row.origin) ?? { right: 0, all: 0 };
  tally.set(row.origin, { right: count.right + (ok ? 1 : 0), all: count.all + 1 });
  if (!ok && process.argv.includes('--misses'))
    console.log(`${row.text} => ${JSON.stringify(heard.map(({ text: _, ...one }) => one))}`);
}
times.sort((a, b) => a - b);
const total = [...tally.values()].reduce((sum, one) => sum + one.right, 0);
for (const [origin, { right, all }] of tally)
  console.log(`${origin.padEnd(12)} ${right} of ${all}  ${((100 * right) / all).toFixed(1)} %`);
console.log(
  `all          ${total} of ${rows.length}  ${((100 * total) / rows.length).toFixed(1)} %`,
);
console.log(
  `milliseconds p50 ${times[times.length >> 1]!.toFixed(2)}  p99 ${times[Math.floor(times.length * 0.99)]!.toFixed(2)}`,
);
