/**
 * A dinner's events as they are written. Everything comes from the log by position, so nothing is
 * lost or doubled however often a reader comes back.
 */

import type { ServerResponse } from 'node:http';
import type { Household, Kept } from '../../household/household.ts';
import type { Fact, FactOf } from '../../kitchen/facts.ts';
import type { View } from '../../kitchen/view.ts';
import { announcementOf } from '../../session/announcement.ts';
import { announcementOnWire } from '../wire.ts';

const keepAliveMilliseconds = 15_000;
/** A reader that takes nothing is let go; it comes back with its last position. */
const unreadBytesAtMost = 4_000_000;

/** Writes events after `lastSeen` (undefined: from now on) until the reader leaves. */
export function streamTo(
  response: ServerResponse,
  options: { household: Household; kept: Kept; lastSeen: number | undefined },
): void {
  const { household, kept } = options;
  let cursor = options.lastSeen;
  let begun = false;
  let work: Promise<void> = Promise.resolve();
  const write = (event: string, position: number, data: unknown): void => {
    response.write(`id: ${position}\nevent: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
    if (response.writableLength > unreadBytesAtMost) response.destroy();
  };
  const follow = async (made?: View): Promise<void> => {
    const facts = await household.facts(kept);
    const last = facts.at(-1)?.position ?? -1;
    const from = Math.min(cursor ?? last, last);
    if (begun && from === last) return;
    const view = made?.position === last ? made : await household.view(kept);
    for (const fact of facts.slice(from + 1)) {
      if (fact.type === 'replied') write('turn', fact.position, turnOf(fact, facts));
      if (fact.type === 'announced')
        write(
          'announcement',
          fact.position,
          announcementOnWire(announcementOf(fact), view.timeZone),
        );
    }
    write('view', last, view);
    begun = true;
    cursor = last;
  };
  const next = (made?: View): void => {
    work = work.then(() => follow(made)).catch(() => void response.destroy());
  };
  response.writeHead(200, {
    'content-type': 'text/event-stream; charset=utf-8',
    'cache-control': 'no-store',
    'x-accel-buffering': 'no',
  });
  response.write('retry: 2000\n\n');
  const off = household.follow(kept, ({ view }) => next(view));
  const beat = setInterval(() => response.write(': here\n\n'), keepAliveMilliseconds);
  response.on('close', () => {
    off();
    clearInterval(beat);
  });
  next();
}

function turnOf(reply: FactOf<'replied'>, facts: readonly Fact[]): object {
  const words = facts.findLast(
    (fact): fact is FactOf<'words-heard'> =>
      fact.type === 'words-heard' && fact.position < reply.position,
  );
  const { text, speech, wording } = reply;
  return {
    text: words?.text,
    source: words?.source,
    heard: words?.heard ?? [],
    replies: text === '' ? [] : [{ text, speech, key: wording.join(' ') }],
  };
}
