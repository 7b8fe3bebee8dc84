/** A dinner's open day as a problem; see docs/planner.md. */
import type { Instant } from '../../base/time.ts';
import { helpersFrom } from '../../kitchen/dinner.ts';
import { householdOven } from '../household-oven.ts';
import type { Problem } from '../problem.ts';
import { draftClocks } from './clocks.ts';
import type { Day } from './day.ts';
import { draftDishes } from './dishes.ts';
import { Draft, hands, hob, point } from './draft.ts';
import { draftHands } from './hands.ts';
import { draftRoast } from './roast.ts';

export interface CompileOptions {
  /** The pull, once the roast is in. */
  pullAt?: Instant | undefined;
  /** The roast goes in at this minute: asked again with the minute that people like. */
  roastInMinute?: number | undefined;
}

/** A hob as most kitchens have it. Common practice, no source. */
const usualRings = 4;

export function compile(day: Day, { pullAt, roastInMinute }: CompileOptions = {}): Problem {
  const draft = new Draft();
  draftHands(draft, day);
  draftRoast(draft, day, pullAt);
  draftClocks(draft, day);
  draftDishes(draft, day);
  if (roastInMinute !== undefined)
    draft.exactly(point('origin'), point('roast-in'), roastInMinute, 'roast');
  const tools = [...new Set(draft.uses.map((use) => use.resource))].filter(
    (id) => id !== hands && id !== hob,
  );
  return draft.problem({
    resources: [
      { id: hands, capacity: 1 + helpersFrom(day.dinner, day.now).length },
      { id: hob, capacity: day.dinner.setup.rings ?? usualRings },
      ...tools.map((id) => ({ id, capacity: 1 })),
    ],
    ovens: Array.from(
      { length: Math.min(2, Math.max(1, day.dinner.setup.ovens ?? 1)) },
      () => householdOven,
    ),
  });
}
