/** Phrases that reach over commas and joining words; tried on the whole text before it is cut up. */
import { comingTime, minutesUntil } from '../../moment.ts';
import type { Match, Meaning, Recogniser } from '../../recogniser.ts';
import { stepIn } from '../steps.ts';
import { phrases } from '../vocabulary.ts';

export const emergency: Recogniser = {
  name: 'emergency',
  moods: ['statement', 'negative', 'question', 'intention', 'request', 'story'],
  phrases: [
    ...phrases(
      [
        '(on fire|caught fire|caught alight|gone up in flames|in flames|catching fire|is alight)',
        '(flames|flame|fire) (in|inside|from|coming|coming out|shooting|on|everywhere|under) [out of|from] [the|my] (oven|pan|hob|stove|tin|fat|grease|tray|roasting tin|kitchen|grill|roast)',
        '(grease|fat|oil|oven|kitchen|pan|chip pan) fire [!|,|.|$]',
        '^ (fire|fire fire|help fire|there is a fire|flames)[*]$',
        'there (is|are) (a fire|flames)',
        '(fat|oil|grease|pan|oven|tea towel|towel|oven glove|oven mitt|cloth|paper) (is|has|just) [gone|caught|on|going] (fire|alight|flames|burning|up in (smoke|flames))',
        'the (fat|grease|oil) (ignited|has ignited|went up)',
      ],
      (match) =>
        / (was|film|movie|last|team|playing|deal|sale|form|year) /.test(` ${match.line}`) ||
        /not on fire/.test(match.line)
          ? undefined
          : { intent: 'emergency', kind: 'fire' },
    ),
    ...phrases(
      [
        '(burnt|burned|scalded|scorched|singed) (my|his|her|myself|himself|herself|me) [own|right|left|whole] (hand|hands|finger|fingers|arm|wrist|thumb|palm|foot|leg|face|forearm|knuckles|elbow|chest|skin|$)',
        '(burnt|burned|scalded) (myself|himself|herself)',
        '(hot|boiling) (fat|oil|water|grease|dripping) (on|over|all over|splashed|spat|went|down) [on|at|over|all over] (my|me|his|her)',
        '(fat|oil|grease) (spat|splashed|spattered) [on|at|in|into] (me|my)',
        '(i have|i|have|got|he has|she has|sam has) (got|given myself|had|have) a [bad|nasty|big|horrible] burn',
        '(hand|arm|finger|fingers|thumb|wrist) is (burnt|burned|scalded|blistering)',
        'grabbed the [hot] (pan|tin|tray|rack|handle) (without|with my bare|bare)',
      ],
      { intent: 'emergency', kind: 'burn' },
    ),
    ...phrases(
      [
        '(cut|sliced|nicked|stabbed|slashed|gashed|chopped) (my|his|her|off my|open my|into my|the end off my|the tip off my|the top off my|through my) [own|left|right] (hand|finger|fingers|thumb|palm|wrist|arm|leg|knuckle|fingertip)',
        '(i have|i|have|he has|she has|he|she) (cut|sliced|stabbed) (myself|himself|herself) (badly|quite badly|with|on|$)',
        '(bleeding|blood) (everywhere|badly|all over|a lot|is pouring|quite badly)',
        '(i am|i|he is|she is|it is|finger is|thumb is|hand is) bleeding',
        '(knife|blade) slipped',
      ],
      { intent: 'emergency', kind: 'cut' },
    ),
    ...phrases(
      [
        '(gran|grandma|grandad|dad|mum|she|he|i|someone|somebody|sam|nan) (has|have|just|is) [just] (fallen|slipped|collapsed|fell) [over|down|on|$]',
        '(someone|somebody|she|he) (is choking|has fainted|fainted|passed out)',
      ],
      (match) =>
        /behind|asleep|short|in love/.test(match.line)
          ? undefined
          : { intent: 'emergency', kind: 'fall' },
    ),
  ],
};

const watched = (match: Match): Meaning | undefined => {
  const reading = match.temperature('temperature');
  return Number.isFinite(reading.temperature) ? { intent: 'watch', ...reading } : undefined;
};

