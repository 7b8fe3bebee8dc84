/**
 * The part of odex 2 that the tests use. The package ships its TypeScript source in place of types,
 * which does not pass this project's flags.
 */
export class Solver {
  constructor(size: number);
  denseOutput: boolean;
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  solve(
    slope: (x: number, y: number[]) => number[],
    x: number,
    y: readonly number[],
    xEnd: number,
  ): { y: number[]; outcome: number; nEval: number };
}
