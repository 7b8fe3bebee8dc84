/** Whose hands do what: one thing at a time each; the first named who is free for all of it. */
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
  names: readonly string[],
): Map<string, string> {
  const busy: Busy[][] = names.map(() => []);
  const who = new Map<string, string>();
  const spans = problem.uses
    .filter((use) => use.resource === 'hands')
    .map((use) => ({
      task: use.task,
      from: (solution.starts.get(use.from.task) ?? 0) + use.from.plus,
      to: (solution.starts.get(use.to.task) ?? 0) + use.to.plus,
    }))
    .sort((a, b) => Number(b.task === 'away') - Number(a.task === 'away') || a.from - b.from);
  for (const span of spans) {
    const free = busy.findIndex((list) =>
      list.every((one) => one.to <= span.from || span.to <= one.from),
    );
    const index = Math.max(0, free);
    busy[index]?.push(span);
    who.set(span.task, names[index] ?? names[0] ?? '');
  }
  return who;
}
