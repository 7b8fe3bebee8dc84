/**
 * Finds the quantities in English words and puts a mark in place of each: weights, durations, clock
 * times, temperatures, gas marks, dates, and the numbers that are left. Longer readings come first:
 * "twenty to seven" is a time before it is two numbers.
 */
import { type Found, type Marked, marked } from '../marked.ts';
import { type DateReader, type Quantity, tidy } from '../quantity.ts';
import type { Token } from '../token.ts';
import { clockAt } from './clock.ts';
import { type NumberFound, numberAt } from './numbers.ts';

type Finder = (words: readonly string[], at: number) => Found | undefined;

/** In order: what is read first is gone for the rest. */
const finders: readonly Finder[] = [
  gasMarkAt,
  // "ten minutes to seven" must be a time before "ten minutes" is a duration.
  (words, at) => {
    const clock = clockAt(words, at);
    return clock && { quantity: { kind: 'clock', face: clock.face }, next: clock.next };
  },
  durationAt,
  weightAt,
  temperatureAt,
  (words, at) => {
    const number = rangeAt(words, at) ?? numberAt(words, at);
    return number && { quantity: plain(number), next: number.next };
  },
];

const plain = (found: NumberFound): Quantity => ({
  kind: 'number',
  value: found.value,
  ...(found.face ? { face: found.face } : {}),
});

/** The same tokens with every quantity drawn together into one marked token. */
export function quantified(tokens: readonly Token[], dates: DateReader): Marked {
  const found = dates(tokens.map((token) => token.word));
  return marked(tokens, (words, at) => {
    if (words[at] === 'one' && isPronoun(words, at)) return undefined;
    const date = found.find((candidate) => candidate.at === at);
    if (date) return { quantity: { kind: 'date', date: date.date }, next: date.next };
    return finders.reduce<Found | undefined>((hit, finder) => hit ?? finder(words, at), undefined);
  });
}

/** "that one", "the other one": no number. */
const isPronoun = (words: readonly string[], at: number): boolean =>
  // "108 one side, 112 the other", "the one I poke it with".
  (/^(side|end|spot|bit|corner|thing|way)$/.test(words[at + 1] ?? '') && words[at - 1] !== 'the') ||
  (words[at - 1] === 'the' &&
    /^(i|you|we|that|which|with|he|she|they|from|in|on)$/.test(words[at + 1] ?? '')) ||
  /^(moment|sec|tick|more time|second)$/.test(words[at + 1] ?? '') ||
  // "the little one shows 44".
  (/^(the|my|our|that|this)$/.test(words[at - 2] ?? '') &&
    /^[a-z]{3,}(?<!ty|teen)$/.test(words[at - 1] ?? '') &&
    !/^(hundred|eleven|twelve|one|two|three|four|five|six|seven|eight|nine|ten|last)$/.test(
      words[at - 1]!,
    ) &&
    /^(is|says|said|reads|read|shows|gives|marks|at|on|has|was|,|\.|\?)?$/.test(
      words[at + 1] ?? '',
    ) &&
    !/^(oven|roast|core|probe|thermometer|middle|gas|mark|number|option)$/.test(words[at - 1]!)) ||
  (words[at + 1] === 'more' && words[at + 2] === 'time') ||
  (/^(no|that|this|other|wrong|right|quick|instant|instant-read|hand|stick|leave-in|wireless|wired|digital|which|last|next|big|small|old|new|only|same|another|second|third|fresh|better|best|easy|easiest|safe|safest|long|short|slow|fast|hot|cool|good|early|late|[a-z]{3,}(?<!oth|numb|togeth|ov|und|aft|dinn|supp|tim)er)$/.test(
    words[at - 1] ?? '',
  ) &&
    !/^(hundred|oh|o|zero|oclock|\w+teen|\w+ty|ten|eleven|twelve|\d.*|bone|bones|rib|person|guest|minutes|hour|pounds|kilos|degrees|more|point|and|of)$/.test(
      words[at + 1] ?? '',
    ));

