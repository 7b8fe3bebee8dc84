/**
 * The independent kitchen, minute by minute: an oven with a dial, a roast that goes in, comes out, rests
 * and may go back, and a thermometer in a cook's hand. Deterministic: the dice are the caller's.
 *
 *     const kitchen = new Kitchen(drawDinner(7).dinner);   // or any TruthDinner
 *     kitchen.setOven(232);           // the dial, °C; 0 is off
 *     kitchen.wait(20);               // minutes, in steps of half a minute
 *     kitchen.openDoor();             // for three quarters of a minute, as when one reads
 *     kitchen.reading();              // what the thermometer says, °C: off centre, offset, noise and all
 *     kitchen.takeOut({ tented: true }); kitchen.wait(15); kitchen.coreCelsius; kitchen.putIn();
 *
 * A dinner of three bones and four hours costs about a fifth of a second (see docs/heat.md).
 */
import { type TruthAir, TruthModel, type TruthRoast } from './roast.ts';

export interface TruthOven {
  biasKelvin: number;
  driftKelvinPerHour: number;
  /** The thermostat swings so far each way, about so quickly. */
  cycleKelvin: number;
  cycleMinutes: number;
}

export interface TruthProbe {
  /** From the coldest spot: across, up, along. */
  offMetres: [number, number, number];
  offsetKelvin: number;
  noiseKelvin: () => number;
}

export interface KitchenParts {
  roast: TruthRoast;
  oven: TruthOven;
  /** W/(m² K) on the board. */
  restConvection: number;
  probe: TruthProbe;
  /** The dial when the roast goes in; the oven is hot by then. */
  dialCelsius: number;
}

const room = 22;
const secondsAStep = 30;
const doorMinutes = 0.75;

export class Kitchen {
  readonly model: TruthModel;
  minute = 0;
  wallCelsius: number;
  readonly #parts: KitchenParts;
  #dial: number;
  #heating = false;
  #doorUntil = -1;
  /** Absent while it is in the oven. */
  #board: { sinceMinute: number; tented: boolean } | undefined;
  /** Where the core was when it first came out: from then on the skin may fall below the core. */
  #heart: [number, number, number] | undefined;

  constructor(parts: KitchenParts) {
    this.#parts = parts;
    this.model = new TruthModel(parts.roast);
    this.#dial = parts.dialCelsius;
    this.wallCelsius = parts.dialCelsius;
  }

  setOven(celsius: number): void {
    this.#dial = celsius;
  }

  openDoor(minutes = doorMinutes): void {
    this.#doorUntil = Math.max(this.#doorUntil, this.minute + minutes);
  }

  takeOut({ tented }: { tented: boolean }): void {
    this.#heart ??= this.model.coldestPlace;
    this.#board = { sinceMinute: this.minute, tented };
  }

  putIn(): void {
    this.#board = undefined;
  }

  get coreCelsius(): number {
    return this.#heart === undefined ? this.model.coreCelsius : this.model.probe(this.#heart);
  }

  /** The thermometer left in its place, without the slip of one reading. */
  get probeCelsius(): number {
    const heart = this.#heart ?? this.model.coldestPlace;
    const { offMetres, offsetKelvin } = this.#parts.probe;
    const place = heart.map((one, axis) => one + offMetres[axis]!) as [number, number, number];
    return this.model.probe(place) + offsetKelvin;
  }

  reading(): number {
    return this.probeCelsius + this.#parts.probe.noiseKelvin();
  }

  get lossFraction(): number {
    return this.model.lostKilograms / this.model.kilograms;
  }

  wait(minutes: number): void {
    const steps = Math.round((minutes * 60) / secondsAStep);
    const from = this.minute;
    for (let step = 0; step < steps; step += 1) {
      this.minute = from + (step * secondsAStep) / 60;
      const open = this.minute < this.#doorUntil;
      this.#heat(open);
      this.model.advance(secondsAStep, this.#board === undefined ? this.#oven(open) : this.#rest());
    }
    this.minute = from + (steps * secondsAStep) / 60;
  }

  #heat(open: boolean): void {
    const { biasKelvin, driftKelvinPerHour, cycleKelvin, cycleMinutes } = this.#parts.oven;
    const off = this.#dial < 40;
    const aim = off
      ? room
      : this.#dial +
        biasKelvin * Math.min(1.2, this.#dial / 165) +
        (driftKelvinPerHour * this.minute) / 60;
    if (this.wallCelsius < aim - cycleKelvin) this.#heating = true;
    if (this.wallCelsius > aim + cycleKelvin || off) this.#heating = false;
    const rate = this.#heating
      ? (4 * cycleKelvin) / cycleMinutes + 3
      : -((this.wallCelsius - room) / 45) * Math.max(0.35, cycleKelvin / 10);
    this.wallCelsius += (rate * secondsAStep) / 60 - (open ? 3 : 0);
    this.wallCelsius = Math.max(room, this.wallCelsius);
  }

  #oven(open: boolean): TruthAir {
    const { convection, emissivity, undersideShare } = this.#parts.roast;
    return {
      airCelsius: open ? room + 0.4 * (this.wallCelsius - room) : this.wallCelsius,
      wallCelsius: this.wallCelsius,
      convection,
      emissivity,
      vapour: open ? 1500 : 4500,
      shade: undersideShare,
      damp: 1,
    };
  }

  #rest(): TruthAir {
    const { sinceMinute, tented } = this.#board!;
    const warm = tented ? 8 * Math.exp(-(this.minute - sinceMinute) / 40) : 0;
    return {
      airCelsius: room + warm,
      wallCelsius: room + warm,
      convection: this.#parts.restConvection,
      emissivity: tented ? 0.5 : 0.9,
      vapour: tented ? 3500 : 1300,
      shade: 0.6,
      damp: tented ? 0.8 : 1,
    };
  }
}
