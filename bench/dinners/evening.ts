/** One evening drawn by its seed: the true kitchen, the cook's habits, and what goes wrong. */
import { dice, drawDinner } from '../heat/kitchen/dice.ts';
import type { TruthDinner } from '../heat/kitchen/dinner.ts';
import { TruthModel } from '../heat/kitchen/roast.ts';

export const cookKinds = ['careful', 'hurried', 'forgetful', 'silent'] as const;
export type CookKind = (typeof cookKinds)[number];

export interface Habits {
  /** Minutes until a call is acted on, low and high. */
  delayMinutes: readonly [number, number];
  /** Chance that a call is forgotten, until it is repeated. */
  forgets: number;
  /** Chance that what was done is said. */
  reports: number;
  /** Chance that a reading asked for is taken. */
  reads: number;
  /** Chance that a pull called is checked with the thermometer first. */
  checksPull: number;
  /** Chance that a second spot is tried when asked for. */
  triesSpots: number;
}

export const habitsOf: Record<CookKind, Habits> = {
  careful: {
    delayMinutes: [0.5, 2],
    forgets: 0.01,
    reports: 0.97,
    reads: 0.98,
    checksPull: 0.97,
    triesSpots: 0.9,
  },
  hurried: {
    delayMinutes: [1, 5],
    forgets: 0.06,
    reports: 0.6,
    reads: 0.85,
    checksPull: 0.6,
    triesSpots: 0.5,
  },
  forgetful: {
    delayMinutes: [1, 8],
    forgets: 0.2,
    reports: 0.5,
    reads: 0.7,
    checksPull: 0.6,
    triesSpots: 0.6,
  },
  silent: {
    delayMinutes: [0.5, 3],
    forgets: 0.03,
    reports: 0,
    reads: 0.9,
    checksPull: 0.8,
    triesSpots: 0.8,
  },
};

export const disruptionNames = [
  'late guests',
  'early guests',
  'second change',
  'oven far off',
  'power out',
  'door left open',
  'wrong weight',
  'half frozen',
  'probe at the bone',
] as const;
export type DisruptionName = (typeof disruptionNames)[number];

/** Minutes count from when the cook begins to talk; the table is wanted at `wantedMinute`. */
export interface Evening {
  seed: number;
  cook: CookKind;
  truth: TruthDinner;
  toldPounds: number;
  toldBones: number;
  guests: number;
  fan: boolean;
  wantedMinute: number;
  shifts: readonly { atMinute: number; minutes: number }[];
  powerOut?: { atMinute: number; minutes: number } | undefined;
  doorOpen?: { atMinute: number; minutes: number } | undefined;
  /** How long carving takes against the usual. */
  carvingFactor: number;
  disruptions: readonly DisruptionName[];
}

/** Served core of every evening here: medium rare, 130 °F. */
export const targetFahrenheit = 130;

/** A middle of which four tenths of the water that can freeze is ice, under meat that has thawed; `kitchen/roast.ts`. */
const halfFrozen = { startCelsius: -3, tempering: 6 };

export function drawEvening(seed: number): Evening {
  const { uniform, among } = dice(seed * 7919 + 13);
  const { dinner, told } = drawDinner(seed * 31 + 5);
  const kilograms = new TruthModel(dinner.roast).kilograms;
  const pounds = kilograms / 0.45359237;
  const names: DisruptionName[] = [];
  const happens = (name: DisruptionName, chance: number): boolean => {
    const yes = uniform() < chance;
    if (yes) names.push(name);
    return yes;
  };
  const cook = among(cookKinds);
  const frozen = happens('half frozen', 0.05);
  const roast = frozen ? { ...dinner.roast, ...halfFrozen } : dinner.roast;
  const bias = happens('oven far off', 0.2)
    ? { biasKelvin: (uniform() < 0.5 ? -1 : 1) * (12 + 10 * uniform()) }
    : {};
  const probe = happens('probe at the bone', 0.06)
    ? { offMetres: [0.004, -0.3 * dinner.roast.heightMetres, 0] as [number, number, number] }
    : {};
  const wrong = happens('wrong weight', 0.1);
  const toldPounds = Math.round(pounds * (wrong ? among([0.78, 0.82, 1.2, 1.25]) : 1) * 2) / 2;
  const wantedMinute = Math.round(300 + 12 * told.bones + 40 * uniform());
  const shifts: { atMinute: number; minutes: number }[] = [];
  const minutesOf = (): number => among([10, 15, 20, 30, 30, 45, 60]);
  if (happens('late guests', 0.4))
    shifts.push({
      atMinute: wantedMinute - 35 - Math.floor(115 * uniform()),
      minutes: minutesOf(),
    });
  else if (happens('early guests', 0.12))
    shifts.push({
      atMinute: wantedMinute - 60 - Math.floor(90 * uniform()),
      minutes: -among([10, 15, 20, 30]),
    });
  const [first] = shifts;
  if (first && happens('second change', 0.2))
    shifts.push({
      atMinute: first.atMinute + 6 + Math.floor(15 * uniform()),
      minutes: among([-10, 10, 15, 20, 30]),
    });
  const during = (): number => wantedMinute - 160 + Math.floor(120 * uniform());
  return {
    seed,
    cook,
    truth: {
      ...dinner,
      roast,
      oven: { ...dinner.oven, ...bias },
      probe: { ...dinner.probe, ...probe },
      rest: { ...dinner.rest, tented: true },
    },
    toldPounds,
    toldBones: told.bones,
    guests: 2 * told.bones,
    fan: told.fan,
    wantedMinute,
    shifts,
    powerOut: happens('power out', 0.05)
      ? { atMinute: during(), minutes: 10 + Math.floor(25 * uniform()) }
      : undefined,
    doorOpen: happens('door left open', 0.05)
      ? { atMinute: during(), minutes: 5 + Math.floor(6 * uniform()) }
      : undefined,
    carvingFactor: 0.85 + 0.35 * uniform(),
    disruptions: names,
  };
}

/** Carving: three minutes and one a guest (common practice, no source), by this cook. */
export const carvingMinutes = (evening: Evening): number =>
  (3 + evening.guests) * evening.carvingFactor;

/** When the table is wanted after all the shifts known by a minute. */
export const wantedBy = (evening: Evening, minute: number): number =>
  evening.shifts
    .filter(({ atMinute }) => atMinute <= minute)
    .reduce((wanted, shift) => wanted + shift.minutes, evening.wantedMinute);
