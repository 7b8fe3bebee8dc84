/**
 * Cuts English into clauses and says in which mood each is spoken. Words that only open or close a
 * clause ("right, so", "now, mate") fall away, so that a phrase can be anchored at both ends.
 */
import type { ReadContext } from '../../kitchen/heard.ts';
import { type Clause, lineOf } from '../clause.ts';
import { nameIn } from '../names.ts';
import type { Quantity } from '../quantity.ts';
import type { Token } from '../token.ts';
import { isForeign, moodOf, questionOr, withoutPoliteness } from './mood.ts';
import { isSetting } from './recognisers/moment-of.ts';
import { dishExactlyIn, longestNameAt } from './steps.ts';
import { closesAClause, toldAnew } from './told-anew.ts';
import { isUncardedName } from './uncarded-dishes.ts';

const conjunctions = /^(and|but|then|so|plus|also|while|although|though|because|or)$/;
const ends = /^[.?!]$/;

const opening =
  /^(ok|so|well|right|and|but|hey|hi|hello|oh|yes|all|now|listen|also|then|look|yo|chef|mate|love|dear|like|sorry|there|listen up|what a palaver|they said|they say|they called|they called to say|they rang|they rang to say|they texted|they phoned|they messaged|they reckon|they tell me|morning|evening|plus|because|in the end|all told|after all that|well done you|well done everyone|well done everybody|i said|as i said|like i said|i did say|i think|i reckon|i believe|it looks like|looks like|seems like|good news|bad news|guess what|by the way|to say|so you know|for your information|fyi|quick update|update|as of now|at the moment|right now|all right|ok so|i see|i can tell you|i have to say|heads up|no worries|there we go|here we go) $/;
const closing =
  /^(give or take|or thereabouts|thereabouts|now|then|mate|love|chef|dear|guys|folks|ok|yes|already|thanks|cheers|again|though|so far|right now|at the moment|just now|for you|i think|i reckon|i believe|i would say|by the way|thank you|for now|at last|already then|or so|there|too|as well|to be honest|apparently|everyone|everybody|darling|buddy|petal|pet|hen|sugar|hon|honey|sweetie|luv|pal|lads|bud|boss|dude|man|my love|my dear|today|would you|will you|could you|can you|if you can|if possible|if you would|for me|what you (told|said|say|asked)|(as|like|what) you (told|said to|asked|showed) (me|us)|(like|as) (you|i|we) (said|told me|asked|wanted|planned|agreed)|as (instructed|planned|agreed|discussed|ordered|requested)) $/;

