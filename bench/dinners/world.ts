/** The true kitchen of an evening on the evening's clock, whoever cooks in it. */
import { Kitchen } from '../heat/kitchen/kitchen.ts';
import type { Evening } from './evening.ts';

const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;
/** What holds a roast does not cook it on. */
const holdHighFahrenheit = 200;
const celsiusOf = (degrees: number): number => (degrees - 32) / 1.8;

export class World {
  minute = 0;
  private readonly evening: Evening;
  private kitchen: Kitchen | undefined;
  private dialFahrenheit = 0;
  private powered = true;
  /** The core by the minute. */
  readonly cores = new Map<number, number>();
  roastIsIn = false;
  isOut = false;
  /** Out, and back in a low oven until the knife. */
  private held = false;
  private spot: [number, number, number];

  constructor(evening: Evening) {
    this.evening = evening;
    this.spot = [...evening.truth.probe.offMetres];
  }

  get dial(): number {
    return this.dialFahrenheit;
  }

  /** Moves on, through whatever happens to the power and the door. */
  advance(to: number): void {
    while (this.minute < to) {
      const next = Math.min(to, Math.floor(this.minute + 1));
      this.mishaps();
      this.kitchen?.wait(next - this.minute);
      this.minute = next;
      this.cores.set(Math.floor(next), this.coreFahrenheit);
    }
  }

  private mishaps(): void {
    const { powerOut, doorOpen } = this.evening;
    const powered =
      !powerOut ||
      this.minute < powerOut.atMinute ||
      this.minute >= powerOut.atMinute + powerOut.minutes;
    if (powered !== this.powered) {
      this.powered = powered;
      this.kitchen?.setOven(powered ? celsiusOf(this.dialFahrenheit) : 0);
    }
    if (doorOpen && Math.floor(this.minute) === doorOpen.atMinute)
      this.kitchen?.openDoor(doorOpen.minutes);
  }

  setOven(degrees: number): void {
    this.dialFahrenheit = degrees;
    // Nobody leaves a roast that is done in an oven turned up for something else.
    if (this.held && degrees > holdHighFahrenheit) this.takeOut();
    if (this.powered) this.kitchen?.setOven(degrees === 0 ? 0 : celsiusOf(degrees));
  }

  putIn(): void {
    const { truth } = this.evening;
    this.roastIsIn = true;
    this.kitchen?.putIn();
    this.kitchen ??= new Kitchen({
      ...truth,
      probe: { ...truth.probe, offMetres: this.spot },
      restConvection: truth.rest.convection,
      dialCelsius: celsiusOf(Math.max(this.dialFahrenheit, 100)),
    });
  }

  get isCoolEnoughToHold(): boolean {
    return fahrenheit(this.kitchen?.wallCelsius ?? 22) < holdHighFahrenheit + 10;
  }

  /** Back into a low oven to hold. */
  hold(): void {
    if (!this.isOut || this.held) return;
    this.held = true;
    this.kitchen?.putIn();
  }

  takeOut(): void {
    this.held = false;
    this.roastIsIn = false;
    this.isOut = true;
    this.kitchen?.takeOut({ tented: this.evening.truth.rest.tented });
  }

  openDoor(minutes: number): void {
    this.kitchen?.openDoor(minutes);
  }

  /** The tip is tried in a second spot, and stays where it reads lower. */
  tryAnotherSpot(off: readonly [number, number, number]): void {
    const before = this.probeFahrenheit;
    const known = [...this.spot] as const;
    this.spot.splice(0, 3, ...off);
    if (this.probeFahrenheit > before) this.spot.splice(0, 3, ...known);
    this.openDoor(1.25);
  }

  /** What the cook's thermometer says, whole degrees. */
  read(): number {
    this.openDoor(0.75);
    return Math.round(fahrenheit(this.kitchen?.reading() ?? 0));
  }

  /** The same thermometer in a glass of ice and water. */
  readIce(): number {
    const { offsetKelvin, noiseKelvin } = this.evening.truth.probe;
    return Math.round(fahrenheit(offsetKelvin + noiseKelvin()));
  }

  /** A thermometer left in its place. */
  get probeFahrenheit(): number {
    return fahrenheit(this.kitchen?.probeCelsius ?? 0);
  }

  get coreFahrenheit(): number {
    return fahrenheit(this.kitchen?.coreCelsius ?? Number.NaN);
  }
}
