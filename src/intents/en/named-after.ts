/**
 * What a clause says beside its verb: of which dish a step is ("slicing spuds for the gratin"), which
 * step is not done, which cut the weight is of. Read from the clause once it is known what it reports.
 */

import type { ReadContext } from '../../kitchen/heard.ts';
import { lineOf } from '../clause.ts';
import type { Placed } from '../placed.ts';
import { setupIn } from './fill-told.ts';
import { cutOf } from './recognisers/roast.ts';
import { dishExactlyIn, dishStep, inStepOf, makingStep, prepStep, roastStep } from './steps.ts';

const purpose = / for (?:the |my |our )?((?:[a-z]+ ){1,3})/;
const prepares = /^(peel|scrub|chop|trim|cut|wash|slic|dic|halv|prep)/;
const participle = /(ed|ing)$|^(cut|boil)$/;

/** "on to boil for the mash": the step of the dish that the thing is for. */
export function forTheDish(heard: readonly Placed[], context: ReadContext): Placed[] {
  return heard.map((one) => {
    const { meaning } = one;
    if (!('step' in meaning) || typeof meaning.step !== 'string' || !one.clause) return one;
    const line = ` ${lineOf(one.clause.tokens)}`;
    const words = purpose.exec(line)?.[1]?.replace(/ (now|then|later) $/, ' ');
    const dish = words ? dishExactlyIn(words.trim(), context) : undefined;
    const [of] = meaning.step.split('.');
    if (!dish || dish === of || !meaning.step.includes('.')) return one;
    const verb = line.split(' ').find((word) => participle.test(word)) ?? '';
    const step =
      dishStep(dish, verb, context) ??
      (prepares.test(verb)
        ? prepStep(dish, context)
        : meaning.intent === 'report-started'
          ? inStepOf(dish, context)
          : makingStep(dish, context));
    return { ...one, meaning: { ...meaning, step } };
  });
}

/** The dish that was named last in these words. */
function lastDishIn(words: readonly string[], context: ReadContext): string | undefined {
  for (let end = words.length; end > 0; end--)
    for (const length of [2, 1]) {
      const dish =
        end >= length && dishExactlyIn(words.slice(end - length, end).join(' '), context);
      if (dish) return dish;
    }
  return undefined;
}

/** "Potatoes parboiled, they're going in now": "they" are what was named before. */
export function ofDishBefore(
  heard: readonly Placed[],
  context: ReadContext,
  whole: string,
): Placed[] {
  return heard.map((one) => {
    const { meaning, clause } = one;
    if (meaning.intent !== 'report-started' || !clause) return one;
    const line = lineOf(clause.tokens);
    if (!/^they /.test(line) || lastDishIn(line.trim().split(' '), context)) return one;
    const before = whole.slice(0, Math.max(0, whole.indexOf(line)));
    const dish = lastDishIn(before.trim().split(' '), context);
    return dish === undefined || dish === meaning.step.split('.')[0]
      ? one
      : { ...one, meaning: { ...meaning, step: inStepOf(dish, context) } };
  });
}

/** "we have not carved it yet", "I haven't started the gravy": which step that is. */
export function whatIsNotDone(heard: readonly Placed[], context: ReadContext): Placed[] {
  return heard.map((one) => {
    const { meaning, clause } = one;
    if (meaning.intent !== 'report-not-done' || meaning.step !== undefined || !clause) return one;
    const words = lineOf(clause.tokens).trim().split(' ');
    const verb = words.find((word) => roastStep(word) !== undefined);
    const dishes = [...new Set(words.map((word) => dishExactlyIn(word, context)))].filter(
      (dish) => dish !== undefined,
    );
    const step =
      dishes.length === 1 ? makingStep(dishes[0]!, context) : verb ? roastStep(verb) : undefined;
    return step ? { ...one, meaning: { ...meaning, step } } : one;
  });
}

/** "On the bottom rack in a cast iron, no convection": all that the clause says of it. */
export const wholeSetup = (heard: readonly Placed[]): Placed[] =>
  heard.map((one) => {
    const { meaning, clause } = one;
    if (meaning.intent !== 'report-setup' || !clause) return one;
    return { ...one, meaning: { ...setupIn(lineOf(clause.tokens)), ...meaning } };
  });

/** "bit of topside, five pounds odd": the cut stands anywhere in the text that tells of the roast. */
export function cutInText(heard: readonly Placed[], context: ReadContext, whole: string): Placed[] {
  return heard.map((one) => {
    const { meaning } = one;
    if (meaning.intent !== 'describe-roast' || meaning.cut !== undefined) return one;
    const cut = cutOf(whole, context);
    return cut ? { ...one, meaning: { ...meaning, cut } } : one;
  });
}
