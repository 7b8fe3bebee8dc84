/** The program itself on a real broker: killed without a farewell in the middle of a dinner. */
import type { ChildProcessWithoutNullStreams } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { printed, start } from '../../main/program.ts';
import { peer } from '../bus.ts';
import { until } from '../fakes.ts';
import { mosquitto } from './mosquitto.ts';

const killed = (child: ChildProcessWithoutNullStreams): Promise<void> =>
  new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGKILL');
  });

test('a dinner goes on after a kill: nothing is heard, answered or called a second time or not at all', async () => {
  const data = mkdtempSync(join(tmpdir(), 'roastcall-dinner-'));
  const broker = await mosquitto();
  const words = ['serve', '--port', '0', '--clock', 'simulated', '--data', data];
  const serve = async () => {
    const child = start([...words, '--mqtt', broker.url.href]);
    const out = await printed(child, /Listening on (\S+)[\s\S]*MQTT at/);
    return { child, base: /Listening on (\S+)/.exec(out)?.[1] ?? '' };
  };
  const other = await peer(broker.url);
  const calls = (from = other): unknown[] => from.json('roastcall/announce').map((one) => one.id);
  try {
    const first = await serve();
    const post = async (base: string, path: string, body: object) => {
      const response = await fetch(base + path, {
        method: 'POST',
        headers: { 'content-type': 'application/json' },
        body: JSON.stringify(body),
      });
      return (await response.json()) as { id: string; announcements: { id: string }[] };
    };
    const { id } = await post(first.base, '/api/dinners', { at: '2099-12-19T13:30:00+00:00' });
    const order = 'seven pound three bone rib roast, dinner at seven for six, medium rare';
    await other.say('roastcall/say', { id: '1', text: order, device: 'hall' });
    await until(() => other.on('roastcall/reply').length === 1);
    const early = await post(first.base, `/api/dinners/${id}/clock`, {
      at: '2099-12-19T15:00:00+00:00',
    });
    await until(() => calls().length === early.announcements.length);

    await broker.kill();
    const late = await post(first.base, `/api/dinners/${id}/clock`, {
      at: '2099-12-19T16:00:00+00:00',
    });
    expect(late.announcements.length).toBeGreaterThan(0);
    await killed(first.child);
    await broker.start();
    const witness = await peer(broker.url);
    const second = await serve();
    await until(
      () => calls(witness).length >= late.announcements.length,
      () => calls(witness),
    );
    // The sender, unsure of its first words, sends them again.
    await witness.say('roastcall/say', { id: '1', text: order, device: 'hall' });
    await until(() => witness.on('roastcall/reply').length === 1);
    expect(witness.json('roastcall/reply')[0]?.text).toBe(other.json('roastcall/reply')[0]?.text);
    expect(calls(witness)).toEqual(late.announcements.map((one) => one.id));
    const log = await (await fetch(`${second.base}/api/dinners/${id}/log`)).text();
    expect(log.split('\n').filter((line) => line.includes('"words-heard"'))).toHaveLength(1);

    await killed(second.child);
    await until(() => witness.on('roastcall/status').at(-1) === 'offline');
    await witness.leave();
  } finally {
    await other.leave().catch(() => undefined);
    await broker.close();
    rmSync(data, { recursive: true, force: true });
  }
});
