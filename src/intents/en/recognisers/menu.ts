/** Dishes that join the dinner or leave it. */

import { oncePer } from '../../../base/once.ts';
import type { Lexicon, Named } from '../../../kitchen/heard.ts';
import { stemOf, stemsOf } from '../../names.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { commonWords } from '../common-words.ts';
import { dishesNamed } from '../frames/dinner.ts';
import { otherTopics } from '../other-topics.ts';
import { dishExactlyIn, dishIn, dishOrAsSaid, meansRoast, stepIn } from '../steps.ts';
import { uncardedDishIn, uncardedDishOf } from '../uncarded-dishes.ts';
import { phrases } from '../vocabulary.ts';

/** Said of a dish, these put it beside others. */
const addedTo =
  /^ (and|also|plus) | (with it|with that|as well|too|as a side|on the side|alongside|to go with it|for (afters|pudding|dessert|starters?|a starter)) $/;

/** The names in a slot; "mac and cheese" is one. */
const namesIn = (words: string, match: Match, between: RegExp): string[] =>
  uncardedDishIn(words, match.context) === undefined ? words.split(between) : [words];

const dishes = (match: Match, slot: string): string[] =>
  namesIn(match.words(slot), match, / (?:and|or|plus) /)
    .flatMap((part) => {
      const whole = part.replace(/ (thing|things|stuff|dish|bit|one)( with .*)?$/, '').trim();
      if (dishExactlyIn(whole, match.context) || uncardedDishIn(part, match.context) !== undefined)
        return [whole];
      const named = dishesNamed(whole, match);
      return named.length > 1 ? named : whole.split(' with ');
    })
    .map((part) => part.trim())
    .filter(
      (part) =>
        part !== '' &&
        !/^(it|that|them|me|you|us|time|dinner|lunch|(under|in|on|at|by|over|from|into|with) .*|a (sit|kip|nap|breather|snooze|drink|beer|look|go|think|word|chat|seat|rest|break|laugh|party|problem|question|minute)|fun|all|all that|the works|the lot|the trimmings|trimmings|six|kids|guests|people|this|the roast|everything|nothing|something|one)$/.test(
          part,
        ),
    );

/** "I have scrubbed the potatoes" reports; "we'll have mashed potatoes" orders. */
const participle =
  /^(made|done|put|got|taken|started|finished|been|left|cut|washed|scrubbed|peeled|prepared|seasoned|salted|dried|turned|checked|stripped|chopped|trimmed|whipped|mixed|drained|parboiled|tossed|moved|burnt|burned|dropped|forgotten|not|to|no)\b/;

/** The dish that words name, with a card or without one. */
const menuDishIn = (words: string, match: Match): string | undefined =>
  uncardedDishIn(words, match.context) ?? dishIn(words, match.context);

const stemsOfDishes = oncePer(
  ({ dishes: all }: Lexicon) =>
    new Set(all.flatMap(({ names }) => names.flatMap((name) => stemsOf(name)))),
);

/** Whether words are names of dishes and little else: "some roast carrots", not "I love potatoes". */
function onlyDishes(words: string, match: Match): boolean {
  const known = stemsOfDishes(match.context.lexicon);
  const all = words.split(' ');
  const single = all.length === 1 && match.before.length === 0;
  if (single && match.context.stage !== 'planning' && match.context.stage !== 'prep') {
    // One word alone orders nothing once the day has begun.
    if (match.whole.trim() === all[0] && match.context.expecting === undefined) return false;
  }
  return all.every(
    (word) =>
      /^(and|or|some|the|a|with|of|nice|big|few|lots|plenty|also|then|too|simple|little|good|homemade|our|usual|plus|extra|side|for|as|well|maybe|more|side)$/.test(
        word,
      ) || stemsOf(word).every((stem) => known.has(stem)),
  );
}

/** Words that name nothing to eat. */
const nothings =
  / (oh|ah|well|hmm|right|hang|look|it|them|they|we|you|i|he|she|put|down|yet|red|white|green|purple|same|other|ones?|kindly|could|would|should|wait|insists?|goes|without|saying|thanks|maybe|sure|my|husband|wife|mum|dad|kids|everyone|everybody|loves?|likes?|wants?|because|much|again|later|there|here|possible|sorry|obviously|naturally|course|usual|what|how|when|why|who|too) /;

