/**
 * The heat forecast: from weight, bones, an oven's dial and a few readings to when to pull, what the
 * core will reach, and when to look. This folder knows nothing of dishes, clocks, words or guests; its
 * only inputs are the question's numbers and its seed.
 */
import type {
  Band,
  Forecast,
  ForecastFunction,
  OvenSetting,
  RestCover,
} from '../../kitchen/forecast.ts';
import { type Belief, believe, ovenInOrder } from './belief.ts';
import { trackOf } from './ensemble.ts';
import { outlook } from './outlook.ts';
import { trackAt } from './track.ts';
import { Weighted } from './weighted.ts';

export { type Belief, believe } from './belief.ts';

/** Answers the question. Total for any question within `limits`; deterministic by the seed. */
export const forecast: ForecastFunction = (question) => answer(believe(question));

/** The forecast of a belief under the oven, the pull and the rest that it was formed with. */
export function answer(belief: Belief): Forecast {
  const { question, ensemble, weights } = belief;
  const { members, tracks } = ensemble;
  return outlook({ question, members, tracks, weights, belief });
}

export interface Course {
  /** The oven from the start: what it was, and what it shall be. */
  oven: readonly OvenSetting[];
  pullCelsius: number;
  rest: RestCover;
  outMinute?: number | undefined;
}

/** Members that carry less than this share of the heaviest one's weight are not followed again. */
const negligible = 1e-3;

/** What would come of another course, from the same belief: nothing is weighed anew. */
export function project(belief: Belief, course: Course): Forecast {
  const question = {
    ...belief.question,
    ...course,
    oven: ovenInOrder(course.oven),
    outMinute: course.outMinute,
  };
  const { members, weights } = heaviest(belief);
  const tracks = members.map((member) => trackOf(member, belief.ensemble.size, question));
  return outlook({ question, members, tracks, weights, belief });
}

function heaviest(belief: Belief): {
  members: Belief['ensemble']['members'];
  weights: Float64Array;
} {
  const floor = negligible * Math.max(...belief.weights);
  const rows = [...belief.weights.keys()].filter((row) => belief.weights[row]! > floor);
  return {
    members: rows.map((row) => belief.ensemble.members[row]!),
    weights: Float64Array.from(rows, (row) => belief.weights[row]!),
  };
}

export interface ServeWish {
  oven: readonly OvenSetting[];
  /** The core wanted when the knife goes in. */
  serveCelsius: number;
  rest: RestCover;
  /** From the pull to the knife. */
  restMinutes: number;
}

export interface PullAdvice {
  pullCelsius: number;
  /** The core when the knife goes in, if it is pulled there. */
  atKnifeCelsius: Band;
}

/** A member's rise changes slowly with its pull, so three corrections meet the wish to 0.1 K. */
const corrections = 3;
const followedForAdvice = 64;

/** The pull that makes the middle of what is believed meet the wish when the knife goes in. */
export function pullForServe(belief: Belief, wish: ServeWish): PullAdvice {
  const { members, weights } = heaviest(belief);
  // A stride through the members, each with its weight, is as good as all of them for a median.
  const stride = Math.max(1, Math.floor(members.length / followedForAdvice));
  const rows = members.map((_, row) => row).filter((row) => row % stride === 0);
  const shares = rows.map((row) => weights[row]!);
  let pullCelsius = wish.serveCelsius - 5;
  let atKnifeCelsius: Band = { p10: pullCelsius, p50: pullCelsius, p90: pullCelsius };
  for (let round = 0; round < corrections; round += 1) {
    const question = {
      ...belief.question,
      oven: ovenInOrder(wish.oven),
      rest: wish.rest,
      pullCelsius,
      outMinute: undefined,
    };
    const knives = rows.map((row) =>
      trackAt(trackOf(members[row]!, belief.ensemble.size, question).rest, wish.restMinutes),
    );
    atKnifeCelsius = new Weighted(knives, shares).band;
    const miss = wish.serveCelsius - atKnifeCelsius.p50;
    if (Math.abs(miss) < 0.1 || round === corrections - 1) break;
    pullCelsius += miss;
  }
  return { pullCelsius, atKnifeCelsius };
}
