/** The talk itself: yes and no, choices, pauses, thanks, and fragments that only a question explains. */
import { mealTime, pastTime } from '../../moment.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { phrases } from '../vocabulary.ts';
import { momentOf } from './moment-of.ts';

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

/** Nobody is given more to choose from. */
const optionsAtMost = 9;
const roastsOrRests = /^(sear|low-roast|rest|hold)$/;

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
        ? { intent: 'report-reading', ...match.temperature('x'), ...momentOf(match) }
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
      if (quantity.kind !== 'number') return undefined;
      // The thermometer does not wait for the choice: no list is as long as a core is hot.
      return value > optionsAtMost &&
        roastsOrRests.test(context.stage ?? '') &&
        canBeCore(value, context.units.temperature)
        ? { intent: 'report-reading', ...match.temperature('x') }
        : { intent: 'choose', option: value };
    case 'step': {
      const heat = ovenAlone(match, value);
      if (heat) return heat;
      // "Ten past", to "is it in": when it was.
      const face = quantity.kind === 'clock' ? quantity.face : undefined;
      const [step] = context.openSteps;
      return face
        ? { intent: 'report-done', ...(step ? { step } : {}), time: pastTime(face, context) }
        : undefined;
    }
    case 'roast':
      return quantity.kind === 'number' && value > 0
        ? { intent: 'describe-roast', weight: value, weightUnit: context.units.weight }
        : undefined;
    default:
      return ovenAlone(match, value) ?? beforeRoast(match, value);
  }
}

/** "Four fifty", while the oven comes up or is turned down: no other number is so high. */
function ovenAlone(match: Match, value: number): Meaning | undefined {
  const { stage, units } = match.context;
  if (stage !== 'preheat' && stage !== 'sear') return undefined;
  const { temperature, unit = units.temperature } = { ...match.temperature('x') };
  const [low, high] = unit === 'F' ? [215, 550] : [105, 290];
  return temperature === value && value >= low && value <= high
    ? { intent: 'report-oven', ...match.temperature('x') }
    : undefined;
}

/** "145 then", before there is a core to read: how done it is to be. */
function beforeRoast(match: Match, value: number): Meaning | undefined {
  const { stage, expecting, units } = match.context;
  if (expecting !== undefined || (stage !== 'planning' && stage !== 'prep')) return undefined;
  const { temperature, unit = units.temperature } = { ...match.temperature('x') };
  const [low, high] = unit === 'F' ? [115, 170] : [46, 77];
  return temperature === value && value >= low && value <= high
    ? { intent: 'set-doneness', ...match.temperature('x') }
    : undefined;
}

/** What says which of the options it is. */
const ordinal =
  /^(first|second|third|fourth|1st|2nd|3rd|4th|last|other|former|latter|top|bottom|middle|next|a|b|c|no|not|neither|any|either|same|right|wrong)$/;

export const fragments: Recogniser = {
  name: 'fragments',
  moods: ['statement', 'question'],
  phrases: [
    ...phrases(
      [
        '^ [yes|yes ,|ok|ok ,] [at|since|from|it was|it is|about|for|um|a|say|maybe|there are|we are|around|by|the] {x:any} [degrees] [now|in there|in|in the middle|in the roast|in the meat|please|works|then|it is|is what it says|i think|i reckon|$] $',
        '^ {d:date} [at] {x:clock} $',
      ],
      answered,
    ),
    ...phrases(['^ [the] (middle|core|centre|roast|meat|oven) [,|is] {x:number} $'], (match) =>
      match.context.expecting === 'reading' && !/oven/.test(match.line)
        ? answered(match)
        : undefined,
    ),
    // How done it is to be was asked for: a value in a short answer is that, and no reading.
    ...phrases('^ {all:clause} $', (match) => {
      const marks = match.marks('nt');
      if (
        match.context.expecting !== 'doneness' ||
        marks.length !== 1 ||
        match.marks('cdwg').length > 0 ||
        match.line.split(' ').length > 10 ||
        / (people|guests|oven|reads|minutes|oclock|eat|not) /.test(` ${match.line}`)
      )
        return undefined;
      const one = match.withGroups({ x: `${marks[0]!} ` });
      return one.number('x') >= 40 && one.number('x') <= 180
        ? { intent: 'set-doneness', ...one.temperature('x') }
        : undefined;
    }),
    ...phrases(
      '^ (just-now|a (second|sec|moment|minutes|tick) ago|moments ago|seconds ago|did that|done that|tick|ticked|this minute|this second|this moment) $',
      (match) => {
        const [step] = match.context.openSteps;
        return match.context.expecting === 'step'
          ? { intent: 'report-done', ...(step ? { step } : {}) }
          : undefined;
      },
    ),
    ...phrases(['^ (no idea|not sure|do not know|dunno) $'], { intent: 'unclear' }),
    // "The bigger one", of options that have numbers.
    ...phrases(
      ['^ [the|that|this] {kind:word} (one|option|yin|choice) $', '^ (that|this) (one|yin) $'],
      (match) => {
        const kind = match.words('kind');
        const alone = match.whole.trim().split(' ').length <= 4;
        return match.context.expecting === 'choice' && alone && !ordinal.test(kind)
          ? { intent: 'unclear', ...(kind ? { thing: kind } : {}) }
          : undefined;
      },
    ),
  ],
};

