/** Each page of docs/bridges followed as written: its `sh` blocks run, its `text` blocks come out. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { program, root } from '../../main/program.ts';
import { isOpen } from '../../net.ts';
import { until } from '../fakes.ts';

const written = 'node dist/main/roastcall.js';

/** What does not end by itself, and how one sees that it has begun. */
const lasting: [command: RegExp, begun: RegExp | number][] = [
  [/ serve /, /Listening on/],
  [/^mosquitto -c/m, 1_000],
  [/mosquitto_sub/, 1_000],
  [/\.listen\(/, 1_000],
];

const blocksOf = (page: string, kind: string): string[] =>
  [...page.matchAll(new RegExp(`^\`\`\`${kind}\n([\\s\\S]*?)^\`\`\`$`, 'gm'))].map(
    (one) => one[1] ?? '',
  );

const pattern = (line: string): RegExp => new RegExp(line.split('…').map(escaped).join('.*'));
function escaped(text: string): string {
  return text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');
}

test.each(['wyoming', 'mqtt', 'webhook', 'home-server'])('%s.md, as written', async (name) => {
  const page = readFileSync(join(root, 'docs/bridges', `${name}.md`), 'utf8');
  const folder = mkdtempSync(join(tmpdir(), 'roastcall-docs-'));
  const children: ChildProcess[] = [];
  let out = '';
  const run = (script: string): ChildProcess => {
    const child = spawn('bash', ['-c', script.replaceAll(written, program.join(' '))], {
      cwd: folder,
      detached: true,
      env: { ...process.env, TZ: 'America/Chicago' },
    });
    children.push(child);
    for (const stream of [child.stdout, child.stderr])
      stream?.on('data', (text) => {
        out += text;
      });
    return child;
  };
  try {
    for (const block of blocksOf(page, 'sh')) {
      // "A broker, if there is none yet."
      if (/^mosquitto -c/m.test(block) && (await isOpen(1883))) continue;
      const begun = lasting.find(([command]) => command.test(block))?.[1];
      const child = run(block);
      if (begun instanceof RegExp) {
        const from = out.length;
        await until(
          () => begun.test(out.slice(from)),
          () => out,
        );
      } else if (begun !== undefined) {
        await new Promise((resolve) => setTimeout(resolve, begun));
        expect([child.exitCode, out.match(/error|not found/i)]).toEqual([null, null]);
      } else {
        const code = await new Promise((resolve) => child.once('close', resolve));
        expect([code, out]).toEqual([0, out]);
      }
    }
    const lines = blocksOf(page, 'text').flatMap((block) => block.trim().split('\n'));
    expect(lines.length).toBeGreaterThan(0);
    for (const line of lines)
      await until(
        () => pattern(line).test(out),
        () => [line, out],
      );
  } finally {
    for (const { pid, exitCode } of children)
      if (pid !== undefined && exitCode === null) process.kill(-pid, 'SIGKILL');
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});
