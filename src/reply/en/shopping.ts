/** What to buy, how big the roast, and what to ask the butcher for. */
import { avoidancesOf, suits } from '../../kitchen/allergens.ts';
import type { Bought, BuyUnit, SizeWish } from '../../kitchen/days.ts';
import { uncardedOf } from '../../kitchen/dinner.ts';
import { type Salt, saltGramsPerTeaspoon, teaspoonsOf } from '../../kitchen/salt.ts';
import type { Scene } from '../scene.ts';
import { forEyes, list, type Spoken, say, sentences, silent } from '../spoken.ts';
import { guestName } from './names.ts';
import { noPlan } from './standing.ts';
import { count, decimalWords, weight } from './words.ts';

const shelfTitles: Record<Bought['shelf'], string> = {
  butcher: 'Butcher',
  vegetables: 'Vegetables and herbs',
  dairy: 'Dairy',
  dry: 'Dry goods',
  spices: 'Cupboard: have you got',
  bottles: 'Bottles and jars: have you got',
  household: 'Drawer: have you got',
};

const unitWords: Record<BuyUnit, readonly [text: string, one: string, many: string]> = {
  lb: ['lb', 'pound', 'pounds'],
  oz: ['oz', 'ounce', 'ounces'],
  kg: ['kg', 'kilo', 'kilos'],
  g: ['g', 'gram', 'grams'],
  cup: ['cup', 'cup', 'cups'],
  tbsp: ['tbsp', 'tablespoon', 'tablespoons'],
  tsp: ['tsp', 'teaspoon', 'teaspoons'],
  ml: ['ml', 'millilitre', 'millilitres'],
  stick: ['', 'stick', 'sticks'],
  bunch: ['', 'bunch', 'bunches'],
  head: ['', 'head', 'heads'],
  piece: ['', '', ''],
};

const quarters: Record<string, string> = { '0.25': '¼', '0.5': '½', '0.75': '¾' };

/** "1½ lb": quarters as one reads them on a scale. */
function figure(value: number): string {
  const whole = Math.floor(value + 1e-9);
  const rest = Math.round((value - whole) * 100) / 100;
  const quarter = quarters[String(rest)];
  if (quarter === undefined) return String(Math.round(value * 10) / 10);
  return whole === 0 ? quarter : `${whole}${quarter}`;
}

const quarterWords: Record<string, string> = {
  '¼': 'a quarter',
  '½': 'a half',
  '¾': 'three quarters',
};

function figureAloud(value: number): string {
  const shown = figure(value);
  const part = quarterWords[shown.slice(-1)];
  if (part === undefined) return decimalWords(value);
  return shown.length === 1 ? part : `${decimalWords(Math.floor(value))} and ${part}`;
}

/** An amount as it is bought: "1½ lb", "a half pound of". */
export function bought({ amount, unit }: Pick<Bought, 'amount' | 'unit'>): Spoken {
  const [short, one, many] = unitWords[unit];
  const word = amount > 1 ? many : one;
  const shown = short === '' || unit === 'cup' ? word : short;
  return {
    text: shown === '' ? figure(amount) : `${figure(amount)} ${shown}`,
    speech: word === '' ? figureAloud(amount) : `${figureAloud(amount)} ${word}`,
  };
}

/** For whom a line is no good as it is: "not for Ben". */
function warning(row: Bought, scene: Scene): string {
  const guests = avoidancesOf(scene.dinner.notes).filter((guest) => !suits(row.part, guest));
  if (guests.length === 0) return '';
  const names = list(
    [...new Set(guests.map((guest) => guestName(guest.who).text))].map((who) => say`${who}`),
  );
  return ` (not for ${names.text})`;
}

/** The list by shelf for eyes; for ears how many there are and the few that matter. */
export function shoppingWords(scene: Scene): Spoken {
  const rows = scene.days?.shopping ?? [];
  if (rows.length === 0) return noPlan;
  const open = rows.filter((row) => !row.had);
  const had = rows.filter((row) => row.had);
  if (open.length === 0) return say`Nothing left to buy: you have it all.`;
  const shelves = [...new Set(open.map((row) => row.shelf))];
  const text = shelves
    .map((shelf) => {
      const lines = open
        .filter((row) => row.shelf === shelf)
        .map((row) => `  ${bought(row).text} ${row.item}${warning(row, scene)}`);
      return [`${shelfTitles[shelf]}:`, ...lines].join('\n');
    })
    .join('\n');
  const struck = had.length > 0 ? `\nIn the house: ${had.map((row) => row.item).join(', ')}.` : '';
  const yours = uncardedOf(scene.dinner).map((dish) => `\nFor the ${dish}: yours to say.`);
  const labels = scene.dinner.notes.some((note) => note.need === 'allergy')
    ? '\nRead every label for the allergies.'
    : '';
  const fresh = open.filter(
    (row) => row.shelf === 'butcher' || row.shelf === 'vegetables' || row.shelf === 'dairy',
  );
  const first = (fresh.length > 0 ? fresh : open)
    .slice(0, 3)
    .map((row) => say`${bought(row)} of ${row.item}`);
  return {
    text: `${open.length} things to buy or look for:\n${text}${yours.join('')}${struck}${labels}`,
    speech: sentences([
      say`${count(open.length)} things to buy or look for, among them ${list(first)}.`,
      ...uncardedOf(scene.dinner).map((dish) => say`For the ${dish}: yours to say.`),
      say`Tell me what you have, and I strike it off.`,
    ]).speech,
  };
}

