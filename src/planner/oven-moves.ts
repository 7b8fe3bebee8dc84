/**
 * What each oven's dial is turned to, and when, so that every stay has a heat it bears, on the way between two
 * heats as well: as few turns as can be, what those in it like best, and no turn sooner than it must be.
 * Looked for over the heats that anyone asks for, by the minute, as `trueHeatCelsius` tells an oven's way.
 */
import { celsiusOfFahrenheit, clamp, fahrenheitOfCelsius } from '../base/units.ts';
import type { OvenMove } from '../kitchen/plan.ts';
import type { Grid } from './grid.ts';
import { instantOfMinute } from './grid.ts';
import { householdOven, trueHeatCelsius, warmedCelsius } from './household-oven.ts';
import { changeMinutes, ovenNow, type Point, type Problem, type Stay } from './problem.ts';
import type { Solution } from './solve/solve.ts';

const dialFahrenheit = 5;

/** What a dial set to a heat may stand off it, and a dial that stands so near a heat is not turned to it. */
const marginKelvin = 0.5;
const sameKelvin = 1;

/** A minute at a heat that is not borne outweighs any turn, a turn any liking. One that is begun is the cook's. */
const prices = {
  amiss: 1e6,
  begunAmiss: 1e3,
  turn: 2e4,
  offMark: 5e3,
  disliked: 0.1,
  dislikedFirst: 0.02,
  sooner: 1e-4,
};

interface Spell {
  from: number;
  to: number;
  stay: Stay;
  begun: boolean;
  /** Its dish's last: by then it is to be done as it likes best. */
  last: boolean;
}

export interface DialOptions {
  problem: Problem;
  solution: Solution;
  grid: Grid;
  oven: number;
  /** What the dials were turned to and the roast's own turns, in time's order. */
  moves: readonly OvenMove[];
}

/** The moves that the dishes, a hold or a finishing sear ask of an oven; the roast's own are its own. */
export function dishMoves(options: DialOptions): OvenMove[] {
  const { grid, oven, moves } = options;
  const spells = spellsOf(options);
  const roast = spells.filter(({ stay }) => stay.task === 'roast-in');
  const dishes = spells.filter(({ stay }) => stay.task !== 'roast-in');
  const inAt = Math.min(Infinity, ...roast.map((one) => one.from));
  const outAt = Math.max(grid.now, ...roast.map((one) => one.to));
  const before = dishes.filter((one) => one.to <= inAt && inAt > grid.now && roast.length > 0);
  const after = dishes.filter((one) => !before.includes(one) && one.to > outAt);
  return [
    { from: grid.now, spells: before },
    { from: outAt, spells: after },
  ].flatMap((span) => {
    if (span.spells.length === 0) return [];
    const at = instantOfMinute(grid, span.from);
    const dial = moves.filter((move) => (move.oven ?? 0) === oven && move.at <= at).at(-1)?.celsius;
    const start: Start = {
      minute: span.from,
      celsius: trueHeatCelsius(moves, oven, at),
      dialCelsius: dial !== undefined && dial > 0 ? dial : undefined,
    };
    return turnsFor(span.spells, start).map(
      (turn, index, all): OvenMove => ({
        at: instantOfMinute(grid, turn.minute),
        celsius: turn.celsius,
        why: whyOf(span.spells, turn, all[index + 1]?.minute ?? Infinity),
        ...(oven === 0 ? {} : { oven }),
      }),
    );
  });
}

function spellsOf({ problem, solution, grid, oven }: DialOptions): Spell[] {
  const at = (point: Point): number => (solution.starts.get(point.task) ?? 0) + point.plus;
  const fixed = new Set(
    problem.tasks.filter((task) => task.fixedStart !== undefined).map((task) => task.id),
  );
  const dishOf = ({ task }: Stay): string => task.split('.')[0] ?? task;
  const ends = new Map<string, number>();
  for (const stay of problem.stays)
    ends.set(dishOf(stay), Math.max(ends.get(dishOf(stay)) ?? 0, at(stay.to)));
  return problem.stays
    .filter((stay, index) => solution.ovens[index] === oven && stay.task !== ovenNow)
    .map((stay) => ({
      from: at(stay.from),
      to: at(stay.to),
      stay,
      begun: fixed.has(stay.task) && at(stay.from) <= grid.now,
      last: at(stay.to) >= (ends.get(dishOf(stay)) ?? 0),
    }))
    .filter((spell) => spell.to > spell.from)
    .sort((a, b) => a.from - b.from || a.to - b.to);
}

interface Start {
  minute: number;
  celsius: number;
  dialCelsius: number | undefined;
}

interface Turn {
  minute: number;
  celsius: number;
}

/** The dial at an event, how warm the oven is, and what all that comes to so far. */
interface Standing {
  event: number;
  dial: number;
  celsius: number;
  cost: number;
  turns: readonly Turn[];
}

