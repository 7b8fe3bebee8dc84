/** `roastcall talk`: the chat in the terminal, resuming the open dinner. */
import { randomInt } from 'node:crypto';
import picocolors from 'picocolors';
import { hourMilliseconds, localTime } from '../../base/time.ts';
import { type Style, talk } from '../../bridges/terminal/talk.ts';
import type { Card } from '../../kitchen/card.ts';
import type { KitchenBelief } from '../../kitchen/forecast.ts';
import { inThisThread } from '../../session/compute.ts';
import { learntBefore } from '../../session/learnt.ts';
import type { Journal, Session } from '../../session/ports.ts';
import { openSession } from '../../session/session.ts';
import { systemAlarm, systemClock } from '../clock.ts';
import { cardsOf, openingOf } from '../household.ts';
import { type Place, withStore } from '../place.ts';
import { home, type Store } from '../store.ts';

export interface TalkCommandOptions extends Place {
  dinner?: string;
  cards?: string;
}

/** A dinner so long past its last word and its table is over, though nobody said so. */
const overAfterMilliseconds = 24 * hourMilliseconds;

export async function talkCommand(options: TalkCommandOptions): Promise<number> {
  return withStore(options, (store) => talkIn(store, options));
}

async function talkIn(store: Store, options: TalkCommandOptions): Promise<number> {
  const session = await dinnerOf(options.dinner, store.journal(home), cardsOf(options.cards));
  store.hold({ household: home, dinner: session.id });
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
  return 0;
}

/** The dinner that is named, or the open one, or a new one. */
async function dinnerOf(
  named: string | undefined,
  journal: Journal,
  cards: readonly Card[],
): Promise<Session> {
  const opening = openingOf(randomInt(1, 2 ** 31));
  const open = (dinner: string, kitchen?: KitchenBelief): Promise<Session> =>
    openSession({
      dinner,
      journal,
      compute: inThisThread,
      cards,
      opening: { ...opening, kitchen },
    });
  const dinners = await journal.dinners();
  const remembered = (): Promise<KitchenBelief | undefined> => learntBefore(journal, inThisThread);
  if (named !== undefined)
    return open(named, dinners.some((one) => one.id === named) ? undefined : await remembered());
  const now = systemClock.now();
  const newest = dinners[0];
  if (newest) {
    const session = await open(newest.id);
    const view = await session.view(now);
    const table = view.serving.wanted === undefined ? 0 : Date.parse(view.serving.wanted);
    const lately = Math.max(newest.lastAt, table) > now - overAfterMilliseconds;
    if (view.stage !== 'put-away' && lately) return session;
  }
  return open(freshName(localTime(now, opening.timeZone).date, dinners), await remembered());
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
