/**
 * A certificate of one's own making, so that a browser on the house's network grants microphone and
 * wake lock. Browsers will warn once, since nobody vouches for it; its fingerprint is printed.
 */
import { X509Certificate } from 'node:crypto';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { generate } from 'selfsigned';

export interface Certificate {
  key: string;
  cert: string;
  /** SHA-256 of the certificate, in pairs of hexadecimal digits. */
  fingerprint: string;
}

const day = 24 * 3_600_000;
/** Browsers refuse more than 398 days (CA/Browser Forum, Baseline Requirements 6.3.2). */
const livesDays = 397;

/** The kept one while it names all these hosts and lives another week, else a fresh one. */
export async function certificateFor(
  hosts: readonly string[],
  { folder, at }: { folder: string; at: number },
): Promise<Certificate> {
  const keyPath = join(folder, 'key.pem');
  const certPath = join(folder, 'certificate.pem');
  const kept = readBoth(keyPath, certPath);
  if (kept && serves(kept.cert, hosts, at)) return withFingerprint(kept);
  const made = await generate([{ name: 'commonName', value: 'roastcall' }], {
    algorithm: 'sha256',
    keySize: 2048,
    notBeforeDate: new Date(at - day),
    notAfterDate: new Date(at + (livesDays - 1) * day),
    extensions: [{ name: 'subjectAltName', altNames: hosts.map(nameEntry) }],
  });
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  writeFileSync(keyPath, made.private, { mode: 0o600 });
  writeFileSync(certPath, made.cert, { mode: 0o600 });
  return withFingerprint({ key: made.private, cert: made.cert });
}

const isAddress = (host: string): boolean => /^[\d.]+$/.test(host) || host.includes(':');

const nameEntry = (host: string) =>
  isAddress(host) ? { type: 7 as const, ip: host } : { type: 2 as const, value: host };

function readBoth(keyPath: string, certPath: string): { key: string; cert: string } | undefined {
  try {
    return { key: readFileSync(keyPath, 'utf8'), cert: readFileSync(certPath, 'utf8') };
  } catch {
    return undefined;
  }
}

function serves(cert: string, hosts: readonly string[], at: number): boolean {
  const read = new X509Certificate(cert);
  const names = hosts.every((host) =>
    isAddress(host) ? read.checkIP(host) !== undefined : read.checkHost(host) !== undefined,
  );
  return names && Date.parse(read.validTo) > at + 7 * day;
}

const withFingerprint = (pair: { key: string; cert: string }): Certificate => ({
  ...pair,
  fingerprint: new X509Certificate(pair.cert).fingerprint256,
});
