/** More than one oven, what stands in the other, few rings on the hob. */
import type { Match, Recogniser } from '../../recogniser.ts';
import { dishNamed } from '../frames/dinner.ts';
import { inStepOf } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';

const other = '(second|other|2nd|spare|small|little)';
/** Told of another house than this, it is nobody's oven here. */
const elsewhere = / (she|he|they|her|his|their|neighbour|neighbours) /;

const dishOf = (match: Match): string | undefined =>
  dishNamed(match.line.replaceAll('|', ''), match);

export const ovens: Recogniser = {
  name: 'ovens',
  moods: ['statement', 'intention', 'request'],
  phrases: [
    ...phrases(
      [
        '(have|have got|got|has|there is|there are|using|with) [also|actually|now|only|just] {n:number} ovens ',
        '{n:number} ovens (here|in this kitchen|in the kitchen|tonight|today) ',
        '^ {n:number} ovens $',
        '{n:number} ovens the ',
      ],
      (match) =>
        match.count('n') === 2 && !elsewhere.test(` ${match.line}`)
          ? { intent: 'report-setup', oven: 'two ovens' }
          : undefined,
    ),
    ...phrases(
      '^ [i|we] [have|have got|got|there is] [only|just|but] {n:number} oven [here|only|to work with|in this kitchen|$] $',
      (match) =>
        match.count('n') === 1 && !elsewhere.test(` ${match.line}`)
          ? { intent: 'report-setup', oven: 'one oven' }
          : undefined,
    ),
    ...phrases(
      [
        `(is|are|has gone|have gone|went|put|popped|stuck|shoved|slid|got|have put|is sitting|are sitting) * (in|into) [the|my|our] ${other} oven `,
      ],
      (match) => {
        const dish = dishOf(match);
        // What is only going to be there has not begun; that there is such an oven is news all the same.
        if (/ (going|will|can|could|should|would|might|not) /.test(` ${match.line}`))
          return dish ? { intent: 'report-setup', oven: 'two ovens' } : undefined;
        return dish
          ? {
              intent: 'report-started',
              step: inStepOf(dish, match.context),
              which: 'second',
              ...momentOf(match),
            }
          : undefined;
      },
    ),
    ...phrases(
      [
        `{what:thing} (goes|go|going|can go|will go|could go|to go) [in|into] (in|into) [the|my|our] ${other} oven `,
      ],
      (match) => (dishOf(match) ? { intent: 'report-setup', oven: 'two ovens' } : undefined),
    ),
    ...phrases(
      [
        '(only|just) [have|has|got|have got|has got] [the|these] {n:number} (rings|burners|hotplates|hobs) ',
        '(have|have got|has|got) [only|just] [the|these] {n:number} (rings|burners|hotplates) ',
        '^ [only|just|with] {n:number} (rings|burners|hotplates) [on the (hob|stove|cooktop|range)|$] $',
      ],
      (match) => {
        const rings = match.count('n');
        return rings === undefined || rings < 1 || rings > 8
          ? undefined
          : { intent: 'report-setup', rings };
      },
    ),
  ],
};
