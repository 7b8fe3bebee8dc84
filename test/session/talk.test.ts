import { describe, expect, it } from 'vitest';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import type { Session, Turn } from '../../src/session/ports.ts';
import { at, opened } from '../harness/day.ts';

const inOneBreath = 'seven pound three bone rib roast, dinner at seven for six, medium rare';

async function told(
  session: Session,
  lines: readonly (readonly [string, string])[],
): Promise<Turn> {
  let turn: Turn | undefined;
  for (const [time, text] of lines) turn = await session.hear({ text, at: at(time) });
  if (!turn) throw new Error('nothing was said');
  return turn;
}

const textOf = (turn: Turn): string => turn.replies.map((reply) => reply.text).join(' ');

describe('a dinner told in one breath', () => {
  it('is planned at once, with the caution said plainly and once', async () => {
    const session = await opened();
    const first = await told(session, [['13:30', inOneBreath]]);
    expect(first.view.stage).toBe('prep');
    expect(first.view.asking).toBeUndefined();
    // USDA FSIS safe minimum for whole roasts: 145 °F and a three-minute rest.
    expect(textOf(first)).toMatch(/USDA advises 145 °F/);
    expect(textOf(first)).not.toMatch(/\bsafe\b/);
    const second = await told(session, [['13:31', 'what is next']]);
    expect(textOf(second)).not.toMatch(/USDA/);
  });

  it('and piecemeal comes to the same dinner', async () => {
    const one = await told(await opened(), [['13:30', inOneBreath]]);
    const many = await told(await opened(), [
      ['13:30', 'a three bone rib roast, seven pounds'],
      ['13:30', 'seven o’clock'],
      ['13:30', 'six of us'],
      ['13:30', 'medium rare'],
    ]);
    expect(many.view.serving).toEqual(one.view.serving);
    expect(many.view.target).toEqual(one.view.target);
    expect(many.view.forecast?.pull).toEqual(one.view.forecast?.pull);
  });
});

describe('a roast that is ahead of its hour', () => {
  const early = [
    ['12:30', inOneBreath],
    ['15:25', 'the oven is on'],
    ['15:55', 'the roast is in'],
    ['16:15', 'I turned it down to 325'],
    ['16:50', 'it reads 65'],
  ] as const;

  it('has its oven turned down while that helps, unless the cook chooses otherwise', async () => {
    const session = await opened();
    const turn = await told(session, early);
    expect(textOf(turn)).toMatch(/ahead of its hour.*oven down to \d+ °F/);
    const chosen = await told(session, [['16:51', 'two']]);
    expect(chosen.view.oven.setFahrenheit).toBe(325);
    expect(textOf(chosen)).not.toMatch(/oven down/i);
  });

  it('and one in its time is left alone', async () => {
    const turn = await told(await opened(), [
      ['12:30', inOneBreath],
      ['16:10', 'the oven is on'],
      ['16:40', 'the roast is in'],
      ['17:00', 'I turned it down to 325'],
      ['17:35', 'it reads 65'],
    ]);
    expect(textOf(turn)).not.toMatch(/oven down|ahead/i);
  });
});

describe('the end of a dinner', () => {
  const served = [
    ['16:10', inOneBreath],
    ['16:11', 'the roast is in'],
    ['18:30', 'it is out'],
    ['18:50', 'we are carving'],
    ['18:52', "dinner's on the table"],
  ] as const;

  it('the answer tells the heat off where no call did', async () => {
    const turn = await told(await opened(), served);
    expect(textOf(turn)).toMatch(/oven and hob off/i);
  });

  it('the call to the table tells it off, and the answer does not again', async () => {
    const called = await opened();
    await told(called, served.slice(0, 4));
    const calls = await called.wake(at('19:02'));
    expect(calls.map((one) => one.text).join(' ')).toMatch(/oven and hob off/i);
    const answer = await told(called, [['19:03', "dinner's on the table"]]);
    expect(textOf(answer)).not.toMatch(/hob/i);
  });
});