export function clausesOf(
  tokens: readonly Token[],
  quantities: readonly Quantity[],
  context: ReadContext,
): Clause[] {
  const clauses: Clause[] = [];
  let part: Token[] = [];
  let asked = false;
  /** Whether an "and" led here without a stop before it. */
  let goesOn = false;
  /** What closed the clause before. */
  let lastEnd = '.';
  /** When a look was taken: what it showed is told in the clause after it. */
  let looked: Pick<WithoutMoment, 'minutesAgo' | 'at'> | undefined;
  const close = (mark: string): void => {
    const moment = withoutMoment(part, quantities, context);
    const { tokens: told } = moment;
    const shown = looked !== undefined && seen.test(lineOf(told)) ? looked : undefined;
    const minutesAgo = moment.minutesAgo ?? shown?.minutesAgo;
    const happened = moment.at ?? shown?.at;
    const hour = hourAlone(told, quantities);
    const before = clauses.at(-1);
    if (hour && before && mark !== '?' && deed.test(` ${lineOf(before.tokens)}`)) {
      // "it's out, four o'clock on the dot": when that was.
      before.at ??= hour;
      part = [];
      return;
    }
    const bare = withoutPoliteness(greeting.test(lineOf(told)) ? told : trimmed(told));
    const said = part;
    part = [];
    const timed =
      minutesAgo !== undefined &&
      /^(oh |it )?(must be|must have been|it is|that is|it was|that was|was|been|it would be|would be) $/.test(
        lineOf(bare),
      );
    const last = clauses.at(-1);
    if (mark === '?' && last && !ends.test(lastEnd) && tag.test(lineOf(bare))) {
      // "it comes out at 55, yes?" asks.
      last.mood = questionOr(last.mood);
      asked = false;
      return;
    }
    lastEnd = mark;
    const ledOn = goesOn;
    goesOn = false;
    looked =
      (minutesAgo !== undefined || happened !== undefined) && looking.test(lineOf(bare))
        ? { ...(minutesAgo === undefined ? {} : { minutesAgo }), at: happened }
        : undefined;
    if (bare.length === 0 || timed) {
      // "it's out, five minutes ago": said of what came before.
      // "Half an hour ago", in answer to when: there is nothing but the moment.
      if (!last && minutesAgo !== undefined && context.expecting === 'step') {
        clauses.push({ tokens: [{ ...said[0]!, word: 'then' }], mood: 'statement', minutesAgo });
        return;
      }
      if (last && minutesAgo !== undefined) last.minutesAgo ??= minutesAgo;
      if (last && happened !== undefined) last.at ??= happened;
      if (ends.test(mark)) asked = false;
      return;
    }
    const tagged = lineOf(bare).replace(tagEnd, '');
    const mood =
      mark === '?' || tagged !== lineOf(bare)
        ? questionOr(moodOf(tagged === '' ? lineOf(bare) : tagged))
        : moodOf(lineOf(bare));
    const subordinate =
      asked && mood === 'statement' && !/ (is|are|was|has|have) /.test(` ${lineOf(bare)}`);
    // "if the dial says 250 and it's really 280": supposed too.
    const supposed =
      ledOn &&
      mood === 'statement' &&
      last?.mood === 'story' &&
      supposing.test(lineOf(last.tokens));
    clauses.push({
      tokens: bare,
      mood: supposed ? 'story' : subordinate ? 'question' : mood,
      ...(minutesAgo === undefined ? {} : { minutesAgo }),
      ...(happened === undefined ? {} : { at: happened }),
    });
    asked =
      !ends.test(mark) &&
      (mood === 'question' || (mood === 'story' && !isForeign(lineOf(bare)))) &&
      mark !== '|';
  };
  const left = withoutRemainder(tokens);
  return clausesIn(left);

  function clausesIn(tokens: readonly Token[]): Clause[] {
    for (let at = 0; at < tokens.length; at++) {
      const token = tokens[at]!;
      // "so take it out, or?" asks.
      if (token.word === 'or' && tokens[at + 1]?.word === '?') {
        close('?');
        const last = clauses.at(-1);
        if (last) last.mood = questionOr(last.mood);
        at += 1;
        continue;
      }
      // "fine for her or not", "46, out or no" ask.
      if (
        token.word === 'or' &&
        /^(not|no)$/.test(tokens[at + 1]?.word ?? '') &&
        /^(|[.?!])$/.test(tokens[at + 2]?.word ?? '')
      ) {
        close('?');
        at += 1;
        continue;
      }
      if (token.word === ',' && runsOn(part, tokens, at)) {
        // "they'll be late, maybe half an hour" is one breath.
      } else if (ends.test(token.word) || token.word === ',' || token.word === '|') {
        // The mark of the sentence reaches back over its commas when nothing new began.
        close(token.word === ',' ? ',' : token.word);
      } else if (
        token.word === 'also' &&
        (/^(is|are|am|will|have|has|would|should|can|i|we|they)$/.test(part.at(-1)?.word ?? '') ||
          /^(can|could|does|would|is|will) (it|that|this) $/.test(lineOf(part.slice(-2))) ||
          (part.length > 0 && /^<[a-z]\d+>$/.test(tokens[at + 1]?.word ?? '')))
      ) {
        // "they are also coming", "we serve also one hour before" go on.
      } else if (
        token.word === 'well' &&
        part.length > 2 &&
        /^(it|she|he|we|i|the|they|no|yes|now)$/.test(tokens[at + 1]?.word ?? '') &&
        !/^(as|very|medium|is|are|pretty|going|not|quite|cooked|done|sleep|so|too|how|do|does|doing|went)$/.test(
          part.at(-1)!.word,
        )
      ) {
        // "ninety something, well, it's 106 now".
        close(',');
      } else if (token.word === 'oh' || (token.word === 'ok' && comesBack(part, tokens, at))) {
        close(',');
      } else if (
        token.word === 'so' &&
        part.length > 0 &&
        degree.test(tokens[at + 1]?.word ?? '')
      ) {
        part.push(token);
      } else if (
        token.word === 'plus' &&
        /^<d/.test(tokens[at + 1]?.word ?? '') &&
        /^(by|of|it|is)$/.test(part.at(-1)?.word ?? '')
      ) {
        // "by +40 min" is by forty minutes.
      } else if (
        token.word === 'plus' &&
        /^<[nt]/.test(tokens[at + 1]?.word ?? '') &&
        /^(fridge|refrigerator|freezer|cooler|at|was|has)$/.test(part.at(-1)?.word ?? '')
      ) {
        // "from the fridge, plus four": over freezing.
      } else if (
        token.word === 'plus' &&
        part.length === 0 &&
        /^<n/.test(tokens[at + 1]?.word ?? '')
      ) {
        // "plus one for Tara" is a guest.
        part.push(token);
      } else if (
        token.word === 'plus' &&
        /^<n/.test(tokens[at + 1]?.word ?? '') &&
        /^(|[,.?!])$/.test(tokens[at + 2]?.word ?? '')
      ) {
        // "same as before plus one" likewise.
        close(',');
        part.push(token);
      } else if (
        token.word === 'as' &&
        part.length >= 3 &&
        /^(in|out|on|done|down|up)$/.test(part.at(-1)!.word) &&
        /^(the|i|we)$/.test(tokens[at + 1]?.word ?? '')
      ) {
        // "yorkshires went in as the roast came out": two events.
        close(',');
      } else if (
        token.word === 'the' &&
        part.length >= 3 &&
        /^(minute|moment|second)$/.test(tokens[at + 1]?.word ?? '') &&
        /^(the|i|we)$/.test(tokens[at + 2]?.word ?? '') &&
        /^(in|out|on|done|down|up)$/.test(part.at(-1)!.word)
      ) {
        // "the moment the roast came out" likewise.
        close(',');
        at += 1;
      } else if (
        token.word === 'with' &&
        part.some(({ word }) => /^(went|put|gone|in)$/.test(word)) &&
        /^(the )?oven /.test(lineOf(tokens.slice(at + 1, at + 3))) &&
        tokens.slice(at + 2, at + 8).some(({ word }) => /^<[ntg]/.test(word))
      ) {
        // "went in at ten past two with the oven at 230": a deed, and what the oven stands at.
        close(',');
      } else if (
        conjunctions.test(token.word) &&
        !whileItRests(tokens, at) &&
        !joinsNames(part, tokens, at, context)
      ) {
        const runsOnFromHere = token.word === 'and' && part.length > 0;
        close(',');
        goesOn = runsOnFromHere;
      } else if (beginsAnew(part, tokens, at, context)) {
        close(',');
        part.push(token);
      } else part.push(token);
    }
    close('.');
    return clauses;
  }
}

/** What follows this is not so yet. */
const supposing = /^(?:so |and |but )?(?:if|supposing|suppose|imagine) /;

/** After a clause these ask whether it is so. */
const tag = /^(?:yes|no|right|or|correct|true|is it not|or what|or not)? $/;
/** At the end of a clause it asks as well. */
const tagEnd =
  /(?<= )(?:is not it|are not they|is not that|was not it|do not you think|does not it|innit|will i|shall i|will we|shall we) $/;
/** A look at the core, and no more. */
const looking =
  /^(?:i |we )?(?:have )?(?:read|measured|checked|looked|tested|probed|took|had|stuck)(?: (?:it|on|at|the|a|my|temperature|reading|roast|meat|joint|look|probe|thermometer|in))* $/;
/** What a look showed. */
const seen =
  /^(?:it (?:was|had|read|said|showed|made|gave|is)|there it (?:was|had)|was|got|read|said|i (?:got|saw|had))? ?<[nt]\d+> (?:degrees |then |in the middle |inside )*$/;

