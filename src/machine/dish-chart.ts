/** The statechart of one dish beside the roast; every dish of a dinner runs its own. */
import { setup } from 'xstate';

export type DishChartEvent =
  | { type: 'BEGUN' }
  | { type: 'IN' }
  | { type: 'OUT' }
  | { type: 'READY' }
  | { type: 'NOT_READY' };

export const dishEvents = ['BEGUN', 'IN', 'OUT', 'READY', 'NOT_READY'] as const;

export const dishChart = setup({
  types: { events: {} as DishChartEvent },
}).createMachine({
  id: 'dish',
  initial: 'waiting',
  states: {
    // Going in and being ready are told as begun first, whatever was said.
    waiting: {
      meta: { ignores: ['IN', 'OUT', 'READY', 'NOT_READY'] },
      on: { BEGUN: 'preparing' },
    },
    preparing: {
      meta: { ignores: ['BEGUN', 'OUT', 'NOT_READY'] },
      on: { IN: 'in-oven', READY: 'done' },
    },
    'in-oven': {
      meta: { ignores: ['BEGUN', 'IN', 'NOT_READY'] },
      on: { OUT: 'preparing', READY: 'done' },
    },
    done: {
      meta: { ignores: ['BEGUN', 'OUT', 'READY'] },
      on: { NOT_READY: 'preparing', IN: 'in-oven' },
    },
  },
});
