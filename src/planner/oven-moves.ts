/**
 * What each oven's dial is set to so that every stay has a heat it bears: as few changes as can be,
 * a heat that all who share it tolerate, and each change begun in time to be there.
 */
import { celsiusOfFahrenheit, clamp, fahrenheitOfCelsius } from '../base/units.ts';
import type { OvenMove } from '../kitchen/plan.ts';
import type { Grid } from './grid.ts';
import { instantOfMinute } from './grid.ts';
import { changeMinutes, ovenNow, type Point, type Problem, type Stay } from './problem.ts';
import type { Solution } from './solve/solve.ts';

const dialFahrenheit = 5;

interface Spell {
  from: number;
  to: number;
  stay: Stay;
}

interface Group {
  low: number;
  high: number;
  spells: Spell[];
}

/** One dial's heats over time, in minutes of the problem. */
export interface Heat {
  minute: number;
  celsius: number;
  /** Whose stay asked for it first. */
  task: string;
}

export interface HeatsOptions {
  problem: Problem;
  solution: Solution;
  oven: number;
  /** What the dial was last turned to: it stays there where all that comes next bear it. */
  dialCelsius?: number | undefined;
}

export function heatsOf({ problem, solution, oven, dialCelsius }: HeatsOptions): Heat[] {
  const at = (point: Point): number => (solution.starts.get(point.task) ?? 0) + point.plus;
  const spells = problem.stays
    .filter((stay, index) => solution.ovens[index] === oven && stay.task !== ovenNow)
    .map((stay) => ({ from: at(stay.from), to: at(stay.to), stay }))
    .filter((spell) => spell.to > spell.from)
    .sort((a, b) => a.from - b.from || a.to - b.to);
  const standing = problem.stays.find(
    (stay, index) => stay.task === ovenNow && solution.ovens[index] === oven,
  );
  const now = standing && { minute: at(standing.to), celsius: standing.likelyCelsius };
  const groups: Group[] = [];
  for (const spell of spells) {
    const group = groups.at(-1);
    const low = Math.max(group?.low ?? 0, spell.stay.lowCelsius);
    const high = Math.min(group?.high ?? Infinity, spell.stay.highCelsius);
    if (group && low <= high) {
      group.low = low;
      group.high = high;
      group.spells.push(spell);
      continue;
    }
    // Who is still inside bears the next heat as well.
    const inside = (group?.spells ?? []).filter((one) => one.to > spell.from);
    groups.push({
      low: Math.max(spell.stay.lowCelsius, ...inside.map((one) => one.stay.lowCelsius)),
      high: Math.min(spell.stay.highCelsius, ...inside.map((one) => one.stay.highCelsius)),
      spells: [spell],
    });
  }
  return heatsOfGroups(groups, problem, { dialCelsius, now });
}

/**
 * What all like best within what all bear, drawn toward the next heat where there is not the time to
 * get there otherwise; a change is begun when the last who would not bear it is out.
 */
function heatsOfGroups(
  groups: readonly Group[],
  problem: Problem,
  { dialCelsius, now }: { dialCelsius: number | undefined; now: Omit<Heat, 'task'> | undefined },
): Heat[] {
  const oven = problem.ovens[0];
  const liked = groups.map((group, index) => {
    const stays = index === 0 && dialCelsius !== undefined && bears(group, dialCelsius);
    return stays ? dialCelsius : likedCelsius(group);
  });
  for (let index = groups.length - 2; index >= 0; index -= 1) {
    const group = groups[index];
    const next = groups[index + 1];
    if (!group || !next || !oven) continue;
    const minutes = Math.max(0, startOf(next) - leftAt(group, next.low, next.high));
    const low = next.low - minutes * oven.heatingKelvinPerMinute;
    const high = next.high + minutes * oven.coolingKelvinPerMinute;
    // A dial that stands well is not turned down for what comes after: that waits some minutes.
    const stays = index === 0 && liked[0] === dialCelsius;
    const drawn = stays ? Math.max(low, liked[0] ?? 0) : clamp(liked[index] ?? 0, low, high);
    liked[index] = clamp(drawn, group.low, group.high);
  }
  groups.forEach((group, index) => {
    if (index === 0 && liked[0] === dialCelsius) return;
    liked[index] = atMark(liked[index] ?? 0, liked[index + 1], group);
  });
  return groups.map((group, index): Heat => {
    const celsius = liked[index] ?? 0;
    const task = group.spells[0]?.stay.task ?? '';
    const before = groups[index - 1];
    if (!oven || (!before && !now)) return { minute: startOf(group), celsius, task };
    const from = before ? (liked[index - 1] ?? 0) : (now?.celsius ?? celsius);
    const ramp = changeMinutes(flat(from), flat(celsius), oven);
    const free = before ? leftAt(before, celsius, celsius) : (now?.minute ?? 0);
    return {
      minute: Math.min(startOf(group), Math.max(free, startOf(group) - ramp)),
      celsius,
      task,
    };
  });
}

/** A dial has marks: the next one that all still bear, on the side of the heat to come. */
function atMark(celsius: number, next: number | undefined, { low, high }: Group): number {
  const marks = fahrenheitOfCelsius(celsius) / dialFahrenheit;
  const sideways =
    next === undefined ? Math.round(marks) : next > celsius ? Math.ceil(marks) : Math.floor(marks);
  const exact = Math.abs(marks - Math.round(marks)) < 0.01 ? Math.round(marks) : sideways;
  const marked = celsiusOfFahrenheit(exact * dialFahrenheit);
  return marked >= low && marked <= high ? marked : celsius;
}

const bears = ({ low, high }: Group, celsius: number): boolean =>
  celsius >= low - 0.5 && celsius <= high + 0.5;

const startOf = (group: Group): number => Math.min(...group.spells.map((one) => one.from));

const flat = (celsius: number): { lowCelsius: number; highCelsius: number } => ({
  lowCelsius: celsius,
  highCelsius: celsius,
});

/** When the last of a group that does not bear the heats between is out. */
const leftAt = (group: Group, low: number, high: number): number =>
  Math.max(
    Number.NEGATIVE_INFINITY,
    ...group.spells
      .filter(({ stay }) => low > stay.highCelsius || high < stay.lowCelsius)
      .map((one) => one.to),
  );

/** The middle of what all like best at the last, within what all bear. */
function likedCelsius(group: Group): number {
  const dishOf = ({ stay }: Spell): string => stay.task.split('.')[0] ?? stay.task;
  const likes = group.spells
    .filter(
      (one, index) => !group.spells.slice(index + 1).some((later) => dishOf(later) === dishOf(one)),
    )
    .map((one) => one.stay.likelyCelsius);
  const mean = likes.reduce((sum, one) => sum + one, 0) / Math.max(1, likes.length);
  return clamp(mean, group.low, group.high);
}

/** The moves that the dishes, a hold or a finishing sear ask of an oven; the roast's own are its own. */
export function dishMoves(options: HeatsOptions & { grid: Grid }): OvenMove[] {
  const { grid, oven } = options;
  return heatsOf(options)
    .filter((heat) => heat.task !== 'roast-in')
    .map((heat) => ({
      at: instantOfMinute(grid, heat.minute),
      celsius: heat.celsius,
      why: heat.task === 'sear' ? 'finish-sear' : heat.task === 'hold-out' ? 'hold' : 'sides',
      ...(oven === 0 ? {} : { oven }),
    }));
}