/** "there's a man at the door okay I'm back": the cook turns to the helper again. */
const comesBack = (part: readonly Token[], tokens: readonly Token[], at: number): boolean =>
  part.length > 2 &&
  !/^(is|are|am|be|was|that|it|looks|look|look|an|the|all|feel|feeling|says|said)$/.test(
    part.at(-1)!.word,
  ) &&
  /^(i|we|so|now|the|what|how|can|keep|carry|go|let|when|where|it|they|back|next|right)$/.test(
    tokens[at + 1]?.word ?? '',
  );

/** "48 degrees, still two to go": what is left is said of what stands before it, and is no second report. */
function withoutRemainder(tokens: readonly Token[]): Token[] {
  const line = lineOf(tokens);
  const match =
    /(?<= )(?:(?:still|only|just|so|with|another) ){0,2}<[nt]\d+> (?:more |degrees )?(?:still )?(?:to go|left to go|off target|short of target|off it yet|shy)(?= (?:$|[,.?!|]|and|so|then|but))/.exec(
      line,
    );
  if (!match || !/<[a-z]\d+>/.test(line.slice(0, match.index))) return [...tokens];
  const start = line.slice(0, match.index).split(' ').length - 1;
  const count = match[0].split(' ').length;
  return [
    ...tokens.slice(0, start),
    { ...tokens[start]!, word: ',' },
    ...tokens.slice(start + count),
  ];
}

/** "so long", "so low": how much, not what follows. */
const degree =
  /^(long|much|many|far|soon|early|late|low|hot|slow|good|bad|hard|cold|high|little|few|often|big|dry|tough|quickly|slowly|salty|pink|rare|well|close|thick|thin|important|smoky|brown)$/;

/** "crept up to 131 while resting": when it was, and no second report. */
const whileItRests = (tokens: readonly Token[], at: number): boolean =>
  tokens[at]!.word === 'while' &&
  tokens.slice(at + 1, at + 4).some((token) => /^(rest|rests|resting)$/.test(token.word));

const greeting =
  /^(hello|hi|hey|yo|morning|evening|afternoon|good (morning|evening|afternoon|day|night)|well done|nice one|good job|great job)( (there|again|chef|helper|all|everyone|friend|to you))? $/;

const approximately = /^(about|around|some|maybe|roughly|like|say|this|for)$/;

interface WithoutMoment {
  tokens: Token[];
  minutesAgo?: number;
  at?: Quantity;
}

/**
 * "I turned it down ten minutes ago", "it was 70 at ten past one": when it was stands apart from what
 * it was, so that every phrase may carry a moment. An hour is taken for one only beside a report.
 */
function withoutMoment(
  part: readonly Token[],
  quantities: readonly Quantity[],
  context: ReadContext,
): WithoutMoment {
  const of = (token: Token | undefined): Quantity | undefined =>
    token && /^<[a-z]\d+>$/.test(token.word)
      ? quantities[Number(token.word.slice(2, -1))]
      : undefined;
  for (let at = 0; at < part.length; at++) {
    const quantity = of(part[at]);
    if (!quantity) continue;
    const after = part[at + 1]?.word;
    const before = part[at - 1]?.word ?? '';
    const minutes =
      quantity.kind === 'duration'
        ? quantity.minutes
        : quantity.kind === 'number' && after === 'ago' && quantity.value < 60
          ? quantity.value
          : undefined;
    if (
      minutes !== undefined &&
      (after === 'ago' ||
        (/^(back|since)$/.test(after ?? '') &&
          report.test(lineOf([...part.slice(0, at), ...part.slice(at + 2)])) &&
          !/^(the|<.*)$/.test(part[at + 2]?.word ?? '')))
    ) {
      const start = approximately.test(before) ? at - 1 : at;
      return { tokens: [...part.slice(0, start), ...part.slice(at + 2)], minutesAgo: minutes };
    }
    // "since ten minutes", "before ten minutes": as other languages say it.
    if (
      quantity.kind === 'duration' &&
      after === 'before' &&
      (part[at + 2]?.word === 'it' ||
        (part.length === at + 2 && report.test(` ${lineOf(part.slice(0, at))}`)) ||
        (at === 0 && lookedBefore.test(lineOf(part.slice(2)))))
    )
      return {
        tokens: [...part.slice(0, approximately.test(before) ? at - 1 : at), ...part.slice(at + 2)],
        minutesAgo: quantity.minutes,
      };
    if (quantity.kind === 'duration' && /^(since|before)$/.test(before) && part.length > 3)
      return {
        tokens: [...part.slice(0, at - 1), ...part.slice(at + 1)],
        minutesAgo: quantity.minutes,
      };
    const hour =
      !isSetting(quantity, context) &&
      (quantity.kind === 'clock' ||
        (quantity.kind === 'number' &&
          quantity.face?.hour !== undefined &&
          !(
            quantity.value % 25 === 0 && / (top|bottom|oven|fan|shelf) /.test(` ${lineOf(part)}`)
          ) &&
          // "been in twelve minutes at 450": how long is said, so the number is how hot.
          !part.some(({ word }) => /^<d/.test(word)) &&
          (quantity.value >= 500 || (begun.test(lineOf(part)) && quantity.value > 212)) &&
          part.length > 2) ||
        (quantity.kind === 'number' &&
          quantity.value >= 1 &&
          quantity.value <= 12 &&
          Number.isInteger(quantity.value) &&
          begun.test(lineOf(part))));
    if (hour && /^(at|since|from)$/.test(before) && report.test(` ${lineOf(part)}`))
      return { tokens: [...part.slice(0, at - 1), ...part.slice(at + 1)], at: quantity };
    // "searing since 2:40", "on the back ring since twelve": from then to now, whatever the verb.
    if (before === 'since' && at > 1 && (hour || isHour(quantity)))
      return { tokens: [...part.slice(0, at - 1), ...part.slice(at + 1)], at: quantity };
    // "38 at 17:40": a number and its hour, and nothing else.
    if (
      quantity.kind === 'clock' &&
      /^(?:it is |it was |was |up to )?<[nt]\d+> (?:degrees )?at <c\d+> $/.test(lineOf(part))
    )
      return { tokens: part.slice(0, at - 1), at: quantity };
    // "at half past, 92".
    if (quantity.kind === 'clock' && /^at <c\d+> <[nt]\d+> (?:degrees )?$/.test(lineOf(part)))
      return { tokens: part.slice(2), at: quantity };
    // "it read 82 at four, 90 at four thirty": as hot as a core, so no heads at an hour.
    const told = of(part[at - 2]?.word === 'degrees' ? part[at - 3] : part[at - 2]);
    if (
      before === 'at' &&
      isHour(quantity) &&
      (told?.kind === 'number' || told?.kind === 'temperature') &&
      told.value > 30 &&
      /^(?:it )?(?:is |was |up to |read |reads |said |showed )?<[nt]\d+> (?:degrees )?at <n\d+> $/.test(
        lineOf(part),
      )
    )
      return { tokens: part.slice(0, at - 1), at: quantity };
  }
  return { tokens: [...part] };
}

