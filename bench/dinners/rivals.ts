/** What cooks do without the helper, in the same kitchens, with the same guests. */
import { carvingMinutes, type Evening, wantedBy } from './evening.ts';
import { World } from './world.ts';

export interface Plated {
  coreFahrenheit: number;
  tableMinute: number;
}

const restMinutes = 20;
const searMinutes = 20;

interface Way {
  /** Minutes the roast is given, from weight. */
  minutes(pounds: number): number;
  /** Whether it comes out now; called every minute. */
  isOut(world: World, state: { inMinute: number; given: number }): boolean;
  slackMinutes: number;
}

/** Thirteen minutes a pound and an alarm clock. */
const byTheClock: Way = {
  minutes: (pounds) => 13 * pounds,
  isOut: (world, { inMinute, given }) => world.minute >= inMinute + given,
  slackMinutes: 0,
};

/** A leave-in thermometer with its alarm at 115 °F, started by the same thirteen minutes. */
const byTheAlarm: Way = {
  minutes: (pounds) => 13 * pounds,
  isOut: (world) => world.probeFahrenheit >= 115,
  slackMinutes: 0,
};

/**
 * Chart time to medium rare (beef-industry roasting guidelines, middles: 5 lb 2 h, 7 lb 2 h 22, 9 lb
 * 2 h 45 at 350 °F, for the pull at 135 °F), half an hour of slack, a look every quarter of an hour
 * from 90 °F, out twelve degrees under; early means a longer rest.
 */
function byHand(): Way {
  let lookAt = Number.NaN;
  return {
    minutes: (pounds) => 120 * (pounds / 5) ** 0.54,
    slackMinutes: 30,
    isOut: (world, { inMinute, given }) => {
      if (Number.isNaN(lookAt)) lookAt = inMinute + Math.round(0.5 * given);
      if (world.minute < lookAt) return false;
      const reads = world.read();
      lookAt = world.minute + (reads < 75 ? 25 : 15);
      return reads >= 118;
    },
  };
}

const latestMinute = 900;

function cook(evening: Evening, way: Way): Plated {
  const world = new World(evening);
  const given = way.minutes(evening.toldPounds);
  const carving = carvingMinutes(evening);
  // The start follows the guests as long as it has not come.
  const starts = (): number =>
    wantedBy(evening, world.minute) - carving - restMinutes - given - way.slackMinutes;
  world.setOven(450);
  while (world.minute < starts()) world.advance(world.minute + 1);
  const inMinute = world.minute;
  world.putIn();
  let out = false;
  while (!out && world.minute < latestMinute) {
    world.advance(world.minute + 1);
    if (world.minute === inMinute + searMinutes) world.setOven(325);
    out = way.isOut(world, { inMinute, given });
  }
  world.takeOut();
  const outMinute = world.minute;
  const knife = (): number =>
    Math.max(outMinute + restMinutes, wantedBy(evening, world.minute) - carving);
  while (world.minute < knife()) world.advance(world.minute + 1);
  return { coreFahrenheit: world.coreFahrenheit, tableMinute: world.minute + carving };
}

export const rivals = {
  '13 min a pound, by the clock': (evening: Evening) => cook(evening, byTheClock),
  'alarm at 115 °F': (evening: Evening) => cook(evening, byTheAlarm),
  'a good cook': (evening: Evening) => cook(evening, byHand()),
} as const;
export type Rival = keyof typeof rivals;
