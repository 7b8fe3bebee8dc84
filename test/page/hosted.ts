/** A browser and a kitchen for the tests of one file, opened before the first and closed after the last. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { type House, openBrowser, openHouse } from './house.ts';

/** Hands both over once they are open; what `take` gives is waited for. */
export function hosted(take: (browser: Browser, house: House) => unknown): void {
  let open: { browser: Browser; house: House } | undefined;
  beforeAll(async () => {
    open = { browser: await openBrowser(), house: await openHouse() };
    await take(open.browser, open.house);
  });
  afterAll(async () => {
    await open?.browser.close();
    await open?.house.close();
  });
}
