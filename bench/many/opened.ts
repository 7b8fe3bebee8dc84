/** How a dinner of the bench begins. */
import type { NewFact } from '../../src/kitchen/facts.ts';

export const opened: NewFact = {
  type: 'dinner-opened',
  timeZone: 'UTC',
  temperatureUnit: 'F',
  weightUnit: 'lb',
  seed: 3,
  language: 'en',
};
