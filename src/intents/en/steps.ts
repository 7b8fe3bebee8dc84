/**
 * Which step English words speak of. The roast's own steps go by bare ids, a dish's by "dish.step";
 * what the cards name comes first, the verbs of the trade after.
 */
import { oncePer } from '../../base/once.ts';
import type { Lexicon, Named, ReadContext } from '../../kitchen/heard.ts';
import { nameExactlyIn, nameIn, stemsOf, stemsOfNames } from '../names.ts';
import type { Token } from '../token.ts';
import { choreIn } from './chores.ts';
import { uncardedDishIn } from './uncarded-dishes.ts';

/** What can be missing from a kitchen: all that the cards take or use. */
export const goodsOf = oncePer(({ ingredients, tools }: Lexicon): readonly Named[] => [
  ...ingredients,
  ...tools,
]);

const roastVerbs: readonly [RegExp, string][] = [
  [
    /^(french|frenched|frenching|scrape|scraped|scraping|cleaned the bones|clean the bones|bones)$/,
    'french',
  ],
  [/^(truss|trussed|trussing|tie|tied|tying|tie up|tied up|string|strung)$/, 'truss'],
  [
    /^(season|seasoned|seasoning|salt|salted|salting|rub|rubbed|peppered|salt and pepper|peppering|smear|seasons|brine|brined|brining)$/,
    'season',
  ],
  [/^(butter|buttered|buttering|baste|basted|basting)$/, 'butter-roast'],
  [/^(rest|rested|resting|tent|tented)$/, 'rest'],
  [/^(carve|carved|carving|slice|sliced|slicing)$/, 'carve'],
  [/^(serve|served|serving|plate|plated|plate up|plating up|plated up)$/, 'serve'],
  [/^(check|checked|checking|probed)$/, 'check'],
  [/^(preheat|preheated|preheating)$/, 'oven-on'],
  [/^(pull|pulled|pulling)$/, 'pull'],
  [/^(sear|seared|searing|brown|browned|browning)$/, 'sear'],
  [/^(trim|trimmed|trimming)$/, 'trim'],
];

const isRoast =
  /^((the|my|our|this|that) )?(it|that|this|roast|joint|beef|meat|rib|ribs|lamb|pork|leg|loin|tenderloin|fillet|topside|sirloin|rib roast|prime rib|whole thing)$/;

export const meansRoast = (words: string): boolean => isRoast.test(words.trim());

/** "dinner" alone names no rolls, nor "top" a rump. */
const unnamed =
  /^(|(the )?(dinner|supper|lunch|tea|been|table|oven|pan|hot|warm|top|side|main|fat|water|french|english|italian|leave)( it)?)$/;

/** The dish that words name, those of this dinner first. */
export function dishIn(words: string, context: ReadContext): string | undefined {
  if (words.trim() === '' || meansRoast(words)) return undefined;
  if (unnamed.test(words.trim())) return undefined;
  // "mint sauce" has no card, and is no misspelt wine sauce.
  return uncardedDishIn(words, context) === undefined
    ? nameIn(context.lexicon.dishes, words, context.dishes)
    : nameExactlyIn(context.lexicon.dishes, words, context.dishes);
}

/** The same without misspellings. */
export function dishExactlyIn(words: string, context: ReadContext): string | undefined {
  return unnamed.test(words.trim()) || meansRoast(words)
    ? undefined
    : nameExactlyIn(context.lexicon.dishes, words, context.dishes);
}

/** Where the longest name ends that begins at a place; no name has more than three words. */
export function longestNameAt(
  tokens: readonly Token[],
  start: number,
  isName: (words: readonly string[]) => boolean,
): number | undefined {
  for (const length of [3, 2, 1]) {
    const words = tokens.slice(start, start + length).map(({ word }) => word);
    if (words.length === length && isName(words)) return start + length;
  }
  return undefined;
}

/** A dish as named or, where no card knows it, as said. */
export const dishOrAsSaid = (words: string, context: ReadContext): string =>
  dishIn(words, context) ??
  words
    // "Nan's pickle" comes here as "nan is pickle".
    .replace(/^\w+ is /, '')
    .replace(/^(the|some|a|an|our|my|any) /, '')
    .trim();

/** The step of a roast that a verb names: "trussed" is truss. */
export const roastStep = (verb: string): string | undefined =>
  roastVerbs.find(([shape]) => shape.test(verb.trim()))?.[1];

export const stemOfVerb = (verb: string): string =>
  verb
    .trim()
    .replace(/^par(?=boil)/, '')
    .replace(/(pp|mm|nn|tt|rr|bb)(ed|ing)$/, (double) => double[0]!)
    .replace(/(ed|ing)$/, '')
    .replace(/e$/, '');

/** Every word of a step's names, as the verb it may be. */
const verbStemsOf = oncePer(
  (step: Named): ReadonlySet<string> => new Set(stemsOfNames(step).flat().map(stemOfVerb)),
);

/** The step of a dish that a verb names; with no such verb among its steps, undefined. */
export function dishStep(dish: string, verb: string, context: ReadContext): string | undefined {
  const own = context.lexicon.steps.filter((step) => step.id.startsWith(`${dish}.`));
  const stem = stemOfVerb(verb);
  if (stem.length < 2) return undefined;
  const byId = own.find((step) => stemOfVerb(step.id.slice(dish.length + 1)) === stem);
  if (byId) return byId.id;
  return own.find((step) => verbStemsOf(step).has(stem))?.id;
}

