/**
 * English numbers as people write them and as recognisers hear them: figures, words, "one oh four",
 * "four fifty", "seven and a half", "three point two", "a dozen". A run such as "six thirty" keeps
 * both its readings, 630 and 6:30; the slot decides.
 */
import { oncePer } from '../../base/once.ts';
import { type ClockFace, tidy } from '../quantity.ts';

export interface NumberFound {
  value: number;
  face?: ClockFace | undefined;
  /** Index of the first word after it. */
  next: number;
  /** Whole, small and said in one piece: may be the hour in "half past six". */
  plain: boolean;
}

const ones: Record<string, number> = {
  ...{ one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9 },
  ...{ fife: 5, niner: 9, tree: 3, sicks: 6, foure: 4 },
};
const teens: Record<string, number> = {
  ...{ ten: 10, eleven: 11, twelve: 12, thirteen: 13, fourteen: 14, fifteen: 15, sixteen: 16 },
  ...{ seventeen: 17, eighteen: 18, nineteen: 19, fiveteen: 15 },
};
const tens: Record<string, number> = {
  ...{ twenty: 20, thirty: 30, forty: 40, fourty: 40, fifty: 50, sixty: 60, seventy: 70 },
  ...{ eighty: 80, ninety: 90, ninty: 90, fivety: 50, fiddy: 50 },
};
const nought = new Set(['oh', 'o', 'zero', 'nought', 'owe', 'naught', 'aught']);
const fractions: Record<string, number> = {
  ...{ half: 0.5, quarter: 0.25, third: 1 / 3, '½': 0.5, '¼': 0.25, '¾': 0.75, '⅓': 1 / 3 },
  ...{ '⅔': 2 / 3, '⅛': 0.125, '⅜': 0.375, '⅝': 0.625, '⅞': 0.875 },
};

/** What a recogniser writes for a number that sounds like another word; only inside a number. */
const soundsLike: Record<string, number> = {
  for: 4,
  fore: 4,
  to: 2,
  too: 2,
  won: 1,
  ate: 8,
  sex: 6,
};

type Piece =
  | { size: 'one'; value: number }
  | { size: 'two'; value: number }
  | { size: 'zero-one'; value: number }
  | { size: 'large'; value: number };

/** One block below a hundred, at a place: "four", "14", "twenty five", "oh four". */
function pieceAt(words: readonly string[], at: number): { piece: Piece; next: number } | undefined {
  const word = words[at];
  if (word === undefined) return undefined;
  if (/^\d+$/.test(word)) {
    const value = Number(word);
    if (word.length === 1) return { piece: { size: 'one', value }, next: at + 1 };
    if (word.length === 2 && word.startsWith('0'))
      return { piece: { size: 'zero-one', value }, next: at + 1 };
    return { piece: { size: word.length === 2 ? 'two' : 'large', value }, next: at + 1 };
  }
  if (word in ones) return { piece: { size: 'one', value: ones[word]! }, next: at + 1 };
  if (word in teens) return { piece: { size: 'two', value: teens[word]! }, next: at + 1 };
  if (word in tens) {
    const unit = words[at + 1] ?? '';
    const value = tens[word]!;
    if (unit in ones) return { piece: { size: 'two', value: value + ones[unit]! }, next: at + 2 };
    // "forty and nine", as other languages count.
    const joined = unit === 'and' ? ones[words[at + 2] ?? ''] : undefined;
    if (joined !== undefined && isEnd(words[at + 3]) && words[at + 3] !== 'and')
      return { piece: { size: 'two', value: value + joined }, next: at + 3 };
    if (/^[1-9]$/.test(unit) && !/^\d/.test(words[at + 2] ?? ''))
      return { piece: { size: 'two', value: value + Number(unit) }, next: at + 2 };
    return { piece: { size: 'two', value }, next: at + 1 };
  }
  if (nought.has(word)) {
    const unit = words[at + 1] ?? '';
    const value = digitOf(unit) ?? soundsLike[unit];
    if (value !== undefined) return { piece: { size: 'zero-one', value }, next: at + 2 };
  }
  return undefined;
}

