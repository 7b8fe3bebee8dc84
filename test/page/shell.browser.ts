/** What is served: small, from here only, under a strict policy, installable. */
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { goTo, moments } from './day.ts';
import { type House, openBrowser, openHouse, openPage } from './house.ts';
import { textOf } from './pages.ts';

let house: House;
beforeAll(async () => {
  house = await openHouse();
});
afterAll(() => house.close());

const folder = fileURLToPath(new URL('../../dist/page/', import.meta.url));
const files = readdirSync(folder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => `${entry.parentPath}/${entry.name}`);

test('the first load is under 150 kB compressed, fonts and all', () => {
  const loaded = files.filter((name) => /\.(html|css|js|woff2|webmanifest|svg)$/.test(name));
  const bytes = loaded.reduce((sum, name) => sum + gzipSync(readFileSync(name)).length, 0);
  expect(loaded.length).toBeGreaterThanOrEqual(6);
  expect(bytes).toBeLessThan(150_000);
});

test('a strict policy, nothing inline, and no address outside', async () => {
  const response = await fetch(house.base);
  const policy = response.headers.get('content-security-policy') ?? '';
  const rules = new Map(policy.split('; ').map((rule) => rule.split(/ (.*)/s) as [string, string]));
  expect(rules.get('default-src')).toBe("'none'");
  expect(rules.get('script-src')).toBe("'self'");
  expect(rules.get('style-src')).toBe("'self'");
  expect(rules.get('frame-ancestors')).toBe("'none'");
  expect(policy).not.toMatch(/unsafe|https?:|data:|\*/);
  const html = await response.text();
  expect(html).not.toMatch(/<script(?![^>]*\bsrc=)[^>]*>|<style|\son\w+=|\sstyle=/i);
  const outside = files
    .filter((name) => /\.(html|css|js|webmanifest|svg)$/.test(name))
    .flatMap((name) => readFileSync(name, 'utf8').match(/https?:\/\/[^\s"'`)]+/g) ?? [])
    // Names of XML namespaces are no addresses that are fetched.
    .filter((url) => !url.startsWith('http://www.w3.org/'));
  expect(outside).toEqual([]);
});

test('no request leaves the house in a whole dinner, and the policy is never broken', async () => {
  const browser = await openBrowser();
  const { page } = await openPage(browser, house, { screen: 'landscape' });
  const asked: string[] = [];
  const broken: string[] = [];
  page.on('request', (request) => asked.push(new URL(request.url()).origin));
  page.on('console', (message) => {
    if (/content security policy/i.test(message.text())) broken.push(message.text());
  });
  page.on('pageerror', (error) => broken.push(error.message));
  await page.reload();
  await house.open();
  await page.locator('.begin .stub').last().click();
  // At the first moment nothing is said yet.
  for (const moment of moments.slice(1)) {
    await goTo(house, moment);
    await page.waitForTimeout(100);
  }
  await expect.poll(() => textOf(page, '.rail .stage')).toBe('At the table');
  expect(broken).toEqual([]);
  expect(new Set(asked)).toEqual(new Set([house.base]));
  await browser.close();
});

test('installable: a manifest with its icons, a worker, and files that may be kept', async () => {
  const manifest = (await (await fetch(`${house.base}/manifest.webmanifest`)).json()) as {
    name: string;
    start_url: string;
    display: string;
    icons: { src: string; sizes: string }[];
  };
  expect(manifest).toMatchObject({ name: 'Roastcall', start_url: '/', display: 'fullscreen' });
  expect(manifest.icons.map((icon) => icon.sizes)).toEqual(
    expect.arrayContaining(['192x192', '512x512']),
  );
  for (const { src } of manifest.icons) expect((await fetch(house.base + src)).status).toBe(200);
  const worker = await fetch(`${house.base}/worker.js`);
  expect(worker.headers.get('content-type')).toMatch(/javascript/);
  expect(worker.headers.get('cache-control')).toBe('no-cache');
  const kept = /"\/assets\/[^"]+\.js"/.exec(await worker.text())?.[0].slice(1, -1);
  const script = await fetch(house.base + kept);
  expect(script.headers.get('cache-control')).toMatch(/immutable/);
});

test('English stands in one file: nothing drawn has words of its own', () => {
  const look = fileURLToPath(new URL('../../src/page/look/', import.meta.url));
  const drawn = readdirSync(look).filter((name) => name.endsWith('.tsx'));
  expect(drawn.length).toBeGreaterThan(10);
  const own = drawn.flatMap((name) => {
    const text = readFileSync(look + name, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, '');
    const between = text.match(/(?<==?["'\w}])>\s*[A-Za-z]{2,}[^<>{}=;()]*(?=<\/)/g) ?? [];
    const named = text.match(/(aria-label|title|placeholder|alt)="[^"]+"/g) ?? [];
    return [...between, ...named].map((found) => `${name}: ${found}`);
  });
  expect(own).toEqual([]);
});
