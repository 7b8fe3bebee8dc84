/**
 * Where starts that keep all lags still ask for the same thing twice: hands, a tool, a shelf, an oven
 * of two heats, a door that must stay shut. A conflict is a choice: each way out of it is one more lag
 * or one dish given an oven; every plan without the conflict takes one of them.
 */
import { changeMinutes, type Point, type Problem, type Stay, type Use } from '../problem.ts';

/** A point by its node: start[node] + plus. */
export interface Spot {
  node: number;
  plus: number;
}

export type WayOut =
  | { what: 'lag'; from: Spot; to: Spot; minutes: number }
  | { what: 'oven'; stay: number; oven: number };

export interface PlacedUse {
  id: number;
  from: Spot;
  to: Spot;
  fixed: boolean;
}

export interface PlacedStay extends PlacedUse {
  stay: Stay;
}

export interface Conflict {
  /** The same whenever the same uses are at odds. */
  key: string;
  ways: WayOut[];
}

export interface SharedThing {
  capacity: number;
  uses: readonly PlacedUse[];
}

/** The problem's resources and stays with tasks replaced by nodes; made once. */
export interface Shared {
  resources: readonly SharedThing[];
  /** Of two uses that cannot be at once, by their place among uses; each made when it is first met. */
  pairs: Map<number, Conflict>;
  stays: readonly PlacedStay[];
  /** change[a][b]: minutes between the end of stay a and the start of stay b in one oven; 0 mix. */
  change: readonly (readonly number[])[];
  problem: Problem;
}

export function sharedOf(problem: Problem, nodeOf: ReadonlyMap<string, number>): Shared {
  const fixed = new Set(problem.tasks.filter((t) => t.fixedStart !== undefined).map((t) => t.id));
  const spot = (point: Point): Spot => ({ node: nodeOf.get(point.task) ?? 0, plus: point.plus });
  let id = 0;
  const placed = (one: Use | Stay): PlacedUse => ({
    id: id++,
    from: spot(one.from),
    to: spot(one.to),
    fixed: fixed.has(one.from.task) && fixed.has(one.to.task),
  });
  const oven = problem.ovens[0];
  return {
    problem,
    pairs: new Map(),
    resources: problem.resources.map(({ id, capacity }) => ({
      capacity,
      uses: problem.uses
        .filter((use) => use.resource === id)
        .map(placed)
        .filter(canLast),
    })),
    stays: problem.stays.map((stay) => ({ ...placed(stay), stay })),
    change: problem.stays.map((a) =>
      problem.stays.map((b) => (oven ? changeMinutes(a, b, oven) : 0)),
    ),
  };
}

/** One that ends where it begins takes nothing, wherever it stands. */
const canLast = ({ from, to }: PlacedUse): boolean => from.node !== to.node || to.plus > from.plus;

const apart = (first: PlacedUse, second: PlacedUse, minutes: number): WayOut => ({
  what: 'lag',
  from: first.to,
  to: second.from,
  minutes,
});

/** The starts looked at, and which oven each stay was given so far (-1: none yet). */
export interface Look {
  start: Float64Array;
  ovenOf: Int8Array;
  /** Conflicts that no rule-keeping plan is without: they are left as they are, and said. */
  left: ReadonlySet<string>;
}

/**
 * Conflicts at these starts, an oven's first; none when all can be done so. Of a thing that there is
 * one of, every two that want it at once; of others the earliest.
 */
export function conflictsOf(shared: Shared, look: Look): Conflict[] {
  const found: Conflict[] = [];
  for (const { capacity, uses } of shared.resources) {
    if (uses.length <= capacity) continue;
    if (capacity === 1) found.push(...pairsAtOnce(shared, uses, look));
    else {
      const conflict = overused(uses, capacity, look);
      if (conflict) found.push(conflict);
    }
  }
  const ovens = ovenConflict(shared, look);
  if (ovens) found.unshift(ovens);
  return found;
}

const at = (look: Look, spot: Spot): number => (look.start[spot.node] ?? 0) + spot.plus;

