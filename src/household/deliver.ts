/**
 * Announcements on their way out: one queue a sink, order kept, retried with back-off, dropped when
 * expired. A sink that is down delays no other and never the cook.
 */
import type { Instant } from '../base/time.ts';
import type { Announcement } from '../session/ports.ts';
import type { Household, Kept } from './household.ts';

export interface Sink {
  readonly name: string;
  /** Rejects when it did not arrive. `signal` ends it when the program ends. */
  send(announcement: Announcement, dinner: string, signal: AbortSignal): Promise<void>;
}

const firstWaitMilliseconds = 500;
const longestWaitMilliseconds = 30_000;

/** Feeds a sink from a household until `signal` ends it. */
export async function deliverTo(
  sink: Sink,
  options: { household: Household; now(): Instant; signal: AbortSignal },
): Promise<void> {
  const { household, now, signal } = options;
  let queue: Promise<void> = Promise.resolve();
  const add = (kept: Kept, announcement: Announcement): void => {
    // A simulated dinner's clock jumps; its announcements live as long as they would have.
    const life = announcement.expiresAt - announcement.at;
    const until = household.clock === 'real' ? announcement.expiresAt : now() + life;
    queue = queue
      .then(async () => {
        if (await sent(sink, announcement, kept.id, { until, now, signal }))
          await kept.session.delivered([announcement.id], sink.name);
      })
      .catch(() => undefined);
  };
  const off = household.listen(({ dinner, announcements }) => {
    for (const one of announcements) add(dinner, one);
  });
  signal.addEventListener('abort', off, { once: true });
  const open = await household.current();
  if (!open) return;
  for (const one of await open.session.undelivered(sink.name, now())) add(open, one);
}

async function sent(
  sink: Sink,
  announcement: Announcement,
  dinner: string,
  options: { until: Instant; now(): Instant; signal: AbortSignal },
): Promise<boolean> {
  const { until, now, signal } = options;
  for (let wait = firstWaitMilliseconds; now() < until && !signal.aborted; wait *= 2) {
    try {
      await sink.send(announcement, dinner, signal);
      return true;
    } catch {
      await rested(Math.min(wait, longestWaitMilliseconds, until - now()), signal);
    }
  }
  return false;
}

const rested = (milliseconds: number, signal: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    const end = (): void => {
      clearTimeout(timer);
      signal.removeEventListener('abort', end);
      resolve();
    };
    const timer = setTimeout(end, Math.max(0, milliseconds));
    signal.addEventListener('abort', end, { once: true });
  });
