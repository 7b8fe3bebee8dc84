/** `roastcall talk`: the chat in the terminal, resuming the open dinner. */
import { randomInt } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import picocolors from 'picocolors';
import { hourMilliseconds, localTime } from '../../base/time.ts';
import { type Style, talk } from '../../bridges/terminal/talk.ts';
import { takeLock } from '../../journal/lock.ts';
import type { Card } from '../../kitchen/card.ts';
import { inThisThread } from '../../session/compute.ts';
import type { Journal, Session } from '../../session/ports.ts';
import { openSession } from '../../session/session.ts';
import { systemAlarm, systemClock } from '../clock.ts';
import { cardsOf, dataFolder, journalOf, openingOf } from '../household.ts';
import { Refusal } from '../refusal.ts';

export interface TalkCommandOptions {
  dinner?: string;
  data?: string;
  cards?: string;
}

/** A dinner so long past its last word and its table is over, though nobody said so. */
const overAfterMilliseconds = 24 * hourMilliseconds;

export async function talkCommand(options: TalkCommandOptions): Promise<number> {
  const folder = dataFolder(options.data);
  const journal = journalOf(folder);
  const session = await dinnerOf(options.dinner, journal, cardsOf(options.cards));
  mkdirSync(join(folder, 'locks'), { recursive: true });
  const lock = takeLock(join(folder, 'locks', `${encodeURIComponent(session.id)}.lock`));
  if (!lock)
    throw new Refusal(
      `Dinner ${session.id} is being cooked by another roastcall; close that one, or name another dinner with --dinner.`,
      1,
    );
  const interactive = process.stdin.isTTY === true && process.stdout.isTTY === true;
  await talk({
    session,
    clock: systemClock,
    alarm: systemAlarm(),
    input: process.stdin,
    output: process.stdout,
    interactive,
    style: styleOf(interactive),
  });
  await journal.close();
  lock.release();
  return 0;
}

/** The dinner that is named, or the open one, or a new one. */
async function dinnerOf(
  named: string | undefined,
  journal: Journal,
  cards: readonly Card[],
): Promise<Session> {
  const opening = openingOf(randomInt(1, 2 ** 31));
  const open = (dinner: string): Promise<Session> =>
    openSession({ dinner, journal, compute: inThisThread, cards, opening });
  if (named !== undefined) return open(named);
  const now = systemClock.now();
  const dinners = await journal.dinners();
  const newest = dinners[0];
  if (newest) {
    const session = await open(newest.id);
    const view = await session.view(now);
    const table = view.serving.wanted === undefined ? 0 : Date.parse(view.serving.wanted);
    const lately = Math.max(newest.lastAt, table) > now - overAfterMilliseconds;
    if (view.stage !== 'put-away' && lately) return session;
  }
  return open(freshName(localTime(now, opening.timeZone).date, dinners));
}

/** A new dinner is called by its day: "2026-12-19", the second of a day "2026-12-19-2". */
function freshName(date: string, dinners: readonly { id: string }[]): string {
  const taken = new Set(dinners.map((one) => one.id));
  for (let n = 1; ; n += 1) {
    const name = n === 1 ? date : `${date}-${n}`;
    if (!taken.has(name)) return name;
  }
}

function styleOf(interactive: boolean): Style {
  const paint = picocolors.createColors(interactive && picocolors.isColorSupported);
  return {
    reply: (text) => text,
    announcement: (text, urgent) => (urgent ? paint.bold(paint.yellow(text)) : paint.yellow(text)),
    aside: (text) => paint.dim(text),
  };
}
