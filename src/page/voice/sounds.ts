/**
 * A sound for each urgency, made here: a tap on the glass, a small bell struck twice, and a triangle
 * for the pull. All struck, none held, so that they cut through a fan without being loud.
 */
export type Urgency = 'low' | 'normal' | 'high';

/** Seconds after the start, pitch in hertz, seconds it rings, loudness. */
type Stroke = [number, number, number, number];

const strokes: Record<Urgency, Stroke[]> = {
  low: [[0, 1318, 0.25, 0.12]],
  normal: [
    [0, 988, 0.6, 0.22],
    [0.18, 1318, 0.8, 0.2],
  ],
  high: [0, 0.14, 0.28, 0.42, 0.9, 1.04, 1.18, 1.32].map((at, n) => [
    at,
    n % 2 ? 1760 : 1568,
    0.7,
    0.42,
  ]),
};
/** A struck bar rings at these multiples of its pitch, each weaker (those of a free bar). */
const partials = [
  [1, 1],
  [2.76, 0.35],
  [5.4, 0.12],
] as const;

export class Sounds {
  private context: AudioContext | undefined;

  /** Must be called from a touch or a key: browsers keep a page silent until then. */
  async unlock(): Promise<void> {
    this.context ??= new AudioContext();
    await this.context.resume().catch(() => undefined);
  }

  /** A browser that needs no touch (a kiosk) lets the context run at once. */
  async unlockedAlready(): Promise<boolean> {
    this.context ??= new AudioContext();
    return this.context.state === 'running';
  }

  get ready(): boolean {
    return this.context?.state === 'running';
  }

  play(urgency: Urgency): void {
    const { context } = this;
    if (context?.state !== 'running') return;
    for (const [after, pitch, rings, loud] of strokes[urgency])
      for (const [times, share] of partials) {
        const tone = context.createOscillator();
        const gain = context.createGain();
        const start = context.currentTime + after;
        tone.frequency.value = pitch * times;
        gain.gain.setValueAtTime(0, start);
        gain.gain.linearRampToValueAtTime(loud * share, start + 0.004);
        gain.gain.exponentialRampToValueAtTime(0.0001, start + rings / times);
        tone.connect(gain).connect(context.destination);
        tone.start(start);
        tone.stop(start + rings);
      }
  }
}
