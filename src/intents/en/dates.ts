/** Where English words name a calendar date; the reading of it is the calendar's. */
import {
  type CalendarNow,
  dayAfterTomorrow,
  type Feast,
  feastDate,
  nextDayOfMonth,
  readDate,
} from '../calendar.ts';
import type { CalendarFound } from '../quantity.ts';

const weekday = '(?:mon|tues|wednes|thurs|fri|satur|sun)day';
const month =
  '(?:january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|mar|apr|jun|jul|aug|sept|sep|oct|nov|dec)';
const ordinal =
  '(?:\\d{1,2}(?:st|nd|rd|th)|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth|sixteenth|seventeenth|eighteenth|nineteenth|twentieth|twenty (?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth)|thirtieth|thirty first)';

const shapes: readonly RegExp[] = [
  new RegExp(
    `^(?:(?:on|this|next|coming) )*${weekday},? (?:the )?${ordinal}(?: (?:of )?${month})?(?= |$)`,
  ),
  new RegExp(`^(?:on )?the ${ordinal} of ${month}(?= |$)`),
  new RegExp(`^(?:on )?${ordinal} (?:of )?${month}(?= |$)`),
  new RegExp(`^(?:on )?\\d{1,2} ${month}(?= |$)`),
  new RegExp(`^(?:on )?${month} (?:the )?(?:${ordinal}|\\d{1,2})(?= |$)`),
  /^(?:on )?the (?:\d{1,2}(?:st|nd|rd|th)|(?:twenty|thirty) (?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth)|(?:eleven|twelf|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twentie)th)(?= |$)(?! (?:one|bone|rib|option|step))/,
  new RegExp(`^(?:(?:on|this|next|coming) )*${weekday}(?= |$)`),
  /^the day after tomorrow(?= |$)/,
  /^(?:for )?tomorrow(?= |$)/,
];

const feasts: readonly [RegExp, Feast][] = [
  [/^(?:on |for )?christmas eve(?= |$)/, { month: '12', day: '24' }],
  [/^(?:on |for )?(?:christmas|xmas) day(?= |$)/, { month: '12', day: '25' }],
  [/^(?:on |for )?boxing day(?= |$)/, { month: '12', day: '26' }],
  [/^(?:on |for )?new year(?: is|s)? eve(?= |$)/, { month: '12', day: '31' }],
  [/^(?:on |for )?new year(?: is|s)? day(?= |$)/, { month: '01', day: '01' }],
  [/^(?:on |for )?thanksgiving(?: day)?(?= |$)/, { month: '11', weekday: 4, nth: 4 }],
];

/** Ordinals in words, as figures: the calendar reads "the 19th" in every combination. */
const ordinals =
  'first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth sixteenth seventeenth eighteenth nineteenth twentieth'.split(
    ' ',
  );

export function datesIn(words: readonly string[], now: CalendarNow): CalendarFound[] {
  const found: CalendarFound[] = [];
  for (let at = 0; at < words.length; at++) {
    if (
      !/^(on|this|next|coming|the|for|tomorrow|christmas|xmas|boxing|new|thanksgiving|\w+day|\d+(st|nd|rd|th)?|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|\w+(er|ary|ch|il|ust|ly)|june|sept|\w+(th|st|nd))$/.test(
        words[at]!,
      )
    )
      continue;
    const rest = words.slice(at, at + 8).join(' ');
    const hit = dateAt(rest, now);
    if (!hit) continue;
    const next = at + hit.words;
    found.push({ at, next, date: hit.date });
    at = next - 1;
  }
  return found;
}

function dateAt(rest: string, now: CalendarNow): { words: number; date: string } | undefined {
  for (const [shape, feast] of feasts) {
    const match = shape.exec(rest);
    if (match) return { words: match[0].split(' ').length, date: feastDate(feast, now) };
  }
  for (const shape of shapes) {
    const match = shape.exec(rest);
    if (!match) continue;
    const plain = match[0]
      .replace(/^(?:(?:on|for|coming|this) )+/, '')
      .replace(
        /twenty (first|second|third|fourth|fifth|sixth|seventh|eighth|ninth)/,
        (_, unit: string) => `${20 + ordinals.indexOf(unit) + 1}th`,
      )
      .replace('thirty first', '31st')
      .replace('thirtieth', '30th')
      .replace(
        new RegExp(`(^| )(${ordinals.join('|')})(?= |$)`),
        (_, gap: string, word: string) => `${gap}${ordinals.indexOf(word) + 1}th`,
      )
      .replace(/^the day after/, 'day after');
    const day = /^(?:\w+day,? )?(?:the )?(\d{1,2})th$|(\d{1,2})(?:st|nd|rd)$/.exec(plain);
    const date =
      plain === 'day after tomorrow'
        ? dayAfterTomorrow(now)
        : day
          ? nextDayOfMonth(Number(day[1] ?? day[2]), now)
          : readDate(plain.replace(/^the /, ''), now);
    if (date) return { words: match[0].split(' ').length, date };
  }
  return undefined;
}
