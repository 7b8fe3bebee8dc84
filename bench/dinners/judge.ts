/** How a dinner ended, judged at the table, and the tables of many. */
import { cookKinds, disruptionNames, type Evening, targetFahrenheit } from './evening.ts';

export interface Judged {
  who: string;
  seed: number;
  cook: string;
  disruptions: readonly string[];
  /** Core when the knife goes in, against the target, °F. */
  coreOff: number;
  /** Table against the time agreed, minutes; later is positive. */
  tableOff: number;
  both: boolean;
  announcements?: number | undefined;
  questions?: number | undefined;
}

const coreWithin = 5;
const tableWithin = 10;

export function judged(end: {
  who: string;
  evening: Evening;
  coreFahrenheit: number;
  tableMinute: number;
  agreedMinute: number;
  announcements?: number;
  questions?: number;
}): Judged {
  const coreOff = end.coreFahrenheit - targetFahrenheit;
  const tableOff = end.tableMinute - end.agreedMinute;
  return {
    who: end.who,
    seed: end.evening.seed,
    cook: end.evening.cook,
    disruptions: end.evening.disruptions,
    coreOff,
    tableOff,
    both: Math.abs(coreOff) <= coreWithin && Math.abs(tableOff) <= tableWithin,
    announcements: end.announcements,
    questions: end.questions,
  };
}

const percent = (rows: readonly Judged[], is: (row: Judged) => boolean): string =>
  rows.length === 0 ? '–' : `${((100 * rows.filter(is).length) / rows.length).toFixed(0)} %`;

export function tableOf(rows: readonly Judged[]): string {
  const names = [...new Set(rows.map((row) => row.who))];
  const lines = ['who | both | core ±5 °F | table ±10 min | core ±3 | table ±5 | evenings'];
  const line = (name: string, of: readonly Judged[]): void => {
    const core = (most: number) => percent(of, (row) => Math.abs(row.coreOff) <= most);
    const table = (most: number) => percent(of, (row) => Math.abs(row.tableOff) <= most);
    lines.push(
      [name, percent(of, (row) => row.both), core(5), table(10), core(3), table(5), of.length].join(
        ' | ',
      ),
    );
  };
  for (const who of names)
    line(
      who,
      rows.filter((row) => row.who === who),
    );
  lines.push('', 'the helper, by cook and by what went wrong');
  const ours = rows.filter((row) => row.who === 'the helper');
  for (const cook of cookKinds)
    line(
      cook,
      ours.filter((row) => row.cook === cook),
    );
  line(
    'nothing went wrong',
    ours.filter((row) => row.disruptions.length === 0),
  );
  for (const name of disruptionNames)
    line(
      name,
      ours.filter((row) => row.disruptions.includes(name)),
    );
  const mean = (of: (row: Judged) => number | undefined): string =>
    (ours.reduce((sum, row) => sum + (of(row) ?? 0), 0) / ours.length).toFixed(1);
  lines.push(
    '',
    `a dinner: ${mean((row) => row.announcements)} announcements, ${mean((row) => row.questions)} questions`,
  );
  return lines.join('\n');
}
