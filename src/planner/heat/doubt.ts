/**
 * Which readings do not fit the others, and why. Each is held against what the rest of them lead one to
 * expect at its minute; the worst is set aside, and the rest judged again.
 */
import { celsiusOfFahrenheit, fahrenheitOfCelsius } from '../../base/units.ts';
import type { ProbeReading, SuspectReason } from '../../kitchen/forecast.ts';
import { choleskyOf, solve } from './gaussian.ts';
import { type Evidence, errorsAmong, type ReadingLines } from './near.ts';
import { unknownCount } from './prior.ts';

export interface Suspect {
  index: number;
  why: SuspectReason;
}

/** Beyond so many deviations and kelvin a reading is doubted. */
const doubtDeviations = 3.3;
const doubtKelvin = 3.5;
/** Two readings closer than this in time should agree within the second figure. */
const togetherMinutes = 4;
const togetherKelvin = 4.5;
/**
 * Mean square of the deviations beyond which readings contradict each other: of simulated roasts one in a
 * hundred comes to 2.8, one that stalls to 5.
 */
const contradictionSquare = 6;
/** More that are wrong alike are not looked for. */
const mostTogether = 3;
/** More than so many are not looked for: beyond them the roast is not what was told. */
const mostSuspects = 12;
/** A thermometer that says the same for so long, give or take, while the core must have climbed. */
const stuckMinutes = 6;
const stuckKelvin = 0.3;
const climbedKelvin = 3.5;

interface Expected {
  celsius: number;
  deviation: number;
}

export interface DoubtOptions extends Omit<Evidence, 'kept'> {
  lines: ReadingLines;
  /** Indices of the readings that are judged. */
  weighed: readonly number[];
}

export function suspectsAmong(options: DoubtOptions): Suspect[] {
  const stuck = stuckAmong(options);
  const aside = new Set(stuck.map((one) => one.index));
  const credible = options.weighed.filter((index) => !aside.has(index));
  const oneByOne = believed(worstFirst(options, credible), options);
  const disagreeing = disagreeingAmong(options.readings, without(credible, oneByOne));
  const alone = without(credible, disagreeing);
  const suspects = contradictory(options, without(alone, oneByOne))
    ? (fewestAside(options, alone) ?? oneByOne)
    : oneByOne;
  return [...stuck, ...suspects, ...disagreeing].sort((a, b) => a.index - b.index);
}

const without = (indices: readonly number[], suspects: readonly Suspect[]): number[] =>
  indices.filter((index) => suspects.every((one) => one.index !== index));

/** The one that fits the others worst is set aside, then the worst of the rest, until all fit. */
function worstFirst(options: DoubtOptions, credible: readonly number[]): Suspect[] {
  const suspects: Suspect[] = [];
  const most = Math.min(mostSuspects, Math.ceil(options.weighed.length / 2));
  while (suspects.length < most) {
    const worst = worstOf(options, without(credible, suspects));
    if (worst === undefined) break;
    suspects.push(worst);
  }
  return suspects;
}

/**
 * One reading under all others is a slip; a second one, or a last one that has climbed all the same, says
 * that the roast really lags.
 */
function believed(suspects: readonly Suspect[], { readings, weighed }: DoubtOptions): Suspect[] {
  const low = suspects.filter((one) => one.why === 'too-low');
  const [before, last] = weighed.slice(-2);
  const slowed =
    low.some((one) => one.index === last) &&
    readings[last!]!.celsius > readings[before!]!.celsius + stuckKelvin;
  return low.length >= 2 || slowed
    ? suspects.filter((one) => one.why !== 'too-low')
    : [...suspects];
}

/**
 * Two that are wrong alike hide each other: each fits the other. Then the fewest are set aside that
 * leave what a roast can do; of as few, the oldest, since what was read last was read knowing of them.
 */
function fewestAside(options: DoubtOptions, credible: readonly number[]): Suspect[] | undefined {
  const most = Math.min(mostTogether, Math.floor(credible.length / 2));
  for (let count = 1; count <= most; count += 1) {
    for (const set of setsOf(credible, count)) {
      const kept = credible.filter((index) => !set.includes(index));
      if (contradictory(options, kept)) continue;
      const suspects = set.map((index) => suspectBeside(options, kept, index));
      return isStall(suspects, kept) ? [] : suspects;
    }
  }
  return undefined;
}

/** The last of them lower than the others allow: the roast has slowed, and all count. */
const isStall = (suspects: readonly Suspect[], kept: readonly number[]): boolean =>
  suspects.every((one) => one.why === 'too-low' && one.index > kept.at(-1)!);

/** Sets of so many, those of the oldest first. */
function setsOf(indices: readonly number[], count: number): number[][] {
  if (count === 0) return [[]];
  return indices.flatMap((last, place) =>
    setsOf(indices.slice(0, place), count - 1).map((set) => [...set, last]),
  );
}

function suspectBeside(options: DoubtOptions, kept: readonly number[], index: number): Suspect {
  const expected = leftOutOneByOne(options, [...kept, index]).at(-1)!;
  return { index, why: reasonFor(options.readings, kept, index, expected) };
}

/**
 * Two places at once that both are credible: a tip off the centre reads high, so the cooler one is
 * believed and the warmer named, until the cook has settled it.
 */
function disagreeingAmong(readings: readonly ProbeReading[], kept: readonly number[]): Suspect[] {
  return kept
    .filter((index) => kept.some((other) => disagree(readings[index]!, readings[other]!)))
    .map((index) => ({ index, why: 'disagrees-with-another' as const }));
}

