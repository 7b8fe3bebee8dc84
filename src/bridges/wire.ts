/** What goes over a wire instead of instants: ISO 8601 with the dinner's offset. */
import { isoWithOffset } from '../base/time.ts';
import type { Announcement } from '../session/ports.ts';

export interface WireAnnouncement extends Omit<Announcement, 'at' | 'expiresAt'> {
  at: string;
  expiresAt: string;
}

export const announcementOnWire = (one: Announcement, timeZone: string): WireAnnouncement => ({
  ...one,
  at: isoWithOffset(one.at, timeZone),
  expiresAt: isoWithOffset(one.expiresAt, timeZone),
});

/** A receiver that got one twice can tell; a structured-field string, as its draft header asks. */
export const idempotencyKey = (dinner: string, announcement: string): string =>
  JSON.stringify(`${dinner}/${announcement}`);
