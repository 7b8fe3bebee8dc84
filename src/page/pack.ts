/**
 * Lays the pieces of each lane into rows so that none covers another, and gives each its words where
 * there is room for them: what is still to come first.
 */
import { type Instant, minuteMilliseconds } from '../base/time.ts';
import { capital } from './show.ts';
import type { Step, View } from './wire.ts';
import { barWords, type words } from './words.ts';

export type Lane = 'roast' | 'oven' | 'sides' | 'sauce' | 'hands';
export const lanes: readonly Lane[] = ['roast', 'oven', 'sides', 'sauce', 'hands'];
const packedLanes = ['roast', 'sides', 'sauce'] as const;
type PackedLane = (typeof packedLanes)[number];
export type Rows = Record<PackedLane, number>;
export type MarkState = keyof typeof words.stepState;

export interface Mark {
  step: Step;
  lane: Lane;
  row: number;
  x: number;
  width: number;
  state: MarkState;
  /** Absent when there is no room for words. */
  label?: string;
  /** The words stand inside the piece, not after it. */
  inside: boolean;
}

interface Paper {
  at: Instant;
  /** Nothing that ended before this is on the paper. */
  start: Instant;
  right: number;
  x(at: Instant): number;
}

/** Mean width of a letter of the small type at 16 px, measured on the titles of the cards. */
const letterPixels = 6.9;
const narrowest = 8;
const mostRows = 5;
const overlapCost = 6;

/** The pull is the bracket, and the oven's moves are its own lane. */
export const drawnElsewhere = (step: Step): boolean =>
  step.id === 'pull' || step.id.startsWith('oven-');

export function laneOf(step: Step, view: View): PackedLane {
  const dish = view.sides.find((one) => one.id === step.card);
  if (!dish) return 'roast';
  return dish.kind === 'side' ? 'sides' : 'sauce';
}

/**
 * How a step stands on paper. "Under way" after its time is one the helper takes for done; "done"
 * before its time is one that goes on by itself, such as the roast in the oven.
 */
export function stateOf(step: Step, at: Instant): MarkState {
  const over = Date.parse(step.end) <= at;
  switch (step.state) {
    case 'done':
      return Date.parse(step.end) > at + minuteMilliseconds ? 'active' : 'done';
    case 'skipped':
      return 'skipped';
    case 'active':
      return over ? 'taken' : 'active';
    case 'due':
      return 'due';
    default:
      return 'planned';
  }
}

/**
 * How many rows each lane gets: one more where it mends most, `easy` in all, and up to `most` while
 * pieces would still cover one another. A lane without pieces has none.
 */
export function rowsGiven(view: View, paper: Paper & { easy: number; most: number }): Rows {
  const faults = (lane: PackedLane, rows: number): number => {
    const marks = laneMarks(view, lane, { ...paper, rows });
    const wordless = marks.filter((mark) => mark.label === undefined);
    const ahead = wordless.filter((mark) => mark.state !== 'done' && mark.state !== 'taken');
    return overlapCost * overlaps(marks) + wordless.length + ahead.length;
  };
  const has = (lane: PackedLane): number =>
    laneMarks(view, lane, { ...paper, rows: 1 })[0] ? 1 : 0;
  const rows: Rows = { roast: has('roast'), sides: has('sides'), sauce: has('sauce') };
  const used = rows.roast + rows.sides + rows.sauce;
  for (let given = used; given < paper.most; given += 1) {
    const best = packedLanes
      .filter((lane) => rows[lane] > 0 && rows[lane] < mostRows)
      .map((lane) => ({ lane, gain: faults(lane, rows[lane]) - faults(lane, rows[lane] + 1) }))
      .sort((a, b) => b.gain - a.gain)[0];
    if (!best || best.gain <= 0 || (given >= paper.easy && best.gain < overlapCost)) break;
    rows[best.lane] += 1;
  }
  return rows;
}

function overlaps(marks: readonly Mark[]): number {
  const covers = (a: Mark, b: Mark): boolean =>
    a !== b && a.row === b.row && a.x <= b.x && a.x + a.width > b.x + 1;
  return marks.filter((mark) => marks.some((other) => covers(other, mark))).length;
}

export const packed = (view: View, paper: Paper & { rows: Rows }): Mark[] =>
  packedLanes.flatMap((lane) => laneMarks(view, lane, { ...paper, rows: paper.rows[lane] }));

function laneMarks(view: View, lane: PackedLane, paper: Paper & { rows: number }): Mark[] {
  const { at, start, right, x, rows } = paper;
  const ends: { piece: number; words: number; mark: Mark | undefined }[] = Array.from(
    { length: rows },
    () => ({ piece: 0, words: 0, mark: undefined }),
  );
  const steps = view.steps
    .filter((step) => laneOf(step, view) === lane && !drawnElsewhere(step))
    .filter((step) => Date.parse(step.end) > start)
    .sort((a, b) => a.start.localeCompare(b.start) || b.end.localeCompare(a.end));
  return steps.map((step) => {
    const from = x(Math.max(start, Date.parse(step.start)));
    const width = Math.max(narrowest, x(Date.parse(step.end)) - from - 1);
    const label = barWords[step.id] ?? capital(step.title.replace(/\bthe /g, ''));
    const length = label.length * letterPixels;
    const inside = length + 10 <= width;
    const reach = from + (inside ? width : width + 6 + length);
    const fits = reach <= right;
    const clear = ends.filter((row) => row.piece <= from);
    const row =
      clear.find((one) => one.words <= from) ??
      clear.sort((a, b) => rank(a.mark) - rank(b.mark))[0] ??
      [...ends].sort((a, b) => a.piece - b.piece)[0];
    const mark: Mark = {
      step,
      lane,
      row: row ? ends.indexOf(row) : 0,
      x: from,
      width,
      state: stateOf(step, at),
      inside,
      ...(fits ? { label } : {}),
    };
    if (!row) return mark;
    // Words that would run under the new piece give way, unless they stand inside their own.
    if (row.words > from && row.mark && !row.mark.inside) delete row.mark.label;
    Object.assign(row, { piece: from + width, words: (fits ? reach : from + width) + 6, mark });
    return mark;
  });
}

/** Whose words give way first: what is behind us. */
const rank = (mark: Mark | undefined): number =>
  mark === undefined ? -1 : mark.state === 'done' || mark.state === 'taken' ? 0 : 1;
