/**
 * Announcements spoken by a home server: each is one call of a service of its REST interface, with
 * a bearer token. Knows how such a server speaks; nothing of dinners.
 */
import type { Sink } from '../../household/deliver.ts';
import { NotNow } from '../../household/outbox.ts';
import type { Announcement } from '../../session/ports.ts';
import { sinkName } from '../sink-name.ts';
import { idempotencyKey } from '../wire.ts';

export interface HouseOptions {
  /** Where the server's own pages are; the REST interface lies under `api/`. */
  url: URL;
  token: string;
  /** `domain.service`, as the server names its services. */
  service: string;
  /** What the service wants beside the message, such as the entity that is to speak. */
  data: Readonly<Record<string, string>>;
}

/** The server answers when the words are spoken, or after ten seconds of its own. */
const patienceMilliseconds = 20_000;
const askAgainMilliseconds = 1_000;
const stateMilliseconds = 2_000;
const stateBytesAtMost = 256 * 1024;

/** Satellites in these states are with the cook; a call would cut the cook off. */
const withTheCook = new Set(['listening', 'processing', 'responding']);

/** Services of these domains hand the message to a screen; the others speak it. */
const silentDomains = new Set(['notify', 'persistent_notification']);

export function houseSink({ url, token, service, data }: HouseOptions): Sink {
  const [domain = '', name = ''] = service.split('.');
  const base = url.href.replace(/\/*$/, '/');
  const headers = { authorization: `Bearer ${token}`, 'content-type': 'application/json' };
  const satellite = domain === 'assist_satellite' ? data.entity_id : undefined;
  return {
    name: sinkName('house', url.host, url.href, service, JSON.stringify(data)),
    patienceMilliseconds,
    urgentFirst: true,
    async send(announcement, dinner, signal) {
      if (satellite !== undefined && announcement.urgency !== 'high')
        await leaveAlone(`${base}api/states/${satellite}`, headers, signal);
      const response = await fetch(`${base}api/services/${domain}/${name}`, {
        method: 'POST',
        redirect: 'error',
        headers: { ...headers, 'idempotency-key': idempotencyKey(dinner.id, announcement.id) },
        body: JSON.stringify({ ...data, message: messageOf(announcement, domain) }),
        signal,
      });
      await response.body?.cancel();
      if (response.status === 401) throw new Error('answered 401: the token is not known there');
      if (!response.ok) throw new Error(`answered ${response.status}`);
    },
  };
}

const messageOf = ({ text, speech }: Announcement, domain: string): string =>
  silentDomains.has(domain) ? text : speech;

/**
 * Rejects with NotNow while the satellite talks with the cook; a server that cannot say is no bar.
 */
async function leaveAlone(
  url: string,
  headers: Record<string, string>,
  signal: AbortSignal,
): Promise<void> {
  let state: unknown;
  try {
    const patience = AbortSignal.timeout(stateMilliseconds);
    const response = await fetch(url, { headers, signal: AbortSignal.any([signal, patience]) });
    state = (JSON.parse(await beginningOf(response)) as { state?: unknown } | null)?.state;
  } catch {
    return;
  }
  if (typeof state === 'string' && withTheCook.has(state))
    throw new NotNow(`the satellite is ${state}`, askAgainMilliseconds);
}

/** A state is short; a server that goes on and on is not heard out. */
async function beginningOf(response: Response): Promise<string> {
  const chunks: Uint8Array[] = [];
  let bytes = 0;
  for await (const chunk of response.body ?? []) {
    chunks.push(chunk);
    bytes += chunk.length;
    if (bytes > stateBytesAtMost) throw new Error('too long for a state');
  }
  return Buffer.concat(chunks).toString('utf8');
}
