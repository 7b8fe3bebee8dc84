/** A real mosquitto of the test's own, and a line to it that can be cut. */
import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { freePort, isOpen } from '../../net.ts';

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
