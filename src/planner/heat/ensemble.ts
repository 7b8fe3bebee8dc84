/**
 * The members followed under one oven, one pull and one rest. Readings play no part here, nor does the
 * present minute: so a fresh reading finds its ensemble ready, and time passing changes nothing. What is
 * remembered is only what would be computed again, bit for bit.
 */
import type { ForecastQuestion } from '../../kitchen/forecast.ts';
import { type GridSize, gridSizeOf } from './grid.ts';
import { drawNormals, type Member, memberOf, unknownCount } from './prior.ts';
import { follow, type Track, type TrackOptions } from './track.ts';

/** Members, what they were made of, and what became of them. */
export interface Population {
  members: readonly Member[];
  /** Row by row, as prior.ts draws them. */
  normals: Float64Array;
  tracks: readonly Track[];
}

export interface Ensemble extends Population {
  size: GridSize;
}

export const defaultMembers = 176;
const fewestMembers = 16;
const mostMembers = 4096;
/** A dinner asks of one oven at a time, and of three or four choices of it. */
const remembered = 4;
const memory = new Map<string, Ensemble>();

export function ensembleOf(question: ForecastQuestion): Ensemble {
  const count = memberCount(question);
  // Members are drawn and followed alike whatever was read of the roast, and whenever it is asked.
  const key = JSON.stringify({ ...question, readings: undefined, nowMinute: undefined, count });
  const known = memory.get(key);
  if (known !== undefined) {
    memory.delete(key);
    memory.set(key, known);
    return known;
  }
  const size = usualGrid(question);
  const made = { size, ...followed(question, size, drawNormals(count, question.seed)) };
  memory.set(key, made);
  if (memory.size > remembered) memory.delete(memory.keys().next().value as string);
  return made;
}

/** The members that rows of normals stand for, followed under the question's oven, pull and rest. */
export function followed(
  question: ForecastQuestion,
  size: GridSize,
  normals: Float64Array,
): Population {
  const members = Array.from({ length: normals.length / unknownCount }, (_, row) =>
    memberOf(question, normals, row),
  );
  return { members, normals, tracks: members.map((one) => trackOf(one, size, question)) };
}

const trackOf = (member: Member, size: GridSize, question: ForecastQuestion): Track =>
  follow(member, trackOptionsOf(question, size));

export const trackOptionsOf = (question: ForecastQuestion, size: GridSize): TrackOptions => ({
  size,
  oven: question.oven,
  pullCelsius: question.pullCelsius,
  rest: question.rest,
  hold: question.hold,
  outMinute: question.outMinute,
  restMinutes: question.restMinutes,
  frozen: question.roast.frozen === true,
});

const memberCount = ({ members }: ForecastQuestion): number =>
  Math.round(Math.min(mostMembers, Math.max(fewestMembers, members ?? defaultMembers)));

/** All members share the cells of the usual one, so that they differ in what they are alone. */
function usualGrid(question: ForecastQuestion): GridSize {
  return gridSizeOf(memberOf(question, new Float64Array(unknownCount), 0).cylinder);
}
