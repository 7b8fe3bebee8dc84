/** The frame of a guest's note: a person, and what must be minded of them. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { commonWords } from '../common-words.ts';
import { donenessOf } from '../recognisers/doneness.ts';
import { holds } from './words.ts';

const people =
  /(?:my |our |the |a |one |old |little |wee |young |her |his )*((?:mother|father|sister|brother|daughter|son) in law|in laws|dad|daddy|da|papa|mama|maman|oma|opa|nonna|nonno|abuela|abuelo|baba|tata|yiayia|mum|mummy|mammy|ma|mother|father|gran|granny|grandma|grandmother|grandad|granddad|grandpop|grandfather|grandpa|grandparents|gramps|nan|nana|nanna|sister|brother|wife|husband|hubby|missus|fiance|fiancee|partner|aunt|auntie|aunty|uncle|cousins?|niece|nephew|son|daughter|stepson|stepdaughter|stepdad|stepmum|grandson|granddaughter|grandkids|kid|kids|kiddies|child|children|girls?|boys?|lad|lads|lass|lasses|wean|weans|bairn|bairns|toddlers?|baby|twins|teenagers?|neighbours?|friends?|mates?|guest|guests|girlfriend|boyfriend|boss|roommate|housemate|flatmate|colleague|little ones|littlies|wee ones|small ones|little one|parents)(?: is)?/;
export const peopleOnly = new RegExp(`(?<=^| )${people.source}(?= |$)`);
const diets =
  /(?<= )(vegetarians?|vegans?|veggie|veggies|pescatarians?|pescetarians?|halal|kosher|plant based|vegetables only|only vegetables|gluten free|keto|off meat|meat free|does not eat animals)(?= )/;
const allergens =
  /(?<= )(?:tree |cow is )?(nuts?|peanuts?|walnuts?|almonds?|hazelnuts?|cashews?|dairy|milk|cheese|lactose|gluten|wheat|eggs?|shellfish|prawns?|shrimp|seafood|crab|mustard|garlic|onions?|celery|soya?|sesame|fish|butter|cream|horseradish|sulphites|lupin|mushrooms?|tomatoes|strawberries)(?= )/;

/** Words that begin a clause and are nobody's name. */
const nobody =
  /^(it|he|she|they|that|this|there|what|roast|oven|dinner|i|we|you|everyone|everybody|one|ones|meat|beef|potatoes|gravy|who|probe|thermometer|power|food|rare|medium|nobody|somebody|someone|anyone|no|not|two|three|both|all|some|most|the|a|and|but|for|also|so|one of|me|us|them|people|butter|cream|fish|milk|eggs|nuts|rest|table|mind|remember|note|forget|were|mean|think|lunch|supper|tea|which|how|why|does|can|is|will|do|just|only|never|well|please|then|or|now|if|when|doctor)$/;

const closed =
  /^(do|likes|hates|loves|prefers|wants|cannot|up|off|out|not|and|the|for|are|has|can|will|who|with|from|down|over|all|have|was|were|been|too|allergic|vegetarian|vegan|pregnant|intolerant|his|her|only|must|does|did|had|but|that|may|any|both|back|then|when|now|get|got|one|two)$/;

const afterName =
  '(?:is|are|has|have|can|could|does|do|takes?|wants?|likes?|loves?|will|would|needs?|eats?|prefers?|gets?|swells|carries|must|should|avoids?|hates?|reacts|asked|asks|breaks|went|turned)';

