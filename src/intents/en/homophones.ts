/**
 * Words a recogniser writes for others that sound alike, put right where the words beside them say
 * which is meant: "half passed seven", "medium wear", "were at ninety ate". Each rule names what must
 * stand before and after; where neither does, the word is left alone.
 */
import type { ReadContext } from '../../kitchen/heard.ts';
import type { Token } from '../token.ts';

interface Rule {
  /** Matched against the words before, each followed by a blank. */
  before?: RegExp;
  /** Matched against the words after, each followed by a blank. */
  after?: RegExp;
  instead: string;
}

const start = /(^|[,.?!] |\b(and|so|but|right|ok|then|well|now|yes|think) )$/;
const tens = '(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|hundred and|oh|\\d0)';
const hour = '(one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d{1,2})';
const count = `(${hour}|\\w+teen|twenty|thirty|\\d+)`;
const end =
  /^($|[,.?!]|(degrees|in|now|fahrenheit|celsius|by|at|near|over|under|inside|already|but|on the (probe|thermometer|other|hand|quick|leave|instant|bone|edge|outside|wireless|display)) ?)/;
const heads = /^(people|of us|of them|guests|persons|more (people|guests|are)|adults) /;
const measured = /^(bone|bones|rib|ribs|kilos|kilo|pounds|pound|lb|kg) /;
const state =
  /^(running|late|going to|gonna|here|all here|stuck|coming|arriving|delayed|nearly here|at the door|out|in|done|ready) ?/;

/** "number to", "option for". */
const numbered = /\b(number|option|choice|plan) $/;
const endOfChoice = /^($|[,.?!]|(please|i|yes|then|let|sounds|it|will|for me|thanks) )/;
/** "ate grown ups and for kids". */
const headsOf =
  /^(grown ups|grownups|adults|kids|children|little ones|people|guests|of us|of them|toddlers|teenagers|big ones|ppl|mouths|heads|(?:plates|places)(?! (?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d+|\w+teen|twenty|thirty) )) /;
/** "we are for adults and too kids": before people a number is wanted. */
const headsBefore = /(^|[,.] |\b(and|plus|we are|there are|we have|have got) )$/;
/** "down to too fifty", "set at for twenty five": after these a number is wanted. */
const toNumber =
  /\b(to|at|says|reads|says it is|set on|is on|it on|oven on|oven at|up on|down on) $/;
const tensAfter =
  /^(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|oh \w+|ten|\w+teen) (?!(people|guests|minutes|of us|min|pounds|kilos) )/;

