/** HTTP in front of a household: JSON in and out, a stream of events, problems in one form. */
import { createHash, timingSafeEqual } from 'node:crypto';
import fastify, { type FastifyInstance, type FastifyRequest } from 'fastify';
import { isoWithOffset } from '../../base/time.ts';
import type { Household } from '../../household/household.ts';
import type { Turn } from '../../session/ports.ts';
import { announcementOnWire } from '../wire.ts';
import { openApi } from './openapi.ts';
import { bodyOf, Problem, problemOf } from './problem.ts';
import { clockBody, openingBody, sayBody } from './schemas.ts';
import { streamTo } from './stream.ts';

export interface WebOptions {
  household: Household;
  version: string;
  /** Without one, everybody who reaches the socket is trusted. */
  token?: string | undefined;
  /** Answer only to loopback names, so that no web page can reach in by a name of its own. */
  loopbackOnly: boolean;
  /** Rejects when the journal cannot be written. */
  writable(): Promise<void>;
}

const bodyBytesAtMost = 256 * 1024;
const streamsAtMost = 500;

type Numbered = { Params: { id: string } };

export function webServer(options: WebOptions): FastifyInstance {
  const { household } = options;
  const app = fastify({
    bodyLimit: bodyBytesAtMost,
    forceCloseConnections: true,
    requestTimeout: 30_000,
    routerOptions: { maxParamLength: 100 },
  });
  const counts = { turns: 0, announcements: 0, streams: 0 };
  household.listen(({ announcements }) => {
    counts.announcements += announcements.length;
  });
  app.addHook('onRequest', async (request) => guard(request, options));
  app.setErrorHandler((error, _request, reply) => {
    const problem = problemOf(error);
    if (problem.status >= 500)
      process.stderr.write(`${error instanceof Error ? error.stack : String(error)}\n`);
    return reply
      .code(problem.status)
      .type('application/problem+json')
      .send(JSON.stringify(onWire(problem)));
  });
  app.setNotFoundHandler((request) => {
    throw new Problem(404, 'Not found', `There is nothing at ${request.method} ${request.url}.`);
  });

  const say = async (body: unknown, dinner?: string): Promise<object> => {
    const { at, ...said } = bodyOf(sayBody, body);
    const turn = await household.say({ ...said, at: instant(at) }, dinner);
    counts.turns += 1;
    return turnOnWire(turn);
  };

  app.get('/api/dinners', async () => listed(household));
  app.post('/api/dinners', async (request, reply) => {
    const { at, ...wishes } = bodyOf(openingBody, request.body);
    const kept = await household.create({ ...wishes, at: instant(at) });
    reply.code(201).header('location', `/api/dinners/${kept.id}`);
    return { id: kept.id, view: await household.view(kept) };
  });
  app.get<Numbered>('/api/dinners/:id', async ({ params }) =>
    household.view(await household.dinner(params.id)),
  );
  app.post('/api/say', async (request) => say(request.body));
  app.post<Numbered>('/api/dinners/:id/say', async ({ body, params }) => say(body, params.id));
  app.post<Numbered>('/api/dinners/:id/clock', async ({ body, params }) => {
    const at = Date.parse(bodyOf(clockBody, body).at);
    const { announcements, view } = await household.advance(params.id, at);
    return { announcements: announcements.map((a) => announcementOnWire(a, view.timeZone)), view };
  });
  app.get<Numbered>('/api/dinners/:id/stream', async (request, reply) => {
    const kept = await household.dinner(request.params.id);
    if (counts.streams >= streamsAtMost)
      throw new Problem(503, 'Too many readers', 'Too many streams are open; try again later.');
    const lastSeen = positionOf(request);
    reply.hijack();
    counts.streams += 1;
    reply.raw.on('close', () => {
      counts.streams -= 1;
    });
    streamTo(reply.raw, { household, kept, lastSeen });
  });
  app.get<Numbered>('/api/dinners/:id/log', async ({ params }, reply) => {
    const facts = await household.facts(await household.dinner(params.id));
    reply.type('application/jsonl; charset=utf-8');
    return facts.map((fact) => `${JSON.stringify(fact)}\n`).join('');
  });
  app.get('/healthz', async () => {
    await options.writable().catch(() => {
      throw new Problem(503, 'Not well', 'The journal cannot be written.');
    });
    return { status: 'ok' };
  });
  app.get('/openapi.json', async () => openApi(options.version));
  app.get('/metrics', async (_request, reply) => {
    reply.type('text/plain; version=0.0.4; charset=utf-8');
    return metricsText(counts);
  });
  return app;
}

const instant = (at: string | undefined): number | undefined =>
  at === undefined ? undefined : Date.parse(at);

const onWire = (problem: Problem): object => ({
  type: 'about:blank',
  title: problem.title,
  status: problem.status,
  detail: problem.message,
});

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

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Lets in who may come in: the token if there is one, no page of another site, no other name. */
function guard(request: FastifyRequest, { token, loopbackOnly }: WebOptions): void {
  const name = request.hostname.replace(/:\d+$/, '');
  if (loopbackOnly && !/^(localhost|127(\.\d{1,3}){3}|\[?::1\]?)$/i.test(name))
    throw new Problem(403, 'Not allowed', 'This address answers to loopback names only.');
  const { origin, host, authorization } = request.headers;
  if (origin !== undefined && !sameHost(origin, host))
    throw new Problem(403, 'Not allowed', 'Pages of other sites may not call this.');
  if (token === undefined || request.url === '/healthz') return;
  const query = (request.query as { token?: unknown }).token;
  const given = authorization?.replace(/^Bearer /i, '') ?? (typeof query === 'string' ? query : '');
  if (!timingSafeEqual(digest(given), digest(token)))
    throw new Problem(401, 'Who is there?', 'Send the token as "Authorization: Bearer …".');
}

function sameHost(origin: string, host: string | undefined): boolean {
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
}

const metricsText = (counts: Record<'turns' | 'announcements' | 'streams', number>): string =>
  [
    '# TYPE roastcall_turns_total counter',
    `roastcall_turns_total ${counts.turns}`,
    '# TYPE roastcall_announcements_total counter',
    `roastcall_announcements_total ${counts.announcements}`,
    '# TYPE roastcall_streams gauge',
    `roastcall_streams ${counts.streams}`,
    '# TYPE process_resident_memory_bytes gauge',
    `process_resident_memory_bytes ${process.memoryUsage().rss}`,
    '',
  ].join('\n');
