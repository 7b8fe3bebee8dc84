/** What dishes, cuts and things of the kitchen are called in German, by the ids of the cards. */
import type { ReadContext } from '../../kitchen/heard.ts';

const dishes: readonly (readonly [RegExp, string])[] = [
  [/\b(kartoffel|erdäpfel)?gratin\b|\bgratin\b/, 'potato-gratin'],
  [
    /\b(kartoffelpüree|kartoffelbrei|kartoffelstampf|stampfkartoffeln|püree|erdäpfelpüree)\b/,
    'mashed-potatoes',
  ],
  [
    /\b(ofenkartoffeln|röstkartoffeln|bratkartoffeln|backkartoffeln|kartoffeln|erdäpfel)\b/,
    'roast-potatoes',
  ],
  [/\b(grüne[nr]? bohnen|bohnen|fisolen|prinzessbohnen|speckbohnen)\b/, 'green-beans'],
  [/\b(möhren|karotten|rüebli|mohrrüben)\b/, 'glazed-carrots'],
  [/\b(rotkohl|rotkraut|blaukraut)\b/, 'braised-red-cabbage'],
  [/\b(rahmspinat|spinat)\b/, 'creamed-spinach'],
  [/\b(meerrettich|sahnemeerrettich|kren|meerrettichsahne)\b/, 'horseradish-cream'],
  [/\b(kräuterbutter)\b/, 'herb-butter'],
  [/\b(knoblauchbutter)\b/, 'garlic-butter'],
  [/\b(rotweinsoße|rotweinsauce|rotweinjus|jus)\b/, 'red-wine-jus'],
  [/\b(bratensoße|bratensauce|soße|sauce|sosse)\b/, 'pan-gravy'],
  [/\b(minzsoße|minzsauce)\b/, 'mint-sauce'],
  [/\b(salat)\b/, 'bitter-salad'],
  [/\b(brötchen|semmeln|weckerl)\b/, 'warm-rolls'],
  [/\b(zwiebeln)\b/, 'roast-onions'],
  [/\b(kürbis)\b/, 'roast-squash'],
  [/\b(wurzelgemüse|ofengemüse|gemüse)\b/, 'roast-roots'],
  [/\b(yorkshire)\b/, 'batter-puddings'],
  [/\b(erbsen)\b/, 'peas'],
  [/\b(brokkoli|broccoli)\b/, 'broccoli'],
  [/\b(rosenkohl|kohlsprossen)\b/, 'brussels-sprouts'],
  [/\b(blumenkohl|karfiol)\b/, 'cauliflower-cheese'],
  [/\b(süßkartoffeln)\b/, 'sweet-potatoes'],
  [/\b(spargel)\b/, 'asparagus'],
  [/\b(apfelmus|apfelsoße|apfelsauce)\b/, 'apple-sauce'],
  [/\b(brotsoße|brotsauce)\b/, 'bread-sauce'],
];

const cuts: readonly (readonly [RegExp, string])[] = [
  [/\b(hochrippe|rippenbraten|rinderrippe|rib roast|prime rib|côte)\b/, 'rib-roast'],
  [/\b(roastbeef|rostbeef|rumpsteakbraten)\b/, 'strip-loin'],
  [/\b(filet|rinderfilet|lende|lungenbraten)\b/, 'tenderloin'],
  [/\b(lammkeule)\b/, 'leg-of-lamb'],
  [/\b(schweinebraten|schweinelachs|schweinslende|schweinerücken|schweinekarree)\b/, 'pork-loin'],
  [/\b(oberschale)\b/, 'top-round'],
  [/\b(semerrolle|seemerrolle|rolle)\b/, 'eye-of-round'],
];

/** \b knows no umlauts: words are matched with a blank for every boundary. */
const spaced = (shape: RegExp): RegExp =>
  new RegExp(shape.source.replaceAll('\\b', '(?:(?<=[ ])|(?=[ ]))'));

const dishShapes = dishes.map(([shape, id]) => [spaced(shape), id] as const);
const cutShapes = cuts.map(([shape, id]) => [spaced(shape), id] as const);

/** The dishes named in a line, in order of speech, those the cards know. */
export function dishesIn(line: string, context: ReadContext): string[] {
  const known = new Set(context.lexicon.dishes.map((dish) => dish.id));
  let rest = ` ${line}`;
  const found: { id: string; at: number }[] = [];
  for (const [shape, id] of dishShapes) {
    const match = shape.exec(rest);
    if (!match || !known.has(id)) continue;
    found.push({ id, at: match.index });
    rest =
      rest.slice(0, match.index) +
      ' '.repeat(match[0].length) +
      rest.slice(match.index + match[0].length);
  }
  return found.sort((a, b) => a.at - b.at).map((one) => one.id);
}

export const cutIn = (line: string): string | undefined =>
  cutShapes.find(([shape]) => shape.test(` ${line}`))?.[1];

/** Verbs of a dish's or the roast's steps, by the end of the step's id. */
export const stepVerbs: readonly (readonly [RegExp, string])[] = [
  [/(pariert|zugeputzt)/, 'trim'],
  [/(gebunden|binde|binden|zusammengebunden|geschnürt|dressiert|binden)/, 'truss'],
  [/(gewürzt|gesalzen|gepfeffert|eingerieben|würzen|salzen)/, 'season'],
  [/(blank|freigelegt|knochen geputzt|knochen sauber)/, 'french'],
  [/(gebuttert|eingebuttert|mit butter)/, 'butter-roast'],
  [/(angebraten|anbraten)/, 'sear'],
  [
    /(tranchiert|tranchiere|schneide ich|aufgeschnitten|angeschnitten|tranchieren|aufschneiden)/,
    'carve',
  ],
];
