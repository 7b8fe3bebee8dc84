/**
 * Places every step that the roast's own moments do not fix: what hangs on a moment is placed back
 * from it, the mise en place forward from now, one pair of hands at a time.
 */

import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import { type Anchor, isRoastMoment } from '../kitchen/card.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { OvenMove, Reason, Shortfall } from '../kitchen/plan.ts';
import { Hands } from './hands.ts';
import { endOf, type Item, startMinutes } from './items.ts';
import type { Timeline } from './timeline.ts';

/** Mise en place begins no sooner than this before the roast goes in. */
export const prepLeadMinutes = 4 * 60;

export interface Placed {
  item: Item;
  startAt: Instant;
  endAt: Instant;
  hands: string[];
  why: Reason[];
  /** The latest end before something else must move. */
  latestEndAt: Instant;
}

export interface Placement {
  placed: Map<string, Placed>;
  hands: Hands;
  ovenForDishes: OvenMove[];
  shortfalls: Shortfall[];
}

export interface PlaceOptions {
  dinner: Dinner;
  items: readonly Item[];
  timeline: Timeline;
  now: Instant;
  /** The oven's moves for the roast alone, in order. */
  moves: readonly OvenMove[];
  /** Leave out what hangs on the roast: used to find out when the prep can be ready. */
  prepOnly?: boolean;
}

export function anchorAt(timeline: Timeline, anchor: Anchor): Instant {
  switch (anchor) {
    case 'roast-in':
      return timeline.roastInAt;
    case 'oven-down':
      return timeline.searEndAt ?? timeline.roastInAt;
    case 'pull':
      return timeline.pull.p50;
    case 'carve':
      return timeline.carveAt;
    case 'table':
      return timeline.serveAt;
  }
}

const handsMinutes = (item: Item): number =>
  item.handsOn === 'throughout' ? item.minutes.p50 : item.handsOn === 'start' ? startMinutes : 0;

/** A card's step waits for the step written before it unless it says what it waits for. */
export function predecessorsOf(
  item: Item,
  items: readonly Item[],
): { step: string; minMinutes: number }[] {
  if (item.step.after) return [...item.after];
  const siblings = items.filter((one) => one.card === item.card && !isRoastMoment(one.id));
  const before = siblings[siblings.indexOf(item) - 1];
  return before && item.card.card !== 'roast' ? [{ step: before.id, minMinutes: 0 }] : [];
}

/** Which of the steps that hang on a moment choose their minutes first. */
type Order = 'late-first' | 'early-first';

/**
 * From the table backward is how a cook thinks, and fits most into one pair of hands; when a roast
 * runs ahead there is no time left for that, and what comes first goes first.
 */
export function place(options: PlaceOptions): Placement {
  if (options.prepOnly) return attempt(options, 'late-first');
  const late = attempt(options, 'late-first');
  const faults = faultsOf(late, options.items);
  if (faults === 0) return late;
  const early = attempt(options, 'early-first');
  return faultsOf(early, options.items) < faults ? early : late;
}

/** Rules not kept, and steps that begin before what they wait for has ended. */
function faultsOf(placement: Placement, items: readonly Item[]): number {
  let faults = placement.shortfalls.length;
  for (const placed of placement.placed.values()) {
    if (placed.item.startedAt !== undefined || placed.item.doneAt !== undefined) continue;
    const ready = Math.max(0, ...readyTimes(placed.item, items, placement));
    if (ready > placed.startAt + 60_000) faults += 1;
  }
  return faults;
}

function attempt(options: PlaceOptions, order: Order): Placement {
  const { dinner, items, now } = options;
  const hands = new Hands(['you', ...dinner.helpers]);
  if (dinner.awayUntil !== undefined && dinner.awayUntil > now)
    hands.block(0, { from: now, to: dinner.awayUntil, what: 'away' });
  const result: Placement = { placed: new Map(), hands, ovenForDishes: [], shortfalls: [] };
  placeBegun(options, result);
  if (!options.prepOnly) {
    placeMoments(options, result);
    placeAnchored(options, result, order);
  }
  placePrep(options, result);
  latestEnds(items, result);
  return result;
}

