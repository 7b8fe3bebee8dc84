/** What goes wrong is said in one sentence, and the rest still works. */
import type { Browser } from 'playwright-core';
import { expect, test } from 'vitest';
import { hosted } from './hosted.ts';
import { type House, openBrowser, openHouse, openPage } from './house.ts';
import { begin, roast, shows, textOf } from './pages.ts';
import { voice } from './stubs.ts';

let browser: Browser;
let house: House;
hosted(async (openedBrowser, openedHouse) => {
  browser = openedBrowser;
  house = openedHouse;
  await house.open();
  await house.say(roast);
});

const notice = '.rail .notice';

test('a pasted novel is not sent, and the next words are', async () => {
  const { page, context } = await openPage(browser, house, { screen: 'landscape', before: voice });
  await begin(page);
  const sent: string[] = [];
  page.on('request', (request) => {
    if (request.method() === 'POST' && request.url().endsWith('/say')) sent.push(request.url());
  });
  await page.getByRole('textbox').fill('It was a dark and stormy night. '.repeat(8_000));
  await page.keyboard.press('Enter');
  await expect.poll(() => textOf(page, notice)).toMatch(/longer than anyone says/);
  expect(sent).toEqual([]);
  await page.getByRole('textbox').fill('eight guests');
  await page.keyboard.press('Enter');
  await expect.poll(() => textOf(page, '.check')).toMatch(/Guests\s+8/);
  expect(await textOf(page, notice)).toBe('');
  await context.close();
});

test('storage that is full: the theme changes all the same, and the page says what is forgotten', async () => {
  const full = `Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };`;
  const { page, context } = await openPage(browser, house, { screen: 'landscape', before: full });
  await page.getByRole('button', { name: /dark theme/ }).click();
  await expect.poll(() => textOf(page, notice)).toMatch(/storage is full or shut/);
  expect(await page.evaluate('document.documentElement.dataset.theme')).toBe('dark');
  await context.close();
});

test('a clock that jumps on the tablet changes nothing of the kitchen’s', async () => {
  const jump = `{ const now = Date.now; window.ahead = 0; Date.now = () => now() + ahead; }`;
  const { page, context } = await openPage(browser, house, { screen: 'landscape', before: jump });
  const clock = '.rail .clock';
  await expect.poll(() => page.locator('.next').count()).toBe(1);
  const before = await textOf(page, clock);
  await page.evaluate('window.ahead = 3_600_000');
  await expect.poll(() => textOf(page, notice)).toMatch(/clock jumped/);
  expect(await textOf(page, clock)).toBe(before);
  await context.close();
});

test('words that waited long for the kitchen are not sent unasked', async () => {
  const jump = `{ const now = Date.now; window.ahead = 0; Date.now = () => now() + ahead; }`;
  const { page, context } = await openPage(browser, house, {
    screen: 'landscape',
    before: voice + jump,
  });
  await begin(page);
  await house.kill();
  await page.getByText(/kitchen does not answer/).waitFor();
  await page.getByRole('textbox').fill('nine guests');
  await page.keyboard.press('Enter');
  await page.evaluate('window.ahead = 3_600_000');
  await expect.poll(() => textOf(page, notice)).toMatch(/has not answered for 1.h/);
  await house.restart();
  await expect.poll(() => textOf(page, notice)).toMatch(/“nine guests” waited 1.h/);
  expect(await textOf(page, '.check')).not.toMatch(/Guests\s+9/);
  await page.getByRole('button', { name: 'Send it now' }).click();
  await expect.poll(() => textOf(page, '.check')).toMatch(/Guests\s+9/);
  await context.close();
});

test('a tablet that is not paired says so, with the way to it', async () => {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.route('**/api/**', (route) =>
    route.fulfill({ status: 401, contentType: 'application/problem+json', body: '{"detail":"?"}' }),
  );
  await page.goto(house.base);
  await shows(page, /not paired/);
  expect(await page.getByRole('link', { name: 'Pair this tablet' }).getAttribute('href')).toBe(
    '/pair',
  );
  await context.close();
});

test('over plain http on the network it says what is lost, and works by touch', async () => {
  const open = await openHouse(['--host', '0.0.0.0', '--without-token']);
  // Chromium takes a made-up name for this machine; unlike localhost it is no secure context.
  const plain = await openBrowser(['--host-resolver-rules=MAP kitchen.invalid 127.0.0.1']);
  const context = await plain.newContext();
  const page = await context.newPage();
  await page.goto(`http://kitchen.invalid:${new URL(open.base).port}`);
  await page.getByText(/Over plain http a tablet gives no microphone and falls asleep/).waitFor();
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  expect(await page.evaluate('isSecureContext')).toBe(false);
  await plain.close();
  await open.close();
});
