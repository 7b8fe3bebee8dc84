/** Learns which intent the cues of a line speak for, from labelled lines: softmax regression, seeded. */
import { existsSync, readFileSync } from 'node:fs';
import { type Clause, lineOf } from '../src/intents/clause.ts';
import { english } from '../src/intents/en/english.ts';
import { opinionCues, stemOfWord } from '../src/intents/en/opinion-cues.ts';
import { heardInOrder } from '../src/intents/en/recurrent-input.ts';
import { joined } from '../src/intents/hear.ts';
import type { Language } from '../src/intents/language.ts';
import { agreed, type Opinion, type OpinionWeights, opinionOf } from '../src/intents/opinion.ts';
import { Match } from '../src/intents/recogniser.ts';
import { type Network, networkFrom, type WrittenNetwork } from '../src/intents/recurrent.ts';
import { tokensOf } from '../src/intents/token.ts';
import type { Intent } from '../src/kitchen/heard.ts';
import { filesOf, type Row } from '../test/corpus/load.ts';
import { contextOf, isPassive } from '../test/corpus/score.ts';
import {
  blockOf,
  blocksOfWords,
  cueIds,
  folds,
  option,
  shuffled,
  standsElsewhere,
} from './learn.ts';

export interface Line {
  row: Row;
  match: Match;
  /** What is said, each once: a line with several teaches that it may be any of them. */
  intents: readonly Intent[];
  block: number;
  fold: number;
}

export interface Model {
  weights: OpinionWeights;
  /** Every cue that adds anything, with what it adds. */
  byCue: ReadonlyMap<string, Float64Array>;
  known: ReadonlySet<string>;
  opinion(match: Match): readonly Opinion[];
}

const rounds = option('rounds', 12);
const decay = option('decay', 1e-3);
const least = option('least', 2);
const rate = option('rate', 0.15);
/** Which of several things a word of such a line speaks for is not known. */
const severalWeight = option('several', 0.5);
/** What adds less than this to any score is left out. */
const slight = option('slight', 0.2);

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

const intentsOf = (row: Row): readonly Intent[] =>
  row.origin === 'chatter' && isPassive(row)
    ? ['unrelated']
    : [...new Set(row.heard.map(({ intent }) => intent as Intent))];

/** The rules and learnt parts of the corpus; a file is one fold's as a whole, as a new cook is new in all that is said. */
export const taughtFiles = [...filesOf('rules'), ...filesOf('learnt')].map(({ rows }, at) => ({
  rows: rows.filter(({ language }) => language !== 'de'),
  fold: at % folds,
}));

export const taughtLines: readonly Line[] = taughtFiles
  .flatMap(({ rows, fold }) => rows.map((row) => ({ row, fold })))
  .map(({ row, fold }, at) => ({
    row,
    match: matchOf(row),
    intents: intentsOf(row),
    block: blockOf(at),
    fold,
  }));

const stemsOfLine = (line: string): string[] =>
  line
    .split(' ')
    .filter((word) => /^[a-z'-]+$/.test(word))
    .map(stemOfWord);

/** Stochastic descent with steps that shrink for each weight by how often it has moved (AdaGrad). */
export function learnOpinion(all: readonly Line[]): Model {
  const blocks = blocksOfWords(
    all.map(({ match, block }) => ({ words: stemsOfLine(match.line), block })),
  );
  const cued = all.map(({ match, block }) => opinionCues(match, standsElsewhere(blocks, block)));
  const ids = cueIds(cued, least);
  const intents = [...new Set(all.flatMap((line) => line.intents))].sort();
  const size = intents.length;
  const inputs = cued.map((cues) => cues.flatMap((cue) => ids.get(cue) ?? []));
  const wanted = all.map((line) => line.intents.map((intent) => intents.indexOf(intent)));
  const weight = new Float64Array(ids.size * size);
  const moved = new Float64Array(ids.size * size).fill(1e-6);
  const scores = new Float64Array(size);
  for (let round = 0; round < rounds; round++)
    for (const at of shuffled(all.length, round + 1)) {
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
      const meant = wanted[at]!;
      const counts = meant.length > 1 ? severalWeight : 1;
      for (let one = 0; one < size; one++) {
        const share = meant.includes(one) ? 1 / meant.length : 0;
        const error = (scores[one]! / sum - share) * counts;
        if (Math.abs(error) < 1e-4) continue;
        for (const cue of cues) {
          const place = cue * size + one;
          const slope = error + decay * weight[place]!;
          moved[place] = moved[place]! + slope * slope;
          weight[place] = weight[place]! - (rate * slope) / Math.sqrt(moved[place]!);
        }
      }
    }
  const byCue = new Map<string, Float64Array>();
  for (const [cue, id] of ids) {
    const row = centred(weight.subarray(id * size, (id + 1) * size));
    const told = row.flatMap((value, one) =>
      Math.abs(value) >= slight ? [one, Math.round(value * 10) / 10] : [],
    );
    if (told.length > 0) byCue.set(cue, Float64Array.from(told));
  }
  const known = new Set([...blocks].filter(([, at]) => at.size > 1).map(([stem]) => stem));
  const weights: OpinionWeights = { intents, addedBy: (cue) => byCue.get(cue) };
  return {
    weights,
    byCue,
    known,
    opinion: (match) =>
      opinionOf(
        opinionCues(match, (stem) => known.has(stem)),
        weights,
      ),
  };
}

/**
 * English by fold, each with a second opinion that no line of the fold has taught: or that would seem better
 * than it is to whatever learns from it.
 */
export const taughtByOthers = (): readonly Language[] =>
  Array.from({ length: folds }, (_, fold) => {
    const { opinion } = learnOpinion(taughtLines.filter((line) => line.fold !== fold));
    const network = networkTaughtByOthers(fold);
    return {
      ...english,
      opinionsOf: (match) => agreed(opinion(match), heardInOrder(network, match)),
    };
  });

function networkTaughtByOthers(fold: number): Network {
  const path = new URL(`../build/recurrent/fold-${fold}.json`, import.meta.url);
  if (!existsSync(path))
    throw new Error(
      'learn the networks first: scripts/recurrent-lines.ts, then train-recurrent.py',
    );
  return networkFrom(JSON.parse(readFileSync(path, 'utf8')) as WrittenNetwork);
}

/** What a cue adds to every score alike says nothing: with the middle one at nought most are small. */
function centred(row: Float64Array): number[] {
  const sorted = [...row].sort((a, b) => a - b);
  const middle = sorted[Math.floor(sorted.length / 2)]!;
  return [...row].map((value) => value - middle);
}
