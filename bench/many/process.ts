/** A server of the bench, as a process of its own. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Process {
  child: ChildProcess;
  base: string;
}

export async function started(words: readonly string[]): Promise<Process> {
  const program = join(import.meta.dirname, '../../dist/main/roastcall.js');
  const child = spawn(process.execPath, [program, 'serve', '--port', '0', ...words], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const base = await new Promise<string>((resolve, reject) => {
    let out = '';
    child.stdout?.setEncoding('utf8').on('data', (text: string) => {
      out += text;
      const found = /Listening on (\S+)/.exec(out)?.[1];
      if (found) resolve(found);
    });
    child.once('close', () => reject(new Error(`the server ended: ${out}`)));
  });
  return { child, base };
}

export async function stopped(
  { child }: Process,
  signal: NodeJS.Signals = 'SIGTERM',
): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return;
  const gone = new Promise((resolve) => child.once('close', resolve));
  child.kill(signal);
  await gone;
}

export const residentMegabytes = ({ child }: Process): number =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1]) / 1024;
