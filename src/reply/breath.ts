/** How long a line takes aloud: what is said to someone at work is over within one breath. */
import { type Spoken, sentences, silent } from './spoken.ts';

/** Nobody with their hands full listens for longer. */
export const breathSeconds = 12;

/**
 * Seconds that a voice of the usual pace takes: so much for each sign, and a pause at each stop. Fitted to
 * espeak-ng at its own pace over lines of the cards and of the session scripts; `scripts/read-aloud.ts`
 * measures with the voice itself, and says how far this is off.
 */
export function secondsAloud(speech: string): number {
  const stops = speech.match(/[.?!](?=\s|$)/g)?.length ?? 0;
  const pauses = speech.match(/[,;:]/g)?.length ?? 0;
  return 0.0533 * speech.length + 0.33 * stops + 0.205 * pauses;
}

/** The estimate may be short by so much; what is added to a line must leave it room. */
const doubtSeconds = 0.7;

/** Whether it is surely over within a breath. */
export const fitsABreath = (speech: string): boolean =>
  secondsAloud(speech) <= breathSeconds - doubtSeconds;

/** A part of what is told; `must`: whatever else falls silent for it, this is heard. */
export interface Part extends Spoken {
  must?: boolean;
}

/** All of it for eyes; for ears what must be heard, and of the others, in their order, what there is breath for. */
export function inOneBreath(parts: readonly Part[]): Spoken {
  const heard = new Set(parts.filter((part) => part.must));
  const aloud = (): string =>
    sentences(parts.map((part) => (heard.has(part) ? part : silent))).speech;
  for (const part of parts) {
    if (part.must) continue;
    heard.add(part);
    // A first part that is too long by itself is still better heard than nothing.
    if (!fitsABreath(aloud()) && heard.size > 1) heard.delete(part);
  }
  return { text: sentences(parts).text, speech: aloud() };
}
