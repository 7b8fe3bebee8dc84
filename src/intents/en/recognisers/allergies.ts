/** Several things that one guest must not have, which an "and" would tear apart: each is noted by itself. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { commonWords } from '../common-words.ts';
import { phrases } from '../vocabulary.ts';

const minded =
  /^(tree nuts?|nuts?|peanuts?|almonds?|walnuts?|hazelnuts?|cashews?|dairy|milk|lactose|butter|cream|cheese|gluten|wheat|flour|eggs?|shellfish|seafood|prawns?|shrimps?|crab|lobster|crustaceans?|molluscs?|mussels?|oysters?|mustard|garlic|onions?|celery|soya?|soy|sesame|fish|anchov(y|ies)|lupin|sulph?fites?|wine|mushrooms?|peppers?|tomato(es)?)$/;

/** A food beside one that guests mind: a word of no other talk. */
const isFood = (words: string): boolean =>
  minded.test(words) ||
  !(
    words.includes(' ') ||
    commonWords.has(words) ||
    /^(allerg|intoleran|please|though)/.test(words)
  );

/** "My sister is vegetarian and doesn't eat eggs": of whom the words before the "and" speak. */
const spokenOf = (match: Match): string | undefined =>
  /(?:^| )(?:my |our |the )?([a-z]+) (?:is|are|has|have) /.exec(match.whole)?.[1];

function whoIn(match: Match): string | undefined {
  const said = match.words('who').replace(/^(my|our|the) /, '');
  if (/^(i|me|myself)$/.test(said)) return 'you';
  if (/^(and|but|also)$/.test(said)) return spokenOf(match);
  return /^(we|it|who|nobody|anyone|that|this|there|is|are|so|both|or|)$/.test(said)
    ? undefined
    : said;
}

function notesOf(match: Match): Meaning[] | undefined {
  const values = ['x', 'y', 'z'].map((slot) => match.words(slot)).filter((words) => words !== '');
  const who = whoIn(match);
  if (who === undefined || !values.some((value) => minded.test(value))) return undefined;
  if (!values.every(isFood)) return undefined;
  return values.map((value) => ({ intent: 'note-guest', who, need: 'allergy', value }));
}

/** Two or three things: "x and y", "x, y and z". */
const lists = [
  '{x:thing} (and|or|nor|,) [a|an|to|also to] {y:thing}',
  '{x:thing} (and|or|,) [a|to] {y:thing} (and|or|,) [a|to] {z:thing}',
  '{x:thing} , [a|to] {y:thing} , (and|or) [a|to] {z:thing}',
];

const toldOf = (list: string): string[] => [
  `{who:word} (is|are|am) [also|both|very|badly|severely] (allergic to|intolerant to|intolerant of) ${list} [.] $`,
  `{who:word} (can not|must not|does not|do not|should not|may not) (eat|have|touch|do|tolerate|handle) [any] ${list} [.] $`,
  `{who:word} (has|have|has got|got) (a|an) [bad|severe|serious] ${list} (allergy|intolerance|allergies) [.] $`,
];

export const allergies: Recogniser = {
  name: 'allergies',
  moods: ['statement', 'negative', 'intention'],
  phrases: phrases(
    [
      ...lists.flatMap(toldOf),
      '{who:word} (has|have|has got|got) (a|an) [bad|severe|serious] {x:thing} (allergy|intolerance) (and|,|as well as) (a|an) [bad|severe|serious] {y:thing} (allergy|intolerance) [.] $',
      'no {x:thing} (and|or|,) [no] {y:thing} for [my|our|the] {who:word} [.] $',
      // The cook eats too.
      '^ {who:word} am [very|badly|severely] (allergic to|intolerant to|intolerant of) {x:thing} [.] $',
    ],
    notesOf,
  ),
};
