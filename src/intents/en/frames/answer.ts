/** The frame of an answer: when something was asked, one fitting value in a short clause is it. */
import { timeAfter } from '../../moment.ts';
import type { Frame, Match, Meaning } from '../../recogniser.ts';
import { donenessOf } from '../recognisers/doneness.ts';
import { reading } from '../recognisers/temperatures.ts';
import { minutesIn, tableAt } from './time.ts';
import { holds } from './words.ts';

/** Words that make a value not an answer: it is unsure, or of something else. */
const unsure = / (between|or|either) /;

export const answerFrame: Frame = {
  name: 'answer',
  moods: ['statement', 'intention', 'request', 'negative', 'question'],
  build(match): Meaning | undefined {
    if (match.line.split(' ').length > 10) return undefined;
    switch (match.context.expecting) {
      case 'reading':
        return readingAnswer(match);
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
      case undefined:
        return roastGoesOn(match);
    }
  },
};

function onlyMark(match: Match, letters: string): string | undefined {
  const marks = match.marks(letters);
  return marks.length === 1 ? marks[0] : undefined;
}

function readingAnswer(match: Match): Meaning | undefined {
  const mark = onlyMark(match, 'nt');
  if (!mark || holds(match, unsure) || match.marks('cdwg').length > 0) return undefined;
  if (holds(match, / (people|guests|pounds|minutes|oven|left|timer|bus|kids|dollars) /))
    return undefined;
  const one = match.withGroups({ temperature: `${mark} ` });
  return one.number('temperature') >= 20 ? reading(one) : undefined;
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

const ordinals: readonly [RegExp, number][] = [
  [/ (first|1st|former|top one) /, 1],
  [/ (second|2nd|latter|middle one) /, 2],
  [/ (third|3rd) /, 3],
  [/ (fourth|4th) /, 4],
];

function choiceAnswer(match: Match): Meaning | undefined {
  const said = ` ${match.line.replace(/ (not|instead of|rather than) (the )?\w+ .*/, ' ')}`;
  const named = ordinals.filter(([shape]) => shape.test(said));
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
  if (quantity?.kind !== 'number' || match.line.split(' ').length > 7) return undefined;
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
  // "104 in the roast, or the oven?"
  if (
    /^(in |it is |that is |on )?(the |my )?(roast|meat|joint|beef|core|middle|probe) $/.test(
      match.line,
    )
  )
    return { intent: 'affirm' };
  if (/^(in |it is |that is |on )?(the |my )?oven $/.test(match.line))
    return { intent: 'choose', option: 2 };
  if (
    holds(
      match,
      / (wrong|incorrect|nope|nay|nein|non|negative|no|not|never|misheard|neither|rather not) /,
    ) &&
    !holds(match, / (why not|no problem|not a problem|not wrong) /)
  )
    return { intent: 'deny' };
  return holds(
    match,
    / (right|correct|sure|mhm|naturally|bet|positive|percent|doubt|did|think so|suppose so|guess so|sounds good|course|go|yes|aye|si|ja|oui|da|yup|definitely|certainly|absolutely|exactly|confirmed|spot on|bang on|got it|fair enough|please|do|it is|it does|that is it|indeed|ok|fine|true|agreed|affirmative|why not|deal|good) /,
  )
    ? { intent: 'affirm' }
    : undefined;
}
