/**
 * Writes the lines that `train-recurrent.py` learns from, as the network is given them, with the fold each
 * is in, to build/recurrent/lines.json: those of the rules and learnt parts of the corpus.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { recurrentInput } from '../src/intents/en/recurrent-input.ts';
import { wordKinds } from '../src/intents/en/word-kinds.ts';
import { taughtLines } from './opinion-model.ts';

mkdirSync('build/recurrent', { recursive: true });
writeFileSync(
  'build/recurrent/lines.json',
  JSON.stringify({
    listed: [...wordKinds.keys()],
    lines: taughtLines.map(({ match, intents, fold }) => ({
      ...recurrentInput(match),
      intents,
      fold,
    })),
  }),
);
process.stdout.write(`${taughtLines.length} lines\n`);
