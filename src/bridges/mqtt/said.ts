/**
 * What comes in on the `say` topic: plain words, or JSON with the words and where the answer goes.
 */
import type { Inbound } from './line.ts';

export interface SaidOnBus {
  text: string;
  /** The sender's own number for it; the same number again is the same words again. */
  id?: string | undefined;
  device?: string | undefined;
  /** Where the answer is awaited. */
  replyTo: string;
}

/** More than this is no sentence; what is cut off is not missed. */
const payloadBytesAtMost = 256 * 1024;
const nameCharactersAtMost = 200;
const topicBytesAtMost = 1_000;

/** Undefined for nothing at all, which is how a kept message is cleared. */
export function saidIn(message: Inbound, base: string): SaidOnBus | undefined {
  if (message.payload.length === 0) return undefined;
  const payload = message.payload.subarray(0, payloadBytesAtMost).toString('utf8');
  const body = objectIn(payload);
  const wished = message.responseTopic ?? body?.reply_to;
  return {
    text: body ? (typeof body.text === 'string' ? body.text : '') : payload,
    id: nameIn(body?.id),
    device: nameIn(body?.device),
    replyTo: isAnswerable(wished, base) ? wished : `${base}/reply`,
  };
}

/** Plain words that happen to begin with a brace are still words. */
function objectIn(payload: string): Record<string, unknown> | undefined {
  if (!payload.trimStart().startsWith('{')) return undefined;
  try {
    return JSON.parse(payload) as Record<string, unknown>;
  } catch {
    return undefined;
  }
}

function nameIn(value: unknown): string | undefined {
  if (typeof value === 'number' && Number.isFinite(value)) return String(value);
  if (typeof value !== 'string' || value === '') return undefined;
  return value.slice(0, nameCharactersAtMost);
}

/**
 * A topic that an answer may go to. Not the bridge's own, where it would be heard as words or stand
 * for a state, and none that MQTT keeps for patterns or for the broker (MQTT 5.0, section 4.7).
 */
function isAnswerable(topic: unknown, base: string): topic is string {
  return (
    typeof topic === 'string' &&
    topic !== '' &&
    Buffer.byteLength(topic) <= topicBytesAtMost &&
    !topic.startsWith('$') &&
    !/[+#\0]/.test(topic) &&
    (topic === `${base}/reply` ||
      topic.startsWith(`${base}/reply/`) ||
      !(topic === base || topic.startsWith(`${base}/`)))
  );
}
