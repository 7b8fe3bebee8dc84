/** What belongs to this one device: theme, hours, the ear, and troubles of its own. */
import { type Keeping, keepingOn } from './keep.ts';
import type { Kitchen } from './kitchen.ts';
import { stayAwake } from './voice/awake.ts';
import { Caller } from './voice/caller.ts';
import { type Ear, Listener, type Where, whereHeard } from './voice/listen.ts';
import { Sounds } from './voice/sounds.ts';
import { Speaker } from './voice/speak.ts';
import { words } from './words.ts';

export interface DeskState {
  theme: 'light' | 'dark';
  hours: '12' | '24';
  begun: boolean;
  where: Where;
  ear: Ear;
  hearing: string;
  /** One sentence about something that does not work here. */
  trouble?: string;
}

const { language } = words;
const jumpMilliseconds = 20_000;
const watchMilliseconds = 1_000;

export class Desk {
  state: DeskState;
  readonly caller: Caller;
  private readonly kitchen: Kitchen;
  private readonly keeping: Keeping;
  private readonly sounds = new Sounds();
  private readonly speaker = new Speaker();
  private listener: Listener | undefined;
  private readonly listeners = new Set<() => void>();

  constructor(kitchen: Kitchen) {
    this.kitchen = kitchen;
    this.keeping = keepingOn(() => localStorage);
    const dark = matchMedia('(prefers-color-scheme: dark)').matches;
    const theme = this.keeping.get('theme');
    this.state = {
      theme: theme === 'light' || theme === 'dark' ? theme : dark ? 'dark' : 'light',
      hours: this.keeping.get('hours') === '24' ? '24' : '12',
      begun: false,
      where: 'none',
      ear: 'off',
      hearing: '',
    };
    this.caller = new Caller({ kitchen, sounds: this.sounds, speaker: this.speaker });
    this.speaker.onSpeaking = (speaking) => this.listener?.hold(speaking);
    this.speaker.onFailure = () => this.change({ trouble: words.voiceFailed });
  }

  listen(listener: () => void): void {
    this.listeners.add(listener);
  }

  async open(): Promise<void> {
    this.dress();
    this.watchClock();
    const touched = (): void => this.caller.touched();
    for (const name of ['pointerdown', 'keydown']) document.addEventListener(name, touched);
    this.change({ where: await whereHeard(language) });
    // A kiosk browser lets the page sound without a touch.
    if (await this.sounds.unlockedAlready()) this.begin({ microphone: false });
  }

  /** From a touch: sound, the screen awake, and the microphone if it is wanted. */
  begin({ microphone }: { microphone: boolean }): void {
    void this.sounds.unlock().then(() => this.caller.begin());
    this.speaker.unlock();
    stayAwake();
    this.change({ begun: true });
    if (microphone) this.hear();
  }

  /** Opens the ear, or shuts it. */
  hear(on = true): void {
    if (!on) this.listener?.stop();
    else {
      this.listener ??= this.newListener();
      this.listener.start();
    }
  }

  private newListener(): Listener {
    const listener = new Listener(language, this.state.where);
    listener.onWords = (heard) => this.kitchen.say(heard, 'voice');
    listener.onHearing = (hearing) => this.change({ hearing });
    listener.onEar = (ear) => {
      const trouble = {
        refused: words.micRefused,
        unreachable: words.micNetwork,
        broken: words.micGone,
        listening: undefined,
        waiting: undefined,
        off: undefined,
      }[ear];
      const keep = ear === 'off' || this.state.ear === 'unreachable' || this.state.ear === 'broken';
      this.change(trouble || !keep ? { ear, trouble } : { ear });
    };
    return listener;
  }

  set(setting: Partial<Pick<DeskState, 'theme' | 'hours'>>): void {
    this.change(setting);
    this.dress();
    const kept = Object.entries(setting).every(([name, value]) => this.keeping.set(name, value));
    if (!kept) this.change({ trouble: words.storageFull });
  }

  tell(trouble: string | undefined): void {
    this.change({ trouble });
  }

  private dress(): void {
    document.documentElement.dataset.theme = this.state.theme;
  }

  /** The wall clock against the one that only counts: they part when somebody sets the former. */
  private watchClock(): void {
    let gap = Date.now() - performance.now();
    setInterval(() => {
      const now = Date.now() - performance.now();
      // While a device sleeps the counting clock may stand still, so being ahead is no jump when hidden.
      if (Math.abs(now - gap) > jumpMilliseconds) {
        if (document.visibilityState === 'visible') this.change({ trouble: words.clockJumped });
        void this.kitchen.refresh();
      }
      gap = now;
    }, watchMilliseconds);
  }

  private change(change: { [K in keyof DeskState]?: DeskState[K] | undefined }): void {
    this.state = { ...this.state, ...change } as DeskState;
    for (const listener of this.listeners) listener();
  }
}
