/** MQTT bridges of a test file, and whatever else it opens, ended after each test, newest first. */
import { afterEach } from 'vitest';
import { type MqttBridge, type MqttOptions, mqttBridge } from '../../src/bridges/mqtt/bridge.ts';
import type { FakeHouse } from './fakes.ts';

export interface BridgesThatEnd {
  ending: (() => unknown)[];
  bridging(house: FakeHouse, url: URL, more?: Partial<MqttOptions>): Promise<MqttBridge>;
}

export function bridgesThatEnd(): BridgesThatEnd {
  const ending: (() => unknown)[] = [];
  afterEach(async () => {
    for (const end of ending.splice(0).reverse()) await end();
  });
  return {
    ending,
    async bridging(house, url, more = {}) {
      const bridge = await mqttBridge({
        household: house.household,
        ticks: house.clock.ticks,
        url,
        protocol: '3.1.1',
        base: 'roastcall',
        discovery: 'homeassistant',
        instance: 'a1b2c3d4',
        version: '0',
        reading: { path: [] },
        ...more,
      });
      ending.push(() => bridge.close());
      return bridge;
    },
  };
}
