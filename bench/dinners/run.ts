/**
 * A thousand dinners before the real one: the same evenings with the helper and without, judged at the
 * table. Seeds are printed; the last line is the figure.
 *
 * npm run bench:dinners [-- --dinners 100 --from 1 --jobs 2 --keep folder --plot docs/dinners.svg]
 */
import { spawn } from 'node:child_process';
import { appendFileSync, mkdirSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { parseArgs } from 'node:util';
import { knowing } from './bound.ts';
import { drawEvening } from './evening.ts';
import { helped } from './helped.ts';
import { barsOf, type Judged, judged, tableOf } from './judge.ts';
import { rivals } from './rivals.ts';

const { values } = parseArgs({
  options: {
    dinners: { type: 'string', default: '1000' },
    from: { type: 'string', default: '1' },
    jobs: { type: 'string', default: String(availableParallelism()) },
    /** Where the talk of each dinner that fell short is written. */
    keep: { type: 'string' },
    /** Where the plot of outcomes by disruption is written. */
    plot: { type: 'string' },
    /** The helper given the true parameters as well; about twice the time. */
    bound: { type: 'boolean', default: false },
    /** Where every judgment is written, a line each. */
    rows: { type: 'string' },
    /** Set for the processes that do the work: every so-many-th evening from `from`. */
    every: { type: 'string' },
  },
});
const from = Number(values.from);
const dinners = Number(values.dinners);

async function work(every: number): Promise<void> {
  for (let seed = from; seed < Number(values.from) + dinners; seed += every) {
    const evening = drawEvening(seed);
    const rows: Judged[] = Object.entries(rivals).map(([who, rival]) => {
      const plated = rival(evening);
      const agreedMinute = evening.shifts.reduce(
        (sum, one) => sum + one.minutes,
        evening.wantedMinute,
      );
      return judged({ who, evening, ...plated, agreedMinute });
    });
    const result = await helped(evening);
    const row = judged({ who: 'the helper', evening, ...result });
    rows.push(row);
    if (values.bound) {
      const known = await helped(evening, knowing(evening));
      rows.push(judged({ who: 'the bound', evening, ...known }));
    }
    if (values.keep !== undefined && !row.both) {
      mkdirSync(values.keep, { recursive: true });
      const { truth, ...told } = evening;
      const head = [told, truth.oven, row, result.trace].map((one) => JSON.stringify(one));
      const text = [...head, ...result.talk, ''].join('\n');
      writeFileSync(join(values.keep, `${String(seed).padStart(4, '0')}.txt`), text);
    }
    process.stdout.write(`${JSON.stringify(rows)}\n`);
  }
}

async function all(): Promise<void> {
  const jobs = Math.max(1, Number(values.jobs));
  process.stdout.write(`evenings ${from} to ${from + dinners - 1}, ${jobs} processes\n`);
  const begun = performance.now();
  if (values.rows !== undefined) writeFileSync(values.rows, '');
  const rows: Judged[] = [];
  const more = [
    ...(values.keep === undefined ? [] : ['--keep', values.keep]),
    ...(values.bound ? ['--bound'] : []),
  ];
  await Promise.all(
    Array.from({ length: jobs }, async (_, job) => {
      const child = spawn(
        process.execPath,
        [
          ...process.execArgv,
          import.meta.filename,
          '--every',
          String(jobs),
          '--from',
          String(from + job),
          '--dinners',
          String(dinners - job),
          ...more,
        ],
        { stdio: ['ignore', 'pipe', 'inherit'] },
      );
      for await (const line of createInterface({ input: child.stdout })) {
        const judgments = JSON.parse(line) as Judged[];
        rows.push(...judgments);
        // As they come: a run that is broken off has not been for nothing.
        if (values.rows !== undefined)
          appendFileSync(values.rows, judgments.map((row) => `${JSON.stringify(row)}\n`).join(''));
      }
      if (child.exitCode) throw new Error(`a process ended with ${child.exitCode}`);
    }),
  );
  const minutes = (performance.now() - begun) / 60_000;
  process.stdout.write(`${tableOf(rows)}\n${minutes.toFixed(1)} minutes\n`);
  if (values.plot !== undefined) writeFileSync(values.plot, barsOf(rows));
  const ours = rows.filter((row) => row.who === 'the helper');
  const share = ours.filter((row) => row.both).length / ours.length;
  process.stdout.write(
    `core within 5 °F and table within 10 min: ${(100 * share).toFixed(1)} % of ${ours.length} dinners\n`,
  );
}

await (values.every === undefined ? all() : work(Number(values.every)));