const errands =
  / (bath|shower|shop|shops|store|dog|walk|nap|lie down|upstairs|out|station|airport|school|church|neighbours|garage|change|dressed|hair|collect|pick up|fetch|run to|nip|pop) /;

export const early: Recogniser = {
  name: 'early',
  moods: every,
  phrases: [
    ...phrases(
      [
        '(start over|start all over|start fresh|begin from zero|start from zero|start from the zero|begin over|throw this plan away|throw the plan away|scrap the plan|start again|start from scratch|begin again|new dinner|start afresh|reset everything|wipe everything|clear everything|start from the beginning|start a new dinner|scrap everything|^ [ok] [start|begin|go|again|take it|and] [again] from the top $|^ reset $|begin afresh|start it all again|do it all again from|clear it all|wipe the slate|clean slate|bin the lot|scrap it all|scrap the lot|forget (everything|it all|the whole thing)|do over $|begin anew|start anew|^ (restart|start again|begin again|let us restart) $|from the beginning again|^ [let us] (begin|start) [it all] (again|over) [from] |back to square one|scrap the whole thing)',
      ],
      { intent: 'start-over' },
    ),
    ...phrases(
      [
        '(say that again|say it again|repeat that|repeat|come again|pardon|pardon me|what did you say|what was that|did not (catch|hear|get) that|did not (catch|hear|get) (you|what you said|it)|one more time|say again|can you repeat|read that again|could not hear you|missed that|what was that again|i missed that|read it back|tell me again|run that by me again|once more|did not hear|say it slower|say that slower|slower please|could not (hear|catch|follow|make out) (that|you|it)|can not hear you|you cut out|you broke up|lost you there|was not listening|did not follow|^ [bit] louder|run that past me again|^ speak up|what was the last (bit|thing|part)|you said what|^ (again|again please|and again) $|did not understand|please repeat|what (you|did you) say|say it one more time|what is it you said|say it once again|say that once more|what were you saying [about]|what was it you (said|told me|were saying|wanted)|what (you|were you) (say|said|saying) just now|what did you (tell|want) me just now)',
        '^ (what|sorry|excuse me|huh|eh|you what|say what|what is that|what you said|sorry what|what did you say there) $',
      ],
      (match) =>
        /^(sorry|excuse me) $/.test(match.line) && match.context.expecting
          ? { intent: 'repeat' }
          : { intent: 'repeat' },
    ),
    // "when did I say four hundred": it was not.
    ...phrases(
      [
        '^ [but] (when did i [ever] say|i never said|i did not say|who said) [anything about] {x:any} ',
      ],
      { intent: 'deny' },
    ),
    // "did you say carve or did you say half".
    ...phrases('^ did you say {r:thing} $', (match) =>
      / did you say .* or /.test(` ${match.whole}`) ? { intent: 'repeat' } : undefined,
    ),
    ...phrases(
      [
        '^ [do] (be|stay|keep|go) [quiet|silent] (quiet|silent) [for a bit|for a while|for a little while|now|$]',
        '(pipe up|speak|talk|interrupt|message|messages|bother me|disturb me|disturb|chime in|butt in|say something|speak up) [to me|me|us] (if|when|unless) [it is|it|there is|something|really|only] [really|absolutely|truly|is|an|something|it is] (urgent|necessary|important|vital|needed|emergency|burning|on fire|wrong|must) ',
        '^ (leave off|give over|pack it in|give it a rest) $',
        '(shut up|shut the up|shut it|do hush|^ hush|hush up|stop talking|stop nagging|^ quiet|^ silence|^ hush|^ shush|^ mute|^ enough|pipe down|no more reminders|stop reminding me|stop interrupting|leave me alone|leave me in peace|stop bothering me|mute yourself|quiet down|zip it|give it a rest|do not talk|stop announcing|stop chattering|less talking|no more talking|put a sock in it|button it|belt up|wheesht|whisht|^ (that is enough|enough now|enough of that|enough out of you|enough talking)|stop (telling|nattering|going on|announcing|reminding|speaking|bugging|nagging|shouting|yapping|calling out|badgering|bothering)|no talking|no more talking|stop with the (talking|reminders|announcements)|some peace|give me peace|you talk too much|do not (talk|speak) to me|^ (hush|quiet|silence) now|(no|not) need (reminding|reminders|to be reminded|telling)|keep it zipped|can you not talk|you can (hush|be quiet|go quiet|stop talking|shut up|rest your voice)|keep schtum|wind your neck in|turn yourself (off|down))',
      ],
      (match) =>
        /(kids|kettle|tv|boys|girls|children)/.test(match.line) ? undefined : { intent: 'quiet' },
    ),
    ...phrases(
      [
        '^ (brb|be right back|back in a (sec|second|tick|mo|moment|minutes)) [,] ',
        '^ [no] (hang on|hold on|wait|wait a (minutes|second|sec|moment)|one (sec|second|moment|minutes)|just a (sec|second|moment|minutes)|a moment|half a tick|bear with me|give me a (sec|second|minutes|moment|mo)|hold up|two ticks|hang about|not now|pause|pause that|pause for a (bit|minutes|moment)|make a pause|do a pause|pause everything|pause the plan|put it on hold|freeze the plan|freeze|put everything on hold|hold it|hold everything|time out|half a second|gimme a sec|hold that thought|wait up|give me a tick|a sec|stop|stop there|half a mo|just a mo|wait there|wait for me|a tick|tick|one tick|two secs|two seconds|stop a second|not just now|not right now|hold your horses|hold the line|stall|let me catch up|let me catch my breath|i need a (minutes|moment|break|breather)|give me (some|a little) time|in a (minutes|sec|second)) [for a (bit|minutes|moment|sec|second)|a (sec|second|minutes|moment|mo|tick|bit)|$] $',
      ],
      (match) =>
        match.context.expecting === 'step' && match.line === 'tick '
          ? {
              intent: 'report-done',
              ...(match.context.openSteps[0] ? { step: match.context.openSteps[0] } : {}),
            }
          : // "Yes yes, in a sec": heard, and done soon.
            /^(yes|yeah|ok|all right|right) .*in a (sec|second|minutes|moment) $/.test(match.whole)
            ? { intent: 'acknowledge' }
            : { intent: 'pause' },
    ),
    // "one sec, phone's ringing": what calls the cook away for a moment.
    ...phrases(
      [
        '^ (hang on|hold on|wait|wait a (sec|second|moment|minutes|tick)|one (sec|second|moment|minutes)|a (sec|second|moment|tick)|two secs|hold up|bear with me|half a sec) [,|there is|the|my|someone|somebody|i have|i need|that is|let me] {reason:rest} $',
      ],
      (match) =>
        / (phone|door|doorbell|dog|someone|somebody|kid|baby|toilet|loo|busy|hands|nose|neighbour|postman|wash|glasses|sneeze|pen|something) /.test(
          ` ${match.line}`,
        ) && match.marks('ntdwg').length <= (/^<n\d+> sec/.test(match.line) ? 1 : 0)
          ? { intent: 'pause' }
          : undefined,
    ),
    ...phrases(
      [
        '^ (give me|wait|hang on|hold on|pause for|just|need|i need) {d:duration} $',
        '^ {d:duration} $',
      ],
      (match) => {
        if (/^<d/.test(match.line))
          return match.minutes('d') <= 1 ? { intent: 'pause' } : undefined;
        // "having a bath, give me half an hour": for that long nobody is at the stove.
        return match.minutes('d') >= 5 && errands.test(` ${match.whole}`)
          ? { intent: 'cook-away', minutes: match.minutes('d') }
          : { intent: 'pause' };
      },
    ),
    ...phrases(
      [
        '^ (resume|continue|carry on|crack on|proceed|go on then|right go on|go on|go ahead|i am back|we are back|back now|back|ready|i am ready|let us continue|keep going|on we go|as you were|unpause|let us go|let us carry on|let us get on|right i am back|you can talk again|you can speak again|start talking again|unmute|speak again|let us keep going|pick up where we left off|you can (go on|continue|carry on|resume)|we can (go on|continue|carry on|resume|start)|back to it|let us get back to it|where were we|i am here|here again|i am listening|i am here again|i am all yours|ready when you are|on you go|ok back|listening again|i am listening again|i am listening|listening|talk to me) [again|now|go ahead|please|go on] $',
      ],
      (match) =>
        match.context.expecting === 'confirmation' && /go ahead|carry on|go on/.test(match.line)
          ? { intent: 'affirm' }
          : { intent: 'resume' },
    ),
    ...phrases(
      [
        '^ (help|help me|i need help|what is it you do|what do you understand|list of commands|what things you can do|what things can you do|what else can you do|how do i use (this|you|it)|how do i work this [yoke|thing]|how do i talk to you|instructions|commands|what can you do|what can i say|what can i ask|how do you work|how does this work|what do you do|i am stuck|can you help [me]|what are the commands) [with (this|it)] $',
        '(what can i (say|ask)|what can you do|how does this work|what are you able to do|what else are you able to do|what do you know how to do|what are you good for|what are you for)',
        '(show|list|give|tell|read) [me] [all] [the|your] (commands|instructions)',
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
        '^ [i|we] (can|could|will) (live with|settle for|be happy with|take|go with|go for) [the] (first|second|third|fourth) [one|option] $',
        `^ [${heading}] (first|second|third|fourth|1st|2nd|3rd|4th) [one|won|{x:number}|option|choice|plan|idea|suggestion|please|way|$] $`,
        `^ ${heading} (former|latter) [one|$] $`,
        '^ [option|plan] (a|b|c) $',
        '^ [the] (first|second|third|fourth) (one|option|choice) (is|sounds|looks|works) [fine|good|best|ok|great|for me|$]',
      ],
      (match) => {
        // "just the first three" counts, and chooses nothing.
        if (match.has('x') && match.number('x') !== 1) return undefined;
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

/** Nods that, to a question, say yes. */
const yeses =
  /^(mhm|right you are|righty|rightio|righto|aye aye|yes chef|roger|copy|cool|no problem|no worries|sweet as|easy|makes sense|fair enough|okey|i know)/;

export const yesAndNo: Recogniser = {
  name: 'yes-and-no',
  moods: every,
  phrases: [
    ...phrases(
      [
        '^ [yes|ok|well|oh|hmm] [that|it|this] (sounds|sounded|would be) (good|great|fine|perfect|lovely|right|ideal) [to me|then] $',
        '^ [oh] (yes|si|ja|oui|aye|da|definitely|certainly|that is it|you got it|sure|sure thing|no yes|i think so|i suppose so|i would say so|sounds right|sounds about right|that is correct yes|right you are|yes chef|correct|that is right|that is correct|go ahead|do it|do that|sounds good|absolutely|right|of course|go for it|that works|that is fine|ok|all right|fine|perfect|yes do|yes it is|yes it does|i am sure|it does|it is|confirmed|exactly|definitely|good idea|why not|indeed|affirmative|by all means|great|lovely|i do|we do|quite sure|naturally|you bet|too right|i did|yes i did|yes we did|it did|that is what i said|yes that is what i said|yes it was|it was|hundred percent|one hundred percent|positive|i am positive|spot on|dead right|bang on|no doubt|without a doubt|for sure|yes for sure|sure is|sure it is|sure was|you can bet on it|you have it|you have got it|that is the one|course it is|of course it is|of course it was|of course i did|yes of course|yes absolutely|absolutely yes|yes indeed|yes yes|oh yes|yes sir|go on then|yes go on|please do|yes please do|make it so|as you say|right enough|that is true|true|agreed|fair dos|fair do is|good call|sounds like a plan|it really is|that is it|works for me|fine by me) [yes|it is|do|please|sure|do that|do it|go ahead|that is right|mate|thanks|it does|of course|correct|$] $',
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
        '^ (no|no no|not at all|not|not really|no that is wrong|that is wrong|wrong|incorrect|no thanks|no thank you|not really|do not|do not do that|leave it|negative|absolutely not|no way|no it is not|it is not|rather not|i would rather not|not that|no do not|that is wrong|not now thanks|certainly not|never|no need|no it does not|neither|none of (them|those|the above)|better not|i do not think so|that is not right|no it did not|no i did not|i did not|no we did not|no that is not right|no that is not it|nothing like it|of course not|on no account|by no means|hell no|not so|no chance|no it was not|it was not|not that one|no not that|no leave it|please do not|no please do not|over my dead body|forget it|no sir|no ma am|not correct|that is not correct|that is incorrect|that is false|false|not true) [thanks|thank you|it is not|leave it|do not|do not do that|$] $',
      ],
      { intent: 'deny' },
    ),
    ...phrases(
      [
        '^ (right you are|fine thanks|uh huh|mhm|righty|rightyo|okey dokey|aye aye|yes chef|copied|no bother|sorted cheers|ok so|ok great|got it|got that|will do|understood|noted|roger|roger that|copy|copy that|on it|heard|gotcha|fair enough|ok will do|i heard you|i hear you|ok got it|makes sense|no problem|righto|right you are|right o|rightio|ok chef|yes chef|i am on it|ok ok|coming|will do in a (minutes|sec|moment)|in a (minutes|sec|second|moment)|doing it|doing it now|on my way|cool|sweet as|no worries|easy|too easy|cheers will do|okey doke|understood chef|i know|loud and clear|fine fine|good to know|i see) [thanks|now|chef|$] $',
        '^ (i will|i am (going|about) to|about to|let me) (do it|do that|get to it|do them|get on it|get it|turn it down|take it out|pull it|put them in|put it in|check it|check|sort it)',
      ],
      (match) =>
        match.context.expecting === 'confirmation' && yeses.test(match.line)
          ? { intent: 'affirm' }
          : { intent: 'acknowledge' },
    ),
    ...phrases(
      [
        '^ [ok|oh|and|well|many] (thanks|thank you|cheers|good day|great job|morning|evening|afternoon|hello|hi|hey|hey there|hi there|good morning|good afternoon|good evening|bye|goodbye|good night|see you|you are (great|brilliant|a star|the best|amazing|a lifesaver|a legend)|nice one|lovely|brilliant|great|perfect|wonderful|awesome|excellent|good job|well done|nice work|legend|fantastic|much appreciated|you beauty|great stuff|good stuff|nice|amazing|superb|smashing|that is great|that is (perfect|brilliant|lovely|wonderful|fantastic|helpful|good)|how are you|you too|good work|sweet|ace|champion) [so much|very much|a lot|a million|again|for that|for your help|for everything|mate|you|there|that is great|that is brilliant|a bunch|stuff|today|then|now|later|$] $',
        '^ [and] [a] [very] (happy|merry) (new year|christmas|xmas|thanksgiving|easter|birthday) [to] [{rest:rest}] $',
        'thank you (so|very) much',
        '(thanks|thank you) (for|a) ',
      ],
      { intent: 'courtesy' },
    ),
  ],
};