const rules: Record<string, readonly Rule[]> = {
  were: [
    {
      before: start,
      after: new RegExp(
        `^(at|on|up to|eating|having|sitting|running|expecting|cooking|doing|behind|late|ready|carving|serving|seated|out|${count}) `,
      ),
      instead: 'we are',
    },
    // "whats it were doing": no subject before it.
    {
      before: /(^|[,.?!] |\b(and|so|but|because|now|seven|it|says|after|if|when|tonight) )$/,
      after: /^(going|gonna|doing|having|eating|making|serving|about to|nearly|not) /,
      instead: 'we are',
    },
  ],
  weave: [{ after: /^(no|got|run|just|only|have|put|not) /, instead: 'we have' }],
  pool: [
    { before: /\b(i|we|to) $/, after: /^(it|the (roast|meat|joint|beef)|her) /, instead: 'pull' },
  ],
  there: [{ before: start, after: state, instead: 'they are' }],
  their: [
    { before: start, after: state, instead: 'they are' },
    { before: start, after: /^(is|are) /, instead: 'there' },
  ],
  hear: [{ before: /\b(are|is|all|everyone|everybody|am|got) $/, instead: 'here' }],
  wear: [{ before: /\bmedium $/, instead: 'rare' }],
  ware: [{ before: /\bmedium $/, instead: 'rare' }],
  rear: [{ before: /\bmedium $/, instead: 'rare' }],
  where: [{ before: /\bmedium $/, after: end, instead: 'rare' }],
  med: [{ after: /^(rare|well) /, instead: 'medium' }],
  seer: [{ instead: 'sear' }],
  cere: [{ instead: 'sear' }],
  rose: [
    {
      before: /\b(the|a|my|our|rib|this) $/,
      after: /^(is|hits|reads|red|reaches|went|came|has|gets|at|looks|in|out|was|goes|to) /,
      instead: 'roast',
    },
    { before: /\b(rib|the|my) $/, after: /^$/, instead: 'roast' },
  ],
  roost: [{ instead: 'roast' }],
  meets: [
    {
      before: /\b(the|my|our) $/,
      after: /^(out|in|at|on|done|resting|ready|up|is|reading|still|now|$)/,
      instead: 'meat is',
    },
    { after: /^out (on|of|and|now|$)/, instead: 'meat is' },
  ],
  meet: [{ before: /\b(the|my|our|of) $/, instead: 'meat' }],
  robe: [{ before: /\b(the|my|a|in) $/, instead: 'probe' }],
  source: [{ before: /\b(horseradish|mint|herb|green|bread|the) $/, instead: 'sauce' }],
  carats: [{ instead: 'carrots' }],
  karats: [{ instead: 'carrots' }],
  flower: [{ before: /\b(plain|some|of|much|the|use) $/, instead: 'flour' }],
  sea: [{ before: /\bdegrees $/, instead: 'c' }],
  see: [{ before: /\bdegrees $/, instead: 'c' }],
  guess: [
    {
      before: /\b(the|our|my|all) $/,
      after: /^(is|are|have|has|will|were|just|arrived) /,
      instead: 'guests',
    },
  ],
  guest: [{ before: /\b(the|our|my|all the) $/, after: /^(are|have|were) /, instead: 'guests' }],
  our: [{ before: /\b(half an|an|half|one|quarter of an) $/, instead: 'hour' }],
  ours: [{ before: new RegExp(`\\b${hour} (and a half )?$`), instead: 'hours' }],
  hole: [
    {
      before: /\b(the|a|my) $/,
      after:
        /^(roast|joint|tray|gratin|thing|grattan|lot|kitchen|plan|pan|tin|dinner|table|batch|bowl|pot|family|gang|rib|piece) /,
      instead: 'whole',
    },
  ],
  grattan: [{ instead: 'gratin' }],
  gratten: [{ instead: 'gratin' }],
  rapped: [{ after: /^(in|up|it|them|the) /, instead: 'wrapped' }],
  tide: [{ before: /\b(been|bones|is|are|all) $/, after: /^(back|up|on) /, instead: 'tied' }],
  hay: [{ before: /^$/, instead: 'hey' }],
  finish: [
    {
      before:
        /^(the |all )?(sear|searing|rest|resting|roast|potatoes|beans|carving|puddings|gravy|carrots) $/,
      after: /^[.,!] /,
      instead: 'finished',
    },
  ],
  grade: [{ after: /^(celsius|fahrenheit|c|f) /, instead: 'degrees' }],
  juice: [
    { before: /\b(wine|pan) $/, instead: 'jus' },
    {
      before: /(^|[,.] |\b(the|and) )$/,
      after:
        /^(is|has) (done|made|ready|reducing|reduced|simmering|on|bubbling|strained|finished) /,
      instead: 'jus',
    },
    {
      before: /\b(the|my|our) $/,
      after: /^(is|has|needs|wants) (\w+ )?(reduc\w*|thicken\w*|glossy|strained|simmering|boiling)/,
      instead: 'jus',
    },
  ],
  degrease: [{ instead: 'degrees' }],
  time: [
    {
      before: /\bhow much $/,
      after: /^(do|should|does|will|can) (i|we|it|you) (put|add|use|need in|go|stir|chop|sprinkle)/,
      instead: 'thyme',
    },
    {
      before: /\b(dried|fresh|chopped|ground|lemon|rosemary and|sprigs? of|leaves of) $/,
      instead: 'thyme',
    },
    { before: /\b(how much|much) $/, after: /^(goes|in the (butter|gravy|rub))/, instead: 'thyme' },
    { before: /\b(stop|cancel|set|start) (the|a) $/, after: /^(her|are|a) /, instead: 'timer' },
  ],
  thyme: [
    {
      before: /\b(what|on|in|have|enough) $/,
      after: /^($|[,.?!]|(is|left|do|for dinner) )/,
      instead: 'time',
    },
  ],
  passed: [
    {
      before: new RegExp(`\\b(half|quarter|${count}) $`),
      after: new RegExp(`^${hour}\\b`),
      instead: 'past',
    },
  ],
  too: [
    { before: numbered, after: endOfChoice, instead: 'two' },
    { after: /^(minutes|hours) /, instead: 'two' },
    { before: toNumber, after: tensAfter, instead: 'two' },
    { before: /\b(one|won) (ten|twenty) $/, after: end, instead: 'two' },
    {
      before: new RegExp(`\\b(half|quarter|${count}|minutes) $`),
      after: new RegExp(`^${hour} `),
      instead: 'to',
    },
    {
      before: /\b(down|up|back|set|oven|turned it|gone|dropped it) $/,
      after: /^(\d|one |two |three |four |a hundred)/,
      instead: 'to',
    },
    {
      before: /\b(oh|hundred and|thirty|forty|fifty|sixty|seventy|eighty|ninety) $/,
      after: end,
      instead: 'two',
    },
    { after: heads, instead: 'two' },
    { before: headsBefore, after: headsOf, instead: 'two' },
  ],
  two: [
    { before: /\bquarter $/, after: new RegExp(`^${hour} `), instead: 'to' },
    // "since ten two five": minutes before an hour.
    {
      before: /\b(since|at|till|by|from|around) (five|ten|twenty|twenty five) $/,
      after: new RegExp(`^${hour} ($|[,.?!])`),
      instead: 'to',
    },
  ],
  to: [
    { before: numbered, after: endOfChoice, instead: 'two' },
    { after: /^(minutes|hours) /, instead: 'two' },
    { before: /\b(meant|mean|said) $/, after: tensAfter, instead: 'two' },
    { before: toNumber, after: tensAfter, instead: 'two' },
    { before: /(^|[,.] |\b(a|the|got|has|with|only) )$/, after: measured, instead: 'two' },
    { before: /(^|[,.] |\b(and|so|only|just) )$/, after: heads, instead: 'two' },
    {
      before: /\b(adults|grown ups|people|us|we are|there are) (and )?$/,
      after: headsOf,
      instead: 'two',
    },
    {
      before: /\b(oh|hundred and|thirty|forty|fifty|sixty|seventy|eighty|ninety) $/,
      after: end,
      instead: 'two',
    },
  ],
  for: [
    { before: /\b(that is|makes it|so) $/, after: /^(less|fewer|more) /, instead: 'four' },
    { before: numbered, after: endOfChoice, instead: 'four' },
    { before: headsBefore, after: headsOf, instead: 'four' },
    {
      before: /(?<!\b(convert|converted|switch|switched|ask|asking|price|priced|change|swap) )$/,
      after: /^(kilos|kilo|pounds|pound|lb|kg)( |$)/,
      instead: 'four',
    },
    // "the timer's on for thirty" runs so long.
    {
      before: new RegExp(`${toNumber.source}(?<! timers? (?:is )?on )(?<!^timers? (?:is )?on )`),
      after: tensAfter,
      instead: 'four',
    },
    { before: /(^|[,.] |\b(a|the|got|has|with|is) )$/, after: measured, instead: 'four' },
    {
      before: /(^|[,.] )$/,
      after: /^(people|of them|guests) (cancel|can|are|have|dropped)/,
      instead: 'four',
    },
    {
      before: /\bfor $/,
      after: /^(minutes|minute|people|of us|pounds|kilos|hours) /,
      instead: 'four',
    },
    { before: new RegExp(`\\b${tens} $`), after: end, instead: 'four' },
    {
      before: new RegExp(`\\b${tens} $`),
      after: /^(give|tell|let|shout|call|ring|beep|ping|holler|and|but|so|already|what|when) /,
      instead: 'four',
    },
    // "not ninety for eighty for".
    { before: new RegExp(`\\bnot (\\w+ )?${tens} $`), after: tensAfter, instead: 'four' },
    // "in since for thirty".
    { before: /\b(since|till|by|past) $/, after: tensAfter, instead: 'four' },
  ],
  four: [
    { before: /\b(it|pull it|go|going|out) $/, after: /^(medium|rare|well) /, instead: 'for' },
  ],
  fore: [
    { after: measured, instead: 'four' },
    { before: new RegExp(`\\b${tens} $`), after: end, instead: 'four' },
  ],
  sicks: [{ before: new RegExp(`\\b${tens} $`), instead: 'six' }],
  no: [{ before: /\blet (me|us) $/, after: /^(when|if|once|as soon) /, instead: 'know' }],
  forth: [{ before: new RegExp(`\\b${tens} $`), instead: 'four' }],
  // "Are we grand for six", "that's grand", as in Ireland.
  grand: [
    {
      before: /\b(is|are|all|we|it|am|be|be all|going|looks|look|that|now|still) $/,
      instead: 'fine',
    },
  ],
  arf: [{ instead: 'half' }],
  alf: [
    {
      after: /^(past|hour|an|a|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) /,
      instead: 'half',
    },
  ],
  ate: [
    // "twenty to ate", "ten not ate".
    {
      before: /\b(minutes|five|ten|twenty|quarter|five) to $|\b(past|half|not) $/,
      after: end,
      instead: 'eight',
    },
    { before: /(^|\b(and|are|got|have|be|we|so) |[,.] )$/, after: headsOf, instead: 'eight' },
    {
      before: new RegExp(`\\b(at|by|around|about|half|past|till|${tens}|quarter to) $`),
      instead: 'eight',
    },
    { before: /(^|[,.] |\b(for|there are|we are|of) )$/, after: heads, instead: 'eight' },
    { after: /^(minutes|minute|oclock|degrees|hours) /, instead: 'eight' },
    {
      before: /\b(be|are|for|makes|of) $/,
      after: /^(for (dinner|lunch|supper|tea)|coming|at the table|tonight|altogether|now|in all) /,
      instead: 'eight',
    },
  ],
  won: [
    { after: /^hundred /, instead: 'one' },
    {
      before: new RegExp(`\\b(${tens}|option|number|the|that|this|other|choice) $`),
      instead: 'one',
    },
  ],
  wun: [{ instead: 'one' }],
  mr: [{ after: /^($|[,.?!])/, instead: 'medium rare' }],
  pots: [{ after: /^(in|are in|out|are out|on) /, instead: 'potatoes' }],
};

