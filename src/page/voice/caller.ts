/**
 * Speaks each announcement once over all pages: the kitchen gives it to the first page that asks. The
 * page touched last asks at once, the others a moment later. A page that may not sound never asks.
 */
import type { Called, Kitchen } from '../kitchen.ts';
import type { Turn } from '../wire.ts';
import { words } from '../words.ts';
import type { Sounds } from './sounds.ts';
import type { Speaker } from './speak.ts';

const touchedLatelyMilliseconds = 5 * 60_000;
const afterYouMilliseconds = 150;
const pullAgainMilliseconds = 20_000;

export class Caller {
  private readonly kitchen: Kitchen;
  private readonly sounds: Sounds;
  private readonly speaker: Speaker;
  private touchedAt = 0;
  private begun = false;
  /** Calls that came before the first touch, or with the story so far. */
  private early: Called[] = [];
  private pullTimer: ReturnType<typeof setInterval> | undefined;

  constructor(options: { kitchen: Kitchen; sounds: Sounds; speaker: Speaker }) {
    this.kitchen = options.kitchen;
    this.sounds = options.sounds;
    this.speaker = options.speaker;
    this.kitchen.onCall((called) => {
      if (this.begun) void this.call(called);
      else this.early.push(called);
    });
    this.kitchen.onReply((turn) => this.reply(turn));
  }

  touched(): void {
    this.touchedAt = Date.now();
  }

  /** From now on the page may sound; the newest call still good is caught up with. */
  begin(): void {
    this.begun = true;
    const last = this.early.at(-1);
    this.early = [];
    if (last) void this.call(last);
  }

  /** The triangle again and again on every page, while the pull is unanswered. */
  pullOpen(open: boolean): void {
    if (open && this.pullTimer === undefined)
      this.pullTimer = setInterval(() => this.sounds.play('high'), pullAgainMilliseconds);
    if (!open && this.pullTimer !== undefined) {
      clearInterval(this.pullTimer);
      this.pullTimer = undefined;
    }
  }

  private async call(called: Called): Promise<void> {
    const lately = Date.now() - this.touchedAt < touchedLatelyMilliseconds;
    if (!lately) await new Promise((resolve) => setTimeout(resolve, afterYouMilliseconds));
    if (!(await this.kitchen.claim(called.id))) return;
    this.sounds.play(called.urgency);
    this.speaker.say(called.speech, { lang: words.language });
  }

  /** Answers are spoken where the question was spoken. */
  private reply(turn: Turn): void {
    if (!this.begun || !this.kitchen.spokenHere.delete(turn.text ?? '')) return;
    for (const { speech } of turn.replies) this.speaker.say(speech, { lang: words.language });
  }
}