/** "The batter" of batter puddings: a step that goes by a word of its own. */
export function partNamed(dish: string, words: string, context: ReadContext): string | undefined {
  const said = words.split(' ');
  return context.lexicon.steps.find(({ id }) => {
    const part = id.startsWith(`${dish}.`) ? id.slice(dish.length + 1) : '';
    return part.length > 4 && !dish.split('-').at(-1)!.startsWith(part) && said.at(-1) === part;
  })?.id;
}

/** The first step of a dish, where it is made ready. */
export const prepStep = (dish: string, context: ReadContext): string =>
  context.lexicon.steps.find((step) => step.id.startsWith(`${dish}.`))?.id ?? `${dish}.prep`;

/**
 * The dish and its step that a noun and a verb mean together: "potatoes" alone are roast potatoes, but
 * "peeled potatoes" are those for the mash, since roast potatoes are never peeled.
 */
export function stepOfNamed(words: string, verb: string, context: ReadContext): string | undefined {
  const first = dishIn(words, context);
  const own = first && dishStep(first, verb, context);
  if (own) return own;
  // "the bread sauce is done": of the dish that was named, whatever other sauce has a step of that name.
  if (first && /^(done|made|ready|finished|cooked|sorted|complete)$/.test(verb)) return undefined;
  const noun = stemsOf(words).at(-1);
  if (noun === undefined) return undefined;
  const meant = first !== undefined && prepVerb.test(verb) && context.dishes.includes(first);
  const others = context.lexicon.dishes
    .filter((dish) => dish.id !== first && stemsOfNames(dish).some((stems) => stems.includes(noun)))
    // "Spuds peeled", with roast potatoes on the menu and no mash: peeled for those all the same.
    .filter(({ id }) => !meant || context.dishes.includes(id))
    .sort((a, b) => Number(context.dishes.includes(b.id)) - Number(context.dishes.includes(a.id)));
  for (const dish of others) {
    const step = dishStep(dish.id, verb, context);
    if (step) return step;
  }
  return first && prepVerb.test(verb) ? prepStep(first, context) : undefined;
}

const prepVerb =
  /^(peeled|scrubbed|washed|chopped|cut|sliced|trimmed|topped|tailed|strung|prepped|prepared|halved|diced|shredded|picked|podded|peeling|scrubbing|washing|chopping|cutting|slicing|trimming)$/;

/** The step by which a dish goes into the oven or on to the stove, if its card has one. */
export function inStepAmong(dish: string, context: ReadContext): string | undefined {
  const own = context.lexicon.steps
    .filter((step) => step.id.startsWith(`${dish}.`))
    .map((step) => step.id);
  return (
    own.find((id) => /\.(in|roast|bake|in-oven)$/.test(id)) ??
    own.find((id) => /\.(cook|on|boil|steam|warm)$/.test(id))
  );
}

export const inStepOf = (dish: string, context: ReadContext): string =>
  inStepAmong(dish, context) ?? `${dish}.in`;

/** The step by which a dish is finished or put in: "made" names whatever makes it. */
export function makingStep(dish: string, context: ReadContext): string {
  const own = context.lexicon.steps.filter((step) => step.id.startsWith(`${dish}.`));
  for (const last of ['make', 'cook', 'whip', 'mix', 'finish', 'out'])
    if (own.some((step) => step.id === `${dish}.${last}`)) return `${dish}.${last}`;
  return own.at(-1)?.id ?? `${dish}.make`;
}

const withoutArticles = (words: string): string => words.replace(/\b(the|my|our) /g, '');

/** The steps that go by each name, articles apart. */
const stepsByName = oncePer(({ steps }: Lexicon): ReadonlyMap<string, readonly string[]> => {
  const byName = new Map<string, string[]>();
  for (const { id, names } of steps)
    for (const name of new Set(names.map(withoutArticles)))
      byName.set(name, [...(byName.get(name) ?? []), id]);
  return byName;
});

/** A step of a dish on the menu that goes by exactly these words, articles apart. */
const stepOfMenu = (words: string, { lexicon, dishes }: ReadContext): string | undefined =>
  stepsByName(lexicon)
    .get(withoutArticles(words))
    ?.find((id) => dishes.includes(id.split('.')[0] ?? ''));

/** The dishes on the menu that a card knows. */
const dishesOfMenu = oncePer(({ lexicon, dishes }: ReadContext): readonly Named[] =>
  lexicon.dishes.filter((dish) => dishes.includes(dish.id)),
);

/** The step named by a noun phrase: "the frenching", "scrubbing the potatoes", "the herb butter". */
export function stepIn(words: string, context: ReadContext): string | undefined {
  const bare = words.replace(/^(the|to|doing|on|with) /, '').trim();
  if (bare === '') return undefined;
  const chore = choreIn(bare);
  if (chore) return chore;
  const onMenu = stepOfMenu(bare, context);
  if (onMenu) return onMenu;
  const listed = nameExactlyIn(dishesOfMenu(context), bare);
  if (listed && !/ing\b/.test(bare)) return makingStep(listed, context);
  const [verb = '', ...object] = bare.split(' ');
  const noun = object
    .join(' ')
    .replace(/^(the|up|of|off) /, '')
    .replace(/^the /, '');
  if (noun !== '') {
    const dish = dishIn(noun, context);
    const step = dish && dishStep(dish, verb, context);
    if (step) return step;
  }
  const ofRoast =
    roastStep(bare) ??
    (noun === '' || /^(bones|it|rib bones|ends)$/.test(noun) || meansRoast(noun)
      ? roastStep(verb)
      : undefined);
  if (ofRoast) return ofRoast;
  const named = nameIn(context.lexicon.steps, bare, context.openSteps);
  if (named) return named;
  const dish = dishIn(bare, context);
  if (dish)
    return (
      context.openSteps.find((step) => step.startsWith(`${dish}.`)) ?? makingStep(dish, context)
    );
  return undefined;
}
