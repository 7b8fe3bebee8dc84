/** What earlier dinners' readings taught of the kitchen they were cooked in, from their facts. */
import { dinnerOf } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { KitchenBelief } from '../kitchen/forecast.ts';
import { rememberedKitchen } from '../planner/heat/remember.ts';
import { kitchenOf } from '../planner/roast-day.ts';
import { outlookOf } from './outlook.ts';
import type { Compute, Journal } from './ports.ts';

/** Fewer readings teach more of the hand than of the kitchen. */
const fewestReadings = 2;

/** So many of the newest dinners are asked what they taught. */
const learntFromAtMost = 3;

/** The belief for the next dinner to begin with; undefined where too little was read and nothing told. */
export async function learntOf(
  id: string,
  facts: readonly Fact[],
  compute: Compute,
): Promise<KitchenBelief | undefined> {
  const dinner = dinnerOf(id, facts);
  if (dinner.readings.length >= fewestReadings) {
    const { forecast } = await outlookOf(id, facts, dinner.lastAt, compute);
    if (forecast) return rememberedKitchen(forecast.learnt);
  }
  const told = dinner.kitchenTold ? kitchenOf(dinner) : undefined;
  return told && rememberedKitchen(told);
}

/** From the newest past dinner that taught anything; a fact of the new one, so it shows and can be told otherwise. */
export async function learntBefore(
  journal: Pick<Journal, 'dinners' | 'read'>,
  compute: Compute,
): Promise<KitchenBelief | undefined> {
  for (const { id } of (await journal.dinners()).slice(0, learntFromAtMost)) {
    const belief = await learntOf(id, await journal.read(id), compute).catch(() => undefined);
    if (belief) return belief;
  }
  return undefined;
}
