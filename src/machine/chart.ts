/**
 * The statechart of a dinner: the one authority on what stage it is in and what may happen there.
 * It knows no clock, no plan, no forecast and no words: it is driven by the pure `transition` of
 * xstate, one event per fact, and holds no timers. Each state names the events of its region that
 * mean nothing there, so that none is dropped by accident.
 */
import { setup } from 'xstate';

/** The roast: what happened to it. Both orders of the sear come through the same states. */
export type RoastEvent =
  | { type: 'PLAN_KNOWN' }
  | { type: 'OVEN_LIT' }
  | { type: 'OVEN_DARK' }
  | { type: 'ROAST_IN'; searing: boolean }
  | { type: 'SEARED' }
  | { type: 'SEAR_BEGUN' }
  | { type: 'ROAST_OUT' }
  | { type: 'HOLD_BEGUN' }
  | { type: 'CARVING_BEGUN' }
  | { type: 'SERVED' }
  | { type: 'PUT_AWAY' };

export type DishEvent =
  | { type: 'DISH_BEGUN' }
  | { type: 'DISHES_READY' }
  | { type: 'DISHES_OPEN' }
  | { type: 'SAUCE_BEGUN' }
  | { type: 'SAUCE_READY' }
  | { type: 'SAUCE_OPEN' };

export type OvenEvent =
  | { type: 'OVEN_SET' }
  | { type: 'OVEN_HOT' }
  | { type: 'OVEN_OFF' }
  | { type: 'OVEN_LOST' }
  | { type: 'OVEN_BACK' };

export type TalkEvent =
  | { type: 'ASKED' }
  | { type: 'CONFIRMATION_ASKED' }
  | { type: 'CHOICE_OFFERED' }
  | { type: 'SETTLED' }
  | { type: 'PAUSED' }
  | { type: 'RESUMED' };

export type ChartEvent = RoastEvent | DishEvent | OvenEvent | TalkEvent;

/** The events each region must handle or name as ignored. */
export const regionEvents = {
  roast: [
    'PLAN_KNOWN',
    'OVEN_LIT',
    'OVEN_DARK',
    'ROAST_IN',
    'SEARED',
    'SEAR_BEGUN',
    'ROAST_OUT',
    'HOLD_BEGUN',
    'CARVING_BEGUN',
    'SERVED',
    'PUT_AWAY',
  ],
  sides: ['DISH_BEGUN', 'DISHES_READY', 'DISHES_OPEN'],
  sauce: ['SAUCE_BEGUN', 'SAUCE_READY', 'SAUCE_OPEN'],
  oven: ['OVEN_SET', 'OVEN_HOT', 'OVEN_OFF', 'OVEN_LOST', 'OVEN_BACK'],
  talk: ['ASKED', 'CONFIRMATION_ASKED', 'CHOICE_OFFERED', 'SETTLED', 'PAUSED', 'RESUMED'],
} as const satisfies Record<string, readonly ChartEvent['type'][]>;

export type Region = keyof typeof regionEvents;

const roastGoesIn = [{ guard: 'searing' as const, target: 'sear' }, { target: 'low-roast' }];