function turnsFor(spells: readonly Spell[], start: Start): readonly Turn[] {
  const marked = cheapest(spells, start, heatsFor(spells, atMark));
  if (marked.cost < prices.begunAmiss) return marked.turns;
  // Where the marks of a dial are too coarse, somewhere between them.
  const exact = cheapest(spells, start, heatsFor(spells, exactly));
  return exact.cost < marked.cost ? exact.turns : marked.turns;
}

/** Those with no turn first, then with one, and so on: most dials are turned once. */
function cheapest(spells: readonly Spell[], start: Start, heats: readonly number[]): Standing {
  const judge = judgeOf(spells, start.minute);
  for (let turns = 0; turns <= turnsTried; turns += 1) {
    const limit = turns === turnsTried ? Infinity : prices.turn * (turns + 1);
    const found = cheaperThan(limit, { spells, start, heats, judge });
    if (found) return found;
  }
  throw new Error('a dial left alone is a way too');
}

/** After so many turns all ways are looked at, those that are not borne among them. */
const turnsTried = 5;

interface Looking {
  spells: readonly Spell[];
  start: Start;
  heats: readonly number[];
  judge: Judge;
}

/** From event to event, the cheapest so far first: the first way that comes to the end is the cheapest of all. */
function cheaperThan(
  limit: number,
  { spells, start, heats, judge }: Looking,
): Standing | undefined {
  const events = eventsOf(spells, start.minute);
  const begins = events.filter((minute) => spells.some((one) => one.from === minute));
  const open: Standing[] = [
    {
      event: 0,
      dial: start.dialCelsius ?? start.celsius,
      celsius: start.celsius,
      cost: 0,
      turns: [],
    },
  ];
  const known = new Map<string, number>();
  for (;;) {
    const one = takeCheapest(open);
    if (!one) return undefined;
    const minute = events[one.event] ?? 0;
    const next = events[one.event + 1];
    if (next === undefined) return one;
    const onward = (from: Standing, since: number): void => {
      const there = judge(from, { since, until: next, limit });
      if (there.cost >= limit) return;
      const key = `${one.event} ${there.dial} ${Math.round(there.celsius)}`;
      if ((known.get(key) ?? Infinity) <= there.cost) return;
      known.set(key, there.cost);
      open.push({ ...there, event: one.event + 1 });
    };
    onward(one, minute);
    if (one.cost + prices.turn >= limit) continue;
    for (const heat of heats) {
      if (Math.abs(heat - one.dial) <= sameKelvin) continue;
      for (const at of turnMinutes(one, heat, { minute, next, begins })) {
        const until = at > minute ? judge(one, { since: minute, until: at, limit }) : one;
        const cost = until.cost + priceOfTurn(heat) + prices.sooner * (next - at);
        if (cost >= limit) continue;
        const turns = [...until.turns, { minute: at, celsius: heat }];
        onward({ ...until, dial: heat, cost, turns }, at);
      }
    }
  }
}

function takeCheapest(open: Standing[]): Standing | undefined {
  let index = 0;
  for (let one = 1; one < open.length; one += 1)
    if ((open[one]?.cost ?? 0) < (open[index]?.cost ?? 0)) index = one;
  const taken = open[index];
  const last = open.pop();
  if (last && last !== taken) open[index] = last;
  return taken;
}

/** Every minute at which something goes in or out, from the first that can be chosen. */
const eventsOf = (spells: readonly Spell[], from: number): number[] =>
  [...new Set([from, ...spells.flatMap((one) => [one.from, one.to])])]
    .filter((minute) => minute >= from)
    .sort((a, b) => a - b);

interface Stretch {
  minute: number;
  next: number;
  begins: readonly number[];
}

/** When something goes in or out, or just so that it is there when the next goes in. */
function turnMinutes(one: Standing, heat: number, { minute, next, begins }: Stretch): number[] {
  const rampAt = (at: number): number => {
    const celsius = warmedCelsius(one.celsius, one.dial, at - minute);
    return changeMinutes(flat(celsius), flat(heat), householdOven);
  };
  const inTime = begins
    // By then it may be nearer than it is now, or further.
    .map((begin) => begin - rampAt(Math.max(minute, begin - rampAt(next))))
    .filter((at) => at > minute && at < next);
  return [minute, ...inTime];
}

const flat = (celsius: number): { lowCelsius: number; highCelsius: number } => ({
  lowCelsius: celsius,
  highCelsius: celsius,
});

const priceOfTurn = (heat: number): number =>
  prices.turn + (Math.abs(heat - atMark(heat)) < 0.01 ? 0 : prices.offMark);

