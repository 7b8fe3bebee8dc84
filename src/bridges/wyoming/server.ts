/**
 * A Wyoming `handle` service: a transcript in, the words to speak out. It holds nothing of a dinner;
 * the household's open dinner hears, whatever conversation the words claim to belong to.
 */
import { createServer, type Server, type Socket } from 'node:net';
import type { Household } from '../../household/household.ts';
import { FrameReader, frameOf, type WyomingEvent } from './frame.ts';

export interface WyomingOptions {
  household: Household;
  version: string;
}

const connectionsAtMost = 200;
/** Longer than the half minute after which a house asks again who is here. */
const idleMilliseconds = 120_000;

const nothingHeard = 'I heard nothing.';
const noWords = 'I have nothing to say to that.';
const failed = 'Sorry, that did not work. Nothing is lost; please say it again.';

export function wyomingServer(options: WyomingOptions): Server {
  // The other side may close its half after asking and still wait for the answer.
  const server = createServer({ allowHalfOpen: true }, (socket) => converse(socket, options));
  server.maxConnections = connectionsAtMost;
  return server;
}

function converse(socket: Socket, options: WyomingOptions): void {
  const reader = new FrameReader();
  let work: Promise<void> = Promise.resolve();
  socket.setTimeout(idleMilliseconds, () => socket.destroy());
  socket.on('error', () => socket.destroy());
  socket.on('data', (chunk) => {
    let events: WyomingEvent[];
    try {
      events = reader.push(chunk);
    } catch {
      socket.destroy();
      return;
    }
    for (const event of events) {
      work = work.then(async () => {
        const answer = await answerTo(event, options);
        if (answer && socket.writable) socket.write(frameOf(answer));
      });
    }
    // One peer's questions are answered before more of them are read.
    if (events.length > 0) {
      socket.pause();
      void work.then(() => socket.resume());
    }
  });
  socket.on('end', () => void work.then(() => socket.end()));
}

async function answerTo(
  event: WyomingEvent,
  options: WyomingOptions,
): Promise<WyomingEvent | undefined> {
  switch (event.type) {
    case 'describe':
      return { type: 'info', data: infoOf(options.version) };
    case 'ping':
      return { type: 'pong', data: { text: event.data.text ?? null } };
    case 'transcript':
      return heard(event.data, options.household);
    default:
      return undefined;
  }
}

async function heard(data: Record<string, unknown>, household: Household): Promise<WyomingEvent> {
  const text = typeof data.text === 'string' ? data.text : '';
  const context = data.context;
  const again = typeof context === 'object' && context !== null ? { context } : {};
  if (text.trim() === '') return { type: 'not-handled', data: { text: nothingHeard, ...again } };
  try {
    const turn = await household.say({ text, source: 'wyoming' });
    const speech = turn.replies
      .map((reply) => reply.speech)
      .filter((words) => words !== '')
      .join(' ');
    return { type: 'handled', data: { text: speech || noWords, ...again } };
  } catch (error) {
    process.stderr.write(`wyoming: ${error instanceof Error ? error.message : String(error)}\n`);
    return { type: 'handled', data: { text: failed, ...again } };
  }
}

function infoOf(version: string): Record<string, unknown> {
  const about = {
    attribution: { name: 'Roastcall', url: 'https://roastcall.invalid' },
    installed: true,
    version,
  };
  return {
    asr: [],
    tts: [],
    intent: [],
    wake: [],
    mic: [],
    snd: [],
    handle: [
      {
        name: 'Roastcall',
        description: 'Stands beside the cook of one large roast',
        ...about,
        supports_handled_streaming: false,
        supports_home_control: false,
        models: [{ name: 'roastcall-en', description: 'English', ...about, languages: ['en'] }],
      },
    ],
  };
}
