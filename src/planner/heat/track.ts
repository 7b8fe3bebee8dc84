/**
 * One member followed through the oven and the rest. In the oven it is followed past its own pull, so
 * that what a reading says can be held against it whenever the reading was taken.
 */
import { limits } from '../../base/limits.ts';
import type { HoldSpan, OvenSetting, RestCover } from '../../kitchen/forecast.ts';
import { type Grid, type GridSize, gridOf } from './grid.ts';
import { agreeUntil, OvenWalk, roomCelsius } from './oven.ts';
import type { Member } from './prior.ts';
import {
  copyState,
  coreCelsius,
  curvature,
  type RoastState,
  type Surroundings,
  scratchOf,
  startState,
  step,
  stepSeconds,
} from './roast.ts';
import { evenSlice, noteHottest, type Slice, slicedAfter, sliceOf, wayLength } from './slice.ts';

export const recordMinutes = 2;
export const restHorizonMinutes = 60;
export const restRecords = restHorizonMinutes / recordMinutes + 1;
/** How far past the pull a member is followed in the oven. */
const pastPullKelvin = 12;
/** A low oven for holding: the lowest mark on most dials, 170 °F. */
export const holdingCelsius = 76.7;
/** Water vapour in a still oven with a roast in it, and in a fan oven that is vented. */
const ovenVapourPascals = 5_000;
const roomVapourPascals = 1_200;
/** The roast steams under its foil: something like room air saturated. */
const tentVapourPascals = 2_500;

export interface TrackOptions {
  size: GridSize;
  oven: readonly OvenSetting[];
  pullCelsius: number;
  rest: RestCover;
  hold?: HoldSpan | undefined;
  outMinute: number | undefined;
  /** How long the rest is followed; `restHorizonMinutes` unless a longer one is asked about. */
  restMinutes?: number | undefined;
  frozen: boolean;
  /** Once past its pull it is followed no further than this; `pastPullKelvin` further where none is given. */
  enoughMinute?: number | undefined;
  /** What is wanted of the rest: the slices too, unless it is the core alone. */
  only?: 'core' | undefined;
}

export interface Track {
  /** Core and curvature every recordMinutes from the start; in the rest too once it is known to be out. */
  core: Float32Array;
  curvature: Float32Array;
  /** When the core passed the pull; Infinity if it never did. */
  pullMinute: number;
  /** Core every recordMinutes from the pull, or from when it came out. */
  rest: Float32Array;
  lossAtPull: number;
  lossAfterRest: number;
  /** After each rest of `slicedAfter`. */
  slices: readonly Slice[];
}

interface Run {
  state: RoastState;
  grid: Grid;
  member: Member;
  scratch: Float64Array;
  around: Surroundings;
  walk: OvenWalk;
  /** Whole substeps in a record, and their seconds. */
  substeps: number;
  seconds: number;
  /** Where it stands, and what was recorded so far. */
  minute: number;
  core: number[];
  curvature: number[];
  loss: number;
  /** The hottest that the core has been, and each place on the way out of the slice. */
  hottestCore: number;
  hottest: Float64Array;
}

/**
 * A place on a member's way from which another course can go on: all that it comes to is what it would come
 * to if it were followed from the start.
 */
interface Landmark {
  run: Run;
  oven: readonly OvenSetting[];
}

/** The landmarks of one member, in the order in which they were reached. */
export type Trail = Landmark[];

/** So far apart; the nearer they are, the less is gone over twice and the more is kept. */
const landmarkMinutes = 10;

const branchOf = (run: Run, oven: readonly OvenSetting[]): Run => ({
  ...run,
  state: copyState(run.state),
  around: ovenSurroundings(run.member),
  walk: run.walk.branched(oven),
  core: run.core.slice(),
  curvature: run.curvature.slice(),
  hottest: run.hottest.slice(),
});

