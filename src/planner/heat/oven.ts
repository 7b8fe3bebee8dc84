/**
 * The oven as it really was: a wall that comes up to its dial with a lag and cools down to it, and air that is the wall's except
 * while the door stands open or the roast is outside. Temperatures in Celsius, minutes since the roast
 * went in.
 */
import type { OvenSetting } from '../../kitchen/forecast.ts';

export const roomCelsius = 22;
/** Below this a dial is off; see OvenSetting. */
const offBelowCelsius = 40;
/** What an open door leaves of the air's excess over the room. Common practice, no source. */
const openDoorShare = 0.35;

/** One member's oven. */
export interface OvenHabit {
  biasKelvin: number;
  /** Slow wandering about the bias: in and out of phase with a swing of `wanderMinutes`. */
  wanderSineKelvin: number;
  wanderCosineKelvin: number;
  /** Time constants of the wall, minutes: heating to its dial, cooling to the room with the door shut. */
  heatingMinutes: number;
  coolingMinutes: number;
}

/** Period of the slow wandering: an oven drifts over hours, its thermostat's cycle is too quick to matter. */
const wanderMinutes = 300;

export interface OvenState {
  wallCelsius: number;
  airCelsius: number;
  radiantCelsius: number;
}

/** The minute from which two programs differ. */
export function agreeUntil(one: readonly OvenSetting[], other: readonly OvenSetting[]): number {
  if (one === other) return Number.POSITIVE_INFINITY;
  const length = Math.max(one.length, other.length);
  for (let index = 0; index < length; index += 1) {
    const a = one[index];
    const b = other[index];
    if (a && b && a.minute === b.minute && a.celsius === b.celsius && a.event === b.event) continue;
    // The first holds from the start, whatever its minute.
    return index === 0 ? 0 : Math.min(a?.minute ?? b!.minute, b?.minute ?? a!.minute);
  }
  return Number.POSITIVE_INFINITY;
}

/** Walks one member's oven forward; settings must rise in minute. */
export class OvenWalk {
  readonly state: OvenState;
  readonly #settings: readonly OvenSetting[];
  readonly #habit: OvenHabit;
  #index = 0;

  constructor(settings: readonly OvenSetting[], habit: OvenHabit) {
    this.#settings = settings;
    this.#habit = habit;
    const wall = this.#target(0);
    this.state = { wallCelsius: wall, airCelsius: wall, radiantCelsius: wall };
  }

  /** The same oven under settings that are the same so far. */
  branched(settings: readonly OvenSetting[]): OvenWalk {
    const branch = new OvenWalk(settings, this.#habit);
    Object.assign(branch.state, this.state);
    branch.#index = this.#index;
    return branch;
  }

  /** The oven at a minute, `minutes` after the last call. */
  advance(minute: number, minutes: number): void {
    while (
      this.#index + 1 < this.#settings.length &&
      this.#settings[this.#index + 1]!.minute <= minute
    )
      this.#index += 1;
    const setting = this.#settings[this.#index]!;
    const state = this.state;
    const target = this.#target(minute);
    const { heatingMinutes, coolingMinutes } = this.#habit;
    const open = setting.event === 'door-open';
    const aim = open ? (target + roomCelsius) / 2 : target;
    state.wallCelsius =
      aim > state.wallCelsius
        ? aim - (aim - state.wallCelsius) * Math.exp(-minutes / heatingMinutes)
        : // An oven turned down gives its heat to the room, and is caught at its dial when it gets there.
          Math.max(
            aim,
            roomCelsius + (state.wallCelsius - roomCelsius) * Math.exp(-minutes / coolingMinutes),
          );
    state.radiantCelsius = setting.event === 'out' ? roomCelsius : state.wallCelsius;
    state.airCelsius = open
      ? roomCelsius + openDoorShare * (state.wallCelsius - roomCelsius)
      : state.radiantCelsius;
  }

  #target(minute: number): number {
    const { celsius } = this.#settings[this.#index]!;
    if (celsius < offBelowCelsius) return roomCelsius;
    const { biasKelvin, wanderSineKelvin, wanderCosineKelvin } = this.#habit;
    const angle = (2 * Math.PI * minute) / wanderMinutes;
    const excess =
      biasKelvin + wanderSineKelvin * Math.sin(angle) + wanderCosineKelvin * Math.cos(angle);
    // An oven that errs by a share of its excess over the room errs less when it is set low.
    const scale = Math.min(1.3, (celsius - roomCelsius) / 140);
    return celsius + excess * scale;
  }

  /** The minute from which the dial no longer changes. */
  get settledMinute(): number {
    return this.#settings.at(-1)!.minute;
  }
}
