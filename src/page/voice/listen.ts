/**
 * Listens where the browser can. Sessions of a browser's recogniser end by themselves after a silence
 * or a minute; they are begun again, sooner after words, later after failures.
 */

/** What the Web Speech API offers, as far as it is used here. */
interface Recogniser {
  lang: string;
  interimResults: boolean;
  continuous: boolean;
  processLocally?: boolean;
  onresult: ((event: RecogniserResult) => void) | null;
  onerror: ((event: { error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  abort(): void;
}
interface RecogniserResult {
  resultIndex: number;
  results: ArrayLike<ArrayLike<{ transcript: string }> & { isFinal: boolean }>;
}
interface RecogniserKind {
  new (): Recogniser;
  available?(wish: { langs: string[]; processLocally: boolean }): Promise<string>;
}

export type Where = 'none' | 'device' | 'server';
export type Ear = 'off' | 'listening' | 'waiting' | 'refused' | 'unreachable' | 'broken';

const firstWaitMilliseconds = 250;
const longestWaitMilliseconds = 10_000;

const kindOf = (): RecogniserKind | undefined => {
  const found = window as {
    SpeechRecognition?: RecogniserKind;
    webkitSpeechRecognition?: RecogniserKind;
  };
  return found.SpeechRecognition ?? found.webkitSpeechRecognition;
};

/** Where words would be understood: nowhere, on this device, or on a server of the browser's maker. */
export async function whereHeard(lang: string): Promise<Where> {
  const kind = kindOf();
  if (!kind || !window.isSecureContext) return 'none';
  const local = await kind.available?.({ langs: [lang], processLocally: true }).catch(() => '');
  return local === 'available' ? 'device' : 'server';
}

export class Listener {
  onWords: (words: string) => void = () => {};
  onHearing: (words: string) => void = () => {};
  onEar: (ear: Ear) => void = () => {};
  private readonly lang: string;
  private readonly where: Where;
  private recogniser: Recogniser | undefined;
  private wanted = false;
  private held = false;
  private running = false;
  private wait = firstWaitMilliseconds;
  private timer: ReturnType<typeof setTimeout> | undefined;

  constructor(lang: string, where: Where) {
    this.lang = lang;
    this.where = where;
  }

  start(): void {
    this.wanted = true;
    this.wait = firstWaitMilliseconds;
    this.begin();
  }

  stop(): void {
    this.wanted = false;
    clearTimeout(this.timer);
    this.recogniser?.abort();
    this.onEar('off');
  }

  /** Holds the ear shut while the page speaks. */
  hold(held: boolean): void {
    this.held = held;
    if (held) this.recogniser?.abort();
    else if (this.wanted) this.begin();
  }

  private begin(): void {
    const kind = kindOf();
    if (!kind || !this.wanted || this.held || this.running) return;
    const recogniser = this.recogniser ?? this.made(kind);
    this.recogniser = recogniser;
    try {
      recogniser.start();
      this.running = true;
      this.onEar('listening');
    } catch {
      this.later();
    }
  }

  private made(kind: RecogniserKind): Recogniser {
    const recogniser = new kind();
    recogniser.lang = this.lang;
    recogniser.interimResults = true;
    recogniser.continuous = false;
    if (this.where === 'device') recogniser.processLocally = true;
    recogniser.onresult = ({ resultIndex, results }) => {
      for (let n = resultIndex; n < results.length; n += 1) {
        const result = results[n];
        const words = result?.[0]?.transcript.trim() ?? '';
        if (!result || words === '') continue;
        if (!result.isFinal) this.onHearing(words);
        else {
          this.wait = firstWaitMilliseconds;
          this.onHearing('');
          this.onWords(words);
        }
      }
    };
    recogniser.onerror = ({ error }) => this.failed(error);
    recogniser.onend = () => {
      this.running = false;
      this.onHearing('');
      if (this.wanted && !this.held) this.later();
    };
    return recogniser;
  }

  private failed(error: string): void {
    if (error === 'no-speech' || error === 'aborted') return;
    this.wait = Math.min(this.wait * 2, longestWaitMilliseconds);
    if (error === 'not-allowed' || error === 'service-not-allowed') {
      this.wanted = false;
      this.onEar('refused');
    } else this.onEar(error === 'network' ? 'unreachable' : 'broken');
  }

  private later(): void {
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.begin(), this.wait);
  }
}
