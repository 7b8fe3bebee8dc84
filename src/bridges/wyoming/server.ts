/**
 * A Wyoming `handle` service: a transcript in, the words to speak out. It holds nothing of a
 * dinner; the household's open dinner hears, whatever conversation the words claim to belong to.
 */
import { createServer, type Server, type Socket } from 'node:net';
import { unnamed } from '../../household/echo.ts';
import type { Household } from '../../household/household.ts';
import { speechOf, spokenFailure, spokenSilence } from '../spoken.ts';
import { FrameReader, frameOf, type WyomingEvent } from './frame.ts';
import { type InfoOptions, infoOf } from './info.ts';
import type { Peers } from './peers.ts';

export interface WyomingOptions extends Omit<InfoOptions, 'streaming' | 'languages'> {
  household: Household;
  languages?: readonly string[];
  streaming?: boolean;
  /** Everybody who reaches the socket unless given. */
  peers?: Peers | undefined;
  /** Told of each address that was turned away, once. */
  turnedAway?(address: string): void;
  limits?: Partial<WyomingLimits>;
}

export interface WyomingLimits {
  connections: number;
  /** Longer than the half minute after which a house asks again who is here. */
  idleMilliseconds: number;
  /** From the first byte of an event to its last. */
  eventMilliseconds: number;
  /** Answers that the peer does not take. */
  unreadBytes: number;
}

const usualLimits: WyomingLimits = {
  connections: 200,
  idleMilliseconds: 120_000,
  eventMilliseconds: 30_000,
  unreadBytes: 1024 * 1024,
};

/** Addresses remembered as turned away. */
const strangersKept = 1_000;

interface Service {
  household: Household;
  info: Record<string, unknown>;
  streaming: boolean;
  limits: WyomingLimits;
}

export function wyomingServer(options: WyomingOptions): Server {
  const { household, version, languages = ['en'], streaming = false, peers } = options;
  const limits = { ...usualLimits, ...options.limits };
  const info = infoOf({ version, languages, streaming });
  const strangers = new Set<string>();
  // The other side may close its half after asking and still wait for the answer.
  const server = createServer({ allowHalfOpen: true }, (socket) => {
    const address = socket.remoteAddress ?? '';
    if (!peers || peers.allows(address))
      return converse(socket, { household, info, streaming, limits });
    socket.destroy();
    if (strangers.has(address) || strangers.size >= strangersKept) return;
    strangers.add(address);
    options.turnedAway?.(address);
  });
  server.maxConnections = limits.connections;
  return server;
}

function converse(socket: Socket, service: Service): void {
  const reader = new FrameReader();
  const { idleMilliseconds, eventMilliseconds, unreadBytes } = service.limits;
  let work: Promise<void> = Promise.resolve();
  let slow: NodeJS.Timeout | undefined;
  socket.setTimeout(idleMilliseconds, () => socket.destroy());
  socket.on('error', () => socket.destroy());
  socket.on('close', () => clearTimeout(slow));
  socket.on('data', (chunk) => {
    const events = reader.push(chunk);
    if (!reader.isAmid || events.length > 0) {
      clearTimeout(slow);
      slow = undefined;
    }
    if (reader.isAmid) slow ??= setTimeout(() => socket.destroy(), eventMilliseconds);
    for (const event of events) {
      work = work.then(async () => {
        if (!socket.writable) return;
        for (const answer of await answersTo(event, service)) socket.write(frameOf(answer));
        if (socket.writableLength > unreadBytes) socket.destroy();
      });
    }
    // What was rightly asked before is answered; then it ends.
    if (reader.broken) work = work.then(() => void socket.destroySoon());
    // One peer's questions are answered before more of them are read.
    if (events.length > 0) {
      socket.pause();
      void work.then(() => socket.resume());
    }
  });
  socket.on('end', () => void work.then(() => socket.end()));
}

async function answersTo(event: WyomingEvent, service: Service): Promise<WyomingEvent[]> {
  switch (event.type) {
    case 'describe':
      return [{ type: 'info', data: service.info }];
    case 'ping':
      return [{ type: 'pong', data: { text: event.data.text ?? null } }];
    case 'transcript':
      return heard(event.data, service);
    default:
      return [];
  }
}

async function heard(data: Record<string, unknown>, service: Service): Promise<WyomingEvent[]> {
  const text = typeof data.text === 'string' ? data.text : '';
  const context = isObject(data.context) ? data.context : undefined;
  const again = context ? { context } : {};
  if (text.trim() === '') return [{ type: 'not-handled', data: { text: spokenSilence, ...again } }];
  const device = deviceOf(context);
  let speech = spokenFailure;
  try {
    const turn = await service.household.say({
      text,
      source: device === undefined ? 'wyoming' : `wyoming ${device}`,
      device: device === undefined ? unnamed : `wyoming:${device}`,
      // The house closes the microphone after each answer, whatever was asked.
      microphone: 'closes',
    });
    speech = speechOf(turn);
  } catch (error) {
    process.stderr.write(`wyoming: ${error instanceof Error ? error.message : String(error)}\n`);
  }
  const handled = { type: 'handled', data: { text: speech, ...again } };
  return service.streaming ? inPieces(handled, again) : [handled];
}

/** The answer sentence by sentence, so that a house may begin to speak, and once more in whole. */
function inPieces(handled: WyomingEvent, again: object): WyomingEvent[] {
  const sentences = String(handled.data.text).match(/.+?(?:[.!?:]+\s+|$)/gsu) ?? [];
  return [
    { type: 'handled-start', data: { ...again } },
    ...sentences.map((text) => ({ type: 'handled-chunk', data: { text } })),
    handled,
    { type: 'handled-stop', data: {} },
  ];
}

const nameCharactersAtMost = 200;

/** The microphone's lasting name. A conversation's id is none: it changes within one dinner. */
function deviceOf(context: Record<string, unknown> | undefined): string | undefined {
  const name = [context?.satellite_id, context?.device_id].find(
    (one): one is string => typeof one === 'string' && one !== '',
  );
  return name?.slice(0, nameCharactersAtMost);
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
