/** The frame of an answer: when something was asked, one fitting value in a short clause is it. */
import { timeAfter } from '../../moment.ts';
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { moodOf } from '../mood.ts';
import { donenessOf } from '../recognisers/doneness.ts';
import { reading } from '../recognisers/temperatures.ts';
import { minutesIn, tableAt } from './time.ts';
import { holds } from './words.ts';

/** Words that make a value not an answer: it is unsure, or of something else. */
const unsure = / (between|or|either) /;

export const answerFrame: Frame = {
  name: 'answer',
  moods: ['statement', 'intention', 'request', 'negative', 'question', 'story'],
  build(match): Meaning | undefined {
    if (match.line.split(' ').length > 10) return undefined;
    // Of what others say only the label of the roast tells something.
    if (
      moodOf(match.line) === 'story' &&
      !(
        match.context.expecting === 'roast' &&
        / (label|sticker|ticket|packet|receipt|scales) (says|said) /.test(` ${match.line}`)
      )
    )
      return undefined;
    // "what's the number for medium" answers nothing.
    if (/^(what|how (do|does|long|hot)|when|why|which|where) /.test(match.line)) return undefined;
    switch (match.context.expecting) {
      case 'reading':
        return readingDenied(match) ?? readingAnswer(match);
      case 'serving-time':
        return timeAnswer(match);
      case 'guests':
        return guestsAnswer(match);
      case 'doneness':
        return donenessAnswer(match);
      case 'choice':
        return choiceAnswer(match);
      case 'roast':
        return roastAnswer(match);
      case 'confirmation':
        return confirmationAnswer(match);
      case 'step':
        return stepAnswer(match) ?? roastGoesOn(match);
      case undefined:
        return roastGoesOn(match);
    }
  },
};

const numberDenied = /^(?:no |it is |that is |it was |that was )*not (?:at |really )?(<[nt]\d+>) $/;

/** "It's not 88" says what it is not. */
function readingDenied(match: Match): Meaning | undefined {
  const denied = numberDenied.exec(match.line)?.[1];
  if (denied === undefined) return undefined;
  const slot = match.withGroups({ temperature: `${denied} ` });
  const { temperature, unit } = slot.temperature('temperature');
  return { intent: 'correct', was: temperature, ...(unit ? { unit } : {}) };
}

function onlyMark(match: Match, letters: string): string | undefined {
  const marks = match.marks(letters);
  return marks.length === 1 ? marks[0] : undefined;
}

const notYet =
  / (not (yet|quite|done|there|started|ready|looked|checked|got|had|been|managed|near|at all)|(have|has|had|did|is|are|was) not( \w+)?|nearly|almost|half ?way|halfway|getting there|not far off|still (at it|on it|doing|going|working|trying|to do|busy|waiting|looking|finding|got)|yet to|working on it|in progress|in the middle of|in the process|about to|soon|shortly|am still|on it now|any minute|any second|close|next on my list|forgot|forgotten|ran out of time) /;
const doneAlready =
  / (done|did|sorted|finished|ages ago|a while (ago|back)|long (ago|since|gone)|hours ago|already|taken care of|all set|complete|completed|ticked|tick|ready|in place|way ahead of you|one step ahead|beat you to it|ahead of you|consider it|in hand|handled|accomplished|nailed|wrapped up|out the way|out of the way|off the list|as of now) /;
const willDo =
  / (will do|on it|on my way|doing (it|that|them) (now|as we speak)|in a (minutes|sec|second|moment|mo|tick|bit)|right away|straight away|as we speak|got it|heard|yes chef|right you are|will get to it|will get on it|will see to it|gotcha|coming right up|leave it with me|about to|give me (a|two|five)|hang on|hold on|two secs|one sec|soon as i can|next thing) /;
const leaveOut =
  / (skip|skipping|pass|passing|leave (that|it|this)|not (doing|bothering|going to|having|for me|today|tonight|this time|worth)|will not be|do not want|can not be (bothered|arsed|fussed)|rather not|no need|never (do|bother)|give (it|that) a miss|move on|moving on|next one|not needed|life is too short) /;

/** A step was called: done, not yet, about to be, or left out, in however few words. */
function stepAnswer(match: Match): Meaning | undefined {
  if (match.line.split(' ').length > 8 || match.marks('ntcwg').length > 0) return undefined;
  const step = match.context.openSteps[0];
  const current = step ? { step } : {};
  // "It is", "they are", to "is it in".
  if (
    /^(it|they|that|he|she|all of it|all of them) (is|are|has|have|was|were|did|does) $/.test(
      match.line,
    )
  )
    return { intent: 'report-done', ...current };
  if (holds(match, aboutOther)) return undefined;
  if (holds(match, leaveOut)) return { intent: 'skip-step', ...current };
  if (holds(match, notYet) && !holds(match, / (not (wrong|bad|a problem)) /))
    return { intent: 'report-not-done', ...current };
  if (holds(match, willDo) && !holds(match, / (done|did|finished) /))
    return { intent: 'acknowledge' };
  const ago = match.minutesAgo;
  return (holds(match, doneAlready) || ago !== undefined) &&
    !holds(match, / (when|if|once|what|how) /)
    ? { intent: 'report-done', ...current, ...(ago === undefined ? {} : { minutesAgo: ago }) }
    : undefined;
}

