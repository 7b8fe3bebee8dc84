/**
 * Slips of the fingers in the words a dinner cannot do without: letters swapped, one left out or one
 * doubled. Only a word that no phrase and no card knows is ever taken for another.
 */
import type { Token } from '../token.ts';

/** The words worth mending: what a phrase would hang on. */
const mended =
  `dinner supper lunch oven temperature thermometer probe roast potatoes potato power what what's next done ready
  reads reading turned turn down medium guests people minutes degrees celsius fahrenheit timer cancel remind tell
  middle centre center carve carving gravy butter beans carrots finished started resting pounds kilos people
  late early serving rare skip undo repeat options plan schedule preheated`.split(/\s+/);

const byShape = new Map<string, string>();
for (const word of mended) {
  for (let at = 0; at < word.length; at++) {
    // One letter left out: never the first, by which a word is known.
    if (at > 0 && word.length > 4) add(word.slice(0, at) + word.slice(at + 1), word);
    if (at + 1 < word.length && word[at] !== word[at + 1])
      add(word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2), word);
    if (word.length > 3) add(word.slice(0, at) + word[at] + word[at] + word.slice(at + 1), word);
  }
}
for (const short of ['nxt', 'nex']) byShape.set(short, 'next');

function add(shape: string, word: string): void {
  if (!byShape.has(shape)) byShape.set(shape, word);
}

/** Words of one missing letter that are words themselves. */
const words =
  /^(red|rare|ret|don|doe|one|own|our|over|ove|oen|tuned|tune|tuner|diner|dinner|rest|rats|rear|read|real|red|peole|pople|pant|pan|pla|lat|ate|eat|art|ear|earl|earn|late|lte|tell|tel|tall|til|ski|kip|dow|don|own|din|dow|wat|hat|tat|that|nest|text|net|beas|bens|bean|butte|gray|grav|cave|crave|carvin|star|stated|stared|tied|timer|tier|time|guess|gust|gusts|mile|minute|mnutes|pounds|ponds|round|sound|kilo|serving|string|sing|starting)$/;

/** The same tokens, with slips mended where `known` has never heard of the word. */
export function withoutTypos(tokens: readonly Token[], known: (word: string) => boolean): Token[] {
  return tokens.map((token) => {
    // "sittin", "gettin": the g that is not said.
    if (/[a-z]{2}in$/.test(token.word) && !known(token.word) && known(`${token.word}g`))
      return { ...token, word: `${token.word}g` };
    const instead = byShape.get(token.word);
    if (instead === undefined || words.test(token.word) || known(token.word)) return token;
    return { ...token, word: instead };
  });
}
