/**
 * Announcements on their way out, each through every sink. That one arrived is a fact of its
 * dinner, so a restart neither loses nor repeats it. A sink that is down delays no other and never
 * the cook.
 */

import type { Announcement } from '../session/ports.ts';
import type { Agenda, Sending } from './agenda.ts';
import type { Household, Kept } from './household.ts';
import { NotNow, Outbox } from './outbox.ts';

/** The dinner that an announcement belongs to. */
export interface Calling {
  id: string;
  timeZone: string;
}

export interface Sink {
  /**
   * Stands in the log with what was delivered: the same after a restart, no other sink's, no
   * secret.
   */
  readonly name: string;
  /** One attempt may take so long; 10 seconds unless it says. */
  readonly patienceMilliseconds?: number;
  /** Somebody listens to it, so an urgent call goes before what is waiting. */
  readonly urgentFirst?: boolean;
  /** Rejects when it did not arrive, or with NotNow. `signal` ends the attempt. */
  send(announcement: Announcement, dinner: Calling, signal: AbortSignal): Promise<void>;
}

export interface Delivering {
  household: Household;
  /** Milliseconds that only ever grow, whatever happens to the clock on the wall. */
  ticks(): number;
  /** A sink has begun to fail (why), or is well again (undefined). */
  trouble?(sink: string, why: Error | undefined): void;
}

export interface Delivery {
  /** The sink may be reachable again. */
  hurry(): void;
  /** Waits a moment for what is half way out, so that it is not sent again by the next process. */
  close(): Promise<void>;
}

const usualPatienceMilliseconds = 10_000;
const graceMilliseconds = 2_000;
/** A claim is prolonged so often while its announcement is under way. */
const holdMilliseconds = 2_000;
/** What another process sends is looked at again after so long. */
const elsewhereMilliseconds = 1_000;

/** Feeds a sink from a household until it is closed. */
export async function deliverTo(sink: Sink, options: Delivering): Promise<Delivery> {
  const { household, ticks, trouble } = options;
  const outbox = new Outbox<{ kept: Kept; announcement: Announcement }>({
    send: async ({ kept, announcement }, signal) => {
      const calling = { id: kept.id, timeZone: await zoneOf(kept) };
      const send = () => sink.send(announcement, calling, signal);
      const { agenda } = household;
      if (!agenda) return send();
      const { id: dinner } = kept;
      const sending = { dinner, announcement: announcement.id, sink: sink.name };
      if (await isDelivered(kept, sending)) return;
      await sendingAlone(agenda, sending, send);
    },
    arrived: async ({ kept, announcement }) => {
      await household.delivered(kept, [announcement.id], sink.name);
    },
    ticks,
    patienceMilliseconds: sink.patienceMilliseconds ?? usualPatienceMilliseconds,
    urgentFirst: sink.urgentFirst ?? false,
    trouble: (why) => trouble?.(sink.name, why),
  });
  const add = (kept: Kept, announcement: Announcement): void => {
    const { id, at, expiresAt, urgency } = announcement;
    outbox.add({
      item: { kept, announcement },
      name: `${kept.id}/${id}`,
      // A simulated dinner's clock jumps; its announcements live as long as they would have.
      liveMilliseconds: expiresAt - (household.clock === 'real' ? household.now() : at),
      urgent: urgency === 'high',
    });
  };
  // What an earlier process left goes first; what is raised while it is read waits behind it.
  const fresh: (() => void)[] = [];
  let reading = true;
  const addLeft = async (kept: Kept): Promise<void> => {
    const left = await kept.session.undelivered(sink.name, household.now());
    for (const one of left) add(kept, one);
  };
  const off = household.listen(({ dinner, announcements, elsewhere }) => {
    if (elsewhere) void addLeft(dinner).catch(() => undefined);
    for (const one of announcements) {
      if (reading) fresh.push(() => add(dinner, one));
      else add(dinner, one);
    }
  });
  for (const kept of await household.watch()) await addLeft(kept);
  reading = false;
  for (const take of fresh) take();
  return {
    hurry: () => outbox.hurry(),
    close: () => {
      off();
      return outbox.close(graceMilliseconds);
    },
  };
}

/** Another process may have the same sink: while it sends, this one waits and then looks again. */
async function sendingAlone(
  agenda: Agenda,
  sending: Sending,
  send: () => Promise<void>,
): Promise<void> {
  if (!(await agenda.claim(sending)))
    throw new NotNow('another process sends it', elsewhereMilliseconds);
  const hold = setInterval(() => void agenda.claim(sending).catch(() => false), holdMilliseconds);
  try {
    await send();
  } finally {
    clearInterval(hold);
  }
}

const isDelivered = async (kept: Kept, { announcement, sink }: Sending): Promise<boolean> =>
  (await kept.session.facts()).some(
    (fact) => fact.type === 'delivered' && fact.id === announcement && fact.sink === sink,
  );

async function zoneOf(kept: Kept): Promise<string> {
  const [opening] = await kept.session.facts();
  return opening?.type === 'dinner-opened' ? opening.timeZone : 'UTC';
}
