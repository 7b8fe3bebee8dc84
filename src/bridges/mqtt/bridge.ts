/**
 * The household on an MQTT bus: words in on `say`, answers out on `reply`, calls on `announce`, the
 * day's figures kept on `state`, a leave-in thermometer in on `reading`. It holds nothing of a
 * dinner; what it shows is read from the household each time.
 */
import { createHash } from 'node:crypto';
import { type Delivering, type Delivery, deliverTo } from '../../household/deliver.ts';
import { unnamed } from '../../household/echo.ts';
import type { Household } from '../../household/household.ts';
import { Outbox } from '../../household/outbox.ts';
import { sinkName } from '../sink-name.ts';
import { speechOf, spokenFailure, spokenSilence } from '../spoken.ts';
import { announcementOnWire } from '../wire.ts';
import { discoveryOf } from './discovery.ts';
import { type Inbound, Line, type Outbound } from './line.ts';
import { readingIn } from './reading.ts';
import { Repeats } from './repeats.ts';
import { type SaidOnBus, saidIn } from './said.ts';
import { busState } from './state.ts';

export interface MqttOptions extends Delivering {
  url: URL;
  protocol: '3.1.1' | '5';
  username?: string | undefined;
  password?: string | undefined;
  /** First part of every topic. */
  base: string;
  /** Topic under which a home server looks for devices; undefined: it is told nothing. */
  discovery?: string | undefined;
  /** The same in every run of one household. */
  instance: string;
  version: string;
  /** Where a leave-in thermometer publishes, beside `<base>/reading`. */
  reading: {
    topic?: string | undefined;
    path: readonly (string | number)[];
    unit?: 'F' | 'C' | undefined;
  };
}

export interface MqttBridge {
  close(): Promise<void>;
}

const stateEveryMilliseconds = 60_000;
const patienceMilliseconds = 10_000;
/** An answer nobody could be given for so long is no longer wanted. */
const answerLiveMilliseconds = 60_000;

export async function mqttBridge(options: MqttOptions): Promise<MqttBridge> {
  const bridge = new Bridge(options);
  await bridge.open();
  return bridge;
}

class Bridge implements MqttBridge {
  private readonly options: MqttOptions;
  private readonly household: Household;
  private readonly line: Line;
  private readonly answers: Outbox<Outbound>;
  /** Topics that the broker keeps, as they should read and as they were last sent. */
  private readonly wanted = new Map<string, string>();
  private readonly shown = new Map<string, string>();
  private readonly repeats: Repeats;
  private answered = 0;
  private showing: Promise<void> = Promise.resolve();
  private delivery: Delivery | undefined;
  private timer: NodeJS.Timeout | undefined;
  private off: (() => void) | undefined;

  constructor(options: MqttOptions) {
    const { url, base, protocol, username, password, instance, discovery, ticks } = options;
    this.options = options;
    this.household = options.household;
    this.repeats = new Repeats(ticks);
    this.answers = new Outbox({
      send: (message, signal) => this.line.publish(message, signal),
      ticks,
      patienceMilliseconds,
      firstWaitMilliseconds: 250,
      longestWaitMilliseconds: 2_000,
    });
    this.line = new Line({
      url,
      clientId: `roastcall-${instance}`,
      protocol,
      username,
      password,
      ticks,
      will: { topic: `${base}/status`, payload: 'offline' },
      subscriptions: [
        ...new Set([
          `${base}/say`,
          `${base}/reading`,
          ...(options.reading.topic === undefined ? [] : [options.reading.topic]),
          ...(discovery === undefined ? [] : [`${discovery}/status`]),
        ]),
      ],
      up: () => this.up(),
      heard: (message) => this.take(message),
      trouble: (why) => options.trouble?.(`mqtt:${url.host}`, why),
    });
  }

  async open(): Promise<void> {
    const { url, base, protocol, household, ticks } = this.options;
    this.wanted.set(`${base}/status`, 'online');
    const found = this.discovery();
    if (found) this.wanted.set(found.topic, found.payload);
    const show = (): void => void this.showState();
    this.off = household.listen(show);
    this.timer = setInterval(show, stateEveryMilliseconds);
    this.timer.unref();
    show();
    this.delivery = await deliverTo(
      {
        name: sinkName('mqtt', url.host, base),
        patienceMilliseconds,
        send: (announcement, dinner, signal) => {
          const wire = announcementOnWire(announcement, dinner.timeZone);
          const live = Math.ceil((announcement.expiresAt - announcement.at) / 1000);
          return this.line.publish(
            {
              topic: `${base}/announce`,
              payload: JSON.stringify({ dinner: dinner.id, ...wire }),
              ...(protocol === '5' ? { liveSeconds: Math.max(1, live) } : {}),
            },
            signal,
          );
        },
      },
      // Why nothing arrives is the line's to say.
      { household, ticks },
    );
  }

