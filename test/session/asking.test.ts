import { beforeEach, describe, expect, it } from 'vitest';
import type { Session, Turn } from '../../src/session/ports.ts';
import { at, opened } from '../harness/day.ts';

let session: Session;
const say = (time: string, text: string): Promise<Turn> => session.hear({ text, at: at(time) });
const textOf = (turn: Turn): string => turn.replies.map((reply) => reply.text).join(' ');

beforeEach(async () => {
  session = await opened();
  await say('13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare');
  await say('15:45', 'the roast is in');
  await say('16:05', 'I turned it down to 325');
});

describe('a number that may be the roast or the oven', () => {
  it('is asked about with both answers named, and the oven is believed', async () => {
    const asked = await say('16:20', '200');
    expect(textOf(asked)).toMatch(/200 °F in the roast, or the oven\?/);
    expect(asked.view.asking).toBeDefined();
    const settled = await say('16:21', 'the oven');
    expect(settled.view.asking).toBeUndefined();
    expect(settled.view.oven.setFahrenheit).toBeCloseTo(200, 0);
  });

  it('is never asked twice for one number', async () => {
    await say('16:20', '200');
    expect(textOf(await say('16:21', '200'))).not.toMatch(/in the roast, or the oven/);
  });
});

describe('said without a name', () => {
  it('"they are out" takes out every side that was in, and leaves the roast', async () => {
    await say('17:00', 'the potatoes are in');
    const out = await say('17:50', "they're out");
    expect(out.view.stage).toBe('low-roast');
    const potatoes = out.view.sides.find(({ id }) => id === 'roast-potatoes');
    // Out to be browned later: begun, and not in the oven.
    expect(potatoes?.state).toBe('preparing');
  });

  it('"when the match ends" sets no hour', async () => {
    const before = (await session.view(at('16:30'))).serving.wanted;
    const turn = await say('16:30', "we'll eat when the match ends");
    expect(turn.heard.map((one) => one.intent)).toEqual(['unclear']);
    expect(turn.view.serving.wanted).toBe(before);
  });

  it('"okay" to a call is heard, not done', async () => {
    const turn = await say('16:31', 'okay');
    expect(turn.heard.map((one) => one.intent)).toEqual(['acknowledge']);
    expect(turn.view.stage).toBe('low-roast');
  });
});

describe('a core told before the roast is in', () => {
  beforeEach(async () => {
    session = await opened();
    await say('13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare');
    expect(textOf(await say('13:40', 'it reads 104'))).toMatch(/not in yet\. Is it in/);
  });

  it('counts with a yes, and the roast is in', async () => {
    const yes = await say('13:41', 'yes');
    expect(yes.view.stage).toBe('sear');
    expect(yes.view.readings).toHaveLength(1);
  });

  it('is let go with a no', async () => {
    const no = await say('13:41', 'no');
    expect(no.view.stage).toBe('prep');
    expect(no.view.readings).toHaveLength(0);
  });
});
