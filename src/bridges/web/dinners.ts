/** The routes of dinners: open, list, look, say, move a simulated clock, follow, read the log. */
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { isoWithOffset } from '../../base/time.ts';
import type { Household } from '../../household/household.ts';
import type { Turn } from '../../session/ports.ts';
import { announcementOnWire } from '../wire.ts';
import { householdOf } from './guard.ts';
import type { Metrics } from './metrics.ts';
import { bodyOf, Problem } from './problem.ts';
import { clockBody, openingBody, sayBody } from './schemas.ts';
import { streamTo } from './stream.ts';

const streamsAtMost = 1_000;

type Numbered = { Params: { id: string } };

export function serveDinners(app: FastifyInstance, metrics: Metrics): void {
  let streams = 0;
  const say = async (request: FastifyRequest, dinner?: string): Promise<object> => {
    const { at, ...said } = bodyOf(sayBody, request.body);
    const end = metrics.turnSeconds.startTimer();
    const turn = await householdOf(request).say({ ...said, at: instant(at) }, dinner);
    end();
    return turnOnWire(turn);
  };
  app.get('/api/dinners', async (request) => listed(householdOf(request)));
  app.post('/api/dinners', async (request, reply) => {
    const { at, ...wishes } = bodyOf(openingBody, request.body);
    const household = householdOf(request);
    const kept = await household.create({ ...wishes, at: instant(at) });
    reply.code(201).header('location', `/api/dinners/${kept.id}`);
    return { id: kept.id, view: await household.view(kept) };
  });
  app.get<Numbered>('/api/dinners/:id', async (request) => {
    const household = householdOf(request);
    return household.view(await household.dinner(request.params.id));
  });
  app.post('/api/say', async (request) => say(request));
  app.post<Numbered>('/api/dinners/:id/say', async (request) => say(request, request.params.id));
  app.post<Numbered>('/api/dinners/:id/clock', async (request) => {
    const at = Date.parse(bodyOf(clockBody, request.body).at);
    const moved = await householdOf(request).advance(request.params.id, at);
    const { announcements, view } = moved;
    return { announcements: announcements.map((a) => announcementOnWire(a, view.timeZone)), view };
  });
  app.get<Numbered>('/api/dinners/:id/stream', async (request, reply) => {
    const household = householdOf(request);
    const kept = await household.dinner(request.params.id);
    if (streams >= streamsAtMost)
      throw new Problem(503, 'Too many readers', 'Too many streams are open; try again later.');
    const lastSeen = positionOf(request);
    reply.hijack();
    streams += 1;
    metrics.streams.inc();
    reply.raw.on('close', () => {
      streams -= 1;
      metrics.streams.dec();
    });
    streamTo(reply.raw, { household, kept, lastSeen });
  });
  app.get<Numbered>('/api/dinners/:id/log', async (request, reply) => {
    const household = householdOf(request);
    const facts = await household.facts(await household.dinner(request.params.id));
    reply.type('application/jsonl; charset=utf-8');
    return facts.map((fact) => `${JSON.stringify(fact)}\n`).join('');
  });
}

const instant = (at: string | undefined): number | undefined =>
  at === undefined ? undefined : Date.parse(at);

const turnOnWire = ({ heard, replies, announcements, view }: Turn): object => ({
  heard,
  replies,
  announcements: announcements.map((one) => announcementOnWire(one, view.timeZone)),
  view,
});

async function listed(household: Household): Promise<object[]> {
  const open = (await household.current())?.id;
  return (await household.dinners()).map(({ id, stage, timeZone, servingAt, openedAt, lastAt }) => {
    const iso = (at: number): string => isoWithOffset(at, timeZone);
    const serving = servingAt === undefined ? undefined : iso(servingAt);
    const times = { openedAt: iso(openedAt), lastAt: iso(lastAt) };
    return { id, stage, serving, current: id === open, ...times };
  });
}

function positionOf(request: FastifyRequest): number | undefined {
  const header = request.headers['last-event-id'];
  if (header === undefined || header === '') return undefined;
  if (typeof header === 'string' && /^-?\d{1,9}$/.test(header)) return Number(header);
  throw new Problem(400, 'Not understood', 'Last-Event-ID: a log position is a whole number.');
}
