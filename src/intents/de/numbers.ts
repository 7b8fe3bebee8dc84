/**
 * German numbers: one word however long ("einhundertvier", "zweiundfünfzig"), figures with a comma,
 * "drei Komma zwei", "dreieinhalb". A whole number up to 24 may be an hour; the slot decides.
 */
import { type ClockFace, tidy } from '../quantity.ts';

export interface NumberFound {
  value: number;
  face?: ClockFace | undefined;
  next: number;
}

const ones: Record<string, number> = {
  ...{ null: 0, ein: 1, eins: 1, eine: 1, einen: 1, einem: 1, einer: 1, zwei: 2, zwo: 2, drei: 3 },
  ...{ vier: 4, fünf: 5, fuenf: 5, sechs: 6, sieben: 7, acht: 8, neun: 9, zehn: 10, elf: 11 },
  ...{ zwölf: 12, zwoelf: 12, dreizehn: 13, vierzehn: 14, fünfzehn: 15, fuenfzehn: 15 },
  ...{ sechzehn: 16, siebzehn: 17, achtzehn: 18, neunzehn: 19 },
};
const tens: Record<string, number> = {
  ...{ zwanzig: 20, dreißig: 30, dreissig: 30, vierzig: 40, fünfzig: 50, fuenfzig: 50 },
  ...{ sechzig: 60, siebzig: 70, achtzig: 80, neunzig: 90 },
};

/** "zwei" in "ein paar", and the articles that are numbers only before a unit. */
const articles = /^(ein|eine|einen|einem|einer)$/;

function belowHundred(word: string): number | undefined {
  if (Object.hasOwn(ones, word)) return ones[word];
  if (Object.hasOwn(tens, word)) return tens[word];
  const pair = /^(.+)und(.+)$/.exec(word);
  if (!pair) return undefined;
  const low = ones[pair[1]!];
  const high = tens[pair[2]!];
  return low !== undefined && low < 10 && high !== undefined ? high + low : undefined;
}

/** One word as a number; undefined where it is none. */
export function numberWord(word: string): number | undefined {
  const half = /^(.+)einhalb$/.exec(word);
  if (word === 'anderthalb') return 1.5;
  if (half) {
    const whole = belowHundred(half[1]!);
    return whole === undefined ? undefined : whole + 0.5;
  }
  const hundreds = /^(.*?)hundert(?:und)?(.*)$/.exec(word);
  if (!hundreds) return belowHundred(word);
  const head = hundreds[1] === '' ? 1 : ones[hundreds[1]!];
  const tail = hundreds[2] === '' ? 0 : belowHundred(hundreds[2]!);
  return head === undefined || tail === undefined || head > 9 ? undefined : head * 100 + tail;
}

const faceOf = (hour: number, minute: number): ClockFace | undefined =>
  Number.isInteger(hour) && hour >= 0 && hour <= 24 && minute >= 0 && minute < 60
    ? { hour: hour % 24, minute, ...(hour > 12 ? { half: 'day' as const } : {}) }
    : undefined;

/** The number that begins at a place. An article counts only where `article` allows it. */
export function numberAt(
  words: readonly string[],
  at: number,
  article = false,
): NumberFound | undefined {
  const word = words[at] ?? '';
  if (articles.test(word) && !article) return undefined;
  const figure = /^(\d+)(?:([.,:])(\d+))?$/.exec(word);
  if (figure) {
    const [, whole = '', mark, rest = ''] = figure;
    const clock = rest.length === 2 && mark !== ',' && whole.length <= 2;
    const value = mark === undefined ? Number(whole) : Number(`${whole}.${rest}`);
    return {
      value: mark === '.' && rest.length === 3 ? Number(whole + rest) : value,
      face: clock ? faceOf(Number(whole), Number(rest)) : undefined,
      next: at + 1,
    };
  }
  const value = numberWord(word);
  if (value === undefined) return undefined;
  return withDecimals(words, { value, next: at + 1 });
}

/** "drei Komma zwei", "achtundvierzig Komma fünf". */
function withDecimals(words: readonly string[], whole: NumberFound): NumberFound {
  if (!/^(komma|punkt)$/.test(words[whole.next] ?? '')) return whole;
  let digits = '';
  let next = whole.next + 1;
  for (;;) {
    const word = words[next] ?? '';
    const digit = /^\d+$/.test(word) ? Number(word) : numberWord(word);
    if (digit === undefined || !Number.isInteger(digit) || digit > 99) break;
    digits += String(digit);
    next += 1;
  }
  return digits === '' ? whole : { value: tidy(Number(`${whole.value}.${digits}`)), next };
}
