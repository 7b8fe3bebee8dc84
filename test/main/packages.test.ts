/** What comes with the program: licences that allow it, and no script run at install that nobody chose. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { root } from './program.ts';

interface Locked {
  license?: string;
  hasInstallScript?: boolean;
  dev?: boolean;
}
const read = (file: string): unknown => JSON.parse(readFileSync(join(root, file), 'utf8'));
const { packages } = read('package-lock.json') as { packages: Record<string, Locked> };
const { allowScripts } = read('package.json') as { allowScripts: Record<string, boolean> };
const installed = Object.entries(packages).filter(([path]) => path !== '');
const nameOf = (path: string): string => path.slice(path.lastIndexOf('node_modules/') + 13);

/** SPDX names that let the program be passed on under its own. */
const permissive = new Set([
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'BlueOak-1.0.0',
  '0BSD',
  'Unlicense',
  'CC0-1.0',
  'Python-2.0',
  'PSF-2.0',
  'OFL-1.1',
]);
/** Weak copyleft is fine for what only develops and tests. */
const developing = new Set([...permissive, 'MPL-2.0', 'CC-BY-4.0']);

const allows = (license: string | undefined, set: ReadonlySet<string>): boolean =>
  (license ?? '')
    .replace(/[()]/g, '')
    .split(' OR ')
    .some((choice) => choice.split(' AND ').every((one) => set.has(one)));

test('every package has a licence that allows what is done with it', () => {
  const bad = installed
    .filter(([, { license, dev }]) => !allows(license, dev ? developing : permissive))
    .map(([path, { license }]) => `${nameOf(path)}: ${license}`);
  expect(bad).toEqual([]);
});

test('only packages that were chosen for it run a script when they are installed', () => {
  const running = installed.filter(([, one]) => one.hasInstallScript).map(([path]) => nameOf(path));
  expect(running.filter((name) => allowScripts[name] !== true)).toEqual([]);
});
