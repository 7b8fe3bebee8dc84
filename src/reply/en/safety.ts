/**
 * Rules of safety as sentences. Each names one authority and gives its figures alone; the figures come
 * from the rules' data, so a sentence cannot say another number than the one that is tested.
 */
import {
  figureOf,
  type SafetyMoment,
  type SafetyRuleData,
  type SafetyRuleId,
  safetyData,
  safetyRuleIds,
} from '../../kitchen/safety.ts';
import type { Scene } from '../scene.ts';
import { type Spoken, say, silent } from '../spoken.ts';
import { authorityDegrees, count, degrees, type Units } from './words.ts';

export interface SafetyRule {
  id: SafetyRuleId;
  source: string;
  sentence(scene: Scene): Spoken;
  /** As a caution beside other words: the same to read, and to hear its heart. */
  caution(scene: Scene): Spoken;
}

/** A temperature of the rule, in the household's unit. */
const heat = (rule: SafetyRuleId, of: string, units: Units): Spoken =>
  authorityDegrees(figureOf(rule, of).value, units);
const number = (rule: SafetyRuleId, of: string, per = 1): Spoken =>
  count(figureOf(rule, of).value / per);

const sentenceOf: Record<SafetyRuleId, (scene: Scene) => Spoken> = {
  'below-145': ({ dinner: { units } }) =>
    say`The USDA advises ${heat('below-145', 'core', units)} and a three-minute rest for whole roasts; nothing pinker for anyone pregnant, very young, old or ill.`,
  'surface-inside': ({ dinner: { units, roast } }) => {
    const stuffed =
      roast.prepared === 'stuffed'
        ? say` The stuffing goes to ${heat('surface-inside', 'stuffing', units)} in its middle.`
        : silent;
    return say`Rolled, stuffed or tenderised meat carries its surface inside: the USDA advises ${heat('surface-inside', 'core', units)} with a three-minute rest.${stuffed}`;
  },
  vulnerable: ({ dinner: { units } }) => {
    const why = say`Not pink for them: the USDA advises ${heat('vulnerable', 'core', units)} and a three-minute rest.`;
    const how = say` Cook their slices on to ${heat('vulnerable', 'core', units)}, measured, or take the whole roast there.`;
    return { text: why.text + how.text, speech: why.speech };
  },
  poultry: ({ dinner: { units } }) =>
    say`Poultry and stuffing go to ${heat('poultry', 'poultry', units)}, minced meat to ${heat('poultry', 'minced meat', units)}, says the USDA.`,
  'oven-325': ({ dinner: { units } }) =>
    say`The USDA's roasting charts want an oven at ${heat('oven-325', 'oven', units)} or hotter; a gentler one is your choice to make.`,
  'oven-food-service': ({ dinner: { units } }) =>
    say`For food service the Food Code takes a dry oven of ${heat('oven-food-service', 'from ten pounds', units)} only for roasts of ten pounds or more; under that ${heat('oven-food-service', 'still oven, under ten pounds', units)}, or ${heat('oven-food-service', 'fan oven, under ten pounds', units)} with the fan.`,
  hold: ({ dinner: { units } }) =>
    say`The USDA holds cooked meat at ${heat('hold', 'held', units)} or hotter, or serves it within two hours.`,
  'hold-food-service': ({ dinner: { units } }) =>
    say`For food service the Food Code holds food at ${heat('hold-food-service', 'held', units)} or hotter, and a roast cooked by its own table at ${heat('hold-food-service', 'roast held', units)}.`,
  'cook-food-service': ({ dinner: { units } }) =>
    say`For food service the Food Code has a table that ends at ${heat('cook-food-service', 'core', units)} held for ${number('cook-food-service', 'time at it')} minutes, in an oven it also prescribes. That is a trained kitchen's rule, not one for home.`,
  'cool-food-service': ({ dinner: { units } }) =>
    say`For food service the Food Code cools from hot to ${heat('cool-food-service', 'after two hours', units)} in two hours, and to ${heat('cool-food-service', 'after six hours', units)} within six in all.`,
  'plant-lethality': ({ dinner: { units } }) =>
    say`Meat plants count killed bacteria from ${heat('plant-lethality', 'counted from', units)} on, by the plant table. I can show that figure for curiosity; it is no promise for a home kitchen.`,
  'plant-come-up': () =>
    say`By the plant table, as I remember it, a roast is through the warm middle range in six hours at most.`,
  leftovers: ({ dinner: { units } }) =>
    say`Into the fridge within two hours, eaten in three to four days, reheated to ${heat('leftovers', 'reheated', units)}, says the USDA.`,
  'out-of-fridge': ({ dinner: { units } }) =>
    say`Raw meat stays out of the fridge two hours at most, one in a room above ${heat('out-of-fridge', 'a room that is not hot', units)}, says the USDA.`,
  'raw-kept': ({ dinner: { units } }) =>
    say`A raw roast keeps three to five days in a fridge at ${heat('raw-kept', 'fridge', units)} or colder, says the USDA; frozen, it stays safe and slowly loses quality.`,
  'thaw-fridge': ({ dinner: { units } }) =>
    units.weight === 'lb'
      ? say`Thaw it in the fridge, at ${heat('thaw-fridge', 'fridge', units)} or colder: a day for every four to five pounds, says the USDA. It then keeps three to five days raw.`
      : say`Thaw it in the fridge, at ${heat('thaw-fridge', 'fridge', units)} or colder: a day for every two kilos or so, says the USDA. It then keeps three to five days raw.`,
  refreeze: () =>
    say`What thawed in the fridge may be frozen again, says the USDA, with some loss of juice; what stood out for more than two hours may not.`,
  'thaw-water': ({ dinner: { units } }) =>
    units.weight === 'lb'
      ? say`Quicker is cold water: the roast in a bag that does not leak, fresh cold water every half hour, about half an hour a pound, and into the oven at once, says the USDA.`
      : say`Quicker is cold water: the roast in a bag that does not leak, fresh cold water every half hour, about an hour a kilo, and into the oven at once, says the USDA.`,
  thermometer: ({ dinner: { units } }) =>
    units.temperature === 'F'
      ? say`The Food Code lets a thermometer be off by two degrees; ice water tells.`
      : say`The Food Code lets a thermometer be off by one degree; ice water tells.`,
  allergy: () => ({
    text: 'Read every label, and use a clean board, knife and pan for what they eat. For a bad allergy, agree with them beforehand what to do if it happens.',
    speech: 'Read every label, and keep a clean board, knife and pan for them.',
  }),
  'later-guests': ({ dinner: { units } }) =>
    say`What waits for them stays whole, at ${heat('later-guests', 'held', units)} or hotter, or is eaten within two hours, says the USDA.`,
  glass: () =>
    say`Nothing cold into hot glass, and no glass under the grill: it shatters. Shards in food, and all of it goes.`,
  rest: ({ dinner: { units } }) =>
    units.weight === 'lb'
      ? say`About fifteen minutes to four pounds, twenty to thirty to eight, thirty to forty-five above. That is common practice, no authority's figure; a tight foil softens the crust.`
      : say`About fifteen minutes to two kilos, twenty to thirty to three and a half, thirty to forty-five above. That is common practice, no authority's figure; a tight foil softens the crust.`,
  'raw-hands': () =>
    say`Do not rinse the roast. Wash your hands, and the board, knife, tap and platter that met it raw, before they meet anything that is eaten.`,
  public: () =>
    say`Local food codes and licensed professionals come first when you feed the public. Ask them; what I say is for a home table.`,
};

