/**
 * A report in a card's own words: "the stock is on", "the plates are warming". Each step's clause of
 * being done is among its names, so a clause that is word for word such a name is that step's report.
 */
import { oncePer } from '../../../base/once.ts';
import { isRoastMoment } from '../../../kitchen/card.ts';
import type { Lexicon, ReadContext } from '../../../kitchen/heard.ts';
import { stemsOf } from '../../names.ts';
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';

const tells = / (is|are|has|have) /;
/** What waits by itself is under way with such words, not over: "the carrots are on". */
const underWay = / (on|in the water|in its oil|to soften|top rack|\w+ing) $/;
const keyOf = (words: string): string => stemsOf(words).join(' ');

/** The steps that each clause of being done tells. */
const stepsByClause = oncePer(({ steps }: Lexicon): ReadonlyMap<string, readonly string[]> => {
  const byClause = new Map<string, string[]>();
  for (const { id, names } of steps) {
    // Into and out of the oven, and the roast's own moments, have words of their own.
    if (isRoastMoment(id) || /\.(in|out)$/.test(id)) continue;
    for (const key of new Set(names.filter((name) => tells.test(name)).map(keyOf)))
      byClause.set(key, [...(byClause.get(key) ?? []), id]);
  }
  return byClause;
});

/** The step whose clause it is: an open one, else one of this dinner. */
function stepTold(line: string, context: ReadContext): string | undefined {
  const named = stepsByClause(context.lexicon).get(keyOf(line)) ?? [];
  const ofDinner = (id: string): boolean =>
    !id.includes('.') || context.dishes.includes(id.split('.')[0] ?? '');
  return context.openSteps.find((id) => named.includes(id)) ?? named.find(ofDinner) ?? named[0];
}

export const namedSteps: Recogniser = {
  name: 'named-steps',
  moods: ['statement'],
  phrases: phrases(['^ {who:thing} (is|are|has|have) {what:thing} $'], (match) => {
    const step = stepTold(match.line, match.context);
    // Uncalled, "the probe is in" says how the roast is set up.
    const setup = step === 'probe' && !match.context.openSteps.includes(step);
    return step === undefined || setup
      ? undefined
      : {
          intent:
            step.includes('.') && underWay.test(match.line) ? 'report-started' : 'report-done',
          step,
          ...momentOf(match),
        };
  }),
};
