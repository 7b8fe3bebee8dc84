/** What has not happened, and what is left out. */
import type { Recogniser } from '../../recogniser.ts';
import {
  dishIn,
  dishStep,
  makingStep,
  meansRoast,
  partNamed,
  roastStep,
  stepIn,
} from '../steps.ts';
import { phrases } from '../vocabulary.ts';
import { inStep, startedIn } from './events.ts';

/** What only moves a thing names no step of it: where it goes does. */
const placing = /^(put|gone|got|went|taken|in|out|on|started|start|had|been)$/;

export const notDone: Recogniser = {
  name: 'not-done',
  moods: ['negative'],
  phrases: [
    // "the roast didn't go in until 4:40": it did, then.
    ...phrases(
      ['{who:thing} (did not|has not|have not|not) (go|went|gone|get) in (till|before) {c:clock}'],
      (match) => {
        const time = match.pastTime('c');
        const started = startedIn(match);
        return time ? started?.map((one) => ({ ...one, time })) : undefined;
      },
    ),
    ...phrases(
      [
        '(did not|have not|has not|do not|not|never) [yet|even|got round to|managed to] (turn|turned|lower|lowered|drop|dropped|knock|knocked) [it|@oven|the heat|the oven] (down|back|lower) ',
        '@oven is not down',
      ],
      { intent: 'report-not-done', step: 'oven-down' },
    ),
    // "rolls are done, spinach isn't": what was told of the one is denied of the other.
    ...phrases('^ [the|my] {who:thing} (is|are|has|have) not [yet] $', (match) => {
      const last = match.before.at(-1);
      const dish = dishIn(match.words('who'), match.context);
      return dish && last && /^report-(done|started|out)$/.test(last.intent)
        ? { intent: 'report-not-done', step: makingStep(dish, match.context) }
        : undefined;
    }),
    // "frenched it and trussed it but not salted it".
    ...phrases('^ not {verb:word} (it|them|that) [yet] $', (match) => {
      const step = roastStep(match.words('verb'));
      const told = match.before.some((one) => one.intent === 'report-done');
      return step && told ? { intent: 'report-not-done', step } : undefined;
    }),
    ...phrases(
      [
        '(i|we) (have|did|had) not [yet|even] (put|got|stuck|slid|popped|taken|gotten) {who:thing} (in|out|on) [yet|$] ',
        '(i|we) have yet to {verb:word} [the|up|my|our] {who:thing} [in|out|on|$] $',
        '{who:thing} (is|are|has|have|was|did) not [quite|yet|been|all|fully|even|nearly|really|anywhere near|gone|come|quite yet|finished] (done|ready|in|out|made|finished|cooked|started|resting|carved|on|{verb:word}) [yet|in the oven|of the oven|cooking|$]',
        '(i|we) (have|did|had) not [yet|even|finished|started|got round to|put|quite|actually|had time to] {verb:word} [the|up] [{who:thing}] [in|out|on] [yet|$]',
        '(do not|not) (put|take|turn|start|pull|get) {who:thing} (in|out|on|off) [yet|$]',
        '^ [no ,|no] not (yet|done|quite|done yet|finished|ready|quite yet|just yet|quite done|ready yet) $',
        '(have not|has not|did not) (started|done|finished|put|made|got to) {who:thing} [in|out|on] [yet|$]',
      ],
      (match) => {
        const who = match.words('who');
        const line = match.line;
        if (
          /^(i|we|they|guests|he|she|you|dad|mum)$/.test(who) &&
          /(in|out|here|coming) $/.test(line)
        )
          return undefined;
        const inOut = / out /.test(` ${line}`) ? 'out' : / in /.test(` ${line}`) ? 'in' : undefined;
        const dish = dishIn(who, match.context);
        const verb = match.words('verb');
        if (
          /^(doing|having|making|going|bothering|serving|including|funny|fair|right|clear|true|worth|easy|possible|enough|joking|kidding|sure|bad|even|here|coming|home|back|arrived|late|hungry)$/.test(
            verb,
          )
        )
          return undefined;
        const step = dish
          ? (partNamed(dish, who, match.context) ??
            (placing.test(verb) ? undefined : dishStep(dish, verb, match.context)) ??
            (inOut === 'in'
              ? inStep(dish, match)
              : inOut === 'out'
                ? `${dish}.out`
                : makingStep(dish, match.context)))
          : meansRoast(who)
            ? (roastStep(verb) ??
              (inOut === 'in' ? 'roast-in' : inOut === 'out' ? 'pull' : undefined))
            : roastStep(verb);
        if (
          !step &&
          who !== '' &&
          !meansRoast(who) &&
          !/^(they|them|those|that|everything|i|we|dinner|food|these)$/.test(who) &&
          stepIn(who, match.context) === undefined
        )
          return undefined;
        return { intent: 'report-not-done', ...(step ? { step } : {}) };
      },
    ),
  ],
};

