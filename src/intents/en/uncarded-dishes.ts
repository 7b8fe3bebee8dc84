/**
 * Dishes people name beside or after a roast that no card of ours knows, so that none is dropped in
 * silence. Only whole names of dishes, nothing that is as often an ingredient, a drink or a word of talk.
 */
import { oncePer } from '../../base/once.ts';
import type { Lexicon, Named, ReadContext } from '../../kitchen/heard.ts';
import { nameExactlyIn, stemsOf, stemsOfNames } from '../names.ts';

const names = [
  // Beside the roast.
  'pigs in blankets',
  'cranberry sauce',
  'redcurrant jelly',
  'mushroom sauce',
  'pepper sauce',
  'peppercorn sauce',
  'hollandaise',
  'bearnaise',
  'mint sauce',
  'parsley sauce',
  'white sauce',
  'cheese sauce',
  'onion gravy',
  'chutney',
  'piccalilli',
  'chestnuts',
  'roast chestnuts',
  'mushrooms',
  'garlic mushrooms',
  'stuffed mushrooms',
  'leeks',
  'creamed leeks',
  'swede mash',
  'mashed swede',
  'swede and carrot mash',
  'celeriac mash',
  'celeriac puree',
  'beetroot',
  'beets',
  'roast beetroot',
  'onion rings',
  'sweetcorn',
  'turnips',
  'fennel',
  'chard',
  'courgettes',
  'roast tomatoes',
  'roast peppers',
  'stuffed peppers',
  'waldorf salad',
  'beetroot salad',
  'spring greens',
  'savoy cabbage',
  'buttered cabbage',
  'kale',
  'cavolo nero',
  'roast fennel',
  'ratatouille',
  'broad beans',
  'baked beans',
  'corn on the cob',
  'creamed corn',
  'cornbread',
  'green bean casserole',
  'sweet potato casserole',
  'mac and cheese',
  'mac n cheese',
  'collard greens',
  'collards',
  'scalloped potatoes',
  'candied yams',
  'yams',
  'succotash',
  'wild rice',
  'pasta salad',
  'bubble and squeak',
  'colcannon',
  'roast pumpkin',
  'okra',
  'macaroni cheese',
  'chips',
  'fries',
  'wedges',
  'baked potatoes',
  'jacket potatoes',
  'hasselback potatoes',
  'fondant potatoes',
  'potato salad',
  'potato dumplings',
  'dumplings',
  'spaetzle',
  'rice',
  'couscous',
  'polenta',
  'coleslaw',
  'caesar salad',
  'green salad',
  'tomato salad',
  'nut roast',
  'quiche',
  'vegetable lasagne',
  'garlic bread',
  'focaccia',
  // Before it.
  'soup',
  'prawn cocktail',
  'smoked salmon',
  'pate',
  'canapes',
  'cheese board',
  // After it.
  'trifle',
  'christmas pudding',
  'plum pudding',
  'sticky toffee pudding',
  'bread and butter pudding',
  'rice pudding',
  'summer pudding',
  'crumble',
  'apple crumble',
  'rhubarb crumble',
  'apple pie',
  'pumpkin pie',
  'pecan pie',
  'cherry pie',
  'mince pies',
  'lemon tart',
  'treacle tart',
  'tarte tatin',
  'cheesecake',
  'chocolate cake',
  'chocolate mousse',
  'yule log',
  'pavlova',
  'meringues',
  'tiramisu',
  'panna cotta',
  'creme brulee',
  'profiteroles',
  'fruit salad',
  'ice cream',
  'sorbet',
  'custard',
] as const;

const exactly = new Map(names.map((name) => [stemsOf(name).join(' '), name]));

/** Every word of their names, as stems: none of them is anybody's name. */
export const uncardedStems: ReadonlySet<string> = new Set(names.flatMap((name) => stemsOf(name)));

export const isUncardedName = (words: string): boolean => exactly.has(stemsOf(words).join(' '));

/** Words about a dish that belong to no name: "a nice big trifle". */
const about =
  /^((the|some|a|an|our|my|any|that|nice|big|small|little|proper|homemade|lovely|few|bit|of|lots|plenty|also|then|too|maybe|more|usual|good) )+/;

/** Every name of the cards' dishes, as stems. */
const namesOfCards = oncePer(
  ({ dishes }: Lexicon): ReadonlySet<string> =>
    new Set(dishes.flatMap((card) => stemsOfNames(card).map((stems) => stems.join(' ')))),
);

/**
 * The dish without a card that words name: one that this dinner has, or one of the vocabulary, in full.
 * Words that are more than a name ("gran's trifle recipe") are talk; what a card is called is a card's.
 */
export function uncardedDishIn(words: string, context: ReadContext): string | undefined {
  const bare = words.trim().replace(about, '');
  const key = stemsOf(bare).join(' ');
  if (key === '') return undefined;
  const own = uncardedDishOf(bare, context);
  if (own !== undefined) return own;
  const dish = exactly.get(key);
  if (dish === undefined) return undefined;
  return namesOfCards(context.lexicon).has(key) ? undefined : dish;
}

/** The dish without a card that is on this dinner's menu and that words name, by a part of it too. */
export function uncardedDishOf(words: string, context: ReadContext): string | undefined {
  const own = context.dishes
    .filter((dish) => !context.lexicon.dishes.some((card) => card.id === dish))
    .map((dish): Named => ({ id: dish, names: [dish] }));
  return own.length === 0 ? undefined : nameExactlyIn(own, words.trim().replace(about, ''));
}
