/** A whole dinner, once typed and touched, once spoken. What the page shows is held against the kitchen's own view. */
import type { Browser, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { later } from './day.ts';
import { hosted } from './hosted.ts';
import { type House, openPage } from './house.ts';
import { shows, showsCall, textOf } from './pages.ts';
import { ear, voice } from './stubs.ts';

let browser: Browser;
let house: House;
hosted((openedBrowser, openedHouse) => {
  browser = openedBrowser;
  house = openedHouse;
});

interface Seen {
  at: string;
  stage: string;
  serving: { wanted: string };
  readings: { fahrenheit: number }[];
  options?: unknown[];
  asking?: { kind: string };
}
const view = async (): Promise<Seen> =>
  (await (await fetch(`${house.base}/api/dinners/${house.dinner}`)).json()) as Seen;

/** Does something that says words to the kitchen, and waits for its answer. */
async function saying(page: Page, act: () => Promise<unknown>): Promise<void> {
  const answered = page.waitForResponse((response) => response.url().endsWith('/say'));
  await act();
  expect((await answered).status()).toBe(200);
}
const type = (page: Page, text: string): Promise<void> =>
  saying(page, async () => {
    await page.getByRole('textbox').fill(text);
    await page.keyboard.press('Enter');
  });
const touch = (page: Page, name: string | RegExp): Promise<void> =>
  saying(page, () => page.getByRole('button', { name, exact: typeof name === 'string' }).click());
const clockOf = (iso: string): string =>
  `${Number(iso.slice(11, 13)) % 12 || 12}:${iso.slice(14, 16)}`;

test('a whole dinner by text and touch', async () => {
  const { page, context } = await openPage(browser, house, { screen: 'landscape', before: voice });
  await shows(page, /what are you roasting/i);
  await house.open();
  await page.getByRole('button', { name: 'Begin without it' }).click();
  await type(
    page,
    'seven pound three bone rib roast, dinner at seven for six, medium rare, with roast potatoes',
  );
  const head = '.check';
  await expect
    .poll(() => textOf(page, head))
    .toMatch(/7:00[\s\S]*6[\s\S]*7.lb[\s\S]*130.°F medium rare/);
  await house.clock('13:52');
  await touch(page, 'Done');
  await type(page, 'the roast is prepped and the butter is made');
  await showsCall(page, await house.clock('16:10'));
  await type(page, "oven's on");
  await expect.poll(() => textOf(page, head)).toMatch(/450/);
  await house.clock('16:40');
  await type(page, 'the roast is in');
  await expect.poll(() => textOf(page, '.rail .stage')).toMatch(/sear/i);
  await showsCall(page, await house.clock('17:00'));
  await touch(page, 'Done');
  await expect.poll(() => textOf(page, '.rail .stage')).toMatch(/low roast/i);

  // A reading by the number pad stands on the day as a ticket.
  await house.clock('17:30');
  await page.getByRole('button', { name: 'A reading' }).click();
  for (const digit of ['5', '1'])
    await page.getByRole('button', { name: digit, exact: true }).click();
  await touch(page, 'It reads 51');
  await expect.poll(() => page.locator('.readings').innerHTML()).toMatch(/5:30[\s\S]*51/);
  expect((await view()).readings.at(-1)?.fahrenheit).toBe(51);
  await house.clock('18:02');
  const wide = await bracket(page);
  await type(page, 'it reads 84');
  await expect.poll(async () => (await bracket(page)) < wide).toBe(true);

  await type(page, 'guests are late 30 minutes');
  await expect.poll(() => page.locator('.option').count()).toBe((await view()).options?.length);
  await touch(page, /^2/);
  await expect.poll(() => page.locator('.option').count()).toBe(0);

  // The pull turns the page over; "not yet" and a new call turn it back and again.
  const called = await untilTurned(page);
  await shows(page, /pull/i);
  expect(await page.locator('.page').count()).toBe(0);
  await touch(page, 'Not yet');
  await expect.poll(() => page.locator('.turned').count()).toBe(0);
  await untilTurned(page, called);
  await touch(page, /It.s out/);
  await expect.poll(() => textOf(page, '.rail .stage')).toMatch(/rest/i);
  expect((await view()).stage).toBe('rest');
  await type(page, "we're carving");
  await type(page, "dinner's on the table");
  await shows(page, /enjoy/i);
  await type(page, 'leftovers are in the fridge');
  await shows(page, /put away/i);
  await context.close();
});

/** How wide the bracket of the pull is drawn, in pixels. */
async function bracket(page: Page): Promise<number> {
  const path = (await page.locator('.pull path').getAttribute('d')) ?? '';
  const [, from, to] = /^M([\d.]+)[^M]+M([\d.]+)/.exec(path) ?? [];
  return Number(to) - Number(from);
}

async function untilTurned(page: Page, from = 0): Promise<number> {
  for (let minutes = from; minutes < 150; minutes += 1) {
    const calls = await house.clock(later((await view()).at.slice(11, 16), 1));
    if (!calls.some((one) => one.kind === 'pull')) continue;
    await expect.poll(() => page.locator('.turned').count()).toBe(1);
    return minutes;
  }
  throw new Error('the pull was never called');
}

test('a dinner by voice: heard, answered aloud, never listening while it speaks', async () => {
  await house.open();
  const { page, context } = await openPage(browser, house, {
    screen: 'landscape',
    before: voice + ear,
    context: { permissions: ['microphone'] },
  });
  await page.getByText(/sends what the microphone hears to a server/).waitFor();
  await page.getByRole('button', { name: 'Begin, with the microphone' }).click();
  const hear = (text: string): Promise<void> =>
    saying(page, () =>
      expect.poll(() => page.evaluate(`ear.hear(${JSON.stringify(text)})`)).toBe(true),
    );
  await hear('seven pound three bone rib roast dinner at seven for six medium rare');
  await expect.poll(() => page.evaluate<string[]>('spoken')).toHaveLength(1);
  await house.clock('16:10');
  await hear("oven's on");
  await house.clock('16:40');
  await hear('the roast is in');
  expect((await view()).stage).toBe('sear');
  await house.clock('17:00');
  await hear('I turned it down to 325');
  await house.clock('17:45');
  await hear('it reads sixty six');
  expect((await view()).readings.at(-1)?.fahrenheit).toBe(66);
  const wanted = (await view()).serving.wanted;
  await hear('guests are late 30 minutes');
  expect(Date.parse((await view()).serving.wanted) - Date.parse(wanted)).toBe(30 * 60_000);
  await hear('the first one');
  await hear("it's out and resting");
  await hear("dinner's on the table");
  expect((await view()).stage).toBe('served');
  await shows(page, /enjoy/i);
  expect(await textOf(page, '.rail .clock')).toBe(clockOf((await view()).at));

  // While a sentence is being said the ear stays shut, however long it takes.
  await expect.poll(() => page.evaluate('ear.now.on')).toBe(true);
  await page.evaluate(`window.held = [];
    speechSynthesis.speak = (said) => { held.push(said); said.onstart?.(); };`);
  await hear("what's next");
  await expect.poll(() => page.evaluate<number>('held.length')).toBe(1);
  await expect.poll(() => page.evaluate('ear.now.on')).toBe(false);
  const begun = await page.evaluate<number>('ear.starts.length');
  await page.waitForTimeout(1_200);
  expect(await page.evaluate<number>('ear.starts.length')).toBe(begun);
  const endAll = 'held.splice(0).forEach((said) => said.onend()), ear.now.on';
  await expect.poll(() => page.evaluate(endAll)).toBe(true);
  await context.close();
});

test('an ear that fails is opened again, later each time; one that is refused is not', async () => {
  const { page, context } = await openPage(browser, house, {
    screen: 'landscape',
    before: `${voice + ear} ear.errors = ['network', 'network', 'network']; window.earWhere = 'available';`,
  });
  await page.getByText(/understands speech on the tablet itself/).waitFor();
  await page.getByRole('button', { name: 'Begin, with the microphone' }).click();
  await page.getByText(/speech server is out of reach/).waitFor();
  await expect.poll(() => page.evaluate<number>('ear.starts.length')).toBe(4);
  const starts = await page.evaluate<{ at: number; local: boolean }[]>('ear.starts');
  const waits = starts.slice(1).map((one, n) => one.at - starts[n]!.at);
  expect(waits[1]).toBeGreaterThan(waits[0]!);
  expect(waits[2]).toBeGreaterThan(waits[1]!);
  expect(starts.every((one) => one.local)).toBe(true);
  await page.evaluate('ear.refuse = true; ear.now.end()');
  await page.getByText(/microphone was refused; touch and keys/).waitFor();
  const before = await page.evaluate<number>('ear.starts.length');
  await page.waitForTimeout(1_500);
  expect(await page.evaluate<number>('ear.starts.length')).toBe(before);
  await context.close();
});
