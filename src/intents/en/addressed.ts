/**
 * Whether words can be meant for the helper. In a kitchen most talk is not: it is of other people,
 * other days, other rooms. What acts on a dinner must show that it is of this one; the less of a
 * clause a phrase explains, the more the rest of it must speak of cooking.
 */
import { oncePer } from '../../base/once.ts';
import type { Lexicon, ReadContext } from '../../kitchen/heard.ts';
import { dishWordsOf, type KindOfWord } from '../addressed.ts';
import { lineOf } from '../clause.ts';
import { stemOf } from '../names.ts';
import type { Placed } from '../placed.ts';
import { isStop } from '../token.ts';
import { commonWords } from './common-words.ts';
import { isOfOtherMatters } from './other-matters.ts';
import { otherTopics } from './other-topics.ts';
import { stemOfVerb } from './steps.ts';
import { troubleWords } from './trouble-kinds.ts';

/** Heard, these change nothing, so nothing is guarded. */
const harmless = /^(unrelated|unclear|courtesy|acknowledge)$/;
/** Short words of the talk that need no kitchen word beside them. */
const talk =
  /^(affirm|deny|choose|undo|repeat|pause|resume|start-over|help|quiet|correct|set-units|emergency)$/;

/** The guard for a language whose phrases are made of these words. */
export function guardOf(
  phraseWords: ReadonlySet<string>,
): (placed: Placed, whole: string, context: ReadContext) => boolean {
  return (placed, whole, context) => isForHelper(placed, ` ${whole}`, context, phraseWords);
}

function isForHelper(
  placed: Placed,
  whole: string,
  context: ReadContext,
  phraseWords: ReadonlySet<string>,
): boolean {
  const { meaning, clause } = placed;
  const { intent } = meaning;
  if (harmless.test(intent)) return true;
  const line = clause ? ` ${lineOf(clause.tokens)}` : whole;
  if (isOfOtherMatters(meaning, { line, whole })) return false;
  // What was only guessed from all its words has been weighed by them.
  if (placed.guessed) return !(reports.test(intent) && ofOthers.test(line));
  if (spokenToOthers(line, intent)) return false;
  // A story taints what is told with it: "we had lamb at Easter, pulled it at fifty five".
  // "I salted it last night" is of this dinner.
  const ahead = meaning.intent === 'report-done' && meaning.step === 'salt-ahead';
  const story = intent.startsWith('ask-') ? line : whole;
  if (elsewhere.test(story) && !aboutPeople.test(intent) && !ahead) return false;
  if (reports.test(intent) && (ofOthers.test(line) || toYou.test(line))) return false;
  // "my nan's oven only had two settings, off and 450": what follows in a word or two is hers still.
  if (reports.test(intent) && line.trim().split(' ').length <= 2 && ofOthers.test(whole))
    return false;
  // "no one's vegetarian" notes nobody.
  if (intent === 'note-guest' && /^ (no one|nobody|none of (us|them|you)) /.test(line))
    return false;
  // "nobody said anything about twelve people".
  if (
    /^(set-|report-(?!not-done)|describe-roast)/.test(intent) &&
    / (nobody|no one|(i|we) never) (ever )?(said|mentioned|told) /.test(line)
  )
    return false;
  if (!clause) return true;
  // What the roast is was asked for: whatever label it stands on.
  if (context.expecting === 'roast' && intent === 'describe-roast' && meaning.weight !== undefined)
    return true;
  const dish = new Set(dishWordsOf(meaning));
  // A head that spins may be anybody's; what has gone wrong with a dish is told in words of its own.
  const known =
    meaning.intent === 'report-trouble' && meaning.trouble !== 'overwhelmed'
      ? troubleWords
      : nothing;
  const other = line.split(' ').filter((word) => !dish.has(word) && !known.has(word));
  const strange = strangeWords(other.join(' '), context, phraseWords);
  if (talk.test(intent)) return placed.framed ? strange === 0 : strange < 2;
  const own = kitchenWords(line, context.lexicon);
  if (
    thirdPerson.test(line) &&
    reports.test(intent) &&
    own === 0 &&
    !(measured(meaning, context) && strange === 0)
  )
    return false;
  if (bodies.test(line) && /^(report-reading|ask-temperature|watch)$/.test(intent)) return false;
  // "Ben can't make it": a guest's name is nobody's else.
  const named =
    !placed.framed &&
    ((meaning.intent === 'set-guests' && (meaning.who ?? meaning.change) !== undefined) ||
      meaning.intent === 'report-guests' ||
      meaning.intent === 'shift-serving' ||
      (meaning.intent === 'ask-guests' && meaning.who !== undefined));
  if (takesNames.test(intent) || named || strange === 0) return true;
  // A frame has only the words to go by, so more of them must be of the kitchen.
  return placed.framed ? own > strange : own >= strange;
}

