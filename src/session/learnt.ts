/** What a dinner's readings taught of the kitchen it was cooked in, from its facts. */
import { dinnerOf } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { KitchenBelief } from '../kitchen/forecast.ts';
import { rememberedKitchen } from '../planner/heat/remember.ts';
import { outlookOf } from './outlook.ts';
import type { Compute } from './ports.ts';

/** Fewer readings teach more of the hand than of the kitchen. */
const fewestReadings = 2;

/** The belief for the next dinner to begin with; undefined where too little was read. */
export async function learntOf(
  id: string,
  facts: readonly Fact[],
  compute: Compute,
): Promise<KitchenBelief | undefined> {
  const dinner = dinnerOf(id, facts);
  if (dinner.readings.length < fewestReadings) return undefined;
  const { forecast } = await outlookOf(id, facts, dinner.lastAt, compute);
  return forecast && rememberedKitchen(forecast.learnt);
}
