/** The OpenAPI document, linted by a public linter, and the answers held against their schemas. */
import { createConfig, lintFromString } from '@redocly/openapi-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  listAnswer,
  movedAnswer,
  openedAnswer,
  problemAnswer,
  turnAnswer,
} from '../../src/bridges/web/schemas.ts';
import { served } from './served.ts';

let house: Awaited<ReturnType<typeof served>>;
beforeAll(async () => {
  house = await served();
});
afterAll(() => house.close());

async function call(path: string, body?: unknown): Promise<unknown> {
  const response = await fetch(house.base + path, {
    ...(body === undefined ? {} : { method: 'POST', body: JSON.stringify(body) }),
    headers: body === undefined ? {} : { 'content-type': 'application/json' },
  });
  return response.json();
}

test('the document has nothing that the linter of the specification minds', async () => {
  const source = JSON.stringify(await call('/openapi.json'));
  const config = await createConfig({ extends: ['recommended'] });
  const found = await lintFromString({ source, config, absoluteRef: 'openapi.json' });
  expect(found.map((one) => `${one.ruleId} ${one.message}`)).toEqual([]);
});

test('a document with a mistake is minded', async () => {
  const source = JSON.stringify({ openapi: '3.1.0', info: { title: 'x' }, paths: {} });
  const config = await createConfig({ extends: ['recommended'] });
  const found = await lintFromString({ source, config, absoluteRef: 'openapi.json' });
  expect(found.length).toBeGreaterThan(0);
});

test('every answer is what its schema says, over a dinner with a forecast and options', async () => {
  const opened = openedAnswer.parse(
    await call('/api/dinners', { at: '2026-12-19T13:30:00-06:00', timeZone: 'America/Chicago' }),
  );
  const say = async (text: string) =>
    turnAnswer.parse(await call(`/api/dinners/${opened.id}/say`, { text }));
  await say('seven pound three bone rib roast, dinner at seven for six, medium rare');
  const to = async (time: string) =>
    movedAnswer.parse(
      await call(`/api/dinners/${opened.id}/clock`, { at: `2026-12-19T${time}:00-06:00` }),
    );
  await to('15:40');
  await say("it's in the oven");
  await to('17:10');
  await say('it reads 84');
  const late = await say('guests are late 40 minutes');
  expect(late.view.options?.length).toBeGreaterThan(0);
  expect(late.view.forecast?.core.length).toBeGreaterThan(10);
  expect(listAnswer.parse(await call('/api/dinners'))[0]).toMatchObject({
    id: opened.id,
    current: true,
    serving: late.view.serving.wanted,
  });
  problemAnswer.parse(await call('/api/dinners/none'));
});
