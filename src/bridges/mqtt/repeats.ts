/**
 * Messages that a broker gives a second time because the receipt of the first got lost with the
 * line. One that keeps to the standard marks them (MQTT 3.1.1, section 3.3.1.1); of one that does
 * not, the same message again, first thing on a line that is taken up again, is taken for a
 * repetition.
 */
import { createHash } from 'node:crypto';
import type { Inbound } from './line.ts';

interface Handled {
  number: number | undefined;
  content: string;
  atTick: number;
  excused: boolean;
}

const kept = 64;
/** A receipt is on its way no longer than this. */
const underwayMilliseconds = 2_000;

export class Repeats {
  private readonly ticks: () => number;
  private handled: Handled[] = [];

  constructor(ticks: () => number) {
    this.ticks = ticks;
  }

  /** Whether it was handled before; if not, it counts as handled from now on. */
  has(message: Inbound): boolean {
    const { number, again, resumedAfter } = message;
    const hash = createHash('sha256').update(`${message.topic}\n`).update(message.payload);
    const content = hash.digest('base64');
    const before = this.handled.find(
      (one) =>
        one.content === content &&
        ((again && one.number === number) ||
          (resumedAfter !== undefined &&
            !one.excused &&
            one.atTick > resumedAfter - underwayMilliseconds)),
    );
    if (before) {
      before.excused = true;
      return true;
    }
    const one = { number, content, atTick: this.ticks(), excused: false };
    this.handled = [one, ...this.handled].slice(0, kept);
    return false;
  }
}