const partsOf = (match: Match): string[] =>
  match.whole
    .split(/ , | and | plus /)
    .map((part) => part.trim())
    .filter((part) => part !== '');

/** Whether the whole text is a list of dishes, some with a card: "trifle, carrots and mint sauce". */
function isList(match: Match): boolean {
  const parts = partsOf(match);
  return (
    parts.every((part) => menuDishIn(part, match) !== undefined) &&
    parts.some((part) => dishIn(part, match.context) !== undefined)
  );
}

/** Words of a report: what is in, out or finished is not being put on the menu. */
const reported =
  / (is|are|was|were|went|been|in|inside|out|off|burnt|split|finished|started|need|needs|minutes|timer|still|peeled|trimmed|scrubbed|chopped|sliced|made|ready|done|cut|put|not|hot|cold|hates?|love|like) /;
const ordered =
  / (add|with it|as well|on the side|alongside|menu|plan|list|to go with|as a side|we will have|we are having|there will be|would like|also|too|instead|sides are) /;
const wished = /^ ?((i|we|they) (want|would like)|can|could|shall|may|do) /;

/** Whether words are the whole name of an ingredient and of no dish. */
function isIngredientOnly(words: string, match: Match): boolean {
  const named = (things: readonly Named[]): boolean =>
    things.some((thing) => thing.names.some((name) => name.toLowerCase() === words));
  const { ingredients, dishes: all } = match.context.lexicon;
  return named(ingredients) && !named(all);
}

/** "Add beetroot", while the menu is made: what is of no other matter is a dish. */
const isAdded = (name: string, { context, line }: Match): boolean =>
  context.stage === 'planning' &&
  /^ ?(please |and |also )?add (some|a|an|the|our|my) /.test(line) &&
  name.split(' ').length <= 4 &&
  !/<|\d/.test(line) &&
  !/\b(bit|touch|pinch|drop|splash|more|time|timer|minutes?|hours?|note|step|fun)\b/.test(name) &&
  !name.split(' ').some((word) => otherTopics.has(word)) &&
  !name.split(' ').every((word) => commonWords.has(word) || commonWords.has(stemOf(word)));

const addDish = (match: Match): Meaning[] | undefined => {
  if (/ (have|has|had) /.test(` ${match.line}`) && participle.test(match.words('thing')))
    return undefined;
  // "Have some more potatoes" is said at the table.
  if (/^have (some |another |a few )?(more|seconds) /.test(match.line)) return undefined;
  // "doing the carrots now", once the day has begun, is what is being done.
  if (
    /^(i am |we are )?(doing|making) /.test(match.line) &&
    /^(sear|low-roast|rest|hold|carve)$/.test(match.context.stage ?? '')
  )
    return undefined;
  // "do the butter next" is the order of work.
  if (/^do .* (next|first|now|then) $/.test(match.line)) return undefined;
  // "I've the cabbage on" has begun it.
  if (/ (on|in) $/.test(` ${match.line}`)) return undefined;
  // Beside something already heard in its clause a dish is only what that was about.
  const leavings = match.line.includes('|') && match.before.at(-1)?.intent !== 'add-dish';
  const names = dishes(match, 'thing').filter(
    (name) =>
      !meansRoast(name) &&
      !(
        /\b(that|it|this|i|you|we|she|he|they|will|side|to|the|of|a|an|with|for|and)$/.test(name) &&
        !dishIn(name, match.context)
      ),
  );
  const uncarded = names.filter((name) => uncardedDishIn(name, match.context) !== undefined);
  // The "in" of pigs in blankets reports nothing.
  const line = uncarded.reduce((said, name) => said.replace(name, 'dish'), ` ${match.line}`);
  if ((reported.test(line) || leavings || / not /.test(line)) && !ordered.test(line))
    return undefined;
  // "I want ice cream" is any child's word; "add ice cream" is said to whoever keeps the menu.
  if (
    uncarded.length === names.length &&
    wished.test(match.whole) &&
    !ordered.test(line) &&
    !partsOf(match).some((part) => dishIn(part, match.context))
  )
    return undefined;
  const known = names.map((name) => menuDishIn(name, match));
  if (
    names.length === 0 ||
    names.some(
      (name, at) =>
        known[at] === undefined && (isIngredientOnly(name, match) || nothings.test(` ${name} `)),
    ) ||
    (known.every((id) => id === undefined) &&
      !names.every((name) => isAdded(name, match)) &&
      !/(with it|with that|as a side|on the side|as well|alongside|to go with|side of|for the side|to the (menu|plan|list|dinner|meal))/.test(
        match.line,
      ))
  )
    return undefined;
  return names.map((name, at) => ({
    intent: 'add-dish' as const,
    dish: known[at] ?? dishOrAsSaid(name, match.context),
  }));
};

