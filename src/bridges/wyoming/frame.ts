/**
 * The framing of the Wyoming protocol: a JSON line, then so many bytes of JSON data, then so many
 * bytes of payload. Lengths are bytes; a payload is skipped, never kept.
 */

export interface WyomingEvent {
  type: string;
  data: Record<string, unknown>;
}

/** What no honest peer exceeds; beyond it the connection ends. */
export const wyomingLimits = {
  lineBytes: 64 * 1024,
  dataBytes: 1024 * 1024,
  payloadBytes: 16 * 1024 * 1024,
} as const;

/** The peer does not speak the protocol. */
class FrameError extends Error {}

/** The bytes of an event; its data always stands in the body. */
export function frameOf(event: WyomingEvent): Buffer {
  const body = Buffer.from(JSON.stringify(event.data), 'utf8');
  const header = { type: event.type, version: '1.9.0', data_length: body.length };
  return Buffer.concat([Buffer.from(`${JSON.stringify(header)}\n`, 'utf8'), body]);
}

interface Header {
  type: string;
  inline: Record<string, unknown>;
  dataLength: number;
  payloadLength: number;
}

/** Takes bytes however they are cut and gives whole events, up to where the peer goes wrong. */
export class FrameReader {
  private chunks: Buffer[] = [];
  private held = 0;
  /** Chunks known to hold no end of line, and their bytes. */
  private searched = { chunks: 0, bytes: 0 };
  private header: Header | undefined;
  private skip = 0;
  /** There is no next event to be found. */
  broken = false;

  push(chunk: Buffer): WyomingEvent[] {
    const events: WyomingEvent[] = [];
    if (this.broken) return events;
    this.chunks.push(chunk);
    this.held += chunk.length;
    try {
      for (let event = this.next(); event !== 'wait'; event = this.next())
        if (event !== 'again') events.push(event);
    } catch (error) {
      if (!(error instanceof FrameError)) throw error;
      this.broken = true;
    }
    return events;
  }

  private next(): WyomingEvent | 'wait' | 'again' {
    if (this.skip > 0) {
      const gone = Math.min(this.skip, this.held);
      this.take(gone);
      this.skip -= gone;
      if (this.skip > 0) return 'wait';
    }
    if (!this.header) {
      const end = this.lineEnd();
      if (end < 0 && this.held > wyomingLimits.lineBytes) throw new FrameError('line too long');
      if (end < 0) return 'wait';
      if (end > wyomingLimits.lineBytes) throw new FrameError('line too long');
      const line = this.take(end + 1)
        .toString('utf8')
        .trim();
      if (line === '') return 'again';
      this.header = headerOf(line);
    }
    const { type, inline, dataLength, payloadLength } = this.header;
    if (this.held < dataLength) return 'wait';
    const body = dataLength > 0 ? objectOf(this.take(dataLength).toString('utf8')) : {};
    this.skip = payloadLength;
    this.header = undefined;
    return { type, data: { ...inline, ...body } };
  }

  /** Whether the peer is in the middle of an event. */
  get isAmid(): boolean {
    return this.held > 0 || this.skip > 0 || this.header !== undefined;
  }

  private lineEnd(): number {
    let { chunks, bytes } = this.searched;
    for (; chunks < this.chunks.length; chunks += 1) {
      const chunk = this.chunks[chunks]!;
      const at = chunk.indexOf(0x0a);
      if (at >= 0) return bytes + at;
      bytes += chunk.length;
    }
    this.searched = { chunks, bytes };
    return -1;
  }

  private take(bytes: number): Buffer {
    if (bytes === 0) return Buffer.alloc(0);
    const all = this.chunks.length === 1 ? this.chunks[0]! : Buffer.concat(this.chunks);
    const rest = all.subarray(bytes);
    this.searched = { chunks: 0, bytes: 0 };
    this.chunks = rest.length > 0 ? [rest] : [];
    this.held = rest.length;
    return all.subarray(0, bytes);
  }
}

function objectOf(text: string): Record<string, unknown> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    throw new FrameError('not JSON');
  }
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw new FrameError('not an object');
  return value as Record<string, unknown>;
}

function headerOf(line: string): Header {
  const header = objectOf(line);
  if (typeof header.type !== 'string') throw new FrameError('an event without a type');
  const inline = header.data;
  return {
    type: header.type,
    inline: typeof inline === 'object' && inline !== null ? { ...inline } : {},
    dataLength: lengthOf(header.data_length, wyomingLimits.dataBytes),
    payloadLength: lengthOf(header.payload_length, wyomingLimits.payloadBytes),
  };
}

function lengthOf(value: unknown, atMost: number): number {
  if (value === undefined || value === null) return 0;
  if (typeof value !== 'number' || !Number.isInteger(value) || value < 0 || value > atMost)
    throw new FrameError('a length that cannot be');
  return value;
}
