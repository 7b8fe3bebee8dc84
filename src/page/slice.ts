/**
 * The cut face from the forecast: which zones lie how far in, in millimetres. A zone goes by the
 * hottest the meat has been there, since what has turned grey does not turn pink again.
 */
import type { View } from './wire.ts';

type Forecast = NonNullable<View['forecast']>;
/** What of the forecast's slice is drawn. */
export type SliceForecast = Pick<Forecast['slice'], 'radiusMillimetres' | 'profile'>;

export type Zone = 'red' | 'pink' | 'grey' | 'brown';

export interface SliceFace {
  radiusMillimetres: number;
  /** From the rim inwards; each zone reaches from its own radius to the next one's. */
  zones: { zone: Zone; radiusMillimetres: number }[];
  /** How deep the rim is brown or grey; and how far the pink reaches across. */
  rimMillimetres: number;
  pinkMillimetres: number;
  coreFahrenheit: number;
}

/**
 * Above these the next zone begins: red to the core of a rare roast, brown from that of a well done one
 * on; grey begins where the forecast begins to count its grey rim. Common practice, no source.
 */
const limits: readonly [Zone, number][] = [
  ['red', 125],
  ['pink', 149],
  ['grey', 160],
  ['brown', Number.POSITIVE_INFINITY],
];

export function faceOf({ radiusMillimetres, profile }: SliceForecast): SliceFace | undefined {
  if (radiusMillimetres <= 0 || profile.length < 2) return undefined;
  const rows = [...profile].sort((a, b) => a.outward - b.outward);
  let hottest = Number.NEGATIVE_INFINITY;
  // Towards the rim it has never been less hot than further in.
  const reached = rows.map((row) => {
    hottest = Math.max(hottest, row.hottestFahrenheit.p50);
    return { outward: row.outward, fahrenheit: hottest };
  });
  const ends = limits.map(([zone, limit]) => ({ zone, outward: outwardAt(reached, limit) }));
  const zones = ends
    .filter(({ outward }, index) => outward > (ends[index - 1]?.outward ?? 0))
    .map(({ zone, outward }) => ({ zone, radiusMillimetres: outward * radiusMillimetres }))
    .reverse();
  const pink = ends[1]!.outward * radiusMillimetres;
  return {
    radiusMillimetres,
    zones,
    rimMillimetres: radiusMillimetres - pink,
    pinkMillimetres: 2 * pink,
    coreFahrenheit: rows[0]!.fahrenheit.p50,
  };
}

/** How far out a temperature is first passed, as a share of the radius; 1 when it never is. */
function outwardAt(
  rows: readonly { outward: number; fahrenheit: number }[],
  limit: number,
): number {
  const after = rows.findIndex((row) => row.fahrenheit > limit);
  if (after === -1) return 1;
  const outer = rows[after]!;
  const inner = rows[after - 1];
  if (!inner) return 0;
  const share = (limit - inner.fahrenheit) / (outer.fahrenheit - inner.fahrenheit);
  return inner.outward + share * (outer.outward - inner.outward);
}