/** Whose note it is: kin by their word, others by where a name stands. */
function whoIn(match: Match): { who?: string; kin: boolean } {
  const line = match.line.replace(
    /^(and |but |also |so |oh |plus |remember |note |that |because )+/,
    '',
  );
  const kin = peopleOnly.exec(` ${line}`);
  const beside = kin ? / ([a-z]+)/.exec(` ${line}`.slice(kin.index + kin[0].length)) : undefined;
  const shape =
    new RegExp(
      `^([a-z]+)(?: and [a-z]+)? (?:only |really |always |never |also |both )?${afterName} `,
    ).exec(line)?.[1] ??
    /(?:^| )for ([a-z]+) (?:$|it |please |who |no |only |must |the |a |because )/.exec(line)?.[1] ??
    /^(?:make|do|cook|feed) ([a-z]+) /.exec(line)?.[1] ??
    / (?:makes?|gives?|kills?|upsets?) ([a-z]+) /.exec(` ${line}`)?.[1];
  if (kin?.[1]) {
    // "my aunt Bridie": the name goes with the kin; after "is" comes what she is.
    const name =
      !kin[0].endsWith(' is') &&
      beside?.[1] &&
      beside[1].length > 1 &&
      !commonWords.has(beside[1]) &&
      !closed.test(beside[1])
        ? ` ${beside[1]}`
        : '';
    const among = /(one|two|some|one or two) of (?:the|my|our) $/.exec(
      line.slice(0, line.indexOf(kin[1])),
    );
    return { who: `${among?.[0] ?? ''}${kin[1]}${name}`, kin: true };
  }
  return shape && !nobody.test(shape) ? { who: shape, kin: false } : { kin: false };
}

const vulnerable =
  / (pregnant|preggers|with baby|with child|expecting|carrying|months (along|gone|pregnant)|weeks (along|gone|pregnant)|in the family way|bun in the oven|having a baby|immunocompromised|immunosuppressed|immunosuppressants|immune|chemo|chemotherapy|radiotherapy|cancer|frail|transplant|diabetic|sugar problem|breastfeeding|undergoing treatment|dialysis|very old|very young|newborn|new born|elderly|(just|recently) (out of hospital|had (an operation|surgery)))( |$)/;
/** Who must not have it pink, whatever the reason, is asked about like one of those. */
const mustNotPink =
  / (can not|must not|should not|may not|not allowed|not supposed to|not meant to) (\w+ ){0,4}?(pink|rare|raw|bloody|undercooked) /;
const notVulnerable =
  / (carrying the|carrying a|carrying on|expecting (guests|company|people|them|you|us|<)|immune to|can i|safe|ok for) /;

