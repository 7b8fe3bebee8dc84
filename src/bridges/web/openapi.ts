/** The OpenAPI 3.1 document, made from the schemas that check the bodies. */
import { z } from 'zod';
import { clockBody, openingBody, sayBody } from './schemas.ts';

const object = { type: 'object' } as const;
const json = (schema: object): object => ({ 'application/json': { schema } });
const answer = (description: string, schema: object = object): object => ({
  description,
  content: json(schema),
});
const problem = {
  description: 'A problem',
  content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
};
const body = (schema: z.ZodType, required = true): object => {
  const { $schema: _, ...shape } = z.toJSONSchema(schema) as Record<string, unknown>;
  return { required, content: json(shape) };
};
const id = { name: 'id', in: 'path', required: true, schema: { type: 'string' } };
const operation = (operationId: string, summary: string, rest: object): object => ({
  operationId,
  summary,
  ...rest,
});
const responses = (code: string, what: object): object => ({ [code]: what, default: problem });
const turn = answer('What was heard and answered', { $ref: '#/components/schemas/Turn' });
const lines = {
  description: 'One fact a line',
  content: { 'application/jsonl': { schema: { type: 'string' } } },
};
const events = {
  description: 'Events turn, announcement and view; id is the log position',
  content: { 'text/event-stream': { schema: { type: 'string' } } },
};

const schemas = {
  Problem: {
    type: 'object',
    required: ['title', 'status', 'detail'],
    properties: {
      type: { type: 'string' },
      title: { type: 'string' },
      status: { type: 'integer' },
      detail: { type: 'string' },
    },
  },
  View: {
    type: 'object',
    required: ['id', 'at', 'stage', 'sides', 'serving', 'steps', 'cautions', 'timers', 'position'],
  },
  Turn: {
    type: 'object',
    required: ['heard', 'replies', 'announcements', 'view'],
    properties: {
      heard: { type: 'array', items: object },
      replies: {
        type: 'array',
        items: {
          type: 'object',
          required: ['text', 'speech', 'key'],
          properties: {
            text: { type: 'string' },
            speech: { type: 'string' },
            key: { type: 'string' },
          },
        },
      },
      announcements: { type: 'array', items: object },
      view: { $ref: '#/components/schemas/View' },
    },
  },
};

export const openApi = (version: string): object => ({
  openapi: '3.1.0',
  info: { title: 'Roastcall', version, license: { name: 'MIT', identifier: 'MIT' } },
  servers: [{ url: '/' }],
  security: [{}, { token: [] }],
  components: { securitySchemes: { token: { type: 'http', scheme: 'bearer' } }, schemas },
  paths: {
    '/api/dinners': {
      get: operation('listDinners', 'Open and past dinners', {
        responses: responses('200', answer('Dinners', { type: 'array', items: object })),
      }),
      post: operation('openDinner', 'Open a dinner', {
        requestBody: body(openingBody, false),
        responses: responses('201', answer('Its name and view')),
      }),
    },
    '/api/say': {
      post: operation('say', "Say something to the household's open dinner", {
        requestBody: body(sayBody),
        responses: responses('200', turn),
      }),
    },
    '/api/dinners/{id}': {
      parameters: [id],
      get: operation('viewDinner', 'The view of a dinner', {
        responses: responses('200', answer('View', { $ref: '#/components/schemas/View' })),
      }),
    },
    '/api/dinners/{id}/say': {
      parameters: [id],
      post: operation('sayToDinner', 'Say something to one dinner', {
        requestBody: body(sayBody),
        responses: responses('200', turn),
      }),
    },
    '/api/dinners/{id}/clock': {
      parameters: [id],
      post: operation('moveClock', 'Move a simulated clock forward', {
        requestBody: body(clockBody),
        responses: responses('200', answer('What fell due on the way, and the view')),
      }),
    },
    '/api/dinners/{id}/stream': {
      parameters: [id],
      get: operation('stream', 'Events as they happen', { responses: responses('200', events) }),
    },
    '/api/dinners/{id}/log': {
      parameters: [id],
      get: operation('log', 'The log', { responses: responses('200', lines) }),
    },
    '/healthz': {
      get: operation('health', 'Whether the journal can be written', {
        responses: responses('200', answer('It can')),
      }),
    },
  },
});
