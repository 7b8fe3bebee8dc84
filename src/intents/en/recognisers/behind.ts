/** The cook is behind. */
import type { Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

export const behind: Recogniser = {
  name: 'behind',
  moods: ['statement', 'intention'],
  phrases: [
    // "I'm a bit late. Maybe ten minutes."
    ...phrases('^ [by] {minutes:duration} [or so|at most|at least|$] $', (match) => {
      const last = match.before.at(-1);
      return last?.intent === 'running-behind' && last.minutes === undefined
        ? { intent: 'running-behind', minutes: match.minutes('minutes') }
        : undefined;
    }),
    ...phrases(
      [
        '(i am|we are|i have got|^ running|i have fallen|i|we have fallen|i am running|we are running) [about|running|now|a good] {minutes} (behind|late|slow|down|behind schedule)',
        '(i am|we are|^ running|i have fallen|we have fallen|we are running) [running] (behind|late|behind schedule|slow) [schedule] (by|about) {minutes}',
        '^ {minutes} behind $',
        '(lost|it took me an extra|took an extra) {minutes} ',
      ],
      (match) => {
        const minutes = match.minutes('minutes');
        // "we're one down" is of guests.
        if (/ (down|short) $/.test(match.line) && match.quantity('minutes')?.kind === 'number')
          return undefined;
        return Number.isFinite(minutes) ? { intent: 'running-behind', minutes } : undefined;
      },
    ),
    ...phrases(
      [
        '(i am|we are|i have fallen|we have fallen|i am getting|things are|everything is) [running|a bit|falling|getting|way|so|very|well|a little|little bit|a little bit|all|really] [running|a bit|a little|little bit|so|way] (behind|late|behind schedule|slow|off schedule)',
        '^ running [a bit|a little|very|so] (late|behind) ',
        '^ [i am|we are] (so|way|well|really|miles|hopelessly|terribly|badly|right|all|that far|dead) behind [with everything|on everything|here|today|$] ',
        '^ (behind|running behind|running late) [with everything|on everything|schedule|here] $',
      ],
      (match) =>
        /(they|guests|people)/.test(match.line) ? undefined : { intent: 'running-behind' },
    ),
  ],
};
