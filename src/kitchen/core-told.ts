/** The core as the cook is told it, and which of their readings the forecast doubts. */
import { type Instant, minutesBetween } from '../base/time.ts';
import type { Dinner, Reading } from './dinner.ts';
import { type Band, coreAtMinute, type Forecast, type SuspectReason } from './forecast.ts';

export interface RoastSeen {
  dinner: Dinner;
  forecast: Forecast;
  roastInAt: Instant;
}

/** The readings that the forecast was asked with, in its order. */
const readingsOf = ({ dinner, roastInAt }: RoastSeen): readonly Reading[] =>
  dinner.readings.filter((one) => one.happenedAt >= roastInAt);

/** Why a reading is doubted; undefined for one that counts. */
export function doubtOf(reading: Reading, seen: RoastSeen): SuspectReason | undefined {
  const index = readingsOf(seen).indexOf(reading);
  return seen.forecast.suspectReadings.find((one) => one.index === index)?.why;
}

/** Two spots so few minutes apart, told in one breath or by their names, are one look at the roast. */
const oneLookMinutes = 4;

/** The number that counts of the last look: the lowest of its spots is the nearest to the middle. */
export function lastLook(readings: readonly Reading[]): Reading | undefined {
  const last = readings.at(-1);
  if (!last) return undefined;
  const spots = readings.filter(
    ({ happenedAt, toldAt, where }) =>
      minutesBetween(happenedAt, last.happenedAt) <= oneLookMinutes &&
      (toldAt === last.toldAt ||
        (where !== undefined && last.where !== undefined && where !== last.where)),
  );
  return spots.reduce((lowest, one) => (one.celsius < lowest.celsius ? one : lowest), last);
}

export const lastLookAt = (seen: RoastSeen): Reading | undefined => lastLook(readingsOf(seen));

/** Whether its answer may call the pull: a probe's own numbers are not answered, nor does one that another number gainsays call it. */
export const mayCallPull = (look: Reading, seen: RoastSeen): boolean =>
  look.thermometer !== 'leave-in' && doubtOf(look, seen) !== 'disagrees-with-another';

/**
 * By the forecast; in the oven no lower than the last reading that counts, since a core does not fall
 * there and nobody believes a figure under the one they have just read.
 */
export function coreTold(seen: RoastSeen, at: Instant, inOven: boolean): Band | undefined {
  const core = coreAtMinute(seen.forecast, minutesBetween(seen.roastInAt, at));
  const last = readingsOf(seen).findLast(
    (one) => one.happenedAt <= at && doubtOf(one, seen) === undefined,
  );
  if (!core || !last || !inOven) return core;
  const read = last.celsius - (seen.dinner.thermometerOffsetKelvin ?? 0);
  return { p10: core.p10, p50: Math.max(core.p50, read), p90: Math.max(core.p90, read) };
}
