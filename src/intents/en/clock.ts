/**
 * English clock phrases on both sides of the ocean: "half past six", "half six", "quarter of seven",
 * "twenty to", "seven o'clock", "6:30 pm", "eighteen fifteen", noon. A bare "seven" is no clock
 * phrase: whether it is a time, a head count or a weight is for the slot to say.
 */
import type { ClockFace } from '../quantity.ts';
import { numberAt } from './numbers.ts';

interface ClockFound {
  face: ClockFace;
  next: number;
}

const toWords = /^(to|till|of|before)$/;
const pastWords = /^(past|after|gone)$/;

export function clockAt(words: readonly string[], at: number): ClockFound | undefined {
  const found =
    named(words, at) ??
    hourAndMinutes(words, at) ??
    aroundTheHour(words, at) ??
    lessThan(words, at) ??
    figures(words, at);
  return found && withHalf(words, found);
}

function named(words: readonly string[], at: number): ClockFound | undefined {
  if (words[at] === 'twelve' && /^(noon|midnight|midday)$/.test(words[at + 1] ?? ''))
    return named(words, at + 1);
  if (/^(noon|midday)$/.test(words[at] ?? ''))
    return { face: { hour: 12, minute: 0, half: 'day' }, next: at + 1 };
  if (words[at] === 'midnight') return { face: { hour: 0, minute: 0, half: 'day' }, next: at + 1 };
  return undefined;
}

/** "at four and ten", "at six and a quarter": after "at", as other languages tell the time. */
function hourAndMinutes(words: readonly string[], at: number): ClockFound | undefined {
  if (!/^(at|since|from)$/.test(words[at - 1] ?? '')) return undefined;
  const hour = hourAt(words, at);
  if (!hour || words[hour.next] !== 'and') return undefined;
  const start = hour.next + (words[hour.next + 1] === 'a' ? 2 : 1);
  const part = { half: 30, quarter: 15 }[words[start] ?? ''];
  if (part !== undefined && ends(words[start + 1]))
    return { face: { hour: hour.hour, minute: part }, next: start + 1 };
  const minutes = numberAt(words, start);
  return minutes && minutes.value < 60 && minutes.value % 5 === 0 && ends(words[minutes.next])
    ? { face: { hour: hour.hour, minute: minutes.value }, next: minutes.next }
    : undefined;
}

/** An hour that may follow "half past": 1 to 12, said or written in one piece. */
function hourAt(words: readonly string[], at: number): { hour: number; next: number } | undefined {
  if (/^(noon|midday|midnight)$/.test(words[at] ?? '')) return { hour: 12, next: at + 1 };
  const number = numberAt(words, at);
  if (number?.plain && number.value >= 1 && number.value <= 12 && Number.isInteger(number.value))
    return { hour: number.value, next: number.next };
  // "quarter to seven thirty" is nobody's; take the hour alone when more numbers follow.
  return undefined;
}

function aroundTheHour(words: readonly string[], at: number): ClockFound | undefined {
  const article = words[at] === 'a' ? at + 1 : at;
  const word = words[article] ?? '';
  if (word === 'half') {
    if (pastWords.test(words[article + 1] ?? '')) return minutesPast(words, article + 2, 30);
    const hour = article === at ? hourAt(words, at + 1) : undefined;
    if (
      hour &&
      !/^(pounds|kilos|hour|hours|minutes|of|dozen|bone|bones|degrees)$/.test(
        words[hour.next] ?? '',
      )
    )
      return { face: { hour: hour.hour, minute: 30 }, next: hour.next };
    return undefined;
  }
  const counted =
    word === 'quarter' ? { value: 15, next: article + 1, sure: true } : minuteAt(words, at);
  if (!counted) return undefined;
  const side = words[counted.next] ?? '';
  if (pastWords.test(side)) return minutesPast(words, counted.next + 1, counted.value);
  if (!toWords.test(side)) return undefined;
  const hour = hourAt(words, counted.next + 1);
  if (hour) {
    // "five to six people" is a range.
    if (
      /^(people|guests|minutes|pounds|kilos|hours|bones|of|more|degrees)$/.test(
        words[hour.next] ?? '',
      )
    )
      return undefined;
    return { face: beforeHour(hour.hour, counted.value), next: hour.next };
  }
  // "twenty to": the hour to come is meant, if nothing follows that "to" could lead to.
  if (side === 'to' && counted.sure && ends(words[counted.next + 1]))
    return { face: { hour: undefined, minute: 60 - counted.value }, next: counted.next + 1 };
  return undefined;
}

const ends = (word: string | undefined): boolean =>
  word === undefined || /^([,.?!]|and|now|then|for|not|rather)$/.test(word);

function minuteAt(
  words: readonly string[],
  at: number,
): { value: number; next: number; sure: boolean } | undefined {
  const number = numberAt(words, at);
  if (!number || number.value < 1 || number.value >= 30 || !Number.isInteger(number.value))
    return undefined;
  if (words[number.next] === 'minutes')
    return { value: number.value, next: number.next + 1, sure: false };
  return number.value % 5 === 0
    ? { value: number.value, next: number.next, sure: number.value < 26 }
    : undefined;
}

