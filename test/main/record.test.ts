import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import { openSession } from '../../src/session/session.ts';
import { at, cards, compute, opening } from '../harness/day.ts';
import { ended } from './program.ts';

async function journalled(): Promise<string> {
  const folder = mkdtempSync(join(tmpdir(), 'roastcall-record-'));
  const journal = openSqliteJournal(join(folder, 'journal.sqlite'));
  const session = await openSession({ dinner: 'saturday', journal, compute, cards, opening });
  for (const [time, text] of [
    ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
    ['16:40', 'the roast is in'],
    ['17:40', 'it reads 73'],
  ] as const)
    await session.hear({ text, at: at(time) });
  await journal.close();
  return folder;
}

describe('roastcall record', () => {
  it('prints the page, and writes it with its drawing where it is told', async () => {
    const folder = await journalled();
    const printed = await ended(['record', 'saturday', '--data', folder]);
    expect(printed.code).toBe(0);
    expect(printed.out).toMatch(/^# Rib roast, 2026-12-19/);
    const written = await ended([
      'record',
      'saturday',
      '--data',
      folder,
      '--to',
      join(folder, 'kept'),
    ]);
    expect(written).toMatchObject({ code: 0, err: '' });
    expect(written.out.trim().split('\n')).toEqual([
      join(folder, 'kept', 'saturday.md'),
      join(folder, 'kept', 'saturday.svg'),
    ]);
    expect(readFileSync(join(folder, 'kept', 'saturday.md'), 'utf8')).toMatch(/\(saturday\.svg\)/);
    expect(readFileSync(join(folder, 'kept', 'saturday.svg'), 'utf8')).toMatch(/^<svg /);
  });

  it('says which dinners there are when there is none of that name', async () => {
    const folder = await journalled();
    const { code, err } = await ended(['record', 'sunday', '--data', folder]);
    expect(code).toBe(1);
    expect(err).toMatch(/no dinner "sunday".*saturday/);
  });
});
