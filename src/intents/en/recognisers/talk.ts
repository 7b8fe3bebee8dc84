/** The talk itself: yes and no, choices, pauses, thanks, and fragments that only a question explains. */
import { mealTime } from '../../moment.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';

const every = ['statement', 'request', 'question', 'negative', 'intention', 'story'] as const;

const place: Record<string, number> = {
  ...{ first: 1, second: 2, third: 3, fourth: 4, former: 1, latter: 2 },
  ...{ '1st': 1, '2nd': 2, '3rd': 3, '4th': 4, a: 1, b: 2, c: 3 },
};
const heading =
  '(the|i will take the|go with the|let us go with the|take the|do the|i like the|i would go for the|let us do the|i will go with the|i prefer the|choose the|pick the|give me the)';

/** A core is above freezing and below boiling. */
const canBeCore = (value: number, unit: 'F' | 'C'): boolean =>
  unit === 'F' ? value >= 33 && value <= 212 : value >= 1 && value <= 100;

/** What a bare quantity means is what was asked for. */
function answered(match: Match): Meaning | undefined {
  const quantity = match.quantity('x');
  const { context } = match;
  if (!quantity) return undefined;
  const value = 'value' in quantity ? quantity.value : Number.NaN;
  if (quantity.kind === 'temperature' && context.expecting !== 'doneness') return undefined;
  switch (context.expecting) {
    case 'reading':
      return quantity.kind === 'number' && canBeCore(value, context.units.temperature)
        ? { intent: 'report-reading', ...match.temperature('x') }
        : undefined;
    case 'serving-time': {
      const face = match.face('x');
      const date = match.dateNearby();
      return face
        ? { intent: 'set-serving-time', time: mealTime(face, context), ...(date ? { date } : {}) }
        : undefined;
    }
    case 'guests':
      return quantity.kind === 'number' ? { intent: 'set-guests', count: value } : undefined;
    case 'doneness':
      return value >= 40 ? { intent: 'set-doneness', ...match.temperature('x') } : undefined;
    case 'choice':
      return quantity.kind === 'number' ? { intent: 'choose', option: value } : undefined;
    case 'roast':
      return quantity.kind === 'number' && value > 0
        ? { intent: 'describe-roast', weight: value, weightUnit: context.units.weight }
        : undefined;
    default:
      return undefined;
  }
}

export const fragments: Recogniser = {
  name: 'fragments',
  moods: ['statement', 'question'],
  phrases: [
    ...phrases(
      [
        '^ [at|it is|about|for|um|a|say|maybe|there are|we are|around|by|the] {x:any} [degrees] [now|in there|in|in the middle|in the roast|in the meat|please|works|then|it is|is what it says|i think|i reckon|$] $',
        '^ {d:date} [at] {x:clock} $',
      ],
      answered,
    ),
    ...phrases(['^ [the] (middle|core|centre|roast|meat|oven) [,|is] {x:number} $'], (match) =>
      match.context.expecting === 'reading' && !/oven/.test(match.line)
        ? answered(match)
        : undefined,
    ),
    ...phrases(['^ (no idea|not sure|do not know|dunno) $'], { intent: 'unclear' }),
  ],
};

