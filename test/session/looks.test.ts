/** What a look asks for, and when the pull is called if nobody answers it; common practice, no source. */
import { beforeEach, expect, it } from 'vitest';
import { minutesBetween } from '../../src/base/time.ts';
import type { Announcement, Session } from '../../src/session/ports.ts';
import { at, opened } from '../harness/day.ts';

let session: Session;
const say = (time: string, text: string) => session.hear({ text, at: at(time) });

beforeEach(async () => {
  session = await opened();
  await say('13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare');
  await say('16:00', 'the roast is in');
  await say('16:20', 'I turned it down to 325');
});

/** Calls from one minute on until the pull's first, by their instants. */
async function callsFrom(from: string): Promise<{ at: number; call: Announcement }[]> {
  const heard: { at: number; call: Announcement }[] = [];
  for (let now = at(from); now < at('19:30'); now += 60_000) {
    for (const call of await session.wake(now)) heard.push({ at: now, call });
    if (heard.some(({ call }) => call.kind === 'pull')) break;
  }
  return heard;
}

it('asks for two spots near the pull, and for the same spot before', async () => {
  await say('16:50', 'it reads 60');
  const looks = (await callsFrom('16:51')).filter(({ call }) => call.kind === 'check-due');
  expect(looks[0]?.call.text).toMatch(/in the same spot/);
  expect(looks.at(-1)?.call.text).toMatch(/two spots/);
});

it('calls the pull at its minute though the look before it was not answered', async () => {
  await say('16:50', 'it reads 60');
  const { view } = await say('17:05', 'it reads 73');
  const likely = view.steps.find(({ id }) => id === 'pull')?.start;
  const calls = await callsFrom('17:06');
  const pull = calls.find(({ call }) => call.kind === 'pull');
  const look = calls.findLast(({ call }) => call.kind === 'check-due');
  expect(look).toBeDefined();
  expect(minutesBetween(Date.parse(likely ?? ''), pull?.at ?? 0)).toBeLessThanOrEqual(1);
});
