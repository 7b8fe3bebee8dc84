import { PassThrough } from 'node:stream';
import { describe, expect, it } from 'vitest';
import { type Alarm, talk } from '../../src/bridges/terminal/talk.ts';
import type { Fact } from '../../src/kitchen/facts.ts';
import { at, call, type FakeWorld, fakeOpener } from '../rehearsal/fake-session.ts';

const escapeCode = String.fromCharCode(27);

const plain = {
  reply: (text: string) => text,
  announcement: (text: string) => text,
  aside: (text: string) => text,
};

/** A terminal whose clock and alarm are the test's. */
async function terminal(world: FakeWorld, options: { now: string; interactive: boolean }) {
  let now = at(options.now);
  let armed: { at: number; ring: () => void } | undefined;
  const alarm: Alarm = {
    set: (due, ring) => {
      armed = { at: due, ring };
    },
    clear: () => {
      armed = undefined;
    },
  };
  const [input, output] = [new PassThrough(), new PassThrough()];
  let shown = '';
  output.setEncoding('utf8').on('data', (text: string) => {
    shown += text;
  });
  const session = await fakeOpener(world)();
  const clock = { now: () => now };
  const { interactive } = options;
  const done = talk({ session, clock, alarm, input, output, interactive, style: plain });
  const settle = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 20));
  await settle();
  return {
    shown: () => shown,
    armedAt: () => armed?.at,
    type: async (text: string) => {
      input.write(text);
      await settle();
    },
    ringAt: async (time: string) => {
      now = at(time);
      armed?.ring();
      await settle();
    },
    end: () => {
      input.end();
      return done;
    },
  };
}

describe('the terminal', () => {
  it('says an announcement unasked and gives the half-typed line back', async () => {
    const world: FakeWorld = { calls: [call('16:05', 'oven-change')], said: [] };
    const chat = await terminal(world, { now: '16:00', interactive: true });
    expect(chat.armedAt()).toBe(at('16:05'));
    await chat.type('it reads 1');
    const before = chat.shown().length;
    await chat.ringAt('16:05');
    const after = chat.shown().slice(before);
    // The line is cleared, the call stands on a line of its own, and what was typed comes back.
    expect(after.startsWith(`${escapeCode}[2K`)).toBe(true);
    expect(after).toMatch(/16:05 {2}oven-change now\n.*> it reads 1/s);
    await chat.type('04\n');
    expect(world.said).toMatchObject([{ text: 'it reads 104', source: 'cook' }]);
    await chat.end();
    expect(chat.armedAt()).toBeUndefined();
  });

  it('says each call once, and sets the timer for the next', async () => {
    const world = { calls: [call('16:05', 'oven-change'), call('16:30', 'side-in')] };
    const chat = await terminal(world, { now: '16:00', interactive: false });
    await chat.ringAt('16:05');
    expect(chat.armedAt()).toBe(at('16:30'));
    await chat.ringAt('16:06');
    await chat.end();
    expect(chat.shown().match(/oven-change now/g)).toHaveLength(1);
    expect(chat.shown()).not.toContain('side-in');
  });

  it('tells in one sentence what was missed while it was closed, and what comes first', async () => {
    const calls = [
      call('15:10', 'oven-change', { expiresAt: at('15:20') }),
      call('15:20', 'side-in', { expiresAt: at('15:30') }),
      call('15:50', 'pull', { text: 'Take it out now.', urgency: 'high', expiresAt: at('16:20') }),
      call('15:55', 'check-due', { text: 'Take a reading.' }),
    ];
    const facts = [{ type: 'guests-counted' } as Fact];
    const chat = await terminal({ calls, facts }, { now: '16:00', interactive: false });
    await chat.end();
    expect(chat.shown()).toBe(
      'While I was away you missed 2 earlier calls, taking the roast out at 15:50 and ' +
        'a reading at 15:55; first now: Take it out now.\n',
    );
    const nothing = await terminal({ calls: [], facts }, { now: '16:00', interactive: false });
    await nothing.end();
    expect(nothing.shown()).toBe('Back at your dinner; it is 16:00.\n');
  });

  it('answers what was said before the input ended, and says a failure without ending', async () => {
    const reply = (text: string): string => {
      if (text === 'break') throw new Error('no butter');
      return `heard ${text}`;
    };
    const chat = await terminal({ calls: [], reply }, { now: '16:00', interactive: false });
    await chat.type('one\n\nbreak\ntwo');
    await chat.end();
    expect(chat.shown()).toMatch(/heard one\nThat did not work \(no butter\).*\nheard two\n$/s);
  });
});