function put(
  result: Placement,
  item: Item,
  startAt: Instant,
  why: Reason[],
  options: { endAt?: Instant; latestEndAt?: Instant } = {},
): Placed {
  const minutes =
    options.endAt !== undefined && item.handsOn === 'throughout'
      ? Math.max(0, minutesBetween(startAt, options.endAt))
      : handsMinutes(item);
  const placed: Placed = {
    item,
    startAt,
    endAt: options.endAt ?? addMinutes(startAt, item.minutes.p50),
    hands: minutes > 0 ? [result.hands.take(startAt, minutes, item.id)] : [],
    why,
    latestEndAt: options.latestEndAt ?? Number.POSITIVE_INFINITY,
  };
  result.placed.set(item.id, placed);
  return placed;
}

/** What was begun, called or finished stays where it was. */
function placeBegun({ dinner, items }: PlaceOptions, result: Placement): void {
  for (const item of items) {
    if (isRoastMoment(item.id)) continue;
    if (item.skipped && item.doneAt === undefined) continue;
    const endAt = endOf(item, dinner);
    if (endAt === undefined) continue;
    const startAt = Math.min(item.startedAt ?? addMinutes(endAt, -item.minutes.p50), endAt);
    put(result, item, startAt, [{ key: 'told' }], { endAt });
  }
}

/** The moments that need hands are fixed by the roast, so they take them first. */
function placeMoments({ items, timeline }: PlaceOptions, result: Placement): void {
  const moments: Partial<Record<string, [Instant, Instant, Reason[]]>> = {
    'oven-on': [
      timeline.ovenOnAt,
      timeline.roastInAt,
      [
        {
          key: 'before-step',
          step: 'roast-in',
          minutes: minutesBetween(timeline.ovenOnAt, timeline.roastInAt),
        },
      ],
    ],
    'roast-in': [
      timeline.roastInAt,
      timeline.pull.p50,
      [
        { key: 'roast-takes', minutes: minutesBetween(timeline.roastInAt, timeline.pull.p50) },
        { key: 'before-table', minutes: minutesBetween(timeline.pull.p50, timeline.serveAt) },
      ],
    ],
    pull: [
      timeline.pull.p50,
      addMinutes(timeline.pull.p50, 2),
      [{ key: 'roast-takes', minutes: minutesBetween(timeline.roastInAt, timeline.pull.p50) }],
    ],
    rest: [
      timeline.pull.p50,
      timeline.searAgainAt ?? timeline.carveAt,
      [{ key: 'rest-takes', minutes: timeline.restMinutes }],
    ],
    carve: [
      timeline.carveAt,
      timeline.serveAt,
      [{ key: 'before-table', minutes: timeline.carveMinutes }],
    ],
    serve: [timeline.serveAt, addMinutes(timeline.serveAt, 5), [{ key: 'told' }]],
    'put-away': [
      addMinutes(timeline.serveAt, 60),
      addMinutes(timeline.serveAt, 75),
      [{ key: 'after-step', step: 'serve', minutes: 60 }],
    ],
  };
  if (timeline.searEndAt !== undefined) {
    moments['oven-down'] = [
      timeline.searEndAt,
      addMinutes(timeline.searEndAt, 2),
      [
        {
          key: 'after-step',
          step: 'roast-in',
          minutes: minutesBetween(timeline.roastInAt, timeline.searEndAt),
        },
      ],
    ];
  }
  if (timeline.searAgainAt !== undefined) {
    moments['oven-up'] = [
      timeline.pull.p50,
      addMinutes(timeline.pull.p50, 2),
      [
        {
          key: 'before-step',
          step: 'sear',
          minutes: minutesBetween(timeline.pull.p50, timeline.searAgainAt),
        },
      ],
    ];
    moments.sear = [
      timeline.searAgainAt,
      timeline.carveAt,
      [
        {
          key: 'before-step',
          step: 'carve',
          minutes: minutesBetween(timeline.searAgainAt, timeline.carveAt),
        },
      ],
    ];
  }
  for (const item of items) {
    const moment = moments[item.id];
    if (!moment || (item.skipped && item.doneAt === undefined)) continue;
    const [startAt, endAt, why] = moment;
    put(result, item, startAt, why, { endAt: Math.max(startAt, endAt) });
  }
}

/** The oven's temperature by its moves at an instant, in Celsius; 0 when off. */
export function ovenAt(moves: readonly OvenMove[], at: Instant): number {
  return moves.filter((move) => move.at <= at).at(-1)?.celsius ?? 0;
}

interface Window {
  startAt: Instant;
  endAt: Instant;
  why: Reason[];
  move?: OvenMove | undefined;
  late: number;
}

