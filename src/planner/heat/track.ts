/**
 * One member followed through the oven and the rest. In the oven it is followed past its own pull, so
 * that what a reading says can be held against it whenever the reading was taken.
 */
import { limits } from '../../base/limits.ts';
import type { HoldSpan, OvenSetting, RestCover } from '../../kitchen/forecast.ts';
import { type Grid, type GridSize, gridOf } from './grid.ts';
import { OvenWalk, roomCelsius } from './oven.ts';
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
  /** Whole substeps in a record, and their seconds. */
  substeps: number;
  seconds: number;
  loss: number;
  /** The hottest that each place on the way out of the slice has been. */
  hottest: Float64Array;
}

function begun(member: Member, options: TrackOptions): Run {
  const grid = gridOf(member.cylinder, options.size);
  const frozen = options.frozen ? { share: member.frozenShare } : undefined;
  const substeps = Math.ceil((recordMinutes * 60) / stepSeconds(grid, member.body));
  return {
    state: startState(grid, member.startCelsius, frozen),
    grid,
    member,
    scratch: scratchOf(grid),
    around: ovenSurroundings(member),
    substeps,
    seconds: (recordMinutes * 60) / substeps,
    loss: 0,
    hottest: new Float64Array(wayLength(grid)).fill(Number.NEGATIVE_INFINITY),
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
  roast(run, { ...options, outMinute: outMinutes.at(-1) }, (minute) => {
    while (slices.length < outMinutes.length) {
      if (outMinutes[slices.length]! > minute + recordMinutes / 2) break;
      const out = { ...run, state: copyState(run.state), hottest: run.hottest.slice() };
      slices.push(restOf(out, options).slices);
    }
  });
  return slices;
}

export function follow(member: Member, options: TrackOptions): Track {
  const run = begun(member, options);
  const roasted = roast(run, options);
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
    core: known ? joined(roasted.core, rested.core) : Float32Array.from(roasted.core),
    curvature: known
      ? joined(roasted.curvature, rested.curvature)
      : Float32Array.from(roasted.curvature),
    pullMinute: crossing,
    rest: Float32Array.from(rested.core),
    lossAtPull,
    lossAfterRest: run.loss,
    slices: rested.slices,
  };
}

/** The rest starts between two records: the joint is moved to the nearer of them, a minute at most. */
const joined = (oven: readonly number[], rest: readonly number[]): Float32Array =>
  Float32Array.from([...oven.slice(0, -1), ...rest]);

const restMinutesOf = ({ restMinutes = 0 }: TrackOptions): number =>
  Math.max(restHorizonMinutes, recordMinutes * Math.ceil(restMinutes / recordMinutes));

const neverPulled = (roasted: Roasted, restMinutes: number): Track => {
  const last = roasted.core.at(-1)!;
  return {
    core: Float32Array.from(roasted.core),
    curvature: Float32Array.from(roasted.curvature),
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
function roast(run: Run, options: TrackOptions, seen?: (minute: number) => void): Roasted {
  const { pullCelsius, outMinute } = options;
  const walk = new OvenWalk(options.oven, run.member.oven);
  const { grid, state, around, seconds, substeps } = run;
  const core = [coreCelsius(state, grid)];
  const curves = [curvature(state, grid)];
  const end = outMinute ?? limits.roastMinutesHigh;
  const minutes = seconds / 60;
  let pullMinute = core[0]! >= pullCelsius ? 0 : Number.POSITIVE_INFINITY;
  let atPull =
    pullMinute === 0
      ? { state: copyState(state), loss: 0, hottest: run.hottest.slice() }
      : undefined;
  let before = core[0]!;
  noteHottest(run.hottest, state, grid);
  seen?.(0);
  for (let minute = 0; minute + recordMinutes / 2 <= end; minute += recordMinutes) {
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
    }
    core.push(coreCelsius(state, grid));
    curves.push(curvature(state, grid));
    noteHottest(run.hottest, state, grid);
    seen?.(minute + recordMinutes);
    if (outMinute !== undefined) continue;
    if (core.at(-1)! > pullCelsius + pastPullKelvin) break;
    if (minute > walk.settledMinute && stalled(core)) break;
  }
  return { core, curvature: curves, pullMinute, atPull, loss: run.loss };
}

/**
 * Nothing more will come of an oven whose dial no longer changes once the core falls, or has moved a
 * twentieth of a kelvin in two hours.
 */
const stalled = (core: readonly number[]): boolean => {
  const now = core.at(-1)!;
  const lately = core[core.length - 1 - 10 / recordMinutes];
  const ago = core[core.length - 1 - 120 / recordMinutes];
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
  const sliced = slicedAfter(minutes);
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
