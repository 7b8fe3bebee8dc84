/** What this kitchen does not have. */

import { nameExactlyIn, nameIn, stemsOf, stemsOfNames } from '../../names.ts';
import type { Match, Recogniser } from '../../recogniser.ts';
import { persons } from '../addressed.ts';
import { dishIn, goodsOf } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

/** "Parsley" is an ingredient although a sauce is called after it; "rolls" are a dish. */
function isIngredient(thing: string, match: Match): boolean {
  if (thing.split(' ').length > 2) return false;
  const { ingredients, dishes } = match.context.lexicon;
  const noun = stemsOf(thing).at(-1);
  const dish = dishIn(thing, match.context);
  const headed = dishes.some(
    (one) => one.id === dish && stemsOfNames(one).some((stems) => stems.at(-1) === noun),
  );
  return !headed && nameExactlyIn(ingredients, thing) !== undefined;
}

/** "No butter left" is of the larder, although a dish is called after it; not of a dish on the menu. */
function usedUp(thing: string, match: Match): boolean {
  const dish = dishIn(thing, match.context);
  return (
    / left $/.test(match.line) &&
    nameExactlyIn(match.context.lexicon.ingredients, thing) !== undefined &&
    !(dish !== undefined && match.context.dishes.includes(dish))
  );
}

export const lack: Recogniser = {
  name: 'lack',
  moods: ['statement', 'negative'],
  phrases: [
    ...phrases(
      [
        'neither [a|any|the] {thing:thing} nor [a|any|the] {other:thing} [in this place|in this kitchen|in the house|here|$] $',
      ],
      (match) => [
        { intent: 'lack', thing: match.words('thing') },
        { intent: 'lack', thing: match.words('other') },
      ],
    ),
    // "We haven't got foil, or a rack": one more that is not there.
    ...phrases('^ [even] (a|an|any) {thing:thing} [either|here|$] $', (match) => {
      const thing = match.words('thing');
      return match.before.at(-1)?.intent === 'lack' &&
        new RegExp(`(?:^| )(?:or|nor|neither) (?:\\w+ )?(?:a|an|any) ${thing} `).test(
          match.whole,
        ) &&
        goodsOf(match.context.lexicon).some((one) => nameIn([one], thing) !== undefined)
        ? { intent: 'lack', thing }
        : undefined;
    }),
    // "Got everything bar the mint": what is named is what is not there.
    ...phrases(
      '^ [i|we] [have] (got|have|bought|found) (everything|it all|all of it|the lot|the rest) (bar|except|but|except for|apart from|minus|but for|save|other than) [for] [the|a|any|some] {thing:thing} $',
      (match) =>
        goodsOf(match.context.lexicon).some((one) => nameIn([one], match.words('thing')))
          ? { intent: 'lack', thing: match.words('thing') }
          : undefined,
    ),
    ...phrases(
      [
        '(there is|there are|we have|i have|have|we have got|i have got|got|we are|i am|has got|we do|i do) (no|not any|run out of|not got any|not got a|not got an|not have a|not have any|not have an|not own a|not have the|not got|out of|all out of|not have|completely out of|clean out of|without|not own any|lost the|broken the|lost my|broken my|fresh out of|not a|not own|not got the|missing a|short of|short on|not have enough|not enough) {thing:thing} [in this kitchen|in the house|here|left|at all|to hand|for this|in the kitchen|anywhere|either|at home|$] $',
        '^ [the] (shop|shops|store|stores|supermarket|butcher|butchers|grocer|corner shop) (is|was|were|had|has|have|did) (out of|no|all out of|sold out of|clean out of|run out of|ran out of|not have|not any) [any|the] {thing:thing} [left|$] $',
        '(ran out of|run out of|no|can not find the|can not find my|can not find any|can not find a|could not find any|could not get any|could not get|forgot to buy|forgot to get|forgot the|forgot to buy any|missing|could not find) [any|a|the|my|some] {thing:thing} [in this kitchen|in the house|here|left|at all|to hand|in the kitchen|at the shop|at the shops|anywhere|to be found|at home|$] $',
        '^ do not (have|own) [the|a|an|any] {thing:thing} [here|at home|$] $',
        '(neither|no) [a|an] {a:word} (nor|or) [a|an|any] {b:word} [in * $|left|$]',
        '^ (a|an|any|the) {thing:thing} (i|we) (do not|not) (have|own|possess|got) [here|at home|$] $',
        '^ (a|an|any|the) {thing:thing} (i|we) have not [got] [here|at home|$] $',
        'the {thing:thing} is (broken|bust|missing|knackered|in the wash|lost|kaput) $',
        '(my|our) {thing:thing} (is|has) (broken|bust|missing|died|packed up|kaput) $',
      ],
      (match) => {
        if (/leave it|bother/.test(match.line)) return undefined;
        if (persons.test(match.words('thing').split(' ').at(-1) ?? '')) return undefined;
        // "haven't got round to it" is of a task.
        if (/^(round|around|as far|time|to |time)/.test(match.words('thing'))) return undefined;
        if (match.has('a') && match.has('b')) {
          const things = [match.words('a'), match.words('b')];
          const goods = goodsOf(match.context.lexicon);
          return things.every((one) => nameIn(goods, one) !== undefined)
            ? things.map((one) => ({ intent: 'lack' as const, thing: one }))
            : undefined;
        }
        const thing = match.words('thing').replace(/^(a|an|any|the|some|much|more) /, '');
        // With the roast in, who forgot a dish forgot to cook it, not to buy it.
        const dish = /forgot the/.test(match.line) ? dishIn(thing, match.context) : undefined;
        const cooking = /^(sear|low-roast|rest|hold)$/.test(match.context.stage ?? '');
        if (dish !== undefined && cooking && match.context.dishes.includes(dish))
          return { intent: 'report-not-done', step: dish };
        if (
          thing === '' ||
          (/^no /.test(match.line) &&
            ((!usedUp(thing, match) &&
              dishIn(thing, match.context) !== undefined &&
              (!isIngredient(thing, match) ||
                match.context.dishes.includes(dishIn(thing, match.context)!) ||
                / (after all|today|tonight|any more|this time) /.test(match.line))) ||
              !goodsOf(match.context.lexicon).some((one) => nameIn([one], thing) !== undefined))) ||
          /^(time|idea|need|way|problem|one|rush|hurry|worries|doubt|reason|clue|more|thanks|chance|change|power|electricity|current|mains|juice|go|go for|no|sear|fan|convection|pink|good|it|that|hope|words|question|bones?|guests|luck|fun|space|room|energy|patience|here|fridge|the oven|oven|here|town|bed|luck|control|kitchen|house|other|oven on|stress|breath|point|money|friends|fuss)\b/.test(
            thing,
          ) ||
          /^(of|for|to|at|in|on) /.test(thing) ||
          / (in|out|on|off|up|down|done|yet|ready|made|cooked|started|finished|tied|salted)$/.test(
            ` ${thing}`,
          )
        )
          return undefined;
        if (/(fridge|oven|way|touch|date|hand)$/.test(thing) && /out of/.test(match.line))
          return undefined;
        return { intent: 'lack', thing };
      },
    ),
  ],
};
