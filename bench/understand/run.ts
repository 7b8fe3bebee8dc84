/**
 * Prints how the reader does on the corpus: the rules half, which it may be written against, and the
 * scored half, which is only counted; by origin and by intent, with false actions, milliseconds and
 * the baseline beside it. `--misses` lists what went wrong in the rules half, and in no other.
 */
import { read, warmUp } from '../../src/intents/read.ts';
import type { Heard } from '../../src/kitchen/heard.ts';
import type { Row } from '../../test/corpus/load.ts';
import {
  actsFalsely,
  contextOf,
  isPassive,
  right,
  rulesRows,
  scoredRows,
  taughtRows,
  tellsNumber,
} from '../../test/corpus/score.ts';
import { processorMilliseconds } from '../measure.ts';
import { baseline, importedBytes, installedBytes } from './baseline.ts';

const percent = (part: number, whole: number): string =>
  whole === 0 ? '' : `${((100 * part) / whole).toFixed(1)} %`;
const quantile = (sorted: readonly number[], p: number): string =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * p))]!.toFixed(2);

interface Told {
  row: Row;
  heard: Heard[];
  milliseconds: number;
}

const english = (rows: readonly Row[]): Row[] => rows.filter((row) => row.language !== 'de');

/** Every text once, in order, as a household would say them: the first is as cold as it comes. */
const tell = (rows: readonly Row[]): Told[] =>
  rows.map((row) => {
    const context = contextOf(row);
    // The processor's time, not the wall's: other work on this machine is none of the reader's.
    const from = processorMilliseconds();
    const heard = read(row.text, context);
    return { row, heard, milliseconds: processorMilliseconds() - from };
  });

const isRight = ({ row, heard }: Told): boolean => right(row, heard);
const passive = /^(unrelated|unclear|courtesy|acknowledge)$/;
const firstIntentRight = ({ row, heard }: Told): boolean =>
  isPassive(row)
    ? heard.every((one) => passive.test(one.intent))
    : heard[0]?.intent === row.heard[0]!.intent;

function line(name: string, told: readonly Told[]): string {
  const ok = told.filter(isRight).length;
  const lost = told.filter(
    (one) => !isPassive(one.row) && one.heard.every(({ intent }) => /^un/.test(intent)),
  ).length;
  return [
    name.padEnd(20),
    `${ok} of ${told.length}`.padStart(14),
    percent(ok, told.length).padStart(9),
    `first intent ${percent(told.filter(firstIntentRight).length, told.length)}`.padStart(22),
    `nothing heard ${lost}`.padStart(18),
  ].join('');
}

function print(title: string, told: readonly Told[], byIntent: boolean): void {
  console.log(`\n${title}`);
  console.log(line('all', told));
  for (const origin of ['typed', 'recogniser', 'dialect', 'chatter'])
    console.log(
      line(
        origin,
        told.filter((one) => one.row.origin === origin),
      ),
    );
  console.log(
    line(
      'numbers',
      told.filter((one) => tellsNumber(one.row)),
    ),
  );
  const idle = told.filter((one) => isPassive(one.row));
  const acted = idle.filter((one) => actsFalsely(one.row, one.heard)).length;
  console.log(
    `false actions       ${`${acted} of ${idle.length}`.padStart(14)}${percent(acted, idle.length).padStart(9)}`,
  );
  if (!byIntent) return;
  const intents = [...new Set(told.map((one) => one.row.heard[0]!.intent))].sort();
  for (const intent of intents)
    console.log(
      line(
        `  ${intent}`,
        told.filter((one) => one.row.heard[0]!.intent === intent),
      ),
    );
}

const rules = english(rulesRows);
const scored = english(scoredRows);
// Warmed as the program warms it before it listens; the scored half first, so that its milliseconds
// hold what is cold after that.
warmUp(contextOf(scored[0]!));
const scoredTold = tell(scored);
const rulesTold = tell(rules);
print('rules half (written against)', rulesTold, false);
print('scored half (only counted)', scoredTold, true);

const times = scoredTold.map((one) => one.milliseconds).sort((a, b) => a - b);
console.log(
  `\nmilliseconds of processor, the first reading of each: p50 ${quantile(times, 0.5)}  p99 ${quantile(times, 0.99)}  most ${quantile(times, 1)}`,
);

const other = await baseline(english(taughtRows), scored);
const others = [...other.milliseconds].sort((a, b) => a - b);
const modules = new URL('../../node_modules', import.meta.url).pathname;
const own = importedBytes(new URL('../../src/intents', import.meta.url).pathname, modules);
const megabytes = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
console.log(
  '\nbaseline, @nlpjs/basic trained on what the weights were learnt from, on the scored half',
);
console.log(
  `first intent        ${percent(other.firstIntentRight, other.all)} (reader ${percent(scoredTold.filter(firstIntentRight).length, scoredTold.length)})`,
);
console.log(
  `false actions       ${percent(other.falseActions, other.passive)} (reader ${percent(scoredTold.filter((one) => actsFalsely(one.row, one.heard)).length, scoredTold.filter((one) => isPassive(one.row)).length)})`,
);
console.log(
  `milliseconds        p50 ${quantile(others, 0.5)}  p99 ${quantile(others, 0.99)} (reader p50 ${quantile(times, 0.5)}  p99 ${quantile(times, 0.99)})`,
);
console.log(
  `installed           ${megabytes(installedBytes(`${modules}/@nlpjs`))} (reader ${megabytes(own.bytes)}: ${own.names.join(', ')})`,
);

if (process.argv.includes('--misses'))
  for (const { row, heard } of rulesTold.filter((one) => !isRight(one)))
    console.log(`${row.text} => ${JSON.stringify(heard.map(({ text: _, ...one }) => one))}`);
