/**
 * Things on their way out through one door: in order, one at a time, tried again with growing
 * waits, dropped when their time is up. It knows no clock on the wall, which may be set meanwhile,
 * only ticks.
 */

/** Not a failure: the door is in use; come back so much later. */
export class NotNow extends Error {
  readonly milliseconds: number;
  constructor(why: string, milliseconds: number) {
    super(why);
    this.name = 'NotNow';
    this.milliseconds = milliseconds;
  }
}

export interface Parcel<T> {
  item: T;
  /** A second parcel of the same name is not taken. */
  name: string;
  /** How long from now it is worth sending. */
  liveMilliseconds: number;
  urgent?: boolean;
}

export interface OutboxOptions<T> {
  /** Rejects when it did not arrive, or when it is not known to have. */
  send(item: T, signal: AbortSignal): Promise<void>;
  /** Called once after each arrival, before the next is sent. */
  arrived?(item: T): Promise<void>;
  /** Milliseconds that only ever grow. */
  ticks(): number;
  /** One attempt may take so long. */
  patienceMilliseconds: number;
  /** An urgent parcel goes before the waiting ones that are not; else it only ends a wait. */
  urgentFirst?: boolean;
  /** The first failure after a success, and the first success after failures (undefined). */
  trouble?(why: Error | undefined): void;
  firstWaitMilliseconds?: number;
  longestWaitMilliseconds?: number;
}

/** Names remembered, so that a parcel is not taken twice; older ones are told apart elsewhere. */
const namesKept = 5_000;

interface Waiting<T> extends Parcel<T> {
  until: number;
}

export class Outbox<T> {
  private readonly options: OutboxOptions<T>;
  private readonly waiting: Waiting<T>[] = [];
  private readonly names = new Set<string>();
  private running: Promise<void> = Promise.resolve();
  private busy = false;
  /** The attempt that is under way. */
  private sending: AbortController | undefined;
  private failures = 0;
  private closing = false;
  private wake: (() => void) | undefined;

  constructor(options: OutboxOptions<T>) {
    this.options = options;
  }

  add(parcel: Parcel<T>): void {
    if (this.closing || this.names.has(parcel.name)) return;
    this.names.add(parcel.name);
    const oldest = this.names.values().next().value;
    if (this.names.size > namesKept && oldest !== undefined) this.names.delete(oldest);
    this.waiting.push({ ...parcel, until: this.options.ticks() + parcel.liveMilliseconds });
    if (parcel.urgent) this.hurry();
    if (this.busy) return;
    this.busy = true;
    this.running = this.run();
  }

  /** Ends a wait: the door may be open again. */
  hurry(): void {
    this.wake?.();
  }

  /** Takes nothing more; what is half way out may arrive within the grace. */
  async close(graceMilliseconds = 0): Promise<void> {
    this.closing = true;
    this.hurry();
    const timer = setTimeout(() => this.sending?.abort(), graceMilliseconds);
    await this.running;
    clearTimeout(timer);
  }

  private async run(): Promise<void> {
    for (let one = this.next(); one && !this.closing; one = this.next()) {
      if (one.until <= this.options.ticks()) {
        this.remove(one);
        continue;
      }
      const wait = await this.attempt(one);
      if (wait !== undefined && !this.closing && this.next() === one)
        await this.rest(Math.min(wait, one.until - this.options.ticks()));
    }
    this.busy = false;
  }

  private next(): Waiting<T> | undefined {
    const urgent = this.options.urgentFirst && this.waiting.find((one) => one.urgent);
    return urgent || this.waiting[0];
  }

  /** How long to wait before trying again, or undefined when it arrived. */
  private async attempt(one: Waiting<T>): Promise<number | undefined> {
    const { send, arrived, patienceMilliseconds, trouble } = this.options;
    const attempt = new AbortController();
    const timer = setTimeout(() => attempt.abort(), patienceMilliseconds);
    this.sending = attempt;
    try {
      await orAborted(send(one.item, attempt.signal), attempt.signal);
    } catch (error) {
      if (error instanceof NotNow) return error.milliseconds;
      this.failures += 1;
      if (this.failures === 1 && !this.closing) trouble?.(asError(error));
      const first = this.options.firstWaitMilliseconds ?? 500;
      const longest = this.options.longestWaitMilliseconds ?? 30_000;
      return Math.min(longest, first * 2 ** Math.min(this.failures - 1, 16));
    } finally {
      clearTimeout(timer);
      this.sending = undefined;
    }
    if (this.failures > 0) trouble?.(undefined);
    this.failures = 0;
    this.remove(one);
    await arrived?.(one.item).catch((error) => trouble?.(asError(error)));
    return undefined;
  }

  private remove(one: Waiting<T>): void {
    const at = this.waiting.indexOf(one);
    if (at >= 0) this.waiting.splice(at, 1);
  }

  private rest(milliseconds: number): Promise<void> {
    return new Promise((resolve) => {
      const end = (): void => {
        clearTimeout(timer);
        this.wake = undefined;
        resolve();
      };
      const timer = setTimeout(end, Math.max(0, milliseconds));
      this.wake = end;
    });
  }
}

const asError = (error: unknown): Error =>
  error instanceof Error ? error : new Error(String(error));

/** A door that hangs without heeding its signal holds nobody up. */
const orAborted = (work: Promise<void>, signal: AbortSignal): Promise<void> =>
  new Promise((resolve, reject) => {
    work.then(resolve, reject);
    const given = (): void => reject(new Error('gave no answer in time'));
    signal.addEventListener('abort', given, { once: true });
  });