const nothing: ReadonlySet<string> = new Set();

const reports =
  /^(report-reading|report-started|report-out|report-done|report-not-done|report-trouble|report-setup|report-oven|cook-away|describe-roast)$/;
/** Their slots hold words no list can know. */
const takesNames =
  /^(note-guest|feed-public|add-hands|cook-away|lack|have|set-timer|cancel-timer|ask-safety|ask-substitute|ask-amount)$/;
/** Said of guests, errands and what was learnt before, other days and places are the matter itself. */
const aboutPeople =
  /^(note-guest|feed-public|cook-away|shift-serving|set-timer|emergency|forget-kitchen)$/;

const thirdPerson =
  /^ (he|his|her|gran|grandad|grandma|nan|mum|dad|baby|the baby|the kids|uncle|aunt|auntie|my \w+) (is|has|was|had|will|would|did|went|said|goes|says|got)? ?/;
/** "he marks 47": whoever "he" is, a number that is read while the roast is in is its own. */
const measured = (meaning: Placed['meaning'], context: ReadContext): boolean =>
  meaning.intent === 'report-reading' && /^(sear|low-roast|rest|hold)$/.test(context.stage ?? '');

/** Another's oven, another's roast. */
const ofOthers =
  / (her|his|their|your) (oven|roast|joint|gravy|beef|lamb|potatoes|turkey|kitchen|probe|thermometer|dinner)| (sister|brother|mum|dad|gran|nan|neighbour|neighbours|next door|friend|boss|aunt|uncle|cousin|restaurant|pub|place) is (oven|roast|joint|gravy|beef|lamb|turkey|smoke|kitchen|dinner)| (restaurant|pub|steak|steakhouse|takeaway|pizza|turkey|bakery|canteen|hot tub|washing machine|dryer) | (oven|cooker|stove|range|kitchen|probe|thermometer) (at|in) (my|her|his|their|our|your|the) (old |last |own |other )?(place|house|flat|apartment|home|school|office|work|church|cabin|caravan|cottage) /;
/** The helper has no hands: what "you" did or have is said to somebody else. */
const toYou =
  / (you|your|you are|you have) (?!(up|posted|know|informed|that|it|again|all|updated|later) )/;
const bodies =
  / (fever|baby|baby is|forehead|doctor|patient|blood pressure|hospital|sick|poorly|outside|shade|summer|holiday) /;
const elsewhere =
  / (i swear if|this morning|never again|for new year|dreamt|last (year|week|night|month|time|winter|summer|spring|autumn|christmas|easter|sunday|saturday|friday|weekend|thanksgiving)|years ago|yesterday|the other (day|night)|when i was|back then|that year|remember (when|that|thanksgiving|christmas)?|in the film|on tv|their house|at work|at school|at the (pub|office|station|shops|market|wedding|restaurant)|once upon|that time|at easter|tell you about the (time|night|day|year)|(people|they|folk|folks|judges|experts|critics) say|(chef|judges?|presenter|host|telly|the box) (says|said|reckons)|breaking|road is|counties) /;

/** Called by a name or told what only a person can do. */
function spokenToOthers(line: string, intent: string): boolean {
  if (
    /^ (shut up|quiet|be quiet|stop it|stop that|hush|shush) (kids|boys|girls|children|dave|you lot|you two|everyone|all of you|down there|dog)/.test(
      line,
    )
  )
    return true;
  if (/^(quiet|pause|resume|start-over|help|undo|repeat)$/.test(intent))
    return / (kids|boys|girls|children|you lot|you two|listening|dog|darling|yourselves|dave|mum|dad) /.test(
      line,
    );
  return / (darling|sweetheart|sweetie|honey|babe|boys|girls|kids) ,? ?(can|could|will|would|put|get|take|turn|pass) (?!not )/.test(
    line,
  );
}

const wordsOf = oncePer((lexicon: Lexicon): ReadonlySet<string> => {
  const words = new Set<string>();
  for (const things of [lexicon.dishes, lexicon.cuts, lexicon.ingredients, lexicon.tools])
    for (const thing of things)
      for (const name of thing.names)
        for (const word of name.toLowerCase().split(/[^a-z]+/))
          if (word.length > 2 && !plain.has(word)) words.add(stemOf(word));
  return words;
});

const plain = new Set(
  'the and put out over make into with for off let all new small large light two one set get take turn leave start cold dry keep table house warm back old water salt top end cover on cooking'.split(
    ' ',
  ),
);

