/** The dinner's other clocks: a first course, and guests at the door, each with a time of its own. */
import type { DinnerClock } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const firstCourse =
  '(first course|1st course|starter|starters|soup|soup course|appetiser|appetisers|appetizer|appetizers|antipasti)';

const clockSet =
  (of: DinnerClock) =>
  (match: Match): Meaning | undefined => {
    const time = match.mealTime('clock');
    return time === undefined || / (was|were|yesterday|last|not) /.test(` ${match.line}`)
      ? undefined
      : { intent: 'set-serving-time', time, of };
  };

/** While no hour of the dinner is known, and none beside it, the hour at which people come is the dinner's. */
const arrival = (match: Match): Meaning | undefined => {
  const { stage, expecting } = match.context;
  const hours = new Set(match.whole.match(/<[cn]\d+>/g) ?? []);
  const alone = hours.size < 2 && !match.before.some((one) => one.intent === 'set-serving-time');
  if (expecting === 'serving-time' || ((stage === undefined || stage === 'planning') && alone))
    return undefined;
  return clockSet('guests-arrive')(match);
};

/** One that is eaten by itself; "soup" alone may be anybody's lunch. */
const own = '(first course|1st course|starter|starters|appetiser|appetisers|appetizer|appetizers)';

const step = 'first-course';

export const clocks: Recogniser = {
  name: 'clocks',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        `^ [there is|we are having|we have|i am doing] [no|not a|not having a|not doing a|without a] ${own} [after all|tonight|then|now|$] $`,
        `^ (skip|drop|scrap|forget|cancel|leave out|never mind|we skip|we are skipping|i am skipping|not having|we are not having|we are not doing|not doing) [about] [the|a|any|our] ${own} [after all|tonight|then|now|$] $`,
      ],
      (match) =>
        / (no|not|without|skip|skipping|drop|scrap|forget|cancel|leave out|never mind) /.test(
          ` ${match.line}`,
        )
          ? { intent: 'skip-step', step }
          : undefined,
    ),
    ...phrases(
      [
        `^ [the|their|our] [${own}|soup] (is|are|has been|have been) (finished|done|eaten|cleared|cleared away|over|all gone)`,
        `^ (they|we|everyone|everybody|guests) (have|has|are|is) [all|just] (finished|done with|eaten|cleared|through|through with) [with] [the|their|our] ${own} `,
        `^ [i have|we have|i|we] (cleared|cleared away) [the] (${own}|soup) [plates|bowls|$] $`,
      ],
      (match) =>
        new RegExp(` ${own} `).test(` ${match.line}`) ? { intent: 'report-done', step } : undefined,
    ),
    ...phrases(
      [
        `^ [the|their|our] ${firstCourse} (is|are|has|have|went) [now|just] (out|served|on the table|gone out|going out|in|gone in|on their plates|being served|in front of them) [now|$] $`,
        `^ [i have|we have|i|we|i am|we are] [just] (served|brought out|brought in|carried in|carried out|took in|taken in|taken out|serving) [the|our|their] ${own} [out|in|now|$] $`,
        `^ (they|we|everyone|everybody|guests) (are|is) [all|just|now] (on|eating|having|at) [the|their|our] ${own} [now|$] $`,
      ],
      { intent: 'report-started', step },
    ),
    ...phrases(
      [
        `(move|push|put|make|shift|bring|have|serve|set|change) [the|our] ${firstCourse} [back|on|forward|up|out] (to|at|for|till|until) {clock}`,
      ],
      clockSet('first-course'),
    ),
    ...phrases(
      [
        `[we have|we are having|having|have|serve|serving|there is|i am serving|i want|i would like|i am doing|we are doing] [a|the|our|my|with a|with the|with] ${firstCourse} [is|are|will be|should be|goes|go|comes|to be|wants to be] [going|served|out|ready|to go|on] [out|on|to] [on|to] [the|table] [table] (at|for|by|around) {clock}`,
        `[the|our|my] ${firstCourse} [is|are] {clock:face}`,
        `^ [the|our|my] ${firstCourse} (we|i) [will|would like to|want to] (do|have|serve|eat|want|start|put out|take) [it|them] (at|for|around|by) {clock}`,
        `(start|starting|begin|beginning|open|kick off|sit down) [off] (with|to) [a|the|some|our] [{what:word}] ${firstCourse} (at|around|for) {clock}`,
        `(at|around) {clock} [we have|there is|we are having|comes|we serve] [a|the|our] ${firstCourse} `,
      ],
      clockSet('first-course'),
    ),
    // "the soup at seven, the roast at eight": after one clock of the dinner, the next.
    ...phrases(
      ['^ [the|our|my] (roast|main|mains|main course|meat|beef|lamb) (at|for|by) {clock} $'],
      (match) => {
        const time = match.mealTime('clock');
        return time !== undefined && match.before.at(-1)?.intent === 'set-serving-time'
          ? { intent: 'set-serving-time', time }
          : undefined;
      },
    ),
    ...phrases(
      [
        '(@guests|they|everyone|everybody|people|company) (arrive|are arriving|come|are coming|comes|is coming|get here|gets here|are due|is due|are invited|turn up|will be here|will arrive|will come|are here|arrives|are expected|show up|shows up|are showing up|is showing up|roll in|rolls in|land|will get here|will be arriving) [here|over|round|in] (at|for|from|around|by) {clock}',
        '(@guests|they|everyone|everybody|people|company) (get here|gets here|arrive|arrives|are due|show up|will be here|come over) {clock} ',
        '[the|our|my] (guests|people|company|visitors|guest) (arrival|arriving|arrive time|arrival time) [is|to|at|for|be]  (at|for|to|is|by) {clock}',
        '^ [the|our|my] (guests|people|company|visitors) (at|for|from|around) {clock}',
      ],
      arrival,
    ),
  ],
};
