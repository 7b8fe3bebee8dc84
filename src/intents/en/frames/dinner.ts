/** Frames of the dinner itself: units, dishes, guests, what is lacking, who helps, how done. */
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { donenessOf } from '../recognisers/doneness.ts';
import { dishExactlyIn, goodsOf, meansRoast } from '../steps.ts';
import { after, holds } from './words.ts';

const telling = ['statement', 'request', 'intention'] as const;

export const unitsFrame: Frame = {
  name: 'units',
  moods: [...telling, 'negative'],
  build(match) {
    if (match.marks('tncdwg').length > 0 || match.line.split(' ').length > 9) return undefined;
    const said = ` ${match.line.replace(/ (not|instead of|rather than) .*/, ' ')}`;
    const temperature = / (celsius|metric|degrees c) /.test(said)
      ? 'C'
      : / (fahrenheit|imperial|degrees f) /.test(said)
        ? 'F'
        : undefined;
    const weight = / (kilos|metric) /.test(said)
      ? 'kg'
      : / (pounds|imperial) /.test(said)
        ? 'lb'
        : undefined;
    if (!temperature && !weight) return undefined;
    return {
      intent: 'set-units',
      ...(temperature ? { temperature } : {}),
      ...(weight ? { weight } : {}),
    };
  },
};

const adding =
  / (add|adding|fancy|wants|needs|wanted|chuck|going for|go for|there is|have|having|do|doing|make|making|want|need|like|plan|menu|list|side|sides|also|plus|with|include|serve|serving|cook|cooking|bung|throw|chuck|stick|pop|going|there will be|there is|as well|too|instead) /;
const dropping =
  / (drop|cancel|scrap|skip|ditch|lose|bin|forget|no|not|without|off|remove|cut|axe|sack off|leave out|rather not|can not be bothered|will not|never mind|out) /;
const reported =
  / (is|are|was|were|went|been|out|burnt|burned|done|ready|made|peeled|scrubbed|finished|cooked|risen|gone|turned|timer|minutes|<d\d+>|<c\d+>|<t\d+>|oven|hand|help) /;

/** Dishes named anywhere in a clause, with what is said of having them. */
export const dishFrame: Frame = {
  name: 'dish',
  moods: [...telling, 'negative'],
  build(match): Meaning[] | undefined {
    const swap = swapped(match);
    if (swap) return swap;
    const unwanted = unwantedDish(match);
    if (unwanted) return [{ intent: 'drop-dish', dish: unwanted }];
    if (holds(match, reported) || match.line.split(' ').length > 16) return undefined;
    if (match.context.expecting === 'choice' && /^(the|that) one /.test(match.line))
      return undefined;
    // "we need thyme": what is not in the house is no dish.
    if (
      /^(i|we) (still )?(need|want) (some |more |the |any )?\S+ (\S+ )?$/.test(match.line) &&
      isIngredient(match)
    )
      return undefined;
    const dishes = dishesNamed(match.line, match);
    if (dishes.length === 0) return undefined;
    // "you can't have beef without yorkshires" wants them all the more.
    if (/ not (have|do|eat|serve|be) .*without /.test(` ${match.line}`)) {
      const missed = dishNamed(match.line.replace(/.*without /, ''), match);
      return missed ? [{ intent: 'add-dish', dish: missed }] : undefined;
    }
    if (
      holds(match, / (like|likes|love|loves|hate|eat|eats|eating) /) &&
      !holds(match, / would (like|love) /)
    )
      return undefined;
    // "the potatoes won't crisp" drops nothing.
    if (holds(match, / not (crisp|brown|soften|rise|thicken|boil|fit|cook|set|go|look|come) /))
      return undefined;
    // "don't let me forget the beans" keeps them.
    if (holds(match, / not (let me |let us )?(forget|drop) /)) return undefined;
    // "it was the parsnips I put in, not the spuds" drops nothing.
    if (
      /^not (the |my )?\S+( \S+)? $/.test(match.line) &&
      /^report-/.test(match.before.at(-1)?.intent ?? '')
    )
      return undefined;
    if (holds(match, dropping)) return dishes.map((dish) => ({ intent: 'drop-dish', dish }));
    return holds(match, adding) &&
      !holds(
        match,
        / (hate|smell|smells|who|passed|pass|if|ask|loads|leftover|more|your|yours|seconds) /,
      )
      ? dishes.map((dish) => ({ intent: 'add-dish', dish }))
      : undefined;
  },
};