/** "quarter hour before I checked it": told of what was done, it is so long ago. */
const lookedBefore =
  /^(i|we) (have )?(checked|looked|measured|read|probed|tested|took|had|put|turned|started|pulled) /;

/** What has just happened, and so happened at the hour that follows it. */
const deed =
  /^ (?:the |my |our )?(?!they|guests|we |i )[a-z]+ (?:[a-z]+ )?(?:is |are |went |gone )?(?:in|out|on) (?:the oven |there )?(?:since (?:the )?[a-z]+ )?$|^(?!.* (dinner|supper|lunch|tea|eat|eating|guests|they|will|not|timer|oven|late|until|till) ).* (it|roast|joint|meat|beef|lamb|pork|potatoes|i|we|that) (is |has |have |just |went |came |got |put |took |pulled )+(it )?(out|in|resting|carved) $/;

/** The hour that a clause is made of, if of nothing else. */
function hourAlone(part: readonly Token[], quantities: readonly Quantity[]): Quantity | undefined {
  const mark = /^(?:at |it was |that was )?(<c\d+>) $/.exec(lineOf(part))?.[1];
  return mark ? quantities[Number(mark.slice(2, -1))] : undefined;
}

/** A bare number that a clock's face can show. */
const isHour = (quantity: Quantity): boolean =>
  quantity.kind === 'number' &&
  (quantity.face?.hour !== undefined ||
    (Number.isInteger(quantity.value) && quantity.value >= 1 && quantity.value <= 12));

/** What begins or ends at an hour, and at no temperature. */
const begun =
  /(went|gone|put|popped|slid|stuck|been|is|was|came|took|taken|pulled|got) (\w+ ){0,4}(in|into|out|on|oven) |started |roasting since|(in|out|on) at <|lit /;

/** Words of something that has happened, where no meal or errand is spoken of. */
const report =
  /^(?!.* (dinner|supper|lunch|tea|eat|eating|meal|food|sit|sitting|serve|kids|children|guests|folk|folks|people|everyone|everybody|they will|will|back|away|timer|alarm|remind|tomorrow|till) )(?! ?(i|we) have got (an?|some) ).* (went|put|came|took|taken|pulled|was|were|read|reads|reading|lit|turned|set|dropped|started|been|gone|in|out|popped|switched|got|said|placed|bunged|down|power|checked|looked|measured|kept|lowered|made|begun|probed|giving|gave) /;

const away =
  /^(i am |i will be |i have to |i have got to |i need to |i |got to |have to |need to |just )*(off|popping|pop|nipping|nip|heading|running|run|going|gone|stepping|step|dashing|dash|driving|fetching|fetch|collecting|collect|back|away|out|going out|off out|shower|having a (bath|shower|nap|lie down)) /;

/** What is late and the minutes of it belong together. */
function runsOn(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  const last = part.at(-1)?.word ?? '';
  // "timer, 90 seconds, for the mustard".
  const next0 = tokens[at + 1]?.word ?? '';
  if (/^(timer|alarm|countdown)$/.test(last) && part.length <= 4 && /^<[dn]\d+>$/.test(next0))
    return true;
  if (
    /^<[dn]\d+>$/.test(last) &&
    next0 === 'for' &&
    /^(a |set |new |the )*(timer|alarm|countdown) /.test(lineOf(part))
  )
    return true;
  // "off to get the wine, fifteen minutes tops".
  if (
    /^<d\d+>$/.test(tokens[at + 1]?.word ?? '') &&
    /^(|[,.?!]|tops|max|at|or|and)$/.test(tokens[at + 2]?.word ?? '') &&
    away.test(lineOf(part))
  )
    return true;
  if (!/^(late|early|delayed|behind|traffic|stuck|up|later|earlier|cold|hot|delay)$/.test(last))
    return false;
  let next = at + 1;
  while (
    /^(by|maybe|about|for|some|say|another|at|least|of|back|in|gone|be|will|i)$/.test(
      tokens[next]?.word ?? '',
    )
  )
    next += 1;
  const word = tokens[next]?.word ?? '';
  const after = tokens[next + 1]?.word;
  const ends = after === undefined || /^[,.?!|]$|^(or|they|i|maybe|and|degrees)$/.test(after);
  return ends && (/^<d\d+>$/.test(word) || (/^(cold|hot)$/.test(last) && /^<[nt]\d+>$/.test(word)));
}

const roasting = /^(sear|low-roast|rest|hold)$/;

