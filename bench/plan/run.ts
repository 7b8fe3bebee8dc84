/**
 * How good plans are and how long they take: against proved optima, with forty steps, two cooks and two
 * ovens, from ten steps to eighty, how little moves when little changes, and what the options of a choice
 * cost. Times are the processor's, beside a fixed loop of arithmetic timed in the same run, since machines drift.
 * `npm run bench:plan [days]`.
 */

import { type Lag, origin, type Problem } from '../../src/planner/problem.ts';
import { solve } from '../../src/planner/solve/solve.ts';
import { calibration, processorMilliseconds, quantile } from '../measure.ts';
import { timeChoices } from './choices.ts';
import { type ProvedDay, provedDays } from './frozen.ts';
import { instanceOf } from './instances.ts';
import { prove } from './prove.ts';

const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;

/** Milliseconds of processor of the quickest of three: what it takes, not what else the machine did meanwhile. */
function timed(work: () => void): number {
  let best = Number.POSITIVE_INFINITY;
  for (let round = 0; round < 3; round += 1) {
    const from = processorMilliseconds();
    work();
    best = Math.min(best, processorMilliseconds() - from);
  }
  return best;
}

const calibrated = (): string =>
  `(calibration ${Math.min(...Array.from({ length: 9 }, calibration)).toFixed(2)} ms)`;

async function againstOptima(days: readonly ProvedDay[], samples: number): Promise<void> {
  const gaps: number[] = [];
  const milliseconds: number[] = [];
  let proven = 0;
  let wrong = 0;
  for (const day of days) {
    const from = processorMilliseconds();
    const { cost, proven: sure } = solve(day.problem);
    milliseconds.push(processorMilliseconds() - from);
    gaps.push(day.optimum === 0 ? cost : (cost - day.optimum) / day.optimum);
    if (sure) proven += 1;
    if (cost < day.optimum || (sure && cost !== day.optimum)) wrong += 1;
  }
  const within = gaps.filter((gap) => gap <= 0.01).length;
  const late = days.filter((day) => day.late).length;
  console.log(
    `proved days        ${days.length}, ${percent(late, days.length)} of them late by force`,
  );
  console.log(`within 1 %         ${within} (${percent(within, days.length)})`);
  console.log(`at the optimum     ${gaps.filter((gap) => gap <= 0).length}`);
  console.log(`proved by ourselves ${proven}; at odds with the reference ${wrong}`);
  console.log(
    `worst gaps         ${[...gaps]
      .sort((a, b) => b - a)
      .slice(0, 8)
      .map((gap) => `${(100 * gap).toFixed(1)} %`)
      .join(', ')}`,
  );
  console.log(
    `milliseconds       p50 ${quantile(milliseconds, 0.5).toFixed(1)}, p99 ${quantile(milliseconds, 0.99).toFixed(1)} of processor ${calibrated()}`,
  );
  for (let index = 0; index < samples; index += 1) {
    const day = days[Math.floor((index * days.length) / samples)];
    if (!day) continue;
    const { cost, starts } = solve(day.problem);
    const proof = await prove(day.problem, {
      costAtMost: cost,
      lastStart: Math.max(...starts.values()),
    });
    const same = proof.optimum === day.optimum;
    console.log(
      `  proved again     day ${day.seed}: ${proof.optimum} in ${proof.seconds.toFixed(1)} s${same ? '' : ` BUT ${day.optimum} IN THE FILE`}`,
    );
  }
}

function bigKitchens(count: number): void {
  const options = {
    tasksAtLeast: 38,
    tasksAtMost: 42,
    dishesAtMost: 9,
    slotMinutes: 1,
    cooks: 2,
    ovens: 2,
  };
  const times: number[] = [];
  for (let seed = 1; seed <= count; seed += 1) {
    const problem = instanceOf(seed, options);
    times.push(timed(() => solve(problem)));
  }
  console.log(
    `40 steps, 2 cooks, 2 ovens: p50 ${quantile(times, 0.5).toFixed(1)} ms, p99 ${quantile(times, 0.99).toFixed(1)} ms ${calibrated()}`,
  );
}

function growth(): void {
  const sizes = [10, 20, 40, 80];
  const rows = sizes.map((size) => {
    const times: number[] = [];
    for (let seed = 1; seed <= 12; seed += 1) {
      const problem = size < 80 ? sized(seed, size) : joined(sized(seed, 40), sized(seed + 50, 40));
      times.push(timed(() => solve(problem)));
    }
    return { size, milliseconds: quantile(times, 0.5) };
  });
  for (const { size, milliseconds } of rows)
    console.log(`  ${String(size).padStart(3)} steps         p50 ${milliseconds.toFixed(2)} ms`);
  const power = (from: number, to: number): string => {
    const [few, many] = [from, to].map((size) => rows.find((row) => row.size === size));
    const ratio = (many?.milliseconds ?? 0) / (few?.milliseconds ?? 1);
    return (Math.log(ratio) / Math.log(to / from)).toFixed(2);
  };
  console.log(
    `  growth           20 to 80 steps as n^${power(20, 80)}, 40 to 80 as n^${power(40, 80)} ${calibrated()}`,
  );
}

