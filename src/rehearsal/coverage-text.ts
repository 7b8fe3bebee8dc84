/** Coverage for people to read: how much was reached, and what was not, with a line to try for each. */
import type { Reach } from './coverage.ts';
import { unreached } from './coverage.ts';
import { suggestion } from './suggest.ts';

/** One row a catalogue, then what no dinner reached. */
export function coverageText(reaches: readonly Reach[]): string {
  const rows = reaches.map((reach) => {
    const missing = unreached(reach).length;
    const { length } = reach.all;
    const share = `${((100 * (length - missing)) / length).toFixed(1)} %`;
    return `${reach.catalogue.padEnd(14)} ${length - missing} of ${length}  ${share}`;
  });
  const gaps = reaches.flatMap((reach) =>
    unreached(reach).map((name) => {
      const line = suggestion(reach.catalogue, name);
      return `  ${reach.catalogue}: ${name}${line === undefined ? '' : `\n    try  > ${line}`}`;
    }),
  );
  return [...rows, ...(gaps.length > 0 ? ['not reached:', ...gaps] : [])].join('\n');
}

/** The same for programs: of each name, in how many dinners it was reached. */
export const coverageJson = (reaches: readonly Reach[]): object =>
  reaches.map((reach) => ({
    catalogue: reach.catalogue,
    reached: reach.all.length - unreached(reach).length,
    of: reach.all.length,
    dinners: Object.fromEntries(reach.dinners),
    missing: unreached(reach).map((name) => ({
      name,
      line: suggestion(reach.catalogue, name),
    })),
  }));