/** Words of a matter of their own, beside which a short clause answers nothing. */
const aboutOther =
  / (oven|roast|joint|beef|meat|guests|people|gravy|potatoes|dinner|lunch|supper|timer|alarm|kids|he|she|his|her|they|you|your|phone|telly|homework|dog|door|why|what|how|where|probe|thermometer|temperature|power|wine|mum|dad|game|match|fire|smoke|rack|foil) /;

function readingAnswer(match: Match): Meaning | undefined {
  // "haven't looked yet", "can't get at it just now": there is none.
  if (
    match.marks('ntcdwgy').length === 0 &&
    match.line.split(' ').length <= 8 &&
    / (not (yet|looked|checked|got|had|taken|done|in yet|measured)|(have|has|did) not|two secs|in a (sec|second|minutes|moment|tick|bit)|about to|going to (check|look)|give me a|hang on|yet to) /.test(
      ` ${match.line}`,
    ) &&
    !/ (guests|rack|potatoes|gravy|you|they|he|she|understand|hear|catch|follow|trust|believe|get that) /.test(
      ` ${match.line}`,
    )
  )
    return / not /.test(` ${match.line}`)
      ? { intent: 'report-not-done' }
      : { intent: 'acknowledge' };
  const mark = onlyMark(match, 'nt') ?? lastOfNeighbours(match);
  if (!mark || holds(match, unsure) || match.marks('cdwg').length > 0) return undefined;
  if (holds(match, / (people|guests|pounds|minutes|oven|left|timer|bus|kids|dollars) /))
    return undefined;
  const one = match.withGroups({ temperature: `${mark} ` });
  return one.number('temperature') >= 20 ? reading(one) : undefined;
}

/** "Thirty three thirty four": two numbers side by side, a degree or two apart, are one look. */
function lastOfNeighbours(match: Match): string | undefined {
  const marks = /^(<[nt]\d+>) (?:degrees )?(<[nt]\d+>) (?:degrees )?$/.exec(match.line);
  if (!marks) return undefined;
  const [low, high] = [1, 2].map((at) => match.withGroups({ n: `${marks[at]} ` }).number('n'));
  return high! > low! && high! - low! <= 2 ? marks[2] : undefined;
}

function timeAnswer(match: Match): Meaning | undefined {
  const table = tableAt(match, onlyMark(match, 'c') ?? onlyMark(match, 'n'));
  if (table) return table;
  const minutes = minutesIn(match);
  return minutes !== undefined && holds(match, / in <d\d+> | from now | (time) /)
    ? { intent: 'set-serving-time', time: timeAfter(minutes, match.context) }
    : undefined;
}

const heads: readonly [RegExp, number][] = [
  [
    /^(me|myself|i|wife|husband|partner|mum|dad|mother|father|sister|brother|son|daughter|gran|grandma|grandad|granddad|nan|friend|girlfriend|boyfriend|aunt|auntie|uncle|cousin|neighbour|baby|toddler|boss|missus|fiancee?)$/,
    1,
  ],
  [/^(parents|grandparents|couple|twins|in-laws|laws)$/, 2],
];

/** "me and the wife, and her parents": people named one by one are counted. */
export function headsIn(match: Match): number | undefined {
  // "Eleven with the baby": the baby is in the number.
  const all =
    /(?:^|[, ])(<n\d+>) (?:of us )?(?:with|including|counting|if you count) (?!<)(?:the |my |our )?[a-z]+ $/.exec(
      match.whole,
    )?.[1];
  const counted = all && match.withGroups({ n: `${all} ` }).count('n');
  if (typeof counted === 'number' && counted > 0) return counted;
  // "Me and six others".
  const others =
    /^(?:me|myself|just me) (?:and|plus) (<n\d+>) (?:others?|more|friends|mates|guests|people)? ?$/.exec(
      match.whole,
    )?.[1];
  const beside = others && match.withGroups({ n: `${others} ` }).count('n');
  if (typeof beside === 'number') return beside + 1;
  let sum = 0;
  let found = 0;
  for (const word of match.whole.trim().split(' ')) {
    const mark = /^<n\d+>$/.test(word) ? match.quantityOfMark(word) : undefined;
    const value =
      mark?.kind === 'number' ? mark.value : heads.find(([shape]) => shape.test(word))?.[1];
    if (value === undefined) continue;
    sum += value;
    found += 1;
  }
  return found > 1 && Number.isInteger(sum) ? sum : undefined;
}

