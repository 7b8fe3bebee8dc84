/** Questions. Whatever values they hold, they change nothing. */
import { nameIn } from '../../names.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { dishIn, meansRoast, stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

const about = (match: Match, slot = 'thing'): { about?: string } => {
  const words = match.words(slot).replace(/^(the|my|our) /, '');
  if (words === '') return {};
  if (meansRoast(words)) return { about: 'roast' };
  const id = dishIn(words, match.context) ?? stepIn(words, match.context);
  return { about: id ?? words };
};
const topic = (match: Match): { topic?: string } => {
  const words = match.words('thing').replace(/^(the|to) /, '');
  if (words === '') return {};
  return { topic: stepIn(words, match.context) ?? dishIn(words, match.context) ?? words };
};
const ingredient = (match: Match): { ingredient?: string } => {
  const words = match.words('thing').replace(/^(the|some|any|a) /, '');
  if (words === '') return {};
  return { ingredient: nameIn(match.context.lexicon.ingredients, words) ?? words };
};
const degrees = (match: Match): { temperature?: number; unit?: 'F' | 'C' } => {
  if (match.has('temperature')) return match.temperature('temperature');
  // "is it safe to eat it at 125": the one number beside the question that can be a core's.
  const mark = /<[tn]\d+>/.exec(match.line)?.[0];
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  if (quantity?.kind === 'temperature')
    return { temperature: quantity.value, ...(quantity.unit ? { unit: quantity.unit } : {}) };
  return quantity?.kind === 'number' && quantity.value >= 35 ? { temperature: quantity.value } : {};
};

/** The whole clause in words: what a question of safety is about stands anywhere in it. */
const clauseWords = (match: Match): string =>
  match.line
    .replaceAll(/<\w+> ?|[|?,.!]/g, '')
    .replaceAll(/ +/g, ' ')
    .trim();

const asks = ['question', 'story', 'negative'] as const;
const alsoSaid = ['question', 'statement', 'request'] as const;

