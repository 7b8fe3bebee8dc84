/** How a dinner ended, judged at the table, and the tables of many. */

import { type Cause, causeOf, causes } from './cause.ts';
import { cookKinds, disruptionNames, type Evening, targetFahrenheit } from './evening.ts';
import type { Trace } from './trace.ts';
import type { Told } from './untrue.ts';

export interface Judged {
  who: string;
  seed: number;
  cook: string;
  disruptions: readonly string[];
  /** Core when the knife goes in, against the target, °F. */
  coreOff: number;
  /** Table against the time agreed, minutes; later is positive. */
  tableOff: number;
  /** The same against the hour last named to the cook, which a late roast may have moved. */
  namedOff?: number | undefined;
  both: boolean;
  announcements?: number | undefined;
  questions?: number | undefined;
  trace?: Trace | undefined;
  told?: Told | undefined;
  cause?: Cause | undefined;
}

const coreWithin = 5;
const tableWithin = 10;

export function judged(end: {
  who: string;
  evening: Evening;
  coreFahrenheit: number;
  tableMinute: number;
  agreedMinute: number;
  expectedMinute?: number;
  announcements?: number;
  questions?: number;
  trace?: Trace;
  told?: Told;
}): Judged {
  const coreOff = end.coreFahrenheit - targetFahrenheit;
  const tableOff = end.tableMinute - end.agreedMinute;
  const both = Math.abs(coreOff) <= coreWithin && Math.abs(tableOff) <= tableWithin;
  return {
    who: end.who,
    seed: end.evening.seed,
    cook: end.evening.cook,
    disruptions: end.evening.disruptions,
    coreOff,
    tableOff,
    namedOff: end.expectedMinute === undefined ? undefined : end.tableMinute - end.expectedMinute,
    both,
    announcements: end.announcements,
    questions: end.questions,
    trace: end.trace,
    told: end.told,
    cause: end.trace && !both ? causeOf({ trace: end.trace, coreOff, tableOff }) : undefined,
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
  const kept = ({ coreOff, namedOff = Number.POSITIVE_INFINITY }: Judged): boolean =>
    Math.abs(coreOff) <= coreWithin && Math.abs(namedOff) <= tableWithin;
  lines.push(
    `by the hour last named to the cook, also where the roast lagged: ${percent(ours, kept)}`,
  );
  const sum = (of: (told: Told) => number): number =>
    ours.reduce((total, row) => total + (row.told ? of(row.told) : 0), 0);
  lines.push(
    `untrue: ${sum((one) => one.tablesUntrue)} of ${sum((one) => one.tables)} hours told in the last hour (over 10 min), ${sum((one) => one.coresUntrue)} of ${sum((one) => one.cores)} cores told at the pull (over 5 °F)`,
    '',
    'why dinners with the helper fell short',
  );
  for (const cause of causes) {
    const of = ours.filter((row) => row.cause === cause);
    if (of.length > 0)
      lines.push(`${of.length} | ${cause} | ${of.map((row) => row.seed).join(' ')}`);
  }
  return lines.join('\n');
}

const rowHeight = 24;
const labelWidth = 190;
const barWidth = 360;

/** Share of dinners right in core and table, by who cooked and by what went wrong, as bars. */
export function barsOf(rows: readonly Judged[]): string {
  const ours = rows.filter((row) => row.who === 'the helper');
  const others = [...new Set(rows.map((row) => row.who))];
  const groups: [string, readonly Judged[]][] = [
    ...others.map((who): [string, Judged[]] => [who, rows.filter((row) => row.who === who)]),
    ['helper: nothing went wrong', ours.filter((row) => row.disruptions.length === 0)],
    ...disruptionNames.map((name): [string, Judged[]] => [
      `helper: ${name}`,
      ours.filter((row) => row.disruptions.includes(name)),
    ]),
  ];
  const drawn = groups.filter(([, of]) => of.length > 0);
  const bars = drawn.map(([name, of], row) => {
    const share = of.filter((one) => one.both).length / of.length;
    const y = 44 + row * rowHeight;
    const fill =
      name === 'the helper' ? '#1f4f7a' : name.startsWith('helper') ? '#8fb0c9' : '#b8b0a4';
    return `<text x="${labelWidth - 8}" y="${y + 13}" text-anchor="end">${name}</text><rect x="${labelWidth}" y="${y}" width="${(barWidth * share).toFixed(1)}" height="17" fill="${fill}"/><text x="${labelWidth + barWidth * share + 6}" y="${y + 13}">${Math.round(100 * share)} % of ${of.length}</text>`;
  });
  const height = 60 + drawn.length * rowHeight;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${labelWidth + barWidth + 110} ${height}" font-family="sans-serif" font-size="12"><rect width="100%" height="100%" fill="#fff"/><text x="12" y="24" font-size="14">Core within 5 °F of target and table within 10 minutes</text>${bars.join('')}</svg>\n`;
}
