/** Pictures of eight moments of a dinner, at tablet size and on a phone, into docs/page. */
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { goTo, moments } from '../test/page/day.ts';
import { type Look, openBrowser, openHouse, openPage } from '../test/page/house.ts';

const folder = process.argv[2] ?? fileURLToPath(new URL('../docs/page/', import.meta.url));
mkdirSync(folder, { recursive: true });

/** A browser without a voice would complain of it on every picture. */
const before = `
  speechSynthesis.speak = (said) => setTimeout(() => {
    said.onstart?.(); said.onend?.();
  });`;

const looks: Record<string, Look> = {
  tablet: { screen: 'landscape', reducedMotion: true, before },
  'tablet-dark': { screen: 'landscape', dark: true, reducedMotion: true, before },
  upright: { screen: 'portrait', reducedMotion: true, before },
  phone: { screen: 'phone', reducedMotion: true, before },
};
const wanted = process.argv.slice(3);

const house = await openHouse();
const browser = await openBrowser();
const open: { name: string; page: Awaited<ReturnType<typeof openPage>>['page'] }[] = [];
try {
  for (const [name, look] of Object.entries(looks))
    open.push({ name, page: (await openPage(browser, house, look)).page });
  for (const moment of moments) {
    if (moment === 'prep') {
      await house.open();
      for (const { page } of open) await page.locator('.begin .stub').last().click();
    }
    await goTo(house, moment);
    for (const { name, page } of open) {
      if (wanted.length > 0 && !wanted.includes(name)) continue;
      await page.waitForTimeout(400);
      await page.screenshot({ path: `${folder}/${moment}-${name}.png` });
    }
    process.stdout.write(`${moment}\n`);
  }
} finally {
  await browser.close();
  await house.close();
}
