/** The journals that need nothing from outside, against what every journal promises. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { openSqliteJournal } from '../../src/journal/sqlite.ts';
import { journalContract } from './contract.ts';

const folders: string[] = [];
afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true });
});
const pathIn = (folder = ''): string => join(folder, 'journal.sqlite');

journalContract('memory', { open: async () => openMemoryJournal() });
journalContract('sqlite', {
  open: async () => {
    folders.push(mkdtempSync(join(tmpdir(), 'journal-')));
    return openSqliteJournal(pathIn(folders.at(-1)));
  },
  again: async () => openSqliteJournal(pathIn(folders.at(-1))),
});
