/** The service as others on the network find it: multicast DNS (RFC 6762), by a browser of its own. */
import { Bonjour } from 'bonjour-service';
import { expect, test } from 'vitest';
import { wyomingBeacon } from '../../../src/bridges/wyoming/beacon.ts';
import { until } from '../fakes.ts';

test('the service is found under its lasting name with its port, and is gone when it ends', async () => {
  const troubles: Error[] = [];
  const beacon = wyomingBeacon({
    instance: 'a1b2c3d4',
    port: 10_700,
    host: '0.0.0.0',
    trouble: (why) => troubles.push(why),
  });
  const browser = new Bonjour();
  const found: { name: string; port: number }[] = [];
  const gone: string[] = [];
  const search = browser.find({ type: 'wyoming' });
  search.on('up', ({ name, port }) => found.push({ name, port }));
  search.on('down', ({ name }) => gone.push(name));
  await until(() => found.length > 0);
  expect(found).toContainEqual({ name: 'Roastcall a1b2c3d4', port: 10_700 });
  await beacon.close();
  await until(() => gone.includes('Roastcall a1b2c3d4'));
  expect(troubles).toEqual([]);
  browser.destroy();
});
