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
  const { readings, weighed } = options;
  const stuck = stuckAmong(options);
  const credible = without(weighed, stuck);
  const rivals = disagreeingAmong(
    credible,
    (warm, cool) =>
      inOtherPlaces(readings[warm]!, readings[cool]!) && disagree(readings[warm]!, readings[cool]!),
  );
  const aside = fewestAside(options, without(credible, rivals));
  const suspects = [...stuck, ...rivals, ...aside];
  const together = disagreeingAmong(without(weighed, suspects), (warm, cool) =>
    disagree(readings[warm]!, readings[cool]!),
  );
  return [...suspects, ...together].sort((a, b) => a.index - b.index);
}

const without = (indices: readonly number[], suspects: readonly Suspect[]): number[] =>
  indices.filter((index) => suspects.every((one) => one.index !== index));

/**
 * The fewest that, set aside, leave what a roast can do: of one alone the one that fits worst; of several
 * the oldest, since two that agree and were read last were read knowing of the others. A last one lower
 * than the others allow is no slip if it has climbed all the same: the roast has slowed, and all count.
 */
function fewestAside(options: DoubtOptions, credible: readonly number[]): readonly Suspect[] {
  const most = Math.min(mostTogether, Math.floor(credible.length / 2));
  for (let count = 0; count <= most; count += 1) {
    const left = setsOf(credible, count)
      .map((set) => ({ set, kept: credible.filter((index) => !set.includes(index)) }))
      .filter(({ kept }) => consistent(options, kept));
    const best =
      count === 1
        ? left.toSorted((a, b) => misfit(options, a.kept) - misfit(options, b.kept))[0]
        : left[0];
    if (best === undefined) continue;
    return unlessSlowed(
      options,
      best.kept,
      best.set.map((index) => suspectBeside(options, best.kept, index)),
    );
  }
  const suspects = worstFirst(options, credible);
  return unlessSlowed(options, without(credible, suspects), suspects);
}

/** None, where all of them came last, climbed, and are only lower than was expected. */
function unlessSlowed(
  { readings }: DoubtOptions,
  kept: readonly number[],
  suspects: readonly Suspect[],
): readonly Suspect[] {
  const before = kept.at(-1);
  const slowed = suspects.every(
    ({ index, why }) =>
      why === 'too-low' &&
      (before === undefined ||
        (index > before && readings[index]!.celsius > readings[before]!.celsius + stuckKelvin)),
  );
  return slowed ? [] : suspects;
}

const consistent = (options: DoubtOptions, kept: readonly number[]): boolean =>
  misfit(options, kept) <= contradictionSquare && worstOf(options, kept) === undefined;

/** Where too many are wrong to try all: the worst of them, then the worst of the rest, until all fit. */
function worstFirst(options: DoubtOptions, credible: readonly number[]): Suspect[] {
  const suspects: Suspect[] = [];
  const most = Math.min(mostSuspects, Math.ceil(options.weighed.length / 2));
  while (suspects.length < most) {
    const kept = without(credible, suspects);
    const worst = worstOf(options, kept);
    if (worst === undefined) break;
    suspects.push(
      suspectBeside(options, without(kept, [{ index: worst, why: 'too-high' }]), worst),
    );
  }
  return suspects;
}

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
const disagreeingAmong = (
  kept: readonly number[],
  differ: (warm: number, cool: number) => boolean,
): Suspect[] =>
  kept
    .filter((index) => kept.some((other) => differ(index, other)))
    .map((index) => ({ index, why: 'disagrees-with-another' as const }));

const inOtherPlaces = (one: ProbeReading, other: ProbeReading): boolean =>
  one.thermometer !== other.thermometer || one.where !== other.where;

const disagree = (warm: ProbeReading, cool: ProbeReading): boolean =>
  Math.abs(warm.minute - cool.minute) <= togetherMinutes &&
  warm.celsius - cool.celsius > togetherKelvin;

/** The index that fits the others worst, if it is beyond doubt's limits. */
function worstOf(options: DoubtOptions, kept: readonly number[]): number | undefined {
  let worst: number | undefined;
  let worstScore = doubtDeviations;
  leftOutOneByOne(options, kept).forEach(({ celsius, deviation }, row) => {
    const gap = Math.abs(options.readings[kept[row]!]!.celsius - celsius);
    const score = gap < doubtKelvin ? 0 : gap / deviation;
    if (score <= worstScore) return;
    worstScore = score;
    worst = kept[row]!;
  });
  return worst;
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

/** Mean square of how far readings lie together from what a roast can do, in deviations. */
function misfit(options: DoubtOptions, kept: readonly number[]): number {
  if (kept.length === 0) return 0;
  const { root, away, size } = covarianceOf(options, kept);
  const solved = solve(root, size, away);
  return away.reduce((sum, one, row) => sum + one * solved[row]!, 0) / size;
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
