/**
 * Learns the weights by which a text is taken to be meant for the helper, from the rules and learnt parts of the
 * corpus alone: logistic regression, the same to the last digit at every run. `--curve` prints what
 * cross-validation makes of them; `--write` writes src/intents/en/addressed-weights.ts.
 */
import { writeFileSync } from 'node:fs';
import { cuesOf, likelihoodOf, type Said } from '../src/intents/addressed.ts';
import { englishKinds } from '../src/intents/en/english.ts';
import { withoutColour } from '../src/intents/en/judge.ts';
import { saidIn } from '../src/intents/hear.ts';
import type { Row } from '../test/corpus/load.ts';
import { actsFalsely, contextOf, isPassive, right } from '../test/corpus/score.ts';
import {
  blocksOfWords,
  folds,
  inTwentieths,
  learnYesOrNo,
  option,
  standsElsewhere,
  wrapped,
} from './learn.ts';
import { taughtByOthers, taughtLines } from './opinion-model.ts';

interface Example {
  row: Row;
  said: Said;
  block: number;
  forHelper: boolean;
  /** Whether anything was heard that would be acted on. */
  acts: boolean;
  falsely: boolean;
  right: boolean;
  fold: number;
}

const passive = /^(unrelated|unclear|courtesy|acknowledge|emergency)$/;
const rounds = option('rounds', 25);
const decay = option('decay', 2e-2);
const least = option('least', 2);
const falseCost = option('cost', 1.5);
const silentShare = option('silent', 0.4);

const languages = taughtByOthers();

const examples: Example[] = taughtLines.map(({ row, block, fold }) => {
  const context = contextOf(row);
  const whole = saidIn(languages[fold]!, row.text, context)!;
  const said = { ...whole, placed: withoutColour(whole.placed, whole.opinions) };
  const heard = said.placed.map(({ meaning }) => ({ ...meaning, text: '' }));
  const list = (heard.length > 0 ? heard : [{ intent: 'unrelated', text: '' }]) as never;
  return {
    row,
    said,
    block,
    forHelper: !isPassive(row),
    acts: said.placed.some(({ meaning }) => !passive.test(meaning.intent)),
    falsely: actsFalsely(row, list),
    right: right(row, list),
    fold,
  };
});

/** The rows of chatter that may as well be answers ("uh huh") teach nothing. */
const teaches = (one: Example): boolean =>
  one.forHelper ? one.acts : one.row.or === undefined && one.row.heard[0]!.intent === 'unrelated';

const weightOf = (one: Example): number => (one.forHelper ? 1 : one.acts ? falseCost : silentShare);

const speakersOf = (all: readonly Example[]): Map<string, Set<number>> =>
  blocksOfWords(
    all
      .filter((one) => one.forHelper)
      .map(({ said, block }) => ({ words: said.line.split(' '), block })),
  );

/** A word is familiar to a line when it was said to the helper in another block than the line's. */
const cuesIn = (one: Example, blocks: ReadonlyMap<string, ReadonlySet<number>>): string[] =>
  cuesOf(one.said, englishKinds, standsElsewhere(blocks, one.block));

function learn(all: readonly Example[]): Map<string, number> {
  const blocks = speakersOf(all);
  const cases = all.filter(teaches).map((one) => ({
    cues: cuesIn(one, blocks),
    wanted: one.forHelper,
    counts: weightOf(one),
  }));
  return learnYesOrNo(cases, { rounds, decay, least });
}

function curve(): void {
  const scores = new Map<Example, number>();
  for (let fold = 0; fold < folds; fold++) {
    const others = examples.filter((one) => one.fold !== fold);
    const weights = learn(others);
    const blocks = speakersOf(others);
    for (const one of examples.filter((each) => each.fold === fold))
      scores.set(one, likelihoodOf(cuesIn(one, blocks), weights));
  }
  const talk = examples.filter((one) => one.row.origin === 'chatter');
  const fresh = talk.filter((one) => one.row.family.startsWith('overheard-'));
  const spoken = examples.filter((one) => one.row.origin !== 'chatter');
  const like = spoken.filter((one) => one.row.family.startsWith('like-'));
  const answered = spoken.filter((one) => one.right && one.forHelper && one.acts);
  const pc = (n: number, of: number): string => `${((100 * n) / of).toFixed(1)}`.padStart(6);
  console.log('threshold  false all  fresh  | spoken right  like | lost of right');
  for (const sure of [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95]) {
    const passes = (one: Example): boolean => scores.get(one)! >= sure;
    const acted = (list: Example[]): number =>
      list.filter((one) => one.falsely && passes(one)).length;
    const stays = (list: Example[]): number =>
      list.filter((one) => one.right && (!one.acts || passes(one) || !one.forHelper)).length;
    console.log(
      `${sure.toFixed(2).padStart(6)}  ${pc(acted(talk), talk.length)} ${pc(acted(fresh), fresh.length)}   | ${pc(stays(spoken), spoken.length)} ${pc(stays(like), like.length)} | ${answered.filter((one) => !passes(one)).length}`,
    );
    if (sure === option('show', -1)) {
      for (const one of answered) if (!passes(one)) console.log('  lost', one.row.text);
      for (const one of talk) if (one.falsely && passes(one)) console.log('  acted', one.row.text);
    }
  }
}

if (process.argv.includes('--curve')) curve();

function write(): void {
  const familiar = [...speakersOf(examples).keys()].filter((word) => /^[a-z]/.test(word)).sort();
  const folder = new URL('../src/intents/en/', import.meta.url);
  writeFileSync(
    new URL('addressed-weights.ts', folder),
    `/** Learnt from the rules and learnt parts of the corpus by scripts/train-addressed.ts: do not edit by hand. */
import { type Weights, weightsFrom } from '../addressed.ts';

export const weights: Weights = weightsFrom(\`
${inTwentieths(learn(examples), 2)}\`);

/** Words that have been said to the helper. */
export const familiar: ReadonlySet<string> = new Set(
  \`${wrapped(familiar.join(' '))}\`.split(/\\s+/),
);
`,
  );
}

if (process.argv.includes('--write')) write();
