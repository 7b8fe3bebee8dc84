/**
 * The day as a picture, worked out: where each thing lies on paper so many pixels wide and high. Pure;
 * the drawing is in look/. What is long past is folded away to the left, so that what is left has room.
 */
import { type Instant, localTime, minuteMilliseconds } from '../base/time.ts';
import {
  drawnElsewhere,
  type Lane,
  lanes,
  type Mark,
  type MarkState,
  packed,
  rowsGiven,
  stateOf,
} from './pack.ts';
import { clock, degreesNumber, type Manner } from './show.ts';
import type { Step, View } from './wire.ts';

export interface Ticket {
  x: number;
  row: number;
  time: string;
  value: string;
}

export interface Place {
  y: number;
  height: number;
}

/** A step that is drawn as something else than a piece, where it can be touched all the same. */
export interface Spot extends Place {
  step: Step;
  state: MarkState;
  x: number;
  width: number;
}

export interface Picture {
  width: number;
  height: number;
  stringY: number;
  rowHeight: number;
  places: Record<Lane, Place>;
  nowX: number;
  from: Instant;
  to: Instant;
  /** The folded morning; absent when nothing is folded. */
  fold?: { x: number; width: number };
  hours: { x: number; label: string }[];
  marks: Mark[];
  spots: Spot[];
  oven: { x: number; width: number; value: string; fahrenheit: number }[];
  busy: { who: string; x: number; width: number; row: number }[];
  people: string[];
  tickets: Ticket[];
  pull?: { x10: number; x50: number; x90: number; early: string; late: string };
  tableX?: number;
}

export const gutter = 56;
export const ticketSize = { width: 70, height: 25 };
export const laneGap = 10;
const stringY = 32;
const handsRow = 14;
const rowLeast = 17;
const rowEasy = 21;
const rowMost = 32;
const ovenMore = 6;
const foldWidth = 26;
/** An hour beside the bracket, with its gap. */
const hourWidth = 52;
const keptMinutes = 50;
const handsStartMinutes = 2;

export function pictureOf(
  view: View,
  options: { at: Instant; width: number; height: number; manner: Manner; unfolded: boolean },
): Picture {
  const { at, width, manner, unfolded } = options;
  const spans = spanOf(view, at);
  const { x, start, fold } = scaleOf({ ...spans, at, width, unfolded });
  const people = [...new Set(view.steps.flatMap((step) => step.hands))];
  const tickets = ticketsOf(view, { x, start, manner, width });
  const ticketRows = Math.max(1, ...tickets.map((one) => one.row + 1));
  const top = stringY + 14 + ticketRows * (ticketSize.height + 4);
  const fixed = top + lanes.length * laneGap + Math.max(1, people.length) * handsRow + ovenMore;
  // The oven's lane takes a row like the others, and a little more.
  const room = options.height - fixed;
  const rowsOf = (height: number): number => Math.max(3, Math.floor(room / height) - 1);
  const paper = { at, x, start, right: width - 4 };
  const rows = rowsGiven(view, { ...paper, easy: rowsOf(rowEasy), most: rowsOf(rowLeast) });
  const count = rows.roast + rows.sides + rows.sauce + 1;
  const rowHeight = Math.min(rowMost, Math.max(rowLeast, room / count));
  const heights: Record<Lane, number> = {
    roast: rows.roast * rowHeight,
    oven: rowHeight + ovenMore,
    sides: rows.sides * rowHeight,
    sauce: rows.sauce * rowHeight,
    hands: Math.max(1, people.length) * handsRow,
  };
  const places = {} as Record<Lane, Place>;
  let y = top;
  for (const lane of lanes) {
    places[lane] = { y, height: heights[lane] };
    if (heights[lane] > 0) y += heights[lane] + laneGap;
  }
  return {
    width,
    height: Math.max(options.height, y - laneGap / 2),
    stringY,
    rowHeight,
    places,
    ...spans,
    ...(fold === undefined ? {} : { fold }),
    nowX: x(at),
    hours: hoursOf({ from: start, to: spans.to }, { x, manner, width }),
    marks: packed(view, { ...paper, rows }),
    spots: spotsOf(view, { at, start, x, oven: places.oven, roast: places.roast }),
    oven: ovenOf(view, { start, to: spans.to, x, manner }),
    busy: busyOf(view, { x, start, people }),
    people,
    tickets,
    ...bracketOf(view, { x, manner, tickets }),
    ...tableOf(view, x),
  };
}

function spanOf(view: View, at: Instant): { from: Instant; to: Instant } {
  const over = view.stage === 'served' || view.stage === 'put-away';
  const shown = view.steps.filter((step) => over || step.id !== 'put-away');
  const starts = shown.map((step) => Date.parse(step.start));
  const ends = shown.map((step) => Date.parse(step.end));
  const table = Date.parse(view.serving.likely ?? view.serving.wanted ?? view.at);
  const from = Math.min(at, ...starts);
  const to = Math.max(at + 20 * minuteMilliseconds, table + 10 * minuteMilliseconds, ...ends);
  return { from, to };
}

function scaleOf(options: {
  from: Instant;
  to: Instant;
  at: Instant;
  width: number;
  unfolded: boolean;
}): { x(at: Instant): number; start: Instant; fold?: { x: number; width: number } } {
  const { from, to, at, width, unfolded } = options;
  const kept = Math.max(from, Math.min(at, to) - keptMinutes * minuteMilliseconds);
  const folds = !unfolded && kept - from > 60 * minuteMilliseconds;
  const start = folds ? kept : from;
  const left = gutter + (folds ? foldWidth + 4 : 4);
  const x = (instant: Instant): number =>
    left + ((instant - start) / (to - start)) * (width - 18 - left);
  return folds ? { x, start, fold: { x: gutter, width: foldWidth } } : { x, start };
}