/** Whether all that is named is something a recipe asks for. */
function isIngredient(match: Match): boolean {
  const words = match.line
    .replace(/^(i|we) (still )?(need|want) (some |more |the |any )?/, '')
    .trim();
  const { ingredients, dishes } = match.context.lexicon;
  const named = (things: readonly { names: readonly string[] }[]): boolean =>
    things.some(({ names }) => names.some((name) => name.toLowerCase() === words));
  return named(ingredients) && !named(dishes);
}

/** "nobody eats salad here", "the spinach has gone slimy, that's off the menu". */
function unwantedDish(match: Match): string | undefined {
  if (
    / (off|from) the (menu|list|table|plan) /.test(` ${match.line}`) &&
    !holds(match, / (cross|strike|tick|shopping) /)
  )
    return dishNamed(match.line, match) ?? dishNamed(match.whole, match);
  return /^(nobody|no one|none of us|not one of us|no body) (is )?(eats|eating|likes|wants|wanted|touches|will eat|will touch|cares for) /.test(
    match.line,
  )
    ? dishNamed(match.line, match)
    : undefined;
}

/** "squash instead of beans", "swap the beans for squash". */
function swapped(match: Match): Meaning[] | undefined {
  const line = ` ${match.line}`;
  const instead = / (?:([a-z ]+) )?(?:instead of|rather than|not|in place of) ([a-z ]+) $/.exec(
    line,
  );
  const swap =
    / (?:swap|change|switch|replace|exchange) (?:out )?([a-z ]+) (?:for|to|with) ([a-z ]+) $/.exec(
      line,
    );
  const wanted = swap?.[2] ?? instead?.[1] ?? '';
  const unwanted = swap?.[1] ?? instead?.[2] ?? '';
  // "garlic butter instead of the herb one": the noun is the other's.
  const noun = wanted.trim().split(' ').at(-1) ?? '';
  const added = dishNamed(wanted, match);
  const dropped =
    dishNamed(unwanted, match) ??
    dishExactlyIn(`${unwanted.replace(/\b(the|one|ones)\b/g, '').trim()} ${noun}`, match.context);
  if (!added || !dropped || added === dropped) return undefined;
  return [
    { intent: 'drop-dish', dish: dropped },
    { intent: 'add-dish', dish: added },
  ];
}

const plainWords = (words: string): string[] =>
  words
    .trim()
    .split(' ')
    .filter((word) => /^[a-z-]+$/.test(word));

function dishAt(words: readonly string[], at: number, length: number, match: Match) {
  const part = words.slice(at, at + length);
  if (part.length < length) return undefined;
  if (functionWords.test(part[0]!) || functionWords.test(part.at(-1)!)) return undefined;
  return dishExactlyIn(part.join(' '), match.context);
}

/** The dish in a run of words: the longest stretch of up to three of them that names one. */
export function dishNamed(words: string, match: Match): string | undefined {
  const all = plainWords(words);
  for (const length of [3, 2, 1])
    for (let at = 0; at + length <= all.length; at++) {
      const dish = dishAt(all, at, length, match);
      if (dish) return dish;
    }
  return undefined;
}

