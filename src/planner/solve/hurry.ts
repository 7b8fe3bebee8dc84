/**
 * A minute that a cook makes up. A step whose minutes have a spread can end a little sooner than it likely
 * does, and what asks for hands at its start can have them a minute less, so that what follows stands where
 * it was told. No step is made shorter than its low minutes.
 */
import type { Point, Problem, Task, Use } from '../problem.ts';

/** Nobody makes up more than this in one step. Common practice, no source. */
const mostMinutes = 2;

/** Hands at a step's start are back so much sooner, if they were wanted longer. Likewise. */
const startMinutes = 1;

export interface Hurry {
  /** Minutes by which steps end sooner than they likely would. */
  ends: ReadonlyMap<string, number>;
  /** Minutes by which steps that want hands at their start give them back sooner. */
  hands: ReadonlyMap<string, number>;
}

export const noHurry: Hurry = { ends: new Map(), hands: new Map() };

/** As much as each step could make up. */
export function mostHurry({ tasks, uses }: Problem): Hurry {
  const ends = new Map<string, number>();
  for (const { id, minutes } of tasks) {
    const most = Math.min(mostMinutes, minutes.likely - Math.max(1, minutes.low));
    if (most > 0) ends.set(id, most);
  }
  const likely = likelyOf(tasks);
  const hands = new Map<string, number>();
  for (const use of uses)
    if (isStart(use, likely) && use.to.plus > startMinutes) hands.set(use.task, startMinutes);
  return { ends, hands };
}

export const isHurried = ({ ends, hands }: Hurry): boolean => ends.size > 0 || hands.size > 0;

/** What is taken from a step's start, not to its end. */
const isStart = ({ task, from, to }: Use, likely: ReadonlyMap<string, number>): boolean =>
  from.task === task && to.task === task && from.plus === 0 && to.plus < (likely.get(task) ?? 0);

const likelyOf = (tasks: Problem['tasks']): Map<string, number> =>
  new Map(tasks.map((task) => [task.id, task.minutes.likely]));

export interface HurryOptions {
  /** Each bound takes whichever end suits it, the likely or the sooner: no plan with any such hurry is lost. */
  loose?: boolean | undefined;
}

/** The same day with those steps so much shorter. What hung on their ends hangs on the new ends. */
export function hurried(problem: Problem, hurry: Hurry, { loose }: HurryOptions = {}): Problem {
  if (!isHurried(hurry)) return problem;
  const likely = likelyOf(problem.tasks);
  const point = (one: Point): Point => {
    const sooner = one.plus === likely.get(one.task) ? (hurry.ends.get(one.task) ?? 0) : 0;
    return sooner === 0 ? one : { ...one, plus: one.plus - sooner };
  };
  const ends = <T extends { from: Point; to: Point }>(one: T): T => ({
    ...one,
    from: point(one.from),
    to: point(one.to),
  });
  return {
    ...problem,
    tasks: problem.tasks.map((task): Task => {
      const sooner = hurry.ends.get(task.id) ?? 0;
      if (sooner === 0) return task;
      return { ...task, minutes: { ...task.minutes, likely: task.minutes.likely - sooner } };
    }),
    lags: problem.lags.map((lag) => (loose ? { ...lag, from: point(lag.from) } : ends(lag))),
    uses: problem.uses.map((use) => {
      const sooner = isStart(use, likely) ? (hurry.hands.get(use.task) ?? 0) : 0;
      return sooner === 0 ? ends(use) : { ...use, to: { ...use.to, plus: use.to.plus - sooner } };
    }),
    stays: problem.stays.map(ends),
  };
}
