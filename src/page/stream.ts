/**
 * Server-sent events read by fetch: unlike EventSource it can begin at a chosen position and tells
 * the status of a refusal. The format is the HTML standard's, section 9.2.
 */
import type { KitchenEvent } from './wire.ts';

/** The kitchen answered, but with a refusal. */
export class Refused extends Error {
  readonly status: number;
  constructor(status: number, detail: string) {
    super(detail);
    this.status = status;
  }
}

/** Splits a growing text into whole events; keeps the unfinished rest. */
export function eventReader(): (text: string) => KitchenEvent[] {
  let rest = '';
  return (text) => {
    const blocks = (rest + text).split(/\r?\n\r?\n/);
    rest = blocks.pop() ?? '';
    return blocks.flatMap(eventOf);
  };
}

function eventOf(block: string): KitchenEvent[] {
  const fields = new Map<string, string>();
  for (const line of block.split(/\r?\n/)) {
    const [, name, value] = /^([a-z]+):? ?(.*)$/.exec(line) ?? [];
    if (name === undefined || value === undefined) continue;
    const before = fields.get(name);
    fields.set(name, name === 'data' && before !== undefined ? `${before}\n${value}` : value);
  }
  const event = fields.get('event');
  const data = fields.get('data');
  if (data === undefined) return [];
  if (event !== 'turn' && event !== 'announcement' && event !== 'view') return [];
  return [{ event, position: Number(fields.get('id')), data: JSON.parse(data) } as KitchenEvent];
}

/** The kitchen sends a sign of life every 15 s; without one for so long the line is dead. */
const silenceMilliseconds = 40_000;

/** Reads events after `last` until the line breaks, the kitchen ends it or `signal` does. */
export async function readEvents(
  dinner: string,
  options: { last: number; signal: AbortSignal; open(): void; take(events: KitchenEvent[]): void },
): Promise<void> {
  const { last, signal, open, take } = options;
  const dead = new AbortController();
  const stop = (): void => dead.abort();
  signal.addEventListener('abort', stop, { once: true });
  if (signal.aborted) stop();
  let watch = setTimeout(stop, silenceMilliseconds);
  try {
    const response = await fetch(`/api/dinners/${encodeURIComponent(dinner)}/stream`, {
      headers: { 'last-event-id': String(last) },
      signal: dead.signal,
    });
    if (!response.ok || !response.body) throw await refusalOf(response);
    open();
    const events = eventReader();
    const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
    for (let read = await reader.read(); !read.done; read = await reader.read()) {
      clearTimeout(watch);
      watch = setTimeout(stop, silenceMilliseconds);
      const come = events(read.value);
      if (come.length > 0) take(come);
    }
  } finally {
    clearTimeout(watch);
    signal.removeEventListener('abort', stop);
  }
}

export async function refusalOf(response: Response): Promise<Refused> {
  const problem = await response.json().catch(() => ({}));
  return new Refused(response.status, String(problem?.detail ?? response.statusText));
}
