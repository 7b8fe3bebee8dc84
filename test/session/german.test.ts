import { expect, it } from 'vitest';
import { instantOf } from '../../src/base/time.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { openSession } from '../../src/session/session.ts';
import { cards, compute } from '../harness/day.ts';

const zone = 'Europe/Berlin';
const at = (time: string): number => instantOf('2026-12-19', time, zone);

it('cooks the main path of a dinner in German, decimal comma and 24-hour clock in', async () => {
  const session = await openSession({
    dinner: 'd',
    journal: openMemoryJournal(),
    compute,
    cards,
    opening: { timeZone: zone, units: { temperature: 'C', weight: 'kg' }, seed: 7, language: 'de' },
  });
  const say = async (time: string, text: string): Promise<string> =>
    (await session.hear({ text, at: at(time) })).replies.map((reply) => reply.text).join(' ');
  expect(await say('13:00', 'Hochrippe mit drei Knochen, 3,2 Kilo')).toBe(
    'Hochrippe, 3,2 kg, 3 Knochen. Wann soll gegessen werden?',
  );
  expect(await say('13:01', 'halb acht')).toMatch(/^Essen um 19:30 Uhr\. Für wie viele\?$/);
  expect(await say('13:02', 'wir sind zu sechst')).toMatch(/^6 am Tisch\./);
  // The caution of the USDA is never dropped for want of a translation.
  expect(await say('13:03', 'medium')).toMatch(/60 °C am Tisch\..*USDA.*63 °C/);
  expect(await say('16:35', 'der Braten ist drin')).toMatch(/^Notiert/);
  expect(await say('17:10', 'Ofen auf 160 runtergedreht')).toMatch(/^Ofen auf 160 °C\. Heraus bei/);
  expect(await say('18:10', 'es hat 38,5 Grad')).toMatch(/^39 °C im Kern\./);
  expect(await say('18:11', 'es brennt im Ofen')).toMatch(
    /^Ofentür zu lassen und Ofen ausschalten/,
  );
});