/** Steps that hang on a moment of the roast, each after what it waits for. */
function placeAnchored(options: PlaceOptions, result: Placement, order: Order): void {
  const sign = order === 'early-first' ? 1 : -1;
  const anchored = options.items
    .filter((item) => item.step.ends && !isRoastMoment(item.id) && !result.placed.has(item.id))
    .filter((item) => !item.skipped && item.doneAt === undefined)
    .map((item) => ({ item, window: windowOf(options, item) }))
    .sort((a, b) => sign * (a.window.endAt - b.window.endAt) || (a.item.id < b.item.id ? -1 : 1));
  for (const { item, window } of anchored) {
    const ends = item.step.ends;
    if (!ends) continue;
    const anchor = anchorAt(options.timeline, ends.anchor);
    const ready = Math.max(options.now, ...readyTimes(item, options.items, result));
    const earliest = Math.max(ready, addMinutes(anchor, ends.earliestMinutes - item.minutes.p50));
    const minutes = handsMinutes(item);
    // Never later than what waits for it can bear, never before it is ready.
    const bound = addMinutes(neededBy(item, options.items, result), -item.minutes.p50);
    const wanted = Math.max(Math.min(window.startAt, bound), ready);
    const latest = Math.max(wanted, addMinutes(anchor, ends.latestMinutes - item.minutes.p50));
    const startAt =
      minutes === 0
        ? wanted
        : (result.hands.lastFree(wanted, minutes, earliest) ??
          Math.max(wanted, Math.min(result.hands.firstFree(wanted, minutes), latest)));
    if (window.move) result.ovenForDishes.push(window.move);
    const endAt = addMinutes(startAt, item.minutes.p50);
    if (endAt > addMinutes(anchor, ends.latestMinutes) + 60_000 && window.late === 0) {
      result.shortfalls.push({
        constraint: 'ends-in-time',
        step: item.id,
        minutes: minutesBetween(addMinutes(anchor, ends.latestMinutes), endAt),
      });
    }
    if (window.late > 0)
      result.shortfalls.push({ constraint: 'oven-tolerance', step: item.id, minutes: window.late });
    const clash = minutes > 0 ? result.hands.clash(startAt, minutes) : undefined;
    if (clash) result.shortfalls.push({ constraint: 'hands', step: item.id });
    put(result, item, startAt, window.why, {
      latestEndAt: Math.max(endAt, addMinutes(anchor, ends.latestMinutes)),
    });
  }
}

/** The earliest start among placed steps that wait for this one. */
function neededBy(item: Item, items: readonly Item[], result: Placement): Instant {
  let by = Number.POSITIVE_INFINITY;
  for (const other of items) {
    const next = result.placed.get(other.id);
    const link = next && predecessorsOf(other, items).find((one) => one.step === item.id);
    if (next && link) by = Math.min(by, addMinutes(next.startAt, -link.minMinutes));
  }
  return by;
}

/** When each placed step that this one waits for lets it begin. */
const readyTimes = (item: Item, items: readonly Item[], result: Placement): Instant[] =>
  predecessorsOf(item, items).flatMap(({ step, minMinutes }) => {
    const before = result.placed.get(step);
    return before ? [addMinutes(before.endAt, minMinutes)] : [];
  });

/** Where an anchored step would stand if hands were free; an oven dish looks for heat it tolerates. */
function windowOf(options: PlaceOptions, item: Item): Window {
  const { timeline, moves } = options;
  const ends = item.step.ends;
  const anchor = anchorAt(timeline, ends?.anchor ?? 'table');
  const endAt = addMinutes(anchor, ends?.likelyMinutes ?? 0);
  const startAt = addMinutes(endAt, -item.minutes.p50);
  const why: Reason[] = [
    ends?.anchor === 'pull'
      ? { key: 'before-pull', minutes: minutesBetween(startAt, anchor), pullAt: anchor }
      : {
          key: 'with-anchor',
          anchor: ends?.anchor ?? 'table',
          anchorAt: anchor,
          minutes: minutesBetween(startAt, anchor),
        },
  ];
  const range = item.step.oven;
  if (!range) return { startAt, endAt, why, late: 0 };
  const low = celsiusOfFahrenheit(range.lowFahrenheit) - 3;
  const high = celsiusOfFahrenheit(range.highFahrenheit) + 3;
  const likely = celsiusOfFahrenheit(range.likelyFahrenheit);
  const pullAt = timeline.pull.p50;
  const shared = ovenAt(moves, Math.min(startAt, addMinutes(pullAt, -1)));
  const tolerated = shared >= low && shared <= high;
  if (startAt < addMinutes(pullAt, -3) && tolerated) return { startAt, endAt, why, late: 0 };
  if (startAt >= addMinutes(pullAt, -3)) {
    // The oven is the dish's own once the roast is out.
    const move = {
      at: Math.max(pullAt, addMinutes(startAt, -12)),
      celsius: likely,
      why: 'sides' as const,
    };
    return { startAt, endAt, why, move, late: 0 };
  }
  const alone = addMinutes(pullAt, 3);
  const aloneEnd = addMinutes(alone, item.minutes.p50);
  return {
    startAt: alone,
    endAt: aloneEnd,
    why: [{ key: 'oven-too-cool', celsius: shared }, ...why],
    move: { at: pullAt, celsius: likely, why: 'sides' },
    late: Math.max(0, minutesBetween(timeline.serveAt, aloneEnd)),
  };
}

