import { describe, expect, it } from 'vitest';
import { read } from '../../src/intents/read.ts';
import { parseRows, type Row } from './load.ts';
import { actsFalsely, contextOf, right, rulesRows, scoredRows } from './score.ts';

/** Percent wholly right and percent falsely acted on, just under what stands. */
const floors = {
  rules: { spoken: 50, falseActions: 25 },
  scored: { spoken: 50, falseActions: 25 },
};

/** Texts of the rules half may be printed; those of the scored half may not. */
const halves = [
  { half: 'rules', rows: rulesRows },
  { half: 'scored', rows: scoredRows },
] as const;

describe.each(halves)('the $half half of the corpus', ({ half, rows }) => {
  const heard = (row: Row) => read(row.text, contextOf(row));
  const spoken = rows.filter((row) => row.origin !== 'chatter');
  const chatter = rows.filter((row) => row.origin === 'chatter');

  it(`is wholly right on at least ${floors[half].spoken} %`, () => {
    expect(spoken.length).toBeGreaterThan(600);
    const share = spoken.filter((row) => right(row, heard(row))).length / spoken.length;
    expect(100 * share).toBeGreaterThanOrEqual(floors[half].spoken);
  });

  it(`acts on at most ${floors[half].falseActions} % of overheard talk`, () => {
    expect(chatter.length).toBeGreaterThan(150);
    const share = chatter.filter((row) => actsFalsely(row, heard(row))).length / chatter.length;
    expect(100 * share).toBeLessThanOrEqual(floors[half].falseActions);
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
