/**
 * Quantities in German words, each drawn together into one mark: clock times ("halb sieben", "Viertel
 * vor acht", "18 Uhr 30"), durations, weights, temperatures, days, and the numbers that are left.
 */
import { addDays, localTime, weekdayOf } from '../../base/time.ts';
import type { CalendarNow } from '../calendar.ts';
import { type Found, type Marked, marked } from '../marked.ts';
import { type ClockFace, tidy } from '../quantity.ts';
import type { Token } from '../token.ts';
import { numberAt } from './numbers.ts';

export const quantified = (tokens: readonly Token[], now: CalendarNow): Marked =>
  marked(
    tokens,
    (words, at) =>
      clockAt(words, at) ??
      durationAt(words, at) ??
      weightAt(words, at) ??
      temperatureAt(words, at) ??
      dayAt(words, at, now) ??
      plainAt(words, at),
  );

function plainAt(words: readonly string[], at: number): Found | undefined {
  const people = /^(gast|person|knochen|rippe|mehr|weitere[rn]?)$/.test(words[at + 1] ?? '');
  const number = numberAt(words, at, people);
  if (!number) return dozen(words, at);
  return {
    quantity: {
      kind: 'number',
      value: number.value,
      ...(number.face ? { face: number.face } : {}),
    },
    next: number.next,
  };
}

/** "ein Dutzend", "zu sechst": counts with a word of their own. */
function dozen(words: readonly string[], at: number): Found | undefined {
  if (words[at] === 'dutzend') return { quantity: { kind: 'number', value: 12 }, next: at + 1 };
  if (words[at] !== 'zu') return undefined;
  const together = ['', '', 'zweit', 'dritt', 'viert', 'fünft', 'sechst', 'siebt', 'acht', 'neunt'];
  const more = ['zehnt', 'elft', 'zwölft'];
  const word = words[at + 1] ?? '';
  const value =
    word === ''
      ? -1
      : together.indexOf(word) > 0
        ? together.indexOf(word)
        : more.indexOf(word) >= 0
          ? more.indexOf(word) + 10
          : word === 'siebent'
            ? 7
            : -1;
  return value > 1 ? { quantity: { kind: 'number', value }, next: at + 2 } : undefined;
}

function hourAt(words: readonly string[], at: number): { hour: number; next: number } | undefined {
  const number =
    numberAt(words, at, false) ?? (words[at] === 'ein' ? { value: 1, next: at + 1 } : undefined);
  return number && Number.isInteger(number.value) && number.value >= 0 && number.value <= 24
    ? { hour: number.value, next: number.next }
    : undefined;
}

const before = (hour: number, minutes: number): ClockFace => ({
  hour: hour === 1 ? 12 : hour - 1,
  minute: 60 - minutes,
  ...(hour > 12 ? { half: 'day' as const } : {}),
});

const clock = (face: ClockFace, words: readonly string[], next: number): Found => {
  const uhr = words[next] === 'uhr' ? next + 1 : next;
  const part = /^(abends|nachmittags|mittags|morgens|vormittags|früh|nachts)$/.exec(
    words[uhr] ?? '',
  );
  const half = part
    ? /^(morgens|vormittags|früh)$/.test(part[0])
      ? ('am' as const)
      : ('pm' as const)
    : undefined;
  return {
    quantity: { kind: 'clock', face: half && (face.hour ?? 13) <= 12 ? { ...face, half } : face },
    next: part ? uhr + 1 : uhr,
  };
};

