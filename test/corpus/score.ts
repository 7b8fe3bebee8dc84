/** Scores what was heard against the corpus: wholly right, numbers right, and acted when nothing was asked. */
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { lexiconOf } from '../../src/kitchen/card.ts';
import type { Heard, ReadContext } from '../../src/kitchen/heard.ts';
import { type Label, type Row, rowsOf } from './load.ts';

const lexicon = lexiconOf(loadCards([builtInCardsFolder()]).cards);
const cuts = new Set(lexicon.cuts.map((cut) => cut.id));
const passive = new Set(['unrelated', 'unclear', 'courtesy', 'acknowledge']);

/** Slots that hold ids of dishes and steps: a dish stands for any of its steps. */
const idSlots = new Set(['dish', 'step', 'what']);
/** Slots that hold words as said: the label names the part that must be there. */
const wordSlots = new Set(
  'about cut ingredient label oven pan shelf thing topic where which who'.split(' '),
);
/** Intents whose point is a number: the issue asks more of them. */
const numbered = new Set(
  'report-reading report-oven set-serving-time shift-serving running-behind cook-away set-timer watch'.split(
    ' ',
  ),
);

const isGerman = (row: Row): boolean => row.language === 'de';
const scored = rowsOf('scored');

export const rulesRows: readonly Row[] = rowsOf('rules');
/** What weights are learnt from: the rules half, and lines that only weights have read. */
export const taughtRows: readonly Row[] = [...rulesRows, ...rowsOf('learnt')];
export const scoredRows: readonly Row[] = scored.filter((row) => !isGerman(row));
/** The small second language, only scored. */
export const germanRows: readonly Row[] = scored.filter(isGerman);
/** Both halves of the English. */
export const rows: readonly Row[] = [...rulesRows, ...scoredRows];

const usualNow = '2026-12-19T13:30:00-06:00';
const usualZone = 'America/Chicago';

/** The situation a line of the corpus is said in. */
export const contextOf = (row: Row): ReadContext => ({
  now: Date.parse(row.now ?? usualNow),
  timeZone: row.timeZone ?? usualZone,
  stage: row.stage,
  expecting: row.expecting,
  units: row.units ?? { temperature: 'F', weight: 'lb' },
  paused: row.paused ?? false,
  dishes: row.dishes ?? [],
  openSteps: [],
  language: row.language,
  lexicon,
});

/** Whether what was heard is what was meant: every intent in order, every labelled slot exact. */
export const right = (row: Row, heard: readonly Heard[]): boolean =>
  [row.heard, ...(row.or ?? [])].some((wanted) => matches(wanted, heard));

function matches(wanted: readonly Label[], heard: readonly Heard[]): boolean {
  if (wanted.length === 1 && wanted[0]!.intent === 'unrelated')
    return heard.every((one) => passive.has(one.intent));
  const labels = withoutManners(wanted);
  const said = withoutManners(heard);
  return labels.length === said.length && labels.every((label, at) => meets(label, said[at]!));
}

/** "Thanks" and "okay" beside anything else change nothing, heard or not. */
function withoutManners<T extends { intent: string }>(list: readonly T[]): readonly T[] {
  const rest = list.filter((one) => one.intent !== 'courtesy' && one.intent !== 'acknowledge');
  return rest.length === 0 ? list.slice(0, 1) : rest;
}

/** Whether one intent is what one label asks for. */
export function meets({ intent, ...slots }: Label, heard: Heard): boolean {
  const said = heard as unknown as Record<string, unknown>;
  if (intent === 'report-out' && slots.what === undefined) {
    // "It's out and resting" is the roast out or the rest begun, alike.
    const roastOut = heard.intent === 'report-out' && namesRoast(heard.what);
    const resting = heard.intent === 'report-started' && heard.step === 'rest';
    if (!roastOut && !resting) return false;
  } else if (heard.intent !== intent) return false;
  return Object.entries(slots).every(([name, wanted]) => slotHolds(name, wanted, said[name]));
}

const namesRoast = (what: string | undefined): boolean =>
  what === undefined || what === 'roast' || cuts.has(what);

function slotHolds(name: string, wanted: unknown, said: unknown): boolean {
  if (Array.isArray(wanted)) return wanted.some((one) => slotHolds(name, one, said));
  if (wanted === null) return said === undefined;
  if (typeof wanted === 'number') return typeof said === 'number' && Math.abs(said - wanted) < 1e-6;
  if (typeof wanted !== 'string' || typeof said !== 'string') return said === wanted;
  if (idSlots.has(name)) return said === wanted || said.startsWith(`${wanted}.`);
  if (wordSlots.has(name)) return said.toLowerCase().includes(wanted.toLowerCase());
  return said === wanted;
}

/** Whether the line asks for nothing to be done, and something was heard that would be. */
export const actsFalsely = (row: Row, heard: readonly Heard[]): boolean =>
  isPassive(row) && !right(row, heard) && heard.some((one) => !passive.has(one.intent));

export const isPassive = (row: Row): boolean => row.heard.every((one) => passive.has(one.intent));

/** Whether the line is about a reading, a time or a duration. */
export const tellsNumber = (row: Row): boolean => row.heard.some((one) => numbered.has(one.intent));
