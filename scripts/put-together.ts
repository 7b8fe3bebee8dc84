/** Texts of one thing each, put together by seeded dice as if said in one breath, for the trainers. */
import type { Row } from '../test/corpus/load.ts';
import { isPassive } from '../test/corpus/score.ts';
import { shuffled } from './learn.ts';

const stopAt = /\s*[.,;:!?…–—]+(?=\s|$)\s*/g;

/** A text without its stops, as a recogniser writes it, and the places in it where they stood. */
export function withoutStops(text: string): { text: string; stops: number[] } {
  const stops: number[] = [];
  let plain = '';
  let from = 0;
  for (const stop of text.matchAll(stopAt)) {
    plain += text.slice(from, stop.index);
    from = stop.index + stop[0].length;
    if (from < text.length && plain !== '') {
      plain += ' ';
      stops.push(plain.length);
    }
  }
  return { text: plain + text.slice(from), stops };
}

/** The same in small letters. */
const unstopped = (text: string): string => withoutStops(text).text.trim().toLowerCase();

/** What may be followed by something else in one breath: nothing asked, answered or taken back. */
const goesOn = (row: Row): boolean =>
  !/^(ask-|help|repeat|quiet|pause|resume|undo|affirm|deny|choose|start-over|correct|unclear)/.test(
    row.heard[0]!.intent,
  );

const wordsOf = (row: Row): number => row.text.split(' ').length;

const isSingle = (row: Row): boolean =>
  !isPassive(row) &&
  row.heard.length === 1 &&
  row.or === undefined &&
  row.expecting === undefined &&
  !row.paused &&
  wordsOf(row) >= 2 &&
  wordsOf(row) <= 12;

/** Said at one stage, in the same units, each of something else. */
function belongTogether(parts: readonly Row[]): boolean {
  const [first] = parts;
  const stages = new Set(parts.flatMap(({ stage }) => stage ?? []));
  const intents = new Set(parts.map(({ heard }) => heard[0]!.intent));
  return (
    stages.size <= 1 &&
    parts.every(({ units }) => units?.temperature === first!.units?.temperature) &&
    parts.slice(0, -1).every(goesOn) &&
    intents.size === parts.length &&
    !(intents.has('report-started') && intents.has('report-done'))
  );
}

/** A breath of two or three texts; `joins` are the places in its text where another begins. */
export interface Together<From> {
  row: Row;
  joins: readonly number[];
  /** The first of its parts. */
  of: From;
}

export function putTogether<From extends { row: Row }>(
  from: readonly From[],
  { count, joints, alike }: { count: number; joints: readonly string[]; alike(one: From): string },
): Together<From>[] {
  const singles = from.filter(({ row }) => isSingle(row));
  const made: Together<From>[] = [];
  for (let round = 0; made.length < count && round < 100; round++) {
    const order = shuffled(singles.length, 500 + round);
    for (let at = 0; at + 2 < order.length && made.length < count; at += 3) {
      const parts = order
        .slice(at, at + ((at / 3 + round) % 3 === 0 ? 3 : 2))
        .map((one) => singles[one]!);
      const rows = parts.map(({ row }) => row);
      const first = parts[0]!;
      if (parts.some((one) => alike(one) !== alike(first)) || !belongTogether(rows)) continue;
      const joint = joints[made.length % joints.length]!;
      const joins: number[] = [];
      let text = '';
      for (const row of rows) {
        if (text !== '') {
          joins.push(text.length + 1);
          text += joint;
        }
        text += /^[.]/.test(joint) ? row.text.replace(/[.,;]$/, '') : unstopped(row.text);
      }
      made.push({
        row: {
          ...first.row,
          text,
          stage: rows.map(({ stage }) => stage).find((stage) => stage !== undefined),
          dishes: [...new Set(rows.flatMap(({ dishes }) => dishes ?? []))],
          heard: rows.map(({ heard }) => heard[0]!),
          origin: 'recogniser',
        },
        joins,
        of: first,
      });
    }
  }
  return made;
}
