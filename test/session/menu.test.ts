/** What comes with a roast unasked, what another cut changes, and dishes for which there is no card. */
import { describe, expect, it } from 'vitest';
import type { Session } from '../../src/session/ports.ts';
import { at, opened } from '../harness/day.ts';

async function openedWith(...said: string[]): Promise<Session> {
  const session = await opened();
  for (const text of said) await hear(session, text);
  return session;
}

let minute = 0;
async function hear(session: Session, text: string): Promise<string> {
  minute += 1;
  const turn = await session.hear({ text, at: at('10:00') + minute * 1000 });
  return turn.replies.map((reply) => reply.text).join(' ');
}

async function sides(session: Session): Promise<string[]> {
  return (await session.view(at('10:30'))).sides.map((side) => side.id).sort();
}

const beef = 'seven pound three bone rib roast, dinner at seven for six, medium rare';
const lamb = 'a five pound leg of lamb, dinner at seven for six, medium';
const always = ['green-beans', 'herb-butter', 'roast-potatoes'];

describe('what comes with a roast', () => {
  // Horseradish with beef, mint with lamb, apple with pork: common practice, no source.
  it.each([
    [beef, 'horseradish-cream'],
    [lamb, 'mint-sauce'],
    ['a four pound pork loin, dinner at seven for six', 'apple-sauce'],
  ])('%s', async (text, sauce) => {
    expect(await sides(await openedWith(text))).toEqual([...always, sauce].sort());
  });

  it('follows the cut when that is mended, and the reply says so', async () => {
    const session = await openedWith(beef);
    expect(await hear(session, "no, it's a leg of lamb")).toMatch(
      /mint sauce in place of horseradish cream/,
    );
    expect(await sides(session)).toEqual([...always, 'mint-sauce'].sort());
    await hear(session, "it's a rib roast after all");
    expect(await sides(session)).toEqual([...always, 'horseradish-cream'].sort());
  });

  it('stays with another cut where it was asked for or is begun', async () => {
    const asked = await openedWith(beef, 'add horseradish cream', "it's a leg of lamb");
    expect(await sides(asked)).toContain('horseradish-cream');
    const begun = await openedWith(beef, 'the horseradish is grated', "it's a leg of lamb");
    expect(await sides(begun)).toContain('horseradish-cream');
  });

  it('does not come back by itself once it was dropped', async () => {
    const session = await openedWith(beef, 'no horseradish cream', "it's a leg of lamb");
    expect(await sides(session)).not.toContain('horseradish-cream');
    await hear(session, "it's a rib roast");
    expect(await sides(session)).toEqual(always);
  });

  it('is not missed where it was not coming, and does not come later either', async () => {
    const session = await openedWith(lamb);
    expect(await hear(session, 'no horseradish cream')).toMatch(/was not on the menu/);
    await hear(session, "it's a rib roast");
    expect(await sides(session)).toEqual(always);
  });
});

describe('how done it is when the cut is mended', () => {
  const served = async (session: Session): Promise<number | undefined> =>
    (await session.view(at('10:30'))).target.serveFahrenheit;

  // USDA FSIS, safe minimum internal temperatures: whole cuts of pork 145 F and three minutes' rest.
  it('is never beef’s pink for pork, and is beef’s again for beef', async () => {
    const session = await openedWith(beef);
    expect(await served(session)).toBe(130);
    expect(await hear(session, "it's a pork loin")).toMatch(/145 °F in the middle, not pink/);
    expect(await served(session)).toBe(145);
    await hear(session, "no, it's a rib roast");
    expect(await served(session)).toBe(130);
  });

  it('is asked for where only pork’s own was known', async () => {
    const session = await openedWith('a four pound pork loin, dinner at seven for six');
    expect(await served(session)).toBe(145);
    await hear(session, "it's a rib roast");
    expect((await session.view(at('10:30'))).asking?.expecting).toBe('doneness');
  });
});

describe('a dish without a card', () => {
  it('is kept, told of, and not planned', async () => {
    const session = await openedWith(beef);
    const reply = await hear(session, 'add a trifle');
    expect(reply).toMatch(/no card for trifle/);
    expect(reply).toMatch(/set a timer when it goes in, or write a card/);
    expect(reply).toMatch(/Beside the roast now: .* and your trifle/);
    const view = await session.view(at('10:30'));
    expect(view.steps.filter((step) => step.card.includes('trifle'))).toEqual([]);
  });

  it('is one of a list, and each of the list is there', async () => {
    const session = await openedWith();
    const reply = await hear(
      session,
      `${beef}, with roasties, carrots, pigs in blankets and red wine jus`,
    );
    expect(reply).toMatch(/no card for pigs in blankets, so I do not plan them/);
    expect(reply).toMatch(/With it: .*your pigs in blankets/);
    // Who names the sides has named them all; the sauces and butters of the cut stay.
    expect(await sides(session)).toEqual([
      'glazed-carrots',
      'herb-butter',
      'horseradish-cream',
      'red-wine-jus',
      'roast-potatoes',
    ]);
  });

  it.each(['what are we having', "what's on the menu", 'what sides have we got'])(
    'is in the menu that is asked for: %s',
    async (text) => {
      const session = await openedWith(beef, 'add a trifle');
      expect(await hear(session, text)).toMatch(/^With the rib roast: .* and your trifle\.$/);
    },
  );

  it('is on the shopping list as the cook’s own', async () => {
    const session = await openedWith(beef, 'add a trifle');
    expect(await hear(session, 'what do I need to buy')).toMatch(/For the trifle: yours to say/);
  });

  it('is nothing that an allergy can be told of', async () => {
    const before = await openedWith(beef, 'add a trifle');
    expect(await hear(before, 'Ola is allergic to nuts')).toMatch(/in your trifle, I cannot know/);
    const after = await openedWith(beef, 'Ola is allergic to nuts');
    expect(await hear(after, 'add a trifle')).toMatch(/Whether Ola can eat it, I cannot know/);
  });

  it('goes when it is dropped, and when it is taken back', async () => {
    const session = await openedWith(beef, 'add a trifle');
    const reply = await hear(session, 'drop the trifle');
    expect(reply).toMatch(/No trifle/);
    expect(reply).not.toMatch(/your trifle/);
    await hear(session, 'add a cheese board');
    await hear(session, 'undo that');
    expect(await hear(session, 'add glazed carrots')).not.toMatch(/cheese board/);
  });
});
