/**
 * Seeded days for the proof: dinners from the program's own cards at some stage of their day, written
 * down by the program's own compiler and then put on a grid of five minutes, so that a general solver
 * can prove their optimum. Heat is counted in Fahrenheit degrees, in steps of twenty-five.
 */

import { seeded } from '../../src/base/random.ts';
import { addMinutes, instantOf } from '../../src/base/time.ts';
import { fahrenheitDegreesOfKelvin, fahrenheitOfCelsius } from '../../src/base/units.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { isRoastMoment, stepIdOf } from '../../src/kitchen/card.ts';
import { dinnerOf } from '../../src/kitchen/dinner.ts';
import { type Fact, factVersion, type NewFact } from '../../src/kitchen/facts.ts';
import { compile } from '../../src/planner/compile/compile.ts';
import { dayOf } from '../../src/planner/compile/day.ts';
import type { Point, Problem } from '../../src/planner/problem.ts';
import { factsOfWritten } from '../../src/session/day.ts';

const { cards } = loadCards([builtInCardsFolder()]);
const zone = 'America/Chicago';
const opening = {
  timeZone: zone,
  units: { temperature: 'F' as const, weight: 'lb' as const },
  seed: 1,
  language: 'en',
};
const slotMinutes = 5;
const heatStep = 25;

export interface InstanceOptions {
  /** Steps to be placed, at most and at least. */
  tasksAtMost: number;
  tasksAtLeast: number;
  dishesAtMost: number;
  /** How fine time is: 5 for the proof, 1 as the program plans. */
  slotMinutes: number;
  cooks?: number;
  ovens?: number;
}

const usual: InstanceOptions = {
  tasksAtMost: 20,
  tasksAtLeast: 8,
  dishesAtMost: 4,
  slotMinutes,
};

/** The seed's day, made anew from the next dice until its size is right. A third is late. */
export function instanceOf(seed: number, options: Partial<InstanceOptions> = {}): Problem {
  const wanted = { ...usual, ...options };
  for (let tries = 0; tries < 400; tries += 1) {
    const problem = dayProblem(seed, tries, wanted);
    const size = problem.tasks.filter((task) => task.fixedStart === undefined).length;
    if (size <= wanted.tasksAtMost && size >= wanted.tasksAtLeast) return problem;
  }
  throw new Error(`no day of that size for seed ${seed}`);
}

export const isLate = (seed: number): boolean => seed % 3 === 0;

function dayProblem(seed: number, tries: number, options: InstanceOptions): Problem {
  const dice = seeded(seed * 104_729 + tries * 1_299_709 + 17);
  const between = (low: number, high: number): number =>
    low + Math.floor(dice.uniform() * (high - low + 1));
  const pick = <T>(list: readonly T[]): T => list[between(0, list.length - 1)] as T;
  const dishes = cards.filter((card) => card.card !== 'roast').map((card) => card.id);
  const menu = dishes.filter(() => dice.uniform() < options.dishesAtMost / dishes.length);
  const roastIsIn = dice.uniform() < 0.6;
  // A sear at the start is over in the days that begin with the roast in: the oven's fall from it is
  // the roast's own affair.
  const method = roastIsIn
    ? pick(['sear-first', 'steady'] as const)
    : pick(['steady', 'sear-last'] as const);
  const now = instantOf('2026-12-19', '14:00', zone);
  const guests = between(2, 10);
  const likely = between(60, 170);
  const inFor = roastIsIn ? between(30, Math.min(likely - 10, 120)) : 0;
  const soonest = likely - inFor + 25 + 3 + guests + (roastIsIn ? 0 : 40);
  const servingAt = addMinutes(
    now,
    isLate(seed) ? soonest - between(8, 45) : soonest + between(5, 110),
  );
  const cooks = options.cooks ?? (dice.uniform() < 0.7 ? 1 : 2);
  const facts = factsOfWritten(
    {
      opening,
      now: addMinutes(now, -300),
      servingAt,
      guests,
      roast: { cut: 'rib-roast', kilograms: between(15, 60) / 10, bones: 3 },
      method,
      dishes: menu,
      helpers: ['Robin', 'Sam'].slice(0, cooks - 1),
    },
    cards,
  );
  const done = (step: string, at: number): NewFact => ({ type: 'step-done', step, happenedAt: at });
  const more: NewFact[] = [];
  const readiness = dice.uniform();
  for (const card of cards.filter((one) => one.id === 'rib-roast' || menu.includes(one.id)))
    for (const step of card.steps) {
      const id = stepIdOf(card, step);
      if (isRoastMoment(id)) continue;
      const mise =
        card.card === 'roast'
          ? !['butter-roast', 'carving-setup', 'warm-plates', 'cook-on'].includes(id)
          : !step.ends && !step.oven;
      if (mise && (roastIsIn || dice.uniform() < readiness))
        more.push(done(id, addMinutes(now, -between(60, 200))));
    }
  if (roastIsIn) {
    const wentInAt = addMinutes(now, -inFor);
    more.push(done('roast-in', wentInAt));
    if (method === 'sear-first') more.push(done('oven-down', addMinutes(wentInAt, 20)));
    more.push({
      type: 'oven-stood',
      celsius: (325 - 32) / 1.8,
      happenedAt: addMinutes(wentInAt, 20),
    });
  }
  const all = [
    ...facts,
    ...more.map(
      (fact, index) =>
        ({
          ...fact,
          dinner: 'bench',
          position: facts.length + index,
          at: now,
          v: factVersion,
        }) as Fact,
    ),
  ];
  const dinner = dinnerOf('bench', all);
  const spread = between(8, 35);
  const day = dayOf(
    dinner,
    { pullMinute: { p10: likely - spread, p50: likely, p90: likely + spread } },
    now,
  );
  if (!day) throw new Error('the cut has a card');
  const pullAt = roastIsIn ? addMinutes(now, likely - inFor) : undefined;
  const problem = compile(day, { pullAt });
  const ovens = options.ovens ?? (dice.uniform() < 0.75 ? 1 : 2);
  return coarse(
    { ...problem, ovens: Array.from({ length: ovens }, () => problem.ovens[0] as never) },
    options.slotMinutes,
  );
}

