/** What of an English clause the recurrent network is given: its words in their order, and the situation. */
import { oncePer } from '../../base/once.ts';
import type { Intent, Lexicon } from '../../kitchen/heard.ts';
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

/** So many different words are kept; a household says no more in an evening. */
const keptHigh = 2000;
const keptIn = oncePer((_: Lexicon) => new Map<string, HeardWord>());

/** The same word of the same kitchen is the same object, as often as it is said. */
function heardWord(word: string, match: Match): HeardWord {
  // A quantity is what it could be of; which one it is says nothing.
  const stem = /^<[a-z]\d+>$/.test(word) ? kindOfWordIn(word, match, known) : undefined;
  const kept = keptIn(match.context.lexicon);
  const before = kept.get(stem ?? word);
  if (before) return before;
  const kind = stem === undefined ? kindOfWordIn(word, match, known) : '';
  const made =
    stem === undefined
      ? { stem: stemOfWord(word), word, kind: /^(P|DISH|THING)$/.test(kind) ? kind : '' }
      : { stem, word: '', kind: '' };
  if (kept.size >= keptHigh) kept.clear();
  kept.set(stem ?? word, made);
  return made;
}

const known = (): boolean => true;

const indexIn = oncePer(
  ({ intents }: Network) => new Map(intents.map((intent, at) => [intent, at])),
);

/** How likely the network takes a clause for an intent; undefined where there is no word in it. */
export function heardInOrder(
  network: Network,
  match: Match,
): ((intent: Intent) => number) | undefined {
  const { words, cues } = recurrentInput(match);
  const likelihoods = network.likelihoods(words, cues);
  const at = indexIn(network);
  return likelihoods && ((intent) => likelihoods[at.get(intent) ?? -1] ?? 0);
}
