/**
 * The chat in a terminal: lines in, replies and unasked announcements out. Knows the session's port
 * and a terminal, no clock but the one handed in. Piped, it works the same, without prompt or colour.
 */
import { clearLine, createInterface, cursorTo, type Interface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { type Instant, localTime } from '../../base/time.ts';
import type { Announcement, Clock, Session } from '../../session/ports.ts';
import { failed, greeting, missedSentence, welcomeBack } from './en.ts';

/** The one real timer. */
export interface Alarm {
  set(at: Instant, ring: () => void): void;
  clear(): void;
}

/** How words are set off from each other; all of it plain where there is no colour. */
export interface Style {
  reply(text: string): string;
  announcement(text: string, urgent: boolean): string;
  aside(text: string): string;
}

export interface TalkOptions {
  session: Session;
  clock: Clock;
  alarm: Alarm;
  input: Readable;
  output: Writable;
  /** A person types here: there is a prompt, and half-typed lines are kept when something is said. */
  interactive: boolean;
  style: Style;
}

const sink = 'terminal';

/** A wake that raised nothing is not repeated sooner than this. */
const shortestWaitMilliseconds = 1_000;

/** Talks until the input ends; everything said by then is answered. */
export async function talk(options: TalkOptions): Promise<void> {
  const chat = new Chat(options);
  await chat.begin();
  await chat.ended;
}

class Chat {
  readonly ended: Promise<void>;
  private readonly options: TalkOptions;
  private readonly lines: Interface;
  private work: Promise<void> = Promise.resolve();
  private closed = false;
  private timeZone = 'UTC';

  constructor(options: TalkOptions) {
    this.options = options;
    this.lines = createInterface({
      input: options.input,
      ...(options.interactive ? { output: options.output } : {}),
      terminal: options.interactive,
      prompt: '> ',
    });
    this.lines.on('line', (text) => this.next(() => this.hear(text)));
    this.ended = new Promise((resolve) => {
      this.lines.on('close', () => {
        this.next(async () => {
          this.closed = true;
          options.alarm.clear();
          resolve();
        });
      });
    });
  }

  /** Says what was missed since the dinner was last open, or how to begin. */
  begin(): Promise<void> {
    return this.next(async () => {
      const { session, clock, style } = this.options;
      const now = clock.now();
      const fresh = (await session.facts()).length === 0;
      const view = await session.view(now);
      this.timeZone = view.timeZone;
      const waiting = await session.undelivered(sink, now);
      const raised = await session.wake(now);
      if (fresh) this.write(style.aside(greeting));
      else if (waiting.length + raised.length === 0)
        this.write(style.aside(welcomeBack(this.time(now))));
      else await this.tellMissed([...waiting, ...raised], now);
    });
  }

  private async tellMissed(calls: readonly Announcement[], now: Instant): Promise<void> {
    const { session, style } = this.options;
    const steps = (await session.view(now)).steps;
    const still = calls.filter((call) => call.expiresAt > now);
    const first = still.findLast((call) => call.urgency === 'high') ?? still.at(-1);
    const missed = calls.map((call) => ({
      time: this.time(call.at),
      kind: call.kind,
      title: steps.find((step) => step.id === call.step)?.title,
    }));
    const next = (await session.view(now)).next?.title;
    this.write(style.announcement(missedSentence(missed, first?.text ?? next), true));
    await session.delivered(
      calls.map((call) => call.id),
      sink,
    );
  }

  /** One thing at a time, and the timer set anew after each. A failure is said, never lost. */
  private next(job: () => Promise<void>): Promise<void> {
    this.work = this.work
      .then(job)
      .catch((error: unknown) => this.write(failed(error instanceof Error ? error.message : '')))
      .then(() => this.arm());
    return this.work;
  }

  private async hear(text: string): Promise<void> {
    const { session, clock, style } = this.options;
    if (text.trim() === '') return this.prompt();
    const turn = await session.hear({ text, at: clock.now(), source: 'cook' });
    this.timeZone = turn.view.timeZone;
    await this.announce(turn.announcements);
    for (const reply of turn.replies) this.write(style.reply(reply.text));
  }

  private async ring(): Promise<void> {
    await this.announce(await this.options.session.wake(this.options.clock.now()));
  }

  /** Written first and marked after: said at least once, whatever happens in between. */
  private async announce(calls: readonly Announcement[]): Promise<void> {
    const { session, style } = this.options;
    for (const call of calls) {
      const text = `${this.time(call.at)}  ${call.text}`;
      this.write(style.announcement(text, call.urgency === 'high'));
      await session.delivered([call.id], sink);
    }
  }

  private async arm(): Promise<void> {
    const { session, clock, alarm } = this.options;
    if (this.closed) return;
    const { at: due } = await session.nextDue();
    if (due === undefined) alarm.clear();
    else
      alarm.set(Math.max(due, clock.now() + shortestWaitMilliseconds), () =>
        this.next(() => this.ring()),
      );
  }

  private time(at: Instant): string {
    return localTime(at, this.timeZone).time;
  }

  /** Prints a line above whatever is being typed, and gives the half-typed line back. */
  private write(text: string): void {
    const { output, interactive } = this.options;
    if (interactive) {
      clearLine(output, 0);
      cursorTo(output, 0);
    }
    output.write(`${text}\n`);
    this.prompt();
  }

  private prompt(): void {
    if (this.options.interactive && !this.closed) this.lines.prompt(true);
  }
}
