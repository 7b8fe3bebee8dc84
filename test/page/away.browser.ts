/** The kitchen goes away and comes back, pages sleep, several look on: nothing is missed, nothing is said twice. */
import type { Browser, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { hosted } from './hosted.ts';
import { type House, openPage } from './house.ts';
import { begin, main, roast, shows, showsCall, spoken, textOf } from './pages.ts';
import { voice } from './stubs.ts';

let browser: Browser;
let house: House;
hosted((openedBrowser, openedHouse) => {
  browser = openedBrowser;
  house = openedHouse;
});

const tellRoast = async (): Promise<void> => {
  await house.open();
  await house.say(roast);
};

test('killed mid-dinner and started again: the page finds it and misses nothing', async () => {
  await tellRoast();
  const { page, context } = await openPage(browser, house, { screen: 'landscape', before: voice });
  await begin(page);
  await showsCall(page, await house.clock('16:11'));
  await house.kill();
  await page.getByText(/kitchen does not answer/).waitFor();
  // What is said meanwhile is kept, and sent once when the kitchen is back.
  await page.getByRole('textbox').fill("oven's on");
  await page.keyboard.press('Enter');
  await page.getByText(/Not sent yet/).waitFor();
  await house.restart();
  await expect.poll(() => textOf(page, '.counter')).toMatch(/You: oven's on/);
  await expect.poll(() => page.getByText(/Not sent yet/).count()).toBe(0);
  const said = (await log()).filter(
    (fact) => fact.type === 'words-heard' && fact.text === "oven's on",
  );
  expect(said).toHaveLength(1);

  // An announcement raised while the page could not hear it is shown as soon as it can.
  await house.kill();
  await page.getByText(/kitchen does not answer/).waitFor();
  await house.restart();
  await showsCall(page, await house.clock('16:55'));
  expect(await textOf(page, '.notice')).toBe('');
  await context.close();
});

async function log(): Promise<{ type: string; text?: string }[]> {
  const text = await (await fetch(`${house.base}/api/dinners/${house.dinner}/log`)).text();
  return text
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line) as { type: string; text?: string });
}

test('a page that slept through a call shows it when it wakes', async () => {
  await tellRoast();
  const { page, context } = await openPage(browser, house, { screen: 'landscape', before: voice });
  await begin(page);
  await house.say('the roast is prepped');
  const before = await main(page);
  const wire = await context.newCDPSession(page);
  await wire.send('Page.setWebLifecycleState', { state: 'frozen' });
  const calls = await house.clock('16:11');
  await wire.send('Page.setWebLifecycleState', { state: 'active' });
  await showsCall(page, calls);
  expect(await main(page)).not.toBe(before);
  await context.close();
});

test('two tablets and a phone agree, and one of them speaks', async () => {
  await tellRoast();
  const looks = ['landscape', 'small', 'phone'] as const;
  const open = await Promise.all(
    looks.map((screen) => openPage(browser, house, { screen, before: voice })),
  );
  const pages = open.map((one) => one.page);
  for (const page of pages) await begin(page);
  const agree = async (): Promise<void> => {
    await expect
      .poll(async () => new Set(await Promise.all(pages.map(state))).size, { timeout: 10_000 })
      .toBe(1);
  };
  await agree();
  const total = async (): Promise<number> => (await Promise.all(pages.map(spoken))).flat().length;
  let calls = 0;
  for (const time of ['14:10', '16:11']) {
    calls += (await house.clock(time)).length;
    await agree();
  }
  await expect.poll(async () => (await total()) > 0 && (await total()) <= calls).toBe(true);
  await pages[0]!.waitForTimeout(600);
  const all = (await Promise.all(pages.map(spoken))).flat();
  expect(new Set(all).size).toBe(all.length);

  // The one touched last speaks.
  await pages[2]!.getByRole('textbox').fill("oven's on");
  await pages[2]!.keyboard.press('Enter');
  await agree();
  for (const { context } of open) await context.close();
});

/** What a page says of the dinner, whatever its size. */
const state = (page: Page): Promise<string> =>
  page.evaluate<string>(`JSON.stringify(['.main', '.check', '.next', '.rail .stage', '.rail .clock',
    '.pull', '.readings'].map((name) => document.querySelector(name)?.textContent ?? ''))`);

test('an untouched page may not sound, so it leaves the call to one that may', async () => {
  await tellRoast();
  const silent = await openPage(browser, house, { screen: 'landscape', before: voice });
  const touched = await openPage(browser, house, { screen: 'phone', before: voice });
  await begin(touched.page);
  const [call] = await house.clock('13:40');
  expect(call).toBeDefined();
  await expect.poll(async () => (await spoken(touched.page)).length).toBeGreaterThan(0);
  expect(await spoken(silent.page)).toEqual([]);
  await silent.context.close();
  await touched.context.close();
});

test('a claim is kept in the journal: a restart gives nobody the same call again', async () => {
  await tellRoast();
  const [call] = await house.clock('13:40');
  const claim = async (): Promise<boolean> => {
    const response = await fetch(`${house.base}/api/dinners/${house.dinner}/claim`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ announcement: call!.id }),
    });
    return ((await response.json()) as { yours: boolean }).yours;
  };
  const asked = await Promise.all(Array.from({ length: 10 }, claim));
  expect(asked.filter(Boolean)).toHaveLength(1);
  await house.kill();
  await house.restart();
  expect(await claim()).toBe(false);
});

test('without the kitchen the shell opens all the same and says what it waits for', async () => {
  await tellRoast();
  const { page, context } = await openPage(browser, house, { screen: 'landscape' });
  await page.evaluate('navigator.serviceWorker.ready.then(() => true)');
  await house.kill();
  await page.reload();
  await shows(page, /waiting for the kitchen/i);
  await page.evaluate('document.fonts.ready.then(() => true)');
  expect(await page.evaluate<boolean>(`document.fonts.check('600 20px Besley')`)).toBe(true);
  await house.restart();
  await shows(page, /./);
  await expect.poll(() => main(page)).not.toMatch(/waiting/i);
  await context.close();
});
