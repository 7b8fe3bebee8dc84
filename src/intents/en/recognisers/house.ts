/** What is in the house already, and need not be bought. */
import { oncePer } from '../../../base/once.ts';
import type { Lexicon } from '../../../kitchen/heard.ts';
import { stemsOf, stemsOfNames } from '../../names.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishExactlyIn, dishIn, goodsOf } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

/** Every name of what the cards take or use, as stems. */
const namesOfGoods = oncePer((lexicon: Lexicon): readonly string[] =>
  goodsOf(lexicon).flatMap((one) =>
    [stemsOf(one.id), ...stemsOfNames(one)].map((stems) => stems.join(' ')),
  ),
);

/** The ingredient of the cards that words name in full, or by its last or first word. */
function ingredientNamed(words: string, match: Match): string | undefined {
  const wanted = stemsOf(words).join(' ');
  if (wanted === '') return undefined;
  const isNamed = namesOfGoods(match.context.lexicon).some(
    (name) => name === wanted || name.endsWith(` ${wanted}`) || name.startsWith(`${wanted} `),
  );
  return isNamed ? words : undefined;
}

/** Whether what is in the house is a cut to roast, by a name of more than "roast" or "meat". */
function roastNamed(match: Match): boolean {
  const words = match
    .words('thing')
    .replace(/^((a|an|the|my|our|one|nice|big|lovely|small) )+/, '');
  return (
    words.includes(' ') &&
    match.context.lexicon.cuts.some((cut) => cut.names.some((name) => name.toLowerCase() === words))
  );
}

const participle =
  /^(made|done|put|got|taken|started|finished|been|left|cut|washed|scrubbed|peeled|prepared|seasoned|salted|dried|turned|checked|not|no|to|a (problem|question|feeling)|two|three)\b/;

/** "A jar of horseradish" is horseradish. */
const packed =
  /^((whole|half|big|little|old|new|spare|last) )*(half a )?(jar|tin|can|packet|pack|bag|bottle|bunch|tub|lump|block|carton|pot|box|head|bulb|tube|sack) of /;

/** What is in the house; without a word that says so, only what a card asks for and no dish is. */
const inTheHouse =
  (surely: boolean) =>
  (match: Match): Meaning[] | undefined => {
    if (/<[wntdc]\d+>/.test(match.line)) return undefined;
    // A cut of meat in the house is the dinner, not something off the list.
    if (roastNamed(match)) return undefined;
    const things = match
      .words('thing')
      .split(/ (?:and|or|,)(?: and)? /)
      .map((part) => part.replace(/^(the|some|a|an|plenty of|enough|all the|any) /, '').trim())
      .map((part) => part.replace(packed, ''))
      .filter((part) => part !== '' && !participle.test(part));
    // "I've got the butter and the potatoes": several things, and one of them no dish.
    const listed =
      /^(i|we) (have got|have|got) /.test(match.line) &&
      !/ (already|plenty|enough|at home|in the (house|cupboard|pantry|freezer)) /.test(match.line);
    if (
      listed &&
      surely &&
      (things.length < 2 ||
        things.every((thing) => dishExactlyIn(thing, match.context) !== undefined) ||
        / (menu|dinner|side|in|out|on|done|ready|help|not|no|to) /.test(` ${match.line}`))
    )
      return undefined;
    if (/^take /.test(match.line) && !/ list /.test(match.line)) return undefined;
    const meant = things.filter((thing) => {
      if (ingredientNamed(thing, match) === undefined)
        return surely && /^(roast|joint|meat|beef)$/.test(thing);
      return surely || dishIn(thing, match.context) === undefined;
    });
    return meant.length === 0 || meant.length < things.length
      ? undefined
      : meant.map((thing): Meaning => ({ intent: 'have', thing }));
  };

/** "I already have butter, thyme and rosemary": a list reaches over commas and "and". */
export const haveList: Recogniser = {
  name: 'have-list',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '^ [but|and] [i|we] (already have|have already got|already got|have plenty of|have enough|have got plenty of|have got enough) {thing:rest} [already|at home|in the house|in the cupboard] $',
        '^ (i|we) (bought|picked up|have bought|have picked up) {thing:rest} $',
        '^ [but|and] (i|we) (have got|have|got) {thing:rest} (at home|in the house|in the cupboard|in the pantry|in the freezer) ',
        '^ (i|we) (have got|have|got) [all] [the|some] {thing:rest} $',
        '^ (cross|cross off|strike|strike off|take|tick|tick off) {thing:rest} (off|off the list|off my list|from the list) $',
      ],
      inTheHouse(true),
    ),
  ],
};

export const inHouse: Recogniser = {
  name: 'in-house',
  moods: ['statement', 'negative', 'request'],
  phrases: [
    ...phrases(
      [
        '^ [but|and] (i|we) (already have|have already got|have got|already got|have|still have) [plenty of|enough|some|lots of|a lot of|all the|the] {thing:thing} (already|at home|in the house|in the cupboard|in the pantry|in the fridge|in the freezer|in the garden|to hand|in stock) $',
        '^ [but|and] (i|we) (already have|have already got|already got) [plenty of|enough|some|all the|the] {thing:thing} $',
        '^ [but|and] (i|we) (have got|have|got) (plenty of|enough|lots of|loads of) {thing:thing} $',
        '(cross|strike|take|tick|scratch) [off] [the] {thing:thing} [off] (off|off the|off my|from the|from my) list',
        '(cross off|strike off|tick off) [the] {thing:thing} $',
        '(do not|not) need to (buy|get) [any|more|any more|the] {thing:thing} $',
        '^ (i|we) (bought|picked up|have bought|have picked up) [the|some] {thing:thing} $',
        '^ [but|and] (i|we) have [some|the] {thing:thing} (at home|in the house|in the cupboard|in the pantry|in the larder|in the press|in the fridge|in the freezer|in the garden|on the windowsill|already) $',
        '^ [the|some] {thing:thing} (i|we) (have|have got|already have|have already) [already|at home|$] $',
        '^ [the|my|our] {thing:thing} (is|are) (in the (cupboard|pantry|larder|press|garden|freezer|drawer|shed)|on the windowsill|in stock|already in the house|here already|at home) [already|$] $',
        '(i|we) (found|have found|got hold of|have got hold of) [the|a|an|some|my|our] {thing:thing} [after all|@larder|$] $',
        'there (is|are) [a|an|some|the] {thing:thing} (in the (cupboard|pantry|larder|press|garden|freezer|fridge|drawer|shed|back garden|house)|at the back of the [cupboard|press|drawer|fridge]|at home|after all|on the windowsill) [after all|$]',
        '(do not|no|not) need to (buy|get) [any|more|the] {thing:thing} $',
        'no need (to buy|to get|for buying|of buying) [any|more|the] {thing:thing} $',
        'there (is|are) (plenty of|enough|some) {thing:thing} (at home|in the house|in the cupboard|in the pantry|in the fridge|in the freezer|already) $',
        '(found|i found|have found) [the|some|a] {thing:thing} (in the end|at last|at the back of * $) $',
      ],
      inTheHouse(true),
    ),
    // "Got thyme, got wine, no twine": ticked off one by one, whatever dish goes by the name.
    ...phrases('^ got [some|the] {thing:thing} $', (match) =>
      inTheHouse((match.whole.match(/(?:^|[ ,.])(?:got|no) /g) ?? []).length > 1)(match),
    ),
    ...phrases(
      ['^ [but|and] (i|we) (have|have got) [some|the] {thing:thing} $'],
      inTheHouse(false),
    ),
  ],
};