/** From the last landmark that lies on this course's own way, before its pull; else from the start. */
function resumed(member: Member, options: TrackOptions, trail: Trail | undefined): Run {
  const { oven, pullCelsius, outMinute = Number.POSITIVE_INFINITY } = options;
  let latest: Run | undefined;
  for (const { run, oven: other } of trail ?? []) {
    if (latest && run.minute <= latest.minute) continue;
    if (run.hottestCore >= pullCelsius || run.minute > outMinute) continue;
    if (run.minute > agreeUntil(oven, other)) continue;
    if (!stalledBefore(run, oven)) latest = run;
  }
  return latest ? branchOf(latest, oven) : begun(member, options);
}

/** Under a program that ends sooner it would not have been followed so far. */
function stalledBefore({ core }: Run, oven: readonly OvenSetting[]): boolean {
  const settled = Math.max(0, Math.floor(oven.at(-1)!.minute / recordMinutes) + 1);
  for (let row = settled + 1; row < core.length; row += 1) if (stalled(core, row)) return true;
  return false;
}

function mark(trail: Trail, run: Run, oven: readonly OvenSetting[]): void {
  const known = trail.some(
    (one) => one.run.minute === run.minute && agreeUntil(one.oven, oven) >= run.minute,
  );
  if (!known) trail.push({ run: branchOf(run, oven), oven });
}

function begun(member: Member, options: TrackOptions): Run {
  const grid = gridOf(member.cylinder, options.size);
  const frozen = options.frozen ? { share: member.frozenShare } : undefined;
  const substeps = Math.ceil((recordMinutes * 60) / stepSeconds(grid, member.body));
  const state = startState(grid, member.startCelsius, frozen);
  const hottest = new Float64Array(wayLength(grid)).fill(Number.NEGATIVE_INFINITY);
  noteHottest(hottest, state, grid);
  return {
    state,
    grid,
    member,
    scratch: scratchOf(grid),
    around: ovenSurroundings(member),
    walk: new OvenWalk(options.oven, member.oven),
    substeps,
    seconds: (recordMinutes * 60) / substeps,
    minute: 0,
    core: [coreCelsius(state, grid)],
    curvature: [curvature(state, grid)],
    loss: 0,
    hottestCore: coreCelsius(state, grid),
    hottest,
  };
}

/** The slices if it came out at each of these minutes, which rise: one way through the oven, a rest at each. */
export function slicesIfOut(
  member: Member,
  options: TrackOptions,
  outMinutes: readonly number[],
): (readonly Slice[])[] {
  const slices: (readonly Slice[])[] = [];
  const run = begun(member, options);
  const seen = (): void => {
    while (slices.length < outMinutes.length) {
      if (outMinutes[slices.length]! > run.minute + recordMinutes / 2) break;
      const out = { ...run, state: copyState(run.state), hottest: run.hottest.slice() };
      slices.push(restOf(out, options).slices);
    }
  };
  seen();
  roast(run, { ...options, outMinute: outMinutes.at(-1) }, seen);
  return slices;
}

/** A trail lets several courses of one member share what they have in common. */
export function follow(member: Member, options: TrackOptions, trail?: Trail): Track {
  const run = resumed(member, options, trail);
  const roasted = roast(run, options, () => {
    // Past the pull nothing goes on: the pull itself would have to be known too.
    if (trail && run.minute % landmarkMinutes === 0 && run.hottestCore < options.pullCelsius)
      mark(trail, run, options.oven);
  });
  const { outMinute } = options;
  if (outMinute === undefined) {
    const pulled = roasted.atPull;
    if (pulled === undefined) return neverPulled(roasted, restMinutesOf(options));
    run.state = pulled.state;
    run.loss = pulled.loss;
    run.hottest = pulled.hottest;
  }
  const lossAtPull = run.loss;
  const rested = restOf(run, options, restMinutesOf(options));
  const crossing = Number.isFinite(roasted.pullMinute)
    ? roasted.pullMinute
    : crossingIn(rested.core, options.pullCelsius, outMinute ?? 0);
  const known = outMinute !== undefined;
  return {
    core: known ? joined(roasted.core, rested.core) : new Float32Array(roasted.core),
    curvature: known
      ? joined(roasted.curvature, rested.curvature)
      : new Float32Array(roasted.curvature),
    pullMinute: crossing,
    rest: new Float32Array(rested.core),
    lossAtPull,
    lossAfterRest: run.loss,
    slices: rested.slices,
  };
}

