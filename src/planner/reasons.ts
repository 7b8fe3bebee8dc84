/**
 * Why each step stands where it stands. The flow that proves a plan best tells which bounds press: a
 * step later than its wish leans on the bound that carries flow into it, an earlier one on the bound
 * that carries flow out of it; followed from step to step, that ends at what binds the day.
 */
import { addMinutes, type Instant } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { Reason } from '../kitchen/plan.ts';
import { type Day, minuteIn } from './compile/day.ts';
import { isOpen, momentOf } from './compile/dishes.ts';
import { instantOfMinute } from './grid.ts';
import type { Item } from './items.ts';
import { origin, type Problem, weights } from './problem.ts';
import type { BindingArc, Solution } from './solve/solve.ts';

export interface Leaning {
  why: Reason[];
  /** The step or moment it leans on, if any. */
  on?: string | undefined;
}

export interface Reasoner {
  day: Day;
  problem: Problem;
  solution: Solution;
  /** Bounds by the task they end at and by the task they begin at. */
  into: ReadonlyMap<string, readonly BindingArc[]>;
  outOf: ReadonlyMap<string, readonly BindingArc[]>;
}

export function reasonerOf(day: Day, problem: Problem, solution: Solution): Reasoner {
  const into = new Map<string, BindingArc[]>();
  const outOf = new Map<string, BindingArc[]>();
  for (const arc of solution.arcs) {
    if (arc.flow <= 0) continue;
    into.set(arc.to, [...(into.get(arc.to) ?? []), arc]);
    outOf.set(arc.from, [...(outOf.get(arc.from) ?? []), arc]);
  }
  return { day, problem, solution, into, outOf };
}

const kindOf = (reasoner: Reasoner, arc: BindingArc): string =>
  arc.lag === undefined ? 'shared' : (reasoner.problem.lags[arc.lag]?.kind ?? 'order');

/** Minutes that a step stands off its wish; later is more. */
function offWish(reasoner: Reasoner, item: Item): number {
  const { day, solution } = reasoner;
  const ends = item.step.ends;
  const start = solution.starts.get(item.id) ?? 0;
  if (!ends) return 0;
  const moment = solution.starts.get(momentOf(day, ends.anchor)) ?? 0;
  return start - (moment + ends.likelyMinutes - Math.max(1, Math.round(item.minutes.p50)));
}

export function leaningOf(reasoner: Reasoner, item: Item): Leaning {
  const { day, solution } = reasoner;
  if (!isOpen(item)) return { why: [{ key: 'told' }] };
  const startAt = instantOfMinute(day.grid, solution.starts.get(item.id) ?? 0);
  const wish = wishReason(reasoner, item, startAt);
  const off = offWish(reasoner, item);
  if (!item.step.ends) return prepLeaning(reasoner, item);
  if (Math.abs(off) < 0.5) return { why: wish, on: momentOf(day, item.step.ends.anchor) };
  const pressing = strongest(
    reasoner,
    (off > 0 ? reasoner.into.get(item.id) : reasoner.outOf.get(item.id)) ?? [],
  );
  if (!pressing) return { why: wish, on: momentOf(day, item.step.ends.anchor) };
  const other = off > 0 ? pressing.from : pressing.to;
  const reason =
    off > 0 ? laterReason(reasoner, item, pressing) : besideReason(reasoner, item, other);
  return { why: [reason, ...wish], on: other === origin ? undefined : other };
}

/** Wishes and promises press too, but they explain nothing. */
function strongest(reasoner: Reasoner, arcs: readonly BindingArc[]): BindingArc | undefined {
  return arcs
    .filter((arc) => !['wish', 'promise'].includes(kindOf(reasoner, arc)))
    .reduce<BindingArc | undefined>(
      (best, arc) => (best === undefined || arc.flow > best.flow ? arc : best),
      undefined,
    );
}

function wishReason({ day, solution }: Reasoner, item: Item, startAt: Instant): Reason[] {
  const ends = item.step.ends;
  if (!ends) return [{ key: 'as-soon-as-possible' }];
  const moment = solution.starts.get(momentOf(day, ends.anchor));
  if (moment === undefined) return [{ key: 'as-soon-as-possible' }];
  const anchorAt = instantOfMinute(day.grid, moment);
  const minutes = (anchorAt - startAt) / 60_000;
  return ends.anchor === 'pull' && minutes > 0
    ? [{ key: 'before-pull', minutes, pullAt: anchorAt }]
    : [{ key: 'with-anchor', anchor: ends.anchor, anchorAt, minutes }];
}

function laterReason(reasoner: Reasoner, item: Item, arc: BindingArc): Reason {
  if (kindOf(reasoner, arc) === 'shared') return sharedReason(reasoner, item, arc.from);
  if (arc.from === origin) return { key: 'as-soon-as-possible' };
  return besideReason(reasoner, item, arc.from);
}

/** By which of the two comes first: what may wait only so long leans on what it follows, and the other way. */
function besideReason({ solution }: Reasoner, item: Item, other: string): Reason {
  const from = solution.starts.get(item.id) ?? 0;
  const to = other === origin ? 0 : (solution.starts.get(other) ?? 0);
  return to > from
    ? { key: 'before-step', step: other, minutes: to - from }
    : { key: 'after-step', step: other, minutes: from - to };
}

