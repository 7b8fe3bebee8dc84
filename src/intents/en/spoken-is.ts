/**
 * The "is" or "has" that a recogniser writes onto a name: "moms seventy nine", "kevins bailed",
 * "marias on the beans". Kin and unknown names only, and only before what such a verb leads to.
 */
import { oncePer } from '../../base/once.ts';
import type { Lexicon, ReadContext } from '../../kitchen/heard.ts';
import { stemOf } from '../names.ts';
import type { Token } from '../token.ts';
import { commonWords } from './common-words.ts';
import { otherTopics } from './other-topics.ts';
import { uncardedStems } from './uncarded-dishes.ts';

const kin =
  /^(mum|mom|mam|dad|gran|grandma|granny|nan|nana|grandad|grandpa|mother|father|sister|brother|wife|husband|partner|aunt|auntie|uncle|cousin|niece|nephew|son|daughter|granddaughter|grandson|kid|boy|girl|lad|baby|toddler|neighbour|friend|mate|boyfriend|girlfriend|babysitter|guest|gang|crew|family|everyone|everybody|nobody|someone|somebody|food|game|phone|dinner|lunch|table|kettle|timer|alarm|tray|pan|fan|rack|foil|thing|tin|fat|crust|kitchen|smoke|doorbell|taxi|train)$/;
/** What leads on from "is" and from "has". */
const leads =
  /^(\w+ing|on|in|at|not|a|an|the|my|our|all|here|there|late|ill|sick|out|up|off|vegan|vegetarian|veggie|pregnant|allergic|diabetic|coeliac|celiac|lactose|gluten|intolerant|frail|elderly|coming|very|only|so|too|ready|done|five|\w+teen|six|seven|eight|nine|ten|eleven|twelve|seventy|eighty|ninety|sixty|\d+|doing|helping|happy|hot|full|ruined|burnt|black|gone|got|been|bailed|cancelled|dropped|arrived|brought|put|just|also|going|one|two|three|four)$/;
const verbs =
  /(ches|shes|xes|zes|ies|ings|ows|ays)$|^(does|goes|gets|puts|takes|makes|lets|needs|wants|looks|smells|tastes|seems|thanks|lots|hours|means|minutes|dollars|hers|ours|yours|theirs|always|perhaps|sometimes|besides|towards|whoops|heads|upstairs|downstairs|pots|pops|sits|sets)$/;
const possession =
  /^(going|cooking|coming|birthday|roasting|reading|helping|boiling|resting) (away )?(tin|pan|house|party|book|wine|apple|tray)/;

/** Every word the cards give a name to, as stems. */
const knownWords = oncePer(
  (lexicon: Lexicon): ReadonlySet<string> =>
    new Set(
      [...lexicon.dishes, ...lexicon.ingredients, ...lexicon.tools, ...lexicon.cuts].flatMap(
        (thing) =>
          thing.names.flatMap((name) =>
            name
              .toLowerCase()
              .split(/[^a-z]+/)
              .map(stemOf),
          ),
      ),
    ),
);

export function spokenIs(tokens: readonly Token[], context: ReadContext): Token[] {
  const known = knownWords(context.lexicon);
  return tokens.flatMap((token, at) => {
    const { word } = token;
    if (!/^[a-z]{2,}s$/.test(word) || /(ss|us|is)$/.test(word)) return [token];
    const next = tokens[at + 1]?.word ?? '';
    const after = `${next} ${tokens[at + 2]?.word ?? ''}`;
    if (!leads.test(next) || possession.test(after)) return [token];
    const name = word.slice(0, -1);
    const before = tokens[at - 1]?.word ?? '';
    if (
      /^(two|three|four|five|six|seven|eight|nine|ten|both|all|some|these|those|are|of|no|many|few|more|other|with|and|like|for|to|\d+)$/.test(
        before,
      ) &&
      !/^(and)$/.test(before)
    )
      return [token];
    const one = kin.test(name);
    // An unknown word is a name only where a clause begins.
    const begins = /^(|,|[.?!]|and|but|so|because|then|that|ok|now|right)$/.test(before);
    if (!one && (!begins || word.length < 4 || otherTopics.has(word) || verbs.test(word)))
      return [token];
    const stem = stemOf(word);
    // "fillets been in four minutes": nothing else stands before "been".
    if (!one && next === 'been' && known.has(stem)) return [token, { ...token, word: 'has' }];
    if (!one && (commonWords.has(word) || commonWords.has(name))) return [token];
    if (!one && (known.has(stem) || uncardedStems.has(stem))) return [token];
    // "guests in", "kids coming": many of them, unless somebody's own is spoken of.
    if (one && /^(guest|kid|boy|girl|lad|friend|mate|neighbour|thing|pan|tray|tin)$/.test(name))
      return [token];
    if (
      one &&
      /^(sister|brother|cousin|niece|nephew|son|daughter|aunt|uncle)$/.test(name) &&
      /^(are|have|coming|and|here)$/.test(next)
    )
      return [token];
    return [
      { ...token, word: name },
      {
        ...token,
        word: /^(got|been|gone|bailed|cancelled|dropped|arrived|brought)$/.test(next)
          ? 'has'
          : 'is',
      },
    ];
  });
}
