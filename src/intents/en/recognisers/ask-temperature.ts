/** Questions that ask for a temperature or hold one. */
import type { Doneness } from '../../../kitchen/heard.ts';
import type { Recogniser } from '../../recogniser.ts';
import { dishNamed } from '../frames/dinner.ts';
import { phrases } from '../vocabulary.ts';
import { donenessOf } from './doneness.ts';
import { about, degrees } from './subjects.ts';

/** The oven and the sear have temperatures of their own. */
const of = (line: string): string | undefined =>
  / (sear|searing|browning) /.test(` ${line}`)
    ? 'sear'
    : / oven /.test(` ${line}`) && !/ (out of|from|leave|take) (the )?oven /.test(` ${line}`)
      ? 'oven'
      : undefined;

/** "What's medium rare mean": the word itself is asked about. */
export function wordMeant(line: string): { doneness?: Doneness } {
  const asked =
    (/^what (is|does|are|do) /.test(line) && !/ (pull|oven|temperature) /.test(line)) ||
    // "Which is the temperature inside for a medium?"
    (/ (inside|core|internal|mean|means|called|counts as) /.test(` ${line}`) &&
      !/ (pull|oven|take|come|comes|carry|rest) /.test(` ${line}`));
  const doneness = asked ? donenessOf(line) : undefined;
  return doneness ? { doneness } : {};
}

export const askTemperature: Recogniser = {
  name: 'ask-temperature',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(what temperature|which temperature|what number|how hot|what heat|what setting|what degrees|what gas mark|how many degrees|what internal|what core) [temperature|should|is|do|does|for|in|to|are|am] [*] $',
        '(what|where) (do|should|shall|does|would) [i|we|the oven|it|@it] [be] (pull|take|cook|set|roast|aim|read|have|want|turn|need to be|come out|reach|be|get) * (at|to|for|read|reach|be at|it at) [for [a] [nice] (pink|rare|medium rare|medium|medium well|well done)] $',
        '(what) should (it|@it|the oven|@middle|the thermometer|the probe|the core) (read|be|be at|be reading|say|reach|be on|get to)',
        '^ [so] (what|where) (is|does|do|should|must) (it|@it|@middle|the core|this) (want|need|have|supposed|meant|wanting|got) to (be|read|get to|reach|come to|say|show|be at) ',
        '(what is|what does|what are|what do) [a|the|you mean by] (rare|medium rare|medium|well done|medium well|pull temperature|target|temperature|target temperature|core temperature|serving temperature|internal temperature|oven temperature) [in|for|of|now|mean|at|$]',
        '(is|are|would|does|has) {temperature} [degrees] [in the middle] [still|already|really|considered|more like|more|closer to] (too|ok|enough|fine|right|good|low|high|hot|about right|done|where|the right|all right|medium|medium rare|medium well|well done|pink|rare|normal|a bit|on track|alright|bad|what|it|rare|about)',
        '(is|was) (it|that|it at) {temperature} [ok|enough|too|fine|now|$]',
        '(what|how) about {temperature} [degrees|$]',
        '(what do i pull it at|what do we pull it at|how hot should|what am i aiming for|what are we aiming for|what temperature)',
        '(should|shall|do) (i|we) (turn|set|put|pull|take|drop|have|lower|raise|get|bring) * {temperature}',
        '(does|is) {temperature} (sound|seem|look|mean) *',
      ],
      (match) => ({
        intent: 'ask-temperature',
        about: dishNamed(match.line, match) ?? of(match.line),
        ...about(match),
        ...degrees(match),
        ...wordMeant(match.line),
      }),
    ),
  ],
};
