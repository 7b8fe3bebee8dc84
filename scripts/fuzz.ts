/**
 * Random dinners from a seed on, until so many turns are played, in as many threads as there are cores.
 * A dinner that breaks a rule is shrunk to the fewest deeds that still break it and printed; the exit
 * code is then 1.
 *
 * npm run fuzz [-- --seed 1 --turns 20000 --each 50 --threads 2]
 */
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { Piscina } from 'piscina';
import type { Broken } from '../test/fuzz/random-dinner.ts';
import type { Task } from '../test/fuzz/worker.ts';

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    turns: { type: 'string', default: '20000' },
    each: { type: 'string', default: '50' },
    threads: { type: 'string', default: String(availableParallelism()) },
  },
});
const [seed, turns, each, threads] = [values.seed, values.turns, values.each, values.threads].map(
  Number,
) as [number, number, number, number];

const pool = new Piscina({
  filename: new URL('../test/fuzz/worker.ts', import.meta.url).href,
  minThreads: threads,
  maxThreads: threads,
});
const begun = performance.now();
const broken: Broken[] = [];
let played = 0;
let next = seed;

let isStopped = false;
// Whoever stops a long search is told how far it came.
process.once('SIGINT', () => {
  isStopped = true;
});

async function playOn(): Promise<void> {
  while (!isStopped && next < seed + Math.ceil(turns / each)) {
    const task: Task = { seed: next, turns: each };
    next += 1;
    const found: Broken | undefined = await pool.run(task);
    played += found ? Math.min(found.turn + 1, each) : each;
    if (!found) continue;
    broken.push(found);
    process.stdout.write(
      `seed ${found.seed}, turn ${found.turn}: ${found.rule}\n  ${found.what}\n`,
    );
    for (const deed of found.deeds) process.stdout.write(`    ${deed}\n`);
  }
}

await Promise.all(Array.from({ length: threads }, playOn));
await pool.destroy();
const seconds = (performance.now() - begun) / 1000;
const rules = new Map<string, number>();
for (const { rule } of broken) rules.set(rule, (rules.get(rule) ?? 0) + 1);
for (const [rule, count] of rules) process.stdout.write(`${count} × ${rule}\n`);
process.stdout.write(
  `${played} turns in ${seconds.toFixed(0)} s on ${threads} threads from seed ${seed}: ${broken.length} broken\n`,
);
process.exitCode = broken.length > 0 ? 1 : 0;
