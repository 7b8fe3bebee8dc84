/**
 * Rules of safety as data: what each authority asks, in its own figures. Which sentence is said of a
 * rule is the words room's; when it is said is here, as a moment of the dinner. One rule has one
 * authority: figures of two are never in the same rule.
 */
import { celsiusOfFahrenheit, kilogramsPerPound } from '../base/units.ts';

export const authorities = {
  'USDA FSIS': { speaksTo: 'home', saidAs: 'the USDA' },
  'FDA Food Code': { speaksTo: 'food service', saidAs: 'the Food Code' },
  'FSIS Appendix A': { speaksTo: 'meat plants', saidAs: 'the plant table' },
  'common practice': { speaksTo: 'home', saidAs: 'common practice' },
} as const;
export type Authority = keyof typeof authorities;

/** When a rule is said. Each is said once in a dinner; `asked` is only said when asked for. */
export const safetyMoments = [
  'asked',
  'pink-target',
  'surface-inside',
  'vulnerable-guest',
  'allergic-guest',
  'roast-frozen',
  'oven-below-roasting',
  'hold-offered',
  'guests-later',
  'glass-pan',
  'served',
  'feeding-public',
] as const;
export type SafetyMoment = (typeof safetyMoments)[number];

/** A threshold in the authority's own unit. `at-least` 145 is met by 145 and not by 144. */
export interface Figure {
  of: string;
  bound: 'at-least' | 'at-most';
  value: number;
  unit: 'fahrenheit' | 'minutes' | 'days' | 'hours per pound' | 'minutes per pound' | 'log';
}

export interface SafetyRuleData {
  authority: Authority;
  /** The text it stands in, and its edition. */
  text: string;
  edition: string;
  /** Whether somebody read the figure in a copy of that text, or knows it, or nobody wrote it. */
  known: 'read in a copy' | 'from memory' | 'common practice, no source';
  said: SafetyMoment;
  figures: readonly Figure[];
}

const least = (of: string, value: number, unit: Figure['unit']): Figure => ({
  of,
  bound: 'at-least',
  value,
  unit,
});
const most = (of: string, value: number, unit: Figure['unit']): Figure => ({
  of,
  bound: 'at-most',
  value,
  unit,
});

const minimumChart = {
  authority: 'USDA FSIS',
  text: 'safe minimum internal temperature chart',
  edition: 'since May 2011',
  known: 'read in a copy',
} as const;
const foodCode = { authority: 'FDA Food Code', edition: '2017', known: 'read in a copy' } as const;
const usda = { authority: 'USDA FSIS', known: 'read in a copy' } as const;
const practice = {
  authority: 'common practice',
  text: 'the trade',
  edition: 'none',
  known: 'common practice, no source',
} as const;

