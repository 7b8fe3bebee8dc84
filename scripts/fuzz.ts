/**
 * Random dinners from a seed on, until so many turns are played. A dinner that breaks a rule is shrunk
 * to the fewest turns that still break it and printed; the exit code is 1.
 *
 * npm run fuzz [-- --seed 1 --turns 20000]
 */
import { parseArgs } from 'node:util';
import { type Broken, randomDinner } from '../test/fuzz/random-dinner.ts';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    turns: { type: 'string', default: '20000' },
    each: { type: 'string', default: '50' },
  },
});
const turns = Number(values.turns);
const each = Number(values.each);
const broken: Broken[] = [];
let played = 0;
const begun = performance.now();
for (let seed = Number(values.seed); played < turns; seed += 1) {
  const found = await randomDinner(seed, each);
  played += found ? found.turn + 1 : each;
  if (!found) continue;
  broken.push(found);
  process.stdout.write(`seed ${seed}, turn ${found.turn}: ${found.rule}\n  ${found.what}\n`);
  for (const deed of found.deeds.slice(-6)) process.stdout.write(`    ${deed}\n`);
}
const seconds = (performance.now() - begun) / 1000;
const rules = new Map<string, number>();
for (const { rule } of broken) rules.set(rule, (rules.get(rule) ?? 0) + 1);
for (const [rule, count] of rules) process.stdout.write(`${count} × ${rule}\n`);
process.stdout.write(
  `${played} turns in ${seconds.toFixed(0)} s from seed ${values.seed}: ${broken.length} broken\n`,
);
process.exitCode = broken.length > 0 ? 1 : 0;