function digitOf(word: string): number | undefined {
  if (word in ones) return ones[word];
  if (nought.has(word)) return 0;
  return /^\d$/.test(word) ? Number(word) : undefined;
}

const validFace = (hour: number, minute: number): ClockFace | undefined =>
  hour <= 24 && minute < 60
    ? { hour: hour === 24 ? 0 : hour, minute, ...(hour > 12 ? { half: 'day' } : {}) }
    : undefined;

/** The numbers already looked for in a run of words, by place: a dozen kinds of quantity ask at each. */
const askedIn = oncePer((_words: readonly string[]) => new Map<number, NumberFound | undefined>());

/** The number that begins at a place, as far as it reaches. */
export function numberAt(words: readonly string[], at: number): NumberFound | undefined {
  const asked = askedIn(words);
  if (!asked.has(at)) asked.set(at, numberFrom(words, at));
  return asked.get(at);
}

function numberFrom(words: readonly string[], at: number): NumberFound | undefined {
  let start = at;
  let sign = 1;
  if (/^(minus|negative)$/.test(words[start] ?? '')) {
    sign = -1;
    start += 1;
  }
  const read = unsignedAt(words, start);
  if (!read) return undefined;
  const found = spelt(words, read);
  if (sign === -1) return { value: -found.value, next: found.next, plain: false };
  return found;
}

/** "Fifteen, one five": the digits are said again, to be sure. */
function spelt(words: readonly string[], found: NumberFound): NumberFound {
  const digits = String(found.value);
  if (!/^\d{2,3}$/.test(digits)) return found;
  const start = words[found.next] === ',' ? found.next + 1 : found.next;
  const said = [...digits].map((_, offset) => digitOf(words[start + offset] ?? ''));
  const next = start + digits.length;
  const goesOn =
    digitOf(words[next] ?? '') !== undefined || /^(\w+teen|\w+ty)$/.test(words[next] ?? '');
  return said.join('') === digits && !goesOn ? { ...found, next, plain: false } : found;
}

function unsignedAt(words: readonly string[], at: number): NumberFound | undefined {
  const word = words[at] ?? '';
  const after = words[at + 1] ?? '';
  if (/^(a|an|the)$/.test(word)) {
    if (/^(couple|dozen|hundred)$/.test(after)) return unsignedAt(words, at + 1);
    if (after === 'half' && words[at + 2] === 'dozen') return counted(words, at + 3, 6);
    return undefined;
  }
  if (word === 'couple') return counted(words, at + 1, 2);
  if (word === 'dozen') return counted(words, at + 1, 12);
  if (word === 'half' && after === 'dozen') return counted(words, at + 2, 6);
  if (word === 'half' && after === 'a' && words[at + 2] === 'dozen')
    return counted(words, at + 3, 6);
  if (word === 'point') return decimalsAfter(words, at, 0);
  if (/^\d+[.,:]\d/.test(word)) return withFraction(words, figure(word, at));
  if (/^[½¼¾⅓⅔⅛⅜⅝⅞]$/.test(word)) return { value: fractions[word]!, next: at + 1, plain: false };
  const whole = wholeAt(words, at);
  if (!whole) return undefined;
  if (words[whole.next] === 'dozen') return counted(words, whole.next + 1, whole.value * 12);
  return withFraction(words, whole);
}

const counted = (words: readonly string[], at: number, value: number): NumberFound => ({
  value,
  // "a dozen of us" keeps its "of".
  next: words[at] === 'of' && !/^(us|them|you)$/.test(words[at + 1] ?? '') ? at + 1 : at,
  plain: false,
});

/** Figures with a mark inside: 7.5, 7,5, 1,200, 6:30. */
function figure(word: string, at: number): NumberFound {
  const parts = word.split(/[.,:]/);
  const [whole = '', rest = ''] = parts;
  const face =
    rest.length === 2 && whole.length <= 2 && parts.length <= 3
      ? validFace(Number(whole), Number(rest))
      : undefined;
  const grouped = /^\d{1,3}(,\d{3})+$/.test(word);
  const value = grouped ? Number(word.replaceAll(',', '')) : Number(`${whole}.${rest}`);
  return { value, face, next: at + 1, plain: false };
}

