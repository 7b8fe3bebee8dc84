/** Learns which intent the cues of a line speak for, from labelled lines: softmax regression, seeded. */
import { type Clause, lineOf } from '../src/intents/clause.ts';
import { english } from '../src/intents/en/english.ts';
import { opinionCues, stemOfWord } from '../src/intents/en/opinion-cues.ts';
import { type Opinion, type OpinionWeights, opinionsOf } from '../src/intents/opinion.ts';
import { joined } from '../src/intents/read.ts';
import { Match } from '../src/intents/recogniser.ts';
import { tokensOf } from '../src/intents/token.ts';
import type { Intent } from '../src/kitchen/heard.ts';
import type { Row } from '../test/corpus/load.ts';
import { contextOf } from '../test/corpus/score.ts';
import { blockOf, blocksOfWords, foldOf, option, shuffled, standsElsewhere } from './learn.ts';

export interface Line {
  row: Row;
  match: Match;
  /** Undefined where several things are said at once: such a line teaches nothing. */
  intent: Intent | undefined;
  block: number;
  fold: number;
}

export interface Model {
  weights: OpinionWeights;
  known: ReadonlySet<string>;
  opinions(match: Match): Opinion[];
}

const rounds = option('rounds', 12);
const decay = option('decay', 1e-3);
const least = option('least', 2);
const rate = option('rate', 0.15);
/** Overheard talk is the commonest of all and would drown the rest. */
const talkWeight = option('talk', 0.6);
/** What adds less than this to any score is left out. */
const slight = option('slight', 0.3);

export const lineOfRow = (row: Row, at: number): Line => ({
  row,
  match: matchOf(row),
  intent: intentOf(row),
  block: blockOf(at),
  fold: foldOf(at),
});

/** A text as the second opinion sees it when nothing was heard in any of its clauses. */
export function matchOf(row: Row): Match {
  const context = contextOf(row);
  const { tokens, quantities } = english.prepare(tokensOf(row.text), context);
  const clauses = english.clausesOf(tokens, quantities, context);
  const whole: Clause = clauses.length > 0 ? joined(clauses) : { tokens, mood: 'statement' };
  const line = lineOf(whole.tokens);
  return new Match({
    groups: {},
    context,
    line,
    whole: line,
    before: [],
    quantities,
    minutesAgo: whole.minutesAgo,
    at: whole.at,
  });
}

function intentOf(row: Row): Intent | undefined {
  if (row.origin === 'chatter') return 'unrelated';
  return row.heard.length === 1 ? (row.heard[0]!.intent as Intent) : undefined;
}

const stemsOfLine = (line: string): string[] =>
  line
    .split(' ')
    .filter((word) => /^[a-z'-]+$/.test(word))
    .map(stemOfWord);

/** Stochastic descent with steps that shrink for each weight by how often it has moved (AdaGrad). */
export function learnOpinion(all: readonly Line[]): Model {
  const train = all.filter((line) => line.intent !== undefined);
  const blocks = blocksOfWords(
    train.map(({ match, block }) => ({ words: stemsOfLine(match.line), block })),
  );
  const cued = train.map(({ match, block }) => opinionCues(match, standsElsewhere(blocks, block)));
  const seen = new Map<string, number>();
  for (const cues of cued) for (const cue of cues) seen.set(cue, (seen.get(cue) ?? 0) + 1);
  const ids = new Map<string, number>();
  for (const [cue, times] of seen) if (times >= least) ids.set(cue, ids.size);
  const intents = [...new Set(train.map((line) => line.intent!))].sort();
  const size = intents.length;
  const talk = intents.indexOf('unrelated');
  const inputs = cued.map((cues) => cues.flatMap((cue) => ids.get(cue) ?? []));
  const wanted = train.map((line) => intents.indexOf(line.intent!));
  const weight = new Float64Array(ids.size * size);
  const moved = new Float64Array(ids.size * size).fill(1e-6);
  const scores = new Float64Array(size);
  for (let round = 0; round < rounds; round++)
    for (const at of shuffled(train.length, round + 1)) {
      const cues = inputs[at]!;
      scores.fill(0);
      for (const cue of cues)
        for (let one = 0; one < size; one++) scores[one] = scores[one]! + weight[cue * size + one]!;
      const high = Math.max(...scores);
      let sum = 0;
      for (let one = 0; one < size; one++) {
        scores[one] = Math.exp(scores[one]! - high);
        sum += scores[one]!;
      }
      const counts = wanted[at] === talk ? talkWeight : 1;
      for (let one = 0; one < size; one++) {
        const error = (scores[one]! / sum - (one === wanted[at] ? 1 : 0)) * counts;
        if (Math.abs(error) < 1e-4) continue;
        for (const cue of cues) {
          const place = cue * size + one;
          const slope = error + decay * weight[place]!;
          moved[place] = moved[place]! + slope * slope;
          weight[place] = weight[place]! - (rate * slope) / Math.sqrt(moved[place]!);
        }
      }
    }
  const byCue = new Map<string, (readonly [number, number])[]>();
  for (const [cue, id] of ids) {
    const row = centred(weight.subarray(id * size, (id + 1) * size));
    const told = row.flatMap((value, one) =>
      Math.abs(value) >= slight ? [[one, Math.round(value * 10) / 10] as const] : [],
    );
    if (told.length > 0) byCue.set(cue, told);
  }
  const known = new Set([...blocks].filter(([, at]) => at.size > 1).map(([stem]) => stem));
  const weights = { intents, byCue };
  return {
    weights,
    known,
    opinions: (match) =>
      opinionsOf(
        opinionCues(match, (stem) => known.has(stem)),
        weights,
      ),
  };
}

/** What a cue adds to every score alike says nothing: with the middle one at nought most are small. */
function centred(row: Float64Array): number[] {
  const sorted = [...row].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)]!;
  return [...row].map((value) => value - middle);
}