/** A note of one guest in a clause; undefined where the clause holds none, or more than that. */
export function noteIn(match: Match): Meaning | undefined {
  const line = ` ${match.line}`;
  if (match.line.split(' ').length > 19 || match.marks('tw').length > 0) return undefined;
  const { who, kin } = whoIn(match);
  const named = who === undefined ? {} : { who };
  const early = earlyMeal(match, line, who);
  if (early) return early;
  if (match.marks('c').length > 0) return undefined;
  const someone =
    who !== undefined ||
    /^ (he|she) /.test(line) ||
    holds(
      match,
      / (one of|someone|somebody|guest|guests|us|them|party|table|lady|woman|man|there is an?|two|one|we have|we have got|there will be|us is|person|people) /,
    );
  if (!someone) return undefined;
  if (vulnerable.test(line) && !notVulnerable.test(line))
    return { intent: 'note-guest', ...named, need: 'vulnerable' };
  if (who !== undefined && mustNotPink.test(line))
    return { intent: 'note-guest', who, need: 'vulnerable' };
  const small = / (newborn|toddlers?|babies|baby|infant|little one) /.test(line);
  if (
    small &&
    / (we have|we will have|there is|there will be|bringing|brings|coming|at the table|with us|joining) /.test(
      line,
    ) &&
    / (a|an|one|the|her|his|their|my|our|newborn) (little |wee |tiny |small )?(newborn|toddler|baby|infant)/.test(
      line,
    ) &&
    !/ (cry|crying|asleep|monitor|sleep|bath|sitter|chair|nappy|shower|potatoes|carrots|spinach|not) /.test(
      line,
    )
  )
    return { intent: 'note-guest', ...named, need: 'vulnerable' };
  const aged = ageIn(match, line, kin);
  if (aged) return { intent: 'note-guest', ...named, need: 'vulnerable' };
  if (match.marks('n').some((mark) => Number(match.withGroups({ n: mark }).number('n')) > 12))
    return undefined;
  const diet = diets.exec(line)?.[1];
  if (
    diet &&
    !/ (recipe|option|restaurant|burger|sausage|sausages|place|section|aisle) /.test(line)
  )
    return { intent: 'note-guest', ...named, need: 'diet', value: dietValue(diet) };
  if (
    / (does not|do not|will not|can not|never|stopped|gave up|has given up|not) (eat|eats|eating|take|takes|touch|touches|have|do) (any )?(meat|beef|red meat|flesh|animals) /.test(
      line,
    ) &&
    (who !== undefined || /^ (he|she|one|someone|somebody) /.test(line))
  )
    return { intent: 'note-guest', ...named, need: 'diet', value: 'vegetarian' };
  const pork =
    / (does not|do not|will not|can not|never|not) (eat|eats|touch|have) (any )?(pork|lamb) /.exec(
      line,
    );
  if (pork && who !== undefined)
    return { intent: 'note-guest', ...named, need: 'diet', value: `no ${pork[4]}` };
  const allergy = allergyIn(line, who);
  if (allergy) return { intent: 'note-guest', ...named, need: 'allergy', value: allergy };
  if (who !== undefined) return donenessNote(match, line, who, kin);
  // "nana's coming and she has hers cremated": she is whoever was named.
  const meant =
    /^ (he|she) (only )?(has|likes|wants|takes|prefers|needs|eats|will have) (it|his|hers) /.test(
      line,
    )
      ? (peopleOnly.exec(` ${match.whole}`)?.[1] ?? /^ (he|she)/.exec(line)?.[1])
      : undefined;
  return meant === undefined ? undefined : donenessNote(match, line, meant, true);
}

const dietValue = (diet: string): string =>
  /vegan|plant|animals/.test(diet)
    ? 'vegan'
    : /veg|meat/.test(diet)
      ? 'vegetarian'
      : diet.replace(/s$/, '');

function allergyIn(line: string, who: string | undefined): string | undefined {
  const sick =
    / (celiac|coeliac|allerg\w*|intoleran\w+|anaphyla\w+|epipen|reacts?|reaction|(gets?|be|feels?|is|makes?|made|turns?) (\w+ ){0,2}(sick|ill|poorly|hives|spots)|swells?|breaks out|comes out in|kills?|upsets?) /;
  const barred =
    / (can not|must not|may not|does not|do not|should not|will not|not allowed|could not|no|not|avoids?|off|stay away|stays away|without|never|a no go|out of bounds|hates?|free) /;
  const named = [...line.matchAll(new RegExp(allergens, 'g'))].map((found) => found[1]);
  const plain = named.length === 0 ? undefined : [...new Set(named)].join(' and ');
  if (/ (celiac|coeliac) /.test(line)) return / (celiac|coeliac) /.exec(line)![1];
  if (plain === undefined) return undefined;
  if (sick.test(line) && !/ (laugh|tired) /.test(line)) return plain;
  if (who === undefined || !barred.test(line)) return undefined;
  return /(?<= )(eat|eats|have|has|take|takes|touch|tolerate|do|does|handle|no|for|avoids?|go|near|stomach|digest|anything|off|free|without|allowed|not)(?= )/.test(
    line,
  ) &&
    !/ (there is no|we have no|i have no|run out|out of|forgot|bring|brought|bought|buy|like any more) /.test(
      line,
    )
    ? plain
    : undefined;
}

