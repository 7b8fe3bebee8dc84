/** The bridges of `roastcall serve`: their options, and each one wired to the household. */
import type { AddressInfo, Server } from 'node:net';
import { type Command, Option } from 'commander';
import { houseSink } from '../../bridges/house/sink.ts';
import { mqttBridge } from '../../bridges/mqtt/bridge.ts';
import { pathOf } from '../../bridges/mqtt/reading.ts';
import { webhookSink } from '../../bridges/webhook/sink.ts';
import { wyomingBeacon } from '../../bridges/wyoming/beacon.ts';
import { peersOf } from '../../bridges/wyoming/peers.ts';
import { wyomingServer } from '../../bridges/wyoming/server.ts';
import { type Delivering, deliverTo } from '../../household/deliver.ts';
import type { Household } from '../../household/household.ts';
import { instanceOf } from '../instance.ts';
import { Refusal } from '../refusal.ts';

export interface BridgeOptions {
  bridgeHousehold: string;
  wyoming?: string;
  wyomingHost: string;
  wyomingAllow?: string[];
  wyomingStreaming?: boolean;
  announceService?: boolean;
  announceTo?: string[];
  mqtt?: string;
  mqttVersion: '3.1.1' | '5';
  mqttBase: string;
  mqttDiscovery: string | false;
  mqttReading?: string;
  mqttReadingPath?: string;
  mqttReadingUnit?: 'F' | 'C';
  house?: string;
  houseService: string;
  houseData?: string[];
}

export function withBridgeOptions(command: Command): Command {
  return command
    .option('--bridge-household <name>', 'the household that the bridges belong to', 'home')
    .option('--wyoming <port>', 'a Wyoming handle service on this port')
    .option('--wyoming-host <host>', 'its address', '127.0.0.1')
    .option('--wyoming-allow <address...>', 'who may speak to it from beyond: 192.168.1.0/24')
    .option('--wyoming-streaming', 'its answers also sentence by sentence')
    .option('--announce-service', 'make it known in the house by multicast DNS')
    .option('--mqtt <url>', 'an MQTT broker: mqtt://host:1883')
    .addOption(
      new Option('--mqtt-version <version>', 'of the protocol')
        .choices(['3.1.1', '5'])
        .default('3.1.1'),
    )
    .option('--mqtt-base <topic>', 'first part of its topics', 'roastcall')
    .option('--mqtt-discovery <prefix>', 'where a home server looks', 'homeassistant')
    .option('--no-mqtt-discovery', 'tell no home server')
    .option('--mqtt-reading <topic>', "a leave-in thermometer's topic")
    .option('--mqtt-reading-path <path>', 'the number in its JSON: probes[0].core')
    .addOption(new Option('--mqtt-reading-unit <unit>', 'when it says none').choices(['F', 'C']))
    .option('--announce-to <url...>', 'POST every announcement there')
    .option('--house <url>', 'a home server that speaks announcements (ROASTCALL_HOUSE_TOKEN)')
    .option('--house-service <name>', 'the service it calls', 'assist_satellite.announce')
    .option('--house-data <name=value...>', 'what the service wants beside the message');
}

/** Bridges whose options hold, not yet begun: nothing has been opened so far. */
export interface Bridges {
  /** Opens the sockets; gives a line to print for each bridge. */
  open(household: Household): Promise<string[]>;
  close(): Promise<void>;
}

type Begin = (delivering: Delivering, closers: (() => Promise<void>)[]) => Promise<string[]>;

/** Throws a Refusal for an option that cannot be. */
export function bridgesOf(options: BridgeOptions, version: string, folder: string): Bridges {
  const begins = [
    ...wyomingOf(options, version, folder),
    ...(options.announceTo ?? []).map(webhookOf),
    ...houseOf(options),
    ...mqttOf(options, version, folder),
  ];
  const closers: (() => Promise<void>)[] = [];
  return {
    open: async (household) => {
      const delivering: Delivering = {
        household,
        ticks: () => performance.now(),
        trouble: (who, why) =>
          process.stderr.write(`${who}: ${why ? `${reasonOf(why)}; trying again` : 'reached'}\n`),
      };
      const lines: string[] = [];
      for (const begin of begins) lines.push(...(await begin(delivering, closers)));
      return lines;
    },
    close: async () => {
      await Promise.all(closers.map((close) => close().catch(() => undefined)));
    },
  };
}

