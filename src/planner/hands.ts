/** Whose hands do what: one thing at a time each, theirs first, else the first named who is free for all of it. */
import { type Helper, helpersFrom } from '../kitchen/dinner.ts';
import type { Day } from './compile/day.ts';
import { absentCook } from './compile/hands.ts';
import type { Problem } from './problem.ts';
import type { Solution } from './solve/solve.ts';

interface Busy {
  from: number;
  to: number;
}

/** The name of whoever does each task; the problem has enough hands for all, or it was said. */
export function handsOf(
  problem: Problem,
  solution: Solution,
  { dinner, now }: Pick<Day, 'dinner' | 'now'>,
): Map<string, string> {
  const helpers = helpersFrom(dinner, now);
  const names = ['you', ...helpers.map((one) => one.who)];
  const busy: Busy[][] = names.map(() => []);
  const who = new Map<string, string>();
  const spans = problem.uses
    .filter((use) => use.resource === 'hands')
    .map((use) => ({
      task: use.task,
      absent: absentCook(use.task, dinner),
      from: (solution.starts.get(use.from.task) ?? 0) + use.from.plus,
      to: (solution.starts.get(use.to.task) ?? 0) + use.to.plus,
    }))
    .sort(
      (a, b) =>
        Number(b.absent !== undefined) - Number(a.absent !== undefined) ||
        Number(isOwned(b.task, helpers)) - Number(isOwned(a.task, helpers)) ||
        a.from - b.from,
    );
  for (const span of spans) {
    const isFree = (index: number): boolean =>
      (busy[index] ?? []).every((one) => one.to <= span.from || span.to <= one.from);
    const owner = helpers.findIndex((one) => owns(one, span.task)) + 1;
    const free = owner > 0 && isFree(owner) ? owner : names.findIndex((_, index) => isFree(index));
    const index = span.absent === undefined ? Math.max(0, free) : names.indexOf(span.absent);
    busy[index]?.push(span);
    who.set(span.task, names[index] ?? 'you');
  }
  return who;
}

/** A step of theirs, or of a dish of theirs. */
const owns = ({ does }: Helper, task: string): boolean =>
  does.some((one) => task === one || task.startsWith(`${one}.`));

const isOwned = (task: string, helpers: readonly Helper[]): boolean =>
  helpers.some((one) => owns(one, task));
