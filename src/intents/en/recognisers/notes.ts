/** What is noted of a guest: vulnerable, allergic, on a diet, a slice done otherwise, an earlier meal. */
import type { Recogniser } from '../../recogniser.ts';
import { commonWords } from '../common-words.ts';
import { phrases } from '../vocabulary.ts';
import { donenessOf } from './doneness.ts';
import { cutOf } from './roast.ts';

/** Words of a wish before it: "I'd like it rare" and "aiming to eat at eight" speak of all. */
const notAGuest =
  /\b(would|will|aiming|planning|hoping|going|want|wants|to|let|think|should|i|we)\b/;

export const notes: Recogniser = {
  name: 'notes',
  moods: ['statement', 'negative', 'intention', 'request'],
  phrases: [
    ...phrases(
      [
        '{who:thing} (slice|slices|bit|portion|piece|beef|meat) [be|is|done|to be] (well done|rare|medium rare|medium well|medium) [please|$]',
        `{who:thing} (wants|want|likes|like|would like|prefers|prefer|has|have|takes|needs|eats|will have|will want|will only eat|is having) (his|hers|her|their|theirs|it|his slice|her slice|meat|his meat|hers cooked|his cooked|their meat|her beef|his beef|their beef|one|his bit|her bit|theirs done|his done) [done|cooked|to be] (well done|rare|medium rare|medium well|medium|cooked through|pink|well cooked|blue|no pink)`,
        '[a|the] (well done|rare|medium rare|medium well|medium) [slice|one|bit|piece|portion] for {who:thing} $',
        '(make|do|cook) {who:thing} [is] (well done|rare|medium rare|medium well|medium) $',
        '^ [and|but] {who:word} [is|portion|portions|slice|is slice|is portion] (well done|rare|medium rare) [please] $',
      ],
      (match) => {
        if (/ still (\w+ )?(pink|raw|bloody|rare) /.test(` ${match.line}`)) return undefined;
        const who = person(match.words('who')).replace(
          / (likes?|hates?|wants?|prefers?|loves?|can not|will not|must not|does not|do not)$/,
          '',
        );
        const value = /well cooked/.test(match.line)
          ? 'well-done'
          : (donenessOf(match.line.slice(match.line.indexOf(who))) ?? donenessOf(match.line));
        if (
          notAGuest.test(who) ||
          /^(i|we|us|of us|people|guests|(the )?(whole )?(family|party)|to|<\w+>|everyone|everybody|all|you|it|all of us|me|most|most of (us|them)|(the )?rest( of (us|them))?|the others|the table)?$/.test(
            who,
          )
        )
          return undefined;
        // Without a word of wishing only a person can be meant: "dad well done", not "steak rare".
        if (
          !/ (wants?|likes?|prefers?|takes|has|have|needs|eats?|for|make|do|will|would) /.test(
            match.line,
          ) &&
          !isPerson(who)
        )
          return undefined;
        if (/^(make|do|cook) /.test(match.line) && !isPerson(who)) return undefined;
        return value ? { intent: 'note-guest', who, need: 'doneness', value } : undefined;
      },
    ),
    ...phrases(
      [
        '{who:thing} (eat|eats|eating|has to eat|need to eat|needs to eat|have to eat|will eat|want to eat|are eating|is eating|have their tea|has his tea|has her tea|must eat|need feeding|want feeding|needs feeding|need their dinner|want their dinner|need their tea) [first|early|earlier|separately] [at|by|before|around] {clock}',
      ],
      (match) => {
        const who = person(match.words('who'));
        const value = match.mealTime('clock');
        // "a leg of lamb for ten people eating at seven" is the table's hour.
        if (
          cutOf(match.words('who'), match.context) !== undefined ||
          /^(for|feeding|serving|people|guests|coming|beef|meat|loin|round|roast|joint|leg|to)$/.test(
            who ?? '',
          )
        )
          return undefined;
        if (
          !isPerson(who) &&
          !/(one|ones|law|little)$/.test(who) &&
          (who.includes(' ') || commonWords.has(who))
        )
          return undefined;
        if (
          !who ||
          notAGuest.test(who) ||
          /^(i|we|us|they|everyone|everybody|you|all|all of us|let us|dinner|are|is|am|be|will|will be|want to|(i|we|you) (am|are|will|will be|want to))$/.test(
            who,
          ) ||
          / (us|were|are)$|^(mean|forget)/.test(who)
        )
          return undefined;
        return value ? { intent: 'note-guest', who, need: 'eats-at', value } : undefined;
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has got|has) [a bit|very|severely|badly] (allergic to|intolerant to|intolerant of) {value:thing} $',
        '{who:thing} (has|have|has got|got) (a|an) [bad|severe|serious] {value:word} (allergy|intolerance)',
        '{who:thing} (can not|must not|does not|do not|should not) (eat|have|touch|do|tolerate|handle) [any] {value:thing} $',
        'no (dairy|nuts|gluten|eggs|egg|shellfish|mustard|milk|garlic|peanuts|wheat|butter|cream|onions|onion|fish) for {who:thing} $',
        '{who:thing} (is|are) allergic $',
        '{who:thing} (is|are) (coeliac|celiac|lactose intolerant|dairy free|gluten intolerant|nut free) ',
        '(nut|dairy|gluten|egg|shellfish|mustard|milk|garlic|peanut|wheat) (allergy|allergies) (at the table|for {who:thing}|tonight) $',
      ],
      (match) => {
        const who = person(match.words('who'));
        if (
          /^(meat|beef|red meat|pork|lamb)$/.test(match.words('value')) ||
          (/^(i|we|it|they|you|the .*oven)$/.test(who) &&
            !/allerg|coeliac|celiac|intoleran|gluten|dairy|nuts/.test(match.line))
        )
          return undefined;
        if (
          /^(them|it|that|any|this|those|these|more|meat|beef|red meat|pork|lamb|him|her|us|me|much|anything|now|dinner|lunch)\b/.test(
            match.words('value'),
          )
        )
          return undefined;
        const value =
          match.words('value') ||
          /(coeliac|celiac|lactose|dairy|gluten|nut|egg|shellfish|mustard|milk|garlic|peanut|wheat)/.exec(
            match.line,
          )?.[1];
        return value
          ? { intent: 'note-guest', ...(who ? { who } : {}), need: 'allergy', value }
          : undefined;
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are|has gone|has turned|has become|went|have gone|is a|are both|is now) [now|a|an|both] (vegetarian|vegan|veggie|pescatarian|kosher|halal|gluten free|keto|vegetarians|vegans|teetotal|muslim|jewish|hindu|pescetarian)',
        '{who:thing} (does not|do not|will not) eat (meat|beef|red meat|pork|lamb|dairy|gluten|fish)',
        '(gluten free|dairy free|vegetarian|vegan|halal|kosher|meat free|veggie) for {who:thing} $',
        '{who:thing} (is|are) [a|an] (vegetarian|vegan)',
        '(one|two|{n:number}) (vegetarian|vegan|vegetarians|vegans|veggie)',
      ],
      (match) => {
        const who = person(match.words('who'));
        const value =
          /(vegetarian|vegan|veggie|pescatarian|pescetarian|kosher|halal|gluten free|keto)/
            .exec(match.line)?.[1]
            ?.replace('veggie', 'vegetarian') ??
          (/meat|beef/.test(match.line) ? 'vegetarian' : 'diet');
        return { intent: 'note-guest', ...(who ? { who } : {}), need: 'diet', value };
      },
    ),
    ...phrases(
      [
        '{who:thing} (is|are) [six months|heavily|very|now|a bit|quite|over] (pregnant|expecting|immunocompromised|elderly|frail|having chemo|on chemo|immunosuppressed|breastfeeding|undergoing chemo|diabetic|poorly|in her eighties|in his eighties|in her nineties|over eighty|having chemotherapy|on chemotherapy|on immunosuppressants)',
        '{who:thing} (is|are|is nearly|is about to be) {n:number} [years old|$]',
        '{n:number} [year|years] old [guest|gran|grandmother|lady|man|dad|mum|at the table|coming|with us|$]',
        '{who:thing} (has|has got|with) a [very|really] (weak|compromised|bad|low) immune (system|systems)',
        '{who:thing} (makes|does|is doing|gets|is having|has) (chemo|chemotherapy)',
        '(there is|we have|i have|there will be|we will have) (a|an|one) (pregnant|toddler|baby|elderly) [woman|guest|lady|person|friend|$]',
        'one of (them|us|the guests|my guests|our guests) is (pregnant|expecting|immunocompromised)',
      ],
      (match) => {
        const who = person(match.words('who'));
        if (
          match.has('n') &&
          (match.number('n') < 70
            ? !/(toddler|baby|son|daughter|niece|nephew|grandson|granddaughter|kid)/.test(who) ||
              match.number('n') > 6
            : !isPerson(who) && !(who === '' && / old /.test(match.line)))
        )
          return undefined;
        return { intent: 'note-guest', ...(who ? { who } : {}), need: 'vulnerable' };
      },
    ),
  ],
};

const people =
  /\b(small ones|little ones|wee ones|young ones|kiddies|bairns|dad|mum|mother|father|gran|granny|grandma|grandad|grandpa|nan|nana|sister|brother|wife|husband|aunt|auntie|uncle|cousin|niece|nephew|son|daughter|kids|children|toddler|baby|neighbour|guest|friend|she|he)\b/;
const isPerson = (who: string): boolean => people.test(who);
const person = (words: string): string =>
  words
    .replace(/^(and|oh|my|our|the|so|because|note that|remember|remember that|also) /, '')
    .replace(/^(my|our|the) /, '')
    .replace(/ (likes?|wants?|prefers?|takes|has|needs|eats?)( (his|hers|her|theirs|it).*)?$/, '')
    .trim();
