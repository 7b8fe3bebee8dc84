/**
 * Things on their way out through one door: in order, one at a time, tried again with growing waits,
 * dropped when their time is up. It knows no clock on the wall, which may be set meanwhile, only ticks.
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
  private readonly ended = new AbortController();
  private running: Promise<void> = Promise.resolve();
  private busy = false;
  private sending = false;
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
    const one = { ...parcel, until: this.options.ticks() + parcel.liveMilliseconds };
    if (parcel.urgent && this.options.urgentFirst) {
      // The one in front may be half way out already.
      const inFront = this.sending ? 1 : 0;
      const after = this.waiting.findIndex((other, index) => index >= inFront && !other.urgent);
      this.waiting.splice(after < 0 ? this.waiting.length : after, 0, one);
    } else this.waiting.push(one);
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
    const timer = setTimeout(() => this.ended.abort(), graceMilliseconds);
    await this.running;
    clearTimeout(timer);
    this.ended.abort();
  }

  private async run(): Promise<void> {
    for (let one = this.waiting[0]; one && !this.closing; one = this.waiting[0]) {
      if (one.until <= this.options.ticks()) {
        this.remove(one);
        continue;
      }
      const wait = await this.attempt(one);
      if (wait !== undefined && !this.closing)
        await this.rest(Math.min(wait, one.until - this.options.ticks()));
    }
    this.busy = false;
  }

  /** How long to wait before trying again, or undefined when it arrived. */
  private async attempt(one: Waiting<T>): Promise<number | undefined> {
    const { send, arrived, patienceMilliseconds, trouble } = this.options;
    const patience = AbortSignal.timeout(patienceMilliseconds);
    this.sending = true;
    try {
      await orAborted(send(one.item, AbortSignal.any([this.ended.signal, patience])), [
        this.ended.signal,
        patience,
      ]);
    } catch (error) {
      if (error instanceof NotNow) return error.milliseconds;
      this.failures += 1;
      if (this.failures === 1 && !this.ended.signal.aborted) trouble?.(asError(error));
      const first = this.options.firstWaitMilliseconds ?? 500;
      const longest = this.options.longestWaitMilliseconds ?? 30_000;
      return Math.min(longest, first * 2 ** Math.min(this.failures - 1, 16));
    } finally {
      this.sending = false;
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
function orAborted(work: Promise<void>, signals: readonly AbortSignal[]): Promise<void> {
  return new Promise((resolve, reject) => {
    work.then(resolve, reject);
    for (const signal of signals) {
      const given = (): void => reject(new Error('gave no answer in time'));
      if (signal.aborted) given();
      else signal.addEventListener('abort', given, { once: true });
    }
  });
}
