import { describe, expect, it } from 'vitest';
import { oncePer } from '../../src/base/once.ts';
import { read } from '../../src/intents/read.ts';
import { parseRows, type Row } from './load.ts';
import {
  actsFalsely,
  contextOf,
  germanRows,
  right,
  rulesRows,
  scoredRows,
  tellsNumber,
} from './score.ts';

/** In percent, just under what stands; the numbered are lines about a reading, a time or a duration. */
const floors = {
  rules: { spoken: 87, numbered: 91, falseActions: 2 },
  scored: { spoken: 83, numbered: 83, falseActions: 8.5 },
};

/** Of the rules half one line in three is enough to see a fall; the table of the benchmark reads it all. */
const halves = [
  { half: 'rules', rows: rulesRows.filter((_, at) => at % 3 === 0) },
  { half: 'scored', rows: scoredRows },
] as const;

/** A line is read once, however much is asked of it. */
const heard = oncePer((row: Row) => read(row.text, contextOf(row)));
const isTalk = (row: Row): boolean => row.origin === 'chatter';
const percent = (rows: readonly Row[], holds: (row: Row) => boolean): number =>
  (100 * rows.filter(holds).length) / rows.length;
const isRight = (row: Row): boolean => right(row, heard(row));

/** Some thousands of lines are read in each of these. */
const patience = { timeout: 300_000 };

describe.each(halves)('the $half half of the corpus', patience, ({ half, rows }) => {
  const spoken = rows.filter((row) => !isTalk(row));
  const talk = rows.filter(isTalk);
  const floor = floors[half];

  it(`is wholly right on at least ${floor.spoken} %`, () => {
    expect(spoken.length).toBeGreaterThan(1500);
    expect(percent(spoken, isRight)).toBeGreaterThanOrEqual(floor.spoken);
  });

  it(`is wholly right on at least ${floor.numbered} % of readings, times and durations`, () => {
    expect(percent(spoken.filter(tellsNumber), isRight)).toBeGreaterThanOrEqual(floor.numbered);
  });

  it(`acts on at most ${floor.falseActions} % of overheard talk`, () => {
    expect(talk.length).toBeGreaterThan(300);
    const share = percent(talk, (row) => actsFalsely(row, heard(row)));
    expect(share).toBeLessThanOrEqual(floor.falseActions);
  });
});

describe('the German main path', () => {
  it('is wholly right on at least 90 %', () => {
    const spoken = germanRows.filter((row) => !isTalk(row));
    expect(spoken.length).toBeGreaterThan(25);
    expect(percent(spoken, isRight)).toBeGreaterThanOrEqual(90);
  });
});

describe('a line of the corpus', () => {
  const fault = (line: object) => () => parseRows(JSON.stringify(line), 'x.jsonl');
  const good = {
    text: 'it reads 104',
    heard: [{ intent: 'report-reading', temperature: 104 }],
    origin: 'typed',
    family: 'reading',
  };

  it('is refused with its file, line and field', () => {
    expect(fault(good)).not.toThrow();
    expect(fault({ ...good, origin: 'sung' })).toThrow(/^x\.jsonl:1: origin: /);
    expect(fault({ ...good, heard: [{ intent: 'report-reading', degrees: 104 }] })).toThrow(
      /^x\.jsonl:1: heard\.0\.degrees: report-reading\.degrees = 104/,
    );
    expect(fault({ ...good, heard: [{ intent: 'watch', temperature: 'hot' }] })).toThrow(
      /watch\.temperature = "hot"/,
    );
    expect(() => parseRows('{', 'x.jsonl')).toThrow('x.jsonl:1: this line is not JSON');
  });

  it('is right only with every intent in order and every labelled slot exact', () => {
    const [row] = parseRows(
      JSON.stringify({
        ...good,
        heard: [
          { intent: 'report-reading', temperature: [104, 140], unit: null },
          { intent: 'report-started', step: 'roast-potatoes' },
        ],
        or: [[{ intent: 'unclear' }]],
      }),
      'x.jsonl',
    ) as [Row];
    const reading = { intent: 'report-reading', temperature: 104, text: '' } as const;
    const started = { intent: 'report-started', step: 'roast-potatoes.in', text: '' } as const;
    expect(right(row, [reading, started])).toBe(true);
    expect(right(row, [started, reading])).toBe(false);
    expect(right(row, [reading])).toBe(false);
    expect(right(row, [{ ...reading, temperature: 105 }, started])).toBe(false);
    expect(right(row, [{ ...reading, unit: 'F' }, started])).toBe(false);
    expect(right(row, [{ intent: 'unclear', text: '' }])).toBe(true);
  });
});