function wyomingOf(options: BridgeOptions, version: string, folder: string): Begin[] {
  const { wyoming, wyomingHost: host, wyomingAllow: allow, announceService } = options;
  if (wyoming === undefined) {
    if (announceService) throw new Refusal('--announce-service wants --wyoming PORT beside it.', 2);
    return [];
  }
  const wished = portOf(wyoming, '--wyoming');
  if (announceService && isLoopback(host))
    throw new Refusal(
      '--announce-service wants a --wyoming-host that others reach, such as 0.0.0.0.',
      2,
    );
  const everyone = allow?.includes('all');
  const peers = everyone ? undefined : peersOf(allow ?? []);
  if (!everyone && !peers)
    throw new Refusal(
      `--wyoming-allow wants addresses or ranges such as 192.168.1.0/24, or "all", not "${allow?.join(' ')}".`,
      2,
    );
  const begin: Begin = async ({ household, trouble }, closers) => {
    const server = wyomingServer({
      household,
      version,
      peers,
      streaming: options.wyomingStreaming ?? false,
      turnedAway: (address) =>
        process.stderr.write(
          `wyoming: ${address} may not speak here; let it in with --wyoming-allow ${address}\n`,
        ),
    });
    await listening(server, wished, host);
    closers.push(async () => void server.close());
    const { address, port } = server.address() as AddressInfo;
    if (announceService) {
      const told = (why: Error): void => trouble?.('announce-service', why);
      const beacon = wyomingBeacon({ instance: instanceOf(folder), port, host, trouble: told });
      closers.push(() => beacon.close());
    }
    return [`Wyoming on ${address}:${port}`];
  };
  return [begin];
}

function webhookOf(text: string): Begin {
  const url = urlOf(text, '--announce-to', ['http:', 'https:']);
  if (url.username !== '' || url.password !== '')
    throw new Refusal('--announce-to takes no name and password in its address.', 2);
  return async (delivering, closers) => {
    const delivery = await deliverTo(webhookSink(url), delivering);
    closers.push(() => delivery.close());
    return [];
  };
}

function houseOf(options: BridgeOptions): Begin[] {
  if (options.house === undefined) return [];
  const url = urlOf(options.house, '--house', ['http:', 'https:']);
  const token = process.env.ROASTCALL_HOUSE_TOKEN;
  if (!token)
    throw new Refusal('--house wants a token of that server in ROASTCALL_HOUSE_TOKEN.', 2);
  const service = options.houseService;
  if (!/^[a-z0-9_]+\.[a-z0-9_]+$/.test(service))
    throw new Refusal(`--house-service wants domain.service, not "${service}".`, 2);
  const pairs = (options.houseData ?? []).map((pair) => /^([a-z0-9_]+)=(.+)$/s.exec(pair));
  if (pairs.some((pair) => pair === null))
    throw new Refusal('--house-data wants name=value, such as entity_id=media_player.kitchen.', 2);
  const data = Object.fromEntries(pairs.map((pair) => [pair?.[1], pair?.[2]]));
  const begin: Begin = async (delivering, closers) => {
    const delivery = await deliverTo(houseSink({ url, token, service, data }), delivering);
    closers.push(() => delivery.close());
    return [];
  };
  return [begin];
}

function mqttOf(options: BridgeOptions, version: string, folder: string): Begin[] {
  if (options.mqtt === undefined) return [];
  const url = urlOf(options.mqtt, '--mqtt', ['mqtt:', 'mqtts:', 'ws:', 'wss:']);
  for (const [name, topic] of [
    ['--mqtt-base', options.mqttBase],
    ['--mqtt-discovery', options.mqttDiscovery || 'none'],
  ] as const)
    if (!/^[^+#$/\0][^+#\0]*(?<!\/)$/.test(topic))
      throw new Refusal(`${name} wants a plain topic, not "${topic}".`, 2);
  const path = pathOf(options.mqttReadingPath ?? '$');
  if (!path)
    throw new Refusal(
      `--mqtt-reading-path wants a path such as probes[0].core, not "${options.mqttReadingPath}".`,
      2,
    );
  const begin: Begin = async (delivering, closers) => {
    const bridge = await mqttBridge({
      ...delivering,
      url,
      version,
      protocol: options.mqttVersion,
      username: process.env.ROASTCALL_MQTT_USER,
      password: process.env.ROASTCALL_MQTT_PASSWORD,
      base: options.mqttBase,
      discovery: options.mqttDiscovery || undefined,
      instance: instanceOf(folder),
      reading: { topic: options.mqttReading, path, unit: options.mqttReadingUnit },
    });
    closers.push(() => bridge.close());
    return [`MQTT at ${url.host}, topics ${options.mqttBase}/…`];
  };
  return [begin];
}

/** A failed fetch tells its reason only as a cause, and that at times only as a code. */
function reasonOf(why: Error): string {
  const cause: unknown = why.cause;
  if (!(cause instanceof Error)) return why.message;
  const code = (cause as NodeJS.ErrnoException).code;
  return cause.message || code || why.message;
}

export const isLoopback = (host: string): boolean =>
  /^(localhost|127(\.\d{1,3}){3}|::1)$/.test(host);

export function portOf(text: string, option: string): number {
  const port = Number(text);
  if (/^\d+$/.test(text) && port <= 65_535) return port;
  throw new Refusal(`${option} wants a port, 0 to 65535, not "${text}".`, 2);
}

function urlOf(text: string, option: string, protocols: readonly string[]): URL {
  const url = URL.canParse(text) ? new URL(text) : undefined;
  if (url && protocols.includes(url.protocol) && url.hostname !== '') return url;
  const wanted = protocols.map((one) => `${one}//`).join(' or ');
  throw new Refusal(`${option} wants an address that begins with ${wanted}, not "${text}".`, 2);
}

const listening = (server: Server, port: number, host: string): Promise<void> =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => resolve());
  });