/** Who did not forget, or asks not to, leaves nothing out. */
const kept = / (not|me|never|lest i) forget /;

export const skip: Recogniser = {
  name: 'skip',
  // "Can I skip the tying?" asks leave to.
  moods: ['statement', 'request', 'intention', 'negative', 'question'],
  phrases: [
    // "let's not french it", "I won't bother tying it".
    ...phrases(
      [
        '(not|no need to|rather not|not bother to|not bother|not going to|not want to|without) {verb:word} [the] (it|bones|roast|joint|meat|beef|lamb|pork|rib|bone|thing) [this time|today|tonight|at all|$] $',
        '(skip|skipping|forget|leave|drop|omit|leave out|never mind|pass on|give) [the] {verb:word} [the|of the] [it|bones|roast|joint|meat|beef|lamb|pork|rib|bone|bit|step|a miss] [this time|today|tonight|at all|then|$] $',
        '^ no {verb:word} [for me|this time|today|tonight|please|$] $',
      ],
      (match) => {
        if (kept.test(match.line)) return undefined;
        const verb = match.words('verb');
        if (
          / (have|has|had|did|was|were|is|are|do|does) not /.test(` ${match.line}`) &&
          !/ (not (going|want|bother)|do not bother)/.test(match.line)
        )
          return undefined;
        if (
          / yet /.test(match.line) ||
          !/^(french|truss|tie|season|salt|butter|bast|sear|brown|trim|tent|rest)(e|ing|ning|ting|ming)?$|^tying$|^basting$/.test(
            verb,
          )
        )
          return undefined;
        const step = roastStep(verb);
        return step &&
          !(
            /^(butter|salt|french|rest|season)$/.test(verb) &&
            /^(no|leave|give|drop|forget|pass) /.test(match.line)
          ) &&
          !(step === 'sear' && match.line.startsWith('no '))
          ? { intent: 'skip-step', step }
          : undefined;
      },
    ),
    ...phrases(
      [
        '(skip|skipping|miss out|leave out|forget|not bothering with|will not bother with|will not bother|not going to bother with|not bother with|never mind|do not bother with|no need for|pass on|do without|omit|not doing|no time for|i am not going to|i will not|skip past|i skipped|skipped|not going to|bypass|not bothering to|do not bother to) {thing} $',
      ],
      (match) => {
        if (kept.test(match.line)) return undefined;
        const words = match.words('thing');
        if (
          /^(it|that|this|that one|this step|that step|this one|the step|ahead|to the next [\w ]*|that bit|this bit)$/.test(
            words,
          )
        ) {
          if (!/skip|miss out|leave out|omit|bypass/.test(match.line)) return undefined;
          const step = match.context.openSteps[0];
          return { intent: 'skip-step', ...(step ? { step } : {}) };
        }
        // "skip the frenching" leaves a step out, "skip the gravy" a dish.
        const dish = / step$/.test(words) ? undefined : dishIn(words, match.context);
        if (dish && words.split(' ').length <= 4 && !/ing\b/.test(words))
          return { intent: 'drop-dish', dish };
        const step = stepIn(words.replace(/ step$/, ''), match.context);
        return step ? { intent: 'skip-step', step } : undefined;
      },
    ),
    ...phrases(['^ skip $'], (match) => ({
      intent: 'skip-step',
      ...(match.context.openSteps[0] ? { step: match.context.openSteps[0] } : {}),
    })),
  ],
};
