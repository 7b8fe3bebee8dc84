/**
 * The page's line to the kitchen: finds the open dinner, follows its events, carries words there.
 * Holds what the page knows; decides nothing about cooking.
 */
import { Refused, readEvents, refusalOf } from './stream.ts';
import type { Announcement, KitchenEvent, KitchenNow, Turn, View } from './wire.ts';

export interface TalkLine {
  position: number;
  who: 'cook' | 'reply' | 'call';
  text: string;
  urgent?: boolean;
}

export interface Called extends Announcement {
  position: number;
}

/** Words on their way. Those that could not be sent at once wait for the cook's leave. */
export interface Outgoing {
  key: string;
  text: string;
  since: number;
  source: Source;
}
export type Source = 'voice' | 'touch' | 'keys';

export interface KitchenState {
  link: 'looking' | 'live' | 'lost' | 'unpaired';
  /** When the kitchen stopped answering, by this device's clock. */
  lostSince?: number;
  clock: 'real' | 'simulated';
  dinner?: string;
  view?: View;
  /** When the view came, by this device's clock. */
  viewAt: number;
  position: number;
  talk: TalkLine[];
  called: Called[];
  /** Positions of the last turn, of the last in which the cook said "not yet", and of the last reading. */
  saidAt: number;
  notYetAt: number;
  readingAt: number;
  /** What was answered when the cook last told of an emergency. */
  emergencyWords?: string;
  outbox: Outgoing[];
  /** One sentence about the last words that the kitchen would not take. */
  refusal?: string;
}

const empty = (): KitchenState => ({
  link: 'looking',
  clock: 'real',
  viewAt: 0,
  position: -1,
  talk: [],
  called: [],
  saidAt: -1,
  notYetAt: -1,
  readingAt: -1,
  outbox: [],
});

const pulseMilliseconds = 5_000;
const firstWaitMilliseconds = 250;
const longestWaitMilliseconds = 1_500;
/** Words kept longer than this on the way may no longer be true; the cook is asked before they go. */
export const staleMilliseconds = 60_000;

export class Kitchen {
  state: KitchenState = empty();
  /** What was said aloud to this very page, whose answers are to be spoken here. */
  readonly spokenHere = new Set<string>();
  private readonly listeners = new Set<() => void>();
  private readonly callListeners = new Set<(called: Called, fresh: boolean) => void>();
  private readonly replyListeners = new Set<(turn: Turn) => void>();
  private following = new AbortController();
  private sending = false;

  listen(listener: () => void): void {
    this.listeners.add(listener);
  }
  /** `fresh`: it came while the page was looking on, not with the story so far. */
  onCall(listener: (called: Called, fresh: boolean) => void): void {
    this.callListeners.add(listener);
  }
  onReply(listener: (turn: Turn) => void): void {
    this.replyListeners.add(listener);
  }

  /** Runs as long as the page does. */
  async run(): Promise<never> {
    setInterval(() => void this.pulse(), pulseMilliseconds);
    for (let wait = firstWaitMilliseconds; ; ) {
      this.following = new AbortController();
      try {
        const watching = await this.follow();
        wait = watching ? firstWaitMilliseconds : longestWaitMilliseconds;
      } catch (error) {
        const unpaired = error instanceof Refused && error.status === 401;
        if (!this.following.signal.aborted)
          this.change({
            link: unpaired ? 'unpaired' : 'lost',
            lostSince: this.state.lostSince ?? Date.now(),
          });
        if (error instanceof Refused && error.status === 404)
          this.state.dinner = undefined as never;
      }
      await new Promise((resolve) => setTimeout(resolve, wait));
      wait = Math.min(wait * 2, longestWaitMilliseconds);
    }
  }

  /** Resolves when the line ends; false when there is no dinner to watch yet. */
  private async follow(): Promise<boolean> {
    const now = await kitchenNow();
    const dinner = now.dinner ?? this.state.dinner;
    if (dinner !== this.state.dinner)
      this.state = { ...empty(), outbox: this.state.outbox, link: this.state.link };
    this.state.clock = now.clock;
    if (dinner === undefined) {
      this.change({ link: 'live', lostSince: undefined });
      void this.flush();
      return false;
    }
    this.state.dinner = dinner;
    await readEvents(dinner, {
      last: this.state.position,
      signal: this.following.signal,
      open: () => {
        this.change({ link: 'live', lostSince: undefined });
        void this.flush();
      },
      take: (events) => this.take(events),
    });
    return true;
  }

  private take(events: KitchenEvent[]): void {
    const story = this.state.view === undefined;
    for (const one of events) {
      if (one.event === 'view') this.takeView(one.data);
      if (one.position <= this.state.position && one.event !== 'view') continue;
      if (one.event === 'turn') this.takeTurn(one.position, one.data);
      if (one.event === 'announcement') {
        const called = { ...one.data, position: one.position };
        this.state.called = [...this.state.called, called];
        this.tell(called.position, 'call', called.text, called.urgency === 'high');
        for (const listener of this.callListeners) listener(called, !story);
      }
      this.state.position = Math.max(this.state.position, one.position);
    }
    this.change({});
  }

