/**
 * Lines of the scored half as a recogniser heard them over kitchen noise (made by scripts/noise.ts), and
 * how much of the meaning survives: right, asked back or nothing done, or a wrong action.
 */
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import type { Heard } from '../../src/kitchen/heard.ts';
import type { Row } from './load.ts';
import { meets, right, scoredRows } from './score.ts';

const line = z.strictObject({
  text: z.string(),
  said: z.string(),
  heard: z.string(),
  level: z.enum(['quiet', 'kitchen', 'loud']),
  voice: z.string(),
});

export interface NoisyRow extends z.infer<typeof line> {
  /** The line of the scored half it was made from. */
  row: Row;
}

const byText = new Map(scoredRows.map((row) => [row.text, row]));

/** A line whose original is no longer in the corpus is an error: run the script again. */
export const noisyRows: readonly NoisyRow[] = readFileSync(
  new URL('./heard-noise.jsonl', import.meta.url),
  'utf8',
)
  .split('\n')
  .filter((raw) => raw !== '')
  .map((raw) => {
    const noisy = line.parse(JSON.parse(raw));
    const row = byText.get(noisy.text);
    if (!row) throw new Error(`heard-noise.jsonl: no line "${noisy.text}" in the scored half`);
    return { ...noisy, row };
  });

/** Heard without consequence: nothing is put on record and nothing falls silent. */
const harmless = (intent: string): boolean =>
  intent.startsWith('ask-') ||
  ['unrelated', 'unclear', 'courtesy', 'acknowledge', 'help', 'repeat', 'affirm', 'deny'].includes(
    intent,
  );

export type Outcome = 'right' | 'nothing or a question' | 'wrong action';

export function outcome({ row }: NoisyRow, heard: readonly Heard[]): Outcome {
  if (right(row, heard)) return 'right';
  const labels = [row.heard, ...(row.or ?? [])].flat();
  const wrong = heard.some(
    (one) => !harmless(one.intent) && !labels.some((label) => meets(label, one)),
  );
  return wrong ? 'wrong action' : 'nothing or a question';
}
