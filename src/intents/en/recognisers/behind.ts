/** The cook is behind. */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

/** How many times as long, by the words for it; "longer" and "slow" say no number: half as long again. */
function factorIn(line: string): number | undefined {
  if (/ half (the|my|as much) time | twice as (fast|quick) /.test(line)) return 0.5;
  if (/ (three times|triple) /.test(line)) return 3;
  if (/ (twice|double|doubles|doubled) /.test(line)) return 2;
  if (
    / half as (long|much) (time )?again | half again | (longer|slow|slower|slowly|not (very |that |so )?(fast|quick)) /.test(
      line,
    )
  )
    return 1.5;
  return undefined;
}

const pace =
  (ofStep: boolean) =>
  (match: Match): Meaning | undefined => {
    const line = ` ${match.line}`;
    if (
      / (oven|core|roast|meat|beef|joint|it is cooking|cooking (too )?slow|they|guests|last|was|behind|did you|<[dc]\d+>) /.test(
        line,
      )
    )
      return undefined;
    const factor = factorIn(line);
    const step = ofStep ? stepIn(match.words('what'), match.context) : undefined;
    if (factor === undefined || (ofStep && step === undefined)) return undefined;
    return { intent: 'running-behind', factor, ...(step === undefined ? {} : { step }) };
  };

const timesAsLong =
  '(twice as long|twice the time|double the time|double|double that|three times as long|three times the time|half as long again|half again as long|half the time|longer|a lot longer|much longer)';

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
        `(it|this|that|everything|all of it|all of this|all this|each step|every step|the prep|prep|prep work|the knife work|chopping|peeling) [all|always|usually] (takes|is taking|will take|is going to take|take) [me|us] [about|easily|at least] ${timesAsLong} `,
        `i (need|take|will need|am going to need|will take) [about|easily|at least] ${timesAsLong} [for (everything|all of it|this|that|prep|the prep)|$] `,
        '^ [sorry|sorry ,|but|well|look] i (am|work|cook|chop) [a bit|rather|quite|very|really|pretty|so|just|always|a] (slow|slower|slowly) [cook|worker|chopper] [at (this|that|it|all this|these things|chopping|peeling|knife work|prep)|with a knife|in the kitchen|with my hands|$] $',
        '^ i am not [a|very|that|so] [very] (fast|quick) [cook|worker|chopper] [at (this|it|that|all)|with a knife|$] $',
      ],
      pace(false),
    ),
    ...phrases(
      [
        `^ [the|my] {what:thing} (takes|is taking|will take|take|are taking) [me] [about|easily|at least] ${timesAsLong} [than you (said|say|think)|$] $`,
      ],
      pace(true),
    ),
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
        '(i am|we are|i have fallen|we have fallen|i am getting|things are|everything is|it is|it is all|dinner is|the plan is|the schedule is) [running|a bit|falling|getting|way|so|very|well|a little|little bit|a little bit|all|really] [running|a bit|a little|little bit|so|way] (behind|late|behind schedule|slow|off schedule)',
        '^ running [a bit|a little|very|so] (late|behind) ',
        '^ [i am|we are] (so|way|well|really|miles|hopelessly|terribly|badly|right|all|that far|dead) behind [with everything|on everything|here|today|$] ',
        '^ (behind|running behind|running late) [with everything|on everything|schedule|here] $',
      ],
      (match) =>
        /(they|guests|people)/.test(match.line) ? undefined : { intent: 'running-behind' },
    ),
  ],
};