const reaches =
  '(@it|@middle|@thermometer|the probe|the core|we|the temperature|oven|the oven) (@read|is|is at|is up to|gets to|hits|reaches|goes over|goes past|gets up to|comes up to|goes to|passes|touches|has reached|has hit|gets|climbs to|is reading|is showing|rises to|crosses|comes to) [at|above|over|past|up to] {temperature}';

export const watch: Recogniser = {
  name: 'watch',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        `@tell (when|once|if|as soon as|the moment|the second|the minute) ${reaches}`,
        `(when|once|if|as soon as|the moment) ${reaches} [,] [then] [please] [can you|could you|would you|you] (@tell|give me a shout|pull it|we pull it|we pull|pull)`,
        '@tell (at|when at|on|around) {temperature:degrees}',
        '(@tell|watch for|watch out for|look out for|keep an eye out for|wait for) [it to (hit|reach|read|get to)] {temperature:number} [in the (roast|middle|meat)] $',
        '(watch for|set an alarm for|alarm at|alert at|set (an|the) (alarm|alert) (at|for)|set a temperature (alarm|alert) (at|for)) {temperature} $',
        `(i want|i would like|i need) to know (when|once|as soon as) ${reaches}`,
        `(i want|i need) (a shout|a call|telling|to be told) (when|once) ${reaches}`,
        '@tell (when|once|if|as soon as) [we|you] (hit|reach|get to|see) {temperature}',
        '(shout|call|holler|yell|beep|ping me) at {temperature}',
      ],
      watched,
    ),
  ],
};

const relabel = (match: Match): Meaning | undefined => {
  // "make it eight o'clock" takes nothing back.
  if (match.quantity('x')?.kind === 'clock' && /^make (it|that) /.test(match.line))
    return undefined;
  const quantity = match.quantity('x');
  const clock = match.pastTime('x');
  switch (quantity?.kind) {
    case 'weight':
      return { intent: 'correct', weight: quantity.value, weightUnit: quantity.unit };
    case 'duration':
      return { intent: 'correct', minutes: quantity.minutes };
    case 'clock':
      return { intent: 'correct', ...(clock ? { time: clock } : {}) };
    case 'date':
      return { intent: 'correct', date: quantity.date };
    default: {
      const line = ` ${match.line}`;
      if (/ (people|of us|guests|heads|adults) /.test(line))
        return { intent: 'correct', count: match.number('x') };
      if (/ (bone|bones|ribs) /.test(line)) return { intent: 'correct', bones: match.number('x') };
      if (
        match.context.expecting === 'guests' ||
        (match.number('x') < 20 &&
          quantity?.kind === 'number' &&
          match.context.stage === 'planning')
      )
        return { intent: 'correct', count: match.number('x') };
      return { intent: 'correct', ...match.temperature('x') };
    }
  }
};

const event = (match: Match, slot: string): string | undefined => {
  const words = match.words(slot);
  if (/potatoes|beans|carrots|puddings|side|roots|veg/.test(words))
    return stepIn(words, match.context);
  return undefined;
};

