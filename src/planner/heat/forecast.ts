/**
 * The heat forecast: from weight, bones, an oven's dial and a few readings to when to pull, what the
 * core will reach, and when to look. This folder knows nothing of dishes, clocks, words or guests; its
 * only inputs are the question's numbers and its seed.
 */
import type {
  CourseAsked,
  Forecast,
  ForecastFunction,
  ForecastQuestion,
} from '../../kitchen/forecast.ts';
import { type Belief, believe, ovenInOrder } from './belief.ts';
import { trackOptionsOf } from './ensemble.ts';
import { outlook } from './outlook.ts';
import type { Member } from './prior.ts';
import { follow, type Trail } from './track.ts';

export { type Belief, believe } from './belief.ts';

/** Answers the question. Total for any question within `limits`; deterministic by the seed. */
export const forecast: ForecastFunction = ({ instead, ...question }) => {
  const { belief, trails } = lately(question);
  return instead ? project(belief, instead, { count: followedInstead, trails }) : answer(belief);
};

/** Members followed for one of several courses that are weighed against each other. */
const followedInstead = 64;

/** A belief, and how far its members were followed under the courses asked of it. */
interface Asked {
  key: string;
  belief: Belief;
  trails: Trails;
}
type Trails = Map<Member, Trail>;

/** What was asked last: courses are asked of one belief, one after another. */
let latest: Asked | undefined;

function lately(question: ForecastQuestion): Asked {
  const key = JSON.stringify(question);
  if (latest?.key !== key) latest = { key, belief: believe(question), trails: new Map() };
  return latest;
}

/** The forecast of a belief under the oven, the pull and the rest that it was formed with. */
export function answer(belief: Belief): Forecast {
  const { question, ensemble, weights } = belief;
  const { members, tracks } = ensemble;
  return outlook({ question, members, tracks, weights, belief });
}

/** Members that carry less than this share of the heaviest one's weight are not followed again. */
const negligible = 1e-3;

/** How a course is projected: by so many members, all that matter unless said, each on its own trail. */
export interface Projection {
  count?: number | undefined;
  trails?: Trails | undefined;
}

/** What would come of another course, from the same belief: nothing is weighed anew. */
export function project(
  belief: Belief,
  { only, ...course }: CourseAsked,
  { count, trails }: Projection = {},
): Forecast {
  const question = {
    ...belief.question,
    ...course,
    oven: ovenInOrder(course.oven),
    hold: course.hold,
    restMinutes: course.restMinutes,
    outMinute: course.outMinute,
  };
  const { members, weights } =
    count === undefined || count >= belief.weights.length
      ? heaviest(belief)
      : spread(belief, count);
  const options = { ...trackOptionsOf(question, belief.ensemble.size), only };
  const tracks = members.map((member) =>
    follow(
      member,
      { ...options, enoughMinute: knownMinuteOf(member, belief) },
      trails && trailOf(trails, member),
    ),
  );
  return outlook({ question, members, tracks, weights, belief, only });
}

function trailOf(trails: Trails, member: Member): Trail {
  const known = trails.get(member);
  if (known) return known;
  const made: Trail = [];
  trails.set(member, made);
  return made;
}

/** The present minute on the member's own way, which goes at its own pace from the last evidence on. */
const knownMinuteOf = ({ pace }: Member, { question, evidenceMinute }: Belief): number => {
  const { nowMinute } = question;
  const own = evidenceMinute + (nowMinute - evidenceMinute) / pace;
  return Math.max(nowMinute, own);
};

interface Followed {
  members: Belief['ensemble']['members'];
  weights: Float64Array;
}

function heaviest(belief: Belief): Followed {
  const floor = negligible * Math.max(...belief.weights);
  const rows = [...belief.weights.keys()].filter((row) => belief.weights[row]! > floor);
  return {
    members: rows.map((row) => belief.ensemble.members[row]!),
    weights: Float64Array.from(rows, (row) => belief.weights[row]!),
  };
}

/**
 * So many members for all: in the order of their pulls, one from each equal share of the weight, so that
 * what is followed again is spread as the whole is.
 */
function spread({ ensemble, weights }: Belief, count: number): Followed {
  const { members, tracks } = ensemble;
  const rows = [...weights.keys()].sort((a, b) => tracks[a]!.pullMinute - tracks[b]!.pullMinute);
  const picked: number[] = [];
  let passed = 0;
  for (const row of rows) {
    passed += weights[row]!;
    while (picked.length < count && passed > (picked.length + 0.5) / count) picked.push(row);
  }
  return {
    members: picked.map((row) => members[row]!),
    weights: new Float64Array(picked.length).fill(1 / picked.length),
  };
}
