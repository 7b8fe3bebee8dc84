/** What the facts of a dinner say was done to the roast and its oven, for a kitchen to follow. */
import { dinnerOf } from '../kitchen/dinner.ts';
import type { Fact } from '../kitchen/facts.ts';
import type { KitchenEvent } from './kitchen.ts';

/** Everything told or taken for granted, at the time it is said to have happened. */
export function kitchenEventsOf(dinnerId: string, facts: readonly Fact[]): KitchenEvent[] {
  const dinner = dinnerOf(dinnerId, facts);
  const events: KitchenEvent[] = dinner.oven.map(({ at, celsius }) => ({
    at,
    kind: 'oven-set',
    celsius,
  }));
  const dialAt = (at: number): number =>
    dinner.oven.filter((one) => one.at <= at).at(-1)?.celsius ?? 0;
  for (const { trouble, happenedAt: at } of dinner.troubles) {
    if (trouble === 'power-out' || trouble === 'oven-out')
      events.push({ at, kind: 'oven-set', celsius: 0 });
    if (trouble === 'power-back' || trouble === 'oven-back')
      events.push({ at, kind: 'oven-set', celsius: dialAt(at) });
  }
  const into = dinner.steps.get('roast-in');
  // A cook who was called and says nothing of it has put it in.
  const inAt = into?.startedAt ?? into?.doneAt ?? dinner.calls.get('step-due:roast-in')?.firstAt;
  if (inAt !== undefined) events.push({ at: inAt, kind: 'roast-in' });
  const outAt = dinner.steps.get('pull')?.doneAt ?? dinner.steps.get('rest')?.startedAt;
  if (outAt !== undefined) {
    const rest = dinner.setup.tent === false || dinner.course?.rest === 'open' ? 'open' : 'tented';
    events.push({ at: outAt, kind: 'roast-out', rest });
  }
  return events;
}
