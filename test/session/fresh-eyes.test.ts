import { describe, expect, it } from 'vitest';
import { at, opened } from '../harness/day.ts';

type Line = readonly [time: string, text: string];
async function told(lines: readonly Line[]) {
  const session = await opened();
  let turn = await session.hear({ text: 'hello', at: at('13:00') });
  const calls: (string | undefined)[] = [];
  for (const [time, text] of lines) {
    turn = await session.hear({ text, at: at(time) });
    calls.push(...turn.announcements.map((one) => one.step));
  }
  return { turn, calls, text: turn.replies.map((one) => one.text).join(' ') };
}

const dinner: readonly Line[] = [
  ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
  ['15:45', 'the roast is in'],
  ['16:05', 'I turned it down to 325'],
];

describe('a cook with the roast in', () => {
  it('reports the core with a bare number, however long a doneness was asked for', async () => {
    const { turn } = await told([
      ['13:00', 'use celsius'],
      ['13:00', 'three kilo rib roast'],
      ['13:01', 'dinner at four, six of us'],
      ['13:02', 'the roast is in'],
      ['13:40', 'thanks'],
      ['14:10', '48 degrees'],
    ]);
    expect(turn.heard.map((one) => one.intent)).toEqual(['report-reading']);
  });

  it('takes a reading back with its reason, and is not asked again', async () => {
    const { turn, text } = await told([
      ...dinner,
      ['17:10', 'it reads 90'],
      ['17:12', "that can't be right, I had it on the bone, it's actually 72"],
    ]);
    expect(text).not.toMatch(/is that right\?/);
    expect(turn.view.asking).toBeUndefined();
    expect(turn.view.readings).toHaveLength(1);
  });

  it('takes back the number that was named, and nothing told since', async () => {
    const { turn, text } = await told([
      ...dinner,
      ['17:00', 'it reads 88'],
      ['17:02', 'the potatoes are scrubbed'],
      ['17:03', "it's not 88"],
    ]);
    expect(text).toMatch(/^Taken back: "88"/);
    expect(turn.view.readings).toHaveLength(0);
    expect(turn.view.steps.find(({ id }) => id === 'roast-potatoes.scrub')?.state).toBe('done');
  });

  it('keeps the oven lit when its heat was misheard', async () => {
    const { turn } = await told([
      ['13:00', 'leg of lamb, six pounds, dinner at 7 for 6, pink'],
      ['13:02', 'the oven is on'],
      ['13:17', 'no ninety four not one oh four'],
      ['13:32', 'shove dinner back twenty'],
    ]);
    const lit = turn.view.steps.find(({ id }) => id === 'oven-on');
    expect(lit?.start).toContain('T13:02');
  });

  it('is told straight whether it is wrecked, and what can still be done', async () => {
    const late = [...dinner, ['17:00', 'it reads 88'], ['17:25', 'it reads 121']] as const;
    const past = await told(late);
    expect(past.text).toMatch(/^121 °F, \d+ °F past the pull: out with it now/);
    const { text } = await told([...late, ['17:26', 'have I wrecked it?']]);
    expect(text).toMatch(/^(No|Not wrecked|More done)[^.]*\d+ °F in the middle/);
    const early = await told([...dinner, ['16:30', 'did I ruin it']]);
    expect(early.text).toMatch(/^No: .* short of the pull\. Nothing is lost\.$/);
  });

  it('is told of a hotter table the longer the roast stays in past its pull', async () => {
    const past = [...dinner, ['17:00', 'it reads 88'], ['17:25', 'it reads 121']] as const;
    const tableAt = async (time: string): Promise<number> =>
      (await told([...past, [time, 'have I wrecked it?']])).turn.view.forecast
        ?.coreAtServingFahrenheit?.p50 ?? 0;
    expect(await tableAt('17:45')).toBeGreaterThan((await tableAt('17:26')) + 2);
  });

  it('is shown the slice as the knife will meet it, however long the rest', async () => {
    const { turn } = await told([
      ...dinner,
      ['16:50', 'it reads 70'],
      ['17:00', 'guests are late 40 minutes'],
    ]);
    const { forecast } = turn.view;
    const slice = forecast!.slice;
    expect(slice.minutesAfterPull).toBeGreaterThan(20);
    const core = slice.profile[0]!.fahrenheit.p50;
    expect(Math.abs(core - forecast!.coreAtServingFahrenheit.p50)).toBeLessThan(6);
  });

  it('is believed of a doubted number that the next look bears out', async () => {
    const doubted = [...dinner, ['16:40', 'it reads 96']] as const;
    expect((await told(doubted)).turn.view.asking?.kind).toBe('reading-improbable');
    const { turn } = await told([...doubted, ['16:55', 'it reads 107']]);
    expect(turn.view.asking).toBeUndefined();
    expect(turn.view.readings.map((one) => one.fahrenheit)).toEqual([96, 107]);
  });

  it('is asked about a number that no core can have climbed to', async () => {
    const { turn } = await told([
      ...dinner,
      ['17:00', 'it reads 88'],
      ['17:10', 'it reads 97'],
      ['17:13', 'it reads 131'],
    ]);
    expect(turn.view.asking?.kind).toBe('reading-improbable');
  });

  it('counts in the scale that alone makes sense of a dial or a core', async () => {
    const metric = await told([...dinner.slice(0, 2), ['16:05', 'turned it down to 160']]);
    expect(metric.text).toMatch(/^Celsius from now on\. Oven at 160 °C/);
    const low = await told([...dinner.slice(0, 2), ['16:05', 'turned it down to 250']]);
    expect(low.turn.view.units.temperature).toBe('F');
    const core = await told([...dinner, ['17:30', 'it reads 40']]);
    expect(core.turn.view.asking?.text).toMatch(/other scale/);
  });

  it('takes yes for the other scale, and no for the number as it was said', async () => {
    const doubted = [...dinner, ['17:30', 'it reads 40']] as const;
    expect((await told([...doubted, ['17:31', 'yes']])).text).toMatch(/^104 °F/);
    expect((await told([...doubted, ['17:31', 'no']])).text).toMatch(/^40 °F/);
  });

  it('ends the wait that "hang on" began by going on telling', async () => {
    const waiting = [...dinner, ['17:00', 'hang on']] as const;
    expect((await told(waiting)).turn.view.paused).toBe(true);
    expect((await told([...waiting, ['17:02', 'it reads 70']])).turn.view.paused).toBe(false);
  });

  it('is asked for a second spot before a roast comes out by a single number', async () => {
    const { turn } = await told([...dinner, ['17:10', 'it reads 126']]);
    expect(turn.view.asking?.text).toMatch(/another spot/i);
    const again = await told([...dinner, ['17:10', 'it reads 126'], ['17:11', 'it reads 124']]);
    expect(again.text).toMatch(/^124 °F.*out with it/);
  });

  it('is told when the roast goes in long before its time', async () => {
    const early = await told([
      ['12:30', dinner[0]?.[1] ?? ''],
      ['14:20', 'the roast is in'],
    ]);
    expect(early.text).toMatch(/early: it would wait .* for the table/);
    const inTime = await told([...dinner.slice(0, 1), ['16:25', 'the roast is in']]);
    expect(inTime.text).not.toMatch(/early/);
  });

  it('has the raw work behind once the roast is in', async () => {
    const { text, turn } = await told([
      ['15:50', dinner[0]?.[1] ?? ''],
      ['15:55', 'the roast went in ten minutes ago'],
      ['15:56', "what's next"],
    ]);
    expect(text).not.toMatch(/trim|french|truss|season|fridge, onto/);
    const raw = turn.view.steps.filter((step) => /^(trim|french|truss|season)$/.test(step.id));
    expect(raw.every((step) => step.state === 'done')).toBe(true);
  });

  it('is taken to be back after a burn once the next step is asked for', async () => {
    const burnt: readonly Line[] = [...dinner, ['16:20', 'I burnt my hand']];
    const soon = await told([...burnt, ['16:22', 'what now']]);
    expect(soon.turn.view.emergency).toBeDefined();
    const later = await told([...burnt, ['16:40', 'okay, what now']]);
    expect(later.turn.view.emergency).toBeUndefined();
  });

  it('is told no table that nobody named', async () => {
    const { text } = await told([
      ['13:00', 'seven pound rib roast'],
      ['13:01', 'the roast is in'],
      ['13:40', 'it reads 60'],
    ]);
    expect(text).toMatch(/When is dinner\?/);
    expect(text).not.toMatch(/Dinner stays/);
    const asked = await told([
      ['13:00', 'seven pound rib roast'],
      ['13:01', 'the roast is in'],
      ['13:40', "how's it going"],
    ]);
    expect(asked.text).not.toMatch(/dinner at/i);
  });

  it('is not sent back to the fridge or to light the oven', async () => {
    const { calls } = await told([
      ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
      ['14:50', 'the roast is in'],
      ['17:00', 'okay'],
    ]);
    expect(calls).not.toContain('out-of-fridge');
    expect(calls).not.toContain('oven-on');
  });

  it('is not told to light an oven that is hot, until it has gone out', async () => {
    const hot: readonly Line[] = [
      ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
      ['15:00', 'the oven is preheated'],
    ];
    const { calls: lit } = await told([...hot, ['16:35', 'okay']]);
    expect(lit).not.toContain('oven-on');
    const { calls: dark } = await told([
      ...hot,
      ['15:10', 'I turned the oven off'],
      ['16:35', 'okay'],
    ]);
    expect(dark).toContain('oven-on');
  });

  it('hears of nothing but the putting away once all are eating', async () => {
    const { calls: before } = await told([...dinner, ['17:30', 'it is out']]);
    const { calls } = await told([
      ...dinner,
      ['17:30', 'it is out'],
      ['18:00', 'we are eating'],
      ['21:00', 'okay'],
    ]);
    const { calls: upTo } = await told([
      ...dinner,
      ['17:30', 'it is out'],
      ['18:00', 'we are eating'],
    ]);
    expect(before.length).toBeLessThanOrEqual(upTo.length);
    expect(new Set(calls.slice(upTo.length))).toEqual(new Set(['put-away']));
  });
});