/** "potatoes and beans are in", "six adults and two kids", "salt and pepper": one clause. */
function joinsNames(
  part: readonly Token[],
  tokens: readonly Token[],
  at: number,
  context: ReadContext,
): boolean {
  if (!/^(and|or|plus)$/.test(tokens[at]!.word)) return false;
  // "the potatoes need ten minutes and gravy is ready": a span of time is no name.
  if (/^<d/.test(part.at(-1)?.word ?? '') && /^[a-z]/.test(tokens[at + 1]?.word ?? ''))
    return false;
  // "mac and cheese": one dish.
  if (
    tokens[at]!.word === 'and' &&
    [1, 2, 3].some((length) => {
      const name = lineOf([...part.slice(-length), ...tokens.slice(at, at + 2)]).trim();
      return part.length >= length && isUncardedName(name);
    })
  )
    return true;
  // "either 98 or 89".
  if (
    tokens[at]!.word === 'or' &&
    /(^| )either <[nt]\d+> (degrees )?$/.test(lineOf(part)) &&
    /^<[nt]/.test(tokens[at + 1]?.word ?? '')
  )
    return true;
  // "between medium and rare".
  if (/(^| )between (the |a )?(rare|medium|medium rare|medium well) $/.test(lineOf(part)))
    return true;
  // "between 98 and 101".
  if (
    /(^| )between <[nt]\d+> (degrees )?$/.test(lineOf(part)) &&
    /^<[nt]/.test(tokens[at + 1]?.word ?? '')
  )
    return true;
  const next = tokens[at + 1]?.word ?? '';
  const second = tokens[at + 2]?.word ?? '';
  if (
    /^<n/.test(next) &&
    /^(kids|children|little|vegetarians|vegans|babies|toddlers|adults|grown|more|teenagers)$/.test(
      second,
    ) &&
    // "seventy nine and two more are coming": with the roast in, a number alone counts nobody.
    !(second === 'more' && part.length === 1 && roasting.test(context.stage ?? ''))
  )
    return true;
  if (/^(pepper)$/.test(next)) return true;
  // "Shaz and Kev have bailed".
  const later = lineOf(tokens.slice(at + 2, at + 8));
  if (
    tokens[at]!.word === 'and' &&
    part.length <= 2 &&
    !/^(it|that|this|yes|no|ok|i|we|they|everything|all|done)$/.test(part.at(-1)?.word ?? 'it') &&
    nameIn(context.lexicon.dishes, lineOf(part).trim()) === undefined &&
    /^[a-z]+$/.test(next) &&
    /^(have|are|can not|could not|will not|will|can) (\w+ )?(bailed|cancelled|dropped out|pulled out|cried off|coming|not coming|make it|joining|ill|poorly) /.test(
      later,
    )
  )
    return true;
  // "do I take it off at 118 or 120".
  if (
    tokens[at]!.word === 'or' &&
    /^<[nt]/.test(next) &&
    part.some((token) => /^<[nt]/.test(token.word)) &&
    /^(do|should|is|what|which|shall|can|does|would|am|are|will) /.test(lineOf(trimmed(part)))
  )
    return true;
  const words = trimmed(part).map((token) => token.word);
  if (words.length === 0 || words.length > 4) return false;
  if (words.some((word) => /^(is|are|was|were|in|out|on|went)$/.test(word))) return false;
  return (
    nameIn(context.lexicon.dishes, words.join(' ')) !== undefined &&
    /^(the|\p{L}+)$/u.test(next) &&
    tokens
      .slice(at + 1, at + 7)
      .some((token) =>
        /^(is|are|went|go|in|out|done|were|finished|ready|sorted|made|cooked|peeled|drained|burnt|prepped|prepared|chopped)$/.test(
          token.word,
        ),
      )
  );
}

const inverts =
  /^((will|would|can|could|should|shall) (a|an|the|i|we|it|that|this|they|those|my)|(do|did|am|are|have) (i|we)|(does|did|is|was) it) $/;
/** After these an inverted verb goes on, or belongs to what stands before it. */
const leadsToQuestion =
  /^(so|neither|nor|only|not|never|rarely|than|as|what|how|when|where|why|which|who|and|or|but|if|whether|that|the|a|all|everything|anything|thing|it|i|we|they|you|he|she|now|then|ok|well|right|oh|tell|me|know|see)$/;
const whWords =
  /^(what|how|when|where|why|which|who|whose|whether|tell|remind|wonder|wondering|know|that|than)$/;

