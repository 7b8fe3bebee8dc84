/** An invented dinner, line by line, with late guests; each stop is a moment worth looking at. */
import type { House } from './house.ts';

export const moments = [
  'first-words',
  'prep',
  'sear',
  'low-roast',
  'late-guests',
  'pull',
  'rest',
  'served',
] as const;
export type Moment = (typeof moments)[number];

type Line = [time: string, text: string];

/** What is said up to each moment, and the hour the clock then stands at. */
const lines: Record<Moment, { said: Line[]; till?: string }> = {
  'first-words': { said: [] },
  prep: {
    said: [
      [
        '13:30',
        'seven pound three bone rib roast, dinner at seven for six, medium rare, with roast potatoes, green beans and horseradish cream',
      ],
      ['13:40', 'done'],
    ],
    till: '13:52',
  },
  sear: {
    said: [
      ['14:00', 'it is trimmed and tied'],
      ['14:10', "it's seasoned"],
      ['14:15', 'the horseradish is grated'],
      ['14:40', 'the butter is made and the horseradish cream is in the fridge'],
      ['16:11', "oven's on"],
      ['16:40', 'the roast is in'],
    ],
    till: '16:52',
  },
  'low-roast': {
    said: [
      ['17:00', 'I turned it down to 325'],
      ['17:04', 'the butter is on'],
      ['17:25', 'it reads 47'],
      ['17:40', 'potatoes are in'],
      ['17:45', 'it reads 66'],
      ['17:58', 'the beans are trimmed'],
      ['18:02', 'it reads 84'],
    ],
    till: '18:04',
  },
  'late-guests': { said: [['18:08', 'guests are late 30 minutes']], till: '18:08' },
  pull: {
    said: [
      ['18:09', 'the second one'],
      ['18:10', "it's down to 250"],
      ['18:30', 'it reads 99'],
    ],
    till: '18:31',
  },
  rest: { said: [] },
  served: { said: [] },
};

/** Takes the house from the moment before to this one. */
export async function goTo(house: House, moment: Moment): Promise<void> {
  for (const [time, text] of lines[moment].said) await house.say(text, time);
  const { till } = lines[moment];
  if (till !== undefined) await house.clock(till);
  if (moment === 'pull') await untilPull(house);
  if (moment === 'rest') {
    await house.say("it's out");
    await house.clock(later(await now(house), 8));
    await house.say('the potatoes are on top to brown');
    await house.say('set a timer for twelve minutes for the rolls');
  }
  if (moment === 'served') {
    const { view } = await house.say("what's next");
    const steps = view.steps as { id: string; start: string }[];
    const carve = steps.find((step) => step.id === 'carve');
    const start = (carve?.start ?? '').slice(11, 16);
    if (start > (await now(house))) await house.clock(start);
    await house.say("we're carving");
    await house.clock(later(await now(house), 9));
    await house.say("dinner's on the table");
  }
}

/** Minute by minute, until the pull is called. */
async function untilPull(house: House): Promise<void> {
  for (let minutes = 0; minutes < 120; minutes += 1) {
    const called = await house.clock(later(await now(house), 1));
    if (called.some((one) => one.kind === 'pull')) return;
  }
  throw new Error('the pull was never called');
}

async function now(house: House): Promise<string> {
  const view = (await (await fetch(`${house.base}/api/dinners/${house.dinner}`)).json()) as {
    at: string;
  };
  return view.at.slice(11, 16);
}

export function later(time: string, minutes: number): string {
  const [hour = 0, minute = 0] = time.split(':').map(Number);
  const all = hour * 60 + minute + minutes;
  return `${String(Math.floor(all / 60)).padStart(2, '0')}:${String(all % 60).padStart(2, '0')}`;
}
