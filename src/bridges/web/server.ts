/** HTTP in front of households: JSON in and out, a stream of events, problems in one form. */

import type { Server } from 'node:https';
import rateLimit from '@fastify/rate-limit';
import fastify, { type FastifyInstance, type FastifyServerOptions, LogController } from 'fastify';
import { capConnections } from './connections.ts';
import { serveDinners } from './dinners.ts';
import { type Guard, householdOf, isAdmitted, secretOf, standGuard } from './guard.ts';
import { Metrics } from './metrics.ts';
import { openApi } from './openapi.ts';
import { servePage } from './page.ts';
import { type PairOptions, servePairing } from './pair.ts';
import { Problem, problemOf } from './problem.ts';

export interface WebOptions extends Guard {
  version: string;
  now(): number;
  /** Absent: nobody is paired here. */
  pairing?: PairOptions | undefined;
  /** A certificate and its key, both PEM, for TLS. */
  tls?: { key: string; cert: string } | undefined;
  /** What goes to stderr as JSON lines; what was said only with `words`. */
  log?: 'errors' | 'requests' | 'words' | undefined;
  /** Rejects when the household that needs no token cannot write. */
  writable(): Promise<void>;
}

const bodyBytesAtMost = 256 * 1024;
/** Far above what a house does, far below what would keep a kitchen waiting. */
const requestsPerMinute = 6_000;
const connectionsAtMost = 2_000;

export async function webServer(options: WebOptions): Promise<FastifyInstance> {
  const { tls, log = 'errors' } = options;
  const base: FastifyServerOptions = {
    bodyLimit: bodyBytesAtMost,
    forceCloseConnections: true,
    requestTimeout: 30_000,
    connectionTimeout: 0,
    routerOptions: { maxParamLength: 100 },
    logger: { level: log === 'errors' ? 'error' : 'info', stream: process.stderr },
    logController: new LogController({ disableRequestLogging: true }),
  };
  const app = tls
    ? // Routes are the same over TLS; only the type of the raw server differs.
      (fastify<Server>({ ...base, https: tls } as never) as unknown as FastifyInstance)
    : fastify(base);
  capConnections(app.server, connectionsAtMost);
  app.setErrorHandler((error, request, reply) => {
    const problem = problemOf(error);
    if (problem.status >= 500) request.log.error(error);
    return reply
      .code(problem.status)
      .type('application/problem+json')
      .send(JSON.stringify(onWire(problem)));
  });
  app.setNotFoundHandler((request) => {
    throw new Problem(404, 'Not found', `There is nothing at ${request.method} ${request.url}.`);
  });
  await app.register(rateLimit, {
    max: requestsPerMinute,
    timeWindow: '1 minute',
    hook: 'preHandler',
    keyGenerator: (request) =>
      isAdmitted(request) ? (secretOf(request) ?? request.ip) : `?${request.ip}`,
    errorResponseBuilder: (_request, { after }) =>
      new Problem(429, 'Too many requests', `Too much at once; try again in ${after}.`),
  });
  standGuard(app, options);
  if (log !== 'errors') logRequests(app, { words: log === 'words' });
  const metrics = new Metrics();
  app.addHook('preHandler', async (request) => {
    if (isAdmitted(request)) metrics.watch(householdOf(request), options.now);
  });
  if (options.pairing) servePairing(app, options.pairing);
  serveDinners(app, metrics);
  app.get('/healthz', async () => {
    await options.writable().catch(() => {
      throw new Problem(503, 'Not well', 'The journal cannot be written.');
    });
    return { status: 'ok' };
  });
  servePage(app, { version: options.version, householdOf });
  app.get('/openapi.json', async () => openApi(options.version));
  app.get('/metrics', async (_request, reply) => {
    reply.type(metrics.contentType);
    return metrics.text();
  });
  return app;
}

const onWire = (problem: Problem): object => ({
  type: 'about:blank',
  title: problem.title,
  status: problem.status,
  detail: problem.message,
});

/** One line a request, by its route rather than its address, so that no secret of a query is kept. */
function logRequests(app: FastifyInstance, { words }: { words: boolean }): void {
  app.addHook('onResponse', async (request, reply) => {
    const { id } = request.params as { id?: string };
    const said = words ? (request.body as { text?: unknown } | undefined)?.text : undefined;
    request.log.info({
      method: request.method,
      route: request.routeOptions.url ?? 'none',
      status: reply.statusCode,
      milliseconds: Math.round(reply.elapsedTime),
      ...(id === undefined ? {} : { dinner: id }),
      ...(typeof said === 'string' ? { said: said.slice(0, 500) } : {}),
    });
  });
}
