/**
 * The orders that a plan's starts imply among all that share something: kept, they let every start move
 * as far as lags and orders allow, and the best of those is found exactly.
 */
import type { PlacedStay, PlacedUse, Shared } from './conflicts.ts';
import type { Order, Packing } from './ground.ts';

export function ordersOf(
  shared: Shared,
  { start, ovenOf }: Packing,
  without: ReadonlySet<number> = new Set(),
): Order[] {
  const kept = <T extends PlacedUse>(uses: readonly T[]): T[] =>
    without.size === 0
      ? [...uses]
      : uses.filter((use) => !without.has(use.from.node) && !without.has(use.to.node));
  const at = (spot: PlacedUse['from']): number => (start[spot.node] ?? 0) + spot.plus;
  const spanOf = (use: PlacedUse): { from: number; to: number } => ({
    from: at(use.from),
    to: at(use.to),
  });
  const orders: Order[] = [];
  const chain = (uses: readonly PlacedUse[], capacity: number): void => {
    if (uses.length <= capacity) return;
    const lanes: PlacedUse[][] = Array.from({ length: capacity }, () => []);
    const sorted = [...uses].sort((a, b) => at(a.from) - at(b.from) || a.id - b.id);
    for (const use of sorted) {
      if (at(use.to) <= at(use.from)) continue;
      // The lane that came free last binds least.
      const free = lanes
        .map((lane, index) => ({ index, last: lane.at(-1) }))
        .filter(({ last }) => last === undefined || at(last.to) <= at(use.from))
        .sort((a, b) => (b.last ? at(b.last.to) : -1e9) - (a.last ? at(a.last.to) : -1e9));
      const lane = lanes[free[0]?.index ?? 0];
      const before = lane?.at(-1);
      // With one lane there is but one order, however the starts overlap.
      if (before && !(before.fixed && use.fixed) && (free.length > 0 || capacity === 1))
        orders.push({ what: 'lag', from: before.to, to: use.from, minutes: 0 });
      lane?.push(use);
    }
  };
  for (const { capacity, uses } of shared.resources) chain(kept(uses), capacity);
  shared.problem.ovens.forEach((oven, index) => {
    const inside = kept(shared.stays.filter((_, stay) => (ovenOf[stay] ?? 0) === index));
    pairs(inside);
    const places = inside.flatMap((stay) => Array<PlacedStay>(stay.stay.shelves).fill(stay));
    chain(places, oven.shelves);
  });
  return orders;

  function pairs(inside: readonly PlacedStay[]): void {
    for (const first of inside)
      for (const second of inside) {
        if (first === second || (first.fixed && second.fixed)) continue;
        if (first.stay.task === second.stay.task) continue;
        const change =
          shared.change[shared.stays.indexOf(first)]?.[shared.stays.indexOf(second)] ?? 0;
        if (change > 0 && spanOf(first).to + change <= spanOf(second).from)
          orders.push({ what: 'lag', from: first.to, to: second.from, minutes: change });
        door(first, second);
      }
  }

  function door(shut: PlacedStay, moving: PlacedStay): void {
    const minutes = shut.stay.doorShutMinutes;
    if (minutes === 0) return;
    for (const spot of [moving.from, moving.to])
      if (at(spot) <= at(shut.from))
        orders.push({ what: 'lag', from: spot, to: shut.from, minutes: 0 });
      else if (at(spot) >= at(shut.from) + minutes)
        orders.push({ what: 'lag', from: shut.from, to: spot, minutes });
  }
}
