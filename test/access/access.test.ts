/** Tokens, pairing codes and certificates, on a folder of their own. */
import { X509Certificate } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { certificateFor } from '../../src/access/certificate.ts';
import { codeLivesMinutes, Pairing } from '../../src/access/pairing.ts';
import { Tokens } from '../../src/access/tokens.ts';

const noon = Date.parse('2026-12-19T12:00:00Z');
let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'access-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

test('a token opens its own household until it is revoked, also for who opened the folder before', () => {
  const tokens = new Tokens(folder);
  const other = new Tokens(folder);
  const { id, token } = tokens.make('club', 'tablet', noon);
  expect(other.householdOf(token)).toBe('club');
  expect(other.list()).toEqual([
    { id, household: 'club', label: 'tablet', madeAt: '2026-12-19T12:00:00.000Z' },
  ]);
  expect(tokens.revoke(id)).toBe(true);
  expect(other.householdOf(token)).toBeUndefined();
  expect(tokens.revoke(id)).toBe(false);
});

test('what is kept holds no secret and nobody else may read it', () => {
  const { id, token } = new Tokens(folder).make('home', 'x', noon);
  const path = join(folder, 'tokens', `${id}.json`);
  expect(readFileSync(path, 'utf8')).not.toContain(token.split('.')[1]);
  expect(statSync(path).mode & 0o077).toBe(0);
});

test.each(['', '.', 'x', '../../etc/passwd.x', `${'a'.repeat(500)}.b`, 'a.b.c', '%2e%2e/x.y'])(
  'no token: %s',
  (text) => {
    new Tokens(folder).make('home', 'x', noon);
    expect(new Tokens(folder).householdOf(text)).toBeUndefined();
  },
);

test('the right name with another secret is no token', () => {
  const tokens = new Tokens(folder);
  const one = tokens.make('home', 'x', noon).token;
  const two = tokens.make('club', 'y', noon).token;
  expect(tokens.householdOf(`${one.split('.')[0]}.${two.split('.')[1]}`)).toBeUndefined();
});

test('a record that somebody spoilt lets nobody in and stops nobody else', () => {
  const tokens = new Tokens(folder);
  const good = tokens.make('home', 'x', noon);
  const bad = tokens.make('home', 'y', noon);
  writeFileSync(join(folder, 'tokens', `${bad.id}.json`), '{"household": 7');
  expect(tokens.householdOf(bad.token)).toBeUndefined();
  expect(tokens.householdOf(good.token)).toBe('home');
  expect(tokens.list()).toHaveLength(1);
});

test('a pairing code lets one in, once, in small letters and without its dash too', () => {
  const tokens = new Tokens(folder);
  const pairing = new Pairing(folder, tokens);
  const code = pairing.offer('club', noon);
  expect(code).toMatch(/^[A-HJ-NP-Z2-9]{4}-[A-HJ-NP-Z2-9]{4}$/);
  const token = pairing.accept(code.toLowerCase().replace('-', ' '), 'tablet', noon + 60_000);
  expect(tokens.householdOf(token ?? '')).toBe('club');
  expect(pairing.accept(code, 'another', noon + 60_000)).toBeUndefined();
});

test('a pairing code is good to its last minute and not a millisecond after', () => {
  const pairing = new Pairing(folder, new Tokens(folder));
  const life = codeLivesMinutes * 60_000;
  const [first, second] = [pairing.offer('home', noon), pairing.offer('home', noon)];
  expect(pairing.accept(first, 'x', noon + life)).toBeDefined();
  expect(pairing.accept(second, 'x', noon + life + 1)).toBeUndefined();
  pairing.offer('home', noon + 2 * life);
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