function guestsAnswer(match: Match): Meaning | undefined {
  // Counted once, over the whole text.
  if (match.before.some((one) => one.intent === 'set-guests')) return undefined;
  const total = / (?:so|makes|that is|altogether|total|equals) (<n\d+>) (?:of us )?$/.exec(
    match.whole,
  )?.[1];
  const sum = total && match.withGroups({ n: `${total} ` }).count('n');
  if (typeof sum === 'number' && sum > 0) return { intent: 'set-guests', count: sum };
  const named = holds(match, / (me|myself|wife|husband|parents|mum|dad|girlfriend|boyfriend|us) /)
    ? headsIn(match)
    : undefined;
  if (named !== undefined) return { intent: 'set-guests', count: named };
  const mark = onlyMark(match, 'n');
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  // "All of them bar two" says who has come.
  if (
    holds(match, / (all|everyone|everybody|lot) .*(bar|but|except|minus|save|apart from) /) &&
    match.context.stage !== 'planning'
  )
    return { intent: 'report-guests', state: 'partly-arrived' };
  if (quantity?.kind !== 'number' || !Number.isInteger(quantity.value)) return undefined;
  if (match.marks('cdtwg').length > 0 || holds(match, unsure)) return undefined;
  return { intent: 'set-guests', count: quantity.value };
}

function donenessAnswer(match: Match): Meaning | undefined {
  if (match.line === 'mr ') return { intent: 'set-doneness', doneness: 'medium-rare' };
  if (match.line === 'mw ') return { intent: 'set-doneness', doneness: 'medium-well' };
  const said = match.line.replace(/(instead of|rather than|but not|not (?!too)) .*/, '');
  const low = /\bpink\b.*\bnot (bloody|rare)/.test(match.line);
  const value = low ? 'medium' : donenessOf(said);
  if (value && !holds(match, / (not|never) /)) return { intent: 'set-doneness', doneness: value };
  if (low) return { intent: 'set-doneness', doneness: 'medium' };
  const mark = onlyMark(match, 'nt');
  if (!mark) return undefined;
  const one = match.withGroups({ temperature: `${mark} ` });
  return one.number('temperature') >= 40
    ? { intent: 'set-doneness', ...one.temperature('temperature') }
    : undefined;
}

/** "104 in the roast, or the oven?": which of the two it was. */
function placeAnswer(match: Match): { intent: 'choose'; option: 1 | 2 } | undefined {
  const named =
    /^(?:(?:it|that|this) (?:is|was) |in |from |of |on |inside )*(?:the |my )?(roast|meat|joint|beef|core|middle|probe|thickest (?:part|bit|end)|thick (?:part|bit|end)|centre|center|inside|oven|dial|oven thermometer|other one) $/.exec(
      match.line,
    )?.[1];
  if (named === undefined) return undefined;
  return { intent: 'choose', option: /oven|dial|other/.test(named) ? 2 : 1 };
}

/** Words that leave the choice to whoever asked. */
const eitherWay =
  / (whichever|either|whatever|you (choose|decide|pick)|do not mind|not (fussed|bothered)|no preference|up to you|dealer s choice|any of (them|those)|both sound|surprise me) /;

const ordinals: readonly [RegExp, number][] = [
  [/ (first|1st|former|top one) /, 1],
  [/ (second|2nd|latter|middle one) /, 2],
  [/ (third|3rd) /, 3],
  [/ (fourth|4th) /, 4],
];

function choiceAnswer(match: Match): Meaning | undefined {
  if (
    holds(match, eitherWay) &&
    match.marks('ntdcw').length === 0 &&
    !holds(match, / (first|second|third|guests|potatoes|wine|what if) /)
  )
    return { intent: 'unclear' };
  const place = placeAnswer(match);
  if (place) return place;
  // "not the first" says which it is not.
  if (
    /^not (the )?(first|second|third|fourth|last|<n\d+>|that|this)( one| option)? $/.test(
      match.line,
    )
  )
    return { intent: 'unclear' };
  const said = ` ${match.line.replace(/ (not|instead of|rather than) (the )?\w+ .*/, ' ')}`;
  const named = ordinals.filter(([shape]) => shape.test(said));
  // "the first says one thing, we'll go with the second": what they settle on.
  const settled =
    / (?:go|going|went|stick|settle|take|choose|pick|want|fancy|prefer|rather|do) (?:with |for |on )?(?:the |number |option )?(first|second|third|fourth|last|former|latter) /.exec(
      said,
    )?.[1];
  const settledAt = settled && ordinals.find(([shape]) => shape.test(` ${settled} `))?.[1];
  if (settledAt && named.length > 1) return { intent: 'choose', option: settledAt };
  if (
    named.length === 1 &&
    match.marks('ntdcw').length === 0 &&
    !/ (a|one|half a|per|every|split|this) second |(first|second)s |(at|love|last) first|first (of all|time|thing|name|class)| on the (left|right) /.test(
      said,
    )
  )
    return { intent: 'choose', option: named[0]![1] };
  const mark = onlyMark(match, 'n');
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  // "I'd rather the last of the three".
  const lastOf = / last (one )?(of|out of) (the |those |your )?<n\d+> /.test(said);
  if (quantity?.kind !== 'number' || (match.line.split(' ').length > 7 && !lastOf))
    return undefined;
  return Number.isInteger(quantity.value) && quantity.value >= 1 && quantity.value <= 9
    ? { intent: 'choose', option: quantity.value }
    : undefined;
}