function gasMarkAt(words: readonly string[], at: number): Found | undefined {
  const word = words[at];
  let next: number;
  if (word === 'gas' && /^(mark|number|no)$/.test(words[at + 1] ?? '')) next = at + 2;
  else if (word === 'gas' || word === 'mark' || word === 'regulo') next = at + 1;
  else return undefined;
  if (/^(a|one)$/.test(words[next] ?? '') && /^(half|quarter)$/.test(words[next + 1] ?? ''))
    next += 1;
  const part = { half: 0.5, quarter: 0.25 }[words[next] ?? ''];
  if (part !== undefined) return { quantity: { kind: 'gas-mark', value: part }, next: next + 1 };
  const number = numberAt(words, next);
  // A recogniser's "gas mark for" and "to".
  const heard = { for: 4, to: 2, too: 2, ate: 8, won: 1 }[words[next] ?? ''];
  if (
    !number &&
    heard !== undefined &&
    (word !== 'mark' || (at === 0 && next + 1 === words.length))
  )
    return { quantity: { kind: 'gas-mark', value: heard }, next: next + 1 };
  if (!number || number.value > 10 || number.value <= 0) return undefined;
  return { quantity: { kind: 'gas-mark', value: number.value }, next: number.next };
}

/** "ten to fifteen minutes", "two or three hours": the later end is the safer promise. */
function rangeAt(words: readonly string[], at: number): NumberFound | undefined {
  const low = numberAt(words, at);
  if (!low || !/^(to|or)$/.test(words[low.next] ?? '')) return undefined;
  const high = numberAt(words, low.next + 1);
  if (!high || high.value <= low.value || high.value > low.value * 2.5) return undefined;
  const unit = words[high.next] ?? '';
  return /^(minutes|hours|hour|people|guests|pounds|kilos|of|more|bones?)$/.test(unit)
    ? { ...high, plain: false }
    : undefined;
}

const minuteWords = /^(minutes|m)$/;
const hourWords = /^(hours|hour|h)$/;
const between = /^(more|extra|odd|further|additional|whole|solid|full|good|long|little|short)$/;

function durationAt(words: readonly string[], at: number): Found | undefined {
  const fixed = fixedDuration(words, at);
  if (fixed) return { quantity: { kind: 'duration', minutes: fixed.minutes }, next: fixed.next };
  const number = rangeAt(words, at) ?? numberAt(words, at);
  if (!number || number.value < 0) return undefined;
  let unit = number.next;
  if (words[unit] === 'or' && words[unit + 1] === 'so') unit += 2;
  if (between.test(words[unit] ?? '')) unit += 1;
  const word = words[unit] ?? '';
  if (word === 'seconds')
    return { quantity: { kind: 'duration', minutes: tidy(number.value / 60) }, next: unit + 1 };
  if (minuteWords.test(word) && (word !== 'm' || /^\d/.test(words[at]!))) {
    // "twelve and a half minutes", "ten minutes and a half".
    return { quantity: { kind: 'duration', minutes: number.value }, next: moreOf(words, unit + 1) };
  }
  if (!hourWords.test(word)) return undefined;
  if (number.face && number.value >= 100) return undefined;
  let minutes = number.value * 60;
  let next = moreOf(words, unit + 1);
  if (number.face && number.face.hour !== undefined && /[:]/.test(words[at]!))
    minutes = number.face.hour * 60 + number.face.minute;
  const tail = hourTail(words, next) ?? (word === 'h' ? figureTail(words, next) : undefined);
  if (tail) {
    minutes += tail.minutes;
    next = tail.next;
  }
  return { quantity: { kind: 'duration', minutes: tidy(minutes) }, next };
}

/** "ten minutes more", "half an hour or so". */
function moreOf(words: readonly string[], at: number): number {
  if (words[at] === 'or' && words[at + 1] === 'so') return at + 2;
  return at;
}

/** "1h10". */
function figureTail(
  words: readonly string[],
  at: number,
): { minutes: number; next: number } | undefined {
  return /^[0-5]?\d$/.test(words[at] ?? '')
    ? { minutes: Number(words[at]), next: at + 1 }
    : undefined;
}

