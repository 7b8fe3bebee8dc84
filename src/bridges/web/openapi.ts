/** The OpenAPI 3.1 document, made from the schemas that check the bodies and describe the answers. */
import { z } from 'zod';
import { viewSchema } from '../../kitchen/view.ts';
import {
  claimAnswer,
  claimBody,
  clockBody,
  healthAnswer,
  listAnswer,
  movedAnswer,
  openedAnswer,
  openingBody,
  pageAnswer,
  problemAnswer,
  sayBody,
  turnAnswer,
} from './schemas.ts';

const named = z.registry<{ id: string }>();
const parts = {
  View: viewSchema,
  Turn: turnAnswer,
  Opened: openedAnswer,
  Moved: movedAnswer,
  Dinners: listAnswer,
  Health: healthAnswer,
  Problem: problemAnswer,
  Opening: openingBody,
  Said: sayBody,
  Clock: clockBody,
  Claim: claimBody,
  Claimed: claimAnswer,
  Page: pageAnswer,
} as const;
for (const [id, schema] of Object.entries(parts)) named.add(schema, { id });

/** Every named shape, with references between them as the document writes them. */
function components(): Record<string, object> {
  const { schemas } = z.toJSONSchema(named, {
    uri: (id) => `#/components/schemas/${id}`,
    io: 'input',
  });
  return Object.fromEntries(
    Object.entries(schemas).map(([id, schema]) => {
      const { $schema: _, $id: __, ...shape } = schema as Record<string, unknown>;
      return [id, shape];
    }),
  );
}

type Part = keyof typeof parts;

const json = (part: Part): object => ({
  'application/json': { schema: { $ref: `#/components/schemas/${part}` } },
});
const text = (type: string): object => ({ [type]: { schema: { type: 'string' } } });
const answer = (description: string, content: object): object => ({ description, content });
const body = (part: Part, required = true): object => ({ required, content: json(part) });
const problem = (description: string): object =>
  answer(description, {
    'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } },
  });

const problems = {
  '400': problem('Not JSON, or no log position'),
  '401': problem('No token, or a wrong one'),
  '403': problem('A page of another site, or another name than loopback'),
  '404': problem('No such dinner'),
  '409': problem('The clock does not go back, or is real'),
  '413': problem('Too long'),
  '422': problem('A field that is unknown, missing or wrong, by name'),
  '429': problem('Too much at once'),
  '503': problem('The journal cannot be written, or too many are connected'),
};
type Code = keyof typeof problems;

/** Answers by code: the good one, those of its own kind of trouble, and those of every call. */
const answers = (good: Record<string, object>, ...codes: readonly Code[]): object =>
  Object.fromEntries([
    ...Object.entries(good),
    ...(['401', '403', '429', ...codes] as const).map((code) => [code, problems[code]]),
  ]);

const id = { name: 'id', in: 'path', required: true, schema: { type: 'string' } };
const lastSeen = {
  name: 'Last-Event-ID',
  in: 'header',
  required: false,
  description: 'Events after this log position; left out: from now on',
  schema: { type: 'integer', minimum: -1 },
};

interface Call {
  id: string;
  does: string;
  takes?: object;
  parameters?: object[];
  gives: object;
}

const call = ({ id: operationId, does, takes, parameters, gives }: Call): object => ({
  operationId,
  summary: does,
  ...(parameters ? { parameters } : {}),
  ...(takes ? { requestBody: takes } : {}),
  responses: gives,
});

const turn = { '200': answer('What was heard and answered', json('Turn')) };
const turnTroubles = ['400', '409', '413', '422', '503'] as const;

const paths = (): object => ({
  '/api/dinners': {
    get: call({
      id: 'listDinners',
      does: 'Open and past dinners, newest first',
      gives: answers({ '200': answer('Dinners', json('Dinners')) }),
    }),
    post: call({
      id: 'openDinner',
      does: 'Open a dinner',
      takes: body('Opening', false),
      gives: answers({ '201': answer('Its name and view', json('Opened')) }, '400', '422'),
    }),
  },
  '/api/say': {
    post: call({
      id: 'say',
      does: "Say something to the household's open dinner, made if there is none",
      takes: body('Said'),
      gives: answers(turn, ...turnTroubles),
    }),
  },
  '/api/dinners/{id}': {
    parameters: [id],
    get: call({
      id: 'viewDinner',
      does: 'The view of a dinner',
      gives: answers({ '200': answer('View', json('View')) }, '404'),
    }),
  },
  '/api/dinners/{id}/say': {
    parameters: [id],
    post: call({
      id: 'sayToDinner',
      does: 'Say something to one dinner',
      takes: body('Said'),
      gives: answers(turn, '404', ...turnTroubles),
    }),
  },
  '/api/dinners/{id}/clock': {
    parameters: [id],
    post: call({
      id: 'moveClock',
      does: 'Move a simulated clock forward',
      takes: body('Clock'),
      gives: answers(
        { '200': answer('What fell due on the way, and the view', json('Moved')) },
        '404',
        '409',
        '422',
      ),
    }),
  },
  '/api/dinners/{id}/stream': {
    parameters: [id],
    get: call({
      id: 'stream',
      does: 'Events turn, announcement and view as they happen; their id is the log position',
      parameters: [lastSeen],
      gives: answers(
        { '200': answer('Server-sent events', text('text/event-stream')) },
        '400',
        '404',
        '503',
      ),
    }),
  },
  '/api/dinners/{id}/log': {
    parameters: [id],
    get: call({
      id: 'log',
      does: 'The log',
      gives: answers({ '200': answer('One fact a line', text('application/jsonl')) }, '404'),
    }),
  },
  '/api/dinners/{id}/claim': {
    parameters: [id],
    post: call({
      id: 'claimAnnouncement',
      does: 'Of all pages that show an announcement, the first to ask speaks it',
      takes: body('Claim'),
      gives: answers({ '200': answer('Whose it is', json('Claimed')) }, '404', '422'),
    }),
  },
  '/api/page': {
    get: call({
      id: 'page',
      does: 'What a page needs to begin with',
      gives: answers({ '200': answer('The open dinner and the clock', json('Page')) }),
    }),
  },
  '/healthz': {
    get: {
      ...call({
        id: 'health',
        does: 'Whether the journal can be written',
        gives: {
          '200': answer('It can', json('Health')),
          '403': problems['403'],
          '503': problems['503'],
        },
      }),
      security: [],
    },
  },
  '/metrics': {
    get: call({
      id: 'metrics',
      does: 'Counts and times, in the Prometheus text form',
      gives: answers({ '200': answer('Metrics', text('text/plain')) }),
    }),
  },
});

export const openApi = (version: string): object => ({
  openapi: '3.1.0',
  info: { title: 'Roastcall', version, license: { name: 'MIT', identifier: 'MIT' } },
  servers: [{ url: '/' }],
  security: [{}, { token: [] }, { cookie: [] }],
  components: {
    securitySchemes: {
      token: { type: 'http', scheme: 'bearer' },
      cookie: { type: 'apiKey', in: 'cookie', name: 'roastcall' },
    },
    schemas: components(),
  },
  paths: paths(),
});
