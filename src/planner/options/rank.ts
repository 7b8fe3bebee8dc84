/** Which options are told, and in what order: done as wanted first, then when, then how calmly. */
import { minutesBetween } from '../../base/time.ts';
import type { Dinner } from '../../kitchen/dinner.ts';
import type { Option } from '../../kitchen/facts.ts';
import { leavesOut } from '../../kitchen/option.ts';
import { roastOf } from '../roast-day.ts';
import type { OptionFigures } from './figures.ts';

/** Two courses are one choice when the oven stands the same and the roast comes out at the same time. */
const sameCourse = (a: OptionFigures, b: OptionFigures): boolean =>
  a.drops === b.drops &&
  (a.skips === undefined) === (b.skips === undefined) &&
  a.course.rest === b.course.rest &&
  a.course.oven.length === b.course.oven.length &&
  a.course.oven.every(
    ({ celsius }, index) => Math.abs(celsius - (b.course.oven[index]?.celsius ?? 0)) < 3,
  ) &&
  Math.abs(minutesBetween(a.pullAt, b.pullAt)) < 3;

/** What a kind costs beyond its figures, in minutes of a late table. */
const trouble: Record<Option['kind'], number> = {
  'carry-on': 0,
  'rest-longer': 0,
  'start-later': 0,
  'lower-oven': 2,
  'raise-oven': 12,
  'pull-and-hold': 10,
  'serve-later': 0,
  'serve-sooner': 0,
  'skip-rest': 14,
  'skip-steps': 4,
  'drop-dish': 12,
};

/** A dish taken out and put in again costs as much as this. */
const takenOutMinutes = 3;

/** A core so far over what was asked for is overcooked, and so far under it not what was asked for. */
const overcookedKelvin = 1.5;
const underKelvin = 4;

const overKelvin = (dinner: Dinner, figures: OptionFigures): number =>
  figures.coreAtServingCelsius.p50 - (dinner.target?.serveCelsius ?? 54.4);

const missesTarget = (off: number): boolean => off > overcookedKelvin || off < -underKelvin;

/** A table that may yet be late costs in measure of that. */
const riskOfLateMinutes = 25;

/**
 * A core that may yet miss costs in measure of that: the miss to expect is a third of the band's width, at the price
 * of a kelvin off target. Where a reading made the table late, the hour comes first.
 */
const riskOfCore = 1.5;

/** Minutes late, kelvin off target, rest beyond what the cut likes, and trouble: one figure to rank by. */
function cost(
  { dinner, behind }: Ranking,
  figures: OptionFigures,
  restHighMinutes: number,
): number {
  const inTime = behind && figures.kind === 'raise-oven';
  const off = overKelvin(dinner, figures);
  const takenOut = figures.takesOut === undefined ? 0 : takenOutMinutes;
  const tooLong = Math.max(0, figures.restMinutes - restHighMinutes);
  return (
    Math.abs(figures.minutesFromWanted) +
    riskOfLateMinutes * (1 - figures.onTimeChance) +
    (behind ? 0 : riskOfCore) *
      (figures.coreAtServingCelsius.p90 - figures.coreAtServingCelsius.p10) +
    6 * Math.max(0, off) +
    4 * Math.max(0, -off) +
    (figures.kind === 'pull-and-hold' ? 0.25 : 0.5) * tooLong +
    (inTime ? raisedInTime : trouble[figures.kind]) +
    takenOut +
    10 * figures.without.length
  );
}

/** A hotter oven, no rest or something left out is for a late table, a cooler oven for one with time. */
const forLate: readonly Option['kind'][] = ['raise-oven', 'skip-rest', 'skip-steps', 'drop-dish'];
const forEarly: readonly Option['kind'][] = ['lower-oven', 'pull-and-hold'];

/** What nothing is done for. */
export const isPlain = (kind: Option['kind']): boolean =>
  kind === 'carry-on' || kind === 'rest-longer' || kind === 'serve-later';

/** Later than this with nothing done, a table is late. */
const lateMinutes = 5;

/**
 * Which kinds are of no use for such a day, by what comes of doing nothing: of `simulated` only the plain ones
 * count, so that the others need not be simulated to know.
 */
