/**
 * Learns where a new sentence begins in speech without stops, from the rules and learnt parts of the corpus alone:
 * from texts whose stops were left out, and from single texts put together by seeded dice.
 * `--curve` prints how often a stop is found; `--write` writes src/intents/en/breath-weights.ts.
 */
import { writeFileSync } from 'node:fs';
import { likelihoodOf } from '../src/intents/addressed.ts';
import { lineOf } from '../src/intents/clause.ts';
import { breathCues } from '../src/intents/en/breath-cues.ts';
import { english } from '../src/intents/en/english.ts';
import { knownStems } from '../src/intents/en/opinion-weights.ts';
import { Match } from '../src/intents/recogniser.ts';
import { tokensOf } from '../src/intents/token.ts';
import type { Row } from '../test/corpus/load.ts';
import { contextOf, taughtRows } from '../test/corpus/score.ts';
import { type Case, foldOf, inTwentieths, learnYesOrNo, option } from './learn.ts';
import { putTogether, withoutStops } from './put-together.ts';

/** A text without stops, and where they stood: places in it. */
interface Run {
  row: Row;
  text: string;
  stops: readonly number[];
  fold: number;
}

const isKnown = (stem: string): boolean => knownStems.has(stem);

const spoken = taughtRows.filter((row) => row.language !== 'de');
const stopped: Run[] = spoken
  .map((row, at) => ({ row, ...withoutStops(row.text), fold: foldOf(at) }))
  .filter(
    ({ row, stops, text }) =>
      stops.length > 0 || (row.heard.length === 1 && text.split(' ').length <= 12),
  );

interface Gap extends Case {
  fold: number;
}
function gapsOf({ row, text, stops, fold }: Run): Gap[] {
  const context = contextOf(row);
  const { tokens, quantities } = english.prepare(tokensOf(text), context);
  if (tokens.length < 2) return [];
  const line = lineOf(tokens);
  const match = new Match({ groups: {}, context, line, whole: line, before: [], quantities });
  return breathCues(
    match,
    tokens.map(({ word }) => word),
    isKnown,
  ).map((cues, gap) => {
    const [before, after] = [tokens[gap]!, tokens[gap + 1]!];
    return {
      cues,
      fold,
      counts: 1,
      wanted: stops.some((stop) => stop > before.from && stop <= after.from && stop >= before.to),
    };
  });
}

const rounds = option('rounds', 8);
const decay = option('decay', 5e-3);
const least = option('least', 5);
/** Single texts side by side, as if said in one breath. */
const together: Run[] = putTogether(
  spoken.map((row, at) => ({ row, fold: foldOf(at) })),
  {
    count: option('together', 12_000),
    joints: [' ', ' ', ' ', ' and '],
    alike: ({ fold }) => `${fold}`,
  },
).map(({ row, joins, of }) => {
  const { text, stops } = withoutStops(row.text);
  return { row, text, stops: [...stops, ...joins], fold: of.fold };
});
const runs = [...stopped, ...together];
const gaps = runs.map(gapsOf);
if (process.argv.includes('--curve')) {
  const judged: { likely: number; wanted: boolean; rank: number; together: boolean }[] = [];
  for (const fold of [0, 1]) {
    const weights = learnYesOrNo(
      gaps.flat().filter((one) => one.fold !== fold),
      { rounds, decay, least },
    );
    gaps.forEach((list, at) => {
      if (runs[at]!.fold !== fold) return;
      const scored = list
        .map((one) => ({ likely: likelihoodOf(one.cues, weights), wanted: one.wanted }))
        .sort((a, b) => b.likely - a.likely);
      judged.push(...scored.map((one, rank) => ({ ...one, rank, together: at >= stopped.length })));
    });
  }
  for (const together of [false, true]) {
    const list = judged.filter((one) => one.together === together);
    const all = list.filter((one) => one.wanted).length;
    console.log(together ? 'put together' : 'stops left out', 'gaps', list.length, 'stops', all);
    for (const sure of [0.1, 0.2, 0.3, 0.5, 0.7, 0.9]) {
      const named = list.filter((one) => one.likely >= sure);
      const right = named.filter((one) => one.wanted).length;
      console.log(
        `  ${sure} found ${((100 * right) / all).toFixed(1)} % of them ${((100 * right) / named.length).toFixed(1)} right`,
      );
    }
    for (const top of [1, 2, 3])
      console.log(
        `  among the first ${top}: ${((100 * list.filter((one) => one.wanted && one.rank < top).length) / all).toFixed(1)} %`,
      );
  }
}

function write(): void {
  const learnt = inTwentieths(learnYesOrNo(gaps.flat(), { rounds, decay, least }), 7);
  writeFileSync(
    new URL('../src/intents/en/breath-weights.ts', import.meta.url),
    `/** Learnt from the rules and learnt parts of the corpus by scripts/train-breaths.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const breathWeights: Weights = weightsFrom(\`
${learnt}\`);
`,
  );
}

if (process.argv.includes('--write')) write();