  private takeTurn(position: number, turn: Turn): void {
    const heard = turn.heard.map((one) => one.intent);
    this.state.saidAt = position;
    if (heard.includes('report-not-done')) this.state.notYetAt = position;
    if (heard.includes('report-reading')) this.state.readingAt = position;
    if (heard.includes('emergency'))
      this.state.emergencyWords = turn.replies.map((reply) => reply.text).join(' ');
    if (turn.text) this.tell(position, 'cook', turn.text);
    for (const reply of turn.replies) this.tell(position, 'reply', reply.text);
    for (const listener of this.replyListeners) listener(turn);
  }

  private takeView(view: View): void {
    const { view: known } = this.state;
    if (known && (view.position < known.position || view.at < known.at)) return;
    this.state.view = view;
    this.state.viewAt = Date.now();
  }

  private tell(position: number, who: TalkLine['who'], text: string, urgent = false): void {
    this.state.talk = [...this.state.talk, { position, who, text, urgent }];
  }

  /** Sends words; they are kept and sent again, once only, when the kitchen is away. */
  say(text: string, source: Source): void {
    const key = newKey();
    if (source === 'voice') this.spokenHere.add(text);
    const outgoing = { key, text, since: Date.now(), source };
    this.change({ outbox: [...this.state.outbox, outgoing], refusal: undefined });
    void this.flush();
  }

  /** Sends what waited too long after all, as of now. */
  sendStale(): void {
    const outbox = this.state.outbox.map((one) => ({ ...one, since: Date.now() }));
    this.change({ outbox });
    void this.flush();
  }

  forget(): void {
    this.change({ outbox: [] });
  }

  private async flush(): Promise<void> {
    if (this.sending) return;
    this.sending = true;
    try {
      for (let first = this.state.outbox[0]; first; first = this.state.outbox[0]) {
        if (Date.now() - first.since > staleMilliseconds) break;
        await this.send(first);
        const { key } = first;
        this.change({ outbox: this.state.outbox.filter((one) => one.key !== key) });
      }
    } catch {
      if (this.state.link === 'live') this.change({});
      setTimeout(() => void this.flush(), longestWaitMilliseconds);
    } finally {
      this.sending = false;
    }
  }

  private async send({ key, text, source }: Outgoing): Promise<void> {
    const { dinner, view } = this.state;
    const over = dinner === undefined || view?.stage === 'put-away';
    const path = over ? '/api/say' : `/api/dinners/${encodeURIComponent(dinner)}/say`;
    const response = await post(path, { text, key, source: `page ${source}` });
    if (response.ok) {
      const turn = (await response.json()) as { view: View };
      if (turn.view.id === dinner) this.takeView(turn.view);
      else this.following.abort();
      return;
    }
    if (response.status === 401) this.change({ link: 'unpaired' });
    if (response.status >= 500) throw await refusalOf(response);
    this.change({ refusal: (await refusalOf(response)).message });
  }

  /** Whether this page may speak an announcement; the first to ask gets it. */
  async claim(announcement: string): Promise<boolean> {
    const { dinner } = this.state;
    if (dinner === undefined) return false;
    try {
      const path = `/api/dinners/${encodeURIComponent(dinner)}/claim`;
      const response = await post(path, { announcement });
      return response.ok && ((await response.json()) as { yours: boolean }).yours;
    } catch {
      return false;
    }
  }

  /** Fetches the view anew: time alone moves what is due. */
  async refresh(): Promise<void> {
    const { dinner, link } = this.state;
    if (dinner === undefined || link !== 'live') return;
    const response = await fetch(`/api/dinners/${encodeURIComponent(dinner)}`).catch(
      () => undefined,
    );
    if (!response?.ok) return;
    this.takeView((await response.json()) as View);
    this.change({});
  }

  /** Another dinner may have been opened elsewhere; and a real clock runs on. */
  private async pulse(): Promise<void> {
    if (this.state.link !== 'live' || this.state.dinner === undefined) return;
    const now = await kitchenNow().catch(() => undefined);
    if (now?.dinner !== undefined && now.dinner !== this.state.dinner) this.following.abort();
    else if (this.state.clock === 'real') await this.refresh();
  }

  private change(change: { [K in keyof KitchenState]?: KitchenState[K] | undefined }): void {
    this.state = { ...this.state, ...change } as KitchenState;
    for (const listener of this.listeners) listener();
  }
}

async function kitchenNow(): Promise<KitchenNow> {
  const response = await fetch('/api/page', { cache: 'no-store' });
  if (!response.ok) throw await refusalOf(response);
  return (await response.json()) as KitchenNow;
}

const post = (path: string, body: object): Promise<Response> =>
  fetch(path, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });

/** Not crypto.randomUUID: that one exists over https only. */
function newKey(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(12));
  return `page-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
