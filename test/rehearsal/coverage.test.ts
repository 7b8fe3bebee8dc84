/**
 * What the project's own scripts reach of everything there is. `open` is what they do not reach yet:
 * it may only shrink, so a new state, key or announcement without a script fails here.
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

const open: ReadonlySet<string> = new Set([
  'roast: hold → sear by SEAR_BEGUN',
  'sides: waiting → ready by DISHES_READY',
  'sides: ready → under-way by DISHES_OPEN',
  'sides: ready → under-way by DISH_BEGUN',
  'sauce: ready → under-way by SAUCE_OPEN',
  'sauce: ready → under-way by SAUCE_BEGUN',
  'dish: in-oven → done by READY',
  'dish: done → preparing by NOT_READY',
  'dish: done → in-oven by IN',
  'unclear',
  'oven-mode',
  'nothing-open',
  'reading-or-oven',
]);

it('reaches all but what is listed as open', { timeout: 420_000 }, async () => {
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
  const missing = reaches.flatMap(unreached).filter((name) => !open.has(name));
  expect(missing, coverageText(reaches)).toEqual([]);
});
