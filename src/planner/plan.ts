/**
 * The rest of the day, from a dinner's facts, a forecast and an instant. Pure: the same three give
 * the same plan. It writes the day down as a problem, has it solved, and reads the answer out with its
 * reasons. It knows no clock, no words and no charts.
 */

import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import type { Dinner } from '../kitchen/dinner.ts';
import type { Forecast } from '../kitchen/forecast.ts';
import type { OvenMove, Plan } from '../kitchen/plan.ts';
import { coreAtKnife, soonestKnifeMinutes } from './aim.ts';
import { clocksOf } from './compile/clocks.ts';
import { compile } from './compile/compile.ts';
import { type Day, dayOf, minuteIn, pullBandOf } from './compile/day.ts';
import { checkShortfalls } from './constraints/index.ts';
import { instantOfMinute } from './grid.ts';
import { isComplete } from './items.ts';
import { dishMoves } from './oven-moves.ts';
import type { Problem } from './problem.ts';
import { readSteps } from './read-out.ts';
import { ovenAt, ovenMovesOf, roastTurns } from './roast-day.ts';
import { shortfallsOf } from './shortfalls.ts';
import { hurried } from './solve/hurry.ts';
import type { Solver } from './solve/recall.ts';
import { type Solution, solve } from './solve/solve.ts';
import { servingOf } from './table.ts';

export interface PlanQuestion {
  dinner: Dinner;
  /** Asked with the readings, for `pullCelsius`. */
  forecast: Forecast;
  pullCelsius: number;
  now: Instant;
  /** Path searches for each answer at most, where a good plan is enough. */
  work?: number | undefined;
}

/** The plan, or undefined while no roast is known. */
export function plan(question: PlanQuestion, solver: Solver = solve): Plan | undefined {
  const { dinner, forecast, pullCelsius, now, work } = question;
  const day = dayOf(dinner, forecast, now);
  if (!day) return undefined;
  const answer = answerOf(day, forecast, (one) => solver(one, { work }));
  const { solution } = answer;
  const problem = hurried(answer.problem, solution.hurry);
  const at = (task: string): Instant =>
    instantOfMinute(day.grid, solution.starts.get(task) ?? day.grid.now);
  const roastInAt = day.wentInAt ?? at('roast-in');
  const pullAt = pullBandOf(day, forecast, roastInAt);
  const carveAt = day.carveBegunAt ?? at('carve');
  const searAt = day.program.method === 'sear-last' ? at('sear') : undefined;
  const oven = ovenOf(day, problem, solution, roastInAt);
  const restMinutes = minutesBetween(pullAt.p50, searAt ?? carveAt);
  const { serving, onTimeChance } = servingOf(day, problem, solution, {
    pull: pullAt,
    soonestKnifeMinutes: soonestKnifeMinutes(forecast, {
      dinner,
      pullCelsius,
      leastRestMinutes: day.restLowMinutes,
    }),
  });
  const { steps, firstToBreak } = readSteps({ day, problem, solution, oven, pullAt });
  const made: Plan = {
    complete: isComplete(dinner),
    method: day.program.method,
    steps,
    serving,
    ...clocksOf(day, (task) => (solution.starts.has(task) ? at(task) : undefined)),
    onTimeChance,
    roastInAt,
    pullAt,
    pullCelsius,
    serveCelsius: dinner.target?.serveCelsius ?? pullCelsius + 9,
    restMinutes,
    carveMinutes: day.carveMinutes,
    oven,
    ovenNowCelsius: ovenAt(oven, now),
    checkAt: checkAtOf(day, forecast, roastInAt),
    coreAtServingCelsius: coreAtKnife(forecast, {
      dinner,
      pullCelsius,
      outMinute: minutesBetween(roastInAt, pullAt.p50),
      restMinutes,
    }),
    firstToBreak,
    shortfalls: [
      ...shortfallsOf(day, problem, solution),
      ...(solution.clashes > 0 ? [{ constraint: 'shared' }] : []),
    ],
  };
  return { ...made, shortfalls: [...made.shortfalls, ...checkShortfalls(made)] };
}

/** Told in fives: nobody puts a roast in at one minute to five. The rest takes up the difference. */
function answerOf(
  day: Day,
  forecast: Forecast,
  solved: (problem: Problem) => Solution,
): { problem: Problem; solution: Solution } {
  if (day.wentInAt !== undefined) {
    const problem = compile(day, { pullAt: pullBandOf(day, forecast, day.wentInAt).p50 });
    return { problem, solution: solved(problem) };
  }
  const problem = compile(day);
  const solution = solved(problem);
  const likely = instantOfMinute(day.grid, solution.starts.get('roast-in') ?? day.grid.now);
  const fives = Math.floor(likely / 300_000) * 300_000;
  const minute = minuteIn(day, fives);
  if (fives === likely || minute < day.grid.now) return { problem, solution };
  const rounded = compile(day, { roastInMinute: minute });
  const again = solved(rounded);
  return again.cost - solution.cost < roundingCost
    ? { problem: rounded, solution: again }
    : { problem, solution };
}

/** A few minutes more of rest may be had for a time that is easily told; a late table may not. */
const roundingCost = 500;

/** The oven's whole program: what was set, what the roast asks for, what dishes ask for after it. */
function ovenOf(day: Day, problem: Problem, solution: Solution, roastInAt: Instant): OvenMove[] {
  const { dinner, program, grid } = day;
  const litAt = solution.starts.get('oven-on');
  const own = ovenMovesOf(dinner, program, roastInAt).map((move) =>
    move.why === 'preheat' && litAt !== undefined && day.ovenLitAt === undefined
      ? { ...move, at: instantOfMinute(grid, litAt) }
      : move,
  );
  const roasts = roastTurns(dinner, own);
  const dishes = problem.ovens.flatMap((_, oven) =>
    dishMoves({ problem, solution, grid, oven, moves: roasts }),
  );
  return [...roasts, ...dishes].sort((a, b) => a.at - b.at);
}

/** The next look: what the forecast says, no sooner than now, and none once it is out. */
function checkAtOf(day: Day, forecast: Forecast, roastInAt: Instant): Instant | undefined {
  if (day.cameOutAt !== undefined) return undefined;
  const at = addMinutes(roastInAt, forecast.nextCheckMinute);
  const lastTold = day.dinner.readings.at(-1)?.happenedAt;
  return Math.max(at, lastTold ?? 0, day.wentInAt === undefined ? 0 : Math.min(day.now, at));
}
