/** The bridges' options: what cannot be is refused before anything is opened; what can, opens. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Command } from 'commander';
import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import {
  type BridgeOptions,
  bridgesOf,
  withBridgeOptions,
} from '../../src/main/commands/serve-bridges.ts';
import { instanceOf } from '../../src/main/instance.ts';
import { Refusal } from '../../src/main/refusal.ts';
import { broker, peer } from './bus.ts';
import { dueNow, fakeHouse, until } from './fakes.ts';
import { receiver } from './receiver.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'roastcall-flags-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const bridges = (...words: string[]) => {
  const command = withBridgeOptions(new Command());
  command.parse(words, { from: 'user' });
  return bridgesOf(command.opts() as BridgeOptions, '0', folder);
};

test.each([
  ['--wyoming 70000', /--wyoming .* not "70000"/],
  ['--announce-service', /--wyoming/],
  ['--wyoming 0 --announce-service', /0\.0\.0\.0/],
  ['--wyoming 0 --wyoming-allow kitchen', /192\.168\.1\.0\/24.* not "kitchen"/],
  ['--announce-to ftp://house.invalid', /http:\/\//],
  ['--announce-to http://a:b@house.invalid', /password/],
  ['--mqtt http://house.invalid', /mqtt:\/\//],
  ['--mqtt mqtt://house.invalid --mqtt-base a/#', /plain topic/],
  ['--mqtt mqtt://house.invalid --mqtt-base /a', /plain topic/],
  ['--mqtt mqtt://house.invalid --mqtt-discovery a/+', /plain topic/],
  ['--mqtt mqtt://house.invalid --mqtt-reading-path a..b', /probes\[0\]/],
  ['--house http://house.invalid', /ROASTCALL_HOUSE_TOKEN/],
])('%s is refused in one sentence with what to do', (words, sentence) => {
  expect(() => bridges(...words.split(' '))).toThrow(Refusal);
  expect(() => bridges(...words.split(' '))).toThrow(sentence);
});

test.each([
  ['--house-service announce', /domain\.service/],
  ['--house-data kitchen', /name=value/],
  ['--house-data =kitchen', /name=value/],
])('%s is refused beside a house', (words, sentence) => {
  process.env.ROASTCALL_HOUSE_TOKEN = 't0ken';
  try {
    expect(() => bridges('--house', 'http://house.invalid', ...words.split(' '))).toThrow(sentence);
  } finally {
    delete process.env.ROASTCALL_HOUSE_TOKEN;
  }
});

test('all of them at once: each tells where it is, each gets the call, all can be closed', async () => {
  const bus = await broker();
  const hook = await receiver(() => ({ status: 200 }));
  const server = await receiver(() => ({ status: 200, body: { state: 'idle' } }));
  process.env.ROASTCALL_HOUSE_TOKEN = 't0ken';
  const house = await fakeHouse();
  const all = bridges(
    ...['--wyoming', '0', '--mqtt', bus.url.href, '--mqtt-base', 'kitchen/roast'],
    ...['--no-mqtt-discovery', '--announce-to', hook.url.href, '--house', server.url.href],
    ...['--house-service', 'tts.speak', '--house-data', 'entity_id=tts.home', 'language=en=GB'],
  );
  delete process.env.ROASTCALL_HOUSE_TOKEN;
  const other = await peer(bus.url);
  const lines = await all.open(house.household);
  expect(lines.join('\n')).toMatch(/^Wyoming on 127\.0\.0\.1:\d+\nMQTT at .*kitchen\/roast\/…$/);
  await house.raise([dueNow(house, 'a')]);
  await until(() => [hook, server].every((one) => one.received.length === 1));
  await until(() => other.on('kitchen/roast/announce').length === 1);
  expect(server.received[0]).toMatchObject({
    path: '/api/services/tts/speak',
    body: { entity_id: 'tts.home', language: 'en=GB', message: 'a spoken' },
  });
  await all.close();
  await until(() => other.on('kitchen/roast/status').at(-1) === 'offline');
  expect(other.seen.some((one) => one.topic.includes('config'))).toBe(false);
  await other.leave();
  await bus.die();
  hook.close();
  server.close();
});

test('who cannot be reached is named on stderr with the reason, and again when it can', async () => {
  const hook = await receiver(() => ({ status: 200 }));
  await hook.shut();
  const house = await fakeHouse();
  const all = bridges('--announce-to', `${hook.url.href}s3cret`);
  const written: string[] = [];
  const write = vi.spyOn(process.stderr, 'write').mockImplementation((text) => {
    written.push(String(text));
    return true;
  });
  try {
    await all.open(house.household);
    await house.raise([dueNow(house, 'a')]);
    await until(() => written.length === 1);
    await hook.open();
    await until(
      () => written.length === 2,
      () => written,
    );
  } finally {
    write.mockRestore();
    await all.close();
    hook.close();
  }
  expect(written[0]).toMatch(/^webhook:127\.0\.0\.1:\d+#\w+: .*ECONNREFUSED.*; trying again\n$/);
  expect(written[1]).toMatch(/^webhook:\S+: reached\n$/);
  expect(written.join('')).not.toMatch(/s3cret/);
});

test('a household is known by the same name run after run', () => {
  const name = instanceOf(folder);
  expect(name).toMatch(/^[0-9a-f]{8}$/);
  expect(instanceOf(folder)).toBe(name);
  expect(readFileSync(join(folder, 'instance'), 'utf8').trim()).toBe(name);
});