const disagree = (warm: ProbeReading, cool: ProbeReading): boolean =>
  Math.abs(warm.minute - cool.minute) <= togetherMinutes &&
  warm.celsius - cool.celsius > togetherKelvin;

function worstOf(options: DoubtOptions, kept: readonly number[]): Suspect | undefined {
  const { readings } = options;
  const expected = leftOutOneByOne(options, kept);
  let worst: { row: number; score: number } | undefined;
  kept.forEach((index, row) => {
    const { celsius, deviation } = expected[row]!;
    const gap = Math.abs(readings[index]!.celsius - celsius);
    const score = gap < doubtKelvin ? 0 : gap / deviation;
    if (score > doubtDeviations && score > (worst?.score ?? 0)) worst = { row, score };
  });
  if (worst === undefined) return undefined;
  const index = kept[worst.row]!;
  return { index, why: reasonFor(readings, kept, index, expected[worst.row]!) };
}

/** Readings' covariance by the lines and their errors; rows as in `kept`. */
function covarianceOf({ lines, readings, offset }: DoubtOptions, kept: readonly number[]) {
  const size = kept.length;
  const matrix = errorsAmong(lines, { readings, kept, offset });
  const slopes = lines.model.slopes;
  for (let a = 0; a < size; a += 1)
    for (let b = 0; b < size; b += 1)
      for (let k = 0; k < unknownCount; k += 1)
        matrix[a * size + b]! +=
          slopes[kept[a]! * unknownCount + k]! * slopes[kept[b]! * unknownCount + k]!;
  const away = Float64Array.from(
    kept,
    (index) => readings[index]!.celsius - offset.mean - lines.model.intercepts[index]!,
  );
  return { root: choleskyOf(matrix, size), away, size };
}

/** Whether readings lie together further from what a roast can do than chance would have them. */
function contradictory(options: DoubtOptions, kept: readonly number[]): boolean {
  if (kept.length < 2) return false;
  const { root, away, size } = covarianceOf(options, kept);
  const solved = solve(root, size, away);
  const square = away.reduce((sum, one, row) => sum + one * solved[row]!, 0);
  return square / size > contradictionSquare;
}

/** What each would be expected to be by all the others: from one inverse of their covariance. */
function leftOutOneByOne(options: DoubtOptions, kept: readonly number[]): Expected[] {
  const { root, away, size } = covarianceOf(options, kept);
  const solved = solve(root, size, away);
  return kept.map((index, row) => {
    const unit = new Float64Array(size);
    unit[row] = 1;
    const precision = solve(root, size, unit)[row]!;
    return {
      celsius: options.readings[index]!.celsius - solved[row]! / precision,
      deviation: Math.sqrt(1 / precision),
    };
  });
}

/**
 * Runs of one figure from one thermometer: the first may be right; the others are doubted if, by what
 * stands outside the run and its first, the core has climbed since.
 */
function stuckAmong(options: DoubtOptions): Suspect[] {
  const { readings, weighed } = options;
  const stuck = new Set<number>();
  for (const first of weighed) {
    if (stuck.has(first)) continue;
    const run = runFrom(options, first);
    const last = run.at(-1);
    if (last === undefined || readings[last]!.minute - readings[first]!.minute < stuckMinutes)
      continue;
    const others = weighed.filter((index) => !run.includes(index));
    const { celsius, deviation } = leftOutOneByOne(options, [...others, last]).at(-1)!;
    const gap = celsius - readings[last]!.celsius;
    if (gap > climbedKelvin && gap > 2 * deviation) for (const index of run) stuck.add(index);
  }
  return [...stuck].map((index) => ({ index, why: 'stuck' as const }));
}

/** The readings right after one that repeat it. */
function runFrom({ readings, weighed }: DoubtOptions, first: number): number[] {
  const { celsius, thermometer, where } = readings[first]!;
  const run: number[] = [];
  for (const index of weighed) {
    const one = readings[index]!;
    if (index <= first || one.thermometer !== thermometer || one.where !== where) continue;
    if (Math.abs(one.celsius - celsius) > stuckKelvin) break;
    run.push(index);
  }
  return run;
}

function reasonFor(
  readings: readonly ProbeReading[],
  kept: readonly number[],
  index: number,
  expected: Expected,
): SuspectReason {
  const reading = readings[index]!;
  const others = kept.filter((other) => other !== index);
  for (const meant of [fahrenheitOfCelsius(reading.celsius), celsiusOfFahrenheit(reading.celsius)])
    if (Math.abs(meant - expected.celsius) < 2 * expected.deviation) return 'wrong-unit';
  const before = others.findLast((other) => readings[other]!.minute < reading.minute);
  const sameProbe =
    reading.thermometer === 'leave-in' &&
    before !== undefined &&
    readings[before]!.thermometer === 'leave-in' &&
    readings[before]!.where === reading.where;
  const rival = others.some(
    (other) => disagree(reading, readings[other]!) || disagree(readings[other]!, reading),
  );
  if (rival && !sameProbe) return 'disagrees-with-another';
  if (before !== undefined && readings[before]!.celsius > reading.celsius + 1.5) return 'falling';
  if (sameProbe && others.length >= 2) return 'moved-probe';
  return reading.celsius > expected.celsius ? 'too-high' : 'too-low';
}