/** The earliest moment at which more is taken than there is, as orders of two that would end it. */
function overused(uses: readonly PlacedUse[], capacity: number, look: Look): Conflict | undefined {
  if (uses.length <= capacity) return undefined;
  const order = uses
    .map((use) => ({ use, from: at(look, use.from), to: at(look, use.to) }))
    .filter((one) => one.to > one.from)
    .sort((a, b) => a.from - b.from || a.to - b.to);
  let active: typeof order = [];
  for (const one of order) {
    active = active.filter((other) => other.to > one.from);
    active.push(one);
    if (active.length > capacity && active.some((other) => !other.use.fixed)) {
      const conflict = ordersOf(active.slice(-(capacity + 1)).map((other) => other.use));
      if (conflict.ways.length > 0 && !look.left.has(conflict.key)) return conflict;
    }
  }
  return undefined;
}

/** Every two that want a single thing at once, first those that have furthest to go out of it. */
function pairsAtOnce(shared: Shared, uses: readonly PlacedUse[], look: Look): Conflict[] {
  const found: { conflict: Conflict; minutes: number }[] = [];
  const from = uses.map((use) => at(look, use.from));
  const to = uses.map((use) => at(look, use.to));
  for (let index = 1; index < uses.length; index += 1) {
    const begins = from[index] ?? 0;
    const ends = to[index] ?? 0;
    if (ends <= begins) continue;
    for (let before = 0; before < index; before += 1) {
      const otherBegins = from[before] ?? 0;
      const otherEnds = to[before] ?? 0;
      if (ends <= otherBegins || otherEnds <= begins || otherEnds <= otherBegins) continue;
      const conflict = pairOf(shared, uses[before], uses[index]);
      if (!conflict || look.left.has(conflict.key)) continue;
      found.push({ conflict, minutes: Math.min(ends - otherBegins, otherEnds - begins) });
    }
  }
  return found.sort((a, b) => b.minutes - a.minutes).map((one) => one.conflict);
}

function pairOf(
  { pairs }: Shared,
  one: PlacedUse | undefined,
  other: PlacedUse | undefined,
): Conflict | undefined {
  if (!one || !other || (one.fixed && other.fixed)) return undefined;
  const place = one.id * idsAtMost + other.id;
  const known = pairs.get(place);
  if (known) return known;
  const made = ordersOf([one, other]);
  pairs.set(place, made);
  return made;
}

/** More than any day has uses and stays. */
const idsAtMost = 1 << 20;

/** Every order of two of them that is not settled already. */
function ordersOf(uses: readonly PlacedUse[]): Conflict {
  const ways: WayOut[] = [];
  for (const first of uses)
    for (const second of uses)
      if (first !== second && !(first.fixed && second.fixed)) ways.push(apart(first, second, 0));
  return { key: keyOf(uses), ways };
}

const keyOf = (uses: readonly PlacedUse[]): string =>
  uses
    .map((use) => use.id)
    .sort((a, b) => a - b)
    .join(' ');

/** Dishes given ovens in time's order; where that fails, the ways out of the failure. */
function ovenConflict(shared: Shared, look: Look): Conflict | undefined {
  const { stays, problem } = shared;
  const ovens = problem.ovens;
  if (stays.length < 2 || ovens.length === 0) return undefined;
  const times = stays.map((one) => ({ from: at(look, one.from), to: at(look, one.to) }));
  const byTime = stays
    .map((_, index) => index)
    .filter((index) => (times[index]?.to ?? 0) > (times[index]?.from ?? 0))
    .sort((a, b) => (times[a]?.from ?? 0) - (times[b]?.from ?? 0) || a - b);
  const given: number[][] = ovens.map(() => []);
  const later: number[] = [];
  for (const index of byTime) {
    const oven = ovens.length === 1 ? 0 : (look.ovenOf[index] ?? -1);
    if (oven < 0) {
      later.push(index);
      continue;
    }
    const inside = given[oven] ?? [];
    const conflict = clash(shared, look, times, inside, index, oven);
    if (conflict) return conflict;
    inside.push(index);
  }
  for (const index of later) {
    const oven = given.findIndex((inside, one) => !clash(shared, look, times, inside, index, one));
    if (oven < 0)
      return {
        key: `oven ${index}`,
        ways: ovens.map((_, one): WayOut => ({ what: 'oven', stay: index, oven: one })),
      };
    given[oven]?.push(index);
  }
  return undefined;
}