  async close(): Promise<void> {
    this.off?.();
    clearInterval(this.timer);
    await this.delivery?.close();
    await this.answers.close(500);
    this.wanted.set(`${this.options.base}/status`, 'offline');
    await this.show();
    await this.line.close();
  }

  private discovery(): { topic: string; payload: string } | undefined {
    const { discovery, base, instance, version } = this.options;
    return discovery === undefined
      ? undefined
      : discoveryOf({ prefix: discovery, base, instance, version });
  }

  /** A broker that was away may have forgotten what it kept. */
  private up(): void {
    this.shown.clear();
    void this.show();
    this.answers.hurry();
    this.delivery?.hurry();
  }

  private async take(message: Inbound): Promise<void> {
    const { base, discovery, reading } = this.options;
    if (message.topic === `${discovery}/status`) {
      // The home server has started anew and asks who is there.
      const found = this.discovery();
      if (found && !message.retained && message.payload.toString() === 'online') {
        this.shown.delete(found.topic);
        void this.show();
      }
      return;
    }
    // What the broker kept from before is no news: an old command must not be obeyed again.
    if (message.retained || this.repeats.has(message)) return;
    if (message.topic === `${base}/say`) {
      const said = saidIn(message, base);
      if (said) this.answer(said, await this.hear(said), message.correlation);
      return;
    }
    const elsewhere = reading.topic !== undefined && message.topic === `${base}/reading`;
    const found = readingIn(message.payload.toString(), elsewhere ? [] : reading.path);
    if (found) await this.household.sense({ ...found, unit: found.unit ?? reading.unit });
  }

  private async hear(said: SaidOnBus): Promise<object> {
    const { text, id, device } = said;
    if (text.trim() === '') return { handled: false, text: spokenSilence, speech: spokenSilence };
    try {
      const turn = await this.household.say({
        text,
        source: device === undefined ? 'mqtt' : `mqtt ${device}`,
        key: id === undefined ? undefined : keyOf(device, id, text),
        device: device === undefined ? unnamed : `mqtt:${device}`,
        microphone: 'closes',
      });
      return {
        handled: true,
        text: turn.replies.map((reply) => reply.text).join(' '),
        speech: speechOf(turn),
        dinner: turn.view.id,
        asking: turn.view.asking?.expecting ?? null,
      };
    } catch (error) {
      this.options.trouble?.('mqtt', error as Error);
      return { handled: true, text: spokenFailure, speech: spokenFailure };
    }
  }

  private answer(said: SaidOnBus, body: object, correlation: Buffer | undefined): void {
    const named = {
      ...(said.id === undefined ? {} : { id: said.id }),
      ...(said.device === undefined ? {} : { device: said.device }),
    };
    this.answered += 1;
    this.answers.add({
      item: { topic: said.replyTo, payload: JSON.stringify({ ...named, ...body }), correlation },
      name: String(this.answered),
      liveMilliseconds: answerLiveMilliseconds,
    });
  }

  private async showState(): Promise<void> {
    const state = await busState(this.household).catch(() => undefined);
    if (!state) return;
    this.wanted.set(`${this.options.base}/state`, JSON.stringify(state));
    await this.show();
  }

  /**
   * Sends what the broker should keep and does not yet; what fails is sent when the line is up
   * again.
   */
  private show(): Promise<void> {
    this.showing = this.showing.then(async () => {
      for (const [topic, payload] of this.wanted) {
        if (this.shown.get(topic) === payload || !this.line.isUp) continue;
        try {
          const patience = AbortSignal.timeout(patienceMilliseconds);
          await this.line.publish({ topic, payload, retain: true }, patience);
          this.shown.set(topic, payload);
        } catch {
          return;
        }
      }
    });
    return this.showing;
  }
}

/** A sender whose numbers begin anew has new words under an old number; they are not swallowed. */
function keyOf(device: string | undefined, id: string, text: string): string {
  const words = createHash('sha256').update(text).digest('hex').slice(0, 8);
  return `mqtt:${JSON.stringify([device ?? '', id])}:${words}`;
}
