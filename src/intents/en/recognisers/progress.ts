/** What has happened: steps begun, ended, things in and out. */
import type { Match, Recogniser } from '../../recogniser.ts';
import { stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { doneMeaning, outOf, startedIn } from './events.ts';
import { momentOf } from './moment-of.ts';

/** "it came out of the fridge at thirty eight degrees" gives a temperature, "at one" a time. */
function startsCold(match: Match): boolean {
  const mark = /(?:at|starts?|from) (<[nt]\d+>)/.exec(match.line)?.[1];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  return (
    quantity?.kind === 'temperature' ||
    (quantity?.kind === 'number' && quantity.value > 12 && !quantity.face)
  );
}

const subject = '{who:thing}';

/** "the potatoes I have removed from the oven": what it is of comes first. */
const afterward = phrases(
  [
    '^ {who:thing} (i|we) [have] [just|already] (removed|taken out|took out|pulled|pulled out|lifted out|brought out) [from|of] [the] [oven] $',
  ],
  (match) => outOf(match),
);

/** "Let's carve", "let's eat": said by the one who does it, it begins. */
export const letUs: Recogniser = {
  name: 'let-us',
  moods: ['request'],
  phrases: [
    ...phrases(['^ [let us] (carve|start carving|get carving|slice) [it|@it|now|then|up] $'], {
      intent: 'report-started',
      step: 'carve',
    }),
    ...phrases(['^ [let us] [all] (eat|dig in|tuck in|sit down and eat) [now|then|everyone] $'], {
      intent: 'report-started',
      step: 'serve',
    }),
  ],
};

export const progress: Recogniser = {
  name: 'progress',
  moods: ['statement'],
  phrases: [
    ...afterward,
    ...phrases(
      '^ (it|@it|she|he) has been (searing|browning) [away] [for] {d:duration} [now] $',
      (match) => ({
        intent: 'report-started',
        step: 'sear',
        minutesAgo: match.minutes('d'),
      }),
    ),
    ...phrases(
      [
        '(leftovers|everything|the rest|the leftovers|the remains|it|all|what is left) (is|are|has been|have been) [all|now] (in the fridge|put away|away|wrapped and in the fridge|refrigerated|chilled|in the freezer)',
        '(put|putting|have put) [all] [the] (leftovers|rest|remains) (away|in the fridge)',
        '(cleared away|all cleared away|all put away)',
        '^ [it is|everything is] [all] (put|tidied|cleared) away [now] $',
        '^ [the|all the] (leftovers|remains|rest) [are|all] (away|put away|in the fridge|boxed up|packed up|packed away|chilling) [now] $',
      ],
      (match) =>
        /keys|beer|wine|milk|butter/.test(match.line) ||
        /^(planning|prep|preheat)$/.test(match.context.stage ?? '')
          ? undefined
          : { intent: 'report-done', step: 'put-away', ...momentOf(match) },
    ),
    ...phrases(
      '^ [it is|they are|all|everything is|the rest is|and|boxed up] [boxed up|wrapped|wrapped up|packed up] in the (fridge|freezer) [now|already] $',
      (match) =>
        /^(carve|served|put-away)$/.test(match.context.stage ?? '')
          ? { intent: 'report-done', step: 'put-away', ...momentOf(match) }
          : undefined,
    ),
    ...phrases(
      [
        '[@it|the roast] (is|has been|been|has come|came|took|taken|take|got|have|i have|i) [now|been|just|taken|got|took] [@it] (out of the fridge|on the counter|out of the refrigerator|out the fridge|on the side|on the bench|on the worktop|at room temperature|sitting out|coming to room temperature) [for|at|since|$]',
        'out of the fridge',
      ],
      (match) =>
        startsCold(match)
          ? undefined
          : { intent: 'report-done', step: 'out-of-fridge', ...momentOf(match, { lasting: true }) },
    ),
    ...phrases(
      [
        '[@it|the roast|we have it|i have it] (is|been|has been|is now|is all) [now|just|been] [a] (resting|rested|under foil|tented|covered in foil|wrapped in foil|having a rest|having its rest|at rest) [on the board|under foil|$]',
        '(resting it|letting it rest|let it rest|i am resting it|i am letting it rest|put it to rest|set it to rest|covered it [in|with] [foil] to rest|took it out to rest|left it to rest|started resting|resting the roast|resting now|tented it|covered it with foil|put foil over it|tented @it|resting @it|^ resting)',
      ],
      (match) =>
        // The batter rests too, and so does a knee.
        / (batter|dough|pastry|puddings|yorkshires?|he|knee|leg|ankle|foot|back|gran|dad|mum|everyone|kids) (is|are|has|have) (been |now )*resting /.test(
          ` ${match.line}`,
        )
          ? undefined
          : { intent: 'report-started', step: 'rest', ...momentOf(match, { lasting: true }) },
    ),
    ...phrases(
      [
        '(we are|i am|dad is|{p:word} is|he is|she is|starting to|started|began|begun|have begun|i have begun|have started|just started|i have started|started to) [now|just] (carving|carve|slicing|slice) [it|@it|up|now|$]',
        '^ carving [now|it|@it] $',
        '(carving has started|it is being carved)',
      ],
      (match) => ({ intent: 'report-started', step: 'carve', ...momentOf(match) }),
    ),
    ...phrases(
      [
        '(it is|@it is|@it has been|it has been|all|have|i have|we have|i|finished) [all] (carved|sliced|carving|finished carving|done carving) [up|@it|it] $',
      ],
      { intent: 'report-done', step: 'carve' },
    ),
    ...phrases(
      [
        '(dinner|supper|lunch|food|everything|it|the meal|tea) (is|has been) [now|all|out] (on the table|served|being served|on the plates|plated|plated up|dished up|up|going out) [now|everyone|$]',
        '(we are|i am|they are) [all|now] (eating|serving [up]|plating [up]|dishing up|tucking in|sitting down to eat)',
        '^ (eating|we are eating|everyone is eating|all eating|tucking in) [now|already] $',
        '^ [ok|now|so] (we|everyone|everybody|they) (start|starts|begin|begins|started|have started) [to] (eat|eating) [now] $',
        '^ [all|food|dinner|everything] on the table [now|everyone] $',
        '[that is] (everything|the lot|all of it|the whole lot|the food|all the food) [is] [all|out|now|up] on the table [now|$]',
        'that is (it|that|us|all) [all|now] on the table [now|$]',
        '^ [ok|right|so] (dig in|tuck in) [everyone|now] $',
        '^ (started eating|we have started eating|we started eating|serving up|serving|plating up|dishing up|served|dinner is served|we have served|everyone is eating|everybody is eating) [now|$]',
      ],
      (match) =>
        /(dinner|it|food) is up $/.test(match.line) && match.line.startsWith('it is')
          ? undefined
          : { intent: 'report-started', step: 'serve', ...momentOf(match) },
    ),
    ...phrases(
      [
        `^ ${subject} (is|are|was|were|has come|have come|came|has just come|is just|are just|is now|are now|have been|has been|have just come|just came|all|is all|are all|came out|is coming|are coming|has) [all|just|now] (out|taken out|pulled|off the (heat|fire|hob|stove|boil|ring|gas)) [now|of the oven|the oven|and on the board|on the board|and under foil|already] [{d:duration} ago|at {c:clock}] $`,
        `(took|taken|pulled|got|have taken|have pulled|have got|i took|i pulled|brought|lifted|hauled|whipped|fetched) ${subject} [out|from|off] [of] [the oven] [{d:duration} ago|at {c:clock}] [now|$] $`,
        `(taking|pulling|getting|lifting|bringing) ${subject} (out|out now|out of the oven|from the oven)`,
        `(took|taken|pulled|got|lifted|pulling) (out|it out of) [the] {who:thing} $`,
        '^ [i have|i|have|just] (pulled it|pulled the roast|taken it out|took it out|pulled|got it out|it out) ',
        '^ [@it] [just] (came|has come|has just come|come) off [the heat|the oven] [now|already|$] $',
        '^ (the [whole] lot|everything|all of it) (is|are) [all] out [now|of the oven|$] $',
        '^ [off [the] heat] [and] (onto|on to|on) the board [now|$] $',
        '^ (out it comes|out it came|out it is|out of the oven|it is out of the oven|out) $',
        `^ ${subject} (out|off the heat|off the fire|off the hob|off the boil) $`,
        `^ ${subject} (came out|went out) [at {c:clock}|{d:duration} ago] $`,
      ],
      (match) => {
        if (
          /fridge|freezer|butter out|cupboard|drawer|garden|town|tonight|tomorrow/.test(match.line)
        )
          return undefined;
        if (
          !/\b(out|pulled|pulling|off the (heat|fire|hob|stove|boil|ring|gas)|oven|(come|came) off|the board)\b/.test(
            match.line,
          )
        )
          return undefined;
        return outOf(match);
      },
    ),
    ...phrases(
      [
        `^ ${subject} (is|are|went|has gone|have gone|has been|have been|is now|are now|has just gone|have just gone|go|goes|just went|is back|are back|is going|are going|was put|were put|got put|got) [just|now|back] (in|in @oven|into @oven|in the pan|roasting|cooking|in there|on|in the roasting tin|on the hob|on the stove|boiling|steaming|baking|put in|in now|going in) [now|already|together] [for {d:duration}|{e:duration} ago|at {c:clock}|since {f:clock}|{g:duration}|about {h:duration}] $`,
        `(put|popped|stuck|shoved|bunged|slid|chucked|got|have put|have popped|have got|putting|popping|sliding|whacked|i have got|threw|just put|tossed|shoving|getting|loaded|i am putting|whisked|banged|flung|lobbed|moved) ${subject} (on the (top|middle|bottom|lower|upper) (shelf|rack)|in|in @oven|into @oven|inside @oven|on|in now|back in|in there|inside|inside there|on the hob|on the stove|inside the oven) [now|$] [{d:duration} ago|(at|since|from) {c:clock}|{f:face}] $`,
        `(in goes|in go|in went|put in|popped in) [the] {who:thing} [now|at {c:clock}] $`,
        '^ [i|we] [have|i have|we have] [just] (put|popped|stuck|slid|set|stood|laid) [now|just|already] {who:thing} (on|in|at|to|under) the (floor|bottom|top|back|base|lowest shelf|lower shelf|top shelf) [of] [@oven|oven] $',
        '^ [i|we] [have|i have|we have] [just] (put|set|stood) [now|just|already] {who:thing} (on|over) [a|the] (low|small|medium|high|gentle|slow|soft|little) (fire|flame|heat|burner|gas) [now|$] $',
        '^ {who:thing} (stands|sits|is standing|is sitting) [already|now] (in|inside) @oven [now|already|$] $',
        '^ (in it goes|in it went|it is in|in the oven|it went in|in) $',
        '^ [has|have|it has|@it has] been in [@oven|there] [for] {d:duration} [now|$] $',
        `^ ${subject} (in|in the oven|in now) [{d:duration} ago|at {c:clock}] $`,
        `^ ${subject} [is|are|went|go|gone|straight|going] back in [@oven|there] [at|on] {temperature} $`,
        `^ ${subject} (started|started cooking|started roasting|went on) [{d:duration} ago|at {c:clock}] $`,
      ],
      (match) => {
        if (
          /(in (the )?(garden|car|bed|bath|lounge|post|sink|living room|other room)|fridge|freezer|charge|hurry|love|trouble|oven on|on (telly|fire|holiday|call|again|about|my way))/.test(
            match.line,
          )
        )
          return undefined;
        if (
          /oven (is )?on/.test(match.line) ||
          /foil|probe|thermometer|lid|foil on/.test(match.words('who'))
        )
          return undefined;
        if (
          /^(it|that|this|she|he) (is|was|has been|have been|got|goes|went) (just |now |back )?on /.test(
            match.line,
          )
        )
          return undefined;
        return startedIn(match);
      },
    ),
    ...phrases(
      [
        '(everything|all|the lot|it all|the rest|everything else|others|we are all) (is|are|has been|set|done|ready|finished)? [all] [done|ready|finished|cooked|set|sorted|in|out|made] (except|bar|but|apart from|other than|save for|minus) [for] [the|my|our] {who:thing} $',
        '(everything|all|the lot) (except|bar|but|apart from|other than) [for] [the|my|our] {who:thing} (is|are) [all] (done|ready|finished|cooked|set|sorted|made) $',
      ].map((pattern) =>
        pattern.replace(
          '(is|are|has been|set|done|ready|finished)?',
          '[is|are|has been|set|done|ready|finished]',
        ),
      ),
      (match) => {
        const step = stepIn(match.words('who').replace(/ (then|now)$/, ''), match.context);
        return step ? { intent: 'report-not-done', step } : undefined;
      },
    ),
    ...phrases(['^ [the|my] (string|twine|strings) (is|are) [all] (on|tied|done|round it|round)'], {
      intent: 'report-done',
      step: 'truss',
    }),
    ...phrases(
      [
        '{who:thing} (is|are|has been|have been|all|is all|are all|got) [all|now|just|been] {verb:word} [up|now|together|$]',
        '(i have|we have|have|has|i|finished|done|just|all) [just|now|already|finished|all] {verb:word} [up|off] [the|all the|my|all] {who:thing} $',
        '(finished|done|done with|completed|finished off|through with) {step:thing} $',
        '{who:thing} {verb:word} $',
        '^ {verb:word} [and {v2:word}] [up|off] [the|all the|my|all] {who:thing} $',
        '(i am|we are|i have started|started|starting|sam is|just started|beginning|now) [now|just] {doing:word} [the|up the|up|with the|my|our] [{who:thing}] $',
      ],
      (match) =>
        // "We're doing puddings and a mash" is a menu, while there is one to be made.
        /^(we are|i am) (doing|having) /.test(match.line) &&
        (match.context.stage === 'planning' || match.context.stage === 'prep')
          ? undefined
          : doneMeaning(match),
    ),
    ...phrases(
      [
        '^ [all|that is|that is all|it is|i am|we are|ok|and|yes|now|i have|that one is|this one is|everything is|job|consider it] (done|finished|sorted|complete|completed|done with that|done with it|that step is done|step done|finished that step|finished that one|tick that off|tick it off|checked that off|ticked off|that is me done|done that|did it|did that|done it|finished it|finished that|all done|that is done|it is done|job done|done and dusted|ready|all set|tick|check|that is sorted|that is that|done and done|done now|took care of it|taken care of) [now|already] $',
      ],
      (match) => {
        if (/(looks|nearly|almost|half)/.test(match.line)) return undefined;
        if (/^i am (ready|done)/.test(match.line) && match.context.paused) return undefined;
        const step = match.context.openSteps[0];
        return { intent: 'report-done', ...(step ? { step } : {}) };
      },
    ),
  ],
};
