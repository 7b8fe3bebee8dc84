/**
 * Marks of talk that is of other matters, though its words are the kitchen's: a recipe read out, a
 * price, a body, a score, hands that are wanted, another's habits. Each mark names the intents that it
 * makes untrue; a report in the same words, told of this dinner, must not bear it.
 */
import type { Meaning } from '../recogniser.ts';

/** A clause and the whole text it stands in, each with a blank before and after. */
interface Where {
  line: string;
  whole: string;
}

interface Mark {
  /** The intents that are not meant where the mark stands. */
  of: RegExp;
  stands: (where: Where) => boolean;
}

const inClause =
  (words: RegExp) =>
  ({ line }: Where): boolean =>
    words.test(line);

const inText =
  (words: RegExp) =>
  ({ whole }: Where): boolean =>
    words.test(whole);

const told = /^(report-|describe-roast|skip-step|add-dish|drop-dish|ask-amount)/;
const happened = /^report-(trouble|out|done|started|not-done|setup)$/;
const counted = /^(set-guests|report-guests)$/;
const measured = /^(report-reading|report-oven|describe-roast|set-guests|set-doneness)$/;

/** "One oh five a month", "sixty a head". */
const priced =
  / <[ntc]\d+> (dollars |quid |pounds |euros |bucks )?(a|an|per|each) (head|week|month|year|night|day|ticket|go|pop|pint|litre|term|session|lesson|class|gallon|round|plate|person|square) /;

/** What a recipe or its reader tells whoever listens to do. */
const recipeVerb =
  /^(?:(?:and|then|now|next|first|finally|or|step <n\d+>|it says) )*(preheat|grease|cream|fold|whisk|sift|line|knead|roll|bake|simmer|drain|reserve|drizzle|grate|season|sprinkle|dissolve|combine|mix|pour|beat|stir|blend|toss|set aside|transfer|scatter|marinate|cover and|return|refrigerate|chill|melt|heat|saute|fry|arrange|garnish|strain|discard|peel|slice|dice|mince|brush|dust|rub|place|remove|add) /;
/** Who tells of what was done says who did it, or that it is done. */
const teller =
  / (i|we|me|us|my|our|is|are|was|were|has|have|done|did|finished|ready|yet|you|timer|please|menu|how|what|which|enough) /;

/** Two or more commands of a recipe, and nobody who did them. */
function isRecipe({ whole }: Where): boolean {
  if (teller.test(whole)) return false;
  const commands = whole
    .split(/ (?:[,.;!?]|and|then) /)
    .filter((part) => recipeVerb.test(`${part.trim()} `));
  return commands.length >= 2;
}

/** The list at a recipe's head or on a packet: amounts of things, and what the packet wants of an oven. */
const ingredients =
  /^ (read (me|us) |ingredients )| (tablespoons?|teaspoons?|tbsp|tsp|millilitres|cloves|sprigs) of | from frozen | fan <[nt]\d+> .*<g\d+> /;

/** Linen has its degrees too. */
const laundry =
  / (wash|washes|washed|iron|tumble|rinse|spin) ((it|them|that|these|those|everything|clothes|whites|woollens|jumpers|towels|sheets) )?(at|on) /;

/** What is lacking in no kitchen. */
const abstract =
  / (no|without|any) (warning|sense|shame|patience|manners|luck|point|doubt|hurry|reason|excuse|apology|sympathy|sign|signal|wifi|heating|money|respect|taste|sleep|fun|fuss|regrets|mercy|parking|traffic) /;

/** Hands are wanted, and the helper has none: "pass me the foil, it's behind you". */
const someoneWanted =
  / (can|could|will|would) (somebody|someone|anybody|anyone|one of you|you two|you lot|you all) (please |just )?(top|pass|get the|open|shut|close|fetch|grab|help|lay|set|clear|move|pour|take|bring|hold|answer|let|put|turn|find|give|mind|wipe|feed|ring|call) /;
const handsWanted =
  / (reach|pass|hand|grab|fetch|lend|throw|chuck) (me|us|him|her|them|over|the|that|this|those|these|your|round|around) (?!plan|list|steps?|schedule|rundown)/;
/** What somebody holds for somebody: "hold that thought" and "hold the plan" are the helper's. */
const heldByHand =
  / hold (still|tight|steady|my|your (?!horses)|his|her|him|these|those|this|that (?!thought)|the (?!fort|line|clock|timer|plan|dinner|schedule|phone|roast|meat|beef|table)|it (still|steady|up|there|by)) ?/;

const bodyPart =
  / (my|his|her|your|their) (poor |left |right |other |front |bad )?(leg|legs|arm|arms|foot|feet|tooth|teeth|back|knee|knees|hair|nose|nail|nails|eye|eyes|ear|ears|head|neck|shoulder|throat|voice|tummy|stomach|belly|bum|bottom|nappy|hip|ankle|phone|car|coat|shoe|shoes|homework|bath) (is|are|has|have|was|were|came|come|went|hurts?|aches?) /;

/** What a body shows and who looks after it: "the doctor said to call if it hits a hundred and three". */
const health =
  / (doctor|pediatrician|paediatrician|nurse|midwife|vet|weighed (myself|himself|herself|her|him)|pulse|blood sugar|cholesterol|fever) /;

/** Numbers of things that a kitchen does not count. */
const numberOfThings =
  / <[ntc]\d+> (likes|views|followers|votes|points|goals|miles|emails|messages|pages|stairs|seats|texts|tickets|photos|kilometres|laps|lengths|runs|wickets|overs|km|percent|metres|yards|feet|horsepower|quid|dollars|euros|pounds fifty|bucks|pence|cents|square|volts|calories|grand|million|billion) /;