/** Why a stay cannot be in an oven beside those inside, as the orders that would let it. */
function clash(
  shared: Shared,
  look: Look,
  times: readonly { from: number; to: number }[],
  inside: readonly number[],
  index: number,
  oven: number,
): Conflict | undefined {
  const { stays, change, problem } = shared;
  const mine = stays[index];
  const time = times[index];
  if (!mine || !time) return undefined;
  const sharing: number[] = [];
  for (const other of inside) {
    const theirs = stays[other];
    const span = times[other];
    // A roast follows its own program from heat to heat.
    const same = theirs?.stay.task === mine.stay.task;
    if (!theirs || !span || same || (mine.fixed && theirs.fixed)) continue;
    if (look.left.size > 0 && look.left.has(keyOf([mine, theirs]))) continue;
    const after = change[other]?.[index] ?? 0;
    const before = change[index]?.[other] ?? 0;
    if (after > 0 && span.to + after > time.from && time.to + before > span.from)
      return {
        key: keyOf([mine, theirs]),
        ways: [apart(theirs, mine, after), apart(mine, theirs, before)],
      };
    const door = doorWays(theirs, span, mine, time) ?? doorWays(mine, time, theirs, span);
    if (door) return { key: keyOf([mine, theirs]), ways: door };
    if (span.from < time.to && time.from < span.to) sharing.push(other);
  }
  const shelves = shelfConflict(shared, times, sharing, index, problem.ovens[oven]?.shelves ?? 1);
  return shelves && !look.left.has(shelves.key) ? shelves : undefined;
}

/** A dish that goes in or out while another needs the door shut. */
function doorWays(
  shut: PlacedStay,
  span: { from: number; to: number },
  moving: PlacedStay,
  time: { from: number; to: number },
): WayOut[] | undefined {
  const minutes = shut.stay.doorShutMinutes;
  if (minutes === 0) return undefined;
  for (const [spot, when] of [
    [moving.from, time.from],
    [moving.to, time.to],
  ] as const)
    if (when > span.from && when < span.from + minutes)
      return [
        { what: 'lag', from: spot, to: shut.from, minutes: 0 },
        { what: 'lag', from: shut.from, to: spot, minutes },
      ];
  return undefined;
}

function shelfConflict(
  shared: Shared,
  times: readonly { from: number; to: number }[],
  sharing: readonly number[],
  index: number,
  shelves: number,
): Conflict | undefined {
  const need = (one: number): number => shared.stays[one]?.stay.shelves ?? 0;
  const total = sharing.reduce((sum, one) => sum + need(one), need(index));
  if (total <= shelves) return undefined;
  // Fullest where one of them begins.
  for (const one of [...sharing, index]) {
    const when = times[one]?.from ?? 0;
    const there = [...sharing, index].filter(
      (other) => (times[other]?.from ?? 0) <= when && when < (times[other]?.to ?? 0),
    );
    if (!there.includes(index)) continue;
    const crowd: PlacedUse[] = [];
    let taken = 0;
    for (const other of there.reverse()) {
      const stay = shared.stays[other];
      if (!stay) continue;
      crowd.push(stay);
      taken += need(other);
      if (taken > shelves) {
        const conflict = ordersOf(crowd);
        return conflict.ways.length > 0 ? conflict : undefined;
      }
    }
  }
  return undefined;
}

/** The oven of each stay at starts without conflict: as given, else the first that bears it. */
export function ovensOf(shared: Shared, look: Look): number[] {
  const { stays, problem } = shared;
  const result = stays.map((_, index) =>
    problem.ovens.length <= 1 ? 0 : (look.ovenOf[index] ?? -1),
  );
  const times = stays.map((one) => ({ from: at(look, one.from), to: at(look, one.to) }));
  const open = result
    .map((oven, index) => (oven < 0 ? index : -1))
    .filter((index) => index >= 0)
    .sort((a, b) => (times[a]?.from ?? 0) - (times[b]?.from ?? 0) || a - b);
  for (const index of open) {
    const oven = problem.ovens.findIndex(
      (_, one) =>
        !clash(
          shared,
          look,
          times,
          result.flatMap((given, other) => (given === one ? [other] : [])),
          index,
          one,
        ),
    );
    result[index] = Math.max(0, oven);
  }
  return result;
}
