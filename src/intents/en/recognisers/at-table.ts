/** The table is served: said by whoever calls the others, or of those who have sat down. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const carved = /^(carve|served)$/;
const outOfOven = /^(rest|hold|carve|served)$/;

/** Only what is out of the oven can be eaten; before that it is talk of a time. */
const served =
  (stages: RegExp) =>
  (match: Match): Meaning | undefined =>
    stages.test(match.context.stage ?? '')
      ? { intent: 'report-started', step: 'serve' }
      : undefined;

export const atTable: Recogniser = {
  name: 'at-table',
  moods: ['statement', 'request', 'intention'],
  phrases: [
    ...phrases(
      [
        '^ [come on|right] (let us|we can|time to|time we|we will) [all|now] (eat|tuck in|dig in) [now|everyone|everybody] $',
        '^ (it is|now it is) time to eat $',
        '^ (dinner|supper|lunch|tea|grub) is (served|up|on the table) $',
        '^ (we are|everyone is|everybody is|they are) [all|now] (eating|tucking in) [now] $',
      ],
      served(outOfOven),
    ),
    ...phrases(
      [
        '(everyone|everybody|we|they|all) (has|have|is|are) [all|now] (sat|sitting|seated) [down] [now] [to eat|to dinner|at the table] $',
      ],
      served(carved),
    ),
  ],
};