/** What both want: an oven of another heat, an oven that is full, or hands. */
function sharedReason({ day, problem }: Reasoner, item: Item, other: string): Reason {
  const theirs = problem.stays.find((stay) => stay.task === other);
  const range = item.step.oven;
  if (!theirs || !range) return { key: 'hands-busy', step: other };
  const tooCool = theirs.highCelsius < celsiusOfFahrenheit(range.lowFahrenheit);
  if (other === 'roast-in' && tooCool)
    return { key: 'oven-too-cool', celsius: theirs.likelyCelsius };
  const dish = day.items.find((one) => one.id === other)?.card.id ?? day.card.id;
  return { key: 'oven-busy', dish };
}

/** Work that is done ahead: after what it waits for, or as hands come free. */
function prepLeaning(reasoner: Reasoner, item: Item): Leaning {
  const { solution, problem, day } = reasoner;
  const start = solution.starts.get(item.id) ?? 0;
  const pressing = strongest(reasoner, reasoner.into.get(item.id) ?? []);
  if (pressing && pressing.from !== origin)
    return { why: [laterReason(reasoner, item, pressing)], on: pressing.from };
  for (const lag of problem.lags) {
    if (lag.to.task !== item.id || lag.weight < weights.hard || lag.from.task === origin) continue;
    const from = (solution.starts.get(lag.from.task) ?? 0) + lag.from.plus + lag.minutes;
    if (Math.abs(from - start) < 0.5)
      return {
        why: [{ key: 'after-step', step: lag.from.task, minutes: lag.minutes }],
        on: lag.from.task,
      };
  }
  const before = handsBefore(reasoner, item.id, start);
  if (before && start > day.grid.now)
    return { why: [{ key: 'hands-busy', step: before }], on: before };
  return { why: [{ key: 'as-soon-as-possible' }] };
}

/** Who has the hands up to that minute. */
function handsBefore(
  { problem, solution }: Reasoner,
  task: string,
  minute: number,
): string | undefined {
  return problem.uses.find(
    (use) =>
      use.resource === 'hands' &&
      use.task !== task &&
      Math.abs((solution.starts.get(use.to.task) ?? 0) + use.to.plus - minute) < 0.5,
  )?.task;
}

/** How much later each task could start before the table moves, a window is missed or a rule broken. */
export function slackOf(
  problem: Problem,
  solution: Solution,
  still: readonly string[],
): Map<string, number> {
  const slack = new Map<string, number>(problem.tasks.map((task) => [task.id, Infinity]));
  for (const id of still) slack.set(id, 0);
  const arcs = solution.arcs.filter((arc) => arc.weight >= weights.window && arc.from !== origin);
  const start = (id: string): number => (id === origin ? 0 : (solution.starts.get(id) ?? 0));
  for (let round = 0; round < problem.tasks.length; round += 1) {
    let moved = false;
    for (const arc of arcs) {
      if (still.includes(arc.from)) continue;
      const theirs = arc.to === origin ? 0 : (slack.get(arc.to) ?? Infinity);
      const room = Math.max(0, start(arc.to) - start(arc.from) - arc.minutes + theirs);
      if (room < (slack.get(arc.from) ?? Infinity)) {
        slack.set(arc.from, room);
        moved = true;
      }
    }
    if (!moved) break;
  }
  return slack;
}

/** The steps a step leans on, one after another, to what binds the day. */
export function chainOf(id: string, leanings: ReadonlyMap<string, Leaning>): string[] {
  const chain: string[] = [];
  let next = leanings.get(id)?.on;
  while (next !== undefined && !chain.includes(next) && next !== id) {
    chain.push(next);
    next = leanings.get(next)?.on;
  }
  return chain;
}

/** Minutes from the pull to the table that nothing can shorten, and the table's earliest otherwise. */
export function tableFloor(
  day: Day,
  problem: Problem,
  solution: Solution,
): { fromPull: number; fromNow: Instant } {
  const arcs = solution.arcs.filter((arc) => arc.weight >= weights.table);
  const longest = (source: string): number => {
    const reach = new Map<string, number>([[source, 0]]);
    for (let round = 0; round < problem.tasks.length + 1; round += 1) {
      let moved = false;
      for (const arc of arcs) {
        const from = reach.get(arc.from);
        const kind = arc.lag === undefined ? 'order' : problem.lags[arc.lag]?.kind;
        if (from === undefined || kind === 'table' || arc.to === source) continue;
        if (arc.missedMinutes > 0 || (source === origin && arc.to === 'pull')) continue;
        if (arc.from === origin && arc.lag !== undefined && source !== origin) continue;
        if (from + arc.minutes > (reach.get(arc.to) ?? Number.NEGATIVE_INFINITY)) {
          reach.set(arc.to, from + arc.minutes);
          moved = true;
        }
      }
      if (!moved) break;
    }
    return reach.get('serve') ?? Number.NEGATIVE_INFINITY;
  };
  const fromNow = longest(origin);
  return {
    fromPull: longest('pull'),
    fromNow: Number.isFinite(fromNow)
      ? addMinutes(day.grid.originAt, fromNow)
      : addMinutes(day.grid.originAt, minuteIn(day, day.now)),
  };
}