/** Every dish named in a run of words, in order, each once. */
export function dishesNamed(words: string, match: Match): string[] {
  const all = words
    .trim()
    .split(' ')
    .filter((word) => /^[a-z,-]+$/.test(word));
  const found: string[] = [];
  for (let at = 0; at < all.length; ) {
    let step = 1;
    for (const length of [3, 2, 1]) {
      const part = all.slice(at, at + length);
      if (part.length < length || part.includes(',')) continue;
      if (functionWords.test(part[0]!) && length === 1) continue;
      if (
        /^(the|a|an|some|and|or|of|with|for|we|i|it|is|are|to|in|on)$/.test(part[0]!) ||
        (functionWords.test(part.at(-1)!) && !/^(sauce|butter|cream|salad)$/.test(part.at(-1)!))
      )
        continue;
      const dish = dishExactlyIn(part.join(' '), match.context);
      if (!dish) continue;
      if (!found.includes(dish)) found.push(dish);
      step = length;
      break;
    }
    at += step;
  }
  return found;
}

const functionWords =
  /^(the|a|an|some|and|or|to|of|in|on|for|with|we|i|it|is|are|do|have|want|will|not|no|my|our|them|they|please|plan|menu|list|going|add|make|side|sides|cream|sauce|butter|cook|drop|well|too|roast|cancel|skip|leave|leaf|herb|red|wine|pan|warm|bread|salad|time|top|cut|lose|off|out|brown|string|english|french|italian|spanish)$/;

export const guestsFrame: Frame = {
  name: 'guests',
  moods: [...telling, 'negative'],
  build(match): Meaning | undefined {
    const mark = match
      .marks('n')
      .find(
        (one) =>
          !/^(minutes|degrees|pounds|bones?|kilos|%|oclock|hours|potatoes|years?|timers?)\b/.test(
            after(match, one),
          ),
      );
    const count = mark ? match.quantityOfMark(mark) : undefined;
    const value =
      count?.kind === 'number' &&
      Number.isInteger(count.value) &&
      count.value > 0 &&
      count.value < 100
        ? count.value
        : undefined;
    // "ten of us and two are kids", "eleven, two of them kids": counted already.
    if (
      /^<n\d+> (of (them|us|those|whom|the <n\d+>) |(are|is|being) )/.test(match.line) &&
      (match.before.some((one) => one.intent === 'set-guests' && one.count !== undefined) ||
        holds(
          match,
          / of (them|us|those|whom|the <n\d+>) (are |being )?(small |little |young )?(kids|children|toddlers|babies|teenagers|adults|vegetarians?|vegans?) /,
        )) &&
      !holds(match, / (coming|more|extra|late|not) /)
    )
      return undefined;
    // "they are in the warm drawer".
    if (
      holds(
        match,
        / in the (\w+ )?(drawer|oven|fridge|tin|pan|pot|sink|freezer|water|cupboard|tray) /,
      )
    )
      return undefined;
    const arriving =
      / (here|arrived|arriving|walked in|turned up|got here|at the door|come in|came in|coming in|landed|showed up|shown up|reached|made it|pulled up|through the door|full house|in the house|on the doorstep|in the drive|piling in|come|came|rocked up|trooping in|is in|are in) /;
    const awaited = holds(
      match,
      / waiting (on|for) (another |the (other|last) |my |our )?(<n\d+>|others?|one|couple|few|rest|guests) /,
    );
    if (
      awaited &&
      holds(match, / (still|just|only|yet|more|others?) /) &&
      match.context.stage !== 'planning'
    )
      return { intent: 'report-guests', state: 'partly-arrived' };
    // "I dropped a potato but the rest are in".
    if (
      / (rest|others|most|half|some) (of (them|it) )?(are|is) (in|here|out) /.test(
        ` ${match.line}`,
      ) &&
      match.before.some(
        (one) => ('step' in one && one.step !== undefined) || one.intent === 'report-trouble',
      )
    )
      return undefined;
    if (
      holds(match, arriving) &&
      !holds(
        match,
        / (done|all set|ready|good here|fine|under control|he|it|not|train|parcel|pizza|post|late|minutes|when|if|will|going|to help|more|helper|hands|extra|potatoes|oven|bird|roast|mail|package|who|till|before|after|once|unless|has come to|come to|come on|come out) /,
      )
    ) {
      const coming = holds(match, / (come|came|is in|are in) /) && value !== undefined;
      if (
        holds(match, / (half|some|most|few|first|couple|part|rest) (?!(are|is) (all )?here $)/) ||
        holds(match, / (waiting on|waiting for|missing|still to come|not everyone) /) ||
        (value !== undefined && !coming)
      )
        return {
          intent: 'report-guests',
          state: 'partly-arrived',
          ...(value === undefined ? {} : { count: value }),
        };
      if (
        holds(
          match,
          / (guests?|everyone|everybody|they|company|lot|crowd|crew|gang|family|parents|visitors|people|peoples|folks|relatives|in laws|all|house|whole|tribe|mob|clan|friends|neighbours) /,
        )
      )
        return { intent: 'report-guests', state: 'arrived' };
    }
    if (
      holds(
        match,
        / (seated|sat down|at the table|at table|sitting down|in their seats|sat|(taken|taking|found) their (seats|places|chairs)|bums on seats|in their places|round the table|around the table|sitting) /,
      ) &&
      holds(match, / (guests?|everyone|everybody|they|we|people|all|bums|family|lot) /) &&
      !holds(
        match,
        / (at|by|for) <[cn]|(will be|would be|pan|roast|tin|it is|tray|probe|time|eight|seven|six|when|want|like) /,
      )
    )
      return { intent: 'report-guests', state: 'seated' };
    if (value === undefined || !mark) return undefined;
    const people =
      / (people|persons|peoples|guests|of us|heads|mouths|adults|bodies|for dinner|at the table|coming|eating|diners|plates|places|kids|kiddies|children|tonight|to feed|covers|headcount|head count|altogether|in all|in total|all told|all together|the numbers|table is set|laid|family|sitting down|sit down|for lunch|for supper) /;
    if (
      !holds(match, people) ||
      holds(
        match,
        / (late|early|behind|oven|reads|pounds|minutes|school|work|meeting|pub|wedding|party last|at|came|died|killed|score|turned|per|enough|many|left|eaten|in the car|potatoes|slices|bottles) /,
      )
    )
      return undefined;
    if (holds(match, / (more|extra|another|additional|add|plus) /))
      return { intent: 'set-guests', change: value };
    if (
      holds(
        match,
        / (fewer|less|cancelled|canceled|dropped out|can not|not coming|minus|short|pulled out|not make it|bailed|ill) /,
      )
    )
      return { intent: 'set-guests', change: -value };
    return { intent: 'set-guests', count: value };
  },
};

