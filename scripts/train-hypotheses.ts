/**
 * Learns what speaks for one way to hear a text, from the rules and learnt parts of the corpus alone, the same to the
 * last digit at every run: the ways that come to what was meant against the others, as a softmax over each
 * text's ways. A text is heard with a second opinion that no line of its file has taught, or that would seem
 * better than it is with somebody new. `--curve` prints what cross-validation over files makes of it, `--score` counts the
 * scored half; `--write` writes src/intents/en/hypothesis-weights.ts.
 */
import { writeFileSync } from 'node:fs';
import { english, englishKinds } from '../src/intents/en/english.ts';
import { cuesOfHypothesis } from '../src/intents/en/rescoring.ts';
import { hearingsOf } from '../src/intents/hear.ts';
import { hypothesesOf, isPlain } from '../src/intents/hypotheses.ts';
import type { Language } from '../src/intents/language.ts';
import type { Placed } from '../src/intents/placed.ts';
import { asHeard } from '../src/intents/read.ts';
import { filesOf, type Row } from '../test/corpus/load.ts';
import {
  actsFalsely,
  contextOf,
  isPassive,
  right,
  scoredRows,
  tellsNumber,
} from '../test/corpus/score.ts';
import { cueIds, inTwentieths, option, shuffled } from './learn.ts';
import { taughtByOthers, taughtFiles } from './opinion-model.ts';
import { putTogether } from './put-together.ts';

const rounds = option('rounds', 8);
const decay = option('decay', 5e-3);
const rate = option('rate', 0.1);
const least = option('least', 5);
/** A deed that nobody asked for costs more than one that must be asked for twice. */
const talkCounts = option('talk', 14);
const togetherCounts = option('together', 0.3);
const head = option('head', english.rescoring!.head);

interface Said {
  row: Row;
  fold: number;
  counts: number;
}
interface Way {
  cues: readonly string[];
  right: boolean;
  falsely: boolean;
}
interface Choice extends Said {
  ways: readonly Way[];
}

const told: Said[] = taughtFiles.flatMap(({ rows, fold }) =>
  rows.map((row) => ({ row, fold, counts: isPassive(row) ? talkCounts : 1 })),
);
const together: Said[] = taughtFiles.flatMap(({ rows, fold }) =>
  putTogether(
    rows.map((row) => ({ row })),
    { count: Math.round(rows.length / 4), joints: [' ', ' and ', ', ', '. '], alike: () => '' },
  ).map(({ row }) => ({ row, fold, counts: togetherCounts })),
);

const cuesFor = cuesOfHypothesis(englishKinds);
function choiceOf(said: Said, language: Language): Choice {
  const hearings = hearingsOf(language, said.row.text, contextOf(said.row));
  if (!hearings) return { ...said, ways: [] };
  const asItStands = language.addressed(hearings.asItStands.said);
  const all = isPlain(english.rescoring!, hearings, asItStands)
    ? []
    : hypothesesOf(language, english.rescoring!, hearings, asItStands);
  const ways = (all.length > 0 ? all : [undefined]).map((way) => {
    const heard = heardIn(way?.placed ?? asItStands);
    return {
      cues: way ? cuesFor(way, hearings.opinionsOf) : [],
      right: right(said.row, heard),
      falsely: actsFalsely(said.row, heard),
    };
  });
  return { ...said, ways };
}

function heardIn(placed: readonly Placed[]) {
  const heard = placed.flatMap(({ meaning }) => asHeard(meaning, '') ?? []);
  return heard.length > 0 ? heard : [{ intent: 'unrelated' as const, text: '' }];
}

type Weights = ReadonlyMap<string, number>;

