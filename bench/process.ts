/** A server for a bench to load, as a process of its own. */
import { type ChildProcess, spawn } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Process {
  child: ChildProcess;
  base: string;
}

export async function started(words: readonly string[]): Promise<Process> {
  const program = join(import.meta.dirname, '../dist/main/roastcall.js');
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

/** Seconds on a processor so far, its threads' with it; of a server with children, theirs too. */
export function cpuSeconds(pid: number): number {
  const own = (one: string): number => {
    const fields = readFileSync(`/proc/${one}/stat`, 'utf8')
      .replace(/^.*\) /s, '')
      .split(' ');
    // utime, stime, and those of children that ended (proc(5), fields 14 to 17).
    return fields.slice(11, 15).reduce((sum, ticks) => sum + Number(ticks), 0) / ticksASecond;
  };
  const isChild = (one: string): boolean => {
    try {
      return new RegExp(`\\) \\S ${pid} `).test(readFileSync(`/proc/${one}/stat`, 'utf8'));
    } catch {
      return false;
    }
  };
  const children = readdirSync('/proc').filter((one) => /^\d+$/.test(one) && isChild(one));
  return [String(pid), ...children].reduce((sum, one) => sum + own(one), 0);
}

/** What Linux counts processor time in. */
const ticksASecond = 100;

export const residentMegabytes = ({ child }: Process): number =>
  Number(/VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'utf8'))?.[1]) / 1024;