export const lackFrame: Frame = {
  name: 'lack',
  moods: ['statement', 'negative'],
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    const shape =
      / (?:out of|no more|not any|not have any|not have a|not have|not got any|not got a|not got|without|ran out of|have no|has no|got no|there is no|no|missing|lacking|short of|lost the|not find the|not find any|not find|the last of|the end of) (?:the |a |an |any |my |more )?((?:[a-z-]+ ){1,3})$/.exec(
        line.replace(/ (in|at) (the |this |our )?(house|kitchen|home|place|cupboard) $/, ' '),
      ) ??
      / (?:the |my |our )?((?:[a-z-]+ ){1,2}?)(?:is|are|has|have) (?:not there|finished|all gone|all used|all used up|empty|run out|used up|broken|bust|missing|nowhere to be found|gone|kaput|dead|not here|lost|in the wash) $/.exec(
        line,
      );
    const thing = shape?.[1]?.trim().replace(/^(the|my|our|a|any|all) /, '');
    if (!thing || match.marks('tncdwg').length > 0) return undefined;
    const words = thing.split(' ');
    const known = goodsOf(match.context.lexicon).some((one) =>
      one.names.some((name) =>
        name
          .toLowerCase()
          .split(' ')
          .some((part) => part === words.at(-1)),
      ),
    );
    const usual =
      /^(mixer|processor|blender|rack|foil|string|twine|thermometer|probe|tin|tray|pan|whisk|knife|board|sieve|peeler|grater|ladle|masher|zester|brush|cream|garlic|stock|wine|butter)$/;
    if (!known && !usual.test(words.at(-1)!)) return undefined;
    if (meansRoast(thing) || holds(match, / (time|idea|power|electricity|oven) $/))
      return undefined;
    return { intent: 'lack', thing };
  },
};