function wholeAt(words: readonly string[], at: number): NumberFound | undefined {
  const hundreds = thousandsAt(words, at) ?? hundredsAt(words, at);
  if (hundreds) return hundreds;
  let first = pieceAt(words, at);
  if (
    !first &&
    words[at] === 'won' &&
    (/^(oh|o|zero|ten|eleven|twelve|\w+teen|\w+ty|\d\d)$/.test(words[at + 1] ?? '') ||
      (digitOf(words[at + 1] ?? '') !== undefined && digitOf(words[at + 2] ?? '') !== undefined))
  )
    first = { piece: { size: 'one', value: 1 }, next: at + 1 };
  if (
    !first &&
    words[at] === 'ate' &&
    /^(pounds|kilos|people|oclock|thirty|bone|bones|of)$/.test(words[at + 1] ?? '')
  )
    first = { piece: { size: 'one', value: 8 }, next: at + 1 };
  if (!first) return undefined;
  const { piece, next } = first;
  const second = pieceAt(words, next);
  const single: NumberFound = {
    value: piece.value,
    next,
    plain: piece.size !== 'large',
    ...(piece.size === 'large' ? { face: faceOfFigures(piece.value) } : {}),
  };
  if (!second || piece.size === 'large') return single;
  const low = second.piece;
  if (low.size === 'two' || low.size === 'zero-one') {
    if (piece.size === 'zero-one' && nought.has(words[at] ?? '')) return single;
    if (piece.size === 'two' && piece.value > 24) return single;
    // "for six seven thirty" holds two numbers; "ten fifteen minute" is read as one, 10:15.
    return {
      value: piece.value * 100 + low.value,
      face: validFace(piece.value, low.value),
      next: second.next,
      plain: false,
    };
  }
  // Figures one by one: "one one two", "one zero four", "nine four" is left as two numbers.
  const third = digitOf(words[second.next] ?? '');
  if (piece.size === 'one' && low.size === 'one' && third !== undefined)
    return {
      value: piece.value * 100 + low.value * 10 + third,
      face: validFace(piece.value, low.value * 10 + third),
      next: second.next + 1,
      plain: false,
    };
  return single;
}

const faceOfFigures = (value: number): ClockFace | undefined =>
  value >= 100 && value < 2400 ? validFace(Math.floor(value / 100), value % 100) : undefined;

/** "seven thousand", "two thousand four hundred": how high a kitchen lies. */
function thousandsAt(words: readonly string[], at: number): NumberFound | undefined {
  const head = pieceAt(words, at);
  if (!head || head.piece.value > 20 || words[head.next] !== 'thousand') return undefined;
  const value = head.piece.value * 1000;
  const tail = hundredsAt(words, head.next + 1);
  return { value: value + (tail?.value ?? 0), next: tail?.next ?? head.next + 1, plain: false };
}

/** "a hundred and four", "four hundred fifty", "nineteen hundred". */
function hundredsAt(words: readonly string[], at: number): NumberFound | undefined {
  const bare = words[at] === 'hundred';
  const head = bare ? { piece: { value: 1 }, next: at } : pieceAt(words, at);
  // "seventy two hundred feet", but nobody's oven is at seven thousand.
  const high = /^(feet|foot|metres|meters)$/.test(words[(head?.next ?? 0) + 1] ?? '') ? 99 : 24;
  if (!head || head.piece.value > high || !/^hundreds?$/.test(words[head.next] ?? ''))
    return undefined;
  let next = head.next + 1;
  let value = head.piece.value * 100;
  // "a hundred an eleven": the "and" as it is said.
  const joint = /^(and|an|n)$/.test(words[next] ?? '') ? next + 1 : next;
  const tail = pieceAt(words, joint);
  // "turned down to three hundred ten minutes ago": the ten is of the minutes.
  const ofMinutes = joint === next && tail !== undefined && words[tail.next] === 'minutes';
  if (
    tail &&
    !ofMinutes &&
    tail.piece.size !== 'large' &&
    !/^(half|quarter)$/.test(words[joint] ?? '')
  ) {
    value += tail.piece.value;
    next = tail.next;
  } else if (
    joint > next &&
    soundsLike[words[joint] ?? ''] !== undefined &&
    isEnd(words[joint + 1])
  ) {
    value += soundsLike[words[joint]!]!;
    next = joint + 1;
  }
  return {
    value,
    face: head.piece.value > 9 ? faceOfFigures(value) : undefined,
    next,
    plain: false,
  };
}