describe('what lasts', () => {
  const day = [
    ['13:30', inOneBreath],
    ['16:10', 'the oven is on'],
    ['16:40', 'the roast is in'],
    ['17:00', 'I turned it down to 325'],
    ['17:50', 'it reads 80'],
    ['18:00', 'guests are late 30 minutes'],
  ] as const;

  it('a session reopened from its journal has the same view', async () => {
    const journal = openMemoryJournal();
    const before = await told(await opened(journal), day);
    const again = await opened(journal);
    expect(await again.view(at('18:00'))).toEqual(before.view);
    expect((await again.nextDue()).at).toBeGreaterThanOrEqual(at('18:00'));
  });

  it('the same key acts once and answers the same', async () => {
    const session = await opened();
    await told(session, day.slice(0, 1));
    const words = { text: 'two more are coming', at: at('14:00'), key: 'k1' };
    const first = await session.hear(words);
    const second = await session.hear(words);
    expect(second.replies).toEqual(first.replies);
    expect(second.view.guests).toBe(8);
  });

  it('undo leaves the day as it was', async () => {
    const session = await opened();
    const before = await told(session, day.slice(0, 5));
    await told(session, [['17:50', 'it reads 95']]);
    const after = await told(session, [['17:50', 'take that back']]);
    expect(after.view.readings).toEqual(before.view.readings);
    expect(after.view.forecast).toEqual(before.view.forecast);
  });

  it('two sessions over one journal lose no turn', async () => {
    const journal = openMemoryJournal();
    const a = await opened(journal);
    await told(a, day.slice(0, 1));
    const b = await opened(journal);
    await told(a, [['14:00', 'two more are coming']]);
    const turn = await told(b, [['14:01', 'one more is coming']]);
    expect(turn.view.guests).toBe(9);
  });
});

describe('bad input', () => {
  it.each([
    ['it reads nine hundred', /no roast reads that|no household dial/],
    ['a ninety pound rib roast', /household oven/],
    ['', /./],
    ['😀😀😀', /./],
    ["'; drop table facts; --", /./],
  ])('%s gets a sentence and changes nothing', async (text, wanted) => {
    const session = await opened();
    await told(session, [['13:30', inOneBreath]]);
    await session.wake(at('13:30'));
    const before = await session.view(at('13:30'));
    const after = await told(session, [['13:30', text]]);
    expect(textOf(after)).toMatch(wanted);
    expect({ ...after.view, position: 0, asking: undefined }).toEqual({
      ...before,
      position: 0,
      asking: undefined,
    });
  });
});

describe('calls', () => {
  it('the oven-down comes again after "okay", and no more once it is down', async () => {
    const session = await opened();
    await told(session, [
      ['13:30', inOneBreath],
      ['16:10', 'the oven is on'],
      ['16:40', 'the roast is in'],
    ]);
    const first = await session.wake(at('17:01'));
    expect(first.map((one) => one.kind)).toContain('oven-change');
    await session.hear({ text: 'okay', at: at('17:01') });
    const again = await session.wake(at('17:07'));
    expect(again.map((one) => one.kind)).toContain('oven-change');
    await session.hear({ text: 'it is down', at: at('17:08') });
    const later = await session.wake(at('17:19'));
    expect(later.filter((one) => one.kind === 'oven-change')).toEqual([]);
  });

  it('the pull is called until it is out, each call with an id of its own', async () => {
    const session = await opened();
    await told(session, [
      ['13:30', inOneBreath],
      ['16:40', 'the roast is in'],
      ['17:00', 'it is down'],
    ]);
    const calls = (await session.wake(at('19:00'))).filter((one) => one.kind === 'pull');
    expect(calls.length).toBeGreaterThan(2);
    expect(new Set(calls.map((one) => one.id)).size).toBe(calls.length);
    await session.hear({ text: "it's out", at: at('19:01') });
    const after = await session.wake(at('19:30'));
    expect(after.filter((one) => one.kind === 'pull')).toEqual([]);
  });
});
