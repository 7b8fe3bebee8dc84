/** Questions of safety, amounts, what else will do, and what to buy. */

import { nameExactlyIn } from '../../names.ts';
import type { Recogniser } from '../../recogniser.ts';
import { meansRoast } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { headsOf, sizeAsked } from './days-asked.ts';
import { clauseWords, degrees, ingredient } from './subjects.ts';

export const askThings: Recogniser = {
  name: 'ask-things',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(would|will|could|does|can) (it|that|this|leaving it) [do] [any|anyone|anybody] (harm|hurt|kill|poison|upset) [anyone|anybody|us|them|her|him|me|the kids|to] ',
        '(any|do any|much) harm (in|to|if|leaving) ',
        '(safe|unsafe|dangerous|food poisoning|poison|make (us|them|me|him|her|anyone) (ill|sick)|get (sick|ill)|salmonella|bacteria|e coli|go off|gone off|make you ill|ok to leave|spoil|risky|safely)',
        '(can|could|should|may|is it ok for|ok for|all right for|fine for|suitable for|good for) * {n:number} (year|years|month|months) old',
        '(can|could|should|may|is it ok for|ok for|all right for|fine for|suitable for|good for) * (pregnant|baby|toddler|elderly|chemo|immunocompromised) ',
        '(ok|all right|fine|safe|good|suitable) for [the|my|our|a|an] [little|wee|old|pregnant] (bairn|bairns|wean|weans|little one|little ones|littlies|wee one|baby|toddler|toddlers|kids|children|gran|granny|nan|pregnant|elderly) ',
        '(rare|medium rare|pink|medium|it|this|that) is (ok|fine|all right|safe|good) for (her|him|them|you|the kids|the baby) ',
        '(rare|medium rare|pink|medium|it|this|that|{temperature}) [ok|fine|all right|suitable|safe|good|enough] for [my|our|the|a|someone|a very] [{thing:thing}] (pregnant|gran|grandma|kids|children|toddler|baby|mum|dad|elderly|sister|nan|grandad)',
        '(can|should|may) [my|the] [pregnant|old|elderly] (sister|gran|kids|wife|mum|nan|baby|toddler|children|daughter|grandma|pregnant women|dad|grandmother|grandad) [also] (eat|have) ',
        '(how long can|can) (i|we|it|@it|the leftovers|leftovers) [be] (leave|sit|stay|keep|stand|left|kept|leave it|leave @it) [it|@it|out|safe|the roast|on the counter|at room temperature|out of the fridge]',
      ],
      (match) =>
        /game|neighbourhood|journey|drive/.test(match.line) ||
        / leave out (the )?\w+ing /.test(` ${match.line}`) ||
        /^(what|where|which) .*(sit|stand|leave|keep) it (on|in|under|with) /.test(match.line)
          ? undefined
          : { intent: 'ask-safety', about: clauseWords(match), ...degrees(match) },
    ),
    ...phrases(
      [
        // What is asked of is the thing to be replaced.
        '(can|could|may|should|would|will|does|do) [i|we|you] [use|try|do it with|make it with|get away with|go with] [some|the|a] {y:thing} [do|work] (instead of|in place of|rather than|in lieu of) [the|some|a] {thing:thing} $',
        '(can|could|may|should) (i|we|you) (use|substitute|swap|replace|do it with|make it with|get away with|try|sub|go with) [some|the|a|in] {thing:thing} (instead|for|instead of|rather than|in place of|with it|in it|$)',
        '(what|is there anything|anything|what else) [can|could|should|do] [i|we|you] [use] (instead of|in place of|replace|substitute for|as a substitute for|as a replacement for|instead) [the] [{thing:thing}] $',
        '(substitute|replacement|alternative|swap|stand in) (for|to) [the] {thing:thing} $',
        '(does|would|will|do|could|can|might|is) {thing:thing} (do the (trick|job)|suffice|cut it|be (ok|fine|all right|any good|good enough|as good|better)|serve|taste (ok|all right)|stand in|be used|go instead) [in it|in there|instead|for it|for that|as well|$] ',
        '(does|would|will|do) {thing:thing} (work|do|work instead|be ok instead|do instead) [in it|in there|for it|for that|in the {z:thing}|for the {z2:thing}|$] $',
        'is {thing:thing} (ok|fine|good|all right) instead',
        '(without|if i have no|if there is no|do not have|no) {thing:thing} $',
        'what (if|can i do if) (i|we) (do not have|have no|have not got) [any|a] {thing:thing}',
      ],
      (match) =>
        /^(\w+ing\b|instead$)/.test(match.words('thing')) ||
        /^(i|you|we|i still|you want|it|that|they|he|she|there|dinner|everything|this|everyone)\b/.test(
          match.words('thing'),
        ) ||
        / (safe|pregnant|guests|late|time|ready|done|dinner|lunch|supper|tea|eat) /.test(
          ` ${match.line}`,
        ) ||
        match.marks('cd').length > 0 ||
        (/^(what is|what does|how|why)/.test(match.line) &&
          !/(substitute|replacement|alternative|instead)/.test(match.line))
          ? undefined
          : { intent: 'ask-substitute', ...ingredient(match) },
    ),
    // "We've no wine, what can I put in instead", "... is it possible with beer": for what is not there.
    ...phrases(
      [
        '^ what (can|could|do|should|shall|would) [i|we|you] (use|put|put in|take|have|do|try|give) [in|with] [instead|in its place|in place of it|for it] $',
        '^ what instead $',
        '^ [is] [it] possible (to do|to make|to use|to take|to cook|with) [it] [with] {y:thing} $',
        '^ (can|could|does|would) (it|that|this) [also] (be|work|go|be done|be made) with {y:thing} [too|also|instead|$] $',
      ],
      ({ before, line }) =>
        before.at(-1)?.intent === 'lack' || / instead $/.test(` ${line}`)
          ? { intent: 'ask-substitute' }
          : undefined,
    ),
    ...phrases(
      [
        '(shopping list|what do i (need to buy|buy|need from the shop|need to get|need from the store|have to buy)|what (should|must|do) (i|we) (buy|get|pick up) [from|at]|need to (buy|get from)|what ingredients|what to buy|from the (shop|shops|store|supermarket|butcher))',
      ],
      { intent: 'ask-shopping' },
    ),
    ...phrases(
      [
        'how many (people|guests|of us|are we|are coming|am i cooking for|will there be|are we having|for dinner|mouths)',
        'how many (are|do we have|did i say|have we)',
      ],
      (match) => (/<|potato|minutes/.test(match.line) ? undefined : { intent: 'ask-guests' }),
    ),
    ...phrases(
      [
        '(how much|how many|what quantity of|what amount of|how large a|how big a) (more|of)? {thing:thing} (do|does|should|will|is|are|goes|go|we|i|per|for|in|needed|$)',
        '(how much|how many|what quantity of|what amount of) {thing:thing} $',
      ].map((pattern) => pattern.replace('(more|of)?', '[more|of]')),
      (match) => {
        const words = match.words('thing');
        if (
          /^(did|does|was|has|time|longer|more time|minutes|more|hours|long|degrees|hotter|is|do|does|of us|later|behind)\b/.test(
            words,
          )
        )
          return undefined;
        // "how much prime rib for twelve": how big a one.
        const roast = meansRoast(words) || nameExactlyIn(match.context.lexicon.cuts, words);
        return roast
          ? sizeAsked(match)
          : { intent: 'ask-amount', ...ingredient(match), ...headsOf(match) };
      },
    ),
  ],
};
