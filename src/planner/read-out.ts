/** The steps of a day as its best answer places them, with who, why, how much room, and what tells first. */
import { addMinutes, type Instant, minutesBetween } from '../base/time.ts';
import { isRoastMoment } from '../kitchen/card.ts';
import type { OvenMove, Plan, PlannedStep, Reason, StepState } from '../kitchen/plan.ts';
import { type Day, searToCarveMinutes } from './compile/day.ts';
import { isOpen } from './compile/dishes.ts';
import { instantOfMinute } from './grid.ts';
import { handsOf } from './hands.ts';
import { endOf, type Item } from './items.ts';
import type { Problem } from './problem.ts';
import { chainOf, type Leaning, leaningOf, reasonerOf, slackOf } from './reasons.ts';
import type { Solution } from './solve/solve.ts';

export interface ReadOutOptions {
  day: Day;
  problem: Problem;
  solution: Solution;
  oven: readonly OvenMove[];
  pullAt: Plan['pullAt'];
}

interface Placed {
  startAt: Instant;
  endAt: Instant;
}

/** The moments that everything else is measured from: a step may not push them. */
const still = ['roast-in', 'pull', 'carve', 'serve'];

export function readSteps(options: ReadOutOptions): Pick<Plan, 'steps' | 'firstToBreak'> {
  const { day, problem, solution } = options;
  const who = handsOf(problem, solution, day);
  const slack = slackOf(problem, solution, still);
  const reasoner = reasonerOf(day, problem, solution);
  const leanings = new Map<string, Leaning>();
  for (const item of day.items)
    if (!isRoastMoment(item.id)) leanings.set(item.id, leaningOf(reasoner, item));
  const steps = day.items.flatMap((item): PlannedStep[] => {
    const placed = isRoastMoment(item.id) ? momentAt(options, item) : stepAt(options, item);
    if (!placed) return [];
    const room = slack.get(item.id) ?? Infinity;
    return [
      {
        id: item.id,
        card: item.card.id,
        title: item.title,
        ...placed,
        minutes: item.minutes,
        state: stateOf(day, item, placed.startAt),
        hands: handsNamed(item, who),
        handsOn: item.handsOn,
        ...handsSoonerOf(options, item),
        needs: item.needs,
        why: leanings.get(item.id)?.why ?? momentReasons(options, item, placed),
        chain: chainOf(item.id, leanings),
        ...ovenOfStep(options, item.id),
        slackMinutes: Number.isFinite(room) ? Math.round(room) : 0,
        presumed: item.presumed,
      },
    ];
  });
  steps.sort((a, b) => a.startAt - b.startAt || (a.id < b.id ? -1 : 1));
  return { steps, firstToBreak: firstToBreak(day, steps, slack) };
}

function handsSoonerOf(
  { solution }: ReadOutOptions,
  item: Item,
): Pick<PlannedStep, 'handsSoonerMinutes'> {
  const minutes = solution.hurry.hands.get(item.id);
  return minutes === undefined ? {} : { handsSoonerMinutes: minutes };
}

const handsNamed = (item: Item, who: ReadonlyMap<string, string>): string[] => {
  const name = who.get(item.id);
  return name === undefined ? [] : [name];
};

function ovenOfStep({ problem, solution }: ReadOutOptions, id: string): Pick<PlannedStep, 'oven'> {
  if (isRoastMoment(id)) return {};
  const index = problem.stays.findIndex((stay) => stay.task === id);
  const stay = problem.stays[index];
  if (!stay) return {};
  const { lowCelsius, highCelsius } = stay;
  return { oven: { index: solution.ovens[index] ?? 0, lowCelsius, highCelsius } };
}

/** A dish's step: as it was, or where the answer puts it. */
function stepAt({ day, solution }: ReadOutOptions, item: Item): Placed | undefined {
  const sooner = solution.hurry.ends.get(item.id) ?? 0;
  if (isOpen(item)) {
    const start = solution.starts.get(item.id);
    if (start === undefined) return undefined;
    const startAt = instantOfMinute(day.grid, start);
    const minutes = Math.max(1, Math.round(item.minutes.p50)) - sooner;
    return { startAt, endAt: addMinutes(startAt, minutes) };
  }
  if (item.skipped && item.doneAt === undefined) return undefined;
  const likelyEndAt = endOf(item, day.dinner);
  if (likelyEndAt === undefined) return undefined;
  const endAt = addMinutes(likelyEndAt, -sooner);
  return {
    startAt: Math.min(item.startedAt ?? addMinutes(endAt, -item.minutes.p50), endAt),
    endAt,
  };
}