/** How far a heat is off what is liked, squared, over all that is in at a minute. */
function dislikingOf(
  spells: readonly Spell[],
  from: number,
  minutes: number,
): (minute: number, celsius: number) => number {
  const share = new Float64Array(minutes);
  const liked = new Float64Array(minutes);
  const square = new Float64Array(minutes);
  for (const { from: begin, to, stay, last } of spells) {
    const price = (last ? prices.disliked : prices.dislikedFirst) / (to - begin + 1);
    for (let minute = Math.max(0, begin - from); minute <= to - from; minute += 1) {
      share[minute] = (share[minute] ?? 0) + price;
      liked[minute] = (liked[minute] ?? 0) + price * stay.likelyCelsius;
      square[minute] = (square[minute] ?? 0) + price * stay.likelyCelsius ** 2;
    }
  }
  return (minute, celsius) =>
    (share[minute] ?? 0) * celsius ** 2 -
    2 * celsius * (liked[minute] ?? 0) +
    (square[minute] ?? 0);
}

interface Span {
  since: number;
  until: number;
  /** What costs as much is not told further. */
  limit: number;
}

/** What it comes to from one minute to another with the dial left alone. */
type Judge = (one: Standing, span: Span) => Standing;

function judgeOf(spells: readonly Spell[], from: number): Judge {
  const minutes = Math.max(0, ...spells.map((one) => one.to - from)) + 1;
  const bounds = (begun: boolean): { low: Float64Array; high: Float64Array } => {
    const low = new Float64Array(minutes).fill(Number.NEGATIVE_INFINITY);
    const high = new Float64Array(minutes).fill(Number.POSITIVE_INFINITY);
    for (const one of spells) {
      if (one.begun !== begun) continue;
      for (let minute = Math.max(0, one.from - from); minute <= one.to - from; minute += 1) {
        low[minute] = Math.max(low[minute] ?? 0, one.stay.lowCelsius - marginKelvin);
        high[minute] = Math.min(high[minute] ?? 0, one.stay.highCelsius + marginKelvin);
      }
    }
    return { low, high };
  };
  const open = bounds(false);
  const begun = bounds(true);
  const disliked = dislikingOf(spells, from, minutes);
  const out = ({ low, high }: typeof open, minute: number, celsius: number): boolean =>
    celsius < (low[minute] ?? 0) || celsius > (high[minute] ?? 0);
  return (one, { since, until, limit }) => {
    let { celsius, cost } = one;
    for (let minute = since; minute <= until; minute += 1) {
      if (minute > since) celsius = warmedCelsius(celsius, one.dial, 1);
      if (cost >= limit || (minute === until && until < from + minutes - 1)) break;
      if (out(open, minute - from, celsius)) cost += prices.amiss;
      if (out(begun, minute - from, celsius)) cost += prices.begunAmiss;
      cost += disliked(minute - from, celsius);
    }
    return { ...one, celsius, cost };
  };
}

/** The heats a dial may be turned to: what each bears at least and at most, and what some in turn like best. */
function heatsFor(
  spells: readonly Spell[],
  marked: (celsius: number, low: number, high: number) => number,
): number[] {
  const heats = new Set<number>();
  spells.forEach((first, index) => {
    let low = first.stay.lowCelsius;
    let high = first.stay.highCelsius;
    heats.add(marked(low, low, high));
    heats.add(marked(high, low, high));
    heats.add(marked(clamp(first.stay.likelyCelsius, low, high), low, high));
    const likes: number[] = [];
    for (const one of spells.slice(index)) {
      low = Math.max(low, one.stay.lowCelsius);
      high = Math.min(high, one.stay.highCelsius);
      if (low > high) break;
      if (!one.last) continue;
      likes.push(one.stay.likelyCelsius);
      const mean = likes.reduce((sum, like) => sum + like, 0) / likes.length;
      heats.add(marked(clamp(mean, low, high), low, high));
    }
  });
  return [...heats].sort((a, b) => a - b);
}

/** The nearest mark of a dial, within what is borne where there is one. */
function atMark(celsius: number, low = celsius, high = celsius): number {
  const marks = fahrenheitOfCelsius(celsius) / dialFahrenheit;
  const near = [Math.round(marks), Math.ceil(marks - 1e-6), Math.floor(marks + 1e-6)].map((mark) =>
    celsiusOfFahrenheit(mark * dialFahrenheit),
  );
  return near.find((one) => one >= low && one <= high) ?? near[0] ?? celsius;
}

const exactly = (celsius: number): number => celsius;

/** For whom a dial is turned: whoever bears it while it stands so. */
function whyOf(spells: readonly Spell[], turn: Turn, until: number): OvenMove['why'] {
  const served = spells
    .filter((one) => one.to > turn.minute && one.from < until)
    .filter(
      ({ stay }) =>
        turn.celsius >= stay.lowCelsius - marginKelvin &&
        turn.celsius <= stay.highCelsius + marginKelvin,
    )
    .map(({ stay }) => stay.task);
  if (served.includes('sear')) return 'finish-sear';
  return served.includes('hold-out') ? 'hold' : 'sides';
}