/** Without a comma, a new subject with its verb begins a new clause: "it's out the potatoes are in". */
function beginsAnew(
  part: readonly Token[],
  tokens: readonly Token[],
  at: number,
  context: ReadContext,
): boolean {
  const asks = `${tokens[at]!.word} ${tokens[at + 1]?.word ?? ''} `;
  if (
    part.length > 0 &&
    /^(what (is|do|should|now|next|are)|how (long|much|do|many|are)|now what|when (do|is|will)|is (that|it|this)|(are|am|should|can|do|will) (we|i|it)) $/.test(
      asks,
    ) &&
    /^(done|ok|out|in|on|ready|finished|thanks|right|up|now|off|down|made|<.*|ago|degrees|yes|no|resting|carved|chef)$/.test(
      part.at(-1)!.word,
    ) &&
    !/^(what|how|when|why|where|tell|and)$/.test(part[0]!.word)
  )
    return true;
  if (asksAnew(part, tokens, at)) return true;
  // "so what's that, make it five forty".
  if (
    part.length > 1 &&
    /^make (it|that) <[a-z]\d+> $/.test(lineOf(tokens.slice(at, at + 3))) &&
    !/^(can|could|to|we|i|you|and|should|will|would|not|let|us|they|then|or|just)$/.test(
      part.at(-1)!.word,
    )
  )
    return true;
  // "on gas four, hang on, no, it's electric".
  if (
    part.length > 2 &&
    /^(hang|hold) on $/.test(asks) &&
    !/^(to|not|please|just|you)$/.test(part.at(-1)!.word)
  )
    return true;
  // "hundred five oven's still two fifty".
  if (
    /^<[nt]/.test(part.at(-1)?.word ?? '') &&
    /^((the|my) )?(oven (is|at|still|on|has)|(top|bottom|upper|lower|main|small|big|little|second|other|left|right|grill|large) oven) /.test(
      lineOf(tokens.slice(at, at + 3)),
    )
  )
    return true;
  // "couldn't find the carving knife will a bread knife do": what is inverted asks.
  if (
    part.length > 1 &&
    inverts.test(asks) &&
    !leadsToQuestion.test(part.at(-1)!.word) &&
    !part.some((token) => whWords.test(token.word))
  )
    return true;
  if (saidFirst(part, tokens, at) || toldAnew(part, tokens, at)) return true;
  if (part.length < 2) return false;
  // "got tarragon got mustard no cream": each thing by itself.
  if (
    part[0]!.word === 'got' &&
    /^(got|no)$/.test(tokens[at]!.word) &&
    part.every(({ word }) => /^[a-z]{3,}$/.test(word)) &&
    !/^(have|has|we|not|there|is)$/.test(part.at(-1)!.word)
  )
    return true;
  if (dishAnew(part, tokens, at, context)) return true;
  if (part.length < 3) return false;
  if (asksWhetherRight(part, tokens, at) || nextDeed(part, tokens, at)) return true;
  const before = part.at(-1)!.word;
  if (/^not (counting|including) $/.test(asks)) return true;
  // "it's back on now oven says 210": what shows a number, and its verb.
  if (
    closesAClause.test(before) &&
    /^(oven|probe|thermometer|roast|meat|beef|lamb|pork|joint|gravy|core|middle) (says|reads|is|are|shows|has) $/.test(
      asks,
    )
  )
    return true;
  // "it's 106 now that's fast isn't it".
  if (
    /^that is (?!when|where|what|how|why|all)/.test(lineOf(tokens.slice(at, at + 3))) &&
    /^(now|already|<.*)$/.test(before)
  )
    return true;
  // "people from six the salads at quarter to seven": each thing with its own hour.
  if (
    /^<[cn]\d+>$/.test(before) &&
    /^the [a-z]+ (right )?(at|from|for|by) <[cn]\d+> /.test(lineOf(tokens.slice(at, at + 5)))
  )
    return true;
  if (factAnew(part, tokens, at)) return true;
  if (secondReading(part, tokens, at)) return true;
  // "thick end says 91 thin end says 103": after a number, whatever reads another.
  if (
    /^<[nt]/.test(before) &&
    !countedOn.test(tokens[at]!.word) &&
    tokens
      .slice(at + 1, at + 5)
      .some(
        (token, offset) =>
          /^(says|reads|is|shows|at)$/.test(token.word) &&
          /^<[nt]/.test(tokens[at + 2 + offset]?.word ?? '') &&
          !tokens
            .slice(at + 1, at + 1 + offset)
            .some(({ word }) => /^[,.?!|]$|^<c/.test(word) || conjunctions.test(word)),
      )
  )
    return true;
  const pair = lineOf(tokens.slice(at, at + 2));
  if (
    (/^(it (went|came|needs)|they (went|came|need)) $/.test(pair) ||
      (/^it (says|reads|said|has|have|had|shows|marks|gives|makes) $/.test(pair) &&
        tokens.slice(at + 2, at + 5).some(({ word }) => /^<[nt]/.test(word)))) &&
    !/^(that|when|if|once|till|after|before|think|because|what|how|where|than|as|me|time|who|which|whether|and|but|or|the|hope|sure|since|unless|why|or|until|what)$/.test(
      before,
    ) &&
    !/^(when|what|how|where|why|who|if|once|tell|let)$/.test(part[0]!.word)
  )
    return true;
  if (
    /^(that|when|if|once|till|after|before|think|say|said|says|because|what|how|where|than|as|is|are|the|to|of|know|me|like|time|who|which|not|long|much|whether|do|does|did|can|should|could|hope|sure|since|unless|why|per|for|with|on|in|it|a|an|was|have|has|by|and|i|we|they|you|had)$/.test(
      before,
    )
  )
    return false;
  if (
    /^(when|what|how|where|why|who|is|are|do|does|did|can|could|should|will|if|once|tell|let)$/.test(
      part[0]!.word,
    )
  )
    return false;
  const two = `${tokens[at]!.word} ${tokens[at + 1]?.word ?? ''}`;
  if (/^it has been $/.test(lineOf(tokens.slice(at, at + 3)))) return true;
  // "twenty five minutes later they had to get petrol".
  if (
    /^(they|she|he) (had|has|have|got|missed)$/.test(two) &&
    /^(later|late|early|behind)$/.test(before)
  )
    return true;
  if (
    /^(it is|it looks|it smells|they look|they are|i have|i am|we have|we are|there is|there are|it reads|it was|guests are|what is|how long|how much|can you|can i|(he|she) (is|had|has|will)|remind me|wake me)$/.test(
      two,
    )
  )
    return true;
  const three = tokens
    .slice(at, at + 3)
    .map((token) => token.word)
    .join(' ');
  return (
    /^the \w+ (is|are|went|has|came|needs|need|says|reads)$/.test(three) ||
    /^i (do|did) not have $/.test(lineOf(tokens.slice(at, at + 4))) ||
    // "took it out too early I think it was 112".
    /^i (think|reckon|guess|believe) (it|we|they|the|that)$/.test(three) ||
    // "medium rare please my wife likes it pink".
    (/^(my|our) \w+ (is|has|likes|wants|needs|can|will|does|eats|hates)$/.test(three) &&
      /^(rare|medium|well|done|<[a-z]\d+>|here|out|in|on|late|coming|tonight|please|too|it|them)$/.test(
        before,
      )) ||
    // With its object named, it is no "potatoes I put in".
    /^i (did|put|turned|took|started|made|got|pulled|forgot|checked|left|set) (it|them|her|him)$/.test(
      three,
    )
  );
}

/** What a number counts, or what goes on after it, shows no number of its own. */
const countedOn =
  /^(of|people|persons|guests|adults|diners|heads|kids|children|coming|eating|sitting|serving|dinner|lunch|supper|tonight|today|for|ready|minutes|hours|degrees|pounds|kilos|bones?|ribs?)$/;

/** "out it's at fifty three", "gas mark one it is a very old stove": one word or number, then a sentence. */
const saidFirst = (part: readonly Token[], tokens: readonly Token[], at: number): boolean =>
  part.length === 1 &&
  aloneAndNext.some(
    ([alone, next]) => alone.test(part[0]!.word) && next.test(lineOf(tokens.slice(at, at + 2))),
  ) &&
  tokens.slice(at + 2, at + 4).filter(({ word }) => /^[a-z<]/.test(word)).length === 2;
/** What may stand alone, and how a sentence after it begins. */
const aloneAndNext: readonly (readonly [alone: RegExp, next: RegExp])[] = [
  [
    /^(out|in|done|resting|carved|ready|finished|<[gtw]\d+>)$/,
    /^(it is|it reads|it says|it was|i have|we have|that is) $/,
  ],
  [/^<n\d+>$/, /^(pulling|taking|hauling|whipping|getting) (it|her|him) $/],
];

/** "I put foil on top is correct?": a clause, and whether it is as it should be. */
const asksWhetherRight = (part: readonly Token[], tokens: readonly Token[], at: number): boolean =>
  /^is (correct|right|ok|normal|good|fine|all right) \? $/.test(lineOf(tokens.slice(at, at + 3))) &&
  /^(i|we|it|they|have|took|put) /.test(lineOf(part)) &&
  !/^(it|they|everything|all|that|this)$/.test(part.at(-1)!.word);