function minutesPast(words: readonly string[], at: number, minute: number): ClockFound | undefined {
  const hour = hourAt(words, at);
  if (hour) return { face: { hour: hour.hour, minute }, next: hour.next };
  // "at half past, 92": what follows is on no clock.
  const other = numberAt(words, at);
  // "at half past to put the potatoes in": what is to be done follows.
  const errand =
    words[at] === 'to' &&
    /^(put|get|turn|take|check|baste|start|do|make|pull|bring|move|stir|add|give|carve|serve|go|be|shove|pop|have)$/.test(
      words[at + 1] ?? '',
    );
  return errand || ends(words[at]) || (other !== undefined && other.value > 30)
    ? { face: { hour: undefined, minute }, next: at }
    : undefined;
}

/** "eight less a quarter", "seven less ten". */
function lessThan(words: readonly string[], at: number): ClockFound | undefined {
  const hour = hourAt(words, at);
  if (!hour || words[hour.next] !== 'less') return undefined;
  const start = /^(a|one)$/.test(words[hour.next + 1] ?? '') ? hour.next + 2 : hour.next + 1;
  if (words[start] === 'quarter') return { face: beforeHour(hour.hour, 15), next: start + 1 };
  const minutes = numberAt(words, start);
  return minutes && /^(5|10|20|25)$/.test(String(minutes.value))
    ? { face: beforeHour(hour.hour, minutes.value), next: minutes.next }
    : undefined;
}

const beforeHour = (hour: number, minutes: number): ClockFace => ({
  hour: hour === 1 ? 12 : hour - 1,
  minute: 60 - minutes,
});

/** Numbers that something beside them makes a time: "o'clock", "pm", a colon, "18h30". */
function figures(words: readonly string[], at: number): ClockFound | undefined {
  const number = numberAt(words, at);
  if (!number) return undefined;
  const next = words[number.next] ?? '';
  const whole = Number.isInteger(number.value) && number.value >= 0 && number.value <= 24;
  const face: ClockFace | undefined =
    number.face ??
    (whole
      ? { hour: number.value % 24, minute: 0, ...(number.value > 12 ? { half: 'day' } : {}) }
      : undefined);
  if (!face) return undefined;
  if (next === 'oclock' && whole) return minutesAfter(words, number.next + 1, face);
  if (/^(am|pm)$/.test(next)) return { face, next: number.next };
  if (
    next === 'hours' &&
    whole &&
    number.value > 12 &&
    /^(at|by|for|till)$/.test(words[at - 1] ?? '')
  ) {
    const minute = numberAt(words, number.next + 1);
    return minute && minute.value < 60 && Number.isInteger(minute.value) && minute.value > 0
      ? { face: { ...face, minute: minute.value }, next: minute.next }
      : { face, next: number.next + 1 };
  }
  if (next === 'hours' && number.face && number.value >= 100)
    return { face, next: number.next + 1 };
  // "at thirteen hours".
  if (
    next === 'hours' &&
    whole &&
    number.value > 5 &&
    /^(at|by|around|till|before)$/.test(words[at - 1] ?? '')
  )
    return { face, next: number.next + 1 };
  if (/^\d{1,2}:\d\d$/.test(words[at]!) && number.face && !/^(hours|hour)$/.test(next))
    return { face, next: number.next };
  if (/^\d\d?$/.test(words[at]!) && next === 'h' && whole) {
    const minute = words[number.next + 1] ?? '';
    // "at 20h", where no length of time can stand.
    if (/^(at|by|around|since|till|from)$/.test(words[at - 1] ?? '') && !/^\d/.test(minute))
      return { face, next: number.next + 1 };
    if (/^[0-5]\d$/.test(minute) && number.value > 9)
      return {
        face: { hour: number.value, minute: Number(minute), half: 'day' },
        next: number.next + 2,
      };
  }
  if (partOfDay(words, number.next) && number.value <= 24 * 100) return { face, next: number.next };
  return undefined;
}

/** "19 o'clock 30": the minutes behind the hour, as other languages say it. */
function minutesAfter(words: readonly string[], at: number, face: ClockFace): ClockFound {
  const minute = numberAt(words, at);
  const counts =
    minute !== undefined &&
    Number.isInteger(minute.value) &&
    minute.value >= 5 &&
    minute.value < 60 &&
    (words[minute.next] === undefined ||
      /^([,.?!]|and|for|tonight|then|please|on|in)$/.test(words[minute.next]!));
  return counts
    ? { face: { ...face, minute: minute.value }, next: minute.next }
    : { face, next: at };
}

function withHalf(words: readonly string[], found: ClockFound): ClockFound {
  let { next } = found;
  const oclock = words[next] === 'oclock';
  if (oclock) next += 1;
  const said = words[next] ?? '';
  if (/^(am|pm)$/.test(said))
    return { face: { ...found.face, half: said as 'am' | 'pm' }, next: next + 1 };
  const part = partOfDay(words, next);
  if (part) return { face: { ...found.face, half: part.half }, next: part.next };
  return { ...found, next };
}

/** "in the evening", "this afternoon", "tonight", "at night". */
function partOfDay(
  words: readonly string[],
  at: number,
): { half: 'am' | 'pm'; next: number } | undefined {
  const phrase = words.slice(at, at + 3).join(' ');
  if (/^in the (evening|afternoon)/.test(phrase)) return { half: 'pm', next: at + 3 };
  if (/^in the morning/.test(phrase)) return { half: 'am', next: at + 3 };
  if (/^(this|tomorrow) (evening|afternoon)/.test(phrase) && words[at] === 'this')
    return { half: 'pm', next: at + 2 };
  if (/^this morning/.test(phrase)) return { half: 'am', next: at + 2 };
  if (/^at night/.test(phrase)) return { half: 'pm', next: at + 2 };
  return undefined;
}
