/** What came of rehearsals, for people and for programs. */
import type { Failure, Rehearsal } from './run.ts';

/** How the two sides of a difference are set apart; plain where nobody looks at a screen. */
export interface Paint {
  wanted(text: string): string;
  came(text: string): string;
}

const plain: Paint = { wanted: (text) => text, came: (text) => text };

export function reportText(rehearsals: readonly Rehearsal[], paint: Paint = plain): string {
  const rows = rehearsals.flatMap((one) => [
    `${one.failures.length === 0 ? 'holds' : 'FALLS SHORT'}  ${one.file}  (${one.held} held, ${one.failures.length} not)`,
    ...one.failures.map((failure) => differenceText(failure, paint)),
  ]);
  const good = rehearsals.filter((one) => one.failures.length === 0).length;
  return [...rows, `${good} hold, ${rehearsals.length - good} fall short`].join('\n');
}

/** The place, the line it belongs to, and under it what was wanted over what came. */
export function differenceText(failure: Failure, paint: Paint = plain): string {
  const { file, line, column, beneath, wanted } = failure;
  return [
    `  ${file}:${line}:${column}:${beneath === undefined ? '' : ` ${beneath}`}`,
    paint.wanted(`    - wanted ${wanted}`),
    paint.came(`    + came   ${shortened(cameText(failure)).join('\n             ')}`),
  ].join('\n');
}

/** Longer than this, what came is shown by its beginning and its end: a whole day hides what matters. */
const rowsAtMost = 10;
const rowsAtEnd = 3;

function shortened(text: string): string[] {
  const rows = text.split('\n');
  if (rows.length <= rowsAtMost) return rows;
  const begins = rows.slice(0, rowsAtMost - rowsAtEnd - 1);
  const left = rows.length - begins.length - rowsAtEnd;
  return [...begins, `… ${left} lines more`, ...rows.slice(-rowsAtEnd)];
}

/** As the check would be written, and in its own words where they say more. */
function cameText({ came, amended }: Failure): string {
  if (amended === undefined) return came;
  return amended.includes(came) ? amended : `${amended}  (${came})`;
}

export const reportJson = (rehearsals: readonly Rehearsal[]): object => ({
  scripts: rehearsals.map(({ file, held, failures }) => ({
    file,
    held,
    failures,
    holds: failures.length === 0,
  })),
  hold: rehearsals.filter((one) => one.failures.length === 0).length,
  fallShort: rehearsals.filter((one) => one.failures.length > 0).length,
});
