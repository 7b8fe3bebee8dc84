/** Dishes, cuts and steps by their German names; what has none keeps the name of its card. */
import type { Dinner } from '../../kitchen/dinner.ts';
import { titleOf } from '../en/steps.ts';

const dishes: Record<string, string> = {
  'rib-roast': 'Hochrippe',
  'strip-loin': 'Roastbeef',
  tenderloin: 'Filet',
  'leg-of-lamb': 'Lammkeule',
  'pork-loin': 'Schweinerücken',
  'top-round': 'Oberschale',
  'eye-of-round': 'Rolle',
  'roast-potatoes': 'Ofenkartoffeln',
  'mashed-potatoes': 'Kartoffelpüree',
  'potato-gratin': 'Kartoffelgratin',
  'green-beans': 'grüne Bohnen',
  'glazed-carrots': 'glasierte Möhren',
  'braised-red-cabbage': 'Rotkohl',
  'creamed-spinach': 'Rahmspinat',
  'horseradish-cream': 'Sahnemeerrettich',
  'herb-butter': 'Kräuterbutter',
  'garlic-butter': 'Knoblauchbutter',
  'red-wine-jus': 'Rotweinjus',
  'pan-gravy': 'Bratensoße',
  'mint-sauce': 'Minzsoße',
  'bitter-salad': 'Salat',
  'warm-rolls': 'Brötchen',
  'roast-onions': 'Ofenzwiebeln',
  'roast-squash': 'Kürbis',
  'roast-roots': 'Ofengemüse',
  'batter-puddings': 'Yorkshire-Puddings',
  peas: 'Erbsen',
  broccoli: 'Brokkoli',
  'brussels-sprouts': 'Rosenkohl',
  'cauliflower-cheese': 'überbackener Blumenkohl',
  'herb-stuffing': 'Kräuterfüllung',
  'sweet-potatoes': 'Süßkartoffeln',
  asparagus: 'Spargel',
  'apple-sauce': 'Apfelmus',
  'bread-sauce': 'Brotsoße',
};

/** What to do, as an infinitive: it stands after "Als Nächstes:". */
const steps: Record<string, string> = {
  'check-thermometer': 'das Thermometer in Eiswasser prüfen',
  'out-of-fridge': 'den Braten aus dem Kühlschrank nehmen',
  trim: 'den Braten parieren',
  french: 'die Knochen freilegen',
  truss: 'den Braten binden',
  season: 'den Braten rundum salzen',
  probe: 'das Thermometer in die Mitte stecken',
  'oven-on': 'den Ofen anstellen',
  'roast-in': 'den Braten in den Ofen schieben',
  'oven-down': 'den Ofen herunterdrehen',
  'oven-up': 'den Ofen hochdrehen',
  'butter-roast': 'den Braten mit der Kräuterbutter bestreichen',
  check: 'die Kerntemperatur messen',
  'carving-setup': 'Brett und Messer bereitlegen',
  pull: 'den Braten herausnehmen',
  rest: 'den Braten ruhen lassen',
  sear: 'den Braten bräunen',
  'warm-plates': 'die Teller wärmen',
  carve: 'den Braten aufschneiden',
  serve: 'servieren',
  'put-away': 'die Reste in den Kühlschrank stellen',
};

export const dishName = (id: string): string => dishes[id] ?? id.replaceAll('-', ' ');

/** A step in German; a dish's step by the dish and its moment. */
export function stepName(id: string, dinner: Dinner): string {
  const own = steps[id];
  if (own) return own;
  const [dish = '', step = ''] = id.split('.');
  const name = dishName(dish);
  if (/^(in|roast|bake)$/.test(step)) return `${name} in den Ofen`;
  if (step === 'out') return `${name} herausnehmen`;
  if (/^(cook|boil|braise|on|simmer|warm|reduce)$/.test(step)) return `${name} aufsetzen`;
  if (step !== '') return `${name} vorbereiten`;
  return titleOf(dinner, id);
}
