/**
 * A kitchen that exists only in rehearsals: a roast that really warms in an oven that is really off by
 * so much, for a script's `{core}` and `{oven}` to be read from. It is not the forecast's model and
 * shares nothing with it: a finite cylinder in two dimensions, stepped explicitly.
 */
import type { Instant } from '../base/time.ts';

import { type RoastBody, roastBody } from './roast-body.ts';
import type { KitchenSetup } from './script.ts';

/** The truth of one kitchen, moved forward by what its cook does. Instants in milliseconds. */
export interface SimulatedKitchen {
  advance(at: Instant): void;
  /** The dial is turned; 0 is off. */
  ovenSet(at: Instant, celsius: number): void;
  roastIn(at: Instant): void;
  roastOut(at: Instant, rest: 'tented' | 'open'): void;
  /** The coldest point of the roast. */
  core(): number;
  /** The air in the oven. */
  oven(): number;
}

const roomCelsius = 21;
/** An oven's air follows its dial with such a lag, heating and cooling. Common practice, no source. */
const lagMinutes = { heating: 5, cooling: 12 };
const stepSeconds = 20;

export function simulatedKitchen(setup: KitchenSetup, startAt: Instant): SimulatedKitchen {
  const roast: RoastBody = roastBody(setup);
  let now = startAt;
  let dialCelsius = 0;
  let airCelsius = roomCelsius;
  let place: 'fridge' | 'oven' | 'tented' | 'open' = 'fridge';

  const advance = (at: Instant): void => {
    while (now < at) {
      const seconds = Math.min(stepSeconds, (at - now) / 1000);
      const aim = dialCelsius > 0 ? dialCelsius + setup.ovenBiasKelvin : roomCelsius;
      const lag = aim > airCelsius ? lagMinutes.heating : lagMinutes.cooling;
      airCelsius += (aim - airCelsius) * (1 - Math.exp(-seconds / 60 / lag));
      if (place !== 'fridge')
        roast.step(seconds, place, place === 'oven' ? airCelsius : roomCelsius);
      now += seconds * 1000;
    }
  };
  return {
    advance,
    ovenSet(at, celsius) {
      advance(at);
      dialCelsius = celsius;
    },
    roastIn(at) {
      advance(at);
      place = 'oven';
    },
    roastOut(at, rest) {
      advance(at);
      place = rest;
    },
    core: () => roast.coldest(),
    oven: () => airCelsius,
  };
}

/** What happened to the roast and its oven, for a kitchen to follow. */
export type KitchenEvent =
  | { at: Instant; kind: 'oven-set'; celsius: number }
  | { at: Instant; kind: 'roast-in' }
  | { at: Instant; kind: 'roast-out'; rest: 'tented' | 'open' };

/** The kitchen at an instant, after all that happened until then, in the order it happened. */
export function kitchenAfter(
  setup: KitchenSetup,
  events: readonly KitchenEvent[],
  at: Instant,
): SimulatedKitchen {
  const past = events.filter((event) => event.at <= at).sort((a, b) => a.at - b.at);
  const kitchen = simulatedKitchen(setup, past[0]?.at ?? at);
  for (const event of past) {
    if (event.kind === 'oven-set') kitchen.ovenSet(event.at, event.celsius);
    else if (event.kind === 'roast-in') kitchen.roastIn(event.at);
    else kitchen.roastOut(event.at, event.rest);
  }
  kitchen.advance(at);
  return kitchen;
}
