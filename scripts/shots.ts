/** Pictures of eight moments of a dinner, at tablet size and on a phone, into docs/page. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Page } from 'playwright-core';
import { goTo, type Moment, moments } from '../test/page/day.ts';
import { type Look, openBrowser, openHouse, openPage } from '../test/page/house.ts';
import { smaller } from './png-palette.ts';

const folder = process.argv[2] ?? fileURLToPath(new URL('../docs/page/', import.meta.url));
mkdirSync(folder, { recursive: true });

/** A browser without a voice would complain of it on every picture. */
const before = `
  speechSynthesis.speak = (said) => setTimeout(() => {
    said.onstart?.(); said.onend?.();
  });`;

interface Shot {
  look: Look;
  /** Absent: every moment. */
  only?: readonly Moment[];
}

const shots: Record<string, Shot> = {
  tablet: { look: { screen: 'landscape' } },
  phone: { look: { screen: 'phone' } },
  'tablet-dark': { look: { screen: 'landscape', dark: true }, only: ['low-roast', 'rest'] },
  'tablet-upright': { look: { screen: 'portrait' }, only: ['sear', 'late-guests'] },
};

const house = await openHouse();
const browser = await openBrowser();
const open: (Pick<Shot, 'only'> & { name: string; page: Page })[] = [];
try {
  for (const [name, { look, only }] of Object.entries(shots)) {
    const { page } = await openPage(browser, house, { ...look, reducedMotion: true, before });
    open.push({ name, page, ...(only ? { only } : {}) });
  }
  for (const moment of moments) {
    if (moment === 'prep') {
      await house.open();
      for (const { page } of open) await page.locator('.begin .stub').last().click();
    }
    await goTo(house, moment);
    for (const { name, page, only } of open) {
      if (only && !only.includes(moment)) continue;
      await page.waitForTimeout(400);
      const picture = smaller(await page.screenshot());
      writeFileSync(`${folder}/${moment}-${name}.png`, picture);
    }
    process.stdout.write(`${moment}\n`);
  }
} finally {
  await browser.close();
  await house.close();
}
