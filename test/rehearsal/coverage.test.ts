/**
 * The project's own scripts hold, and reach everything there is: every state and transition of the charts,
 * every intent, reply key, question and announcement. A new one without a script fails here.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { playAll } from '../../src/main/play-pool.ts';
import { coverageOf, unreached } from '../../src/rehearsal/coverage.ts';
import { coverageText } from '../../src/rehearsal/coverage-text.ts';
import { parseScript } from '../../src/rehearsal/parse.ts';
import { cards } from '../harness/day.ts';

const folder = join(import.meta.dirname, '../../transcripts-synthetic');

it('holds, and is reached by some script', { timeout: 900_000 }, async () => {
  const plays = readdirSync(folder)
    .filter((name) => name.endsWith('.session.txt'))
    .map((name) => {
      const { script } = parseScript(readFileSync(join(folder, name), 'utf8'), name);
      if (!script) throw new Error(`${name} cannot be read`);
      return { script };
    });
  // In one thread: the others are busy with the other tests.
  const played = await playAll(plays, cards, 1);
  expect(played.flatMap(({ rehearsal }) => rehearsal.failures)).toEqual([]);
  const reaches = coverageOf(played.map(({ facts }) => facts));
  expect(reaches.flatMap(unreached), coverageText(reaches)).toEqual([]);
});
