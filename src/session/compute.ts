/**
 * The heavy computing of an outlook: here, in this thread, or remembered. A program that serves many
 * dinners gives sessions a port to other threads instead.
 */
import type { Forecast } from '../kitchen/forecast.ts';
import { forecast } from '../planner/heat/forecast.ts';
import { plan } from '../planner/plan.ts';
import { recalling } from '../planner/solve/recall.ts';
import type { Compute } from './ports.ts';

const solver = recalling();

/** Computes where it is called. */
export const inThisThread: Compute = {
  forecast: async (question) => forecast(question),
  plan: async (question) => plan(question, solver),
};

/** Remembers forecasts by question, so that time passing asks nothing new of the heat. */
export function remembering(compute: Compute, size = 64): Compute {
  const known = new Map<string, Promise<Forecast>>();
  return {
    ...compute,
    forecast: (question) => {
      const key = JSON.stringify(question);
      const before = known.get(key);
      if (before) return before;
      const answer = compute.forecast(question);
      known.set(key, answer);
      answer.catch(() => known.delete(key));
      if (known.size > size) known.delete(known.keys().next().value as string);
      return answer;
    },
  };
}
