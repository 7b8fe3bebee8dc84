/** Pairing a tablet: a plain form without script, a code used once, a cookie that scripts cannot read. */
import type { FastifyInstance, FastifyReply } from 'fastify';
import { z } from 'zod';
import { cookieName } from './guard.ts';
import { bodyOf, Problem } from './problem.ts';

export interface PairOptions {
  /** A token for whoever shows the code first; undefined for a code that is wrong, used or old. */
  pair(code: string, label: string): Promise<string | undefined>;
  /** Whether the cookie may travel over TLS only. */
  secure: boolean;
}

const pairBody = z.strictObject({
  code: z.string().max(40),
  label: z.string().max(60).optional(),
});

const triesPerMinute = 10;
const cookieLivesSeconds = 400 * 24 * 3600;

export function servePairing(app: FastifyInstance, { pair, secure }: PairOptions): void {
  app.addContentTypeParser(
    'application/x-www-form-urlencoded',
    { parseAs: 'string', bodyLimit: 2_000 },
    async (_request: unknown, body: string) => Object.fromEntries(new URLSearchParams(body)),
  );
  const limit = { rateLimit: { max: triesPerMinute, timeWindow: '1 minute' } };
  app.get<{ Querystring: { code?: unknown } }>('/pair', async ({ query }, reply) => {
    const code = typeof query.code === 'string' ? query.code.slice(0, 40) : '';
    return html(reply, form(code, 'Pair this tablet with the kitchen.'));
  });
  app.post('/pair', { config: limit }, async (request, reply) => {
    const { code, label = 'tablet' } = bodyOf(pairBody, request.body);
    const token = await pair(code, label);
    const asForm = request.headers['content-type']?.includes('urlencoded');
    if (token === undefined) {
      const why = 'That code is wrong, used or too old; ask the kitchen for a fresh one.';
      if (asForm) return html(reply.code(403), form('', why));
      throw new Problem(403, 'Not paired', why);
    }
    const rules = `Path=/; HttpOnly; SameSite=Strict; Max-Age=${cookieLivesSeconds}`;
    reply.header('set-cookie', `${cookieName}=${token}; ${rules}${secure ? '; Secure' : ''}`);
    return asForm ? reply.redirect('/', 303) : { paired: true };
  });
}

const html = (reply: FastifyReply, body: string): FastifyReply =>
  reply
    .type('text/html; charset=utf-8')
    .header('cache-control', 'no-store')
    .header('referrer-policy', 'no-referrer')
    .header('x-content-type-options', 'nosniff')
    .header(
      'content-security-policy',
      "default-src 'none'; form-action 'self'; frame-ancestors 'none'; base-uri 'none'",
    )
    .send(body);

const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);

const form = (code: string, sentence: string): string => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Pair</title>
<h1>${escaped(sentence)}</h1>
<form method="post" action="/pair">
<p><label>Code from the kitchen's terminal
<input name="code" value="${escaped(code)}" autocomplete="off" autocapitalize="characters" required maxlength="40"></label></p>
<p><label>What to call this tablet
<input name="label" value="kitchen tablet" maxlength="60"></label></p>
<p><button>Pair</button></p>
</form>
`;
