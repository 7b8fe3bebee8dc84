/**
 * Learns the weights of the second opinion from the rules and learnt parts of the corpus alone, the same to the
 * last digit at every run. `--curve` prints what cross-validation makes of them; `--write` writes
 * src/intents/en/opinion-weights.ts.
 */
import { writeFileSync } from 'node:fs';
import { agreed } from '../src/intents/opinion.ts';
import { folds, wrapped } from './learn.ts';
import { learnOpinion, type Model, taughtLines } from './opinion-model.ts';

const lines = taughtLines;

function curve(): void {
  const judged = Array.from({ length: folds }, (_, fold) => fold).flatMap((fold) => {
    const model = learnOpinion(lines.filter((line) => line.fold !== fold));
    return lines
      .filter((line) => line.fold === fold && line.intents.length === 1)
      .map((line) => ({
        wanted: line.intents[0]!,
        ...agreed(model.opinion(line.match), undefined)[0]!,
      }));
  });
  const spoken = judged.filter(({ wanted }) => wanted !== 'unrelated');
  const talk = judged.filter(({ wanted }) => wanted === 'unrelated');
  console.log(`cross-validated on ${spoken.length} spoken lines and ${talk.length} overheard`);
  console.log('likelihood  right  wrong | taken for something, of overheard');
  for (const sure of [0, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9]) {
    const named = (one: (typeof judged)[number]): boolean =>
      one.likelihood >= sure && !/^(unrelated|unclear)$/.test(one.intent);
    const share = (count: number, of: number): string =>
      `${((100 * count) / of).toFixed(1)} %`.padStart(7);
    const right = spoken.filter((one) => named(one) && one.intent === one.wanted).length;
    const wrong = spoken.filter((one) => named(one) && one.intent !== one.wanted).length;
    console.log(
      `${sure.toFixed(2).padStart(6)}  ${share(right, spoken.length)} ${share(wrong, spoken.length)} | ${share(talk.filter(named).length, talk.length)}`,
    );
  }
}

const pairsOf = (flat: Float64Array): [intent: number, weight: number][] =>
  Array.from({ length: flat.length / 2 }, (_, at) => [flat[2 * at]!, flat[2 * at + 1]!]);

/** Each cue with its weights in tenths, every one after the index of its intent: "turn 12:15,31:-4". */
function write({ weights, byCue, known }: Model): void {
  const cues = [...byCue]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([cue, list]) =>
      [cue, pairsOf(list).map(([intent, weight]) => `${intent}:${Math.round(weight * 10)}`)].join(
        ' ',
      ),
    );
  const folder = new URL('../src/intents/en/', import.meta.url);
  writeFileSync(
    new URL('opinion-weights.ts', folder),
    `/** Learnt from the rules and learnt parts of the corpus by scripts/train-opinion.ts: do not edit by hand. */
import type { Intent } from '../../kitchen/heard.ts';
import { unpacked } from '../opinion.ts';

const intents = \`${wrapped(weights.intents.join(' '))}\`.split(/\\s+/) as Intent[];

/** A cue, then tenths by the index of their intent. */
const learnt = \`
${wrapped(cues.join(' '))}\`;

export const opinionWeights = unpacked(intents, learnt);

/** Stems that have been said before. */
export const knownStems: ReadonlySet<string> = new Set(
  \`${wrapped([...known].sort().join(' '))}\`.split(/\\s+/),
);
`,
  );
}

if (process.argv.includes('--curve')) curve();
if (process.argv.includes('--write')) write(learnOpinion(lines));