const sized = (seed: number, size: number): Problem =>
  instanceOf(seed, {
    tasksAtLeast: size - 2,
    tasksAtMost: size + 2,
    dishesAtMost: Math.max(1, size / 4.5),
    slotMinutes: 1,
    cooks: 2,
    ovens: 2,
  });

/** Two days in one kitchen: the same hands and tools, an oven each. */
function joined(a: Problem, b: Problem): Problem {
  const named = (id: string): string => (id === origin ? id : `other ${id}`);
  const rename = (value: unknown): unknown =>
    JSON.parse(JSON.stringify(value), (key, one) =>
      (key === 'task' || key === 'id') &&
      typeof one === 'string' &&
      !one.startsWith('tool ') &&
      one !== 'hands'
        ? named(one)
        : one,
    );
  const other = rename(b) as Problem;
  const tools = new Map([...a.resources, ...b.resources].map((one) => [one.id, one]));
  return {
    tasks: [...a.tasks, ...other.tasks],
    lags: [...a.lags, ...other.lags],
    uses: [...a.uses, ...other.uses],
    stays: [
      ...a.stays,
      ...other.stays.map((stay) => (stay.oven === undefined ? stay : { ...stay, oven: 1 })),
    ],
    resources: [...tools.values()],
    ovens: a.ovens,
  };
}

/** How much of what was told moves: when nothing changes, and when one step slips by a minute. */
function stability(count: number): void {
  const still: number[] = [];
  const slipped: number[] = [];
  const forced: number[] = [];
  for (let seed = 1; seed <= count; seed += 1) {
    const problem = instanceOf(seed, {
      tasksAtLeast: 20,
      tasksAtMost: 30,
      dishesAtMost: 5,
      slotMinutes: 1,
    });
    const before = solve(problem).starts;
    const told = promised(problem, before);
    const again = solve(told).starts;
    still.push(moved(before, again));
    const open = problem.tasks.filter((task) => task.fixedStart === undefined);
    const task = open[seed % open.length];
    if (!task) continue;
    const late: Lag = {
      from: { task: origin, plus: 0 },
      to: { task: task.id, plus: 0 },
      minutes: (again.get(task.id) ?? 0) + 1,
      weight: 1_000_000,
      kind: 'release',
    };
    const slippedBy = (weight: number): number => {
      const day = promised(problem, again, weight);
      return moved(again, solve({ ...day, lags: [...day.lags, late] }).starts, task.id);
    };
    slipped.push(slippedBy(1));
    // Where nothing but a rule may move what was told.
    forced.push(slippedBy(50_000));
  }
  console.log(
    `nothing changed    starts that move: p50 ${quantile(still, 0.5)}, p90 ${quantile(still, 0.9)}`,
  );
  console.log(
    `one step a minute late: others that move: p50 ${quantile(slipped, 0.5)}, p90 ${quantile(slipped, 0.9)}`,
  );
  console.log(
    `  pushed by a rule: p50 ${quantile(forced, 0.5)}, p90 ${quantile(forced, 0.9)}; more than those: p50 ${quantile(
      slipped.map((all, index) => all - (forced[index] ?? 0)),
      0.5,
    )}`,
  );
}

function promised(problem: Problem, starts: ReadonlyMap<string, number>, weight = 1): Problem {
  const lags = problem.tasks.flatMap((task): Lag[] => {
    if (task.fixedStart !== undefined) return [];
    const here = { task: task.id, plus: 0 };
    const there = { task: origin, plus: 0 };
    const minutes = starts.get(task.id) ?? 0;
    return [
      { from: there, to: here, minutes, weight, kind: 'promise' },
      { from: here, to: there, minutes: -minutes, weight, kind: 'promise' },
    ];
  });
  return { ...problem, lags: [...problem.lags, ...lags] };
}

const moved = (
  before: ReadonlyMap<string, number>,
  after: ReadonlyMap<string, number>,
  but?: string,
): number =>
  [...before].filter(([task, start]) => task !== but && after.get(task) !== start).length;

const days = provedDays().slice(0, Number(process.argv[2] ?? 500));
await againstOptima(days, 6);
bigKitchens(Math.min(100, days.length));
growth();
stability(Math.min(60, days.length));
await timeChoices(3);
