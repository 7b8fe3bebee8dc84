/** The statechart of one dish beside the roast; every dish of a dinner runs its own. */
import { setup } from 'xstate';

export type DishChartEvent =
  | { type: 'BEGUN' }
  | { type: 'IN' }
  | { type: 'OUT' }
  | { type: 'READY' }
  | { type: 'HELD' }
  | { type: 'NOT_READY' };

export const dishEvents = ['BEGUN', 'IN', 'OUT', 'READY', 'HELD', 'NOT_READY'] as const;

export const dishChart = setup({
  types: { events: {} as DishChartEvent },
}).createMachine({
  id: 'dish',
  initial: 'waiting',
  states: {
    waiting: {
      meta: { ignores: ['OUT', 'HELD', 'NOT_READY'] },
      on: { BEGUN: 'preparing', IN: 'in-oven', READY: 'done' },
    },
    preparing: {
      meta: { ignores: ['BEGUN', 'OUT', 'HELD', 'NOT_READY'] },
      on: { IN: 'in-oven', READY: 'done' },
    },
    'in-oven': {
      meta: { ignores: ['BEGUN', 'IN', 'HELD', 'NOT_READY'] },
      on: { OUT: 'preparing', READY: 'done' },
    },
    done: {
      meta: { ignores: ['BEGUN', 'OUT', 'READY'] },
      on: { HELD: 'held', NOT_READY: 'preparing', IN: 'in-oven' },
    },
    held: {
      meta: { ignores: ['BEGUN', 'OUT', 'READY', 'HELD'] },
      on: { NOT_READY: 'preparing', IN: 'in-oven' },
    },
  },
});
