/**
 * A solver that recalls the problems it solved last. A turn looks at its dinner several times, and most
 * of what is said leaves the day as it was: its problem is the same to the letter.
 */
import type { Problem } from '../problem.ts';
import { type Solution, type SolveOptions, solve } from './solve.ts';

export type Solver = (problem: Problem, options: SolveOptions) => Solution;

/** A few looks of a few dinners that are cooked at once. */
const recalledAtMost = 16;

export function recalling(solver: Solver = solve): Solver {
  const solved = new Map<string, Solution>();
  return (problem, options) => {
    const key = JSON.stringify([problem, options]);
    const known = solved.get(key) ?? solver(problem, options);
    // The last one asked is the last one to go.
    solved.delete(key);
    solved.set(key, known);
    if (solved.size > recalledAtMost) solved.delete(solved.keys().next().value as string);
    return known;
  };
}
