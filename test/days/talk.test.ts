import { describe, expect, it } from 'vitest';
import type { Announcement, Session } from '../../src/session/ports.ts';
import { at, opened } from '../harness/day.ts';

const dinner = 'seven pound three bone rib roast, dinner at seven for six, medium rare';

async function hear(session: Session, time: string, text: string): Promise<string> {
  const turn = await session.hear({ text, at: at(time) });
  return turn.replies.map((reply) => reply.text).join(' ');
}
async function roasting(): Promise<Session> {
  const session = await opened();
  for (const [time, text] of [
    ['13:00', dinner],
    ['16:05', 'oven is on'],
    ['16:35', 'the roast is in'],
    ['16:55', 'oven is down'],
  ] as const)
    await hear(session, time, text);
  return session;
}
const kinds = (calls: readonly Announcement[]): string[] => calls.map((call) => call.kind);

describe('an emergency', () => {
  // Usual first-aid cautions, from memory: what to do stands first, help is called early.
  it.each([
    ['the fat is on fire', /^Keep the oven door shut/, /fire service/],
    ['I burnt my hand', /^Cool the burn under cool running water/, /emergency services/],
    ['I cut my finger badly, it is bleeding everywhere', /^Press a clean cloth/, /emergency/],
    ['gran has fallen over', /^Stay down/, /emergency services/],
    ['someone is choking', /^If they cannot cough or speak, five/, /emergency services now/],
    ['dad has collapsed', /^Call emergency services now/, /chest/],
    ['ben is having an allergic reaction', /^Use their adrenaline pen/, /emergency services/],
  ])('%s', async (text, first, then) => {
    const session = await roasting();
    const reply = await hear(session, '17:30', text);
    expect(reply).toMatch(first);
    expect(reply).toMatch(then);
  });

  it('names who takes over, and calls only what cannot wait until the cook is back', async () => {
    const session = await roasting();
    await hear(session, '17:00', 'Sam is helping');
    expect(await hear(session, '17:20', 'I burnt my hand')).toMatch(/Sam takes over: .*pull/);
    const away = await session.wake(at('18:25'));
    expect(away.length).toBeGreaterThan(0);
    expect(new Set(kinds(away))).toEqual(new Set(['pull']));
    expect((await session.view(at('18:25'))).emergency?.kind).toBe('burn');
    await hear(session, '18:26', "I'm back");
    expect((await session.view(at('18:26'))).emergency).toBeUndefined();
    await hear(session, '18:27', "it's out");
    expect(new Set(kinds(await session.wake(at('18:55')))).size).toBeGreaterThan(1);
  });

  it('of which nothing more is heard does not silence the days after', async () => {
    const session = await opened();
    await session.hear({
      text: 'seven pound three bone rib roast, dinner on saturday at seven for six, medium rare',
      at: at('10:00', '2026-12-16'),
    });
    await session.hear({ text: 'gran has fallen over', at: at('10:05', '2026-12-16') });
    const calls = await session.wake(at('21:00', '2026-12-18'));
    expect(calls.map((call) => call.step)).toContain('salt-ahead');
  });
});

describe('stress', () => {
  it('hears one step, the next, and what can be dropped', async () => {
    const session = await roasting();
    const reply = await hear(session, '17:05', "I can't do this");
    expect(reply).toMatch(/one thing at a time/);
    expect(reply).toMatch(/You could drop the/);
    expect(await hear(session, '17:06', 'drop the green beans')).toMatch(/green beans/);
    expect(await hear(session, '17:07', "I can't cope")).not.toMatch(/drop the green beans/);
  });
});

describe('guests', () => {
  it('are noted once, said back, and kept to the table', async () => {
    const session = await opened();
    await hear(session, '12:00', dinner);
    await hear(session, '12:01', 'ben is allergic to mustard');
    await hear(session, '12:02', 'my sister is pregnant');
    await hear(session, '12:03', 'ola is vegetarian');
    await hear(session, '12:04', 'dad wants his well done');
    const said = await hear(session, '12:05', 'how many are we');
    for (const one of [/no mustard for Ben/, /your sister/, /Ola is vegetarian/, /your dad/])
      expect(said).toMatch(one);
    expect(await hear(session, '12:06', 'shopping list')).toMatch(/dijon mustard \(not for Ben\)/);
    const forgotten = await hear(session, '12:07', 'who have I forgotten');
    expect(forgotten).toMatch(/Of the other 2/);
    expect(forgotten).toMatch(/eats early or comes late/);
    expect(forgotten).not.toMatch(/who is allergic/);
    expect((await session.view(at('12:08'))).guestNotes).toContainEqual({
      who: 'ben',
      need: 'allergy',
      value: 'mustard',
    });
  });

  it('who do not come after all are forgotten, and counted out', async () => {
    const session = await opened();
    await hear(session, '12:00', dinner);
    await hear(session, '12:01', 'ben is allergic to nuts');
    await hear(session, '12:02', 'uncle jim wants his well done');
    await hear(session, '12:03', "ben can't make it");
    const { guests, guestNotes } = await session.view(at('12:04'));
    expect(guests).toBe(5);
    expect(guestNotes.map((note) => note.need)).toEqual(['doneness']);
    expect(await hear(session, '12:05', 'what have you noted about the guests')).toMatch(
      /well done for your uncle Jim/,
    );
  });

  it('told twice of one thing have the later one', async () => {
    const session = await opened();
    await hear(session, '12:00', dinner);
    await hear(session, '12:01', 'the kids eat at half five');
    await hear(session, '12:02', 'the kids eat at six');
    expect((await session.view(at('12:03'))).guestNotes).toEqual([
      { who: 'kids', need: 'eats-at', value: '18:00' },
    ]);
  });
});

describe('a table that is not a household’s', () => {
  it('hears of local codes and licensed people once, unasked', async () => {
    const session = await opened();
    const first = await hear(session, '12:00', dinner);
    expect(first).not.toMatch(/licensed/);
    expect(await hear(session, '12:01', "we're cooking for a church supper")).toMatch(
      /Local food codes and licensed professionals come first/,
    );
    expect(await hear(session, '12:02', 'what is next')).not.toMatch(/licensed/);
  });
});

describe('a gentle oven', () => {
  // foodsafety.gov, roasting charts: an oven of 325 °F or hotter.
  it('is told of the consumer chart, once', async () => {
    const session = await opened();
    await hear(session, '12:00', dinner);
    expect(await hear(session, '12:01', 'reverse sear')).toMatch(/325 °F or hotter/);
    expect(await hear(session, '12:02', 'what is next')).not.toMatch(/325/);
  });
});
