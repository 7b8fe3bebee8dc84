/**
 * Mise en place hangs on no moment: it is done ahead, one thing after another, what is needed first
 * first. Its turns are where a list schedule puts it; the search moves it off them only for a reason.
 */
import { addMinutes, minutesBetween } from '../../base/time.ts';
import { isRoastMoment } from '../../kitchen/card.ts';
import { helpersFrom } from '../../kitchen/dinner.ts';
import { endOf, handsMinutesOf, type Item, predecessorsOf } from '../items.ts';
import { type Day, guessRoastInAt, minuteIn } from './day.ts';

/** Mise en place begins no sooner than this before the roast goes in. */
const prepLeadMinutes = 4 * 60;

export interface PrepTurn {
  minute: number;
}

export function prepTurns(day: Day): Map<string, PrepTurn> {
  const { items, grid } = day;
  const open = items.filter(
    (item) =>
      !isRoastMoment(item.id) &&
      !item.step.ends &&
      !item.skipped &&
      item.doneAt === undefined &&
      item.startedAt === undefined,
  );
  const dueBy = latestStarts(day, open);
  const lead = prepLeadMinutes * Math.max(1, day.dinner.pace);
  const from = Math.max(grid.now, minuteIn(day, addMinutes(guessRoastInAt(day), -lead)));
  const free = [
    from,
    ...helpersFrom(day.dinner, day.now).map(({ comesAt }) =>
      comesAt === undefined ? from : Math.max(from, minuteIn(day, comesAt)),
    ),
  ];
  occupyBegun(day, free);
  const turns = new Map<string, PrepTurn>();
  const ends = new Map<string, number>();
  const waiting = new Set(open);
  while (waiting.size > 0) {
    const ready = [...waiting].filter((item) =>
      predecessorsOf(item, items).every(
        ({ step }) => ![...waiting].some((other) => other.id === step),
      ),
    );
    const item = (ready.length > 0 ? ready : [...waiting]).reduce((first, one) =>
      (dueBy.get(one.id) ?? 0) < (dueBy.get(first.id) ?? 0) ? one : first,
    );
    waiting.delete(item);
    const earliest = predecessorsOf(item, items).reduce((latest, { step, minMinutes }) => {
      const before = items.find((one) => one.id === step);
      const endAt = before && endOf(before, day.dinner);
      const end = ends.get(step) ?? (endAt === undefined ? undefined : minuteIn(day, endAt));
      return end === undefined ? latest : Math.max(latest, end + minMinutes);
    }, from);
    const minutes = Math.ceil(handsMinutesOf(item));
    const who = free.indexOf(Math.min(...free));
    const minute = minutes > 0 ? Math.max(earliest, free[who] ?? from) : earliest;
    if (minutes > 0) free[who] = minute + minutes;
    turns.set(item.id, { minute });
    ends.set(item.id, minute + Math.max(1, Math.round(item.minutes.p50)));
  }
  return turns;
}

/** Hands that are busy with what was begun, or away, come free later. */
function occupyBegun(day: Day, free: number[]): void {
  const { dinner } = day;
  if (dinner.awayUntil !== undefined && dinner.awayUntil > day.now)
    free[0] = Math.max(free[0] ?? 0, minuteIn(day, dinner.awayUntil));
  for (const item of day.items) {
    if (isRoastMoment(item.id) || item.startedAt === undefined || item.doneAt !== undefined)
      continue;
    const busyUntil =
      item.handsOn === 'throughout'
        ? (endOf(item, dinner) ?? 0)
        : addMinutes(item.startedAt, handsMinutesOf(item));
    if (busyUntil <= day.now) continue;
    const who = free.indexOf(Math.min(...free));
    free[who] = Math.max(free[who] ?? 0, minuteIn(day, busyUntil));
  }
}

/** The latest start of each prep step before what waits for it would be late, in rough minutes. */
function latestStarts(day: Day, open: readonly Item[]): Map<string, number> {
  const latest = new Map<string, number>();
  const roastIn = minutesBetween(day.now, guessRoastInAt(day));
  const table = minutesBetween(day.now, day.wantedAt);
  const visit = (item: Item, seen: ReadonlySet<string>): number => {
    const known = latest.get(item.id);
    if (known !== undefined) return known;
    let end = item.card.card === 'roast' ? roastIn : table;
    for (const other of day.items) {
      const link = predecessorsOf(other, day.items).find((one) => one.step === item.id);
      if (!link || seen.has(other.id) || isRoastMoment(other.id)) continue;
      const start = anchoredStart(day, other) ?? visit(other, new Set([...seen, other.id]));
      end = Math.min(end, start - link.minMinutes);
    }
    const start = end - item.minutes.p50;
    latest.set(item.id, start);
    return start;
  };
  for (const item of open) visit(item, new Set([item.id]));
  return latest;
}

function anchoredStart(day: Day, item: Item): number | undefined {
  const ends = item.step.ends;
  if (!ends) return undefined;
  const roastIn = minutesBetween(day.now, guessRoastInAt(day));
  const table = minutesBetween(day.now, day.wantedAt);
  const at = {
    'roast-in': roastIn,
    'oven-down': roastIn + day.program.searMinutes,
    pull: roastIn + day.roastMinutes,
    carve: table - day.carveMinutes,
    table,
  }[ends.anchor];
  return at + ends.likelyMinutes - item.minutes.p50;
}