const isEnd = (word: string | undefined): boolean =>
  word === undefined || /^[,.?!]$/.test(word) || /^(degrees|now|and|fahrenheit|f)$/.test(word);

/** "seven and a half", "7 1/2", "three point two", "three and three quarters". */
function withFraction(words: readonly string[], whole: NumberFound): NumberFound {
  const next = whole.next;
  if (words[next] === ',' && words[next + 1] === 'point') {
    const decimals = decimalsAfter(words, next + 1, whole.value);
    if (decimals) return decimals;
  }
  if (/^(point|dot|decimal)$/.test(words[next] ?? '')) {
    const decimals = decimalsAfter(words, next, whole.value);
    if (decimals) return decimals;
  }
  if (/^[½¼¾⅓⅔⅛⅜⅝⅞]$/.test(words[next] ?? ''))
    return { value: tidy(whole.value + fractions[words[next]!]!), next: next + 1, plain: false };
  const slash = slashAt(words, next);
  if (slash) return { value: tidy(whole.value + slash.value), next: slash.next, plain: false };
  if (words[next] === '/' && whole.plain && /^\d+$/.test(words[next + 1] ?? '')) {
    const low = Number(words[next + 1]);
    if (low > 1 && low <= 8 && whole.value < low)
      return { value: tidy(whole.value / low), next: next + 2, plain: false };
  }
  if (words[next] === 'and') {
    const part = fractionAt(words, next + 1);
    if (part) return { value: tidy(whole.value + part.value), next: part.next, plain: false };
  }
  return whole;
}

function slashAt(
  words: readonly string[],
  at: number,
): { value: number; next: number } | undefined {
  if (!/^\d$/.test(words[at] ?? '') || words[at + 1] !== '/' || !/^\d$/.test(words[at + 2] ?? ''))
    return undefined;
  const value = Number(words[at]) / Number(words[at + 2]);
  return value > 0 && value < 1 ? { value, next: at + 3 } : undefined;
}

function fractionAt(
  words: readonly string[],
  at: number,
): { value: number; next: number } | undefined {
  const article = /^(a|one)$/.test(words[at] ?? '') ? at + 1 : at;
  const word = words[article] ?? '';
  if (word === 'half' || word === 'quarter') {
    // "seven and a half pounds", but not "an hour and a quarter to seven".
    if (/^(past|to|of|hour|till)$/.test(words[article + 1] ?? '')) return undefined;
    return { value: fractions[word]!, next: article + 1 };
  }
  const count = digitOf(words[at] ?? '');
  if (count === 3 && /^quarters?$/.test(words[at + 1] ?? '')) return { value: 0.75, next: at + 2 };
  if (count === 2 && /^thirds?$/.test(words[at + 1] ?? '')) return { value: 2 / 3, next: at + 2 };
  return undefined;
}

function decimalsAfter(
  words: readonly string[],
  at: number,
  whole: number,
): NumberFound | undefined {
  let digits = '';
  let next = at + 1;
  const piece = pieceAt(words, next);
  if (piece && piece.piece.size !== 'one' && piece.piece.size !== 'zero-one') {
    digits = String(piece.piece.value);
    next = piece.next;
  } else {
    for (;;) {
      const digit =
        digitOf(words[next] ?? '') ?? (digits === '' ? soundsLike[words[next] ?? ''] : undefined);
      if (digit === undefined) break;
      digits += digit;
      next += 1;
    }
  }
  if (digits === '') return undefined;
  return { value: Number(`${whole}.${digits}`), next, plain: false };
}
