/**
 * A line to an MQTT broker that is kept up: one connection after another, each with a client of its
 * own, so that nothing is sent again behind our back. The broker keeps for us what comes while the
 * line is down for a moment; what is older than that, and what was left by an earlier process, is
 * thrown away there, for old words are not to be heard as new ones.
 */
import mqtt, { type IClientOptions, type MqttClient } from 'mqtt';

export interface Inbound {
  topic: string;
  payload: Buffer;
  /** It was kept by the broker from before we listened. */
  retained: boolean;
  /** The broker says that it may have come before. */
  again: boolean;
  /** Tick at which the last line was lost, for what comes first on one that is taken up again. */
  resumedAfter: number | undefined;
  number: number | undefined;
  responseTopic: string | undefined;
  correlation: Buffer | undefined;
}

export interface Outbound {
  topic: string;
  payload: string;
  retain?: boolean;
  correlation?: Buffer | undefined;
  liveSeconds?: number;
}

export interface LineOptions {
  url: URL;
  clientId: string;
  protocol: '3.1.1' | '5';
  username?: string | undefined;
  password?: string | undefined;
  /** What the broker says in our place when we are gone. */
  will: Outbound;
  subscriptions: readonly string[];
  /** The line is up and subscribed. */
  up(): void;
  /**
   * The broker is told that it arrived once this resolves; it must not wait for the line itself.
   */
  heard(message: Inbound): Promise<void>;
  trouble(why: Error | undefined): void;
  ticks(): number;
}

/** So long a silence of ours is bridged by the broker. */
const keptSeconds = 120;
const firstWaitMilliseconds = 250;
const longestWaitMilliseconds = 10_000;
const connectMilliseconds = 10_000;
const keepAliveSeconds = 30;
/** Nobody speaks so long; the broker keeps the rest to itself. */
const packetBytes = 1024 * 1024;
/** What the broker kept for us comes at once when the line is back. */
const resumingMilliseconds = 2_000;

export class Line {
  private readonly options: LineOptions;
  private readonly closed = new AbortController();
  private readonly ended: Promise<void>;
  private client: MqttClient | undefined;
  private lostAt: number | undefined;

  constructor(options: LineOptions) {
    this.options = options;
    this.ended = this.keepUp();
  }

  get isUp(): boolean {
    return this.client?.connected ?? false;
  }

  /** Resolves when the broker has it; rejects when the line went down first, or at the signal. */
  publish(message: Outbound, signal: AbortSignal): Promise<void> {
    const client = this.client;
    if (!client?.connected) return Promise.reject(new Error('the broker is not there'));
    const { topic, payload, retain = false, correlation, liveSeconds } = message;
    return new Promise((resolve, reject) => {
      const settle = (error?: Error | null): void => {
        client.off('close', lost);
        signal.removeEventListener('abort', late);
        if (error) reject(error);
        else resolve();
      };
      const lost = (): void => settle(new Error('the broker went away'));
      // A broker that does not answer is no broker; a new connection may find it well.
      const late = (): void => {
        client.end(true);
        settle(new Error('the broker gave no answer in time'));
      };
      client.once('close', lost);
      signal.addEventListener('abort', late, { once: true });
      const properties = {
        payloadFormatIndicator: true,
        contentType: 'application/json',
        ...(correlation ? { correlationData: correlation } : {}),
        ...(liveSeconds === undefined ? {} : { messageExpiryInterval: liveSeconds }),
      };
      client.publish(
        topic,
        payload,
        { qos: 1, retain, ...(this.options.protocol === '5' ? { properties } : {}) },
        (error) => settle(error),
      );
    });
  }

  /** Leaves without the will being read out, and without a session left at the broker. */
  async close(): Promise<void> {
    this.closed.abort();
    if (this.client) await this.leave(this.client);
    await this.ended;
  }

  private async keepUp(): Promise<void> {
    let failures = 0;
    while (!this.closed.signal.aborted) {
      try {
        const { gone } = await this.connect();
        failures = 0;
        this.options.trouble(undefined);
        this.options.up();
        await gone;
        this.lostAt = this.options.ticks();
        this.client = undefined;
        if (!this.closed.signal.aborted) this.options.trouble(new Error('the broker went away'));
      } catch (error) {
        if (failures === 0) this.options.trouble(error as Error);
        failures += 1;
      }
      const wait = firstWaitMilliseconds * 2 ** Math.min(failures, 10);
      await rested(Math.min(wait, longestWaitMilliseconds), this.closed.signal);
    }
  }

