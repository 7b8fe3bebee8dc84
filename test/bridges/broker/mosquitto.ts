/** A real mosquitto of the test's own, and a line to it that can be cut. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { type AddressInfo, connect, createServer, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A port that was free a moment ago. */
export async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise<void>((resolve) => server.close(() => resolve()));
  return port;
}

export const isOpen = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1');
    socket.on('connect', () => {
      socket.destroy();
      resolve(true);
    });
    socket.on('error', () => resolve(false));
  });

async function reachable(port: number): Promise<void> {
  for (let tries = 0; ; tries += 1) {
    if (await isOpen(port)) return;
    if (tries > 200) throw new Error('mosquitto does not start; is it installed?');
    await new Promise((resolve) => setTimeout(resolve, 25));
  }
}

export async function mosquitto(login?: { name: string; password: string }) {
  const folder = mkdtempSync(join(tmpdir(), 'roastcall-broker-'));
  const port = await freePort();
  const config = join(folder, 'm.conf');
  const passwords = join(folder, 'passwords');
  const access = login
    ? `allow_anonymous false\npassword_file ${passwords}\n`
    : 'allow_anonymous true\n';
  if (login) execFileSync('mosquitto_passwd', ['-b', '-c', passwords, login.name, login.password]);
  // Run by root it would become another user, who cannot read this folder.
  const user = process.getuid?.() === 0 ? 'user root\n' : '';
  writeFileSync(
    config,
    `listener ${port} 127.0.0.1\n${access}persistence false\nsys_interval 1\n${user}`,
  );
  let child: ChildProcess | undefined;
  const start = async (): Promise<void> => {
    child = spawn('mosquitto', ['-c', config], { stdio: 'ignore' });
    await reachable(port);
  };
  const kill = async (): Promise<void> => {
    if (!child || child.exitCode !== null) return;
    const gone = new Promise<void>((resolve) => child?.once('exit', () => resolve()));
    child.kill('SIGKILL');
    await gone;
  };
  await start();
  return {
    port,
    url: new URL(`mqtt://127.0.0.1:${port}`),
    start,
    kill,
    close: async () => {
      await kill();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A line through which bytes pass until it is cut; what goes towards the broker can be withheld. */
export async function cuttableLine(port: number) {
  const sockets = new Set<Socket>();
  const state = { open: true, withheld: false };
  const server = createServer((near) => {
    if (!state.open) return void near.destroy();
    const far = connect(port, '127.0.0.1');
    for (const one of [near, far]) {
      sockets.add(one);
      one.on('error', () => undefined);
    }
    near.on('data', (bytes) => state.withheld || far.write(bytes));
    far.on('data', (bytes) => near.write(bytes));
    near.on('close', () => far.destroy());
    far.on('close', () => near.destroy());
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const own = (server.address() as AddressInfo).port;
  const cut = (): void => {
    state.open = false;
    for (const one of sockets) one.destroy();
    sockets.clear();
  };
  return {
    url: new URL(`mqtt://127.0.0.1:${own}`),
    cut,
    mend: () => {
      state.open = true;
      state.withheld = false;
    },
    withhold: () => {
      state.withheld = true;
    },
    close: () => {
      cut();
      server.close();
    },
  };
}
