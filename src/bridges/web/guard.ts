/**
 * Lets in who may come in: no page of another site, no other name on loopback, and beyond that
 * whoever shows a token, by header or by the cookie of a paired tablet. The page's own files are open
 * to all; everything a dinner can be read or changed by is not.
 */
import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { Household } from '../../household/household.ts';
import { Problem } from './problem.ts';

export interface Guard {
  /** Answer only to loopback names, so that no web page can reach in by a name of its own. */
  loopbackOnly: boolean;
  /** The household a caller may act for; undefined when the caller is not known. */
  admit(secret: string | undefined): Promise<Household | undefined>;
}

export const cookieName = 'roastcall';

/** Wrong or missing tokens from one address before it must wait. */
const strangersPerMinute = 30;

const guarded = /^\/(api\/|metrics$|openapi\.json$)/;

export function standGuard(app: FastifyInstance, { loopbackOnly, admit }: Guard): void {
  app.decorateRequest('household', null);
  const strangers = app.createRateLimit({ max: strangersPerMinute, timeWindow: '1 minute' });
  app.addHook('onRequest', async (request) => {
    refuseOtherSites(request, loopbackOnly);
    if (!guarded.test(pathOf(request))) return;
    const household = await admitted(request, admit);
    if (household) return request.setDecorator('household', household);
    const met = await strangers(request);
    if (!met.isAllowed && met.isExceeded)
      throw new Problem(429, 'Too many tries', 'Too many wrong tokens; wait a minute.');
    throw new Problem(401, 'Who is there?', 'Pair this tablet, or send "Authorization: Bearer …".');
  });
}

/** The household of a request that the guard let in. */
export function householdOf(request: FastifyRequest): Household {
  return request.getDecorator<Household>('household');
}

export const isAdmitted = (request: FastifyRequest): boolean =>
  request.getDecorator<Household | null>('household') !== null;

export const secretOf = ({ headers }: FastifyRequest): string | undefined =>
  bearerOf(headers.authorization) ?? cookieOf(headers.cookie);

/** A browser keeps a cookie that was revoked; it then counts as none, where none is needed. */
async function admitted(
  { headers }: FastifyRequest,
  admit: Guard['admit'],
): Promise<Household | undefined> {
  const bearer = bearerOf(headers.authorization);
  if (bearer !== undefined) return admit(bearer);
  const cookie = cookieOf(headers.cookie);
  return (cookie === undefined ? undefined : await admit(cookie)) ?? admit(undefined);
}

const bearerOf = (header: string | undefined): string | undefined =>
  /^Bearer (.+)$/i.exec(header ?? '')?.[1];

const cookieOf = (header: string | undefined): string | undefined =>
  header
    ?.split(';')
    .map((pair) => pair.trim())
    .find((pair) => pair.startsWith(`${cookieName}=`))
    ?.slice(cookieName.length + 1);

const pathOf = ({ url }: FastifyRequest): string => url.split('?', 1)[0] ?? url;

function refuseOtherSites({ hostname, headers }: FastifyRequest, loopbackOnly: boolean): void {
  const name = hostname.replace(/:\d+$/, '');
  if (loopbackOnly && !/^(localhost|127(\.\d{1,3}){3}|\[?::1\]?)$/i.test(name))
    throw new Problem(403, 'Not allowed', 'This address answers to loopback names only.');
  const { origin, host } = headers;
  if (origin !== undefined && !sameHost(origin, host))
    throw new Problem(403, 'Not allowed', 'Pages of other sites may not call this.');
}

function sameHost(origin: string, host: string | undefined): boolean {
  try {
    return new URL(origin).host === host;
  } catch {
    return false;
  }
}