export const questions: Recogniser = {
  name: 'questions',
  moods: ['question'],
  phrases: [
    ...phrases(
      [
        '(safe|unsafe|dangerous|food poisoning|poison|make (us|them|me|him|her|anyone) (ill|sick)|get (sick|ill)|salmonella|bacteria|e coli|go off|gone off|make you ill|ok to leave|spoil|risky|safely)',
        '(can|could|should|may|is it ok for|ok for|all right for|fine for|suitable for|good for) * (pregnant|baby|toddler|elderly|chemo|immunocompromised) ',
        '(rare|medium rare|pink|medium|it|this|that|{temperature}) [ok|fine|all right|suitable|safe|good|enough] for [my|our|the|a|someone|a very] [{thing:thing}] (pregnant|gran|grandma|kids|children|toddler|baby|mum|dad|elderly|sister|nan|grandad)',
        '(can|should|may) [my|the] [pregnant|old|elderly] (sister|gran|kids|wife|mum|nan|baby|toddler|children|daughter|grandma|pregnant women|dad|grandmother|grandad) [also] (eat|have) ',
        '(how long can|can) (i|we|it|@it|the leftovers|leftovers) [be] (leave|sit|stay|keep|stand|left|kept|leave it|leave @it) [it|@it|out|safe|the roast|on the counter|at room temperature|out of the fridge]',
      ],
      (match) =>
        /game|neighbourhood|journey|drive/.test(match.line)
          ? undefined
          : { intent: 'ask-safety', about: clauseWords(match), ...degrees(match) },
    ),
    ...phrases(
      [
        '(can|could|may|should) (i|we|you) (use|substitute|swap|replace|do it with|make it with|get away with|try|sub|go with) [some|the|a|in] {thing:thing} (instead|for|instead of|rather than|in place of|with it|in it|$)',
        '(what|is there anything|anything|what else) [can|could|should|do] [i|we|you] [use] (instead of|in place of|replace|substitute for|as a substitute for|as a replacement for|instead) [the] [{thing:thing}] $',
        '(substitute|replacement|alternative|swap|stand in) (for|to) [the] {thing:thing} $',
        '(does|would|will|do) {thing:thing} (work|do|work instead|be ok instead|do instead) $',
        'is {thing:thing} (ok|fine|good|all right) instead',
        '(without|if i have no|if there is no|do not have|no) {thing:thing} $',
        'what (if|can i do if) (i|we) (do not have|have no|have not got) [any|a] {thing:thing}',
      ],
      (match) =>
        /^(what is|how)/.test(match.line) &&
        !/(substitute|replacement|alternative|instead)/.test(match.line)
          ? undefined
          : { intent: 'ask-substitute', ...ingredient(match) },
    ),
    ...phrases(
      [
        '(shopping list|what do i (need to buy|buy|need from the shop|need to get|need from the store|have to buy)|what (should|must|do) (i|we) (buy|get|pick up) [from|at]|need to (buy|get from)|what ingredients|what to buy|from the (shop|shops|store|supermarket|butcher))',
      ],
      { intent: 'ask-shopping' },
    ),
    ...phrases(
      [
        'how many (people|guests|of us|are we|are coming|am i cooking for|will there be|are we having|for dinner|mouths)',
        'how many (are|do we have|did i say|have we)',
      ],
      (match) => (/<|potato|minutes/.test(match.line) ? undefined : { intent: 'ask-guests' }),
    ),
    ...phrases(
      [
        '(how much|how many|what quantity of|what amount of|how large a|how big a) (more|of)? {thing:thing} (do|does|should|will|is|are|goes|go|we|i|per|for|in|needed|$)',
        '(how much|how many|what quantity of|what amount of) {thing:thing} $',
      ].map((pattern) => pattern.replace('(more|of)?', '[more|of]')),
      (match) => {
        const words = match.words('thing');
        if (
          /^(did|does|was|has|time|longer|more time|minutes|more|hours|long|degrees|hotter|is|do|does|of us|later|behind)\b/.test(
            words,
          )
        )
          return undefined;
        return { intent: 'ask-amount', ...ingredient(match) };
      },
    ),
    ...phrases(
      [
        '(how long|how much longer|how much more time|how much time|how many minutes|how many more minutes|how many hours) [have|do|does|is|are|will|should|till|before|for|to|has|until|left|it is|more|now|must|need|can|would|did] [i|we|it|the|they|you|is] [{thing:thing}] [to|take|rest|need|left|go|be|have|for|in|cook|roast|before|till|$] [*] $',
        '(when|what time|at what time) (is|are|will|do|does|should|can|did|would|shall) [we|i|it|they|the|you|dinner|supper|lunch|roast] [{thing:thing}] [be|go|come|ready|done|eat|eating|in|out|served|serve|start|need|expect|going|serving] [*] $',
        '(is it|are we|are they|is dinner) (nearly|almost) (ready|done|there|time)',
        'is it time (yet|to|for) [{thing:thing}]',
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
              : /(dinner|supper|lunch|eat|table)/.test(line)
                ? 'dinner'
                : undefined;
        const subject = named ?? event;
        return { intent: 'ask-time-left', ...(subject ? { about: subject } : {}) };
      },
    ),
    ...phrases(
      [
        '(what is|what are) [my|the|our] (options|choices|alternatives)',
        '(what can|what could|what should) (i|we) do (about|now about|if|instead|to save|to fix|to catch up|to rescue)',
        '(is there|any) (another way|a way|other way|way) (round|around|to save|to fix|to catch up)',
        'how can (i|we) (save|fix|catch up|rescue|buy time|make up)',
        '(do i|do we) have (any|a) (options|choice|choices)',
        '(options|choices)',
      ],
      { intent: 'ask-options' },
    ),
    ...phrases(
      [
        '(plan|schedule|timeline|running order|rundown|timetable|order of play|game plan|whole day|run of the day|run sheet)',
        '(talk|run|walk|take) me through (it|the day|everything|dinner|this|the rest|the afternoon|the evening)',
        'what (is|happens) (the order|happening|left to do|still to do|to do)',
        '(when|what) (happens|does everything happen|is everything) [and when|when]',
      ],
      { intent: 'ask-plan' },
    ),
    ...phrases(
      [
        '(what temperature|which temperature|what number|how hot|what heat|what setting|what degrees|what gas mark|how many degrees|what internal|what core) [temperature|should|is|do|does|for|in|to|are|am] [*] $',
        '(what|where) (do|should|shall|does|would) [i|we|the oven|it|@it] [be] (pull|take|cook|set|roast|aim|read|have|want|turn|need to be|come out|reach|be|get) * (at|to|for|read|reach|be at|it at) $',
        '(what) should (it|@it|the oven|@middle|the thermometer|the probe|the core) (read|be|be at|be reading|say|reach|be on|get to)',
        '(what is|what does|what are) [a|the] (rare|medium rare|medium|well done|medium well|pull temperature|target|temperature|target temperature|core temperature|serving temperature|internal temperature|oven temperature) [in|for|of|now|mean|at|$]',
        '(is|are|would|does|has) {temperature} [degrees] [in the middle] (too|ok|enough|fine|right|good|low|high|hot|about right|done|where|the right|all right|medium|rare|normal|a bit|on track|alright|bad|what|it|rare|about)',
        '(is|was) (it|that|it at) {temperature} [ok|enough|too|fine|now|$]',
        '(what|how) about {temperature} [degrees|$]',
        '(what do i pull it at|what do we pull it at|how hot should|what am i aiming for|what are we aiming for|what temperature)',
        '(should|shall|do) (i|we) (turn|set|put|pull|take|drop|have|lower|raise|get|bring) * {temperature}',
        '(does|is) {temperature} (sound|seem|look|mean) *',
      ],
      (match) => ({ intent: 'ask-temperature', ...about(match), ...degrees(match) }),
    ),
    ...phrases(
      [
        '^ [but|and|ok] (why|how come|what for|for what reason|what is the reason|what is the point of|what is the purpose of|what difference does) [is|do|does|should|am|are|did|not|would|the|i|we|it|that|can|must] [{thing:thing}] $',
        '^ [but|and] (why|how come) ',
      ],
      (match) => ({ intent: 'ask-why', ...topic(match) }),
    ),
    ...phrases(
      [
        '(how) (do|should|can|would|does|shall|could) (i|we|you|one) (know|tell) [when|if|that|whether] [{thing:thing}] $',
        '(how) (do|should|can|would|does|shall|could|am|did) (i|we|you|one|the) [best|properly|go about|supposed to] {thing:thing} $',
        '(how to|show me how to|tell me how to|explain how to|best way to|teach me to|teach me how to|show me|what is the (best|right|trick|proper) way (to|of)|remind me how to|explain|talk me through|walk me through|run me through|what is the method for|how is|how are|how does one|what do you mean by|what does|what is) [the] {thing:thing} $',
      ],
      (match) => {
        const words = match.words('thing');
        const line = match.line;
        if (
          /^what (is|does)/.test(line) &&
          !stepIn(words.replace(/ mean$/, ''), match.context) &&
          !/(french|truss|baste|tent|carry ?over|deglaze|render)/.test(words)
        )
          return undefined;
        if (
          /^how (is|are)/.test(line) &&
          (/(going|doing|looking|getting|coming|you|things|we|it)$/.test(line.trim()) ||
            !/(made|done|cut|tied|cooked)/.test(line))
        )
          return undefined;
        if (/(feel|spell|score|game|was your)/.test(words)) return undefined;
        return { intent: 'ask-how', ...topic(match) };
      },
    ),
    ...phrases(
      [
        '(what|which) (is|are|comes|happens|do|should|shall|am|step|step is|else) [i|we|my|the|supposed] [to|do|be|doing|comes|is|need to do|on] [next|now|after that|after this|first|up next|then|do|next step|up|doing|the next|next thing|need doing|should i] (next|now|after that|after this|first|then|do|doing|step|thing|to do|$) [*] $',
        '(what next|what now|now what|where next|what should i do|what do i do|what am i doing|what to do|anything to do|anything i should be doing|anything else to do|should i be doing|should i do anything|is there anything (to do|else|i should|i can))',
        '(should|do|shall|can|could|may) (i|we) (now|start|put|take|get|pull|make|begin|do|turn|cover|carve|serve|need) [*]',
        '(is|are) (it|there|the next|my next) [anything|time] (next|to do)',
      ],
      (match) => {
        if (
          /(score|weather|film|news|year|day is it|time is it|date|name|called|up with|on tv|president|capital|you|watching)/.test(
            match.line,
          )
        )
          return undefined;
        return { intent: 'ask-next' };
      },
    ),
    ...phrases(
      [
        '(how|how are|how am|how is) [we|i|it|everything|things|the roast|@it|dinner|that|the oven|are|is] [all|we|i|it|@it|dinner|everything|things|the roast] (doing|going|looking|getting on|getting along|coming along|coming on|on|cooking) [*] $',
        '(where|how far) (are|am|have) (we|i|things) [at|now|got|come|up to|in|along|$]',
        '(are|am|is) (we|i|everything|it|dinner|things|that|the roast|@it) [still|all|going|running] (on track|on time|on schedule|ok|behind|late|going to plan|in good shape|going well|all right|ahead|doing ok|fine|going to make it|going to be late|running late|going ok|good|on course)',
        '(is|are) (it|@it|dinner|the roast|everything|they|the potatoes|{thing:thing}) (done|ready|cooked|burnt|ruined|finished|overcooked|undercooked|out|in|over|raw|resting) [yet|now|already|$]',
        '(have|did) (i|we) (wreck|wrecked|ruined|ruin|overcooked|overcook|messed|mess|blown|burnt|screwed|killed|spoiled|missed|destroyed|lost) [*]',
        '(what is|what are) (the status|happening|going on|the state|the situation|where we are|the latest|up with the roast|the current)',
        '(status|how is it)',
        '(is|will) (it|dinner|everything|we|@it) (be|going to be) (ok|all right|on time|ready|fine|late|done)',
        '(does|do) (it|that|this) look (right|done|ok)',
      ],
      (match) => {
        if (
          /(how are you|you doing|your day|weather|tv|telly|outside|football|the kids|mum|dad|work)/.test(
            match.line,
          )
        )
          return undefined;
        const who = match.words('thing');
        if (
          who !== '' &&
          !meansRoast(who) &&
          !dishIn(who, match.context) &&
          stepIn(who, match.context) === undefined
        )
          return undefined;
        return { intent: 'ask-status' };
      },
    ),
  ],
};

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
