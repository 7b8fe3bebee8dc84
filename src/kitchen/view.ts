/** The view: everything a screen, a bridge or a script may know of a dinner, derived anew each time. */
import type { Stage } from './heard.ts';

export type SideState = 'waiting' | 'preparing' | 'in-oven' | 'done' | 'held';

export interface FahrenheitBand {
  p10: number;
  p50: number;
  p90: number;
}

/** Times are ISO 8601 with offset. */
export interface View {
  id: string;
  at: string;
  timeZone: string;
  units: { temperature: 'F' | 'C'; weight: 'lb' | 'kg' };
  stage: Stage;
  sides: { id: string; title: string; state: SideState }[];
  serving: {
    wanted?: string;
    likely?: string;
    earliest?: string;
    latest?: string;
    onTimeChance?: number;
  };
  guests?: number;
  roast: {
    cut?: string;
    pounds?: number;
    kilograms?: number;
    bones?: number;
    boneless?: boolean;
    prepared?: string;
    frozen?: boolean;
  };
  target: { doneness?: string; serveFahrenheit?: number; pullFahrenheit?: number };
  oven: {
    setFahrenheit: number;
    program: { at: string; fahrenheit: number; why: string }[];
  };
  readings: { at: string; fahrenheit: number }[];
  forecast?: {
    pull: { p10: string; p50: string; p90: string };
    core: { at: string; fahrenheit: FahrenheitBand }[];
    coreNowFahrenheit: FahrenheitBand;
    coreAtServingFahrenheit: FahrenheitBand;
    peak: { fahrenheit: FahrenheitBand; at: string };
    afterRest: { minutesAfterPull: number; fahrenheit: FahrenheitBand }[];
    slice: { greyBandMillimetres: FahrenheitBand; pinkFraction: FahrenheitBand };
    assumptions: string[];
  };
  steps: {
    id: string;
    card: string;
    title: string;
    start: string;
    end: string;
    state: string;
    hands: string[];
    needs: string[];
    why: string;
    slackMinutes: number;
  }[];
  next?: { id: string; title: string; at: string };
  checkAt?: string;
  asking?: { kind: string; expecting: string; text: string };
  options?: {
    n: number;
    kind: string;
    title: string;
    serving: string;
    coreAtServing: FahrenheitBand;
    risk: string;
  }[];
  cautions: { text: string; source: string }[];
  timers: { id: string; label?: string; at: string }[];
  paused: boolean;
  /** The last log position the view rests on. */
  position: number;
}
