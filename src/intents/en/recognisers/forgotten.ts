/** What was forgotten has not been done, whatever the verb after it says. */
import type { Recogniser } from '../../recogniser.ts';
import { meansRoast, roastStep, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const forgot =
  '(forgot to|have forgotten to|had forgotten to|has forgotten to|forgotten to|forgetting to|neglected to)';
const never = '(never|did not|have not|had not)';

export const forgotten: Recogniser = {
  name: 'forgotten',
  moods: ['statement', 'negative', 'intention'],
  phrases: [
    // Who did not forget has done it.
    ...phrases(
      [
        '^ [no ,|no] (i|we) (did not|have not|had not|never) (forget|forgotten|forgot) to {verb:word} [the|up|my|our] {who:thing} $',
        '^ [no ,|no] (i|we) (did not|have not|had not|never) (forget|forgotten|forgot) to {verb:word} $',
        '^ [no ,|no] (i|we) remembered to {verb:word} [the|up|my|our] {who:thing} [this time|$] $',
      ],
      (match) => {
        const verb = match.words('verb');
        const who = match.words('who');
        const placed = /^(put|get|pop|stick|slide)$/.test(verb) && / in$/.test(` ${who}`);
        if (placed) {
          const thing = who.replace(/ in$/, '');
          const step = meansRoast(thing) ? 'roast-in' : stepIn(`put ${thing} in`, match.context);
          return step ? { intent: 'report-started', step } : undefined;
        }
        const step =
          who === '' || meansRoast(who) ? roastStep(verb) : stepIn(`${verb} ${who}`, match.context);
        return step ? { intent: 'report-done', step } : undefined;
      },
    ),
    ...phrases(
      [
        `${forgot} (turn|switch|put|light) (@oven on|on @oven|@oven) $`,
        `${never} [actually|even] (turned|switched|put|turn|switch) (@oven on|on @oven) $`,
        `(${forgot}|never|did not actually|did not even) (light|lit|preheat|preheated) @oven $`,
      ],
      { intent: 'report-oven', state: 'off' },
    ),
    ...phrases(
      [
        `${forgot} (turn|knock|drop|bring|lower) (it|@oven|the heat|the temperature) [back|right] [down] $`,
        `${forgot} turn down (it|@oven|the heat) $`,
      ],
      (match) =>
        / (down|lower|drop) /.test(match.line)
          ? { intent: 'report-not-done', step: 'oven-down' }
          : undefined,
    ),
    ...phrases(
      [
        `${forgot} (put|get|stick|slide|pop|bung|shove) [the|my|our] {who:thing} (in|on) [the] [oven|@oven] $`,
        `(never|did not) [actually|even] (put|got|get|stuck|slid) [the|my|our] {who:thing} (in|on) [the] [oven|@oven] $`,
      ],
      (match) => {
        if (/(did not|do not|not) forget/.test(match.line)) return undefined;
        const who = match.words('who');
        const step = meansRoast(who) ? 'roast-in' : stepIn(`put ${who} in`, match.context);
        return step ? { intent: 'report-not-done', step } : undefined;
      },
    ),
    ...phrases(
      [`${forgot} {verb:word} [the|up|my|our] {who:thing} $`, `${forgot} {verb:word} $`],
      (match) => {
        if (/(did not|do not|not|never) forg/.test(match.line)) return undefined;
        const verb = match.words('verb');
        const who = match.words('who');
        if (/^(buy|get|say|tell|mention|ask|call|ring|invite|bring|order|pick)$/.test(verb))
          return undefined;
        const taken = / out( of the oven)?$/.test(` ${who}`) && /^(take|pull|get)$/.test(verb);
        const thing = who.replace(/ ?out( of the oven)?$/, '');
        if (taken && meansRoast(thing)) return { intent: 'report-not-done', step: 'pull' };
        const step =
          who === '' || meansRoast(who) ? roastStep(verb) : stepIn(`${verb} ${who}`, match.context);
        return step ? { intent: 'report-not-done', step } : undefined;
      },
    ),
  ],
};
