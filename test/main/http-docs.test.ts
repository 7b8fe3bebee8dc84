/** The calls of docs/http.md, run as printed. */
import { type ChildProcessWithoutNullStreams, execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { printed, root, start } from './program.ts';

const page = readFileSync(join(root, 'docs/http.md'), 'utf8');
const calls = [...page.matchAll(/```sh\n([^`]+)```/g)].map((match) => match[1] ?? '');
const port = /--port (\d+)/.exec(page)?.[1] ?? '';

let data: string;
let server: ChildProcessWithoutNullStreams;
beforeAll(async () => {
  data = mkdtempSync(join(tmpdir(), 'http-docs-'));
  server = start(['serve', '--port', port, '--clock', 'simulated', '--data', data]);
  await printed(server, /Listening on/);
});
afterAll(() => {
  server.kill('SIGKILL');
  rmSync(data, { recursive: true, force: true });
});

test('there are calls to run', () => expect(calls.length).toBeGreaterThan(4));

test.each(calls)('%s', async (commands) => {
  const { stdout } = await promisify(execFile)('bash', ['-ec', commands]);
  expect(stdout.length).toBeGreaterThan(10);
  expect(stdout).not.toMatch(/"status":[45]/);
});
