/** A technique told next by next, moved on by what the cook says; and the ice test. */
import { describe, expect, it } from 'vitest';
import type { Session } from '../../src/session/ports.ts';
import { at, cards, opened } from '../harness/day.ts';

const inOneBreath = 'seven pound three bone rib roast, dinner at seven for six, medium rare';

const planned = async (): Promise<Session> => {
  const session = await opened();
  await session.hear({ text: inOneBreath, at: at('13:30') });
  return session;
};

async function say(session: Session, time: string, text: string) {
  const turn = await session.hear({ text, at: at(time) });
  return { ...turn, text: turn.replies[0]?.text ?? '', speech: turn.replies[0]?.speech ?? '' };
}

const french = cards
  .find((card) => card.id === 'rib-roast')
  ?.steps.find((one) => one.id === 'french');

describe('how a step is done', () => {
  it('is a list for eyes and one line for ears', async () => {
    const { text, speech } = await say(await planned(), '13:31', 'how do I french the bones');
    for (const line of french?.how ?? []) expect(text).toContain(line);
    expect(text).toContain(french?.wrong);
    expect(speech).toContain(french?.how[0]);
    expect(speech).not.toContain(french?.how[1]);
  });

  it('goes on next by next to how it should look and what to do when it does not', async () => {
    const session = await planned();
    await say(session, '13:31', 'how do I french the bones');
    const lines = [...(french?.how.slice(1) ?? [])];
    for (const line of lines) expect((await say(session, '13:32', 'next')).text).toBe(line);
    expect((await say(session, '13:33', 'next')).text).toMatch(
      /^Look for this: the bones are bare/,
    );
    const last = await say(session, '13:34', 'next');
    expect(last.text).toContain(french?.wrong);
    expect(last.text).toMatch(/tell me when it is done/i);
    // And then next is the plan's again.
    expect((await say(session, '13:35', 'next')).text).not.toContain('Look for this');
  });

  it('keeps its place while the cook only says okay', async () => {
    const session = await planned();
    await say(session, '13:31', 'how do I french the bones');
    await say(session, '13:32', 'thanks');
    expect((await say(session, '13:33', 'next')).text).toBe(french?.how[1]);
  });

  it('is over when the step is done', async () => {
    const session = await planned();
    await say(session, '13:31', 'how do I french the bones');
    const done = await say(session, '13:50', 'the bones are frenched');
    expect(done.text).toMatch(/^Good: the bones are frenched\./);
    expect((await say(session, '13:51', 'next')).text).not.toBe(french?.how[1]);
  });
});

describe('the thermometer in ice water', () => {
  // Ice and water stand at 32 °F (USDA FSIS, kitchen thermometers: calibration in ice water).
  const asked = async (): Promise<Session> => {
    const session = await planned();
    for (let now = at('14:00'); now < at('17:00'); now += 5 * 60_000)
      for (const call of await session.wake(now))
        if (call.step === 'check-thermometer') return session;
    throw new Error('the ice test was not called');
  };
  const calledAt = async (session: Session): Promise<string> => {
    const facts = await session.facts();
    const last = facts.at(-1)?.at ?? 0;
    const minutes = Math.round((last - at('00:00')) / 60_000) + 2;
    return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
  };

  it('is no start of the roast', async () => {
    const session = await asked();
    const turn = await say(session, await calledAt(session), 'it reads 32');
    expect(turn.text).toMatch(/reads true/);
    expect(turn.view.steps.find((step) => step.id === 'check-thermometer')?.state).toBe('done');
    expect(
      (await session.facts()).some(
        (fact) => fact.type === 'roast-described' && fact.startCelsius !== undefined,
      ),
    ).toBe(false);
  });

  it('that reads high moves the number to pull at on its own display, not the pull', async () => {
    const session = await asked();
    const before = (await session.view(at('16:00'))).target.pullFahrenheit;
    const turn = await say(session, await calledAt(session), 'it reads 35');
    expect(turn.text).toMatch(/3 °F high/);
    // The pull itself stays where the rest wants it, but for a degree of rounding.
    const pull = turn.view.target.pullFahrenheit ?? 0;
    expect(Math.abs(pull - (before ?? 0))).toBeLessThanOrEqual(1);
    const answer = await say(session, '16:30', 'what do I pull it at');
    expect(answer.text).toContain(`Pull it at ${Math.round(pull + 3)} °F`);
  });

  it('far from the ice point is not to be trusted', async () => {
    const session = await asked();
    const turn = await say(session, await calledAt(session), 'it reads 43');
    expect(turn.text).toMatch(/not trust/);
  });
});
