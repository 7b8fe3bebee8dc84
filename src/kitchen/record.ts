/** The record of a dinner: what was planned, what happened, what the readings said, what to do differently. */
import type { GuestNote } from './dinner.ts';
import type { Method } from './facts.ts';
import type { Band, KitchenBelief } from './forecast.ts';
import type { Doneness } from './heard.ts';

/** One moment of the roast's day. Instants in milliseconds. */
export interface RecordedMoment {
  step: string;
  title: string;
  /** As the last plan told before the roast went in had it. */
  plannedAt?: number | undefined;
  /** As the last plan told before it happened had it: late guests and readings are in it. */
  lastToldAt?: number | undefined;
  happenedAt?: number | undefined;
  /** Nobody reported it; it was taken for granted. */
  presumed: boolean;
}

/** A reading against what was forecast for its minute without it. */
export interface RecordedReading {
  at: number;
  celsius: number;
  /** None while the roast was out of the oven's forecast. */
  forecast?: Band | undefined;
  suspect: boolean;
}

/** What to do differently, with its figures. */
export type Lesson =
  | { key: 'served-late'; minutes: number }
  | { key: 'served-early'; minutes: number }
  | { key: 'oven-hot'; kelvin: number }
  | { key: 'oven-cool'; kelvin: number }
  | { key: 'thermometer-off'; kelvin: number }
  | { key: 'pulled-late'; minutes: number }
  | { key: 'more-done'; kelvin: number }
  | { key: 'less-done'; kelvin: number }
  | { key: 'few-readings'; count: number }
  | { key: 'left-out'; minutes: number }
  | { key: 'put-away-untold' }
  | { key: 'salt-ahead-missed' }
  | { key: 'still-frozen' };

export interface DinnerRecord {
  id: string;
  timeZone: string;
  units: { temperature: 'F' | 'C'; weight: 'lb' | 'kg' };
  openedAt: number;
  roast: { title: string; kilograms?: number | undefined; bones?: number | undefined };
  method: Method;
  doneness?: Doneness | undefined;
  serveCelsius?: number | undefined;
  pullCelsius?: number | undefined;
  guests?: number | undefined;
  notes: readonly GuestNote[];
  menu: readonly string[];
  serving: {
    firstWantedAt?: number | undefined;
    wantedAt?: number | undefined;
    promisedAt?: number | undefined;
    servedAt?: number | undefined;
  };
  moments: readonly RecordedMoment[];
  readings: readonly RecordedReading[];
  /** The core as it is now believed to have been. */
  core: readonly { at: number; celsius: Band }[];
  oven: readonly { at: number; celsius: number }[];
  coreAtKnifeCelsius?: Band | undefined;
  chosen: readonly string[];
  troubles: readonly { trouble: string; at: number }[];
  emergencies: readonly { kind: string; at: number }[];
  lessons: readonly Lesson[];
  /** What the readings say of this kitchen: where the next dinner begins. */
  learnt?: KitchenBelief | undefined;
}