/** Everything else, forward from now in the order it is needed, as hands come free. */
function placePrep(options: PlaceOptions, result: Placement): void {
  const { items, timeline, now } = options;
  const open = items.filter(
    (item) =>
      !isRoastMoment(item.id) &&
      !result.placed.has(item.id) &&
      !item.skipped &&
      (!options.prepOnly || !item.step.ends),
  );
  const dueBy = latestStarts(options, open, result);
  const waiting = new Set(open);
  const from = Math.max(now, addMinutes(timeline.roastInAt, -prepLeadMinutes));
  while (waiting.size > 0) {
    const ready = [...waiting].filter((item) =>
      predecessorsOf(item, items).every(({ step }) => {
        const before = items.find((one) => one.id === step);
        return !before || !waiting.has(before);
      }),
    );
    const item = (ready.length > 0 ? ready : [...waiting]).reduce((first, one) =>
      (dueBy.get(one.id) ?? 0) < (dueBy.get(first.id) ?? 0) ? one : first,
    );
    waiting.delete(item);
    let earliest = from;
    let why: Reason = { key: 'as-soon-as-possible' };
    for (const { step, minMinutes } of predecessorsOf(item, items)) {
      const before = result.placed.get(step);
      if (!before) continue;
      const at = addMinutes(before.endAt, minMinutes);
      if (at > earliest) {
        earliest = at;
        why = { key: 'after-step', step, minutes: minMinutes };
      }
    }
    const minutes = handsMinutes(item);
    const clash = minutes > 0 ? result.hands.clash(earliest, minutes) : undefined;
    const startAt = minutes > 0 ? result.hands.firstFree(earliest, minutes) : earliest;
    put(result, item, startAt, clash ? [{ key: 'hands-busy', step: clash.what }] : [why]);
  }
}

/** The latest start of each prep step before what waits for it would be late. */
function latestStarts(
  options: PlaceOptions,
  open: readonly Item[],
  result: Placement,
): Map<string, Instant> {
  const latest = new Map<string, Instant>();
  const visit = (item: Item, seen: ReadonlySet<string>): Instant => {
    const known = latest.get(item.id);
    if (known !== undefined) return known;
    let end = item.card.card === 'roast' ? options.timeline.roastInAt : options.timeline.serveAt;
    for (const other of options.items) {
      const link = predecessorsOf(other, options.items).find((one) => one.step === item.id);
      if (!link || seen.has(other.id)) continue;
      const start =
        isRoastMoment(other.id) || result.placed.has(other.id)
          ? (result.placed.get(other.id)?.startAt ?? end)
          : visit(other, new Set([...seen, other.id]));
      end = Math.min(end, addMinutes(start, -link.minMinutes));
    }
    const start = addMinutes(end, -item.minutes.p50);
    latest.set(item.id, start);
    return start;
  };
  for (const item of open) visit(item, new Set([item.id]));
  return latest;
}

/** How late each step may end before another one has to move. */
function latestEnds(items: readonly Item[], result: Placement): void {
  for (const placed of result.placed.values()) {
    for (const other of items) {
      const link = predecessorsOf(other, items).find((one) => one.step === placed.item.id);
      const next = link ? result.placed.get(other.id) : undefined;
      if (!link || !next) continue;
      placed.latestEndAt = Math.min(placed.latestEndAt, addMinutes(next.startAt, -link.minMinutes));
    }
  }
}