function learn(all: readonly Choice[]): Weights {
  const choices = all.filter(
    ({ ways }) => ways.some((way) => way.right) && ways.some((way) => !way.right),
  );
  const ids = cueIds(
    choices.flatMap(({ ways }) => ways.map(({ cues }) => cues)),
    least,
  );
  const rows = choices.map(({ ways }) =>
    ways.map(({ cues }) => cues.flatMap((cue) => ids.get(cue) ?? [])),
  );
  const weight = new Float64Array(ids.size);
  const moved = new Float64Array(ids.size).fill(1e-6);
  for (let round = 0; round < rounds; round++)
    for (const at of shuffled(choices.length, round + 1)) {
      const { ways, counts } = choices[at]!;
      const worth = rows[at]!.map((row) => row.reduce((sum, id) => sum + weight[id]!, 0));
      const high = Math.max(...worth);
      const raised = worth.map((one) => Math.exp(one - high));
      const sum = raised.reduce((total, one) => total + one, 0);
      const rightSum = raised.reduce((total, one, way) => total + (ways[way]!.right ? one : 0), 0);
      const slopes = new Map<number, number>();
      rows[at]!.forEach((row, way) => {
        const wanted = ways[way]!.right ? raised[way]! / rightSum : 0;
        const error = (raised[way]! / sum - wanted) * counts;
        for (const id of row) slopes.set(id, (slopes.get(id) ?? 0) + error);
      });
      for (const [id, error] of slopes) {
        const slope = error + decay * weight[id]!;
        moved[id] = moved[id]! + slope * slope;
        weight[id] = weight[id]! - (rate * slope) / Math.sqrt(moved[id]!);
      }
    }
  return new Map([...ids].map(([cue, id]) => [cue, weight[id]!]));
}

const chosen = ({ ways }: Choice, weights: Weights): Way | undefined => {
  const worth = ways.map(({ cues }, at) =>
    cues.reduce((sum, cue) => sum + (weights.get(cue) ?? 0), at === 0 ? head : 0),
  );
  return ways[worth.indexOf(Math.max(...worth))];
};

function report(name: string, choices: readonly Choice[], weights: Weights): void {
  const share = (
    list: readonly Choice[],
    holds: (way: Way | undefined) => boolean,
    pick = (one: Choice) => chosen(one, weights),
  ): string =>
    `${((100 * list.filter((one) => holds(pick(one))).length) / list.length).toFixed(1)} %`;
  const isRight = (way: Way | undefined): boolean => way?.right ?? false;
  const first = ({ ways }: Choice): Way | undefined => ways[0];
  const talk = choices.filter(({ row }) => isPassive(row));
  const several = choices.filter(({ row }) => row.heard.length > 1);
  const numbers = choices.filter(({ row }) => tellsNumber(row));
  for (const [how, pick] of [
    ['as it stands', first],
    ['chosen', undefined],
  ] as const)
    console.log(
      `${name.padEnd(10)} ${String(choices.length).padStart(6)} ${how.padEnd(13)} right ${share(choices, isRight, pick)}, of several things ${share(several, isRight, pick)}, with numbers ${share(numbers, isRight, pick)}, false actions ${share(talk, (way) => way?.falsely ?? false, pick)}`,
    );
  console.log(
    `${name.padEnd(10)} any way right ${share(choices, isRight, ({ ways }) => ways.find((way) => way.right))}`,
  );
}

const languages = taughtByOthers();
const choices = [...told, ...together].map((said) => choiceOf(said, languages[said.fold]!));

if (process.argv.includes('--curve'))
  for (const fold of [1, 3])
    report(
      `fold ${fold}`,
      choices.filter((one) => one.fold === fold && told.some(({ row }) => row === one.row)),
      learn(choices.filter((one) => one.fold !== fold)),
    );
const weights = learn(choices);
if (process.argv.includes('--score')) {
  report(
    'scored',
    scoredRows.map((row) => choiceOf({ row, fold: 0, counts: 1 }, english)),
    weights,
  );
  report(
    'unread',
    filesOf('waiting')
      .flatMap(({ rows }) => rows)
      .map((row) => choiceOf({ row, fold: 0, counts: 1 }, english)),
    weights,
  );
}

function write(): void {
  writeFileSync(
    new URL('../src/intents/en/hypothesis-weights.ts', import.meta.url),
    `/** Learnt from the rules and learnt parts of the corpus by scripts/train-hypotheses.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const hypothesisWeights: Weights = weightsFrom(\`
${inTwentieths(weights, 1)}\`);
`,
  );
}

if (process.argv.includes('--write')) write();
