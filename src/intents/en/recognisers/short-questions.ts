/** Questions of few words, and what is said but asked. */
import type { Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const asks = ['question', 'story', 'negative'] as const;
const alsoSaid = ['question', 'statement', 'request', 'intention'] as const;

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
      '^ (next|next step|next one|next please|what next|and next|what is next|now what|what now|go to the next [one|step]|tell me what is next|tell me what to do [next]|next up|what follows|what comes now|what happens now|what happens next|what else can do first|what else can i do first|what (i|we) (do|make|cook|start|must do|should do) (now|next|first|then)) $',
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
      '^ [the|my|our] [full|whole|entire] (plan|schedule|timeline|running order|timetable|rundown) $',
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
    [
      '^ [what is the] (eta|e t a) [on|for|of * $|$]',
      '^ [how many] minutes (till|left|to go|until) ',
      '^ (time left|how long|how long now|how much longer|time check) $',
    ],
    { intent: 'ask-time-left' },
  ],
  [
    [
      '^ (why|how come) $',
      '^ [so|and|but] what (happens|would happen|will happen|changes) (if|when) {y:rest} $',
    ],
    { intent: 'ask-why' },
  ],
  [
    [
      '^ (and then|what then|then what|and after that|what after that|next what|what next i do|now what to do|what to do now|now what do i do) $',
    ],
    { intent: 'ask-next' },
  ],
  [
    [
      '^ [so|and|show me|read me|tell me|give me] [the|my|our] (whole|full|entire|complete) (plan|schedule|timeline|list|day|thing|running order) [again|then|please|from here|$] $',
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
      '^ [what is|any|the] [the] (eta|e t a) [on|for|of] [the] [dinner|supper|lunch|roast|meat|it|food] [please] $',
      '^ [the] time (remaining|left|to go) [please] $',
      '^ [how many] minutes (till|left|to go|before|to) [*] $',
      '^ how (long|many minutes|much time) (more|yet|still|left|to go|is left|remains|longer) [*] $',
      '^ (are|is) (we|it|dinner) nearly there $',
      '^ (long|much longer|long left|long to go|long now) $',
    ],
    { intent: 'ask-time-left' },
  ],
  [
    [
      '^ is (that|it|this) [going to be|be] (a problem|a disaster|bad|normal|serious|the end of the world|a big deal|right|as it should be) [then|for it|$] $',
      '^ (does|will|would) (that|it) matter [much|at all|$] $',
      '^ (that|it|this) is (all right|ok|fine|normal) (is not it|is it not|right|yes|is it) $',
      '^ (is|are|should) (it|@it|they|the {what:thing}) [supposed to|meant to] [be|look] (this|that|so) (dark|pale|brown|black|soft|hard|pink|grey|wet|dry|slow|smoky|noisy|small|big|quiet) [already|yet|by now] [{y:rest}] $',
      '^ how is (the|our|my) (roast|joint|meat|beef|lamb|pork|bird|dinner) [doing|going|looking|coming along|$] $',
      '^ [is] (everything|all|things) [all] (good|ok|fine|on time|on track|on schedule|in order|under control|going well|going ok|going to plan|as planned|well) [so far|still] $',
      '^ (are|is) (we|i|everything|it|dinner|things) [still|all|running|going] (on|to|up to|ahead of|behind) [the] (schedule|plan|track|time|target) $',
      '^ (we|are we) [still] (good|ok|fine|all right|all set|good to go) [still|so far|for time|on time] [for {c:clock}|for (dinner|supper|lunch|tea|time)] [you (think|reckon)|do you (think|reckon)] $',
      '^ how far (along|on|are we) [are we|am i|is it|along] $',
      '^ [everything|it|all] is going (as per|according to|to) [the] plan $',
      '^ where do we stand $',
      '^ how (do|are) (we|things) (stand|look|looking) $',
    ],
    { intent: 'ask-status' },
  ],
  [
    [
      '^ (what is|what) coming [up] [next] $',
      '^ [is there] anything i [should|could|can|need to|must|ought to] (be doing|do) [right|next|meanwhile|in the meantime] $',
      '^ am i (supposed|meant) to [be] (doing|do) (something|anything) $',
      '^ (where do i go|where do we go|what) from here $',
      '^ [so|and|right] [what] (am i at|am i on|do i be at|are we at|is my job|is my task|is the next job|is the move|is next to do|job is next|is up) [next|now|then|$] $',
      '^ (give me|tell me|what is) [the|my] next (job|task|step|thing|move|bit|one|instruction) $',
      '^ (what|which) (job|task|step|thing|bit) [is|comes|now|do i do] [next|now|first] $',
      '^ (i am (done|finished|free|ready|idle)|all done) what (next|now|else) $',
      '^ (what else|anything else) [is there] [to do|$] $',
      '^ (got|have) anything (for me|for me to do) $',
      '^ what do you (need|want) [me] (from me|to do|doing|done) [next|$] $',
      '^ (next job|next task|next thing|next move|next bit) $',
      '^ and (then|now|next|after) $',
      '^ where (was|am) i [to|up to|at|again|got to] $',
    ],
    { intent: 'ask-next' },
  ],
  [
    [
      '^ (list|read|show|give|tell|read out) [me] [out] [all] [the] [remaining] (steps|jobs|tasks) [left|please|remaining] $',
      '^ what (have|do) (i|we) [still] [have|got] [still] [left] to do [still|yet|tonight|before dinner] $',
      '^ (what is|what) [all] (left|remaining|still left|still to come|outstanding|pending|to come) [to do] $',
      '^ how does (the|my|our) (afternoon|day|evening|rest of the day|rest of it|plan|schedule) (look|go|run) $',
      '^ what does (the|my|our) (afternoon|day|evening|rest of the day|rest of it|plan|schedule) look like $',
      '^ what (happens|is happening|do i do|goes in|goes) (and when|when) $',
      '(run|talk|walk|take) me through the [whole|entire|rest of the|full] (afternoon|day|evening|plan|thing|meal|dinner|morning|schedule) ',
      '^ [what is] the (order|sequence) (of things|of events|of it|of jobs|again) $',
    ],
    { intent: 'ask-plan' },
  ],
  [
    [
      '^ what (if|happens if|do i do if|do we do if|should i do if|should we do if|can i do if|would i do if|am i to do if) (it|@it|dinner|the roast|they|the guests|everything|the power|the electric|the electricity|i|we) (is|are|gets|get|goes|finishes|comes|come|cuts|has|hits|turn|turns|run|runs|miss|want|arrive|arrives|are running) [{y:rest}] $',
      '^ what (do|should|would|can|could) (i|we) do (if|when|about) {y:rest} $',
      '^ what (would|do|can|could) you (suggest|do|recommend|advise|propose) [me|us|to me] [about it|about that|now|instead|here|then] $',
      '^ (can|could) (it|this|that|dinner|the roast|the meat|the joint|anything) [still] be (saved|rescued|fixed|salvaged|done|sorted) [about it|$] $',
      '^ (can|could) (we|i) [still] (catch up|speed [it] up|speed things up|make up [the] time|make it up|buy [some] time|slow it down|hold it|stretch it|hurry it up) [at all|somehow|$] $',
      '^ how (can|do|could|would|might) (i|we) (speed|hurry|slow|catch|make up|rescue|save|salvage|fix|hold|stall|buy|recover) [*] $',
      '^ (is there|have we) [any|a] way (to|of|out|around|round) [*] $',
      '^ what (are|is) (my|our|the) (choice|alternatives|other options|possibilities) $',
      '^ any (suggestions|ideas|advice|way out|way round it|options left) $',
      '^ [got] [any] (ideas|suggestions|thoughts) [then|please|$] $',
      '^ what if (they|the guests|everyone|we|i|dinner|{w:word}) (are|is|am|run|come|turn up|get here) [*] late [*] $',
    ],
    { intent: 'ask-options' },
  ],
  [
    [
      '^ what (do|must|should|shall|will|would) (i|we) [have to|need to|still] (get|buy|pick up|fetch|order|bring) [in|from the shop|from the shops|from the store|at the shop|at the store|at the supermarket|home|for this|$] $',
      '^ (what am i|what are we) (missing|short of|lacking|out of) [from the shop|for this|for dinner|$] $',
      '^ (read|give|show|tell|send|list) [me] [out] [the|my|our] (groceries|grocery list|messages|messages list|shopping|list of ingredients|ingredients|buy list|shop list) $',
      '^ what [all|else] (to buy|do i need for this|is needed|needs buying|should be bought|is to be bought) $',
      '^ (grocery list|the messages|ingredients list|list of ingredients) $',
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
      'what (number|numbers|headcount|head count|count) (did i|have i|do you|am i|have you) [*] (guests|people|heads|dinner|for) ',
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
