/** Whatever a peer sends, however it is cut: whole events, or an honest end; never anything else. */
import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { pathOf, readingIn } from '../../src/bridges/mqtt/reading.ts';
import { saidIn } from '../../src/bridges/mqtt/said.ts';
import { FrameReader, frameOf } from '../../src/bridges/wyoming/frame.ts';

const runs = { numRuns: 300 };
const json = fc.dictionary(fc.string({ unit: 'grapheme' }), fc.jsonValue());
const event = fc.record({ type: fc.string({ unit: 'grapheme', minLength: 1 }), data: json });
const payload = fc.uint8Array({ maxLength: 40 });

/** A frame as a peer may lawfully write it: data in the line or after it, a payload or none. */
const frame = fc
  .record({ event, payload, inline: fc.boolean(), crlf: fc.boolean() })
  .map(({ event: { type, data }, payload: bytes, inline, crlf }) => {
    const body = inline ? Buffer.alloc(0) : Buffer.from(JSON.stringify(data));
    const head = {
      type,
      ...(inline ? { data } : { data_length: body.length }),
      ...(bytes.length > 0 ? { payload_length: bytes.length } : {}),
    };
    const line = Buffer.from(`${JSON.stringify(head)}${crlf ? '\r\n' : '\n'}`);
    // What came over the wire is what JSON makes of it.
    const heard = { type, data: JSON.parse(JSON.stringify(data)) as unknown };
    return { bytes: Buffer.concat([line, body, bytes]), heard };
  });

const pieces = (bytes: Buffer, sizes: readonly number[]): Buffer[] => {
  const cut: Buffer[] = [];
  for (let at = 0, n = 0; at < bytes.length; n += 1) {
    const size = sizes[n % sizes.length] ?? 1;
    cut.push(bytes.subarray(at, at + size));
    at += size;
  }
  return cut;
};
const sizes = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 8 });

test.prop([fc.array(frame, { maxLength: 5 }), sizes], runs)(
  'lawful frames come out as they went in, however they are cut',
  (frames, cuts) => {
    const reader = new FrameReader();
    const all = Buffer.concat(frames.map((one) => one.bytes));
    const events = pieces(all, cuts).flatMap((piece) => reader.push(piece));
    expect(events).toEqual(frames.map((one) => one.heard));
    expect([reader.isAmid, reader.broken]).toEqual([false, false]);
  },
);

test.prop([event], runs)('what we write is counted in bytes', ({ type, data }) => {
  const bytes = frameOf({ type, data });
  const end = bytes.indexOf(10);
  const { data_length: length } = JSON.parse(bytes.subarray(0, end).toString()) as {
    data_length: number;
  };
  expect(end + 1 + length).toBe(bytes.length);
});

/** Bytes that nobody meant, and lawful frames with a few bytes changed. */
const noise = fc.oneof(
  fc.uint8Array({ maxLength: 300 }),
  fc
    .tuple(frame, fc.array(fc.tuple(fc.nat(), fc.nat(255)), { minLength: 1, maxLength: 3 }))
    .map(([{ bytes }, changes]) => {
      const changed = Uint8Array.from(bytes);
      for (const [at, byte] of changes) changed[at % changed.length] = byte;
      return changed;
    }),
);

test.prop([fc.array(noise, { minLength: 1, maxLength: 3 }), sizes], runs)(
  'noise is waited on or refused, and read no differently when cut',
  (sent, cuts) => {
    const outcome = (parts: readonly Buffer[]): unknown => {
      const reader = new FrameReader();
      const events = parts.flatMap((part) => reader.push(part));
      return { events, broken: reader.broken };
    };
    const bytes = Buffer.concat(sent);
    expect(outcome(pieces(bytes, cuts))).toEqual(outcome([bytes]));
  },
);

const inbound = (bytes: Buffer) => ({
  topic: 'roastcall/say',
  payload: bytes,
  retained: false,
  again: false,
  number: 1,
  resumedAfter: undefined,
  responseTopic: undefined,
  correlation: undefined,
});

const payloads = fc.oneof(
  fc.uint8Array({ maxLength: 200 }).map((bytes) => Buffer.from(bytes)),
  fc.json().map((text) => Buffer.from(text)),
  json.map((value) => Buffer.from(JSON.stringify(value))),
  fc
    .record({
      text: fc.anything(),
      id: fc.anything(),
      device: fc.anything(),
      reply_to: fc.anything(),
    })
    .map((value) => {
      try {
        return Buffer.from(JSON.stringify(value));
      } catch {
        return Buffer.from('{}');
      }
    }),
);

test.prop([payloads], runs)(
  'whatever is said on the bus, the answer stays off our own topics',
  (bytes) => {
    const said = saidIn(inbound(bytes), 'roastcall');
    expect(said === undefined).toBe(bytes.length === 0);
    if (!said) return;
    expect(typeof said.text).toBe('string');
    expect(said.replyTo === 'roastcall/reply' || !said.replyTo.startsWith('roastcall/')).toBe(true);
    expect(said.replyTo).not.toMatch(/[+#\0]|^\$|^$/);
  },
);

test.prop([payloads, fc.string()], runs)(
  'whatever a thermometer sends is a finite number or nothing',
  (bytes, query) => {
    const reading = readingIn(bytes.toString(), pathOf(query) ?? []);
    if (reading) expect(Number.isFinite(reading.temperature)).toBe(true);
  },
);
