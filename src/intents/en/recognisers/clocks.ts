/** The dinner's other clocks: a first course, and guests at the door, each with a time of its own. */
import type { DinnerClock } from '../../../kitchen/heard.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const firstCourse =
  '(first course|1st course|starter|starters|soup|soup course|salad course|appetiser|appetisers|appetizer|appetizers|antipasti|antipasto)';
/** Beside the hour of the meal these come first; by themselves they may stand beside the roast. */
const besideTheMeal = `(${firstCourse}|salad|salads|oysters|prawns|shrimp|first|first up|first thing)`;
const main = '(roast|main|mains|main course|meat|beef|lamb|pork|joint)';

/** How people are said to come to the door. */
const comes =
  '(arrive|arrives|arriving|come|comes|coming|get here|gets here|getting here|be here|be arriving|be coming|land|lands|landing|descend|descending|(turn|turns|turning|show|shows|showing|roll|rolls|rolling|pitch|pitches|pitching|rock|rocks|rocking) up|(roll|rolls|rolling|wander|wanders|wandering|trickle|trickles|trickling|drift|drifts|drifting|pile|piles|piling|pour|pouring|stroll|strolling|filter|filtering|come|comes|coming) (in|over|round))';
/** What people are given as they come. */
const welcome =
  '(nibbles|drinks|canapes|canapés|aperitif|aperitifs|aperitivo|apero|cocktails|bubbles|welcome drinks)';
const people =
  '(@guests|they|everyone|everybody|people|folk|folks|company|visitors|(the lot|most|the rest|all) of them)';

const clockSet =
  (of: DinnerClock) =>
  (match: Match): Meaning | undefined => {
    const time = match.mealTime('clock');
    return time === undefined || / (was|were|yesterday|last|not) /.test(` ${match.line}`)
      ? undefined
      : { intent: 'set-serving-time', time, of };
  };

const hoursIn = ({ whole }: Match): number => new Set(whole.match(/<[cn]\d+>/g) ?? []).size;

/** Only beside another hour, told before it or after. */
const besideAnother =
  (build: (match: Match) => Meaning | undefined) =>
  (match: Match): Meaning | undefined =>
    hoursIn(match) > 1 && match.context.stage !== 'served' && match.face('clock') !== undefined
      ? build(match)
      : undefined;

/** While no hour of the dinner is known, and none beside it, the hour at which people come is the dinner's. */
const arrival = (match: Match): Meaning | undefined => {
  const { stage, expecting } = match.context;
  const alone =
    hoursIn(match) < 2 && !match.before.some((one) => one.intent === 'set-serving-time');
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
    // "dinner at four, first will be soup at half three".
    ...phrases(
      [
        `^ [the|our|a|some] ${besideTheMeal} [is|are|will be|goes|go|comes|come|we have|we do] [a|the|some] [soup|starter|starters|salad] [out|first] [at|for|by|on] {clock} $`,
        `^ [there is|we have|we are having|with|we do|we start with] [the|our|a|some] {what:thing} first [is|are] (at|by|for) {clock} $`,
      ],
      besideAnother(clockSet('first-course')),
    ),
    // "the soup at seven, the roast at eight": after one clock of the dinner, the next.
    ...phrases(
      [`^ [and|with] [the|our|my] ${main} [is|goes|comes|out|on] (at|for|by) {clock} $`],
      (match) => {
        const time = match.mealTime('clock');
        return time !== undefined && match.before.at(-1)?.intent === 'set-serving-time'
          ? { intent: 'set-serving-time', time }
          : undefined;
      },
    ),
    ...phrases(
      [
        `^ [and|with] [the|our|my] ${main} [we want|we would like|we want it|goes|comes|is|will be|wants to be] [it|right|out|on] [on] [the] [table] [right] (at|for|by) {clock} $`,
        `^ [and|with] [the|our|my] ${main} [we want|we would like|we want it|is|will be] [it] [on] [the] [table] {clock:face} $`,
        `^ (we want|we would like) [the|our|my] ${main} [on] [the] [table] (at|for|by) {clock} $`,
        `^ [at] {clock} for [the|our|my] ${main} [itself] $`,
      ],
      besideAnother((match) => {
        const time = match.mealTime('clock');
        return time === undefined || mayBeOven(match)
          ? undefined
          : { intent: 'set-serving-time', time };
      }),
    ),
    ...phrases(
      [
        `${people} [all] [will|will all|are going to|is going to|might|are|is] [all|start|starts|starting|begin|begins|beginning] [to] (${comes}|here|expected|due|invited) [here|over|round|in] (at|for|from|around|by) {clock}`,
        `${people} [will|are|is] (get here|gets here|arrive|arrives|due|show up|be here|come over|turn up|turning up|rolling up|roll up|roll in|rolling in|here) {clock} `,
        '[the|our|my] (guests|people|company|visitors|guest) (arrival|arriving|arrive time|arrival time) [is|to|at|for|be]  (at|for|to|is|by) {clock}',
        '^ [the|our|my] (guests|people|company|visitors) (at|for|from|around) {clock}',
      ],
      arrival,
    ),
    ...phrases(
      [
        `^ [the|some|with] ${welcome} [is|are|will be|start|starts|first] (at|from) {clock}`,
        '^ (doors|the doors|the door) (open|opens|are open|is open) (at|from) {clock}',
      ],
      besideAnother(arrival),
    ),
  ],
};

/** In the oven's own hours a number beside the meat is its heat. */
const mayBeOven = ({ whole }: Match): boolean =>
  / (oven|degrees|went in|goes in) /.test(` ${whole}`);