/** Alone in answer to a question, these can only be the number. */
const alone: Record<string, string> = {
  for: 'four',
  fore: 'four',
  to: 'two',
  too: 'two',
  won: 'one',
  ate: 'eight',
};
/** Alone in answer to "is that so", these can only be yes or no. */
const yesOrNo: Record<string, string> = {
  ...{
    know: 'no',
    knows: 'no',
    now: 'no',
    noe: 'no',
    nine: 'no',
    nein: 'no',
    nay: 'no',
    neigh: 'no',
  },
  ...{ non: 'no', nyet: 'no', niet: 'no', nej: 'no', nee: 'no', none: 'no' },
  ...{
    see: 'yes',
    sea: 'yes',
    we: 'yes',
    wee: 'yes',
    ya: 'yes',
    ye: 'yes',
    yeh: 'yes',
    eye: 'yes',
  },
  ...{ hi: 'yes', guess: 'yes', chess: 'yes', jess: 'yes', yet: 'yes', yessir: 'yes', yas: 'yes' },
  ...{
    hai: 'yes',
    haan: 'yes',
    han: 'yes',
    tak: 'yes',
    sim: 'yes',
    claro: 'yes',
    vale: 'yes',
    jawohl: 'yes',
  },
  ...{ genau: 'yes', shore: 'sure', write: 'right', rite: 'right', collect: 'correct', yar: 'yes' },
};
const choices: Record<string, string> = {
  ...{
    tree: 'three',
    free: 'three',
    tu: 'two',
    wan: 'one',
    fist: 'first',
    furst: 'first',
    thurd: 'third',
  },
};
const asksANumber = /^(guests|choice|reading|serving-time|roast|doneness)$/;

