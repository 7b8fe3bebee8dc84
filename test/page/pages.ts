/** Small things every look at a page needs. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The text as it is laid out: what the eye reads, line by line. */
export const textOf = (page: Page, selector: string): Promise<string> =>
  // biome-ignore lint/performance/useDomNodeTextContent: textContent would run the lines together
  page.locator(selector).innerText();

export const main = (page: Page): Promise<string> => textOf(page, '.order .main, .turned .main');

export const shows = (page: Page, text: RegExp): Promise<void> =>
  expect.poll(() => main(page)).toMatch(text);

/** That the page speaks the words of one of these calls, or their beginning: the kitchen chooses them. */
export const showsCall = (page: Page, calls: readonly { text: string }[]): Promise<void> =>
  expect
    .poll(async () => {
      const shown = plain(await main(page)).replace(/\.$/, '');
      return calls.some((call) => shown !== '' && plain(call.text).startsWith(shown));
    })
    .toBe(true);

/** Lines and spaces that only typesetting knows. */
const plain = (text: string): string => text.replace(/\s+/g, ' ');

/** The first touch, without the microphone; a browser that cannot hear has one button only. */
export const begin = (page: Page): Promise<void> => page.locator('.begin .stub').last().click();

export const spoken = (page: Page): Promise<string[]> => page.evaluate<string[]>('spoken');

export const roast = 'seven pound three bone rib roast, dinner at seven for six, medium rare';