/** The rest starts between two records: the joint is moved to the nearer of them, a minute at most. */
const joined = (oven: readonly number[], rest: readonly number[]): Float32Array =>
  new Float32Array([...oven.slice(0, -1), ...rest]);

const restMinutesOf = ({ restMinutes = 0 }: TrackOptions): number =>
  Math.max(restHorizonMinutes, recordMinutes * Math.ceil(restMinutes / recordMinutes));

const neverPulled = (roasted: Roasted, restMinutes: number): Track => {
  const last = roasted.core.at(-1)!;
  return {
    core: new Float32Array(roasted.core),
    curvature: new Float32Array(roasted.curvature),
    pullMinute: Number.POSITIVE_INFINITY,
    rest: new Float32Array(restMinutes / recordMinutes + 1).fill(last),
    lossAtPull: roasted.loss,
    lossAfterRest: roasted.loss,
    slices: slicedAfter(restMinutes).map(() => evenSlice(last)),
  };
};

const ovenSurroundings = (member: Member): Surroundings => ({
  airCelsius: 0,
  radiantCelsius: 0,
  convection: member.convection,
  radiation: member.radiation,
  vapourPascals: ovenVapourPascals,
  vapourPasses: 1,
});

interface Roasted {
  core: number[];
  curvature: number[];
  pullMinute: number;
  atPull: { state: RoastState; loss: number; hottest: Float64Array } | undefined;
  loss: number;
}

/** `seen` is told of each record as it is made, the run standing at it. */
function roast(run: Run, options: TrackOptions, seen: () => void): Roasted {
  const { pullCelsius, outMinute, enoughMinute = Number.POSITIVE_INFINITY } = options;
  const { grid, state, around, walk, seconds, substeps, core } = run;
  const end = outMinute ?? limits.roastMinutesHigh;
  const minutes = seconds / 60;
  let before = coreCelsius(state, grid);
  let pullMinute = before >= pullCelsius ? 0 : Number.POSITIVE_INFINITY;
  let atPull =
    pullMinute === 0
      ? { state: copyState(state), loss: 0, hottest: run.hottest.slice() }
      : undefined;
  while (run.minute + recordMinutes / 2 <= end) {
    const { minute } = run;
    for (let sub = 0; sub < substeps; sub += 1) {
      const time = minute + sub * minutes;
      walk.advance(time, minutes);
      around.airCelsius = walk.state.airCelsius;
      around.radiantCelsius = walk.state.radiantCelsius;
      run.loss += step(state, grid, run.member.body, around, seconds, run.scratch);
      if (atPull !== undefined) continue;
      const now = coreCelsius(state, grid);
      if (now >= pullCelsius) {
        pullMinute = time + (minutes * (pullCelsius - before)) / (now - before);
        atPull = { state: copyState(state), loss: run.loss, hottest: run.hottest.slice() };
      }
      before = now;
      if (now > run.hottestCore) run.hottestCore = now;
    }
    run.minute = minute + recordMinutes;
    core.push(coreCelsius(state, grid));
    run.curvature.push(curvature(state, grid));
    noteHottest(run.hottest, state, grid);
    seen();
    if (outMinute !== undefined) continue;
    if (atPull !== undefined && run.minute >= Math.max(pullMinute, enoughMinute)) break;
    if (core.at(-1)! > pullCelsius + pastPullKelvin) break;
    if (minute > walk.settledMinute && stalled(core, core.length - 1)) break;
  }
  return { core, curvature: run.curvature, pullMinute, atPull, loss: run.loss };
}

