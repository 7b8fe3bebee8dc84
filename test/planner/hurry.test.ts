import { describe, expect, it } from 'vitest';
import { instanceOf } from '../../bench/plan/instances.ts';
import { type Lag, origin, type Problem, weights } from '../../src/planner/problem.ts';
import { hurried, mostHurry } from '../../src/planner/solve/hurry.ts';
import { solve } from '../../src/planner/solve/solve.ts';

/** All starts told, and one task no sooner than a minute. */
function told(problem: Problem, starts: ReadonlyMap<string, number>, late: Lag[] = []): Problem {
  const promises = problem.tasks.flatMap(({ id, fixedStart }): Lag[] => {
    if (fixedStart !== undefined) return [];
    const here = { task: id, plus: 0 };
    const there = { task: origin, plus: 0 };
    const minutes = starts.get(id) ?? 0;
    return [
      { from: there, to: here, minutes, weight: 1, kind: 'promise' },
      { from: here, to: there, minutes: -minutes, weight: 1, kind: 'promise' },
    ];
  });
  return { ...problem, lags: [...problem.lags, ...promises, ...late] };
}

const notBefore = (task: string, minutes: number): Lag => ({
  from: { task: origin, plus: 0 },
  to: { task, plus: 0 },
  minutes,
  weight: weights.hard,
  kind: 'release',
});

/** Three things one after another in one pair of hands, ten minutes each, and a table after them. */
const chain = (low: number, likely = 10): Problem => ({
  tasks: ['a', 'b', 'c'].map((id) => ({ id, minutes: { low, likely, high: 15 } })),
  lags: ['a', 'b', 'c'].flatMap((id, index): Lag[] => [
    notBefore(id, 0),
    {
      from: { task: origin, plus: 0 },
      to: { task: id, plus: 0 },
      minutes: index * 10,
      weight: 1,
      kind: 'wish',
    },
    {
      from: { task: id, plus: 0 },
      to: { task: origin, plus: 0 },
      minutes: -index * 10,
      weight: 1,
      kind: 'wish',
    },
  ]),
  resources: [{ id: 'hands', capacity: 1 }],
  uses: ['a', 'b', 'c'].map((id) => ({
    resource: 'hands',
    task: id,
    from: { task: id, plus: 0 },
    to: { task: id, plus: likely },
  })),
  ovens: [],
  stays: [],
});

const startsOf = (problem: Problem): number[] => [...solve(problem).starts.values()];

describe('a minute that is made up', () => {
  const before = new Map([
    ['a', 0],
    ['b', 10],
    ['c', 20],
  ]);

  it('a step a minute late that can be done in nine: the next stands', () => {
    const solution = solve(told(chain(8), before, [notBefore('a', 1)]));
    expect([...solution.starts.values()]).toEqual([1, 10, 20]);
    expect([...solution.hurry.ends]).toEqual([['a', 1]]);
  });

  it('a step that takes what it takes hands the minute on', () => {
    expect(startsOf(told(chain(10), before, [notBefore('a', 1)]))).toEqual([1, 11, 21]);
  });

  it('what can be made up by one minute alone leaves one to the next', () => {
    expect(startsOf(told(chain(9), before, [notBefore('a', 2)]))).toEqual([2, 11, 20]);
  });

  it('nobody makes up ten minutes: what takes twice as long moves what follows', () => {
    const slow = chain(8);
    const twice: Problem = {
      ...slow,
      tasks: slow.tasks.map((one) =>
        one.id === 'a' ? { ...one, minutes: { low: 16, likely: 20, high: 30 } } : one,
      ),
      uses: slow.uses.map((one) =>
        one.task === 'a' ? { ...one, to: { task: 'a', plus: 20 } } : one,
      ),
    };
    const [a, b, c] = startsOf(told(twice, before));
    expect(a).toBe(0);
    expect(b).toBeGreaterThanOrEqual(18);
    expect(c).toBeGreaterThanOrEqual((b ?? 0) + 8);
  });

  it('nothing is made up while what was told can be kept', () => {
    const { hurry } = solve(told(chain(8), before));
    expect([hurry.ends.size, hurry.hands.size]).toEqual([0, 0]);
  });

  it('days of the cards: less moves, no step is shorter than its least, no table is later', {
    timeout: 240_000,
  }, () => {
    let still = 0;
    let days = 0;
    for (let seed = 301; seed <= 320; seed += 1) {
      const problem = instanceOf(seed, {
        tasksAtLeast: 16,
        tasksAtMost: 26,
        dishesAtMost: 4,
        slotMinutes: 1,
      });
      const first = solve(told(problem, solve(problem).starts)).starts;
      const open = problem.tasks.filter((one) => one.fixedStart === undefined);
      const task = open[seed % open.length];
      if (!task) continue;
      const late = notBefore(task.id, (first.get(task.id) ?? 0) + 1);
      const free = solve({ ...problem, lags: [...problem.lags, late] });
      const day = told(problem, first, [late]);
      const { starts, hurry, clashes } = solve(day);
      const most = mostHurry(day);
      for (const [step, minutes] of hurry.ends)
        expect(minutes).toBeLessThanOrEqual(most.ends.get(step) ?? 0);
      const kept = hurried(day, hurry);
      const at = (one: { task: string; plus: number }): number =>
        (starts.get(one.task) ?? 0) + one.plus;
      const broken = kept.lags.filter(
        (one) => one.weight >= weights.hard && at(one.from) + one.minutes > at(one.to),
      );
      const short = kept.tasks.filter(
        ({ id, minutes }) => hurry.ends.has(id) && minutes.likely < minutes.low,
      );
      expect([seed, clashes, broken.length, short.length]).toEqual([seed, 0, 0, 0]);
      const lateness = (served: number): number =>
        day.lags
          .filter((one) => one.kind === 'table')
          .reduce(
            (sum, one) =>
              sum + Math.max(0, one.to.task === origin ? served - at(one.to) + one.minutes : 0),
            0,
          );
      // A minute is what holding to what was told may cost.
      expect(lateness(starts.get('serve') ?? 0)).toBeLessThanOrEqual(
        lateness(free.starts.get('serve') ?? 0) + 1,
      );
      days += 1;
      if ([...first].every(([id, start]) => id === task.id || starts.get(id) === start)) still += 1;
    }
    expect(still / days).toBeGreaterThan(0.5);
  });
});
