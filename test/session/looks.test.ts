/** What a look asks for, and when the pull is called if nobody answers it; common practice, no source. */
import { beforeEach, describe, expect, it } from 'vitest';
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

describe('once the pull is called', () => {
  /** Calls of a kind between two times, by their minutes after the first time. */
  async function calledBetween(from: number, to: number, kind: Announcement['kind']) {
    const calls: { minute: number; call: Announcement }[] = [];
    for (let now = from; now <= to; now += 60_000)
      for (const call of await session.wake(now))
        if (call.kind === kind) calls.push({ minute: minutesBetween(from, now), call });
    return calls;
  }

  it('is called again after ever longer, three times in half an hour at most, and never given up', async () => {
    await say('16:50', 'it reads 60');
    await say('17:05', 'it reads 73');
    const first = (await callsFrom('17:06')).at(-1);
    const times = [first?.at ?? 0];
    for (let now = first?.at ?? 0; now < at('20:00'); now += 60_000)
      for (const call of await session.wake(now)) if (call.kind === 'pull') times.push(now);
    const gaps = times.slice(1).map((time, index) => minutesBetween(times[index] ?? 0, time));
    expect(gaps[0]).toBeLessThanOrEqual(3);
    expect(gaps).toEqual([...gaps].sort((a, b) => a - b));
    const within = times.filter((time) => minutesBetween(times[0] ?? 0, time) <= 30);
    expect(within.length - 1).toBeLessThanOrEqual(3);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(20);
    expect(times.at(-1)).toBeGreaterThan(at('19:30'));
  });

  it('is held against the lower of two spots', async () => {
    await say('16:50', 'it reads 80');
    await say('17:10', '117 in the middle, 121 by the bone');
    const [again] = await calledBetween(at('17:11'), at('17:40'), 'pull');
    expect(again?.call.text).toMatch(/It read 117 °F/);
  });

  it('asks for no number where the answer to one has called the roast out, but whether it is', async () => {
    await say('16:50', 'it reads 92');
    const { replies } = await say('17:03', '109 in the middle');
    expect(replies.map(({ text }) => text).join(' ')).toMatch(/out with it now|Pull the roast now/);
    const calls: Announcement[] = [];
    for (let now = at('17:03'); now <= at('17:33'); now += 60_000)
      calls.push(...(await session.wake(now)));
    expect(calls.filter(({ kind }) => kind === 'check-due')).toEqual([]);
    const pulls = calls.filter(({ kind }) => kind === 'pull');
    expect(pulls[0]?.text).toMatch(/^Is the roast out\? It read 109 °F/);
    expect(pulls.length).toBeLessThanOrEqual(3);
  });

  it('waits for its new hour where a choice puts it off', async () => {
    await say('16:50', 'it reads 60');
    await say('17:05', 'it reads 73');
    const first = (await callsFrom('17:06')).at(-1);
    expect(first?.call.kind).toBe('pull');
    const callAt = first?.at ?? 0;
    const late = 'guests are late an hour and a half';
    const { view } = await session.hear({ text: late, at: callAt + 60_000 });
    const pullAt = Date.parse(view.steps.find(({ id }) => id === 'pull')?.start ?? '');
    expect(minutesBetween(callAt, pullAt)).toBeGreaterThan(12);
    const early: Announcement[] = [];
    for (let now = callAt + 60_000; now < pullAt - 60_000; now += 60_000)
      early.push(...(await session.wake(now)));
    expect(early.filter(({ kind }) => kind === 'pull')).toEqual([]);
    // Its own look before it, since a number is long past by then.
    expect(early.some(({ kind }) => kind === 'check-due')).toBe(true);
    const next = await calledBetween(pullAt - 60_000, pullAt + 15 * 60_000, 'pull');
    expect(next[0]?.call).toMatchObject({ id: 'pull:pull-2#1' });
  });
});

it('asks for an unanswered number three times in half an hour at most', async () => {
  await say('16:35', 'it reads 50');
  const asked: number[] = [];
  let pull = Number.POSITIVE_INFINITY;
  for (let now = at('16:36'); now < at('19:30') && pull > now; now += 60_000)
    for (const call of await session.wake(now)) {
      if (call.kind === 'check-due') asked.push(now);
      if (call.kind === 'pull') pull = now;
    }
  expect(asked.length).toBeGreaterThanOrEqual(2);
  for (const one of asked)
    expect(
      asked.filter((other) => other >= one && minutesBetween(one, other) < 30).length,
    ).toBeLessThanOrEqual(3);
  expect(minutesBetween(asked[0] ?? 0, asked[1] ?? 0)).toBeGreaterThanOrEqual(10);
});

it('tells where the core should stand by now, with how far it may be off', async () => {
  await say('16:50', 'it reads 60');
  const { replies, view } = await say('17:00', 'what should it be reading by now');
  const text = replies.map((one) => one.text).join(' ');
  expect(text).toMatch(/About \d+ °F in the middle.* between \d+ °F and \d+ °F/);
  const named = Number(/About (\d+) °F/.exec(text)?.[1]);
  const now = view.forecast?.coreNowFahrenheit.p50 ?? Number.NaN;
  expect(Math.abs(named - now)).toBeLessThan(1);
});

it('hears everything on the table as served', async () => {
  await say('17:30', 'the roast is out');
  await say('18:30', 'carving now');
  const { view } = await say('18:45', "that's everything on the table");
  expect(view.stage).toBe('served');
});