const toldBefore =
  /^(is|are|was|were|has|have|put|took|turned|opened|pulled|reads|says|went|came|got|seared|made|set|dropped|cranked|lit)$/;

/** "up to 450 took the meat out first": after a whole clause, the next thing that was done. */
const nextDeed = (part: readonly Token[], tokens: readonly Token[], at: number): boolean =>
  /^(took|put|opened|pulled|turned|tented|covered|cranked|knocked|moved|flipped|basted|drained) (it|them|the|her|my|all|foil) $/.test(
    lineOf(tokens.slice(at, at + 2)),
  ) &&
  /^(out|in|on|off|down|up|back|first|done|ready|board|table|counter|oven|<[tng]\d+>)$/.test(
    part.at(-1)!.word,
  ) &&
  part.some(({ word }) => toldBefore.test(word)) &&
  !/^(what|when|how|where|why|who|if|once|the one|do|did|should)$/.test(part[0]!.word);

/** "it's at 127 which way do I slice it", "the fridge is full how long can it stay out". */
function asksAnew(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  const before = part.at(-1)?.word ?? '';
  const asks = lineOf(tokens.slice(at, at + 2));
  const asked = question.test(asks) || howMuchOf.test(lineOf(tokens.slice(at, at + 3)));
  if (!asked || (part.length < 2 && !/(?:ed|ing)$/.test(before))) return false;
  // "Kev is already picking at it how long must he wait".
  if (before === 'it' && /^how (long|much) $/.test(asks))
    return part.length >= 4 && part.some(({ word }) => /^(is|are|was|has|went|came)$/.test(word));
  if (/^what else $/.test(asks)) return !/^(tell|me|know|see|and|or|of|about)$/.test(before);
  return !leadsOn.test(before);
}

const question =
  /^(what (instead|is|are|do|does|did|should|shall|can|will|else|time|happens|now|next|temperature)|how (long|much|many|do|does|is|are|should|far|hot)|when (do|does|is|are|should|will|can|shall|am)|which (one|way|is|do|of)|where (is|are|do|does|should|did)|why (is|are|do|does|did)) $/;
/** "how thick should the slices be". */
const howMuchOf =
  /^how (?!high )[a-z]+ (?:do|does|did|is|are|should|shall|can|could|will|would|must) $/;
/** After these a question word goes on. */
const leadsOn =
  /^(so|neither|nor|only|not|never|than|as|what|how|when|where|why|which|who|and|or|but|if|whether|that|the|a|i|we|they|you|he|she|tell|me|us|know|knows|knowing|see|ask|asks|asking|asked|wonder|wondering|sure|idea|clue|say|says|said|of|about|for|at|on|by|from|in|to|with|till|after|before|forget|forgot|forgotten|remember|explain|explains|understand|decide|depends|depending|matter|guess|check|care|is|was|are|exactly|remind|figure|out|find|tells|told|no|any|see|like|it|need|needs|leave|leaving|use|using|heat|eat|put|do|does)$/;

/** What a dish may be without a word more: "potatoes in", "yorkshires not in", "sauce mixed". */
const stateOfDish =
  /^(in|on|out|off|done|ready|made|finished|cooked|fine|peeled|mashed|washed|sliced|chopped|trimmed|drained|mixed|whisked|boiling|simmering|resting|warming|burnt|ruined|mush|raw)$/;
const endsAState = new RegExp(
  `${closesAClause.source}|${stateOfDish.source}|^(?:clean|dry|cold|gone|dressed|[a-z]{2,}[^e]ed)$`,
);
const isState = (word: string): boolean =>
  stateOfDish.test(word) || /^(?!.*(?:stuff|pudd|dress|topp)ing)[a-z]{3,}(?:ed|ing)$/.test(word);
const isOrHas = /^(is|are|was|were|went|need|needs|has|have|got|came|gone|been)$/;

/** Where the name of a dish or of the roast that begins here ends. */
function endOfName(tokens: readonly Token[], at: number, context: ReadContext): number | undefined {
  const start = /^(the|my)$/.test(tokens[at]?.word ?? '') ? at + 1 : at;
  return longestNameAt(
    tokens,
    start,
    (words) =>
      !words.some((word) => notInAName.test(word)) &&
      !stateOfDish.test(words.at(-1)!) &&
      (dishExactlyIn(words.join(' '), context) !== undefined ||
        isUncardedName(words.join(' ')) ||
        (words.length === 1 && roastNamed.test(words[0]!))),
  );
}
const notInAName =
  /^(ago|now|then|already|so|just|all|still|also|or|if|when|there|here|yer|your|put|took|got|what|how|done|made|ready|finished|out|off|the|of|in|on|at|for|with|to|it|they|i|we|and|that|is|are|was|were|been|not|has|have|went|need|needs|[^a-z].*)$/;
const roastNamed = /^(meat|roast|joint|lamb|beef|pork|crackling|crackle)$/;

/**
 * "keeping warm on the back burner beans aren't started", "potatoes in yorkshires not in carrots on": a dish
 * and its verb, or, where every dish has but its state, the next of them.
 */
function dishAnew(
  part: readonly Token[],
  tokens: readonly Token[],
  at: number,
  context: ReadContext,
): boolean {
  if (!endsAState.test(part.at(-1)!.word)) return false;
  const end = endOfName(tokens, at, context);
  if (end === undefined) return false;
  const verb = tokens[end]?.word ?? '';
  const next = tokens[end + 1]?.word ?? '';
  const doing =
    /^(i|we)$/.test(verb) && /^(start|started|put|did|have|peeled|cooked|made)$/.test(next);
  if (doing || isOrHas.test(verb)) return true;
  return (
    isState(/^(not|still|all|now)$/.test(verb) ? next : verb) &&
    isState(part.at(-1)!.word) &&
    endOfName(part, 0, context) !== undefined
  );
}

