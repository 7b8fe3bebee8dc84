/**
 * What a simulated cook says: lines that others wrote and nobody tuned on (the scored half of the
 * corpus), with the number exchanged for the one that is true in the simulated kitchen.
 */
import { type Label, type Row, rowsOf } from '../../test/corpus/load.ts';

/** Ways a number stands in a line, as typed and as recognisers write it; the first that occurs is used. */
export function spokenForms(value: number): string[] {
  const ones =
    'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
      ' ',
    );
  const tens = '- - twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
  const small = (n: number, joint: string): string =>
    n < 20 ? ones[n]! : `${tens[Math.floor(n / 10)]}${n % 10 === 0 ? '' : joint + ones[n % 10]}`;
  if (value < 100) return [String(value), small(value, ' '), small(value, '-')];
  const hundreds = ones[Math.floor(value / 100)]!;
  const rest = value % 100;
  const short = rest === 0 ? 'hundred' : rest < 10 ? `oh ${ones[rest]}` : small(rest, ' ');
  const long = rest === 0 ? '' : ` and ${small(rest, ' ')}`;
  const plain = rest === 0 ? '' : ` ${small(rest, ' ')}`;
  const first = hundreds === 'one' ? ['a hundred'] : [];
  return [
    String(value),
    `${hundreds} ${short}`,
    ...[...first, `${hundreds} hundred`].flatMap((head) => [head + long, head + plain]),
  ];
}

/** Whether some other number stands in the line as well; it would say two things. */
const numberWord =
  /\b(\d+|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred)\b/i;

/** The line with `from` exchanged for `to` in the same manner, or undefined where it does not stand so. */
function exchanged(text: string, from: number, to: number): string | undefined {
  const wanted = spokenForms(to);
  for (const [way, form] of spokenForms(from).entries()) {
    const found = new RegExp(`(?<![\\w.])${form}(?![\\w.])`, 'i').exec(text);
    const replacement = wanted[way];
    if (!found || !replacement) continue;
    const others = text.slice(0, found.index) + text.slice(found.index + found[0].length);
    if (numberWord.test(others)) return undefined;
    return text.slice(0, found.index) + replacement + text.slice(found.index + found[0].length);
  }
  return undefined;
}

const rows = rowsOf('scored').filter(
  (row) => row.language !== 'de' && row.heard.length === 1 && row.expecting === undefined,
);
const slots = ({ intent: _, ...rest }: Label): string[] => Object.keys(rest).sort();

/** Rows of one intent with just these slots, whose values pass. */
function like(intent: string, wanted: Label): Row[] {
  return rows.filter(({ heard: [label] }) => {
    if (!label || label.intent !== intent) return false;
    const { intent: _, ...asked } = wanted;
    if (slots(label).join() !== Object.keys(asked).sort().join()) return false;
    return Object.entries(asked).every(([name, value]) => value === '*' || label[name] === value);
  });
}

/** Rows of one intent, whatever the helper was expecting. */
const answering = (intent: string): Row[] =>
  rowsOf('scored').filter(
    (row) => row.language !== 'de' && row.heard.length === 1 && row.heard[0]?.intent === intent,
  );

const pools = {
  reading: like('report-reading', { intent: '', temperature: '*' }),
  out: like('report-out', { intent: '' }),
  in: like('report-started', { intent: '', step: 'roast-in' }),
  // Any step's "done": what was said at a stage of its own may name what is done at that stage only.
  done: like('report-done', { intent: '' }).filter(({ stage }) => stage === undefined),
  oven: like('report-oven', { intent: '', temperature: '*' }),
  ovenOn: like('report-oven', { intent: '', state: 'on' }),
  late: like('shift-serving', { intent: '', minutes: '*' }).filter(
    ({ heard: [label] }) => Number(label?.minutes) > 0,
  ),
  early: like('shift-serving', { intent: '', minutes: '*' }).filter(
    ({ heard: [label] }) => Number(label?.minutes) < 0,
  ),
  yes: answering('affirm'),
  no: answering('deny'),
  choose: answering('choose').filter(({ heard: [label] }) => Number(label?.option) === 1),
  powerOut: like('report-trouble', { intent: '', trouble: 'power-out' }),
  powerBack: like('report-trouble', { intent: '', trouble: 'power-back' }),
};
export type Pool = keyof typeof pools;

/** A line of that kind, by `pick`; with a number, one into which it goes. */
export function lineOf(pool: Pool, pick: () => number, value?: number): string {
  const slot = pool === 'late' || pool === 'early' ? 'minutes' : 'temperature';
  // A number that belongs to another kitchen would be an untruth in this one.
  const fitting =
    value === undefined
      ? pools[pool].flatMap(({ text }) => (pool !== 'choose' && numberWord.test(text) ? [] : text))
      : pools[pool].flatMap(({ text, heard: [label] }) => {
          const from = Math.abs(Number(label?.[slot]));
          return exchanged(text, from, value) ?? [];
        });
  const plain =
    pool === 'early' && fitting.length === 0 ? [`they are coming ${value} minutes early`] : fitting;
  const line = plain[Math.floor(pick() * plain.length)];
  if (line === undefined) throw new Error(`the corpus has no line of "${pool}" for ${value}`);
  return line;
}

export const poolSizes = (): Record<string, number> =>
  Object.fromEntries(Object.entries(pools).map(([name, list]) => [name, list.length]));
