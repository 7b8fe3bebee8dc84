/**
 * The cues by which a second opinion is formed on English: words by their stems, with names of dishes,
 * things, people and quantities drawn together to their kinds, alone and two by two,
 * and with what other words every word is like.
 */
import { oncePer } from '../../base/once.ts';
import type { Lexicon } from '../../kitchen/heard.ts';
import { stemOf, stemsOf } from '../names.ts';
import type { Quantity } from '../quantity.ts';
import type { Match } from '../recogniser.ts';
import { isStop } from '../token.ts';
import { persons } from './addressed.ts';
import { stemOfVerb } from './steps.ts';
import { wordKinds } from './word-kinds.ts';

/** Whether a stem is one that the weights know. */
export type IsKnown = (stem: string) => boolean;

const mark = /^<[a-z]\d+>$/;
export const isQuantity = (word: string): boolean => mark.test(word);

/** The words of a line and those of its stops that say how it is meant. */
export const wordsOfMatch = ({ line }: Match): string[] =>
  line.split(' ').filter((word) => word !== '' && !/^[;:|]$/.test(word));

export const stemOfWord = (word: string): string => stemOfVerb(stemOf(word)) || word;

interface NameStems {
  dishes: ReadonlySet<string>;
  things: ReadonlySet<string>;
}

/** Words that name things, but mean more than one when they stand alone. */
const plain = new Set(
  'roast rib leg top side brown cream warm green red wine pan dinner roll water butter salt the put take cut out of in on with for and oven finish half whole small new large board hot cold dry fine quick bottom string back stand beat plate cook fat bone'.split(
    ' ',
  ),
);

const stemsIn = oncePer((lexicon: Lexicon): NameStems => {
  const words = (things: Lexicon['dishes']): Set<string> =>
    new Set(
      things.flatMap((thing) =>
        thing.names.flatMap((name) => stemsOf(name).filter((stem) => !plain.has(stem))),
      ),
    );
  return {
    dishes: words(lexicon.dishes),
    things: words([...lexicon.ingredients, ...lexicon.tools]),
  };
});

/** What speaks for one meaning of a clause or another; each cue once. */
export function opinionCues(match: Match, isKnown: IsKnown): string[] {
  const { context } = match;
  const names = stemsIn(context.lexicon);
  const words = wordsOfMatch(match);
  const cues = new Set<string>(['always']);
  const kinds: string[] = [];
  for (const word of words) {
    // What has not been said before may be like what has.
    for (const like of wordKinds.get(word) ?? []) cues.add(`@${like}`);
    const kind = kindOf(word, match, names, isKnown);
    if (kind === kinds.at(-1) && /^[A-Z]/.test(kind)) continue;
    kinds.push(kind);
    cues.add(kind);
    if (/^[A-Z]/.test(kind) && isKnown(stemOfWord(word))) cues.add(`'${stemOfWord(word)}`);
  }
  const padded = ['^', ...kinds.filter((kind) => !/^[,!.]$/.test(kind)), '$'];
  for (let at = 0; at + 1 < padded.length; at++) cues.add(`${padded[at]}_${padded[at + 1]}`);
  for (let at = 0; at + 2 < padded.length; at++) cues.add(`${padded[at]}_*_${padded[at + 2]}`);
  cues.add(`#words${Math.min(9, padded.length - 2)}`);
  const stage = /^(sear|low-roast|rest|hold)$/.test(context.stage ?? '') ? 'in' : context.stage;
  if (context.stage) cues.add(`#stage:${stage}`);
  if (context.expecting) cues.add(`#asked:${context.expecting}`);
  if (context.paused) cues.add('#paused');
  if (match.isOfAMoment) cues.add('#ago');
  return [...cues];
}

/** The kind of a word in a line: a quantity's, a person's, a dish's or a thing's, or else its stem. */
export const kindOfWordIn = (word: string, match: Match, isKnown: IsKnown): string =>
  kindOf(word, match, stemsIn(match.context.lexicon), isKnown);

function kindOf(word: string, match: Match, names: NameStems, isKnown: IsKnown): string {
  if (isQuantity(word)) return kindOfQuantity(match.quantityOfMark(word), match);
  if (isStop(word)) return word;
  if (persons.test(word)) return 'P';
  const stem = stemOfWord(word);
  const noun = stemOf(word);
  if (names.dishes.has(noun)) return 'DISH';
  if (names.things.has(noun)) return 'THING';
  return isKnown(stem) ? stem : 'U';
}

/** A quantity by its kind and by what it could be of. */
function kindOfQuantity(quantity: Quantity | undefined, match: Match): string {
  if (quantity === undefined) return 'N';
  if (quantity.kind !== 'number' && quantity.kind !== 'temperature') return `N${quantity.kind}`;
  const unit =
    (quantity.kind === 'temperature' ? quantity.unit : undefined) ??
    match.context.units.temperature;
  const fahrenheit = unit === 'F' ? quantity.value : quantity.value * 1.8 + 32;
  const size =
    fahrenheit >= 215
      ? 'oven'
      : quantity.value <= 12
        ? 'few'
        : fahrenheit >= 68 && fahrenheit <= 165
          ? 'core'
          : 'some';
  return `N${quantity.kind === 'temperature' ? 'degrees' : ''}:${size}`;
}
