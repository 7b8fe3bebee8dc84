/**
 * The tablet page: its built files, and the two calls only it makes. Finds out which dinner is open,
 * and lets one page of all that are open speak an announcement. Knows nothing of what the page shows.
 */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Household } from '../../household/household.ts';
import { bodyOf, Problem } from './problem.ts';
import { claimBody } from './schemas.ts';

export interface PageOptions {
  version: string;
  /** The household a request belongs to. */
  householdOf(request: FastifyRequest): Household;
  /** Where the built page lies; dist/page beside the program unless told otherwise. */
  folder?: string;
}

/** Everything from here, nothing inline, no frame around it. Data addresses are not allowed either. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

const shellHeaders = {
  'content-security-policy': contentSecurityPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'permissions-policy': 'microphone=(self), screen-wake-lock=(self), camera=(), geolocation=()',
  'cross-origin-opener-policy': 'same-origin',
} as const;

/** The sink under which the journal keeps that an announcement has found its page. */
const sink = 'page';

const besideTheProgram = (): string =>
  fileURLToPath(new URL('../../../dist/page/', import.meta.url));

export function servePage(app: FastifyInstance, options: PageOptions): void {
  const folder = options.folder ?? besideTheProgram();
  if (existsSync(folder)) {
    app.register(fastifyStatic, {
      root: folder,
      wildcard: false,
      cacheControl: false,
      setHeaders: (reply, path) => {
        for (const [name, value] of Object.entries(shellHeaders)) reply.setHeader(name, value);
        // A file under assets is named by its content.
        const forever = /[\\/]assets[\\/]/.test(path);
        reply.setHeader(
          'cache-control',
          forever ? 'public, max-age=31536000, immutable' : 'no-cache',
        );
      },
    });
  } else {
    app.get('/', async () => {
      throw new Problem(404, 'Not built', 'The page is not built; run npm run build.');
    });
  }
  app.get('/api/page', async (request) => {
    const household = options.householdOf(request);
    const open = await household.current();
    return {
      version: options.version,
      clock: household.clock,
      ...(open === undefined ? {} : { dinner: open.id }),
    };
  });
  const claimed = new WeakMap<Household, Set<string>>();
  app.post<{ Params: { id: string } }>('/api/dinners/:id/claim', async (request) => {
    const { announcement } = bodyOf(claimBody, request.body);
    const household = options.householdOf(request);
    const kept = await household.dinner(request.params.id);
    const ours = claimed.get(household) ?? new Set();
    claimed.set(household, ours);
    const name = `${kept.id} ${announcement}`;
    if (ours.has(name)) return { yours: false };
    ours.add(name);
    const now = Date.parse((await household.view(kept)).at);
    const open = await kept.session.undelivered(sink, now);
    if (!open.some((one) => one.id === announcement)) return { yours: false };
    return { yours: (await household.delivered(kept, [announcement], sink)).length > 0 };
  });
}