function clockAt(words: readonly string[], at: number): Found | undefined {
  const word = words[at] ?? '';
  if (word === 'mittag' || word === 'mitternacht')
    return clock({ hour: word === 'mittag' ? 12 : 0, minute: 0, half: 'day' }, words, at + 1);
  // "halb sieben" is half past six.
  if (word === 'halb') {
    const hour = hourAt(words, at + 1);
    return hour && hour.hour >= 1 ? clock(before(hour.hour, 30), words, hour.next) : undefined;
  }
  if (
    /^(drei ?viertel|dreiviertel|viertel)$/.test(word) ||
    (word === 'drei' && words[at + 1] === 'viertel')
  ) {
    const three = word !== 'viertel';
    const side = word === 'drei' ? at + 2 : at + 1;
    const minutes = three ? 45 : 15;
    if (!three && /^(nach|vor)$/.test(words[side] ?? '')) {
      const hour = hourAt(words, side + 1);
      if (!hour) return undefined;
      const face = words[side] === 'vor' ? before(hour.hour, 15) : faceOf(hour.hour, 15);
      return clock(face, words, hour.next);
    }
    // "viertel sieben" is a quarter into the seventh hour, as it is said in the south and the east.
    const hour = hourAt(words, side);
    return hour && hour.hour >= 1 && !/^(stunden?|kilo|liter)$/.test(words[hour.next] ?? '')
      ? clock(before(hour.hour, 60 - minutes), words, hour.next)
      : undefined;
  }
  const number = numberAt(words, at);
  if (!number) return undefined;
  const minuteNext = words[number.next] === 'minuten' ? number.next + 1 : number.next;
  const side = words[minuteNext] ?? '';
  if (/^(vor|nach)$/.test(side) && number.value > 0 && number.value < 30) {
    const half = words[minuteNext + 1] === 'halb';
    const hour = hourAt(words, minuteNext + (half ? 2 : 1));
    if (!hour || /^(minuten|stunden?|tagen)$/.test(words[hour.next] ?? '')) return undefined;
    const base = half ? 30 : 0;
    const minute = side === 'vor' ? base - number.value : base + number.value;
    const start = half ? (hour.hour === 1 ? 12 : hour.hour - 1) : hour.hour;
    return clock(minute < 0 ? before(start, -minute) : faceOf(start, minute), words, hour.next);
  }
  const next = words[number.next];
  if (number.face && (next === 'uhr' || /^\d{1,2}:\d\d$/.test(words[at]!)))
    return clock(number.face, words, number.next);
  if (next !== 'uhr' || !Number.isInteger(number.value) || number.value > 24) return undefined;
  const minute = numberAt(words, number.next + 1);
  if (
    minute &&
    Number.isInteger(minute.value) &&
    minute.value < 60 &&
    words[minute.next] !== 'personen'
  )
    return clock(faceOf(number.value, minute.value), words, minute.next);
  return clock(faceOf(number.value, 0), words, number.next);
}

const faceOf = (hour: number, minute: number): ClockFace => ({
  hour: hour % 24,
  minute,
  ...(hour > 12 ? { half: 'day' as const } : {}),
});

function durationAt(words: readonly string[], at: number): Found | undefined {
  const of = (minutes: number, next: number): Found => ({
    quantity: { kind: 'duration', minutes: tidy(minutes) },
    next,
  });
  const article = /^(eine|einer|ner|ne|der|die|einen)$/.test(words[at] ?? '') ? at + 1 : at;
  if (/^(halbe|halben)$/.test(words[article] ?? '') && words[article + 1] === 'stunde')
    return of(30, article + 2);
  if (/^(halbestunde|halbstunde)$/.test(words[article] ?? '')) return of(30, article + 1);
  if (words[article] === 'viertelstunde') return of(15, article + 1);
  if (/^(dreiviertelstunde)$/.test(words[article] ?? '')) return of(45, article + 1);
  if (/^(dreiviertel)$/.test(words[article] ?? '') && words[article + 1] === 'stunde')
    return of(45, article + 2);
  if (words[article] === 'viertel' && words[article + 1] === 'stunde') return of(15, article + 2);
  if (article > at && words[article] === 'stunde') {
    const tail = tailOf(words, article + 1);
    return of(60 + tail.minutes, tail.next);
  }
  if (article > at && words[article] === 'minute') return of(1, article + 1);
  const number = numberAt(words, at);
  if (!number) return undefined;
  const unit = /^(weitere|gute|knappe)$/.test(words[number.next] ?? '')
    ? number.next + 1
    : number.next;
  const word = words[unit] ?? '';
  if (/^(minuten|minute|min|minütchen)$/.test(word)) return of(number.value, unit + 1);
  if (/^(sekunden|sekunde)$/.test(word)) return of(number.value / 60, unit + 1);
  if (/^(stunden|stunde|std|h)$/.test(word)) {
    const tail = tailOf(words, unit + 1);
    return of(number.value * 60 + tail.minutes, tail.next);
  }
  return undefined;
}