/** Two or three words written for one. */
const pairs: Record<string, string> = {
  'bone less': 'boneless',
  'sir loin': 'sirloin',
  'tender loin': 'tenderloin',
  'top side': 'topside',
  'fore rib': 'forerib',
  'instant read': 'instant-read',
  'instant red': 'instant-read',
  'leave in': 'leave-in',
  'leaving probe': 'leave-in probe',
  'leaving thermometer': 'leave-in thermometer',
  'p m': 'pm',
  'a m': 'am',
  'veg only': 'vegetarian',
  'pure veg': 'vegetarian',
  'pure vegetables': 'vegetarian',
  'pre heated': 'preheated',
  'pre heating': 'preheating',
  'pre heat': 'preheat',
  'with out': 'without',
  'that is all ready': 'that is all ready',
  'are all ready': 'are all ready',
  'is all ready': 'is all ready',
  'all ready': 'already',
  'every one': 'everyone',
  'every body': 'everybody',
  'horse radish': 'horseradish',
  'rose mary': 'rosemary',
  'york shirts': 'yorkshire puddings',
  'york shires': 'yorkshire puddings',
  'yorkshire puds': 'yorkshire puddings',
  'gray vee': 'gravy',
  'grey vee': 'gravy',
  'corn starch': 'cornflour',
  'par boiled': 'parboiled',
  'part boiled': 'parboiled',
  'left overs': 'leftovers',
  'tide back': 'tied back',
  'too date': 'to date',
  'gas march': 'gas mark',
  'yorkshire pudding': 'yorkshire puddings',
  'pot roast': 'pot roast',
};