export const early: Recogniser = {
  name: 'early',
  moods: every,
  phrases: [
    ...phrases(
      [
        '(start over|start all over|start fresh|begin from zero|start from zero|start from the zero|begin over|throw this plan away|throw the plan away|scrap the plan|start again|start from scratch|begin again|new dinner|start afresh|reset everything|wipe everything|clear everything|start from the beginning|start a new dinner|scrap everything|from the top|^ reset $|back to square one|scrap the whole thing)',
      ],
      { intent: 'start-over' },
    ),
    ...phrases(
      [
        '(say that again|say it again|repeat that|repeat|come again|pardon|pardon me|what did you say|what was that|did not (catch|hear|get) that|did not (catch|hear|get) (you|what you said|it)|one more time|say again|can you repeat|read that again|could not hear you|missed that|what was that again|i missed that|read it back|tell me again|run that by me again|once more)',
        '^ (what|sorry|excuse me|huh|eh|you what|say what|what is that|what you said|sorry what|what did you say there) $',
      ],
      (match) =>
        /^(sorry|excuse me) $/.test(match.line) && match.context.expecting
          ? { intent: 'repeat' }
          : { intent: 'repeat' },
    ),
    ...phrases(
      [
        '^ [do] (be|stay|keep|go) [quiet|silent] (quiet|silent) [for a bit|for a while|for a little while|now|$]',
        '(shut up|shut the up|shut it|do hush|^ hush|hush up|stop talking|stop nagging|^ quiet|^ silence|^ hush|^ shush|^ mute|^ enough|pipe down|no more reminders|stop reminding me|stop interrupting|leave me alone|leave me in peace|stop bothering me|mute yourself|quiet down|zip it|give it a rest|do not talk|stop announcing|stop chattering|less talking|no more talking)',
      ],
      (match) =>
        /(kids|kettle|tv|boys|girls|children)/.test(match.line) ? undefined : { intent: 'quiet' },
    ),
    ...phrases(
      [
        '^ [no] (hang on|hold on|wait|wait a (minutes|second|sec|moment)|one (sec|second|moment|minutes)|just a (sec|second|moment|minutes)|a moment|half a tick|bear with me|give me a (sec|second|minutes|moment|mo)|hold up|two ticks|hang about|not now|pause|pause that|pause for a (bit|minutes|moment)|make a pause|do a pause|pause everything|pause the plan|put it on hold|freeze the plan|freeze|put everything on hold|hold it|hold everything|time out|half a second|gimme a sec|hold that thought|wait up|give me a tick|a sec|stop|stop there|half a mo|just a mo|wait there|wait for me) [for a (bit|minutes|moment|sec|second)|a (sec|second|minutes|moment|mo|tick|bit)|$] $',
      ],
      (match) =>
        match.context.expecting === 'serving-time' ? { intent: 'pause' } : { intent: 'pause' },
    ),
    ...phrases(
      [
        '^ (give me|wait|hang on|hold on|pause for|just|need|i need) {d:duration} $',
        '^ {d:duration} $',
      ],
      (match) =>
        /^<d/.test(match.line)
          ? match.minutes('d') <= 1
            ? { intent: 'pause' }
            : undefined
          : { intent: 'pause' },
    ),
    ...phrases(
      [
        '^ (resume|continue|carry on|crack on|proceed|go on then|right go on|go on|go ahead|i am back|we are back|back now|back|ready|i am ready|let us continue|keep going|on we go|as you were|unpause|let us go|let us carry on|let us get on|right i am back|you can talk again|you can speak again|start talking again|unmute|speak again|let us keep going|pick up where we left off) [again|now] $',
      ],
      (match) =>
        match.context.expecting === 'confirmation' && /go ahead|carry on|go on/.test(match.line)
          ? { intent: 'affirm' }
          : { intent: 'resume' },
    ),
    ...phrases(
      [
        '^ (help|help me|i need help|what is it you do|what do you understand|list of commands|what things you can do|what things can you do|what else can you do|how do i use (this|you|it)|how do i work this [yoke|thing]|how do i talk to you|instructions|commands|what can you do|what can i say|what can i ask|how do you work|how does this work|what do you do|i am stuck|can you help [me]|what are the commands) [with (this|it)] $',
        '(what can i (say|ask)|what can you do|how does this work)',
      ],
      { intent: 'help' },
    ),
    ...phrases(
      ['[option|number|choice|plan] [the] {x:number} [please|then|one|it is]'].map((pattern) =>
        pattern.replace('[option', '(option').replace('plan]', 'plan)'),
      ),
      (match) => ({ intent: 'choose', option: match.number('x') }),
    ),
    ...phrases(
      [
        `^ [${heading}] (first|second|third|fourth|1st|2nd|3rd|4th) [one|won|{x:number}|option|choice|plan|idea|suggestion|please|way|$] $`,
        `^ ${heading} (former|latter) [one|$] $`,
        '^ [option|plan] (a|b|c) $',
        '^ [the] (first|second|third|fourth) (one|option|choice) (is|sounds|looks|works) [fine|good|best|ok|great|for me|$]',
      ],
      (match) => {
        const word = Object.keys(place).find(
          (word) => match.line.split(' ').findLast((one) => one in place) === word,
        );
        if (
          match.context.expecting !== undefined &&
          match.context.expecting !== 'choice' &&
          match.context.expecting !== 'confirmation'
        )
          return undefined;
        return word ? { intent: 'choose', option: place[word]! } : undefined;
      },
    ),
  ],
};

