/** A household on real sockets of this machine, its journal in memory, its clock moved by hand. */
import type { AddressInfo } from 'node:net';
import { webServer } from '../../src/bridges/web/server.ts';
import { wyomingServer } from '../../src/bridges/wyoming/server.ts';
import { builtInCardsFolder, loadCards } from '../../src/cards/load.ts';
import { Household } from '../../src/household/household.ts';
import { openMemoryJournal } from '../../src/journal/memory.ts';
import { inThisThread } from '../../src/session/compute.ts';
import { openSession } from '../../src/session/session.ts';

export async function served() {
  const journal = openMemoryJournal();
  const { cards } = loadCards([builtInCardsFolder()]);
  const household = new Household({
    journal,
    clock: 'simulated',
    now: () => Date.now(),
    opening: () => ({
      timeZone: 'America/Chicago',
      units: { temperature: 'F', weight: 'lb' },
      seed: 7,
      language: 'en',
    }),
    open: (dinner, opening) =>
      openSession({ dinner, journal, compute: inThisThread, cards, opening }),
  });
  const web = await webServer({
    version: '0',
    now: () => Date.now(),
    loopbackOnly: true,
    admit: async () => household,
    writable: async () => {},
  });
  const base = await web.listen({ host: '127.0.0.1', port: 0 });
  const wyoming = wyomingServer({ household, version: '0' });
  await new Promise<void>((resolve) => wyoming.listen(0, '127.0.0.1', resolve));
  return {
    base,
    household,
    wyomingPort: (wyoming.address() as AddressInfo).port,
    close: async () => {
      household.close();
      wyoming.close();
      await web.close();
    },
  };
}