export const dinnerChart = setup({
  types: { events: {} as ChartEvent },
  guards: {
    searing: ({ event }) => event.type === 'ROAST_IN' && event.searing,
  },
}).createMachine({
  id: 'dinner',
  type: 'parallel',
  states: {
    roast: {
      initial: 'planning',
      states: {
        planning: {
          meta: {
            ignores: [
              'OVEN_LIT',
              'OVEN_DARK',
              'SEARED',
              'SEAR_BEGUN',
              'ROAST_OUT',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: { PLAN_KNOWN: 'prep', ROAST_IN: roastGoesIn },
        },
        prep: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_DARK',
              'SEARED',
              'SEAR_BEGUN',
              'ROAST_OUT',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: { OVEN_LIT: 'preheat', ROAST_IN: roastGoesIn },
        },
        preheat: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'SEARED',
              'SEAR_BEGUN',
              'ROAST_OUT',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: { OVEN_DARK: 'prep', ROAST_IN: roastGoesIn },
        },
        sear: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'OVEN_DARK',
              'ROAST_IN',
              'SEAR_BEGUN',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: { SEARED: 'low-roast', ROAST_OUT: 'rest' },
        },
        'low-roast': {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'OVEN_DARK',
              'ROAST_IN',
              'SEARED',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: { SEAR_BEGUN: 'sear', ROAST_OUT: 'rest' },
        },
        rest: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'OVEN_DARK',
              'SEARED',
              'ROAST_OUT',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: {
            ROAST_IN: 'low-roast',
            SEAR_BEGUN: 'sear',
            HOLD_BEGUN: 'hold',
            CARVING_BEGUN: 'carve',
          },
        },
        hold: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'OVEN_DARK',
              'SEARED',
              'ROAST_OUT',
              'HOLD_BEGUN',
              'SERVED',
              'PUT_AWAY',
            ],
          },
          on: { ROAST_IN: 'low-roast', SEAR_BEGUN: 'sear', CARVING_BEGUN: 'carve' },
        },
        carve: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'OVEN_DARK',
              'SEARED',
              'SEAR_BEGUN',
              'ROAST_OUT',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'PUT_AWAY',
            ],
          },
          on: { ROAST_IN: 'low-roast', SERVED: 'served' },
        },
        served: {
          meta: {
            ignores: [
              'PLAN_KNOWN',
              'OVEN_LIT',
              'OVEN_DARK',
              'ROAST_IN',
              'SEARED',
              'SEAR_BEGUN',
              'ROAST_OUT',
              'HOLD_BEGUN',
              'CARVING_BEGUN',
              'SERVED',
            ],
          },
          on: { PUT_AWAY: 'put-away' },
        },
        'put-away': { meta: { ignores: regionEvents.roast } },
      },
    },
    sides: {
      initial: 'waiting',
      states: {
        waiting: {
          meta: { ignores: ['DISHES_OPEN'] },
          on: { DISH_BEGUN: 'under-way', DISHES_READY: 'ready' },
        },
        'under-way': {
          meta: { ignores: ['DISH_BEGUN', 'DISHES_OPEN'] },
          on: { DISHES_READY: 'ready' },
        },
        ready: {
          meta: { ignores: ['DISHES_READY'] },
          on: { DISHES_OPEN: 'under-way', DISH_BEGUN: 'under-way' },
        },
      },
    },
    sauce: {
      initial: 'waiting',
      states: {
        waiting: {
          meta: { ignores: ['SAUCE_OPEN'] },
          on: { SAUCE_BEGUN: 'under-way', SAUCE_READY: 'ready' },
        },
        'under-way': {
          meta: { ignores: ['SAUCE_BEGUN', 'SAUCE_OPEN'] },
          on: { SAUCE_READY: 'ready' },
        },
        ready: {
          meta: { ignores: ['SAUCE_READY'] },
          on: { SAUCE_OPEN: 'under-way', SAUCE_BEGUN: 'under-way' },
        },
      },
    },
    oven: {
      initial: 'off',
      states: {
        off: {
          meta: { ignores: ['OVEN_OFF', 'OVEN_BACK'] },
          on: { OVEN_SET: 'heating', OVEN_HOT: 'hot', OVEN_LOST: 'lost' },
        },
        heating: {
          meta: { ignores: ['OVEN_SET', 'OVEN_BACK'] },
          on: { OVEN_HOT: 'hot', OVEN_OFF: 'off', OVEN_LOST: 'lost' },
        },
        hot: {
          meta: { ignores: ['OVEN_HOT', 'OVEN_BACK'] },
          on: { OVEN_SET: 'heating', OVEN_OFF: 'off', OVEN_LOST: 'lost' },
        },
        lost: {
          meta: { ignores: ['OVEN_LOST', 'OVEN_HOT'] },
          on: { OVEN_BACK: 'heating', OVEN_SET: 'heating', OVEN_OFF: 'off' },
        },
      },
    },
    talk: {
      initial: 'listening',
      states: {
        listening: {
          meta: { ignores: ['SETTLED', 'RESUMED'] },
          on: {
            ASKED: 'asking',
            CONFIRMATION_ASKED: 'confirming',
            CHOICE_OFFERED: 'choosing',
            PAUSED: 'paused',
          },
        },
        asking: {
          meta: { ignores: ['ASKED', 'RESUMED'] },
          on: {
            SETTLED: 'listening',
            CONFIRMATION_ASKED: 'confirming',
            CHOICE_OFFERED: 'choosing',
            PAUSED: 'paused',
          },
        },
        confirming: {
          // What is missing is not asked for while something waits for a yes.
          meta: { ignores: ['CONFIRMATION_ASKED', 'ASKED', 'RESUMED'] },
          on: {
            SETTLED: 'listening',
            CHOICE_OFFERED: 'choosing',
            PAUSED: 'paused',
          },
        },
        choosing: {
          meta: { ignores: ['CHOICE_OFFERED', 'RESUMED'] },
          on: {
            SETTLED: 'listening',
            ASKED: 'asking',
            CONFIRMATION_ASKED: 'confirming',
            PAUSED: 'paused',
          },
        },
        paused: {
          meta: { ignores: ['PAUSED', 'ASKED', 'CONFIRMATION_ASKED', 'CHOICE_OFFERED', 'SETTLED'] },
          on: { RESUMED: 'listening' },
        },
      },
    },
  },
});
