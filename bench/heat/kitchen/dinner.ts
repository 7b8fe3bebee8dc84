/** One simulated roast from the oven to the end of its rest, and what a cook's thermometer said. */
import { TruthModel, type TruthOven, type TruthRoast } from './roast.ts';

export interface TruthDinner {
  roast: TruthRoast;
  oven: TruthOven;
  pullCelsius: number;
  rest: { tented: boolean; convection: number };
  probe: { offMetres: [number, number, number]; offsetKelvin: number; noiseKelvin: () => number };
}

export interface TruthRecord {
  kilograms: number;
  /** Every minute in the oven until well past the pull. */
  core: number[];
  probe: number[];
  pullMinute: number;
  rest: number[];
  peakCelsius: number;
  peakMinutes: number;
  lossFraction: number;
}

const room = 22;
const secondsAStep = 30;

export function cook(dinner: TruthDinner): TruthRecord {
  const model = new TruthModel(dinner.roast);
  const { oven, roast } = dinner;
  const core = [model.coreCelsius];
  const probe = [model.coreCelsius];
  let wall = oven.program[0]!.celsius;
  let heating = false;
  let pullMinute = Number.POSITIVE_INFINITY;
  let place: [number, number, number] | undefined;
  for (let minute = 0; minute < 720 && !Number.isFinite(pullMinute); minute += 1) {
    for (let half = 0; half < 60 / secondsAStep; half += 1) {
      const now = minute + (half * secondsAStep) / 60;
      const set = oven.program.findLast((one) => one.minute <= now)!.celsius;
      const aim =
        set + oven.biasKelvin * Math.min(1.2, set / 165) + (oven.driftKelvinPerHour * now) / 60;
      if (wall < aim - oven.cycleKelvin) heating = true;
      if (wall > aim + oven.cycleKelvin) heating = false;
      const rate = heating
        ? (4 * oven.cycleKelvin) / oven.cycleMinutes + 3
        : -((wall - room) / 45) * Math.max(0.35, oven.cycleKelvin / 10);
      wall += (rate * secondsAStep) / 60;
      const open = oven.doorMinutes.some((door) => now >= door && now < door + 0.75);
      model.advance(secondsAStep, {
        airCelsius: open ? room + 0.4 * (wall - room) : wall,
        wallCelsius: wall,
        convection: roast.convection,
        emissivity: roast.emissivity,
        vapour: open ? 1500 : 4500,
        shade: roast.undersideShare,
        damp: 1,
      });
      if (open) wall -= 3;
    }
    const before = core.at(-1)!;
    core.push(model.coreCelsius);
    if (core.at(-1)! >= dinner.pullCelsius)
      pullMinute = minute + (dinner.pullCelsius - before) / (core.at(-1)! - before);
    const spot = model.coldestPlace;
    place = [
      spot[0] + dinner.probe.offMetres[0],
      spot[1] + dinner.probe.offMetres[1],
      spot[2] + dinner.probe.offMetres[2],
    ];
    probe.push(model.probe(place) + dinner.probe.offsetKelvin);
  }
  // In the rest the skin may fall below the core; the core is where it was when it came out.
  const heart = model.coldestPlace;
  const rest = [model.probe(heart)];
  for (let minute = 0; minute < 60; minute += 1) {
    const warm = dinner.rest.tented ? 8 * Math.exp(-minute / 40) : 0;
    for (let half = 0; half < 2; half += 1)
      model.advance(secondsAStep, {
        airCelsius: room + warm,
        wallCelsius: room + warm,
        convection: dinner.rest.convection,
        emissivity: dinner.rest.tented ? 0.5 : 0.9,
        vapour: dinner.rest.tented ? 3500 : 1300,
        shade: 0.6,
        damp: dinner.rest.tented ? 0.8 : 1,
      });
    rest.push(model.probe(heart));
  }
  const peakCelsius = Math.max(...rest);
  return {
    kilograms: model.kilograms,
    core,
    probe,
    pullMinute,
    rest,
    peakCelsius,
    peakMinutes: rest.indexOf(peakCelsius),
    lossFraction: model.lostKilograms / model.kilograms,
  };
}
