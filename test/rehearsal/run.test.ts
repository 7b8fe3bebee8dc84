import { describe, expect, it } from 'vitest';
import type { Heard } from '../../src/kitchen/heard.ts';
import { parseScript } from '../../src/rehearsal/parse.ts';
import { type Rehearsal, rehearse } from '../../src/rehearsal/run.ts';
import { at, call, type FakeWorld, fakeOpener } from './fake-session.ts';

const head = 'start 2026-12-19 13:00 UTC\nunits F lb\n';

async function play(
  lines: string,
  world: Partial<FakeWorld> = {},
  options: { restartEveryTurn?: boolean } = {},
): Promise<Rehearsal> {
  const { script, fault } = parseScript(head + lines, 'a');
  if (!script) throw new Error(JSON.stringify(fault));
  return rehearse(script, { open: fakeOpener({ calls: [], ...world }), ...options });
}

/** Lines of the script (after the heading) that fell short, and what came there. */
const short = (result: Rehearsal): string[] =>
  result.failures.map((one) => `${one.line - 2}: ${one.came}`);

describe('an announcement that is wanted', () => {
  const world = { calls: [call('16:05', 'oven-change'), call('17:25', 'side-in')] };

  it.each([
    ['at its minute', '13:30 > hi\n16:05 ! oven-change'],
    ['at the latest then', '13:30 > hi\n16:30 ! oven-change'],
    ['in its window', '13:30 > hi\n17:20..17:30 ! side-in'],
    ['two of one stretch, each at a line of one minute', '17:30 ! side-in\n17:30 ! oven-change'],
    ['across an unanswered stretch', '16:05 > hi\n17:00 unanswered 30m\n17:30 ! side-in'],
  ])('holds %s', async (_name, lines) => {
    expect(short(await play(lines, world))).toEqual([]);
  });

  it.each([
    ['a minute too late', '16:04 ! oven-change', '1: nothing announced'],
    ['of another kind', '16:05 ! pull', '1: 16:05 oven-change'],
    ['before its window', '17:26..17:30 ! side-in', '1: 16:05 oven-change'],
    ['before the line before', '16:05 > hi\n17:00 ! oven-change', '2: nothing announced'],
    ['taken by the line above', '16:05 ! oven-change\n16:05 ! oven-change', '2: 16:05 oven-change'],
    [
      'before an earlier line of its own kind',
      '16:10 > x\n17:30 ! oven-change',
      '2: 17:25 side-in',
    ],
  ])('fails when it came %s', async (_name, lines, came) => {
    expect(short(await play(lines, world)).join()).toContain(came);
  });

  it('is not excused by its own repetition inside the window', async () => {
    const calls = [
      call('17:00', 'pull', { step: 'pull' }),
      call('17:25', 'pull', { id: 'again', step: 'pull' }),
    ];
    expect(short(await play('17:20..17:30 ! pull', { calls }))).toHaveLength(1);
    const other = [call('17:00', 'pull', { step: 'a' }), call('17:25', 'pull', { step: 'b' })];
    expect(short(await play('17:20..17:30 ! pull', { calls: other }))).toEqual([]);
  });
});

describe('silence', () => {
  it('holds when nothing came since the last line, and names what came otherwise', async () => {
    const calls = [call('14:00', 'check-due')];
    expect(short(await play('14:10 > hi\n15:00 silent', { calls }))).toEqual([]);
    expect(short(await play('13:30 > hi\n15:00 silent', { calls }))).toEqual([
      '2: 14:00 check-due "check-due now"',
    ]);
  });
});

describe('what is said', () => {
  it('is heard at its time, after what fell due, from cook and guest', async () => {
    const said: NonNullable<FakeWorld['said']> = [];
    await play('13:30:20 > hello\n13:40 guest> where is it', { said });
    expect(said.map((one) => [new Date(one.at).toISOString().slice(11, 19), one.source])).toEqual([
      ['13:30:20', 'cook'],
      ['13:40:00', 'earshot'],
    ]);
  });

  it('lets says and silent-on see replies and announcements since the last line', async () => {
    const world = { calls: [call('13:20', 'check-due')], reply: () => 'Leave it in.' };
    const lines = '13:30 > hi\n  says /leave/\n  says /CHECK-DUE/i\n  silent-on /take it out/\n';
    expect(short(await play(lines, world))).toEqual([]);
    const wrong =
      '13:30 > hi\n  says /take it out/\n  silent-on /leave/\n13:40 > x\n  says /check/';
    expect(short(await play(wrong, world)).map((one) => one[0])).toEqual(['2', '3', '5']);
  });

  it('compares what was heard in order, and exactly', async () => {
    const heard = (): Heard[] => [
      { intent: 'courtesy', text: 'please' },
      { intent: 'set-guests', count: 6, text: 'six' },
      { intent: 'affirm', text: 'yes' },
    ];
    const good =
      '13:30 > x\n  heard set-guests\n  heard courtesy, affirm\n  only set-guests, affirm';
    expect(short(await play(good, { heard }))).toEqual([]);
    const bad =
      '13:30 > x\n  heard affirm, set-guests\n  only set-guests\n  only affirm, set-guests, deny';
    expect(short(await play(bad, { heard }))).toHaveLength(3);
  });
});