/** "Instead of peas we do green beans". */
const insteadOf = (match: Match): readonly Meaning[] | undefined => {
  const [dropped, added] = [match.words('out'), match.words('thing')].map((words) =>
    menuDishIn(words, match),
  );
  return dropped && added
    ? [
        { intent: 'drop-dish', dish: dropped },
        { intent: 'add-dish', dish: added },
      ]
    : undefined;
};

/** "Swap the peas for beans"; what no card knows is not dropped for it. */
const swapped = (match: Match): readonly Meaning[] | undefined => {
  const [dropped, added] = [match.words('out'), match.words('thing')].map((words) =>
    dishExactlyIn(words, match.context),
  );
  if (added === undefined) return undefined;
  return [
    ...(dropped === undefined ? [] : [{ intent: 'drop-dish' as const, dish: dropped }]),
    { intent: 'add-dish', dish: added },
  ];
};

export const menu: Recogniser = {
  name: 'menu',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        '^ (instead of|rather than|in place of) [the] {out:thing} [,] (we|i|let us) [will|want to|would like to|can|are|am] (do|have|make|having|doing|making|go with|eat|cook|take) [the|some] {thing} $',
      ],
      insteadOf,
    ),
    ...phrases(
      [
        '^ [let us|we will|i will|i want to|can we|could we] (swap|switch|change|exchange) [the] {out:thing} (for|with) [the|some] {thing} [instead] $',
      ],
      swapped,
    ),
    ...phrases(
      [
        '(sod|bugger|to hell with|screw|no|drop|forget|lose|scrap|skip|ditch|cancel|leave out|cut|without|remove|take off|bin|not doing|not making|not having|not going to do|not going to make|not bother with|will not bother with|hold|get rid of|dropping|ditching|skipping|scrapping|losing|cutting|no more|can the|sack off|i will skip|never mind|do not bother with|will not have|will not make|do not want|not do|not make|do not need|not bothering with|will not do) [the|any|doing|making] {thing} (after all|any more|anymore|tonight|today|this time|from the menu|from the list|then|$)',
        '^ (instead of|rather than|in place of|anything but) [the] {thing} $',
        '^ (instead of|rather than|in place of) [the|having|doing|making] {thing} (we will|i will|let us|we are|i am|do|make|have) ',
        '{thing} (is|are) (off the (menu|list|table)|cancelled|scrapped|dropped|out of the plan)',
        '(leave|take|strike|cross|remove|scratch) [out|off] [the] {thing} [out|off|away] (of|from|off) [the|my|our] (list|menu|plan|table) ',
        '^ {thing} (take|strike|cross|remove|scratch) [it|them] (out|off|away) [of|from] [the|my|our] (list|menu|plan) ',
        '(leave|take) the {thing} (off|off then|out of it|for (today|tonight|now|another day)) $',
        '^ [let us|we will|we can] leave [out] the {thing} [out|today|tonight|then|$] $',
      ],
      (match) => {
        const words = match.words('thing');
        if (/^(leave|bother|it|that)\b/.test(words)) return undefined;
        // "don't let me forget the beans" keeps them.
        if (/ not (let (me|us) )?forget /.test(` ${match.line}`)) return undefined;
        // "no flour in the gravy" leaves the gravy.
        if (/^no (\w+ ){1,2}in (the|my|our|it|her|his) /.test(match.line)) return undefined;
        // "no parsley" is what is not in the house, unless a dish goes by that very name.
        if (/^no /.test(match.line) && isIngredientOnly(words, match)) return undefined;
        const dish =
          match.context.stage === 'planning'
            ? menuDishIn(words, match)
            : (uncardedDishOf(words, match.context) ?? dishIn(words, match.context));
        return dish ? { intent: 'drop-dish', dish } : undefined;
      },
    ),
    ...phrases(
      [
        '(we will have|we will do|i will do|i will make|we are having|we are doing|i am doing|i am making|having|doing|making|add|we are making|^ with|throw in|also|there will be|we want|i want|let us have|let us do|let us add|serve it with|serving|to go with it|i would like|we would like|i am also doing|we also have|i am also making|have|do|make|include|adding|i fancy|we fancy|fancy|chuck in|bung in|stick in|put|i am serving|we are serving|plan|go with|it is with|and|and also|i also want|add in|sides are|the sides are|side of|for sides|alongside|on the side|served with|accompanied by|plus|we have got|there is|going to do|going to make|want) [also|some|the|a|have] {thing} [with it|with that|as well|too|as a side|as sides|on the side|alongside|with the (roast|beef|meat|lamb|pork)|to go with (it|that)|to the (menu|plan|list|dinner|meal)|for dinner|for sides|for the side|for (afters|pudding|dessert|starters|a starter)] $',
      ],
      addDish,
    ),
    ...phrases(
      [
        '^ {thing} [with it|with that|as well|too|as a side|on the side|alongside|with the roast|to go with it|for (afters|pudding|dessert|starters|a starter)] $',
      ],
      (match) => {
        const words = match.words('thing');
        const names = namesIn(words, match, / (?:and|plus) /);
        const carded = names.filter((name) => !uncardedDishIn(name, match.context));
        // "the potatoes are in" is a report, whatever the stage.
        if (
          carded.length > 0 &&
          (/\b(is|are|was|were|in|out|on|off|done|ready|made|burnt|cold|now)\b/.test(words) ||
            /\b\w+ \w{2,}ed$/.test(words))
        )
          return undefined;
        const continues = match.before.at(-1)?.intent;
        // A trifle alone is as often talk; beside dishes that there are cards for it is one of a list.
        const listed =
          carded.length > 0
            ? onlyDishes(carded.join(' and '), match)
            : addedTo.test(` ${match.whole}`) || isList(match);
        if (!listed && continues !== 'add-dish') return undefined;
        const leavings =
          match.line.includes('|') && !/^(add-dish|drop-dish)$/.test(continues ?? '');
        if (leavings && !/ (with it|as well|too|on the side) /.test(` ${match.line}`))
          return undefined;
        if (
          match.context.stage !== undefined &&
          match.context.stage !== 'planning' &&
          match.context.stage !== 'prep' &&
          !/^(add-dish|drop-dish)$/.test(continues ?? '')
        )
          return undefined;
        if (match.context.expecting !== undefined && match.context.expecting !== 'roast') {
          if (continues !== 'add-dish') return undefined;
        }
        const ids = names.map((name) => menuDishIn(name, match));
        if (ids.some((id) => id === undefined)) {
          return continues === 'add-dish' &&
            names.every(
              (name) =>
                name.split(' ').length <= 3 &&
                !/^(that|it|is|no|yes|i|we)\b/.test(name) &&
                !nothings.test(` ${name} `),
            ) &&
            !stepIn(words, match.context)
            ? names.map((name, at) => ({
                intent: 'add-dish' as const,
                dish: ids[at] ?? dishOrAsSaid(name, match.context),
              }))
            : undefined;
        }
        return ids.map((dish) => ({
          intent:
            continues === 'drop-dish' &&
            !/ ?(instead of|rather than|in place of) /.test(match.whole)
              ? ('drop-dish' as const)
              : ('add-dish' as const),
          dish: dish!,
        }));
      },
    ),
  ],
};
