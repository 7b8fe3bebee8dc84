/** What a tablet scans or types to come in. */
import { toString as qrCode } from 'qrcode';
import { codeLivesMinutes, type Pairing } from '../access/pairing.ts';
import type { Instant } from '../base/time.ts';

export async function invitation(options: {
  /** The server's address, without a path. */
  base: string;
  pairing: Pairing;
  household: string;
  now: Instant;
}): Promise<string> {
  const { base, pairing, household } = options;
  const code = await pairing.offer(household, options.now);
  const url = `${base}/pair?code=${code}`;
  const picture = await qrCode(url, { type: 'terminal', small: true });
  return `${picture}Pair a tablet within ${codeLivesMinutes} minutes: ${url}\n`;
}
