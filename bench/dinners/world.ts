/** The true kitchen of an evening on the evening's clock, whoever cooks in it. */
import { Kitchen } from '../heat/kitchen/kitchen.ts';
import type { Evening } from './evening.ts';

const fahrenheit = (celsius: number): number => celsius * 1.8 + 32;
const celsiusOf = (degrees: number): number => (degrees - 32) / 1.8;

export class World {
  minute = 0;
  private readonly evening: Evening;
  private kitchen: Kitchen | undefined;
  private dialFahrenheit = 0;
  private powered = true;
  roastIsIn = false;
  isOut = false;

  constructor(evening: Evening) {
    this.evening = evening;
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
    if (this.powered) this.kitchen?.setOven(degrees === 0 ? 0 : celsiusOf(degrees));
  }

  putIn(): void {
    const { truth } = this.evening;
    this.roastIsIn = true;
    this.kitchen?.putIn();
    this.kitchen ??= new Kitchen({
      ...truth,
      restConvection: truth.rest.convection,
      dialCelsius: celsiusOf(Math.max(this.dialFahrenheit, 100)),
    });
  }

  takeOut(): void {
    this.roastIsIn = false;
    this.isOut = true;
    this.kitchen?.takeOut({ tented: this.evening.truth.rest.tented });
  }

  openDoor(minutes: number): void {
    this.kitchen?.openDoor(minutes);
  }

  /** What the cook's thermometer says, whole degrees. */
  read(): number {
    this.openDoor(0.75);
    return Math.round(fahrenheit(this.kitchen?.reading() ?? 0));
  }

  /** A thermometer left in its place. */
  get probeFahrenheit(): number {
    return fahrenheit(this.kitchen?.probeCelsius ?? 0);
  }

  get coreFahrenheit(): number {
    return fahrenheit(this.kitchen?.coreCelsius ?? Number.NaN);
  }
}