/** A song, a programme, an advertisement that is skipped or turned down. */
const played =
  / (voice|song|songs|track|tracks|tune|album|advert|adverts|ads|singer|singing|band|playlist|episode|trailer|channel) /;

const score =
  / (nil|half time|full time|extra time|overs|wickets|(up|down|behind|ahead) (at half|with <d\d+> (to go|left|to play))) /;

const living =
  / (dog|cat|puppy|kitten|baby|newborn|toddler|boy|girl|lad|rescue|horse|pony|rabbit|hamster|born|birth|grandson|granddaughter) /;

/** "She does everything at mark six": how another cooks. */
const anotherCooks =
  / (she|he|they|husband|wife) (still |always |only |never |just )?(does|do|did|overcooks?|overcooked|burns?|burnt|cooks?|cooked|roasts?|roasted|ruins?|ruined|makes?|made) (everything|hers|theirs|his|the lot) /;

const habit = / (every (single )?|each )(year|christmas|easter|sunday|winter|summer) /;

const marks: readonly Mark[] = [
  { of: /^emergency$/, stands: inText(/ tell you about the (time|night|day|year) /) },
  {
    of: /^(report-(oven|reading|setup)|describe-roast|add-dish|set-guests|lack)$/,
    stands: inText(ingredients),
  },
  { of: /^ask-(amount|substitute)$/, stands: inText(/^ ingredients | blah | serves <n\d+> $/) },
  { of: measured, stands: inClause(numberOfThings) },
  { of: /^(report-reading|watch|describe-roast)$/, stands: inClause(health) },
  { of: measured, stands: inText(laundry) },
  { of: /^lack$/, stands: inClause(abstract) },
  // "That takes me back", "put it back in the block".
  {
    of: /^undo$/,
    stands: inClause(
      / (takes?|took|taking) (me|you|us|him|her|them) (right |straight |all the way )?back | (put|pop|stick|hang) (it|that|this|them|those) back (in|on|into|under|where) (?!the (menu|plan|list|schedule) )/,
    ),
  },
  // "I really shouldn't. Oh go on then": another helping.
  { of: /^resume$/, stands: inText(/ (i|we) (really )?(should|could) not(?! hear) .*go on /) },
  // "I'd have it rare, but my husband won't": that is what it shall not be.
  {
    of: /^set-doneness$/,
    stands: inText(/ (i|we) would (have|like|prefer|do|eat) (it|mine|ours) .* but /),
  },
  // "It could fall on the floor and I'd still eat it".
  {
    of: /^report-trouble$/,
    stands: inClause(
      / (could|would|might|may) (have )?(all |just |even |still )?(fall|fell|fallen|burn|drop|slip|die|go) /,
    ),
  },
  { of: measured, stands: inClause(priced) },
  { of: told, stands: isRecipe },
  { of: /^(running-behind|pause|affirm|report-setup|repeat)$/, stands: inText(handsWanted) },
  { of: /^ask-|^report-|^pause$/, stands: inClause(someoneWanted) },
  { of: /^pause$/, stands: inClause(heldByHand) },
  { of: happened, stands: inClause(bodyPart) },
  { of: /^report-done$/, stands: inText(/ (wipe me|need a (wee|poo)|wiped (your|his|her) )/) },
  { of: /^(skip-step|report-oven|repeat|quiet)$/, stands: inText(played) },
  { of: counted, stands: inText(score) },
  // "There were fourteen of us": that was another day.
  {
    of: /^set-guests$/,
    stands: inClause(
      / (there|we) (were|was) <n\d+> (of us|people|guests|all told)? ?(in|on|at|that|and|round) /,
    ),
  },
  {
    of: /^describe-roast$/,
    stands: ({ line, whole }) =>
      / (he|she) (is|was|weighs|weighed) /.test(line) && living.test(whole),
  },
  { of: /^report-/, stands: inClause(anotherCooks) },
  // "I've burnt them again, like every year" is of today.
  {
    of: /^report-(trouble|out|done|started)$/,
    stands: ({ line, whole }) => habit.test(whole) && !/ (i|we) /.test(line),
  },
  // "Theirs is a gas one": the clauses after it tell of theirs.
  { of: /^report-(oven|reading|out|setup)$/, stands: inText(/^ (theirs|hers) /) },
  // "How many kids have they got".
  {
    of: /^ask-amount$/,
    stands: inClause(
      / how (many|much) (\w+ ){1,3}((have|has|did|had) (they|he|she|you|we all|a \w+)|(do|does) (they|he|she)|has a \w+) /,
    ),
  },
  {
    of: /^lack$/,
    stands: inClause(/^ (nobody|no one) (makes|does|cooks|carves|knows|can|will|could|told|said) /),
  },
  // "Don't put the veg in yet": whoever forbids it reports nothing.
  {
    of: /^report-not-done$/,
    stands: inClause(
      /^ (please )?(do not|never) (?!.* (down|as) )(put|push|change|touch|take|pull|open|turn|move|start|carve|serve|let|forget|tell|go|worry|bother|leave|make|cut|eat|come) /,
    ),
  },
];

/** Whether what was heard is of other matters, by the words beside it. */
export const isOfOtherMatters = ({ intent }: Meaning, where: Where): boolean =>
  marks.some((mark) => mark.of.test(intent) && mark.stands(where));
