/** The built program as a process of its own, its clock moved by hand, and a browser to look at it. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';

const program = fileURLToPath(new URL('../../dist/main/roastcall.js', import.meta.url));

export const day = '2026-12-19';
/** Chicago keeps standard time in December. */
export const at = (time: string): string => `${day}T${time}:00-06:00`;

export interface Call {
  id: string;
  kind: string;
  text: string;
}

export interface House {
  base: string;
  dinner: string;
  open(units?: { temperature?: 'F' | 'C'; weight?: 'lb' | 'kg' }): Promise<string>;
  say(text: string, time?: string): Promise<{ view: Record<string, unknown> }>;
  clock(time: string): Promise<Call[]>;
  /** Ends the process as a power cut would. */
  kill(): Promise<void>;
  /** Starts it again at the same address, with the same data. */
  restart(): Promise<void>;
  close(): Promise<void>;
}

export async function openHouse(more: readonly string[] = []): Promise<House> {
  const data = mkdtempSync(join(tmpdir(), 'roastcall-page-'));
  let running = await started(data, 0, more);
  const { base, port } = running;
  const call = async <T>(path: string, body: object): Promise<T> => {
    const response = await fetch(base + path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    if (!response.ok) throw new Error(`${path}: ${response.status} ${await response.text()}`);
    return (await response.json()) as T;
  };
  const house: House = {
    base,
    dinner: '',
    async open(units) {
      const body = { at: at('13:30'), timeZone: 'America/Chicago', ...(units ? { units } : {}) };
      house.dinner = (await call<{ id: string }>('/api/dinners', body)).id;
      return house.dinner;
    },
    async say(text, time) {
      if (time !== undefined) await house.clock(time);
      return call(`/api/dinners/${house.dinner}/say`, { text });
    },
    async clock(time) {
      const path = `/api/dinners/${house.dinner}/clock`;
      return (await call<{ announcements: Call[] }>(path, { at: at(time) })).announcements;
    },
    kill: () => ended(running.child, 'SIGKILL'),
    async restart() {
      running = await started(data, port, more);
    },
    async close() {
      await ended(running.child, 'SIGTERM');
      rmSync(data, { recursive: true, force: true });
    },
  };
  return house;
}

async function started(
  data: string,
  port: number,
  more: readonly string[],
): Promise<{ child: ChildProcess; base: string; port: number }> {
  const args = ['serve', '--port', String(port), '--clock', 'simulated', '--data', data, ...more];
  const child = spawn(process.execPath, [program, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const base = await new Promise<string>((resolve, reject) => {
    let out = '';
    child.stdout.on('data', (chunk: Buffer) => {
      out += chunk;
      const address = /http:\/\/[\d.]+:\d+/.exec(out)?.[0];
      if (address) resolve(address.replace('//0.0.0.0', '//127.0.0.1'));
    });
    child.once('exit', (code) => reject(new Error(`the program ended with ${code}`)));
  });
  return { child, base, port: Number(new URL(base).port) };
}

const ended = (child: ChildProcess, signal: NodeJS.Signals): Promise<void> =>
  new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once('exit', () => resolve());
    child.kill(signal);
  });

export const screens = {
  landscape: { width: 1280, height: 800 },
  portrait: { width: 800, height: 1280 },
  small: { width: 1024, height: 768 },
  smallPortrait: { width: 768, height: 1024 },
  phone: { width: 390, height: 844 },
} as const;
export type Screen = keyof typeof screens;

/** Debian's Chromium; another one can be named in ROASTCALL_CHROMIUM. */
export const openBrowser = (args: readonly string[] = []): Promise<Browser> =>
  chromium.launch({
    executablePath: process.env.ROASTCALL_CHROMIUM ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-dev-shm-usage', '--mute-audio', ...args],
  });

export interface Look {
  screen: Screen;
  dark?: boolean;
  /** Page script run before anything of the page's own. */
  before?: string;
  reducedMotion?: boolean;
  context?: Parameters<Browser['newContext']>[0];
}

export async function openPage(
  browser: Browser,
  house: Pick<House, 'base'>,
  look: Look,
): Promise<{ page: Page; context: BrowserContext }> {
  const context = await browser.newContext({
    viewport: screens[look.screen],
    timezoneId: 'America/Chicago',
    colorScheme: look.dark ? 'dark' : 'light',
    reducedMotion: look.reducedMotion ? 'reduce' : 'no-preference',
    ...look.context,
  });
  if (look.before !== undefined) await context.addInitScript({ content: look.before });
  const page = await context.newPage();
  await page.goto(house.base);
  return { page, context };
}