/** What of a rule is heard where it shares a breath with what was asked or noted. */
const heartOf: Partial<Record<SafetyRuleId, (scene: Scene) => Spoken>> = {
  'below-145': ({ dinner: { units } }) =>
    say`The USDA advises ${heat('below-145', 'core', units)}: no pink for the pregnant, very young, old or ill.`,
  'surface-inside': ({ dinner: { units, roast } }) =>
    roast.prepared === 'stuffed'
      ? say`Its surface is inside: ${heat('surface-inside', 'core', units)} for the meat, ${heat('surface-inside', 'stuffing', units)} for the stuffing, says the USDA.`
      : say`Its surface is inside: ${heat('surface-inside', 'core', units)} for such meat, says the USDA.`,
  vulnerable: ({ dinner: { units } }) =>
    say`For them the USDA advises ${heat('vulnerable', 'core', units)}, and three minutes' rest.`,
  'oven-325': ({ dinner: { units } }) =>
    say`The USDA's charts want an oven at ${heat('oven-325', 'oven', units)} or hotter.`,
  hold: ({ dinner: { units } }) =>
    say`Hold it at ${heat('hold', 'held', units)} or hotter, says the USDA.`,
  'thaw-fridge': ({ dinner: { units } }) =>
    units.weight === 'lb'
      ? say`In the fridge: a day for every four to five pounds, says the USDA.`
      : say`In the fridge: a day for every two kilos or so, says the USDA.`,
  'later-guests': ({ dinner: { units } }) =>
    say`Kept at ${heat('later-guests', 'held', units)} or hotter, or eaten within two hours, says the USDA.`,
};

const cautionOf =
  (id: SafetyRuleId): SafetyRule['caution'] =>
  (scene) => {
    const { text, speech } = sentenceOf[id](scene);
    return { text, speech: heartOf[id]?.(scene).speech ?? speech };
  };

const sourceOf = ({ authority, text, edition, known }: SafetyRuleData): string =>
  authority === 'common practice'
    ? 'common practice, no source'
    : `${authority}, ${text} (${edition}${known === 'from memory' ? '; from memory' : ''})`;

export const safetyRules = Object.fromEntries(
  safetyRuleIds.map((id): [SafetyRuleId, SafetyRule] => [
    id,
    { id, source: sourceOf(safetyData[id]), sentence: sentenceOf[id], caution: cautionOf(id) },
  ]),
) as Record<SafetyRuleId, SafetyRule>;

/** The rules that are said at these moments, in the order of the data. */
export const rulesSaidAt = (moments: ReadonlySet<SafetyMoment>): SafetyRuleId[] =>
  safetyRuleIds.filter((id) => moments.has(safetyData[id].said));

/** The target in the cook's hands when it is below an authority's figure. */
export const yoursToChoose = ({ dinner }: Scene): Spoken =>
  say`Yours is set for ${degrees(dinner.target?.serveCelsius ?? 0, dinner.units)}: your choice to make.`;

export type { SafetyRuleId };
