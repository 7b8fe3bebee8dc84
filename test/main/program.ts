/** Starts the program as a process of its own, as a cook or another program would. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

export const root = join(import.meta.dirname, '../..');

const built = join(root, 'dist/main/roastcall.js');
const changedAt = (path: string): number =>
  statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? Number.NEGATIVE_INFINITY;
const sourcesChangedAt = (): number =>
  Math.max(
    ...readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => changedAt(join(entry.parentPath, entry.name))),
  );

/** The program as built where that holds every change of the sources; else the sources, which take some seconds more to load. */
export const program: readonly string[] =
  changedAt(built) >= sourcesChangedAt()
    ? [process.execPath, built]
    : [
        process.execPath,
        '--import',
        import.meta.resolve('tsx'),
        join(root, 'src/main/roastcall.ts'),
      ];

export interface StartOptions {
  env?: Record<string, string>;
  /** No file may grow beyond so many blocks of 1024 bytes: a disk that is full for this process. */
  fileBlocksAtMost?: number;
}

export function start(
  words: readonly string[],
  { env = {}, fileBlocksAtMost }: StartOptions = {},
): ChildProcessWithoutNullStreams {
  const command = [...program, ...words];
  const limited = ['bash', '-c', `ulimit -f ${fileBlocksAtMost}; exec "$0" "$@"`, ...command];
  const [first = '', ...rest] = fileBlocksAtMost === undefined ? command : limited;
  const child = spawn(first, rest, {
    cwd: root,
    env: { ...process.env, TZ: 'Europe/Dublin', FORCE_COLOR: '1', ...env },
  });
  child.stdout.setEncoding('utf8');
  child.stderr.setEncoding('utf8');
  return child;
}

export interface Ended {
  code: number | null;
  out: string;
  err: string;
}

/** Runs it to its end, with that input. */
export function ended(words: readonly string[], input = ''): Promise<Ended> {
  const child = start(words);
  let [out, err] = ['', ''];
  child.stdout.on('data', (text: string) => {
    out += text;
  });
  child.stderr.on('data', (text: string) => {
    err += text;
  });
  child.stdin.end(input);
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, out, err })));
}

/** What it has printed so far, once that matches. */
export function printed(child: ChildProcessWithoutNullStreams, wanted: RegExp): Promise<string> {
  let out = '';
  return new Promise((resolve, reject) => {
    child.stdout.on('data', (text: string) => {
      out += text;
      if (wanted.test(out)) resolve(out);
    });
    child.on('close', () => reject(new Error(`ended before ${wanted}: ${out}`)));
  });
}