export const handsFrame: Frame = {
  name: 'hands',
  moods: telling,
  build(match): Meaning | undefined {
    const line = ` ${match.line}`;
    if (
      match.marks('tcdwg').length > 0 ||
      holds(
        match,
        / (not|you|anyone|need|could|can you|if|hands (are |is )?(full|dirty|wet|tied|greasy|covered|sticky|messy)) /,
      )
    )
      return undefined;
    const shape =
      / (?:my |our )?([a-z]+(?: in law)?) (?:is |will be |will |has |can |wants to |offered to |came to |here to |going to )*(?:help|helps|helping|volunteered|offered|joining me|joined me|my sous chef|stepping in|mucking in|giving me a hand|lending a hand|lend a hand|give me a hand|pitching in|on hand|chopping|peeling|scrubbing|stirring|washing up|carving) /.exec(
        line,
      );
    if (
      shape &&
      !/^(god|heaven|lord|am|are|was|were|start|started|now|i|we|it|they|who|that|this|to|just|and|the|roast|potatoes|is|help|he|she|still|there|now|then|you|food)$/.test(
        shape[1]!,
      )
    )
      return { intent: 'add-hands', who: shape[1]! };
    const put =
      / (?:put|got|set|have|asked) (?:my |our )?([a-z]+) (?:on|doing|onto|to do|making|working on) (?:the )?([a-z ]+?) (?:duty )?$/.exec(
        line,
      );
    if (
      put &&
      !/(menu|list|plan|side|hob|stove|heat|oven)/.test(put[2]!) &&
      (dishNamed(put[2]!, match) ||
        /(gravy|vegetables|table|sides|washing up|sauce|carving|drinks|potatoes)/.test(put[2]!)) &&
      !/^(the|it|them|this|that|lid|water|butter|salt|foil|pan|a|some|oven|potatoes|beans)$/.test(
        put[1]!,
      )
    )
      return { intent: 'add-hands', who: put[1]! };
    if (
      holds(match, / (help|helper|helpers|hands|pair of hands|sous chef|volunteers?) /) &&
      holds(match, / (have|got|there is|there are|we are|with|extra) /)
    )
      return { intent: 'add-hands' };
    return undefined;
  },
};

export const donenessFrame: Frame = {
  name: 'doneness',
  moods: [...telling, 'negative'],
  build(match): Meaning | undefined {
    const wanted = match.context.expecting === 'doneness' || match.context.stage === 'planning';
    const wish = holds(
      match,
      / (like|want|prefer|love|go|have|do|make|cook|for everyone|for everybody|for all|change|please|side of|instead|medium|rare|served|serve|take|bring) /,
    );
    if (!wanted && !wish) return undefined;
    if (
      holds(
        match,
        / (guest|steak|burger|bird|book|heat|eggs|potatoes|it is|looks|still|too rare|gone|came out|how) /,
      ) &&
      !wanted
    )
      return undefined;
    const said = match.line.replace(/(instead of|rather than|but not|not) .*/, '').trim();
    if (
      / not (like it |too |very )*(bloody|rare|pink) /.test(` ${match.line}`) &&
      match.line.split(' ').length <= 7
    )
      return { intent: 'set-doneness', doneness: 'medium' };
    const low = /\b(?:a bit|bit|slightly|little|touch) (pink)\b.*\bnot (bloody|rare|too)/.test(
      match.line,
    );
    const value = low ? 'medium' : donenessOf(said === '' ? match.line : said);
    if (!value) return undefined;
    if (match.line.split(' ').length > 10) return undefined;
    return { intent: 'set-doneness', doneness: value };
  },
};
