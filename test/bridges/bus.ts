/** A broker in this process (MQTT 3.1.1), and a peer on it that remembers what it sees. */

import type { AddressInfo } from 'node:net';
import { createServer, type Server, type Socket } from 'node:net';
import { Aedes } from 'aedes';
import mqtt, { type IClientPublishOptions, type MqttClient } from 'mqtt';

export interface Seen {
  topic: string;
  text: string;
  retained: boolean;
}

export async function broker(port = 0) {
  const aedes = await Aedes.createBroker();
  const sockets = new Set<Socket>();
  const server: Server = createServer((socket) => {
    sockets.add(socket);
    socket.on('close', () => sockets.delete(socket));
    aedes.handle(socket);
  });
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve));
  const own = (server.address() as AddressInfo).port;
  return {
    aedes,
    port: own,
    url: new URL(`mqtt://127.0.0.1:${own}`),
    /** Dies without a word to anyone, and forgets all it kept. */
    die: async () => {
      for (const socket of sockets) socket.destroy();
      await new Promise<void>((resolve) => server.close(() => resolve()));
      await new Promise<void>((resolve) => aedes.close(() => resolve()));
    },
  };
}

/** Subscribes to everything and waits for it to be so. */
export async function peer(url: URL, version: 4 | 5 = 4) {
  const client: MqttClient = await mqtt.connectAsync(url.href, {
    protocolVersion: version,
    reconnectPeriod: 0,
  });
  const seen: Seen[] = [];
  client.on('message', (topic, payload, packet) =>
    seen.push({ topic, text: payload.toString(), retained: packet.retain }),
  );
  await client.subscribeAsync('#', { qos: 1 });
  return {
    client,
    seen,
    say: (topic: string, payload: string | object | Buffer, more: IClientPublishOptions = {}) =>
      client.publishAsync(
        topic,
        typeof payload === 'string' || Buffer.isBuffer(payload) ? payload : JSON.stringify(payload),
        { qos: 1, ...more },
      ),
    on: (topic: string): string[] =>
      seen.filter((one) => one.topic === topic).map((one) => one.text),
    json: (topic: string): Record<string, unknown>[] =>
      seen
        .filter((one) => one.topic === topic)
        .map((one) => JSON.parse(one.text) as Record<string, unknown>),
    leave: () => client.endAsync(true),
  };
}
