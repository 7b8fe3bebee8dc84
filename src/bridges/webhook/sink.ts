/** Announcements out to a URL, each as one POST of JSON. Anything but a 2xx is tried again. */
import type { Sink } from '../../household/deliver.ts';
import { sinkName } from '../sink-name.ts';
import { announcementOnWire, idempotencyKey } from '../wire.ts';

export function webhookSink(url: URL): Sink {
  return {
    name: sinkName('webhook', url.host, url.href),
    async send(announcement, dinner, signal) {
      const body = { dinner: dinner.id, ...announcementOnWire(announcement, dinner.timeZone) };
      const response = await fetch(url, {
        method: 'POST',
        redirect: 'error',
        headers: {
          'content-type': 'application/json',
          'idempotency-key': idempotencyKey(dinner.id, announcement.id),
        },
        body: JSON.stringify(body),
        signal,
      });
      await response.body?.cancel();
      if (!response.ok) throw new Error(`answered ${response.status}`);
    },
  };
}
