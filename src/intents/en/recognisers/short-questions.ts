/** Questions of few words, and what is said but asked. */
import type { Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const asks = ['question', 'story', 'negative'] as const;
const alsoSaid = ['question', 'statement', 'request'] as const;

const plain: readonly (readonly [readonly string[], Meaning])[] = [
  [['^ what (is|was) [the|our] (plan|schedule|running order|timetable) $'], { intent: 'ask-plan' }],
  [
    [
      '^ what (can|could|else can|else could) (i|we) do $',
      '^ [are there] any [other] (options|choices) $',
    ],
    { intent: 'ask-options' },
  ],
  [['what is on (the|my|our) [shopping] list $'], { intent: 'ask-shopping' }],
  [
    [
      '^ (next|next step|next one|next please|what next|and next|what is next|now what|what now|go to the next [one|step]|tell me what is next|tell me what to do [next]|next up) $',
    ],
    { intent: 'ask-next' },
  ],
  [
    [
      '^ [a|quick|current|the] (status|status update|status report|progress|progress report|where are we|how are we doing|state of play) $',
      '(give me|can i have|i need|i want|i would like) (a|an|the) (status|update|progress)',
    ],
    { intent: 'ask-status' },
  ],
  [
    [
      '^ [the|my|full|whole] (plan|schedule|timeline|running order|timetable|rundown) $',
      '(give me|show me|read me|tell me|can i have|can i see|go over|let us hear|run through|go through|talk through|remind me of|repeat|show) [the|my|full|a] [whole|full|rest of the] (plan|schedule|timeline|rundown|running order|timetable|day)',
      '(run|talk|walk|take) me through (it|the day|everything|dinner|this|the rest|the plan|the schedule|the afternoon|the evening)',
    ],
    { intent: 'ask-plan' },
  ],
  [
    [
      '^ [my|the|what] (options|choices) $',
      '(give me|tell me|show me) [the|my|some] (options|choices)',
    ],
    { intent: 'ask-options' },
  ],
  [
    [
      '^ [the|my] shopping [list] $',
      '(give me|show me|read me|make me|i need) (the|a|my) shopping list',
    ],
    { intent: 'ask-shopping' },
  ],
  [
    ['^ (time left|how long|how long now|how much longer|time check) $'],
    { intent: 'ask-time-left' },
  ],
  [['^ (why|how come) $'], { intent: 'ask-why' }],
  [
    [
      '^ (and then|what then|then what|and after that|what after that|next what|what next i do|now what to do|what to do now|now what do i do) $',
    ],
    { intent: 'ask-next' },
  ],
  [
    [
      '^ [the|an|quick] (overview|rundown|run down|agenda|running order|order of the day|order of play) $',
      '(read out|read me|tell me|list|give me) the (schedule|plan|timeline|order of things|order of play|steps|running order)',
    ],
    { intent: 'ask-plan' },
  ],
  [
    [
      '^ (any|other) [other] (alternatives|options|choices|ideas|suggestions) $',
      '^ is there [any] (another|other|a different|a better) way $',
      '(can|could) (we|i|you) (fix|save|rescue) (this|it|dinner) [somehow|still|$]',
    ],
    { intent: 'ask-options' },
  ],
  [
    [
      '(list|tell me) what i need to buy',
      '(give me|what) [are] the groceries',
      'what (groceries|ingredients|shopping) do (i|we) need',
      'what should be on (my|the|our) [shopping] list [*] $',
      'do (i|we) (have to|need to) (get|buy|pick up) anything [*] $',
      '^ groceries $',
    ],
    { intent: 'ask-shopping' },
  ],
  [
    [
      'who (is|are) [all] (coming|eating|invited)',
      'who (can not|does not|do not) eat {t:thing}',
      'who has [the|an|any] (allergies|allergy)',
      'what did i (tell you|say) about the (guests|guest|people)',
      'who gets what',
      'who gets the (ends|end|well done|rare) [*]',
      'how do i carve it for (them|everyone|everybody)',
      'how many (mouths|people|guests) [to feed|are coming|$]',
    ],
    { intent: 'ask-guests' },
  ],
];

export const shortQuestions: Recogniser = {
  name: 'short-questions',
  moods: alsoSaid,
  phrases: plain.flatMap(([patterns, meaning]) => phrases(patterns, meaning)),
};

/** "I wonder if I've wrecked it", "looks done to me": said, but asked. */
export const musing: Recogniser = {
  name: 'musing',
  moods: ['statement', 'intention', ...asks.filter((mood) => mood !== 'question')],
  phrases: [
    ...phrases(
      [
        '(think|worried|afraid|wonder if|fear) [that] (i|we) [have|might have|may have] (wrecked|ruined|overcooked|messed up|spoiled|killed) (it|@it|dinner|everything)',
        '(it|@it|^) (looks|look|seems|smells|feels) (done|ready|cooked|brown|good to go) [to me|now|already|$]',
      ],
      { intent: 'ask-status' },
    ),
  ],
};