/** What may follow hours: "and a half", "twenty", "and ten minutes", "and a quarter". */
function hourTail(
  words: readonly string[],
  at: number,
): { minutes: number; next: number } | undefined {
  const joined = words[at] === 'and';
  const start = joined ? at + 1 : at;
  const article = /^(a|one)$/.test(words[start] ?? '') ? start + 1 : start;
  const part = { half: 30, quarter: 15 }[words[article] ?? ''];
  if (joined && part !== undefined && !/^(past|to)$/.test(words[article + 1] ?? ''))
    return { minutes: part, next: article + 1 };
  if (joined && words[start] === 'three' && words[start + 1] === 'quarters')
    return { minutes: 45, next: start + 2 };
  const number = numberAt(words, start);
  if (!number || number.value <= 0 || number.value >= 60) return undefined;
  if (minuteWords.test(words[number.next] ?? ''))
    return { minutes: number.value, next: number.next + 1 };
  const closes =
    /^(|[,.?!]|ago|and|later|late|early|earlier|left|behind|till|before|to|now|there|they|because|we|i|it|on|back|or|in|max|tops|more|extra)$/;
  if (
    // "an hour and ten", but "an hour and six" is nobody's.
    (!joined || number.value % 5 === 0) &&
    number.value >= 5 &&
    Number.isInteger(number.value) &&
    closes.test(words[number.next] ?? '')
  )
    return { minutes: number.value, next: number.next };
  return undefined;
}

/** Durations without a number word: "half an hour", "an hour and a half", "a quarter of an hour". */
function fixedDuration(
  words: readonly string[],
  at: number,
): { minutes: number; next: number } | undefined {
  const article = /^(a|an|one|the|another)$/.test(words[at] ?? '') ? at + 1 : at;
  const is = (start: number, ...expected: string[]): boolean =>
    expected.every((word, offset) => words[start + offset] === word);
  if (is(article, 'half', 'an', 'hour')) return { minutes: 30, next: moreOf(words, article + 3) };
  if (is(article, 'half', 'of', 'an', 'hour') || is(article, 'half', 'of', 'the', 'hour'))
    return { minutes: 30, next: article + 4 };
  if (is(article, 'half', 'hour')) return { minutes: 30, next: moreOf(words, article + 2) };
  if (is(article, 'half', 'a', 'minutes')) return { minutes: 0.5, next: article + 3 };
  if (is(article, 'quarter', 'of', 'an', 'hour')) return { minutes: 15, next: article + 4 };
  if (is(article, 'quarter', 'of', 'hour')) return { minutes: 15, next: article + 3 };
  if (is(article, 'quarter', 'hour')) return { minutes: 15, next: article + 2 };
  const three = /^three (quarters?|fourths?) (of )?((an|a|the) )?(hour|hours)( |$)/.exec(
    words.slice(at, at + 5).join(' '),
  );
  if (three) return { minutes: 45, next: at + three[0].trim().split(' ').length };
  if (article === at && !is(at, 'hour', 'and')) return undefined;
  const long = /^(good|full|whole|solid|bit|little|extra|further|more)$/.test(words[article] ?? '');
  const unit = long ? article + 1 : article;
  if (words[unit] === 'hour') {
    const tail = hourTail(words, moreOf(words, unit + 1));
    if (tail) return { minutes: 60 + tail.minutes, next: moreOf(words, tail.next) };
    // "the hour" is no duration.
    if (words[at] === 'the') return undefined;
    return { minutes: 60, next: moreOf(words, unit + 1) };
  }
  if (words[unit] === 'minutes' && words[at] !== 'the' && words[at] !== 'another')
    return { minutes: 1, next: unit + 1 };
  return undefined;
}