export function kindsRuledOut(
  simulated: readonly { figures: OptionFigures }[],
  ranking: Ranking,
): (kind: Option['kind']) => boolean {
  const carryOn = bestPlain(simulated, ranking);
  const late = ranking.behind || (carryOn?.figures.minutesFromWanted ?? 0) > lateMinutes;
  return (kind) =>
    (late ? forEarly.includes(kind) : kind !== 'drop-dish' && forLate.includes(kind)) ||
    (ranking.sooner && forEarly.includes(kind));
}

/** What nothing is done for, with the pull that suits it best. */
const bestPlain = <T extends { figures: OptionFigures }>(
  simulated: readonly T[],
  ranking: Ranking,
): T | undefined =>
  simulated.filter(({ figures: { kind } }) => isPlain(kind)).sort(orderBy(ranking))[0];

/** As it was asked for first, then the cheapest. */
const orderBy =
  (ranking: Ranking) =>
  (a: { figures: OptionFigures }, b: { figures: OptionFigures }): number =>
    misses(ranking, a) - misses(ranking, b) || costOf(ranking, a) - costOf(ranking, b);

const misses = ({ dinner }: Ranking, { figures }: { figures: OptionFigures }): number =>
  Number(missesTarget(overKelvin(dinner, figures)));

const costOf = (ranking: Ranking, { figures }: { figures: OptionFigures }): number =>
  cost(ranking, figures, roastOf(ranking.dinner)?.rest.p90 ?? 40);

/** It must bring the table forward or lengthen a cut rest by so much, or spare it a dish that comes too late. */
const worthItMinutes = 5;

export interface Ranking {
  dinner: Dinner;
  /** The table was moved forward: then there is nothing to hold. */
  sooner: boolean;
  /** A reading made the table late, and there is time yet: then a hotter oven is no last resort. */
  behind: boolean;
}

/** What a hotter oven costs while there is time to look at what it does. */
const raisedInTime = 2;

/**
 * The best of each kind, best first, three at most. What comes with the figures goes with them. None
 * whose roast is not as it was asked for stands before one whose is.
 */
export function rankOptions<T extends { figures: OptionFigures }>(
  simulated: readonly T[],
  ranking: Ranking,
): T[] {
  const restUsual = roastOf(ranking.dinner)?.rest.p50 ?? 25;
  const order = orderBy(ranking);
  const carryOn = bestPlain(simulated, ranking);
  const isRuledOut = kindsRuledOut(simulated, ranking);
  const best = new Map<Option['kind'], T>();
  const sound = simulated.filter((one) => one.figures.broken.length === 0);
  for (const one of sound.length > 0 ? sound : simulated.slice(0, 1)) {
    const { kind } = one.figures;
    if (isRuledOut(kind)) continue;
    if (!gains(one.figures, carryOn?.figures, restUsual)) continue;
    const known = best.get(kind);
    if (!known || order(one, known) < 0) best.set(kind, one);
  }
  const ranked = [...best.values()]
    .sort((a, b) => order(a, b) || (a.figures.kind < b.figures.kind ? -1 : 1))
    .filter(
      (one, index, all) =>
        !all.slice(0, index).some((other) => sameCourse(other.figures, one.figures)),
    );
  // Nothing is left out unless the cook says so.
  const whole = ranked.findIndex((one) => !leavesOut(one.figures));
  if (whole > 0) ranked.unshift(...ranked.splice(whole, 1));
  const least = ranked[0] ? costOf(ranking, ranked[0]) : 0;
  // Where there is a choice of right ones, one that is not is no choice.
  const choice = ranked.filter((one) => misses(ranking, one) === 0).length >= 2 ? 1 : 2;
  return ranked
    .filter(
      (one, index) =>
        index < 2 || (costOf(ranking, one) < least + 40 && misses(ranking, one) < choice),
    )
    .slice(0, 3);
}

/** No rest, a hotter oven, a dish less: a price that must buy something. */
function gains(one: OptionFigures, carryOn: OptionFigures | undefined, restUsual: number): boolean {
  if (!forLate.includes(one.kind) || !carryOn) return true;
  // Only a rest that would be cut is worth lengthening.
  const rests =
    one.kind === 'raise-oven' ? Math.min(one.restMinutes, restUsual) - carryOn.restMinutes : 0;
  const surer = riskOfLateMinutes * (one.onTimeChance - carryOn.onTimeChance);
  const sooner =
    carryOn.minutesFromWanted - one.minutesFromWanted + Math.max(0, rests) + Math.max(0, surer);
  return sooner >= worthItMinutes || one.without.length < carryOn.without.length;
}
