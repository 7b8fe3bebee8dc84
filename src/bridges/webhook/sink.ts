/** Announcements out to a URL, each as one POST of JSON. Anything but a 2xx is tried again. */
import type { Sink } from '../../household/deliver.ts';
import { announcementOnWire } from '../wire.ts';

const patienceMilliseconds = 10_000;

export function webhookSink(url: URL, timeZoneOf: (dinner: string) => Promise<string>): Sink {
  return {
    name: `webhook:${url.host}`,
    async send(announcement, dinner, signal) {
      const body = { dinner, ...announcementOnWire(announcement, await timeZoneOf(dinner)) };
      const response = await fetch(url, {
        method: 'POST',
        redirect: 'error',
        headers: {
          'content-type': 'application/json',
          // A receiver that got it twice can tell.
          'idempotency-key': JSON.stringify(`${dinner}/${announcement.id}`),
        },
        body: JSON.stringify(body),
        signal: AbortSignal.any([signal, AbortSignal.timeout(patienceMilliseconds)]),
      });
      await response.body?.cancel();
      if (!response.ok) throw new Error(`answered ${response.status}`);
    },
  };
}
