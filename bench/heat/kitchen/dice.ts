/**
 * Seeded roasts of two to seven bones as households cook them: 225 to 500 °F, sear first, last or none,
 * fan or still; xorshift and Box and Muller of its own.
 */
import type { TruthDinner } from './dinner.ts';

/** What the cook knows and tells. */
export interface Told {
  bones: number;
  startCelsius: number;
  oven: readonly { minute: number; celsius: number }[];
  fan: boolean;
  tented: boolean;
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
  const among = <T>(choices: readonly T[]): T => choices[Math.floor(uniform() * choices.length)]!;
  return { uniform, normal, among };
}

const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;

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
  oven: { biasKelvin: 0, driftKelvinPerHour: 0, cycleKelvin: 8, cycleMinutes: 10 },
  program: [{ minute: 0, celsius: 162.8 }],
  doorMinutes: [],
  pullCelsius: 62.8,
  rest: { tented: true, convection: 6 },
  probe: { offMetres: [0.006, 0, 0], offsetKelvin: 0, noiseKelvin: () => 0 },
});

const roastFahrenheit = [225, 250, 275, 300, 325, 325, 325, 350] as const;
const steadyFahrenheit = [225, 250, 275, 300, 325, 325, 350, 375, 400, 450, 500] as const;
const searFahrenheit = [450, 475, 500] as const;

function drawProgram({ uniform, among }: ReturnType<typeof dice>, bones: number) {
  const kind = uniform();
  if (kind < 0.5)
    return [
      { minute: 0, celsius: celsius(among(searFahrenheit)) },
      { minute: 15 + Math.floor(uniform() * 16), celsius: celsius(among(roastFahrenheit)) },
    ];
  if (kind < 0.85) return [{ minute: 0, celsius: celsius(among(steadyFahrenheit)) }];
  // The last twenty minutes or so hot, as planned beforehand by a rule of thumb.
  const low = among([225, 250, 275] as const);
  const rough = (60 + 28 * bones) * Math.sqrt(325 / low) ** 3;
  return [
    { minute: 0, celsius: celsius(low) },
    { minute: Math.round(rough * (0.8 + 0.3 * uniform())), celsius: celsius(among([450, 500])) },
  ];
}

/** The same seed, the same roast, cook, oven and thermometer. */
export function drawDinner(seed: number): { dinner: TruthDinner; told: Told } {
  const drawn = dice(seed);
  const { uniform, normal } = drawn;
  const factor = (width: number): number => Math.exp(width * normal());
  const bones = 2 + Math.floor(uniform() * 6);
  const fan = uniform() < 0.3;
  const tented = uniform() < 0.75;
  const program = drawProgram(drawn, bones);
  const girth = factor(0.06);
  const start = 3 + 9 * uniform() * uniform();
  const angle = 2 * Math.PI * uniform();
  const off = Math.abs(normal()) * 0.01;
  const every = 12 + 8 * uniform();
  const first = 40 + 20 * uniform();
  const doorMinutes = Array.from({ length: 60 }, (_, row) => Math.round(first + row * every));
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
        biasKelvin: 9 * normal(),
        driftKelvinPerHour: 2 * normal(),
        cycleKelvin: 4 + 6 * uniform(),
        cycleMinutes: 8 + 8 * uniform(),
      },
      program,
      doorMinutes,
      pullCelsius: celsius(110 + 5 * Math.floor(uniform() * 7)),
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
    },
  };
}