export const correction: Recogniser = {
  name: 'correction',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '[no ,|no|sorry ,|sorry|wait ,|actually ,] {who:thing} (went in|went into the oven|started|came out|went on|was in) at {x:clock} [,] not [at] {y:any}',
        '[no ,|no|sorry ,|sorry|wait ,] {who:thing} (went in|started|came out) at {x:clock} [,] (not at|rather than|instead of) {y:any}',
      ],
      (match) => {
        const time = match.pastTime('x');
        const step = event(match, 'who') ?? (/came out/.test(match.line) ? 'pull' : 'roast-in');
        return time ? { intent: 'correct', step, time } : undefined;
      },
    ),
    ...phrases(
      [
        '^ [no ,|no|sorry ,|sorry|wait ,|oh] (i meant|i mean|i should have said|i meant to say|should have been|i said|it should be|make that|that should be|that was|correction ,|correction|rather|scratch that ,|it was|it is|that is|it is actually|more like) {x:any} [degrees] [,] (not|rather than|instead of) {y:any}',
        '^ [no ,|no|sorry ,|sorry] not {y:any} [,] [i meant|it is|it was|but|i mean] {x:any}',
        '(it is|it was) {x:any} [people|of us|guests|bones|bone|ribs|pounds] [,] not {y:any}',
        '[no ,|no|sorry ,|sorry] {x:any} [people|of us|guests|bones|degrees] [,] not {y:any}',
      ],
      relabel,
    ),
    ...phrases(
      [
        '^ [no ,|no|no no|sorry ,|sorry|wait ,|oh|oh no|oh no ,|hang on ,] (i meant|i mean|i meant to say|i should have said|it should be|make that|make it|that should be|that should have been|it should have been|correction ,|correction|scratch that ,|i said|i got that wrong ,|i misread it ,|i misread that ,|i misread it|misread it ,|i misspoke ,|my mistake ,|typo ,) [it is|it was|it reads] {x:any} [people|of us|guests|bones|bone|ribs]',
        '^ (no ,|no|nope ,|no no|wrong ,|sorry ,) [it is|it was|it reads|that was|at] {x:any} [people|of us|guests|bones|bone|ribs] $',
        '^ (i misread (it|that)|misread it|i got (it|that) wrong|that was wrong|my mistake|i misspoke|i misheard) [,|.] [it is|it was|it reads|it should be] {x:any}',
      ],
      relabel,
    ),
    ...phrases(
      [
        '^ [no ,|no|sorry ,|sorry] [i meant|i mean|i said|make that|make it] (not medium rare|not rare|not medium|not well done) [,] [but] (rare|medium rare|medium|medium well|well done)',
        '^ (no ,|no|sorry ,|sorry|i meant|i said|no i meant|no , i meant|sorry i meant|sorry , i meant) [make it|make that] (rare|medium rare|medium well|medium|well done) $',
      ],
      (match) => {
        const said = /(medium rare|medium well|well done|medium|rare) $/.exec(
          `${match.line.trimEnd()} `,
        );
        return said
          ? { intent: 'correct', doneness: said[1]!.replace(' ', '-') as 'rare' }
          : undefined;
      },
    ),
    ...phrases(
      [
        '^ (no ,|no) [not (that|this) one ,|not (that|this) one] [i meant|i mean] the other [one|way|way round]',
        '^ (the other one|i meant the other one|not that one|wrong one) $',
      ],
      { intent: 'correct' },
    ),
    ...phrases(
      [
        '(undo|take back|forget|cancel|delete|strike|scrub|scratch|ignore|disregard|reverse|revert) (that|it|this|the last one|the last thing|the last bit|what i said|what i just said|the last thing i said|my last|that last one|that last bit|last)',
        'take (that|it|the last one) back',
        '^ [no ,] (undo|scratch that|strike that|as you were|ignore that|go back a step|go back one) $',
        '(i did not mean|did not mean) (that|it|to say that)',
        '(i take|i will take|let me take) that back',
        '(that was|that is) a mistake',
        'i said that by mistake',
      ],
      (match) => (/timer|alarm/.test(match.line) ? undefined : { intent: 'undo' }),
    ),
  ],
};

export const together: Recogniser = {
  name: 'together',
  moods: ['statement'],
  phrases: [
    ...phrases(
      [
        '(popping|nipping|heading|going|off|running|stepping|dashing) [out|over|down|off] [to] [the|my] {place:word} , [i will be|will be|be|about|for|gone|back in|i will be back in|be back in] {d:duration}',
      ],
      (match) => ({ intent: 'cook-away', minutes: match.minutes('d') }),
    ),
    ...phrases(
      [
        '^ [ok ,|ok|right ,|right] @it is out and (it is resting|resting|under foil|tented|on the board|covered)',
        '^ @it is out [,] [and] resting',
        '(pulled|taken) it [out] and (it is resting|resting it|it is under foil)',
      ],
      { intent: 'report-started', step: 'rest' },
    ),
    ...phrases(
      ['(remind|tell|shout|call|wake|nudge|ping) [me|at me] (at|when it is) {clock:face} [to * $]'],
      (match) => {
        const face = match.face('clock');
        return face
          ? {
              intent: 'set-timer',
              minutes: minutesUntil(comingTime(face, match.context), match.context),
            }
          : undefined;
      },
    ),
  ],
};
