/** A real PostgreSQL server of the test's own, in a folder that goes with it. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { freePort, isOpen } from '../net.ts';

/** Where Debian puts the server's programs, newest first; else they are looked for on the path. */
function programsFolder(): string {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian)
    ? readdirSync(debian).sort((a, b) => Number(b) - Number(a))
    : [];
  return versions[0] === undefined ? '' : join(debian, versions[0], 'bin');
}

/** The server refuses to be run by root. */
function owner(): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const id = (what: string): number =>
    Number(execFileSync('id', [what, 'postgres'], { encoding: 'utf8' }));
  return { uid: id('-u'), gid: id('-g') };
}

export interface Server {
  url: string;
  port: number;
  pid(): number;
  /** A fresh database on it. */
  database(): Promise<string>;
  /** No file of it may grow beyond so much: a disk that is full for the server. */
  start(limits?: { fileMegabytesAtMost: number }): Promise<void>;
  /** `fast` lets go of clients and writes all out; `kill` does neither. */
  stop(how: 'fast' | 'kill'): Promise<void>;
  close(): Promise<void>;
}

let databases = 0;

export async function postgresServer(
  options: { settings?: Record<string, string>; folder?: string } = {},
): Promise<Server> {
  const folder = options.folder ?? mkdtempSync(join(tmpdir(), 'roastcall-postgres-'));
  const who = owner();
  if (who.uid !== undefined && who.gid !== undefined) chownSync(folder, who.uid, who.gid);
  const data = join(folder, 'data');
  const bin = programsFolder();
  execFileSync(
    join(bin, 'initdb'),
    ['-D', data, '-U', 'roastcall', '--auth=trust', '--encoding=UTF8', '--locale=C'],
    { ...who, stdio: ['ignore', 'ignore', 'inherit'], cwd: folder },
  );
  const port = await freePort();
  const settings = Object.entries({
    unix_socket_directories: folder,
    listen_addresses: '127.0.0.1',
    port: String(port),
    max_connections: '150',
    ...options.settings,
  }).flatMap(([name, value]) => ['-c', `${name}=${value}`]);
  const url = (name: string): string => `postgres://roastcall@127.0.0.1:${port}/${name}`;
  let child: ChildProcess | undefined;
  const start = async (limits?: { fileMegabytesAtMost: number }): Promise<void> => {
    const blocks = limits ? limits.fileMegabytesAtMost * 1024 : 'unlimited';
    const command = [join(bin, 'postgres'), '-D', data, ...settings];
    child = spawn('bash', ['-c', `ulimit -f ${blocks}; exec "$0" "$@"`, ...command], {
      ...who,
      stdio: 'ignore',
      cwd: folder,
    });
    for (let tries = 0; tries < 400; tries += 1) {
      if ((await isOpen(port)) && (await answers(url('postgres')))) return;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    throw new Error('postgres does not start; is it installed?');
  };
  const stop = async (how: 'fast' | 'kill'): Promise<void> => {
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const gone = new Promise<void>((resolve) => child?.once('exit', () => resolve()));
    child.kill(how === 'kill' ? 'SIGQUIT' : 'SIGINT');
    await gone;
  };
  await start();
  return {
    url: url('postgres'),
    port,
    pid: () => child?.pid ?? 0,
    start,
    stop,
    async database() {
      databases += 1;
      const name = `kitchen_${process.pid}_${databases}`;
      await asked(url('postgres'), `CREATE DATABASE ${name}`);
      return url(name);
    },
    async close() {
      await stop('kill');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Runs one statement on a connection of its own, past the journal. */
export async function asked(
  url: string,
  text: string,
  values: unknown[] = [],
): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  client.on('error', () => undefined);
  await client.connect();
  try {
    return (await client.query(text, values)).rows;
  } finally {
    await client.end();
  }
}

const answers = (url: string): Promise<boolean> =>
  asked(url, 'SELECT 1').then(
    () => true,
    () => false,
  );
