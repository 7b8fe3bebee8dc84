/** What gives when a day cannot be had whole, and by how much; what would break first. */
import type { Plan, Shortfall } from '../../kitchen/plan.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say } from '../spoken.ts';
import { clock, duration } from './words.ts';

const titleOf = (plan: Plan, id: string | undefined): string =>
  plan.steps.find((step) => step.id === id)?.title ?? id ?? '';

/** Minutes of a dish's lateness past which it is not late but left out. */
const leftOutMinutes = 30;

function shortfallWords(shortfall: Shortfall, plan: Plan, scene: Scene): Spoken | undefined {
  const minutes = duration(shortfall.minutes ?? 0);
  const title = titleOf(plan, shortfall.step);
  switch (shortfall.constraint) {
    case 'table-on-time':
      return say`Dinner ${minutes} later than wanted, at ${clock(plan.serving.likelyAt, scene.dinner)}.`;
    case 'off-table':
      return say`"${title}" comes ${minutes} after its last minute: later than the rest, or left out.`;
    case 'come-up':
      return say`The middle is ${minutes} longer than six hours between 50 and 130 °F: too slow to be safe.`;
    case 'ends-in-time':
      return (shortfall.minutes ?? 0) > leftOutMinutes
        ? say`"${title}" stands ${minutes} out of its time: better left out, or eaten at room temperature.`
        : say`"${title}" stands ${minutes} out of its best time.`;
    case 'hands-once':
    case 'shared':
      return say`"${title}" asks for hands or an oven that something else has.`;
    case 'oven-tolerance':
      return say`"${title}" is ${minutes} in an oven that is no heat for it.`;
    case 'order':
    case 'rest-before-carve':
      return say`"${title}" comes ${minutes} too soon after what it waits for.`;
    default:
      return undefined;
  }
}

export const shortfallsInWords = (plan: Plan, scene: Scene): Spoken[] =>
  plan.shortfalls.flatMap((one) => shortfallWords(one, plan, scene) ?? []);

/** Worth a line only when a usual overrun would use up all the room there is. */
export function breaksFirst(plan: Plan): Spoken | undefined {
  const first = plan.firstToBreak;
  if (!first || first.overrunMinutes < first.slackMinutes) return undefined;
  return say`Least room: "${titleOf(plan, first.step)}", ${duration(first.slackMinutes)}, and it can take ${duration(first.overrunMinutes)} longer.`;
}
