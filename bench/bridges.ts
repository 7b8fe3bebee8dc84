/**
 * How long a house waits for the Wyoming service: a connection, a transcript, the answer, as a
 * house does it, through a whole dinner; and how long for `describe`, alone and while such answers
 * are being worked out. Milliseconds, beside a fixed loop timed in the same run.
 */

import { type AddressInfo, connect } from 'node:net';
import { frameOf } from '../src/bridges/wyoming/frame.ts';
import { wyomingServer } from '../src/bridges/wyoming/server.ts';
import { builtInCardsFolder, loadCards } from '../src/cards/load.ts';
import { Household } from '../src/household/household.ts';
import { openMemoryJournal } from '../src/journal/memory.ts';
import { computePool } from '../src/main/compute-pool.ts';
import { openSession } from '../src/session/session.ts';
import { calibration } from './measure.ts';

const told: [string, string][] = [
  ['13:30', 'seven pound three bone rib roast, dinner at seven for six, medium rare'],
  ['13:45', 'done'],
  ['14:10', 'the roast is tied and seasoned'],
  ['15:00', 'what is next'],
  ['16:10', 'oven is on'],
  ['16:40', 'the roast is in'],
  ['17:00', 'I turned it down to 325'],
  ['17:30', 'it reads 70'],
  ['17:40', 'what is next'],
  ['17:45', 'how do I make the gravy'],
  ['17:50', 'it reads 84'],
  ['18:10', 'how long till dinner'],
  ['18:20', 'it reads 103'],
  ['18:40', "it's out"],
  ['19:20', "we're carving"],
];

const times = new Map<string, number[]>();
const note = (name: string, milliseconds: number): void => {
  times.set(name, [...(times.get(name) ?? []), milliseconds]);
};

/** One connection, one event, until the answer is whole. */
function ask(port: number, frame: Buffer): Promise<number> {
  const from = performance.now();
  return new Promise((resolve, reject) => {
    const socket = connect(port, '127.0.0.1').setNoDelay(true);
    socket.on('error', reject);
    socket.on('data', () => undefined);
    socket.on('close', () => resolve(performance.now() - from));
    socket.end(frame);
  });
}

const compute = computePool();
const { cards } = loadCards([builtInCardsFolder()]);
const describe = Buffer.from('{"type":"describe"}\n');
const rounds = Number(process.argv[2] ?? 8);
for (let round = 0; round < rounds; round += 1) {
  const journal = openMemoryJournal();
  const household = new Household({
    journal,
    clock: 'simulated',
    now: () => Date.parse('2026-12-19T13:00:00-06:00'),
    opening: () => ({
      timeZone: 'America/Chicago',
      units: { temperature: 'F', weight: 'lb' },
      seed: round + 1,
      language: 'en',
    }),
    open: (dinner, opening) => openSession({ dinner, journal, compute, cards, opening }),
  });
  const server = wyomingServer({ household, version: '0' });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  const { id } = await household.create({});
  for (const [time, text] of told) {
    note('calibration', calibration());
    // What fell due on the way was called when it was due; the turn is the words alone.
    await household.advance(id, Date.parse(`2026-12-19T${time}:00-06:00`));
    note('describe', await ask(port, describe));
    const answer = ask(port, frameOf({ type: 'transcript', data: { text } }));
    note('describe meanwhile', await ask(port, describe));
    note('answer', await answer);
  }
  server.close();
}

const base = quantile('calibration', 0.5);
function quantile(name: string, share: number): number {
  const sorted = [...(times.get(name) ?? [])].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}
await compute.close();
console.log('wyoming               p10 ms    p50 ms    p99 ms   p50 / calibration');
for (const name of times.keys()) {
  const [p10 = 0, p50 = 0, p99 = 0] = [0.1, 0.5, 0.99].map((share) => quantile(name, share));
  const figures = [p10, p50, p99].map((one) => one.toFixed(2).padStart(10)).join('');
  console.log(`${name.padEnd(18)}${figures}${(p50 / base).toFixed(2).padStart(12)}`);
}
