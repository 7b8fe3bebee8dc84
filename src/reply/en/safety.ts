/** Rules of safety as sentences, each with its authority. The numbers are theirs. */
import type { Scene } from '../scene.ts';
import { type Spoken, say } from '../spoken.ts';
import { authorityDegrees } from './words.ts';

export interface SafetyRule {
  id: string;
  source: string;
  sentence(scene: Scene): Spoken;
}

export const safetyRules = {
  'below-145': {
    id: 'below-145',
    source: 'USDA FSIS, safe minimum internal temperatures',
    sentence: ({ dinner }) =>
      say`The USDA advises ${authorityDegrees(145, dinner.units)} and a three-minute rest for whole roasts; anyone pregnant, very young, old or ill should not eat it lower.`,
  },
  'surface-inside': {
    id: 'surface-inside',
    source: 'USDA FSIS, mechanically tenderised beef; stuffing',
    sentence: ({ dinner }) =>
      say`Rolled, stuffed or tenderised meat carries its surface inside. The USDA advises ${authorityDegrees(145, dinner.units)} with a three-minute rest; with stuffing, ${authorityDegrees(165, dinner.units)} in its middle.`,
  },
  vulnerable: {
    id: 'vulnerable',
    source: 'USDA FSIS, safe minimum internal temperatures',
    sentence: ({ dinner }) =>
      say`Not pink for them: the USDA advises ${authorityDegrees(145, dinner.units)} and a three-minute rest. Cook their slices on to ${authorityDegrees(145, dinner.units)}, measured, or take the whole roast there.`,
  },
  hold: {
    id: 'hold',
    source: 'USDA FSIS, hot holding',
    sentence: ({ dinner }) =>
      say`The USDA holds cooked meat at ${authorityDegrees(140, dinner.units)} or hotter, or serves it within two hours.`,
  },
  leftovers: {
    id: 'leftovers',
    source: 'USDA FSIS, leftovers',
    sentence: ({ dinner }) =>
      say`Into the fridge within two hours, eaten in three to four days, reheated to ${authorityDegrees(165, dinner.units)}, says the USDA.`,
  },
  'out-of-fridge': {
    id: 'out-of-fridge',
    source: 'USDA FSIS, two-hour rule',
    sentence: (_scene: Scene) =>
      say`Raw meat stays out of the fridge two hours at most, one in a hot room, says the USDA.`,
  },
  poultry: {
    id: 'poultry',
    source: 'USDA FSIS, safe minimum internal temperatures',
    sentence: ({ dinner }) =>
      say`Poultry and stuffing go to ${authorityDegrees(165, dinner.units)}, minced meat to ${authorityDegrees(160, dinner.units)}, says the USDA.`,
  },
} as const satisfies Record<string, SafetyRule>;

export type SafetyRuleId = keyof typeof safetyRules;

export const emergencyWords = {
  fire: say`Keep the oven door shut and turn the oven off. No water on fat. If it does not die down at once, get everyone out and call the fire service.`,
  burn: say`Cool the burn under cool running water for twenty minutes, rings off, no ice or butter. If it is large, deep or blistered, get medical help.`,
  cut: say`Press a clean cloth on the cut and hold it up. If it is deep or will not stop bleeding, call for medical help.`,
  fall: say`Stay down and check what hurts. If you hit your head or cannot stand, call for medical help.`,
} as const;
