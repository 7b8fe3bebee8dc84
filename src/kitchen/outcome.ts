/**
 * What came of the words heard: decided by the machine, phrased by the words room. An outcome carries
 * what happened, never how it is said.
 */

import type { Method, Option, Question } from './facts.ts';
import type {
  DinnerClock,
  Doneness,
  EmergencyKind,
  GuestNeed,
  Heard,
  HeardOf,
  Intent,
} from './heard.ts';

export type BadValue =
  | { what: 'reading'; celsius: number }
  | { what: 'weight'; kilograms: number }
  | { what: 'bones'; count: number }
  | { what: 'guests'; count: number }
  | { what: 'oven'; celsius: number }
  | { what: 'doneness'; celsius: number }
  | { what: 'minutes'; minutes: number };

export type Outcome =
  /** `before`: the cut it was taken to be until now, if another. */
  | { key: 'described'; before?: string }
  | { key: 'serving-set'; servingAt: number }
  | { key: 'serving-moved'; minutes: number; servingAt: number }
  | { key: 'guests-set'; count: number; change: number }
  | { key: 'guests-arrived'; state: 'arrived' | 'partly-arrived' | 'seated' }
  | { key: 'guest-noted'; need: GuestNeed; who?: string | undefined; value?: string | undefined }
  | { key: 'doneness-set'; doneness?: Doneness | undefined; serveCelsius: number }
  | { key: 'method-set'; method: Method }
  | { key: 'dish-added'; dish: string }
  /** Told of, and there is no card for it: kept, not planned. */
  | { key: 'dish-uncarded'; dish: string }
  | { key: 'dish-unknown'; dish: string }
  | { key: 'dish-dropped'; dish: string }
  /** Usual, and not among the dishes that the cook named. */
  | { key: 'dish-unnamed'; dish: string }
  /** Not wanted, and not on the menu anyway. */
  | { key: 'dish-absent'; dish: string }
  | { key: 'units-set' }
  | { key: 'lacked'; thing: string; step?: string | undefined }
  | {
      key: 'setup-noted';
      pan?: string | undefined;
      ovens?: number | undefined;
      rings?: number | undefined;
      carvers?: number | undefined;
    }
  | {
      key: 'hands-added';
      who: string;
      does?: string | undefined;
      comesAt?: number | undefined;
      leavesAt?: number | undefined;
    }
  /** The cook takes so many times as long, over all or for one step. */
  | { key: 'pace-told'; factor: number; step?: string | undefined }
  | { key: 'clock-set'; clock: DinnerClock; clockAt: number }
  | { key: 'cook-away'; until: number; minutes: number }
  | { key: 'reading-noted'; celsius: number; again: boolean }
  | { key: 'thermometer-checked'; offsetKelvin: number }
  | { key: 'oven-noted'; celsius: number; down: boolean }
  | { key: 'oven-mode'; fan: boolean }
  | { key: 'oven-bias'; kelvin: number }
  | { key: 'thermometer-bias'; kelvin: number }
  | { key: 'kitchen-forgotten'; about: 'oven' | 'thermometer' }
  | { key: 'oven-hot' }
  | { key: 'acknowledged'; kind?: string | undefined }
  | { key: 'step-done'; step: string; presumed: readonly string[]; again: boolean }
  | { key: 'step-started'; step: string; presumed: readonly string[] }
  | { key: 'step-moved'; step: string; happenedAt: number }
  | { key: 'step-not-done'; step: string }
  | { key: 'step-skipped'; step: string }
  | { key: 'step-needed'; step: string }
  | { key: 'nothing-open' }
  | { key: 'roast-out'; presumed: readonly string[] }
  | { key: 'trouble'; trouble: string; step?: string | undefined; text: string }
  | { key: 'emergency'; kind: EmergencyKind }
  | { key: 'thing-had'; thing: string }
  | { key: 'public-noted' }
  | { key: 'running-behind'; minutes?: number | undefined }
  | { key: 'timer-set'; minutes: number; label?: string | undefined }
  | { key: 'timer-cancelled'; label?: string | undefined }
  | { key: 'no-timer' }
  | { key: 'watch-set'; celsius: number }
  | { key: 'chosen'; option: Option }
  | { key: 'no-such-option'; count: number }
  | { key: 'no-choice' }
  | { key: 'corrected'; what: string }
  | { key: 'undone'; text: string }
  | { key: 'nothing-to-undo' }
  | { key: 'repeat' }
  | { key: 'paused' }
  | { key: 'resumed' }
  | { key: 'quieted' }
  | { key: 'courtesy' }
  | { key: 'help' }
  | { key: 'affirmed' }
  | { key: 'denied' }
  | { key: 'started-over' }
  | { key: 'answer'; heard: Heard }
  | { key: 'asked'; question: Question }
  | { key: 'bad-value'; bad: BadValue }
  | { key: 'unrelated' }
  | { key: 'unclear'; heard: Extract<Heard, { intent: 'unclear' }>; again: boolean };

export type OutcomeKey = Outcome['key'];

/** The first question of an intent that these outcomes answer. */
export const questionIn = <I extends Intent>(
  outcomes: readonly Outcome[],
  intent: I,
): HeardOf<I> | undefined =>
  outcomes
    .flatMap((outcome) => (outcome.key === 'answer' ? [outcome.heard] : []))
    .find((heard): heard is HeardOf<I> => heard.intent === intent);
export type OutcomeOf<K extends OutcomeKey> = Extract<Outcome, { key: K }>;
