/** Tokens, pairing codes and certificates, on a folder of their own. */
import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { certificateFor } from '../../src/access/certificate.ts';
import { codeLivesMinutes, Pairing } from '../../src/access/pairing.ts';
import { drawersIn } from '../../src/access/shelf.ts';
import { Tokens } from '../../src/access/tokens.ts';

const noon = Date.parse('2026-12-19T12:00:00Z');
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'access-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

test('a token opens its own household until it is revoked, also for who opened the folder before', async () => {
  const tokens = new Tokens(drawersIn(folder));
  const other = new Tokens(drawersIn(folder));
  const { id, token } = await tokens.make('club', 'tablet', noon);
  expect(await other.householdOf(token)).toBe('club');
  expect(await other.list()).toEqual([
    { id, household: 'club', label: 'tablet', madeAt: '2026-12-19T12:00:00.000Z' },
  ]);
  expect(await tokens.revoke(id)).toBe(true);
  expect(await other.householdOf(token)).toBeUndefined();
  expect(await tokens.revoke(id)).toBe(false);
});

test('what is kept holds no secret and nobody else may read it', async () => {
  const { id, token } = await new Tokens(drawersIn(folder)).make('home', 'x', noon);
  const path = join(folder, 'tokens', `${id}.json`);
  expect(readFileSync(path, 'utf8')).not.toContain(token.split('.')[1]);
  expect(statSync(path).mode & 0o077).toBe(0);
});

test.each(['', '.', 'x', '../../etc/passwd.x', `${'a'.repeat(500)}.b`, 'a.b.c', '%2e%2e/x.y'])(
  'no token: %s',
  async (text) => {
    await new Tokens(drawersIn(folder)).make('home', 'x', noon);
    expect(await new Tokens(drawersIn(folder)).householdOf(text)).toBeUndefined();
  },
);

test('the right name with another secret is no token', async () => {
  const tokens = new Tokens(drawersIn(folder));
  const one = (await tokens.make('home', 'x', noon)).token;
  const two = (await tokens.make('club', 'y', noon)).token;
  expect(await tokens.householdOf(`${one.split('.')[0]}.${two.split('.')[1]}`)).toBeUndefined();
});

test('a record that somebody spoilt lets nobody in and stops nobody else', async () => {
  const tokens = new Tokens(drawersIn(folder));
  const good = await tokens.make('home', 'x', noon);
  const bad = await tokens.make('home', 'y', noon);
  writeFileSync(join(folder, 'tokens', `${bad.id}.json`), '{"household": 7');
  expect(await tokens.householdOf(bad.token)).toBeUndefined();
  expect(await tokens.householdOf(good.token)).toBe('home');
  expect(await tokens.list()).toHaveLength(1);
});

test('a pairing code lets one in, once, in small letters and without its dash too', async () => {
  const tokens = new Tokens(drawersIn(folder));
  const pairing = new Pairing(drawersIn(folder), tokens);
  const code = await pairing.offer('club', noon);
  expect(code).toMatch(/^[A-HJ-NP-Z2-9]{4}-[A-HJ-NP-Z2-9]{4}$/);
  const token = await pairing.accept(code.toLowerCase().replace('-', ' '), 'tablet', noon + 60_000);
  expect(await tokens.householdOf(token ?? '')).toBe('club');
  expect(await pairing.accept(code, 'another', noon + 60_000)).toBeUndefined();
});

test('a pairing code is good to its last minute and not a millisecond after', async () => {
  const pairing = new Pairing(drawersIn(folder), new Tokens(drawersIn(folder)));
  const life = codeLivesMinutes * 60_000;
  const [first, second] = [await pairing.offer('home', noon), await pairing.offer('home', noon)];
  expect(await pairing.accept(first, 'x', noon + life)).toBeDefined();
  expect(await pairing.accept(second, 'x', noon + life + 1)).toBeUndefined();
  await pairing.offer('home', noon + 2 * life);
  expect(readdirSync(join(folder, 'pairing'))).toHaveLength(1);
});

test('a certificate names its hosts, is kept, and is made anew for a new host or near its end', async () => {
  const made = await certificateFor(['localhost', '192.168.7.9'], { folder, at: noon });
  const read = new X509Certificate(made.cert);
  expect(read.checkHost('localhost')).toBe('localhost');
  expect(read.checkIP('192.168.7.9')).toBe('192.168.7.9');
  expect(read.verify(read.publicKey)).toBe(true);
  // CA/Browser Forum, Baseline Requirements 6.3.2: at most 398 days.
  const lives = Date.parse(read.validTo) - Date.parse(read.validFrom);
  expect(lives).toBeLessThanOrEqual(398 * 24 * 3_600_000);
  expect(statSync(join(folder, 'key.pem')).mode & 0o077).toBe(0);
  const same = await certificateFor(['192.168.7.9'], { folder, at: noon });
  expect(same.fingerprint).toBe(made.fingerprint);
  const moved = await certificateFor(['192.168.7.10'], { folder, at: noon });
  expect(moved.fingerprint).not.toBe(made.fingerprint);
  const late = await certificateFor(['192.168.7.10'], { folder, at: noon + 395 * 86_400_000 });
  expect(late.fingerprint).not.toBe(moved.fingerprint);
});
