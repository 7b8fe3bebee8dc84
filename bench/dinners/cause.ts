/** Why a dinner fell short: the first thing that was further from the truth than a dinner forgives. */
import type { Trace } from './trace.ts';

export const causes = [
  'never pulled as called',
  'the core was believed wrong at the call',
  'fetched late after the call',
  'pulled without the call',
  'the rise was forecast wrong',
  'the rest was cut or drawn out',
  'the roast was not ready for the table',
  'carved late',
  'small errors added up',
] as const;
export type Cause = (typeof causes)[number];

const coreFahrenheit = 3.5;
const restMinutes = 8;

export function causeOf(end: { trace: Trace; coreOff: number; tableOff: number }): Cause {
  const { called, out, knife } = end.trace;
  if (!out || !knife) return 'never pulled as called';
  const rested = knife.minute - out.minute;
  if (Math.abs(end.coreOff) <= 5)
    return end.tableOff > 0 && rested < 22
      ? 'the roast was not ready for the table'
      : 'carved late';
  if (!called) return 'pulled without the call';
  const believed = called.believedCore === undefined ? 0 : called.believedCore - called.core;
  if (Math.abs(believed) > coreFahrenheit) return 'the core was believed wrong at the call';
  if (out.core - called.core > coreFahrenheit + 1 && end.coreOff > 0)
    return 'fetched late after the call';
  if (Math.abs(rested - out.restMinutes) > restMinutes && rested < 22)
    return 'the rest was cut or drawn out';
  const knifeWas = knife.core;
  if (Math.abs(out.believedKnife - knifeWas) > coreFahrenheit) return 'the rise was forecast wrong';
  if (end.tableOff > 10) return 'the roast was not ready for the table';
  return 'small errors added up';
}
