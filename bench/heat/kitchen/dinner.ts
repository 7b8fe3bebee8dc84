/** One simulated roast from the oven to the end of its rest, and what a cook's thermometer said. */
import { Kitchen, type TruthOven, type TruthProbe } from './kitchen.ts';
import type { TruthRoast } from './roast.ts';

export interface TruthDinner {
  roast: TruthRoast;
  oven: TruthOven;
  program: readonly { minute: number; celsius: number }[];
  /** Minutes at which the door opens to read a thermometer. */
  doorMinutes: readonly number[];
  pullCelsius: number;
  rest: { tented: boolean; convection: number };
  probe: TruthProbe;
}

export interface TruthRecord {
  kilograms: number;
  /** Every minute in the oven until the pull. */
  core: number[];
  probe: number[];
  pullMinute: number;
  /** Every minute for an hour from the pull. */
  rest: number[];
  peakCelsius: number;
  peakMinutes: number;
  lossFraction: number;
}

const longestMinutes = 900;

export const kitchenOf = (dinner: TruthDinner): Kitchen =>
  new Kitchen({
    ...dinner,
    restConvection: dinner.rest.convection,
    dialCelsius: dinner.program[0]!.celsius,
  });

export function cook(dinner: TruthDinner): TruthRecord {
  const kitchen = kitchenOf(dinner);
  const core = [kitchen.coreCelsius];
  const probe = [kitchen.probeCelsius];
  let pullMinute = Number.POSITIVE_INFINITY;
  for (let minute = 0; minute < longestMinutes && !Number.isFinite(pullMinute); minute += 1) {
    kitchen.setOven(dinner.program.findLast((one) => one.minute <= minute)!.celsius);
    if (dinner.doorMinutes.includes(minute)) kitchen.openDoor();
    kitchen.wait(1);
    const before = core.at(-1)!;
    const now = kitchen.coreCelsius;
    core.push(now);
    probe.push(kitchen.probeCelsius);
    if (now >= dinner.pullCelsius)
      pullMinute = minute + (dinner.pullCelsius - before) / (now - before);
  }
  kitchen.takeOut({ tented: dinner.rest.tented });
  const rest = [kitchen.coreCelsius];
  for (let minute = 0; minute < 60; minute += 1) {
    kitchen.wait(1);
    rest.push(kitchen.coreCelsius);
  }
  const peakCelsius = Math.max(...rest);
  return {
    kilograms: kitchen.model.kilograms,
    core,
    probe,
    pullMinute,
    rest,
    peakCelsius,
    peakMinutes: rest.indexOf(peakCelsius),
    lossFraction: kitchen.lossFraction,
  };
}