/** "make it half eight Sharon's train got cancelled": after the number of a whole clause, who did what. */
function factAnew(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  // "five pounds no bone medium well six people seven o'clock": each fact of the dinner by itself.
  if (
    part.filter(({ word }) => /^<[a-z]/.test(word)).length > 0 &&
    ((/^<c\d+>$/.test(tokens[at]!.word) &&
      /^(people|guests|us|rare|medium|well|done|bones|bone|boneless)$/.test(part.at(-1)!.word)) ||
      (/^<n\d+>$/.test(tokens[at]!.word) &&
        /^(rare|medium|well|done|bone|boneless)$/.test(part.at(-1)!.word) &&
        /^(people|guests|persons|adults|heads|eating|of)$/.test(tokens[at + 1]?.word ?? '')))
  )
    return true;
  if (!/^(<[a-z]\d+>|ago)$/.test(part.at(-1)!.word)) return false;
  if (
    /^(what|when|how|where|why|which|who|do|does|did|is|are|am|in|at|for|by|after|since|from|about|with|the|all|only|if|when|once|till|than)$/.test(
      part[0]!.word,
    )
  )
    return false;
  const first = tokens[at]!.word;
  if (!/^[a-z]{2,}$/.test(first) || functionWord.test(`${first} `)) return false;
  const next = tokens.slice(at + 1, at + 4).map((token) => token.word);
  const verb = next.findIndex((word) => finite.test(word));
  return (
    verb >= 0 &&
    !next
      .slice(0, verb)
      .some((word) => /^([,.?!|]|to|of|in|for|that|who|which|i|we|it|you|they|<.*)$/.test(word))
  );
}

const functionWord =
  /^(in|on|at|to|of|and|or|but|for|from|till|by|past|each|now|then|more|less|late|later|early|ago|behind|long|old|degrees|fan|other|if|when|which|who|that|is|are|was|has|have|will|can|so|because|people|persons|guests|heads|adults|kids|ways|timer|timers|alarm|minute|pound|bone|bones|rib|ribs|tall|deep|high|of|with|not|year|month|week|day|per|instead|tops|max|no|or|as|than|total|altogether|dinner|lunch|supper|percent|times|years|dishes|things|trays|pans|potatoes|slices|left|here|there|already|still|maybe|i|we|it|they|he|she) /;
const finite =
  /^(is|are|was|were|has|have|got|gets|says|said|called|cancelled|needs|wants|rang|texted|phoned|arrived|starts|leaves|comes|likes|gave|broke|died|missed)$/;

const places =
  'i|side|end|bit|part|spot|middle|centre|center|core|bone|edge|top|bottom|front|back|left|right|thick|thin|thickest|deep|deepest|probe|thermometer|instant-read|leave-in|quick|one|first|second|third|other|near|by|dead|fat|outside|inside|wireless|wired|hand|stick|little|big|digital|old|new|cable|wire|with|border|surface|instant|thermometers';
const ofPlaces = new RegExp(`^(?:(?:${places}|the|in|at|on|of|is|a|then|now|ago|<d\\d+>) ){1,5}$`);
const placed = new RegExp(` (?:${places}|now|ago|then) `);

/** "108 one side 112 the other", "thick end 108 thin end 117", "96 ten minutes ago 101 now". */
function secondReading(part: readonly Token[], tokens: readonly Token[], at: number): boolean {
  const isMark = (token: Token | undefined): boolean =>
    token !== undefined && /^<[nt]\d+>$/.test(token.word);
  if (part.filter(isMark).length !== 1) return false;
  const said = part.findIndex(isMark);
  const rest: Token[] = [];
  for (const token of tokens.slice(at)) {
    if (ends.test(token.word) || /^[,|]$/.test(token.word) || conjunctions.test(token.word)) break;
    rest.push(token);
  }
  if (rest.filter(isMark).length !== 1) return false;
  const next = rest.findIndex(isMark);
  const between = [...part.slice(said + 1), ...rest.slice(0, next)];
  const line = lineOf(between);
  if (!ofPlaces.test(line) || !placed.test(` ${line}`)) return false;
  // Whatever follows the last number is of it, and then each place follows its number.
  const follows = next + 1 < rest.length;
  return follows || said === 0 ? next === 0 : said === part.length - 1;
}

/** Without the words that only open or close it; a clause of nothing else is kept. */
export function trimmed(tokens: readonly Token[]): Token[] {
  let start = 0;
  let end = tokens.length;
  for (let moved = true; moved && start < end; ) {
    moved = false;
    for (const length of [4, 3, 2, 1]) {
      if (start + length >= end) continue;
      if (!opening.test(lineOf(tokens.slice(start, start + length)))) continue;
      // "there is", "all of them", "now we are ten", "right now", "like it rare" mean something.
      const next = tokens[start + length]!.word;
      if (
        length === 1 &&
        /^(is|are|of|back|will|would|we|done|cooked|set|rare|what)$/.test(next) &&
        /^(there|all|now|like|right|look|well)$/.test(tokens[start]!.word) &&
        !(tokens[start]!.word === 'well' && !/^(done|cooked)$/.test(next))
      )
        continue;
      // "plus one" is a guest, "now what" asks.
      if (length === 1 && tokens[start]!.word === 'plus' && /^<n/.test(next)) continue;
      if (
        length === 1 &&
        /^(now|then|so)$/.test(tokens[start]!.word) &&
        next === 'what' &&
        end - start < 4
      )
        continue;
      start += length;
      moved = true;
      break;
    }
  }
  for (let moved = true; moved && start < end; ) {
    moved = false;
    for (const length of [4, 3, 2, 1]) {
      if (end - length <= start) continue;
      const tail = lineOf(tokens.slice(end - length, end));
      if (!closing.test(tail)) continue;
      const before = tokens[end - length - 1]!.word;
      if (
        length === 1 &&
        /^(what|whats|is|come|that|over|from|is|up|till|and|say|how|do|are|it|start|begin|here|once|over|go|no|not)$/.test(
          before,
        ) &&
        /^(now|then|again|there|too|everyone|everybody|today|all)/.test(tail)
      )
        continue;
      // "which one do I believe" asks.
      if (/^i /.test(tail) && /^(do|did|should|shall|can|could|would|must|am)$/.test(before))
        continue;
      // "is it ok" asks.
      if (length === 1 && tail === 'ok ' && /^(it|that|this|they|be|is|are)$/.test(before))
        continue;
      end -= length;
      moved = true;
      break;
    }
  }
  return tokens.slice(start, end);
}
