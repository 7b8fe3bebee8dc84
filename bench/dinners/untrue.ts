/** What the helper told that did not come true in the simulated kitchen. */
import type { Fact } from '../../src/kitchen/facts.ts';

export interface Told {
  /** Hours of the table told within the last hour before it, and how many were off by over ten minutes. */
  tables: number;
  tablesUntrue: number;
  /** Cores promised for the knife when the roast came out, and how many were off by over 5 °F. */
  cores: number;
  coresUntrue: number;
}

const lastMinutes = 60;
const tableMinutes = 10;
const coreFahrenheit = 5;

export function toldOf(
  facts: readonly Fact[],
  end: { tableAt: number; coreFahrenheit: number },
): Told {
  const { tableAt } = end;
  // Guests who move the hour make no liar of who told the old one.
  const movedAt = facts.findLast((fact) => fact.type === 'serving-time-set')?.at ?? 0;
  const tables = facts.flatMap((fact) =>
    fact.type === 'plan-told' && fact.at >= movedAt && tableAt - fact.at < lastMinutes * 60_000
      ? [fact.servingAt]
      : [],
  );
  const cores = facts.flatMap((fact) => {
    const climbs = fact.type === 'replied' && fact.at >= movedAt && climbsTo.exec(fact.text);
    return climbs ? [Number(climbs[1])] : [];
  });
  return {
    tables: tables.length,
    tablesUntrue: tables.filter((at) => Math.abs(at - tableAt) > tableMinutes * 60_000).length,
    cores: cores.length,
    coresUntrue: cores.filter((one) => Math.abs(one - end.coreFahrenheit) > coreFahrenheit).length,
  };
}

const climbsTo = /climbs to about (\d+) °F/;
