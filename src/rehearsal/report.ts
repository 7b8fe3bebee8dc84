/** What came of rehearsals, for people and for programs. */
import type { Rehearsal } from './run.ts';

export function reportText(rehearsals: readonly Rehearsal[]): string {
  const rows = rehearsals.flatMap((one) => [
    `${one.failures.length === 0 ? 'holds' : 'FALLS SHORT'}  ${one.file}  (${one.held} held, ${one.failures.length} not)`,
    ...one.failures.map(
      (failure) =>
        `  ${failure.file}:${failure.line}: wanted ${failure.wanted}\n    came ${failure.came}`,
    ),
  ]);
  const good = rehearsals.filter((one) => one.failures.length === 0).length;
  return [...rows, `${good} hold, ${rehearsals.length - good} fall short`].join('\n');
}

export const reportJson = (rehearsals: readonly Rehearsal[]): object => ({
  scripts: rehearsals.map((one) => ({ ...one, holds: one.failures.length === 0 })),
  hold: rehearsals.filter((one) => one.failures.length === 0).length,
  fallShort: rehearsals.filter((one) => one.failures.length > 0).length,
});