/** The same day on a coarser grid and with heat in the marks of a dial. */
export function coarse(problem: Problem, slot: number): Problem {
  const up = (minutes: number): number => Math.ceil(minutes / slot - 1e-9);
  const near = (minutes: number): number => Math.round(minutes / slot);
  const long = (minutes: number): number => Math.max(1, near(minutes));
  const point = (one: Point, duration?: number): Point => ({
    task: one.task,
    plus:
      duration !== undefined && one.plus === duration
        ? long(duration)
        : one.plus < 0
          ? -up(-one.plus)
          : one.plus === 0
            ? 0
            : long(one.plus),
  });
  const durations = new Map(problem.tasks.map((task) => [task.id, task.minutes.likely]));
  const at = (one: Point): Point => point(one, durations.get(one.task));
  const mark = (celsius: number): number => fahrenheitOfCelsius(celsius);
  return {
    tasks: problem.tasks.map((task) => ({
      ...task,
      minutes: {
        low: near(task.minutes.low),
        likely: long(task.minutes.likely),
        high: near(task.minutes.high),
      },
      fixedStart: task.fixedStart === undefined ? undefined : near(task.fixedStart),
    })),
    lags: problem.lags.map((lag) => ({
      ...lag,
      from: at(lag.from),
      to: at(lag.to),
      minutes: near(lag.minutes),
    })),
    resources: problem.resources,
    uses: problem.uses.map((use) => ({ ...use, from: at(use.from), to: at(use.to) })),
    ovens: problem.ovens.map((oven) => ({
      shelves: oven.shelves,
      heatingKelvinPerMinute:
        Math.max(
          1,
          Math.round((fahrenheitDegreesOfKelvin(oven.heatingKelvinPerMinute) * slot) / heatStep),
        ) * heatStep,
      coolingKelvinPerMinute:
        Math.max(
          1,
          Math.round((fahrenheitDegreesOfKelvin(oven.coolingKelvinPerMinute) * slot) / heatStep),
        ) * heatStep,
    })),
    stays: problem.stays.map((stay) => ({
      ...stay,
      from: at(stay.from),
      to: at(stay.to),
      lowCelsius: Math.ceil((mark(stay.lowCelsius) - 1e-6) / heatStep - 0.25) * heatStep,
      highCelsius: Math.floor((mark(stay.highCelsius) + 1e-6) / heatStep + 0.25) * heatStep,
      likelyCelsius: mark(stay.likelyCelsius),
      doorShutMinutes: near(stay.doorShutMinutes),
    })),
  };
}