/** A moment of the roast, from the answer or from what has happened. */
function momentAt(options: ReadOutOptions, item: Item): Placed | undefined {
  const { day, solution, pullAt, oven } = options;
  if (item.skipped && item.doneAt === undefined) return undefined;
  const at = (task: string): Instant | undefined => {
    const start = solution.starts.get(task);
    return start === undefined ? undefined : instantOfMinute(day.grid, start);
  };
  const roastInAt = day.wentInAt ?? at('roast-in') ?? day.now;
  const span = (startAt: Instant | undefined, minutes: number): Placed | undefined =>
    startAt === undefined ? undefined : { startAt, endAt: addMinutes(startAt, minutes) };
  const carveAt = day.carveBegunAt ?? at('carve') ?? day.now;
  const serveAt = day.servedAt ?? at('serve') ?? day.now;
  switch (item.id) {
    case 'oven-on': {
      const startAt = day.ovenLitAt ?? at('oven-on') ?? addMinutes(roastInAt, -30);
      return { startAt, endAt: Math.max(startAt, roastInAt) };
    }
    case 'roast-in':
      return { startAt: roastInAt, endAt: Math.max(roastInAt, pullAt.p50) };
    case 'oven-down':
      return span(
        day.dinner.calls.get('oven-change:oven-down')?.firstAt ??
          addMinutes(roastInAt, day.program.searMinutes),
        2,
      );
    case 'pull':
      return span(pullAt.p50, 2);
    case 'rest':
      return { startAt: pullAt.p50, endAt: Math.max(pullAt.p50, at('sear') ?? carveAt) };
    case 'oven-up': {
      const move = oven.find((one) => one.why === 'finish-sear');
      return span(move?.at ?? pullAt.p50, 2);
    }
    case 'sear': {
      const startAt = day.dinner.steps.get('sear')?.startedAt ?? at('sear');
      return span(startAt, day.program.searMinutes);
    }
    case 'carve':
      return { startAt: carveAt, endAt: Math.max(carveAt, serveAt) };
    case 'serve':
      return span(serveAt, 5);
    case 'put-away':
      return span(addMinutes(serveAt, 60), 15);
    default:
      return undefined;
  }
}

function momentReasons({ day, pullAt }: ReadOutOptions, item: Item, placed: Placed): Reason[] {
  const minutes = minutesBetween(placed.startAt, placed.endAt);
  switch (item.id) {
    case 'oven-on':
      return [{ key: 'before-step', step: 'roast-in', minutes }];
    case 'roast-in':
      return [{ key: 'roast-takes', minutes: minutesBetween(placed.startAt, pullAt.p50) }];
    case 'pull':
      return [{ key: 'roast-takes', minutes: day.roastMinutes }];
    case 'rest':
      return [{ key: 'rest-takes', minutes }];
    case 'oven-down':
      return [{ key: 'after-step', step: 'roast-in', minutes: day.program.searMinutes }];
    case 'oven-up':
      return [{ key: 'before-step', step: 'sear', minutes }];
    case 'sear':
      return [{ key: 'before-step', step: 'carve', minutes: minutes + searToCarveMinutes }];
    case 'carve':
      return [{ key: 'before-table', minutes: day.carveMinutes }];
    case 'put-away':
      return [{ key: 'after-step', step: 'serve', minutes: 60 }];
    default:
      return [{ key: 'told' }];
  }
}

function stateOf({ dinner, now }: Day, item: Item, startAt: Instant): StepState {
  if (item.skipped) return 'skipped';
  if (item.doneAt !== undefined) return 'done';
  const endAt = endOf(item, dinner);
  if (item.startedAt !== undefined) {
    const openEnded = item.handsOn !== 'none' || dinner.steps.get(item.id)?.startedAt !== undefined;
    return openEnded || (endAt ?? now) > now ? 'active' : 'done';
  }
  return startAt <= now ? 'due' : 'planned';
}

/** The open step whose likely overrun eats most of its room: what breaks first if something does. */
function firstToBreak(
  day: Day,
  steps: readonly PlannedStep[],
  slack: ReadonlyMap<string, number>,
): Plan['firstToBreak'] {
  let first: Plan['firstToBreak'];
  for (const step of steps) {
    const item = day.items.find((one) => one.id === step.id);
    const room = slack.get(step.id);
    if (!item || !isOpen(item) || room === undefined || !Number.isFinite(room)) continue;
    const overrunMinutes = item.minutes.p90 - item.minutes.p50;
    const left = room - overrunMinutes;
    if (first === undefined || left < first.slackMinutes - first.overrunMinutes)
      first = { step: step.id, slackMinutes: Math.round(room), overrunMinutes };
  }
  return first;
}