const trade =
  /^(oven|cooker|roast|roasting|joint|beef|meat|lamb|pork|rib|ribs|probe|thermometer|instant-read|leave-in|core|middle|centre|center|degrees|celsius|fahrenheit|dinner|supper|lunch|guests?|carve|carving|carved|gravy|timer|rest|resting|serve|serving|temperature|sear|foil|tin|rack|baste|basting|internal|thickest|<[tgw]\d+>|rare|medium|preheat|preheated|preheating|bones?|step|power|electricity|smoke|smoking|fridge|dish|sides|vegetables|potatoes|burning|burnt|overcooked|undercooked|raw|reads|reading)$/;

/** The words that steps go by, as stems: "scrubbed" says nothing against a clause. */
const stepVerbs = oncePer(
  (lexicon: Lexicon): ReadonlySet<string> =>
    new Set(
      lexicon.steps.flatMap((step) =>
        step.names.flatMap((name) =>
          name
            .toLowerCase()
            .split(/[^a-z]+/)
            .map(stemOfVerb),
        ),
      ),
    ),
);

/** The nouns of it: what a clause must speak of to be of this dinner. */
const nouns =
  /^(oven|cooker|roast|joint|beef|meat|lamb|pork|rib|ribs|probe|thermometer|instant-read|leave-in|core|middle|centre|center|degrees|celsius|fahrenheit|dinner|supper|lunch|guests?|gravy|timer|temperature|foil|tin|rack|<[tg]\d+>|bones?|step|power|electricity|smoke|fridge|dish|sides|vegetables|potatoes|plates|leftovers|people|plan|schedule)$/;

function kitchenWords(line: string, lexicon: Lexicon): number {
  const words = wordsOf(lexicon);
  let count = 0;
  for (const word of line.trim().split(' '))
    if (nouns.test(word) || words.has(stemOf(word))) count += 1;
  return count;
}

export const persons =
  /^(dad|daddy|papa|mama|maman|oma|opa|nonna|nonno|abuela|abuelo|baba|yiayia|mum|mummy|mom|mother|father|gran|granny|grandma|grandad|grandpa|nan|nana|sister|brother|wife|husband|aunt|auntie|aunty|uncle|cousin|niece|nephew|son|daughter|kids|children|boys|girls|girlfriend|boyfriend|partner|friend|friends|neighbour|neighbours|neighbor|neighbors|baby|kid|child|mate|love|darling|sweetheart|honey|dear|everyone|everybody|somebody|someone|anyone)$/;
/** Words whose place in a sentence says who speaks to whom. */
const closed =
  /^(i|me|my|mine|we|us|our|ours|you|your|yours|he|him|his|she|her|hers|they|them|their|theirs|it|its|this|that|these|those|there|here|the|a|an|some|any|no|not|never|and|or|but|so|if|when|than|because|to|of|for|from|in|into|out|on|off|up|down|at|by|with|about|over|after|before|till|until|since|ago|is|are|was|were|be|been|am|has|have|had|do|does|did|done|will|would|can|could|shall|should|may|might|must|what|which|who|where|why|how|got|get|put|take|took|taken|go|goes|going|went|gone|let|say|says|said|tell|yes|yeah|ok|okay|please|thanks|now|then|just|already|yet|still|too|all|one|two|first|second|other|another|more|like|as)$/;

/** Kinds: themselves, persons (P), other topics (O), the kitchen's (K),
 * a phrase's (V), common (c), strange (S). */
export function kindOfWordWith(phraseWords: ReadonlySet<string>): KindOfWord {
  return (word, context) => {
    if (closed.test(word) || isStop(word)) return word;
    if (persons.test(word)) return 'P';
    if (otherTopics.has(word)) return 'O';
    const { lexicon } = context;
    if (nouns.test(word) || trade.test(word) || wordsOf(lexicon).has(stemOf(word))) return 'K';
    if (phraseWords.has(word) || stepVerbs(lexicon).has(stemOfVerb(word))) return 'V';
    return word.length < 3 || commonWords.has(word) ? 'c' : 'S';
  };
}

/** Content words of the clause that neither the kitchen nor any phrase of this language knows. */
function strangeWords(
  line: string,
  context: ReadContext,
  phraseWords: ReadonlySet<string>,
): number {
  const words = wordsOf(context.lexicon);
  let count = 0;
  for (const word of line.trim().split(' ')) {
    if (word === '|' || /^[,.?!]$|^<|^\d/.test(word)) continue;
    if (word.length < 3 || commonWords.has(word) || trade.test(word) || words.has(stemOf(word)))
      continue;
    if (phraseWords.has(word)) continue;
    if (stepVerbs(context.lexicon).has(stemOfVerb(word))) continue;
    count += 1;
  }
  return count;
}
