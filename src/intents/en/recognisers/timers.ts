/** Timers, set and cancelled. */
import { comingTime, minutesUntil } from '../../moment.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { timedLabel } from '../frames/time.ts';
import { dishIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const timer = (match: Match): Meaning | undefined => {
  const minutes = match.minutes('minutes');
  const label = (match.words('l3') || match.words('label') || match.words('l2')).replace(
    /^(the|a) /,
    '',
  );
  // "don't put five on the clock".
  if (/ (not|never) (put|set|start|want|need|give) /.test(` ${match.line}`)) return undefined;
  if (!Number.isFinite(minutes) || minutes <= 0 || /\b(behind|late)\b/.test(match.line))
    return undefined;
  return {
    intent: 'set-timer',
    minutes,
    ...(label && !/^(for|on|of|a)( |$)/.test(label) ? { label } : timedLabel(match, /(?!)/)),
  };
};

export const timers: Recogniser = {
  name: 'timers',
  moods: ['statement', 'request', 'intention', 'negative'],
  phrases: [
    ...phrases(
      [
        '(cancel|bin|never mind|forget about|silence|stop|kill|delete|clear|turn off|switch off|remove|scrap|forget|drop|end|lose|get rid of|do not need) [the|that|my] [{m:duration}] [{label:thing}] (timer|alarm|timers|reminder) [for [the] {l2:thing} $]',
        '^ (the|that|my) [{label:word}] (timer|alarm|clock|countdown|reminder) [for [the|my] {l2:thing}] (you can|can be|can|you may|may|must) (stop|cancel|go|off|cancelled|stopped|delete|forget) [now|$] $',
        '(cancel|stop|kill|end|silence|clear|turn off|switch off|scrap|get rid of) [the|that|my] [other|second|first|last] (timer|alarm) [,] [for] [the|my] {l2:thing} {n:number} $',
        '^ no timer $',
        '(timer|alarm) off $',
      ],
      (match) => {
        const label = (match.words('l2') || match.words('label')).replace(/^(for )?(the )?/, '');
        // "the other timer, the sweet potato one".
        if (match.has('n') && (match.number('n') !== 1 || !dishIn(label, match.context)))
          return undefined;
        const minutes = match.has('m') ? match.minutes('m') : undefined;
        return {
          intent: 'cancel-timer',
          ...(label ? { label } : timedLabel(match, /(?!)/)),
          ...(minutes === undefined ? {} : { minutes }),
        };
      },
    ),
    ...phrases(
      [
        '[set|start|give me|put on|can i have|make|i need|need|put|run|add] [a|an|another|the|me a] [{label:word}] (timer|alarm|countdown|reminder) [on] [for|of|to|at|in|,] [the {l2:thing} for] {minutes} [for [the] {l3:thing} $]',
        '(set|start|give me|i need|need|put|a|an) [a|an|me a] {minutes} [long] [{label:word}] (timer|alarm|reminder|countdown) [for [the] {l3:thing} $]',
        '(remind me|give me a @alarm|give us a @alarm|shout|tell me|let me know|call me|nudge me|wake me|ping me|poke me|holler|buzz me|shout at me|shout us|yell|yell at me|give us a yell|give me a yell|give us a shout|give me a shout) [again] (in|after) [another] {minutes} [(to|about|for|when) [the] {l3:thing} $]',
        '(in|after) {minutes:duration} (remind me|tell me|give me a @alarm|shout|let me know|nudge me|call me) [(to|about|for|that) [the] {l3:thing} $]',
        '(remind me|tell me|nudge me) (to|about|of) [the] {l3:thing} in {minutes:duration}',
        '(time|count|count down) [me] {minutes:duration}',
        '(set|start|make|give me|put on|do) (another|a new|a fresh|a second|one more) [one] (for|of|at) {minutes:duration} [for [the] {l3:thing} $]',
        '{minutes} timer [for [the] {l3:thing} $]',
        '(set|give me|put|i want|start) {minutes:duration} (for|on) [the|my] {l3:thing} $',
        'time (the|my|these) {l3:thing} [for] {minutes:duration} $',
        '^ (set|start|put|put on) {minutes:duration} [on] $',
        '{minutes} on the clock [for [the] {l3:thing} $]',
        '^ {minutes:duration} (for|on) (the|those|these|my) {l3:thing} $',
        '^ [the|a|my] (timer|alarm) (is|has been|is now) (on|set|going|running|started) for {minutes} [now|$] $',
      ],
      timer,
    ),
    ...phrases(
      '^ (give|gie|allow) [the|those|these|my] {l3:thing} [another|about] {minutes:duration} [more|now|please|$] $',
      (match) => (dishIn(match.words('l3'), match.context) ? timer(match) : undefined),
    ),
    // "tell me at six to get the puddings in": till then, and nothing is in yet.
    ...phrases(
      [
        '(remind me|tell me|nudge me|wake me|ping me|let me know|shout|give me a @alarm|call me) (at|by|around) {c:clock} (to|about|for|that) {l:rest}',
        '(remind me|tell me|nudge me) (to|about) {l:rest} (at|by) {c:clock} $',
      ],
      (match) => {
        const face = match.face('c');
        if (
          face === undefined ||
          (match.quantity('c')?.kind === 'number' && match.number('c') > 12)
        )
          return undefined;
        const minutes = minutesUntil(comingTime(face, match.context), match.context);
        return { intent: 'set-timer', minutes, ...timedLabel(match, /(?!)/) };
      },
    ),
    ...phrases(
      '(do not let me forget|do not forget|do not let me leave) [about] [the|my|to] {l3:thing} in {minutes:duration}',
      timer,
    ),
    // "the rolls have five minutes left".
    ...phrases(
      '^ [the|my] {l3:thing} (have|has|have got|has got|got) [about|another] {minutes:duration} (left|to go|remaining|more) [on (them|it)] [i think|$] ',
      (match) => (dishIn(match.words('l3'), match.context) ? timer(match) : undefined),
    ),
    // "the beans are still hard, give me five more minutes for them".
    ...phrases(
      '^ (give|gimme|allow) (me|us|them|it) [another] {minutes:duration} [more] (for|on) (it|them|that|those|these) $',
      (match) => {
        const last = match.before.at(-1);
        const step =
          last && 'step' in last && typeof last.step === 'string' ? last.step : undefined;
        const made = timer(match);
        return made && step?.includes('-') && !('label' in made)
          ? { ...made, label: step.split('.')[0]!.split('-').at(-1)! }
          : made;
      },
    ),
    // "... and the plates five".
    ...phrases('^ [for] [the|my] {l3:thing} {minutes} $', (match) =>
      match.before.at(-1)?.intent === 'set-timer' &&
      (/^plates?$/.test(match.words('l3')) || dishIn(match.words('l3'), match.context))
        ? timer(match)
        : undefined,
    ),
    // "... and another one for twelve", "... and twenty for the rolls": one more of what was said before.
    ...phrases(
      [
        '^ [a|another|one|the] [one|second|second one|other|other one|timer] (for|of|at) {minutes} [for [the] {l3:thing}] $',
        '^ {minutes} (for|on) (the|those|these|my) {l3:thing} $',
        '^ (in|after) [another] {minutes} (to|for) {l3:thing} $',
        '^ (set|start|make|do) (another|a new|a fresh) [one|timer] (for|of) {minutes} [for [the] {l3:thing}] $',
      ],
      (match) =>
        /^(set|cancel)-timer$/.test(match.before.at(-1)?.intent ?? '') ? timer(match) : undefined,
    ),
  ],
};
