/** What each field of a card is for, in one sentence: for the template and for explaining errors. */
import type { CardPath } from './error.ts';

/** By field name; where one name means two things, by the field it stands in as well. */
export const glossary: Readonly<Record<string, string>> = {
  card: 'What it is: roast, side, sauce or butter.',
  id: 'A short name for the program: lower-case words joined by hyphens. Never changes.',
  title: 'What it is called on the plan, in lower case.',
  names: 'Every way a cook may say it, the commonest first.',
  serves: 'How far it goes, for people.',
  butcher: 'What to ask the butcher for, one spoken sentence at a time.',
  coreFahrenheit: 'What the middle of the dish must read before it is served, in Fahrenheit.',
  usual:
    'true: served with every roast unless the cook says otherwise; a list of roast ids: with those.',
  ingredients: 'What goes in, one item each; the shopping list is made from this.',
  item: 'What to buy, written the same way in every card so that amounts add up.',
  amount: 'How much, as a plain number, in the unit below.',
  unit: 'g, ml, tsp, tbsp, cup, clove, sprig, piece or bunch.',
  per: 'What the amount is for: each guest, the whole batch, a kilogram or a bone of the roast.',
  shelf: 'Where the shop has it: butcher, vegetables, dairy, dry, spices, bottles or household.',
  allergens: 'What a guest may not stand: milk, egg, gluten, mustard, fish, nuts, sulphites …',
  meat: 'true: of a slaughtered animal, so not for vegetarians.',
  instead: 'What does when there is none, with its ratio and what changes, as spoken words.',
  free: 'By allergen, or "meat": what does for a guest who must not have that.',
  insteadAllergens: 'What the stand-in brings that a guest may not stand; [] for nothing.',
  tools: 'What the kitchen must have; name every tool that a step needs.',
  shape: 'How the cut is built, for the forecast of its heat.',
  form: 'rib, long-cylinder or ellipsoid, whichever is nearest.',
  aspect: 'Length over thickness, for a long cylinder or an ellipsoid.',
  kilogramsPerBone: 'Raw weight of one bone of the roast, where bones tell the size.',
  composition: 'Fractions of one, from a published food table.',
  water: 'Fraction of the raw meat that is water.',
  protein: 'Fraction of the raw meat that is protein.',
  fat: 'Fraction of the raw meat that is fat.',
  source: 'Where the figures are from, or "common practice, no source".',
  methods: 'The ways it can be cooked; sear-first is taken unless the cook says otherwise.',
  'sear-first': 'A hot oven first, then a gentle one.',
  'sear-last': 'A gentle oven first, a rest, then a hot one.',
  steady: 'One temperature throughout.',
  searFahrenheit: 'The hot oven, in Fahrenheit; the words follow the household.',
  searMinutes: 'How long the hot oven lasts.',
  roastFahrenheit: 'The gentle oven, in Fahrenheit.',
  restMinutes: 'How long it rests, from light roasts to heavy ones.',
  toKilograms: 'The row is for roasts up to this weight.',
  'restMinutes.minutes': 'Low, likely and high minutes of rest.',
  pink: 'true: may be served pink by custom; false: cooked to the consumer minimum.',
  carve: 'How long carving takes.',
  fixedMinutes: 'Minutes for strings and bones.',
  minutesPerGuest: 'And minutes more for each guest.',
  hold: 'How long the finished dish waits without harm, and how.',
  'hold.minutes': 'For how many minutes.',
  steps:
    'Only what takes hands or oven time. Each waits for the one before it, unless `after` is there.',
  call: 'What is called out when it is due: one or two short spoken sentences.',
  done: 'The step once it is done, as a clause without a full stop: "the potatoes are scrubbed".',
  ready: 'What to have at hand, said ten minutes before it goes into the oven.',
  minutes: 'Low, likely and high minutes, honestly.',
  hands: 'throughout: all the time; start: a minute or two at its start; none: it waits by itself.',
  after: 'Steps that must have ended first. An empty list, []: none at all.',
  step: 'The id of a step of this card, or dish.step for one of another card.',
  minMinutes: 'At least so many minutes after that step.',
  maxMinutes: 'At most so many minutes after that step.',
  ends: 'When the step ends, against a moment of the roast; leave it out if any free time will do.',
  anchor: 'The moment: roast-in, oven-down, pull, carve or table.',
  earliestMinutes: 'No sooner than this many minutes after the moment; before it is negative.',
  likelyMinutes: 'Best at this many minutes after the moment.',
  latestMinutes: 'No later than this many minutes after the moment.',
  oven: 'The step is time in the oven, at temperatures the dish stands.',
  lowFahrenheit: 'The coolest oven that still works.',
  likelyFahrenheit: 'The oven that `minutes` are for.',
  highFahrenheit: 'The hottest oven it stands.',
  hob: 'True where it stands on a ring of the hob from its start to its end.',
  drippings: 'True where it takes fat or juices from the pan of the roast, which is out by then.',
  needs: 'Tools of the list above that this step needs.',
  without: 'The other way, when a tool is missing.',
  tool: 'The tool that is missing.',
  extraMinutes: 'How many minutes longer the other way takes.',
  only: 'Only for these: a way of cooking, bone-in, boneless, a prepared form, or cook-on.',
  variants: 'Other words for the step in some dinners, in place of its own.',
  how: 'How it is done, one spoken sentence at a time.',
  'hold.how': 'How it waits, as spoken words.',
  right: 'The sight, sound or feel that tells it is right.',
  wrong: 'What goes wrong, and the mend.',
  why: 'The reason, for a cook who asks.',
  caution: 'What can hurt, said once at this step.',
  skippable: 'true: may be left out without spoiling the dish.',
};

/** What the field at this path is for, or undefined for a field that cards do not have. */
export function meaningOf(path: CardPath): string | undefined {
  const words = path.filter((part): part is string => typeof part === 'string');
  const last = words.at(-1);
  if (last === undefined) return undefined;
  return glossary[`${words.at(-2)}.${last}`] ?? glossary[last];
}

/** Names of every field, to guess at what a misspelt one was meant to be. */
export const fieldNames: readonly string[] = Object.keys(glossary).filter(
  (name) => !name.includes('.'),
);