/** Five years and under, sixty-five and over: the ages authorities name. */
function ageIn(match: Match, line: string, kin: boolean): boolean {
  return match.marks('n').some((mark) => {
    const quantity = match.quantityOfMark(mark);
    if (quantity?.kind !== 'number' || quantity.value >= 110) return false;
    const around = line.replace(mark, '<#>');
    const months = /<#> (months?|weeks?) (old |$)/.test(around) || /<#> weeks? old/.test(around);
    const says =
      / (is|are|is only|is nearly|is almost|turns|turned|aged|turning|just turned) <#> (years? old |years? |$|now |and )|<#> ?(year|years) old|^ ?<#> year old/.test(
        around,
      );
    if (months) return kin || / (baby|old|little|wee|young) /.test(line);
    return (
      says &&
      (quantity.value <= 5 || quantity.value >= 65) &&
      (kin || / (years?) old /.test(line)) &&
      !/ (house|wine|whisky|dog|cat|car|oven|recipe|cheese|pan) /.test(line)
    );
  });
}

const pleases =
  / (his|hers|her|their|theirs|mine|well done|rare|medium|likes?|wants?|prefers?|cooked|pink|takes?|only|needs?|done|slice|slices|piece|portion|bit|will|would|has|have|for|asked|make|do) /;

function donenessNote(match: Match, line: string, who: string, kin: boolean): Meaning | undefined {
  if (/ (is here|late|cooking|coming|arrived|going|still (\w+ )?(pink|raw|bloody)) /.test(line))
    return undefined;
  const cremated =
    / (incinerated|cremated|charred|burnt|burned|to death|shoe leather|right through|all the way through|through and through|no (pink|blood)|any (pink|blood)|with (pink|blood)|pink bits|cooked more|more done|well cooked|no red|not pink|not bloody|grey|sole of a shoe|boot leather) /.test(
      line,
    ) &&
    !/ (gravy|potatoes|sauce|crispy|hand|arm|finger|himself|herself|tongue|mouth|toast) /.test(
      line,
    );
  const value = cremated ? 'well-done' : donenessOf(match.line);
  if (!value || !pleases.test(line)) return undefined;
  if (
    !kin &&
    !/ (his|hers|her|their|theirs|slice|slices|piece|portion|likes?|wants?|prefers?|takes?|needs?|for|asked|done|well|not (eat|touch|go near|stomach|have)) /.test(
      line,
    )
  )
    return undefined;
  return { intent: 'note-guest', who, need: 'doneness', value };
}

/** "the kids have theirs at five": people who are not all, a meal and an hour. */
function earlyMeal(match: Match, line: string, who: string | undefined): Meaning | undefined {
  const mark = match.marks('c')[0] ?? match.marks('n').at(-1);
  if (mark === undefined || who === undefined || match.marks('d').length > 0) return undefined;
  if (
    !/ (eat|eats|eating|fed|feed|feeding|feeds|tea|theirs|his|hers|(his|her|their|a) (own )?(dinner|supper|food|meal|plates?|tea|lunch)|dinner early) /.test(
      line,
    )
  )
    return undefined;
  if (
    !/^(kids|kiddies|child|children|toddlers?|baby|little ones?|littlies|wee ones?|small ones?|weans?|bairns?|boys?|girls?|twins|grandkids|gran|granny|grandma|grandmother|grandad|grandpa|grandfather|nan|nana|nanna|mum|dad|mother|father|uncle|aunt|auntie|sister|brother|son|daughter|niece|nephew)/.test(
      who,
    ) ||
    / (late|arrive|arrives|come|comes|coming|here|bring|in|minutes|oven|bed|train|plane|we|all of us|everyone|guests|reads) /.test(
      line,
    ) ||
    !/ (at|by|before|around|for|from) <[cn]\d+> /.test(line)
  )
    return undefined;
  const value = match.withGroups({ clock: `${mark} ` }).mealTime('clock');
  return value ? { intent: 'note-guest', who, need: 'eats-at', value } : undefined;
}

export const noteFrame: Frame = {
  name: 'note',
  moods: ['statement', 'negative', 'intention', 'request'],
  build: noteIn,
};