export const yesAndNo: Recogniser = {
  name: 'yes-and-no',
  moods: every,
  phrases: [
    ...phrases(
      [
        '^ [oh] (yes|si|ja|oui|aye|da|definitely|certainly|that is it|you got it|sure|sure thing|no yes|i think so|i suppose so|i would say so|sounds right|sounds about right|that is correct yes|right you are|yes chef|correct|that is right|that is correct|go ahead|do it|do that|sounds good|absolutely|right|of course|go for it|that works|that is fine|ok|all right|fine|perfect|yes do|yes it is|yes it does|i am sure|it does|it is|confirmed|exactly|definitely|good idea|why not|indeed|affirmative|by all means|great|lovely|i do|we do|quite sure|it really is|that is it|works for me|fine by me) [yes|it is|do|please|sure|do that|do it|go ahead|that is right|mate|thanks|it does|of course|correct|$] $',
      ],
      (match) => {
        const asked =
          match.context.expecting === 'confirmation' || match.context.expecting === 'choice';
        const line = match.line.trim();
        if (/^(great|lovely|perfect|i do|we do|it is|it does)$/.test(line) && !asked)
          return /(great|lovely|perfect)/.test(line) ? { intent: 'courtesy' } : undefined;
        if (/^(ok|all right|right|fine|ok ok)$/.test(line) && !asked)
          return match.context.paused ? { intent: 'resume' } : { intent: 'acknowledge' };
        return { intent: 'affirm' };
      },
    ),
    ...phrases(
      [
        '^ (no|no no|not at all|not|not really|no that is wrong|that is wrong|wrong|incorrect|no thanks|no thank you|not really|do not|do not do that|leave it|negative|absolutely not|no way|no it is not|it is not|rather not|i would rather not|not that|no do not|that is wrong|not now thanks|certainly not|never|no need|no it does not|neither|none of (them|those|the above)|better not|i do not think so|that is not right|no it did not) [thanks|thank you|it is not|leave it|do not|do not do that|$] $',
      ],
      { intent: 'deny' },
    ),
    ...phrases(
      [
        '^ (right you are|fine thanks|uh huh|mhm|righty|rightyo|okey dokey|aye aye|yes chef|copied|no bother|sorted cheers|ok so|ok great|got it|got that|will do|understood|noted|roger|roger that|copy|copy that|on it|heard|gotcha|fair enough|ok will do|i heard you|i hear you|ok got it|makes sense|no problem|righto|right you are|right o|rightio|ok chef|yes chef|i am on it|ok ok|coming|will do in a (minutes|sec|moment)|in a (minutes|sec|second|moment)|doing it|doing it now|on my way|cool|sweet as|no worries|easy|too easy|cheers will do|okey doke|understood chef|i know|loud and clear|fine fine|good to know|i see) [thanks|now|chef|$] $',
        '^ (i will|i am (going|about) to|about to|let me) (do it|do that|get to it|do them|get on it|get it|turn it down|take it out|pull it|put them in|put it in|check it|check|sort it)',
      ],
      { intent: 'acknowledge' },
    ),
    ...phrases(
      [
        '^ [ok|oh|and|well|many] (thanks|thank you|cheers|good day|great job|morning|evening|afternoon|hello|hi|hey|hey there|hi there|good morning|good afternoon|good evening|bye|goodbye|good night|see you|you are (great|brilliant|a star|the best|amazing|a lifesaver|a legend)|nice one|lovely|brilliant|great|perfect|wonderful|awesome|excellent|good job|well done|nice work|legend|fantastic|much appreciated|you beauty|great stuff|good stuff|nice|amazing|superb|smashing|that is great|that is (perfect|brilliant|lovely|wonderful|fantastic|helpful|good)|how are you|you too|good work|sweet|ace|champion) [so much|very much|a lot|a million|again|for that|for your help|for everything|mate|you|there|that is great|that is brilliant|a bunch|stuff|today|then|now|later|$] $',
        'thank you (so|very) much',
        '(thanks|thank you) (for|a) ',
      ],
      { intent: 'courtesy' },
    ),
  ],
};