/** "I have butter": struck off. */
export function hadWords(thing: string, scene: Scene): Spoken {
  const rows = scene.days?.shopping ?? [];
  const name = `${thing.charAt(0).toUpperCase()}${thing.slice(1)}`;
  if (rows.length === 0) return say`${name}: noted.`;
  const struck = rows.filter(
    (row) => row.had && row.item.toLowerCase().includes(thing.toLowerCase()),
  );
  const known = rows.some(
    (row) =>
      row.had && (row.item === thing || struck.includes(row) || row.part.names?.includes(thing)),
  );
  return known ? say`${name}: off the list.` : say`${name} is on no list of mine; noted.`;
}

/** How big for how many, from published servings; and what this roast feeds. */
export function sizeAnswer(wish: SizeWish, scene: Scene): Spoken {
  const size = scene.days?.size(wish);
  if (!size) return noPlan;
  const { dinner } = scene;
  const { units } = dinner;
  const half = (kilograms: number): Spoken => weight(roundedUp(kilograms, units.weight), units);
  const who =
    wish.guests === undefined && dinner.guests === undefined
      ? say`For six, say`
      : say`For ${count(size.eaters)}`;
  const appetite =
    size.appetite === 'usual'
      ? silent
      : wish.appetite === undefined
        ? say`, with so much beside it`
        : say`, ${size.appetite === 'hearty' ? 'hungry ones' : 'light eaters'}`;
  const bones =
    size.bones !== undefined
      ? say`, ${count(size.bones)} ${size.bones === 1 ? 'rib' : 'ribs'}`
      : silent;
  const boneless =
    size.bonelessKilograms === undefined
      ? silent
      : say` on the bone; ${half(size.bonelessKilograms)} off it`;
  const others = (wish.guests ?? dinner.guests ?? size.eaters) - size.eaters;
  return sentences([
    say`${who}${appetite}: about ${half(size.kilograms)} of ${size.title}${bones}${boneless}.`,
    others > 0
      ? say`I left out ${count(others)} who ${others === 1 ? 'eats' : 'eat'} no meat.`
      : silent,
    yoursFeeds(wish, scene),
    forEyes(say`Bigger loses nothing: it makes sandwiches.`),
  ]);
}

function yoursFeeds(wish: SizeWish, { dinner, days }: Scene): Spoken {
  const { kilograms } = dinner.roast;
  if (wish.cut !== undefined || kilograms === undefined || days?.feeds === undefined) return silent;
  const enough = dinner.guests === undefined || days.feeds >= dinner.guests;
  return enough
    ? say`Yours, ${weight(kilograms, dinner.units)}, feeds ${count(days.feeds)}.`
    : say`Yours, ${weight(kilograms, dinner.units)}, feeds ${count(days.feeds)}${forEyes(say`: one more dish beside it, or thinner slices`)}.`;
}

/** Up to the half pound, or the tenth of a kilo. */
const roundedUp = (kilograms: number, unit: 'lb' | 'kg'): number => {
  const pounds = kilograms / 0.45359237;
  return unit === 'lb'
    ? (Math.ceil(pounds * 2 - 0.1) / 2) * 0.45359237
    : Math.ceil(kilograms * 10 - 0.1) / 10;
};

/** What to ask the butcher for: the card's own lines, or what holds for any roast. */
export function butcherAnswer(scene: Scene): Spoken {
  const size = scene.days?.size({});
  if (!size) return noPlan;
  const amount = sizeAnswer({}, { ...scene, dinner: { ...scene.dinner, roast: {} } });
  const lines = size.butcher ?? [
    'Ask for the best grade that fits your purse, well marbled, in one piece of even thickness.',
    'Tied, with the fat cap left on a finger thick, and the trimmings in a bag.',
  ];
  return {
    text: sentences([amount, ...lines.map((line) => say`${line}`)]).text,
    speech: sentences([amount, ...lines.slice(0, 3).map((line) => say`${line}`)]).speech,
  };
}

/** So many grams of salt by the spoon, which depends on the salt. */
export function saltBySpoon(grams: number): Spoken {
  const spoons = (Object.keys(saltGramsPerTeaspoon) as Salt[]).map((salt) => {
    const teaspoons = teaspoonsOf(grams, salt);
    const value = { text: figure(teaspoons), speech: figureAloud(teaspoons) };
    return say`${value} level ${teaspoons > 1 ? 'teaspoons' : 'teaspoon'} of ${salt}`;
  });
  const aloud = (Object.keys(saltGramsPerTeaspoon) as Salt[]).map(
    (salt) => say`${figureAloud(teaspoonsOf(grams, salt))} of ${salt}`,
  );
  return {
    text: say`By the spoon: ${list(spoons, 'or')}. Weigh it if you can.`.text,
    speech: `In level teaspoons: ${list(aloud, 'or').speech}.`,
  };
}
