import { describe, expect, it } from 'vitest';
import { read } from '../../src/intents/read.ts';
import { contextOf, right, rows } from './score.ts';

/** The floors are the figures: 95 % wholly right, false action on at most 1 % of chatter. */
describe('the scored corpus', () => {
  const scored = rows.map((row) => ({ row, ok: right(row, read(row.text, contextOf(row))) }));
  const missed = (among: typeof scored) =>
    among.filter((one) => !one.ok).map((one) => one.row.text);

  it('is wholly right on at least 95 %', () => {
    const spoken = scored.filter((one) => one.row.origin !== 'chatter');
    expect(spoken.length).toBeGreaterThan(200);
    expect(missed(spoken).length, missed(spoken).join('; ')).toBeLessThanOrEqual(
      spoken.length * 0.05,
    );
  });

  it('acts on at most 1 % of overheard talk', () => {
    const chatter = scored.filter((one) => one.row.origin === 'chatter');
    expect(missed(chatter).length, missed(chatter).join('; ')).toBeLessThanOrEqual(
      chatter.length * 0.01,
    );
  });
});
