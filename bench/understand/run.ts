/**
 * Prints how the reader does on the scored corpus, by origin, with milliseconds; `--misses` lists what
 * went wrong.
 */
import { read } from '../../src/intents/read.ts';
import { contextOf, right, rows } from '../../test/corpus/score.ts';

const tally = new Map<string, { right: number; all: number }>();
const times: number[] = [];
for (const row of rows) {
  const context = contextOf(row);
  read(row.text, context);
  for (let round = 0; round < 5; round++) {
    const start = performance.now();
    read(row.text, context);
    times.push(performance.now() - start);
  }
  const heard = read(row.text, context);
  const ok = right(row, heard);
  const count = tally.get(row.origin) ?? { right: 0, all: 0 };
  tally.set(row.origin, { right: count.right + (ok ? 1 : 0), all: count.all + 1 });
  if (!ok && process.argv.includes('--misses'))
    console.log(`${row.text} => ${JSON.stringify(heard.map(({ text: _, ...one }) => one))}`);
}
times.sort((a, b) => a - b);
const total = [...tally.values()].reduce((sum, one) => sum + one.right, 0);
for (const [origin, { right, all }] of tally)
  console.log(`${origin.padEnd(12)} ${right} of ${all}  ${((100 * right) / all).toFixed(1)} %`);
console.log(
  `all          ${total} of ${rows.length}  ${((100 * total) / rows.length).toFixed(1)} %`,
);
console.log(
  `milliseconds p50 ${times[times.length >> 1]!.toFixed(2)}  p99 ${times[Math.floor(times.length * 0.99)]!.toFixed(2)}`,
);