function weightAt(words: readonly string[], at: number): Found | undefined {
  const half = halfOf(words, at);
  const number = half ?? rangeAt(words, at) ?? numberAt(words, at);
  if (!number || number.value <= 0) return undefined;
  const word = words[number.next] ?? '';
  let next = number.next + 1;
  if (word === 'pounds') {
    let pounds = number.value;
    const start = words[next] === 'and' || words[next] === ',' ? next + 1 : next;
    const ounces = numberAt(words, start);
    const part = words[next] === 'and' ? partOf(words, next + 1) : undefined;
    if (ounces && ounces.value < 16 && words[ounces.next] === 'ounces') {
      pounds += ounces.value / 16;
      next = ounces.next + 1;
    } else if (part) {
      pounds += part.value;
      next = part.next;
    } else if (
      ounces &&
      start === next &&
      ounces.plain &&
      ounces.value < 16 &&
      endsWeight(words, ounces.next)
    ) {
      pounds += ounces.value / 16;
      next = ounces.next;
    }
    return { quantity: { kind: 'weight', value: tidy(pounds), unit: 'lb' }, next };
  }
  if (word === 'ounces')
    return { quantity: { kind: 'weight', value: tidy(number.value / 16), unit: 'lb' }, next };
  if (word === 'kilos') {
    let kilos = number.value;
    const start = words[next] === 'and' ? next + 1 : next;
    const grams = numberAt(words, start);
    const part = words[next] === 'and' ? partOf(words, next + 1) : undefined;
    if (part) {
      kilos += part.value;
      next = part.next;
    } else if (grams && grams.value >= 50 && grams.value < 1000) {
      const unit = /^(grams|g)$/.test(words[grams.next] ?? '');
      if (unit || endsWeight(words, grams.next)) {
        kilos += grams.value / 1000;
        next = unit ? grams.next + 1 : grams.next;
      }
    }
    return { quantity: { kind: 'weight', value: tidy(kilos), unit: 'kg' }, next };
  }
  if (/^(grams|g)$/.test(word))
    return { quantity: { kind: 'weight', value: tidy(number.value / 1000), unit: 'kg' }, next };
  return undefined;
}

const endsWeight = (words: readonly string[], at: number): boolean =>
  words[at] === undefined || /^([,.?!]|and|i|it|with|of|on|from|boneless)$/.test(words[at]!);

/** "half a kilo", "a pound", "a kilo and a half". */
function halfOf(words: readonly string[], at: number): NumberFound | undefined {
  if (words[at] === 'half' && words[at + 1] === 'a' && /^(pounds|kilos)$/.test(words[at + 2] ?? ''))
    return { value: 0.5, next: at + 2, plain: false };
  if (/^(a|one|another)$/.test(words[at] ?? '') && /^(pounds|kilos)$/.test(words[at + 1] ?? ''))
    return { value: 1, next: at + 1, plain: false };
  return undefined;
}

function partOf(words: readonly string[], at: number): { value: number; next: number } | undefined {
  if (words[at] === 'a' && words[at + 1] === 'half') return { value: 0.5, next: at + 2 };
  if (words[at] === 'a' && words[at + 1] === 'quarter') return { value: 0.25, next: at + 2 };
  if (words[at] === 'a' && words[at + 1] === 'bit') return { value: 0, next: at + 2 };
  return words[at] === 'three' && words[at + 1] === 'quarters'
    ? { value: 0.75, next: at + 2 }
    : undefined;
}

const offBy = /^(low|lower|high|higher|hot|hotter|cold|colder|out|off|over|under|too)$/;

function temperatureAt(words: readonly string[], at: number): Found | undefined {
  // "a degree low".
  if (words[at] === 'a' && words[at + 1] === 'degrees' && offBy.test(words[at + 2] ?? ''))
    return { quantity: { kind: 'temperature', value: 1 }, next: at + 2 };
  const number = numberAt(words, at);
  if (!number) return undefined;
  let next = number.next;
  let value = number.value;
  let marked = false;
  if (words[next] === 'degrees') {
    marked = true;
    next += 1;
    if (words[next] === 'and' && words[next + 1] === 'a' && words[next + 2] === 'half') {
      value += 0.5;
      next += 3;
    }
  }
  const unit = /^(fahrenheit|f)$/.test(words[next] ?? '')
    ? 'F'
    : /^(celsius|c)$/.test(words[next] ?? '')
      ? 'C'
      : undefined;
  if (unit) next += 1;
  if (!marked && !unit) return undefined;
  return { quantity: { kind: 'temperature', value, ...(unit ? { unit } : {}) }, next };
}
