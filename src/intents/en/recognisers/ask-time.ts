/** How long, and when. */
import type { Recogniser } from '../../recogniser.ts';
import { dishIn, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

export const askTime: Recogniser = {
  name: 'ask-time',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(how long|how much longer|how much more time|how much time|how many minutes|how many more minutes|how many hours) [have|do|does|is|are|will|should|till|before|for|to|has|until|left|it is|more|now|must|need|can|would|did] [i|we|it|the|they|you|is] [{thing:thing}] [to|take|rest|need|left|go|be|have|for|in|cook|roast|before|till|$] [*] $',
        '(when|what time|at what time) (is|are|will|do|does|should|can|did|would|shall) [we|i|it|they|the|you|dinner|supper|lunch|roast] [{thing:thing}] [be|go|come|ready|done|eat|eating|in|out|served|serve|start|need|expect|going|serving] [*] $',
        '(is it|are we|are they|is dinner) (nearly|almost) (ready|done|there|time)',
        'is it time (yet|to|for) [{thing:thing}]',
        '^ (do|does|will|would) [the|my|our] {thing:thing} (want|need|take|really need|have) [all of|a whole|as much as|that long ,] {d:duration} ',
        '(any idea|do you know) (when|how long|what time) [{thing:thing}] $',
        '(tell me|remind me) (when|how long|what time) [{thing:thing}] $',
        '(how are we|how am i) (for|on|doing for) time',
        'what time is (dinner|lunch|supper|it ready|everything)',
        '(how long|when) (is|for|till|do|does) {thing:thing} $',
      ],
      (match) => {
        if (/(match|game|film|movie|bus|train|shop|shops|store) /.test(match.line))
          return undefined;
        const line = match.line;
        const words = line
          .replace(
            /^(tell me |remind me |any idea |do you know )?(how long|how much longer|how much more time|how much time|how many (more )?minutes|when|what time)( (have|do|does|is|are|will|should|till|before|for|to|has|until|left|must|need|can|would|did|i|we|it|they|you|the|be|take|need|left|go|ready|done|out|in))* /,
            '',
          )
          .replace(
            / (take|need|have|left|go|in|out|ready|done|be|rest|for|to|till|cook|roast|come|start|going)+ ?$/,
            '',
          )
          .trim();
        const named =
          words === '' || /^(dinner|supper|lunch|tea|we eat|eating|serving|food|table)$/.test(words)
            ? undefined
            : (dishIn(words, match.context) ??
              (meansRoast(words) ? 'roast' : stepIn(words, match.context)));
        const event = /(pull|take it out|come out|out of the oven)/.test(line)
          ? 'pull'
          : /\brest/.test(line)
            ? 'rest'
            : /carve/.test(line)
              ? 'carve'
              : /\b(dinner|supper|lunch|eat|table)/.test(line)
                ? 'dinner'
                : / (go|goes|put (it|@it|the roast|the meat|the beef|the joint)|putting it) in /.test(
                      ` ${line} `,
                    ) && /^(planning|prep|preheat)$/.test(match.context.stage ?? '')
                  ? 'roast-in'
                  : undefined;
        const subject = named ?? event;
        return { intent: 'ask-time-left', ...(subject ? { about: subject } : {}) };
      },
    ),
  ],
};
