/**
 * "What if we ate at eight", "suppose they come half an hour late": another hour of dinner that is asked
 * about and not set. Nothing moves; what it would make of the day is the answer.
 */
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const supposing =
  '((would|will|can|could|does|do|is|are) {subject:thing} if|what if|what happens if|what would happen if|what will happen if|what would it mean if|what about if|how about if|how would it be if|how bad is it if|would it be bad if|would it matter if|does it matter if|is it a problem if|suppose|supposing)';
const aside = '[instead|then|tonight|today|after all|rather|or so] $';
/** Whatever is asked or told beside it, it is supposed all the same. */
const tail =
  '[instead|then|tonight|today|after all|rather|or so] ((would|will|does|do|is|are|could|can|how|what) {after:clause}|,|.|and|but|so|because|$)';
const askedOf =
  '(would|will|can|could|does|do|is|are|how|what|where|when|should|am|might|has|have) {asked:rest}';
const isMoved =
  '(are|is|am|were|was|come|comes|came|run|runs|ran|turn up|turns up|turned up|arrive|arrives|arrived|get here|gets here|got here|show up|shows up|showed up|eat|ate|serve|served|sit down|sat down|start|started)';
const mayWe =
  '(is it possible|is possible|would it be possible|is there any way|is it ok|would it be ok|is it all right|would it be all right|is it fine|can (we|i)|could (we|i)|may (we|i))';
/** What is feared of a dinner that waits: only asked about, it does not wait yet. */
const unharmed = '(without|and not|and it not|and still|and the meat not|with no) [to] {harm:rest}';

const hour = (match: Match): Meaning | undefined => {
  // "what if I moved it to 225" is of the oven.
  if (match.number('time') >= 100) return undefined;
  // "If I eat at eight, what does the day look like" asks for the plan.
  if (/ (plan|day|schedule) /.test(match.line)) return undefined;
  const time = match.mealTime('time');
  return time === undefined ? undefined : { intent: 'ask-options', time };
};

/** Minutes by which the table would move: later, unless the words say sooner. */
const shift = (match: Match): Meaning | undefined => {
  const minutes = match.minutes('by');
  if (!(minutes > 0)) return undefined;
  const sooner = / (early|earlier|sooner|forward|ahead) /.test(` ${match.line}`);
  return { intent: 'ask-options', minutes: sooner ? -minutes : minutes };
};

export const supposed: Recogniser = {
  name: 'supposed',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        `^ [and|so|but|ok|right] [,] ${supposing} (we|i|they|everyone|everybody|you|@guests) [all|only|just|do not|did not] (${isMoved}|have|had|have to eat|had to eat|do|did|make|made|move|moved|push|pushed|put|sat|aim|aimed|wait|waited|hold|held|go|went|want to eat|wanted to eat) [it|dinner|@dinner|everything] [off|back|on] [at|for|to|till|until] {time:clock} ${tail}`,
        `^ [and|so|but|ok|right] [,] ${supposing} [the] @dinner (is|was|were|goes|went|has to be|had to be|moves|moved|gets moved|got moved|is moved) [at|to|on at|back to|on to|until|not until] {time:clock} ${tail}`,
        // "If dinner was at eight, would it be dry?"
        `^ [and|so|but|ok|right] [,] if [the] @dinner (is|was|were|goes|went|moves|moved) [at|to|back to|on to|till|not until] [at] {time:clock} [instead] [,] ${askedOf}`,
        `^ [and|so|but|ok|right] [,] if (we|i|they|everyone|everybody|@guests) [all|only|just] (${isMoved}|hold|held|wait|waited) [it|@dinner|everything] [off|back|on] (at|for|to|till|until) {time:clock} [instead] [,] ${askedOf}`,
      ],
      hour,
    ),
    ...phrases(
      [
        `^ [and|so|but|ok|right] [,] ${supposing} (@guests|[my|our|your] @person|they|we|i|he|she|someone|{w:word}) (are|is|am|were|was|come|comes|came|run|runs|ran|turn up|turns up|turned up|arrive|arrives|arrived|get here|gets here|got here|show up|shows up) [like|all] {by:duration} (late|later|behind|early|earlier|sooner|ahead) ${aside}`,
        `^ [and|so|but|ok|right] [,] ${supposing} (we|i) (eat|ate|have @dinner|serve|served|sit down|sat down) {by:duration} (late|later|early|earlier|sooner) ${aside}`,
        `^ [and|so|but|ok|right] [,] ${supposing} (we|i) (push|pushed|move|moved|delay|delayed|put|hold|held|shift|shifted|bring|brought|bump|bumped) (@dinner|it|everything|things) [back|off|on|forward|later|out] [by|for] {by:duration} [later|earlier|sooner] ${aside}`,
        `^ [and|so|but|ok|right] [,] ${supposing} [the] @dinner (is|was|were|goes|went|moves|moved|slips|slipped|gets pushed|got pushed|is pushed) [back|off|on|forward] [by] {by:duration} (late|later|early|earlier|sooner|$)`,
        // "If they were an hour late, would the lamb be spoilt?"
        `^ [and|so|but|ok|right] [,] if (@guests|[my|our|your] @person|they|we|i|he|she|someone|everyone|@dinner|{w:word}) ${isMoved} [like|all|about] {by:duration} (late|later|behind|early|earlier|sooner|ahead|after) [,] ${askedOf}`,
      ],
      shift,
    ),
    // "Can we eat half an hour later without ruining it?"
    ...phrases(
      [
        `^ [and|so|but|ok|right|please] [,] ${mayWe} [to|that we|if we] [still] (eat|serve|have @dinner|sit down|hold [it|@it|@dinner]|wait|delay [it|@it|@dinner]|keep [it|@it|@dinner]|push [it|@dinner] [back]|move [it|@dinner] [back]|put [it|@dinner] (back|off)|start) [by|for] [another|like] {by:duration} [later|after|more|longer|earlier|sooner|back] ${unharmed}`,
      ],
      (match) =>
        / (ruin\w*|spoil\w*|wreck\w*|dry\w*|hurt\w*|harm\w*|overcook\w*|destroy\w*|kill\w*|damag\w*|be (ok|fine|all right|good)|problem|trouble|suffer\w*|burn\w*) /.test(
          ` ${match.line}`,
        )
          ? shift(match)
          : undefined,
    ),
  ],
};
