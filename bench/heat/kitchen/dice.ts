/** Seeded roasts of two to seven bones as households cook them; xorshift and Box and Muller of its own. */
import type { TruthDinner } from './dinner.ts';

export interface Told {
  kilograms: number;
  bones: number;
  startCelsius: number;
  oven: { minute: number; celsius: number }[];
  fan: boolean;
  tented: boolean;
  pullCelsius: number;
}

export function dice(seed: number) {
  let state = (seed * 2654435761 + 88172645) >>> 0 || 1;
  const uniform = (): number => {
    state ^= state << 13;
    state >>>= 0;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return (state + 0.5) / 4294967296;
  };
  for (let i = 0; i < 10; i += 1) uniform();
  const normal = (): number =>
    Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return { uniform, normal };
}

const fahrenheit = (value: number): number => (value - 32) / 1.8;

/** The middle of every range, at the joint check's oven: five pounds with two bones. */
export const medianDinner = (): TruthDinner => ({
  roast: {
    widthMetres: 0.2,
    heightMetres: 0.106,
    lengthMetres: 0.102,
    squareness: 2.4,
    fatCapMetres: 0.009,
    boneMetres: 0.02,
    startCelsius: 4.4,
    tempering: 0,
    conductivityFactor: 1.12,
    convection: 11,
    emissivity: 0.85,
    surfaceWater: 1.5,
    seep: 6e-6,
    wetShare: 0.7,
    undersideShare: 0.7,
  },
  oven: {
    program: [{ minute: 0, celsius: 162.8 }],
    biasKelvin: 0,
    driftKelvinPerHour: 0,
    cycleKelvin: 8,
    cycleMinutes: 10,
    doorMinutes: [],
  },
  pullCelsius: 62.8,
  rest: { tented: true, convection: 6 },
  probe: { offMetres: [0.006, 0, 0], offsetKelvin: 0, noiseKelvin: () => 0 },
});

export function drawDinner(seed: number): { dinner: TruthDinner; told: Omit<Told, 'kilograms'> } {
  const { uniform, normal } = dice(seed);
  const factor = (width: number): number => Math.exp(width * normal());
  const bones = 2 + Math.floor(uniform() * 6);
  const fan = uniform() < 0.3;
  const tented = uniform() < 0.75;
  const low = [225, 250, 275, 300, 325, 325, 325, 350][Math.floor(uniform() * 8)]!;
  const sear = uniform();
  const program: { minute: number; celsius: number }[] =
    sear < 0.55
      ? [
          { minute: 0, celsius: fahrenheit(450 + 50 * Math.floor(uniform() * 2)) },
          { minute: 15 + Math.floor(uniform() * 16), celsius: fahrenheit(low) },
        ]
      : [{ minute: 0, celsius: fahrenheit(low) }];
  const girth = factor(0.06);
  const start = 3 + 9 * uniform() * uniform();
  const median = medianDinner();
  const angle = 2 * Math.PI * uniform();
  const off = Math.abs(normal()) * 0.01;
  return {
    dinner: {
      roast: {
        widthMetres: 0.2 * girth * factor(0.05),
        heightMetres: 0.106 * girth * factor(0.05),
        lengthMetres: (0.01 + 0.046 * bones) * factor(0.06),
        squareness: 2.2 + 0.6 * uniform(),
        fatCapMetres: 0.005 + 0.01 * uniform(),
        boneMetres: 0.015 + 0.01 * uniform(),
        startCelsius: start,
        tempering: start > 6 ? 6 * uniform() : 1,
        conductivityFactor: 1.12 * factor(0.08),
        convection: (fan ? 22 : 11) * factor(0.22),
        emissivity: 0.75 + 0.2 * uniform(),
        surfaceWater: 1.5 * factor(0.4),
        seep: 6e-6 * factor(0.4),
        wetShare: Math.min(0.9, 0.7 * factor(0.25)),
        undersideShare: 0.5 + 0.4 * uniform(),
      },
      oven: {
        ...median.oven,
        program,
        biasKelvin: 9 * normal(),
        driftKelvinPerHour: 2 * normal(),
        cycleKelvin: 4 + 6 * uniform(),
        cycleMinutes: 8 + 8 * uniform(),
      },
      pullCelsius: fahrenheit(110 + 5 * Math.floor(uniform() * 7)),
      rest: { tented, convection: 6 * factor(0.25) },
      probe: {
        offMetres: [off * Math.cos(angle), off * Math.sin(angle), 0.004 * normal()],
        offsetKelvin: 0.6 * normal(),
        noiseKelvin: () => 0.4 * normal(),
      },
    },
    told: {
      bones,
      startCelsius: Math.round(start + 0.7 * normal()),
      oven: program,
      fan,
      tented,
      pullCelsius: 0,
    },
  };
}