/** "eine Stunde und zwanzig Minuten", "eine Stunde zehn". */
function tailOf(words: readonly string[], at: number): { minutes: number; next: number } {
  const start = words[at] === 'und' ? at + 1 : at;
  const number = numberAt(words, start);
  if (!number || number.value >= 60) return { minutes: 0, next: at };
  const unit = /^(minuten|min)$/.test(words[number.next] ?? '');
  return unit || start === at
    ? { minutes: number.value, next: unit ? number.next + 1 : number.next }
    : { minutes: 0, next: at };
}

function weightAt(words: readonly string[], at: number): Found | undefined {
  const half = words[at] === 'halbes' || words[at] === 'halben';
  const number = half
    ? { value: 0.5, next: at + 1 }
    : numberAt(words, at, /^(kilo|pfund|kg)$/.test(words[at + 1] ?? ''));
  if (!number) return undefined;
  const word = words[number.next] ?? '';
  const of = (kilograms: number, next: number): Found => ({
    quantity: { kind: 'weight', value: tidy(kilograms), unit: 'kg' },
    next,
  });
  if (/^(gramm|g)$/.test(word)) return of(number.value / 1000, number.next + 1);
  // A German pound is half a kilogram.
  if (word === 'pfund') return of(number.value / 2, number.next + 1);
  if (!/^(kilo|kilos|kg|kilogramm)$/.test(word)) return undefined;
  const grams = numberAt(words, number.next + 1);
  if (
    grams &&
    grams.value >= 50 &&
    grams.value < 1000 &&
    !/^(grad|minuten)$/.test(words[grams.next] ?? '')
  )
    return of(
      number.value + grams.value / 1000,
      /^(gramm|g)$/.test(words[grams.next] ?? '') ? grams.next + 1 : grams.next,
    );
  return of(number.value, number.next + 1);
}

function temperatureAt(words: readonly string[], at: number): Found | undefined {
  const number = numberAt(words, at);
  if (!number) return undefined;
  const marked = words[number.next] === 'grad';
  const unitAt = marked ? number.next + 1 : number.next;
  const unit = /^(celsius|c)$/.test(words[unitAt] ?? '')
    ? ('C' as const)
    : /^(fahrenheit|f)$/.test(words[unitAt] ?? '')
      ? ('F' as const)
      : undefined;
  if (!marked && !unit) return undefined;
  return {
    quantity: { kind: 'temperature', value: number.value, ...(unit ? { unit } : {}) },
    next: unit ? unitAt + 1 : unitAt,
  };
}

const weekdays = ['sonntag', 'montag', 'dienstag', 'mittwoch', 'donnerstag', 'freitag', 'samstag'];

function dayAt(words: readonly string[], at: number, now: CalendarNow): Found | undefined {
  const today = localTime(now.now, now.timeZone).date;
  const of = (date: string): Found => ({ quantity: { kind: 'date', date }, next: at + 1 });
  const word = words[at] ?? '';
  if (word === 'morgen' && !/^(guten|schönen)$/.test(words[at - 1] ?? ''))
    return of(addDays(today, 1));
  if (word === 'übermorgen') return of(addDays(today, 2));
  const day = weekdays.indexOf(word === 'sonnabend' ? 'samstag' : word);
  if (day < 0) return undefined;
  const ahead = (day - weekdayOf(today) + 7) % 7;
  return of(addDays(today, ahead === 0 ? 7 : ahead));
}