  /** Connects and subscribes; gives what settles when the connection is over. */
  private async connect(): Promise<{ gone: Promise<void> }> {
    const { protocol, ticks, will, heard } = this.options;
    const fresh = this.lostAt === undefined || ticks() - this.lostAt > keptSeconds * 1000;
    if (protocol === '3.1.1' && fresh) await this.forget();
    const client = this.dial({
      clean: protocol === '5' && fresh,
      will: { ...will, payload: Buffer.from(will.payload), qos: 1, retain: true },
      ...(protocol === '5'
        ? { properties: { sessionExpiryInterval: keptSeconds, maximumPacketSize: packetBytes } }
        : {}),
    });
    const lostAt = this.lostAt;
    let resumedUntil = Number.NEGATIVE_INFINITY;
    client.once('connect', ({ sessionPresent }) => {
      if (sessionPresent) resumedUntil = ticks() + resumingMilliseconds;
    });
    client.handleMessage = (packet, done) => {
      const { properties } = packet;
      heard({
        topic: packet.topic,
        payload: Buffer.from(packet.payload),
        retained: packet.retain,
        again: packet.dup,
        resumedAfter: ticks() < resumedUntil ? lostAt : undefined,
        number: packet.messageId,
        responseTopic: properties?.responseTopic,
        correlation: properties?.correlationData,
      }).then(
        () => done(),
        () => done(),
      );
    };
    const gone = new Promise<void>((resolve) => client.once('close', () => resolve()));
    await this.connected(client);
    await this.subscribe(client, gone);
    this.client = client;
    return { gone };
  }

  private async subscribe(client: MqttClient, gone: Promise<void>): Promise<void> {
    const { signal } = this.closed;
    const given = (): void => void client.end(true);
    const timer = setTimeout(given, connectMilliseconds);
    signal.addEventListener('abort', given, { once: true });
    try {
      if (signal.aborted) throw new Error('the line is closed');
      const granted = await Promise.race([
        client.subscribeAsync([...this.options.subscriptions], { qos: 1 }),
        gone.then(() => {
          throw new Error('the broker does not answer');
        }),
      ]);
      const refused = granted.find((one) => one.qos >= 128);
      if (refused) throw new Error(`the broker does not let us read ${refused.topic}`);
    } catch (error) {
      client.end(true);
      throw error;
    } finally {
      clearTimeout(timer);
      signal.removeEventListener('abort', given);
    }
  }

  private async leave(client: MqttClient): Promise<void> {
    const { protocol } = this.options;
    const over = protocol === '5' ? { properties: { sessionExpiryInterval: 0 } } : {};
    await client.endAsync(false, over).catch(() => undefined);
    if (protocol === '3.1.1') await this.forget().catch(() => undefined);
  }

  private connected(client: MqttClient): Promise<void> {
    return new Promise((resolve, reject) => {
      let why: Error = new Error('the broker does not answer');
      client.on('error', (error) => {
        why = error;
      });
      const { signal } = this.closed;
      const given = (): void => void client.end(true);
      // The farewell of an open line dials once more, after the line is closed.
      if (!signal.aborted) signal.addEventListener('abort', given, { once: true });
      client.once('connect', () => {
        signal.removeEventListener('abort', given);
        resolve();
      });
      client.once('close', () => {
        signal.removeEventListener('abort', given);
        reject(why);
      });
    });
  }

  /** Before version 5 a session ends only by a clean connection in its place. */
  private async forget(): Promise<void> {
    const client = this.dial({ clean: true });
    await this.connected(client);
    await client.endAsync();
  }

  private dial(more: IClientOptions): MqttClient {
    const { url, clientId, protocol, username, password } = this.options;
    const client = mqtt.connect(url.href, {
      clientId,
      protocolVersion: protocol === '5' ? 5 : 4,
      reconnectPeriod: 0,
      resubscribe: false,
      queueQoSZero: false,
      connectTimeout: connectMilliseconds,
      keepalive: keepAliveSeconds,
      ...(username === undefined ? {} : { username }),
      ...(password === undefined ? {} : { password }),
      ...more,
    });
    // Every failure also closes the connection, which is where it is dealt with.
    client.on('error', () => undefined);
    return client;
  }
}

const rested = (milliseconds: number, signal: AbortSignal): Promise<void> =>
  new Promise((resolve) => {
    const end = (): void => {
      clearTimeout(timer);
      signal.removeEventListener('abort', end);
      resolve();
    };
    if (signal.aborted) return resolve();
    const timer = setTimeout(end, milliseconds);
    signal.addEventListener('abort', end, { once: true });
  });