export const safetyData = {
  'below-145': {
    ...minimumChart,
    said: 'pink-target',
    figures: [least('core', 145, 'fahrenheit'), least('rest', 3, 'minutes')],
  },
  'surface-inside': {
    ...minimumChart,
    text: 'safe minimum internal temperature chart; mechanically tenderised beef; stuffing',
    said: 'surface-inside',
    figures: [
      least('core', 145, 'fahrenheit'),
      least('rest', 3, 'minutes'),
      least('stuffing', 165, 'fahrenheit'),
    ],
  },
  vulnerable: {
    ...minimumChart,
    said: 'vulnerable-guest',
    figures: [least('core', 145, 'fahrenheit'), least('rest', 3, 'minutes')],
  },
  poultry: {
    ...minimumChart,
    said: 'asked',
    figures: [least('poultry', 165, 'fahrenheit'), least('minced meat', 160, 'fahrenheit')],
  },
  'oven-325': {
    ...usda,
    text: 'meat and poultry roasting charts',
    edition: 'as on foodsafety.gov',
    said: 'oven-below-roasting',
    figures: [least('oven', 325, 'fahrenheit')],
  },
  'oven-food-service': {
    ...foodCode,
    text: '3-401.11(B) whole-meat roasts, dry oven',
    said: 'asked',
    figures: [
      least('from ten pounds', 250, 'fahrenheit'),
      least('still oven, under ten pounds', 350, 'fahrenheit'),
      least('fan oven, under ten pounds', 325, 'fahrenheit'),
    ],
  },
  hold: {
    ...usda,
    text: 'take-out foods: hot holding at home',
    edition: 'undated sheet',
    said: 'hold-offered',
    figures: [least('held', 140, 'fahrenheit'), most('held for', 120, 'minutes')],
  },
  'hold-food-service': {
    ...foodCode,
    text: '3-501.16 hot holding',
    said: 'asked',
    figures: [least('held', 135, 'fahrenheit'), least('roast held', 130, 'fahrenheit')],
  },
  'cook-food-service': {
    ...foodCode,
    text: '3-401.11(B) whole-meat roasts',
    said: 'asked',
    figures: [least('core', 130, 'fahrenheit'), least('time at it', 112, 'minutes')],
  },
  'cool-food-service': {
    ...foodCode,
    text: '3-501.14 cooling',
    said: 'asked',
    figures: [
      most('after two hours', 70, 'fahrenheit'),
      most('after six hours', 41, 'fahrenheit'),
      most('to seventy', 120, 'minutes'),
      most('in all', 360, 'minutes'),
    ],
  },
  'plant-lethality': {
    authority: 'FSIS Appendix A',
    text: 'lethality for beef: 6.5 log10 of Salmonella',
    edition: '1999 table, as carried by later guidance',
    known: 'read in a copy',
    said: 'asked',
    figures: [least('counted from', 130, 'fahrenheit'), least('reduction', 6.5, 'log')],
  },
  'plant-come-up': {
    authority: 'FSIS Appendix A',
    text: 'heating come-up time',
    edition: '2021',
    known: 'from memory',
    said: 'asked',
    figures: [most('from 50 °F to 130 °F', 360, 'minutes')],
  },
  leftovers: {
    ...usda,
    text: 'leftovers and food safety',
    edition: 'undated sheet',
    said: 'served',
    figures: [
      most('out', 120, 'minutes'),
      most('out in a hot room', 60, 'minutes'),
      most('in the fridge', 4, 'days'),
      least('reheated', 165, 'fahrenheit'),
    ],
  },
  'out-of-fridge': {
    ...usda,
    text: 'two-hour rule',
    edition: 'undated sheet',
    said: 'asked',
    figures: [
      most('out', 120, 'minutes'),
      most('out in a hot room', 60, 'minutes'),
      most('a room that is not hot', 90, 'fahrenheit'),
    ],
  },
  'raw-kept': {
    ...usda,
    text: 'cold food storage chart',
    edition: 'as on foodsafety.gov',
    said: 'asked',
    figures: [most('in the fridge', 5, 'days'), most('fridge', 40, 'fahrenheit')],
  },
  'thaw-fridge': {
    ...usda,
    text: 'safe defrosting methods',
    edition: 'undated sheet',
    said: 'roast-frozen',
    figures: [
      least('slowest', 24 / 4, 'hours per pound'),
      least('quickest', 24 / 5, 'hours per pound'),
      most('raw after thawing', 5, 'days'),
      most('fridge', 40, 'fahrenheit'),
    ],
  },
  refreeze: {
    authority: 'USDA FSIS',
    text: 'freezing and food safety: refreezing',
    edition: 'undated sheet',
    known: 'from memory',
    said: 'asked',
    figures: [most('out', 120, 'minutes')],
  },
  'thaw-water': {
    ...usda,
    text: 'safe defrosting methods',
    edition: 'undated sheet',
    said: 'asked',
    figures: [most('fresh water every', 30, 'minutes'), least('in all', 30, 'minutes per pound')],
  },
  thermometer: {
    ...foodCode,
    text: '4-203.11 temperature measuring devices',
    said: 'asked',
    figures: [most('off by', 2, 'fahrenheit')],
  },
  allergy: { ...practice, said: 'allergic-guest', figures: [] },
  'later-guests': {
    ...usda,
    text: 'two-hour rule',
    edition: 'undated sheet',
    said: 'guests-later',
    figures: [most('out', 120, 'minutes'), least('held', 140, 'fahrenheit')],
  },
  glass: { ...practice, said: 'glass-pan', figures: [] },
  rest: {
    ...practice,
    said: 'asked',
    figures: [
      least('to four pounds', 15, 'minutes'),
      least('to eight pounds', 20, 'minutes'),
      least('above', 30, 'minutes'),
      most('above, no longer', 45, 'minutes'),
    ],
  },
  'raw-hands': { ...practice, said: 'asked', figures: [] },
  public: { ...practice, said: 'feeding-public', figures: [] },
} as const satisfies Record<string, SafetyRuleData>;

export type SafetyRuleId = keyof typeof safetyData;
export const safetyRuleIds = Object.keys(safetyData) as SafetyRuleId[];

/** A sliver for numbers that came through Celsius and back. */
const sliver = 1e-6;

/** Whether a value, in the figure's own unit, keeps the rule. */
export const meets = (figure: Figure, value: number): boolean =>
  figure.bound === 'at-least' ? value >= figure.value - sliver : value <= figure.value + sliver;

/** The figure of a rule by what it is of; a name that is not there is a mistake of this program. */
export function figureOf(rule: SafetyRuleId, of: string): Figure {
  const figures: readonly Figure[] = safetyData[rule].figures;
  const found = figures.find((figure) => figure.of === of);
  if (!found) throw new Error(`the rule ${rule} has no figure of "${of}"`);
  return found;
}

/** A figure in SI: kelvin-sized degrees Celsius, seconds, seconds per kilogram. */
export function siOf({ value, unit, of }: Figure): { value: number; unit: string } {
  switch (unit) {
    case 'fahrenheit':
      // A tolerance is a difference and carries no offset.
      return of === 'off by'
        ? { value: (value * 5) / 9, unit: 'K' }
        : { value: celsiusOfFahrenheit(value), unit: '°C' };
    case 'minutes':
      return { value: value * 60, unit: 's' };
    case 'days':
      return { value: value * 86_400, unit: 's' };
    case 'hours per pound':
      return { value: (value * 3_600) / kilogramsPerPound, unit: 's/kg' };
    case 'minutes per pound':
      return { value: (value * 60) / kilogramsPerPound, unit: 's/kg' };
    case 'log':
      return { value, unit: 'log10' };
  }
}