export function homophones(
  tokens: readonly Token[],
  context: Pick<ReadContext, 'expecting'>,
): Token[] {
  const words = tokens.filter((token) => !/^[,.?!]$/.test(token.word));
  const only = words.length === 1 ? words[0]! : undefined;
  if (only && alone[only.word] && asksANumber.test(context.expecting ?? ''))
    return [{ ...only, word: alone[only.word]! }];
  const answers =
    context.expecting === 'confirmation'
      ? yesOrNo
      : context.expecting === 'choice'
        ? choices
        : undefined;
  if (only && answers && Object.hasOwn(answers, only.word))
    return [{ ...only, word: answers[only.word]! }];
  const joined = pairedUp(tokens);
  const line = joined.map((token) => token.word);
  return joined.flatMap((token, at) => {
    const known = Object.hasOwn(rules, token.word) ? rules[token.word]! : [];
    if (known.length === 0) return [token];
    const before = line
      .slice(Math.max(0, at - 4), at)
      .map((word) => `${word} `)
      .join('');
    const after = line
      .slice(at + 1, at + 5)
      .map((word) => `${word} `)
      .join('');
    const rule = known.find(
      (one) => (one.before?.test(before) ?? true) && (one.after?.test(after) ?? true),
    );
    if (!rule) return [token];
    // Later rules see what earlier words became.
    line[at] = rule.instead;
    return rule.instead.split(' ').map((word) => ({ ...token, word }));
  });
}

const teas: Record<string, string> = {
  ...{ twen: 'twenty', thir: 'thirty', four: 'forty', for: 'forty', fore: 'forty', fif: 'fifty' },
  ...{ six: 'sixty', sicks: 'sixty', seven: 'seventy', eight: 'eighty', ate: 'eighty' },
  ...{ nine: 'ninety', nein: 'ninety' },
};

/** "ate tea nine": a number that ends in -ty, where a number may stand and a meal may not. */
function teaFor(word: string, tea: string, before = '', after = ''): string | undefined {
  if (tea !== 'tea' || !Object.hasOwn(teas, word)) return undefined;
  const unit = /^(one|two|three|four|five|six|seven|eight|nine|won|to|too|for|fore|ate|sicks)$/;
  const led = /^(at|is|says|reads|read|reading|shows|now|on|to|hundred|and|red|)$/;
  const alone = /^(twen|thir|fif)$/.test(word);
  return alone || (unit.test(after) && led.test(before)) ? teas[word] : undefined;
}

function pairedUp(tokens: readonly Token[]): Token[] {
  const out: Token[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const next = tokens[at + 1];
    const pair = next
      ? (teaFor(token.word, next.word, tokens[at - 1]?.word, tokens[at + 2]?.word) ??
        pairs[`${token.word} ${next.word}`])
      : undefined;
    if (
      pair === undefined ||
      next === undefined ||
      (/^(you|to) $/.test(`${tokens[at - 1]?.word ?? ''} `) && token.word === 'leave')
    ) {
      out.push(token);
      continue;
    }
    for (const word of pair.split(' ')) out.push({ word, from: token.from, to: next.to });
    at += 1;
  }
  return out;
}
