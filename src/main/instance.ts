/** The name by which other machines know this household's helper again, run after run. */
import { randomBytes } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Eight hexadecimal digits, drawn once and kept in the data folder. */
export function instanceOf(folder: string): string {
  const file = join(folder, 'instance');
  try {
    const known = readFileSync(file, 'utf8').trim();
    if (/^[0-9a-f]{8}$/.test(known)) return known;
  } catch {
    // None was drawn yet.
  }
  const drawn = randomBytes(4).toString('hex');
  writeFileSync(file, `${drawn}\n`);
  return drawn;
}
