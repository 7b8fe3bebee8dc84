/** What of an English clause the recurrent network is given: its words in their order, and the situation. */
import { oncePer } from '../../base/once.ts';
import type { Intent, Lexicon } from '../../kitchen/heard.ts';
import type { Match } from '../recogniser.ts';
import type { HeardWord, Network } from '../recurrent.ts';
import { isQuantity, kindOfWordIn, stemOfWord, wordsOfMatch } from './opinion-cues.ts';

export interface RecurrentInput {
  words: readonly HeardWord[];
  cues: readonly string[];
}

export function recurrentInput(match: Match): RecurrentInput {
  const { stage, expecting, paused } = match.context;
  return {
    words: wordsOfMatch(match).map((word) => heardWord(word, match)),
    cues: [
      `stage:${stage ?? ''}`,
      `asked:${expecting ?? ''}`,
      ...(paused ? ['paused'] : []),
      ...(match.isOfAMoment ? ['ago'] : []),
    ],
  };
}

/** So many different words are kept; a household says no more in an evening. */
const keptHigh = 2000;
const keptIn = oncePer((_: Lexicon) => new Map<string, HeardWord>());

/** The same word of the same kitchen is the same object, as often as it is said. */
function heardWord(word: string, match: Match): HeardWord {
  // A quantity is what it could be of; which one it is says nothing.
  const quantity = isQuantity(word) ? kindOfWordIn(word, match, isKnown) : undefined;
  const kept = keptIn(match.context.lexicon);
  const before = kept.get(quantity ?? word);
  if (before) return before;
  const made =
    quantity === undefined ? wordIn(word, match) : { stem: quantity, word: '', kind: '' };
  if (kept.size >= keptHigh) kept.clear();
  kept.set(quantity ?? word, made);
  return made;
}

function wordIn(word: string, match: Match): HeardWord {
  const kind = kindOfWordIn(word, match, isKnown);
  return { stem: stemOfWord(word), word, kind: /^(P|DISH|THING)$/.test(kind) ? kind : '' };
}

const isKnown = (): boolean => true;

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
