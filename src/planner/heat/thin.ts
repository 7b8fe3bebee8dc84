/**
 * Which readings are weighed when a thermometer left in its place speaks every minute: what the model
 * cannot follow lasts longer than a minute, so sixty readings in an hour say no more than a dozen do, and
 * cost more. Bins of absolute minutes, so that a reading once chosen stays chosen while it is recent.
 */
import type { ProbeReading } from '../../kitchen/forecast.ts';
import { groupsOf } from './evidence.ts';

/** Up to so many of one thermometer in one place are all weighed. */
const fewEnough = 12;
const recentMinutes = 24;
const recentBinMinutes = 4;
const earlierBinMinutes = 12;

/** Indices of the readings to weigh, rising. */
export function thinned(readings: readonly ProbeReading[]): number[] {
  const all = readings.map((_, index) => index);
  return groupsOf(readings, all)
    .flatMap((group) => (group.length <= fewEnough ? group : oneOfEachBin(readings, group)))
    .sort((a, b) => a - b);
}

function oneOfEachBin(readings: readonly ProbeReading[], group: readonly number[]): number[] {
  const byMinute = group.toSorted((a, b) => readings[a]!.minute - readings[b]!.minute);
  const last = byMinute.at(-1)!;
  const now = readings[last]!.minute;
  const bins = new Map<string, number>();
  for (const index of byMinute) {
    const { minute } = readings[index]!;
    const recent = now - minute <= recentMinutes;
    const bin = recent
      ? `r${Math.floor(minute / recentBinMinutes)}`
      : `e${Math.floor(minute / earlierBinMinutes)}`;
    if (!bins.has(bin)) bins.set(bin, index);
  }
  return [...new Set([...bins.values(), last])];
}