function hoursOf(
  { from, to }: { from: Instant; to: Instant },
  options: { x(at: Instant): number; manner: Manner; width: number },
): Picture['hours'] {
  const { x, manner, width } = options;
  const half = 30 * minuteMilliseconds;
  const perHalf = x(to) - x(to - half);
  const every = perHalf > 110 ? half : perHalf > 30 ? 2 * half : 4 * half;
  const past = Number(localTime(from, manner.timeZone).time.slice(3)) * minuteMilliseconds;
  const hours: Picture['hours'] = [];
  for (let at = from - past; at <= to; at += every) {
    const place = x(at);
    if (at >= from && place > gutter + 46 && place < width - 20)
      hours.push({ x: place, label: clock(at, manner) });
  }
  return hours;
}

function ovenOf(
  view: View,
  options: { start: Instant; to: Instant; x(at: Instant): number; manner: Manner },
): Picture['oven'] {
  const { start, to, x, manner } = options;
  const moves = view.oven.program;
  return moves.flatMap((move, index) => {
    const next = moves[index + 1];
    const from = Math.max(start, Date.parse(move.at));
    const until = Math.min(to, next ? Date.parse(next.at) : to);
    if (move.fahrenheit <= 0 || until <= from) return [];
    const value = String(degreesNumber(move.fahrenheit, manner));
    return [{ x: x(from), width: x(until) - x(from), value, fahrenheit: move.fahrenheit }];
  });
}

function busyOf(
  view: View,
  { x, start, people }: { x(at: Instant): number; start: Instant; people: string[] },
): Picture['busy'] {
  return view.steps
    .filter((step) => step.handsOn !== 'none' && step.state !== 'skipped')
    .flatMap((step) => {
      const from = Date.parse(step.start);
      const brief = from + handsStartMinutes * minuteMilliseconds;
      const ended = Date.parse(step.end);
      const end = step.handsOn === 'throughout' ? ended : Math.min(brief, ended);
      if (end <= start) return [];
      const left = x(Math.max(start, from));
      const width = Math.max(3, x(end) - left);
      return step.hands.map((who) => ({ who, x: left, width, row: people.indexOf(who) }));
    });
}

/** The latest readings have the first right to a place; what finds none is left out. */
function ticketsOf(
  view: View,
  options: { x(at: Instant): number; start: Instant; manner: Manner; width: number },
): Ticket[] {
  const { x, start, manner, width } = options;
  const half = ticketSize.width / 2;
  const placed: Ticket[] = [];
  for (const reading of [...view.readings].reverse()) {
    const at = Date.parse(reading.at);
    if (at < start) continue;
    const place = Math.min(width - half - 2, Math.max(gutter + half, x(at)));
    const row = [0, 1].find((candidate) =>
      placed.every((one) => one.row !== candidate || Math.abs(one.x - place) >= 2 * half + 3),
    );
    if (row === undefined) continue;
    const value = String(degreesNumber(reading.fahrenheit, manner));
    placed.push({ x: place, row, time: clock(reading.at, manner), value });
  }
  return placed.reverse();
}

/** The hours stand either side of the bracket's foot, or both behind it where a ticket is in the way. */
function bracketOf(
  view: View,
  options: { x(at: Instant): number; manner: Manner; tickets: readonly Ticket[] },
): Pick<Picture, 'pull'> {
  const { x, manner, tickets } = options;
  const pull = view.forecast?.pull;
  const step = view.steps.find((one) => one.id === 'pull');
  if (!pull || !step || step.state === 'done' || step.state === 'skipped') return {};
  const [x10 = 0, x50 = 0, x90 = 0] = [pull.p10, pull.p50, pull.p90].map((at) => x(Date.parse(at)));
  const early = clock(pull.p10, manner);
  const late = clock(pull.p90, manner);
  const reach = hourWidth + ticketSize.width / 2;
  const inTheWay = tickets.some((one) => one.x > x10 - reach && one.x < x10 + reach);
  const hours = inTheWay ? { early: '', late: `${early}–${late}` } : { early, late };
  return { pull: { x10, x50, x90, ...hours } };
}

const touchWidth = 44;

/** The pull is touched on its bracket, a move of the oven where its new height begins. */
function spotsOf(
  view: View,
  options: { at: Instant; start: Instant; x(at: Instant): number; oven: Place; roast: Place },
): Spot[] {
  const { at, start, x, oven, roast } = options;
  return view.steps.flatMap((step) => {
    const from = Date.parse(step.start);
    if (!drawnElsewhere(step) || from < start) return [];
    const state = stateOf(step, at);
    if (step.id !== 'pull') return [{ step, state, x: x(from), width: touchWidth, ...oven }];
    const { p10, p90 } = view.forecast?.pull ?? { p10: step.start, p90: step.start };
    const [left, right] = [x(Date.parse(p10)), x(Date.parse(p90))];
    const width = Math.max(touchWidth, right - left);
    const y = stringY - 14;
    return [{ step, state, x: (left + right - width) / 2, width, y, height: roast.y - y - 8 }];
  });
}

function tableOf(view: View, x: (at: Instant) => number): Pick<Picture, 'tableX'> {
  const table = view.serving.likely ?? view.serving.wanted;
  return table === undefined ? {} : { tableX: x(Date.parse(table)) };
}