describe('what comes without a cook', () => {
  it("hands a probe's number on in the unit of the script", async () => {
    const sensed: NonNullable<FakeWorld['sensed']> = [];
    await play('13:30 > hi\n13:31 probe 104.5', { sensed });
    expect(sensed).toEqual([{ temperature: 104.5, unit: 'F', at: at('13:31') }]);
  });

  it('delivers the last words again under their key, and wants the same answer', async () => {
    const said: NonNullable<FakeWorld['said']> = [];
    const lines = '13:30 > hi\n13:40 doubled';
    expect(short(await play(lines, { said }))).toEqual([]);
    expect(said.map((one) => one.key)).toEqual([said[0]?.key, said[0]?.key]);
    const answers = ['one', 'two'];
    const forgetful = { reply: () => answers.shift() ?? 'none' };
    expect(short(await play(lines, forgetful))).toEqual(['2: two']);
  });
});

describe('the view', () => {
  const band = { p10: 118, p50: 121, p90: 124 };
  const view: FakeWorld['view'] = {
    stage: 'low-roast',
    serving: { wanted: '2026-12-19T19:30:00+00:00' },
    guests: 6,
    target: { pullFahrenheit: 110 },
    oven: { setFahrenheit: 250, program: [] },
    sides: [{ id: 'roast-potatoes', kind: 'side', title: 'potatoes', state: 'in-oven' }],
    asking: { kind: 'reading-contradicts', expecting: 'confirmation', text: 'Sure?' },
    options: [
      {
        n: 1,
        kind: 'lower-oven',
        title: 'oven down',
        serving: '2026-12-19T19:30:00+00:00',
        coreAtServing: band,
        risk: 'none',
      },
    ],
    cautions: [{ text: 'Advice is 145.', source: 'USDA' }],
    paused: false,
  };

  it('holds where it is as wanted', async () => {
    const lines =
      '13:30 > x\n  stage low-roast\n  serving 19:30\n  serving 19:26 ±4\n  guests 6\n  pull 108..112\n' +
      '  oven 170..250\n  sides roast-potatoes in-oven\n  asks confirmation\n' +
      '  asks reading-contradicts\n  options 1\n  option 1 serving 19:20..19:40 core 118..124\n' +
      '  caution /usda/\n  view paused=false\n  view options.0.title=oven down\n  view checkAt=nothing\n' +
      '  serving 2026-12-19 19:30\n';
    const result = await play(lines, { view });
    expect(short(result)).toEqual([]);
    expect(result.held).toBe(16);
  });

  it.each([
    ['stage rest', 'low-roast'],
    ['serving 19:31', '2026-12-19 19:30'],
    ['serving 19:25 ±4', '2026-12-19 19:30'],
    ['serving 2026-12-20 19:30', '2026-12-19 19:30'],
    ['guests 7', '6'],
    ['pull 111..112', '110.0 °F'],
    ['oven 249', '250.0 °F'],
    ['core 100..120', 'no temperature yet'],
    ['sides roast-potatoes done', 'in-oven'],
    ['sides peas done', 'no such dish among roast-potatoes'],
    ['step carve due', 'no such step among none'],
    ['asks nothing', 'reading-contradicts: "Sure?"'],
    ['asks roast', 'reading-contradicts: "Sure?"'],
    ['options 2', '1 options: 1 "oven down"'],
    ['option 2 serving 19:30', '1 options: 1 "oven down"'],
    ['option 1 serving 19:31..19:40', '"oven down" at 19:30, core 121.0 °F'],
    ['option 1 core 122..130', '"oven down" at 19:30, core 121.0 °F'],
    ['caution /fda says/', '"Advice is 145."'],
    ['view paused=true', 'false'],
  ])('fails %s, and tells what came', async (check, came) => {
    const result = await play(`13:30 > x\n  ${check}`, { view });
    const [failure, ...more] = result.failures;
    expect(more).toEqual([]);
    expect(failure).toMatchObject({ file: 'a', line: 4, column: 3, wanted: check, came });
    if (failure?.amended === undefined) return;
    // What is offered in its place must hold in the very same moment.
    const again = await play(`13:30 > x\n  ${failure.amended}`, { view });
    expect(again.failures).toEqual([]);
  });
});

describe('a restart', () => {
  it('holds when the reopened dinner is the same', async () => {
    const world = { calls: [call('14:00', 'pull')] };
    const result = await play('13:30 > hi\n14:10 restart\n14:20 > ho', world);
    expect([short(result), result.held]).toEqual([[], 1]);
    expect((await play('13:30 > hi\n14:10 > ho', world, { restartEveryTurn: true })).held).toBe(2);
  });

  it('names what is no longer the same', async () => {
    const forgetful = { guests: 4 };
    expect(short(await play('13:30 restart', { forgetful }))).toEqual([
      '1: guests was nothing and is 4',
    ]);
    const every = await play('13:30 > hi', { forgetful }, { restartEveryTurn: true });
    expect(short(every)).toHaveLength(1);
  });
});

it('ends a script with a failure of its line when the session breaks', async () => {
  const reply = (): string => {
    throw new Error('out of butter');
  };
  const result = await play('13:30 > hi\n13:40 > ho', { reply });
  expect(short(result)).toEqual(['1: the session broke: out of butter']);
});
