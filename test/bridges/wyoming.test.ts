/** A client of the Wyoming protocol, byte by byte; framing as its published reference describes. */
import { connect } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { FrameReader, frameOf, type WyomingEvent } from '../../src/bridges/wyoming/frame.ts';
import { served } from './served.ts';

let house: Awaited<ReturnType<typeof served>>;
beforeAll(async () => {
  house = await served();
});
afterAll(() => house.close());

/** Writes the pieces, closes its half, and gives all that comes back, read independently. */
function ask(pieces: readonly Buffer[]): Promise<WyomingEvent[]> {
  return new Promise((resolve, reject) => {
    const socket = connect(house.wyomingPort, '127.0.0.1').setNoDelay(true);
    const got: Buffer[] = [];
    socket.on('data', (chunk) => got.push(chunk)).on('error', reject);
    socket.on('close', () => resolve(parsed(Buffer.concat(got))));
    for (const piece of pieces) socket.write(piece);
    socket.end();
  });
}

function parsed(bytes: Buffer): WyomingEvent[] {
  const events: WyomingEvent[] = [];
  for (let at = 0; at < bytes.length; ) {
    const end = bytes.indexOf(10, at);
    const header = JSON.parse(bytes.subarray(at, end).toString());
    at = end + 1 + header.data_length;
    events.push({ type: header.type, data: JSON.parse(bytes.subarray(end + 1, at).toString()) });
  }
  return events;
}

const transcript = (text: string): Buffer => frameOf({ type: 'transcript', data: { text } });
const bytesOf = (frame: Buffer): Buffer[] => [...frame].map((byte) => Buffer.from([byte]));

test('three events in one write, a payload between them skipped', async () => {
  const audio = Buffer.concat([
    Buffer.from('{"type":"audio-chunk","payload_length":5}\n'),
    Buffer.from([1, 10, 255, 123, 10]),
  ]);
  const describe = Buffer.from('{"type":"describe"}\n');
  const ping = Buffer.from('{"type":"ping","data":{"text":"x"}}\n');
  const [info, pong, handled, ...rest] = await ask([
    Buffer.concat([describe, audio, ping, transcript('what is next')]),
  ]);
  expect(rest).toEqual([]);
  expect(info).toMatchObject({ type: 'info', data: { intent: [], handle: [{ installed: true }] } });
  expect(pong).toEqual({ type: 'pong', data: { text: 'x' } });
  expect(handled?.type).toBe('handled');
  expect(handled?.data.text).not.toBe('');
});

test('bytes one by one, cut inside characters; the body stands over the header', async () => {
  const body = Buffer.from('{"text":"½ é 🍖"}');
  const head = `{"type":"ping","data":{"text":"no"},"data_length":${body.length}}\n`;
  const answers = await ask(bytesOf(Buffer.concat([Buffer.from(head), body])));
  expect(answers).toEqual([{ type: 'pong', data: { text: '½ é 🍖' } }]);
});

test.each([
  ['', 'not-handled'],
  ['  \n', 'not-handled'],
  ['did you see the game', 'handled'],
  ['zz qq '.repeat(10_000), 'handled'],
])('%#: a transcript is %s', async (text, type) => {
  const [answer] = await ask([transcript(text)]);
  expect(answer?.type).toBe(type);
  expect(String(answer?.data.text).length).toBeGreaterThan(0);
});

test.each([
  'GET / HTTP/1.1\r\n\r\n',
  '{"type":5}\n',
  '[]\n',
  '{"type":"ping","data_length":-1}\n',
  '{"type":"ping","data_length":99999999}\n',
  `{"type":"${'x'.repeat(70_000)}`,
])('garbage %# ends the connection and nothing else', async (text) => {
  await ask([Buffer.from(text)]).catch(() => []);
  expect((await ask([Buffer.from('{"type":"describe"}\n')]))[0]?.type).toBe('info');
});

test('fifty at once are all answered', async () => {
  const answers = await Promise.all(
    Array.from({ length: 50 }, (_, n) => ask([transcript(`what is next ${n}`)])),
  );
  expect(answers.map(([one]) => one?.type)).toEqual(Array(50).fill('handled'));
});

test('a question to a satellite says that it can wait, and is answered whenever it is', async () => {
  const text = 'three bone rib roast, seven pounds, dinner tomorrow at seven, medium rare';
  const from = (say: string): Promise<WyomingEvent[]> => ask([transcript(say)]);
  const [asked] = await from(text);
  expect(asked?.data.text).toMatch(/How many are coming\? Tell me when you can\.$/);
  // The house closed the microphone; other words come first.
  await from('how do I french the bones');
  await from('six');
  const kept = (await house.household.current())!;
  expect((await house.household.view(kept)).guests).toBe(6);
  // Whoever can answer at once is only asked.
  const typed = await house.household.say({ text: 'start over' });
  expect(typed.replies[0]?.speech).not.toMatch(/when you can/);
});

test('any cutting gives the same events', () => {
  const frame = Buffer.concat([transcript('é½'), transcript('b')]);
  for (let cut = 0; cut <= frame.length; cut += 1) {
    const reader = new FrameReader();
    const events = [...reader.push(frame.subarray(0, cut)), ...reader.push(frame.subarray(cut))];
    expect(events.map((one) => one.data.text)).toEqual(['é½', 'b']);
  }
});
