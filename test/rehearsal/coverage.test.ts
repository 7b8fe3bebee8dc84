/**
 * The project's own scripts reach everything there is: every state and transition of the charts, every
 * intent, reply key, question and announcement. A new one without a script fails here.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import type { Fact } from '../../src/kitchen/facts.ts';
import { rehearseScript } from '../../src/main/commands/rehearse.ts';
import { coverageOf, unreached } from '../../src/rehearsal/coverage.ts';
import { coverageText } from '../../src/rehearsal/coverage-text.ts';
import { parseScript } from '../../src/rehearsal/parse.ts';
import { cards } from '../harness/day.ts';

const folder = join(import.meta.dirname, '../../transcripts-synthetic');

it('is reached by some script', { timeout: 900_000 }, async () => {
  const dinners: (readonly Fact[])[] = [];
  for (const name of readdirSync(folder).filter((one) => one.endsWith('.session.txt'))) {
    const { script } = parseScript(readFileSync(join(folder, name), 'utf8'), name);
    if (!script) throw new Error(`${name} cannot be read`);
    const ended = (facts: readonly Fact[]): void => {
      dinners.push(facts);
    };
    await rehearseScript(script, cards, { audience: { ended } });
  }
  const reaches = coverageOf(dinners);
  expect(reaches.flatMap(unreached), coverageText(reaches)).toEqual([]);
});