/**
 * Nothing more will come of an oven whose dial no longer changes once the core falls, or has moved a
 * twentieth of a kelvin in two hours.
 */
const stalled = (core: readonly number[], row: number): boolean => {
  const now = core[row]!;
  const lately = core[row - 10 / recordMinutes];
  const ago = core[row - 120 / recordMinutes];
  return (
    (lately !== undefined && now < lately - 0.1) ||
    (ago !== undefined && Math.abs(now - ago) < 0.05)
  );
};

/**
 * What surrounds a resting roast. Coefficients are common values for still air, less what the board keeps
 * from the underside; no single source.
 */
function restSurroundings(member: Member, options: TrackOptions, cover: RestCover): Surroundings {
  const factor = member.restFactor;
  switch (cover) {
    case 'tented':
      // Foil reflects most of the glow and holds damp air under it.
      return {
        airCelsius: roomCelsius + 6,
        radiantCelsius: roomCelsius + 6,
        convection: 5.5 * factor,
        radiation: 0.5 * factor,
        vapourPascals: tentVapourPascals,
        vapourPasses: 0.9,
      };
    case 'open':
      return {
        airCelsius: roomCelsius,
        radiantCelsius: roomCelsius,
        convection: 6 * factor,
        radiation: 0.85,
        vapourPascals: roomVapourPascals,
        vapourPasses: 1,
      };
    case 'low-oven': {
      const last = options.oven.at(-1)!.celsius;
      const celsius = last >= 40 && last <= 110 ? last : holdingCelsius;
      return {
        ...ovenSurroundings(member),
        airCelsius: celsius,
        radiantCelsius: celsius,
      };
    }
  }
}

/** What covers it so many minutes into its rest. */
const coverAt = ({ rest, hold }: TrackOptions, minute: number): RestCover =>
  rest === 'low-oven' && hold && (minute < hold.fromMinutes || minute >= hold.toMinutes)
    ? 'tented'
    : rest;

interface Rested {
  core: number[];
  curvature: number[];
  slices: readonly Slice[];
}

function restOf(run: Run, options: TrackOptions, minutes = restHorizonMinutes): Rested {
  let cover = coverAt(options, 0);
  let around = restSurroundings(run.member, options, cover);
  const { state, grid } = run;
  const core = [coreCelsius(state, grid)];
  const curves = [curvature(state, grid)];
  const slices: Slice[] = [];
  const sliced = options.only === 'core' ? [] : slicedAfter(minutes);
  for (let minute = 0; minute < minutes; minute += recordMinutes) {
    const next = coverAt(options, minute + recordMinutes / 2);
    if (next !== cover) around = restSurroundings(run.member, options, next);
    cover = next;
    for (let sub = 0; sub < run.substeps; sub += 1)
      run.loss += step(state, grid, run.member.body, around, run.seconds, run.scratch);
    core.push(coreCelsius(state, grid));
    curves.push(curvature(state, grid));
    const slicing = sliced[slices.length];
    if (slicing === undefined) continue;
    noteHottest(run.hottest, state, grid);
    if (minute + recordMinutes >= slicing) slices.push(sliceOf(run.hottest, state, grid));
  }
  return { core, curvature: curves, slices };
}

function crossingIn(core: readonly number[], celsius: number, from: number): number {
  for (let i = 1; i < core.length; i += 1) {
    const before = core[i - 1]!;
    if (core[i]! >= celsius && before < celsius)
      return from + recordMinutes * (i - 1 + (celsius - before) / (core[i]! - before));
  }
  return Number.POSITIVE_INFINITY;
}

/** A track between its records; past its end, its last value. */
export function trackAt(records: Float32Array, minutes: number): number {
  const place = Math.max(0, minutes / recordMinutes);
  const row = Math.min(records.length - 1, Math.floor(place));
  const here = records[row]!;
  const next = records[Math.min(records.length - 1, row + 1)]!;
  return here + (next - here) * Math.min(1, place - row);
}
