/** What of an English clause the recurrent network is given: its words in their order, and the situation. */
import type { Opinion } from '../opinion.ts';
import type { Match } from '../recogniser.ts';
import type { HeardWord, Network } from '../recurrent.ts';
import { kindOfWordIn, stemOfWord } from './opinion-cues.ts';

export interface RecurrentInput {
  words: readonly HeardWord[];
  cues: readonly string[];
}

export function recurrentInput(match: Match): RecurrentInput {
  const { stage, expecting, paused } = match.context;
  const happened = match.minutesAgo !== undefined || match.at !== undefined;
  return {
    words: match.line
      .split(' ')
      .filter((word) => word !== '' && !/^[;:|]$/.test(word))
      .map((word) => heardWord(word, match)),
    cues: [
      `stage:${stage ?? ''}`,
      `asked:${expecting ?? ''}`,
      ...(paused ? ['paused'] : []),
      ...(happened ? ['ago'] : []),
    ],
  };
}

function heardWord(word: string, match: Match): HeardWord {
  const kind = kindOfWordIn(word, match, () => true);
  // A quantity is what it could be of; which one it is says nothing.
  if (/^<[a-z]\d+>$/.test(word)) return { stem: kind, word: '', kind: '' };
  return { stem: stemOfWord(word), word, kind: /^(P|DISH|THING)$/.test(kind) ? kind : '' };
}

/** What the network takes a clause for; undefined where there is no word in it. */
export function heardInOrder(network: Network, match: Match): readonly Opinion[] | undefined {
  const { words, cues } = recurrentInput(match);
  const likelihoods = network.likelihoods(words, cues);
  return (
    likelihoods && network.intents.map((intent, at) => ({ intent, likelihood: likelihoods[at]! }))
  );
}