/** "rib, 3 bone, 6.8": a number left over while the roast is described is its weight. */
function roastGoesOn(match: Match): Meaning | undefined {
  const last = match.before.at(-1);
  if (
    match.context.stage !== 'planning' ||
    last?.intent !== 'describe-roast' ||
    last.weight !== undefined ||
    !/^<n\d+> $/.test(match.line)
  )
    return undefined;
  return roastAnswer(match);
}

function roastAnswer(match: Match): Meaning | undefined {
  // "Seven six": pounds and ounces.
  const pair = /^<n\d+> <n\d+> $/.test(match.line) ? match.marks('n') : [];
  const [pounds, ounces] = pair.map((one) => match.withGroups({ n: `${one} ` }).count('n'));
  if (
    match.context.units.weight === 'lb' &&
    pounds !== undefined &&
    ounces !== undefined &&
    ounces < 16 &&
    pounds > 0 &&
    pounds < 30
  )
    return { intent: 'describe-roast', weight: pounds + ounces / 16, weightUnit: 'lb' };
  const mark = onlyMark(match, 'n');
  const quantity = mark ? match.quantityOfMark(mark) : undefined;
  if (holds(match, / (no|without|off) (the )?(bone|bones) /))
    return { intent: 'describe-roast', boneless: true };
  if (quantity?.kind !== 'number' || match.line.split(' ').length > 5) return undefined;
  const { weight } = match.context.units;
  // "11.2 lb, five of them": the weight is known, so these are bones.
  if (match.before.some((one) => one.intent === 'describe-roast' && one.weight !== undefined))
    return Number.isInteger(quantity.value) && quantity.value <= 8
      ? { intent: 'describe-roast', bones: quantity.value }
      : undefined;
  // "six twelve" of pounds is six pounds twelve ounces.
  if (
    weight === 'lb' &&
    quantity.value >= 100 &&
    quantity.face?.hour !== undefined &&
    quantity.face.minute < 16
  )
    return {
      intent: 'describe-roast',
      weight: quantity.face.hour + quantity.face.minute / 16,
      weightUnit: weight,
    };
  return quantity.value > 0 && quantity.value < 40
    ? { intent: 'describe-roast', weight: quantity.value, weightUnit: weight }
    : undefined;
}

function confirmationAnswer(match: Match): Meaning | undefined {
  if (match.line.split(' ').length > 7) return undefined;
  if (/^<n\d+> percent $/.test(match.line)) return { intent: 'affirm' };
  if (match.marks('ntcdw').length > 0) return undefined;
  const place = placeAnswer(match);
  if (place) return place.option === 1 ? { intent: 'affirm' } : place;
  if (
    holds(
      match,
      / (wrong|incorrect|nope|nay|nein|non|negative|no|not|never|misheard|neither|rather not|leave it|forget it|stay as|as it is|as is|as they are|changed my mind|hold off|scrap that|nah) /,
    ) &&
    !holds(match, / (why not|no problem|not a problem|not wrong) /)
  )
    return { intent: 'deny' };
  return holds(
    match,
    / (right|correct|sure|mhm|naturally|bet|say so|the boss|you know best|trust you|your call|whatever you (say|think|reckon)|go with that|might as well|may as well|could do|would do|crack on|crack away|up for that|all for it|happy with that|in favour|why ever not|suits|works|positive|percent|doubt|did|think so|suppose so|guess so|sounds good|course|go|yes|aye|si|ja|oui|da|yup|definitely|certainly|absolutely|exactly|confirmed|spot on|bang on|got it|fair enough|please|do|it is|it does|that is it|indeed|ok|fine|true|agreed|affirmative|why not|deal|good) /,
  )
    ? { intent: 'affirm' }
    : undefined;
}
