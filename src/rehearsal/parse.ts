/**
 * Reads a session script. It may know the grammar and nothing of how a dinner runs. Total: what
 * cannot be read is a value that names file, line, column and what was expected there.
 */
import { hourMilliseconds, type Instant, instantOf, isTimeZone, localTime } from '../base/time.ts';
import { celsiusOf, kelvinOfFahrenheitDegrees, kilogramsOf } from '../base/units.ts';
import { announcementKinds } from '../kitchen/facts.ts';
import { parseDemand } from './parse-check.ts';
import { Scan, Unreadable } from './scan.ts';
import type { Check, Deed, KitchenSetup, Line, Script, ScriptFault } from './script.ts';

interface Reading {
  script: Omit<Script, 'lines' | 'file'>;
  /** The date the lines below are on. */
  date: string;
  /** Where the clock stands. */
  now: Instant;
  lines: (Line & { checks: Check[] })[];
}

export function parseScript(
  text: string,
  file: string,
): { script: Script; fault?: undefined } | { fault: ScriptFault; script?: undefined } {
  let reading: Reading | undefined;
  const rows = text.split(/\r?\n/);
  for (const [index, row] of rows.entries()) {
    if (/^\s*(#|$)/.test(row)) continue;
    try {
      const scan = new Scan(row.trimEnd());
      if (!reading) reading = startOf(scan);
      else readRow(reading, scan, index + 1);
    } catch (error) {
      if (!(error instanceof Unreadable)) throw error;
      return { fault: { file, line: index + 1, column: error.column, expected: error.expected } };
    }
  }
  if (!reading) return { fault: { file, line: rows.length, column: 1, expected: startForm } };
  if (reading.lines.length === 0) {
    const expected = 'at least one line, such as "13:30 > hello"';
    return { fault: { file, line: rows.length, column: 1, expected } };
  }
  return { script: { file, ...reading.script, lines: reading.lines } };
}

const startForm = '"start YYYY-MM-DD HH:MM Zone/Name" before anything else';

function startOf(scan: Scan): Reading {
  if (!scan.maybe(/start(?=\s)/)) scan.refuse(startForm);
  const date = dateOf(scan);
  const time = scan.take(/([01]\d|2[0-3]):[0-5]\d/, 'a time HH:MM')[0];
  const zoneFrom = scan.mark();
  const timeZone = scan.take(/[A-Za-z][\w+/-]*/, 'a time zone, such as America/Chicago')[0];
  if (!isTimeZone(timeZone)) scan.refuse('a time zone, such as America/Chicago', zoneFrom);
  scan.end();
  const startAt = instantOf(date, time, timeZone);
  const units = { temperature: 'F', weight: 'lb' } as const;
  return { script: { startAt, timeZone, units, seed: 1 }, date, now: startAt, lines: [] };
}

function dateOf(scan: Scan): string {
  const from = scan.mark();
  const date = scan.take(/\d{4}-\d{2}-\d{2}/, 'a date YYYY-MM-DD')[0];
  const real = new Date(Date.parse(`${date}T00:00:00Z`));
  if (Number.isNaN(real.getTime()) || real.toISOString().slice(0, 10) !== date)
    scan.refuse('a date of the calendar', from);
  return date;
}

function readRow(reading: Reading, scan: Scan, line: number): void {
  if (/^\s/.test(scan.text)) {
    const last = reading.lines.at(-1) ?? scan.refuse('a line with a time before its checks', 0);
    last.checks.push(checkOf(scan, line, last.deed));
    return;
  }
  const first = scan.mark();
  const word = scan.maybe(/[a-z]+(?=\s|$)/)?.[0];
  if (word === undefined) addLine(reading, scan, line, timedLine(reading, scan));
  else if (word === 'unanswered') addLine(reading, scan, line, unanswered(scan, reading.now));
  else if (word === 'day') anotherDay(reading, scan);
  else if (word === 'units' || word === 'seed' || word === 'kitchen') {
    if (reading.lines.length > 0) scan.refuse(`"${word}" above the first line with a time`, 0);
    heading(reading, scan, word);
  } else {
    scan.refuse('a time HH:MM, "units", "seed", "kitchen", "day" or "unanswered"', first);
  }
  scan.end();
}

function anotherDay(reading: Reading, scan: Scan): void {
  const from = scan.mark();
  reading.date = dateOf(scan);
  if (reading.date < localTime(reading.now, reading.script.timeZone).date)
    scan.refuse('the same day or a later one', from);
}

function heading(reading: Reading, scan: Scan, word: 'units' | 'seed' | 'kitchen'): void {
  const script = reading.script;
  if (word === 'units') {
    const temperature = scan.word(['F', 'C'], 'the unit of temperature');
    script.units = { temperature, weight: scan.word(['lb', 'kg'], 'the unit of weight') };
  } else if (word === 'seed') script.seed = scan.count('a whole number');
  else script.kitchen = kitchenOf(scan, script.units);
}

/** Keys of the kitchen line, each `key=number`, temperatures in the script's unit. */
function kitchenOf(scan: Scan, units: Script['units']): KitchenSetup {
  const keys = ['seed', 'pounds', 'kilograms', 'bones', 'core', 'oven'] as const;
  const given = new Map<string, number>();
  while (scan.mark() < scan.text.length && !scan.maybe(/(?=#)/)) {
    const from = scan.mark();
    const key = scan.take(/[a-z]+(?==)/, `${keys.map((one) => `${one}=`).join(' ')}`)[0];
    if (!keys.some((one) => one === key) || given.has(key))
      scan.refuse(`each once: ${keys.map((one) => `${one}=`).join(' ')}`, from);
    scan.take(/=/, '=');
    given.set(key, scan.number('a number'));
  }
  const pounds = given.get('pounds');
  const kilograms = pounds === undefined ? given.get('kilograms') : kilogramsOf(pounds, 'lb');
  if (kilograms === undefined || kilograms <= 0) scan.refuse('pounds= or kilograms= above zero');
  const core = given.get('core');
  const bias = given.get('oven') ?? 0;
  return {
    seed: given.get('seed') ?? 1,
    kilograms,
    bones: given.get('bones') ?? 0,
    coreCelsius: core === undefined ? 4 : celsiusOf(core, units.temperature),
    ovenBiasKelvin: units.temperature === 'F' ? kelvinOfFahrenheitDegrees(bias) : bias,
  };
}

interface Timed {
  at: Instant;
  deed: Deed;
}

function timedLine(reading: Reading, scan: Scan): Timed {
  const window = scan.maybe(/(?=\S+\.\.)/) !== undefined;
  const at = timeOf(reading, scan);
  if (window) {
    scan.take(/\.\./, '..');
    const to = timeOf(reading, scan);
    scan.take(/!/, '! and the kind of an announcement');
    // A window over midnight opens on the day before.
    return announced(scan, to, at > to ? at - 24 * hourMilliseconds : at);
  }
  const from = scan.mark();
  const mark = scan.maybe(/guest>|>|!|[a-z]+(?=\s|$)/)?.[0];
  switch (mark) {
    case '>':
      return { at, deed: { kind: 'says', who: 'cook', text: wordsOf(reading, scan) } };
    case 'guest>':
      return { at, deed: { kind: 'says', who: 'guest', text: wordsOf(reading, scan) } };
    case '!':
      return announced(scan, at);
    case 'silent':
    case 'restart':
      return { at, deed: { kind: mark } };
    case 'doubled':
      if (!reading.lines.some((one) => one.deed.kind === 'says'))
        scan.refuse('"doubled" below a line on which something is said', from);
      return { at, deed: { kind: 'doubled' } };
    case 'probe':
      return { at, deed: { kind: 'senses', temperature: scan.number('what the probe shows') } };
    case 'unanswered':
      return unanswered(scan, at);
    default:
      return scan.refuse('>, guest>, !, silent, probe, doubled, restart or unanswered', from);
  }
}

function timeOf(reading: Reading, scan: Scan): Instant {
  const form = /([01]\d|2[0-3]):([0-5]\d)(?::([0-5]\d))?/;
  const [, hour, minute, second] = scan.take(form, 'a time HH:MM or HH:MM:SS');
  return instantOf(reading.date, `${hour}:${minute}`, reading.script.timeZone, {
    second: Number(second ?? 0),
  });
}

function wordsOf(reading: Reading, scan: Scan): string {
  const from = scan.mark();
  const text = scan.rest('what is said');
  for (const found of text.matchAll(/\{[^}]*\}/g)) {
    if (found[0] !== '{core}' && found[0] !== '{oven}')
      scan.refuse('{core} or {oven}, the only things in braces', from + found.index);
    if (!reading.script.kitchen)
      scan.refuse(`a "kitchen" line above, for ${found[0]} to come from`, from + found.index);
  }
  return text;
}

function announced(scan: Scan, at: Instant, from?: Instant): Timed {
  const announcement = scan.word(announcementKinds, 'the kind of an announcement');
  return { at, deed: { kind: 'announced', announcement, ...(from === undefined ? {} : { from }) } };
}

function unanswered(scan: Scan, from: Instant): Timed {
  const start = scan.mark();
  const form = 'how long, such as 3m or 1h30m';
  const [, hours, minutes, seconds] = scan.take(/(?:(\d+)h)?(?:(\d+)m)?(?:(\d+)s)?/, form);
  const length = Number(hours ?? 0) * 3600 + Number(minutes ?? 0) * 60 + Number(seconds ?? 0);
  if (length === 0) scan.refuse(form, start);
  return { at: from + length * 1000, deed: { kind: 'unanswered' } };
}

function addLine(reading: Reading, scan: Scan, line: number, timed: Timed): void {
  if (timed.at < reading.now) {
    const { date, time } = localTime(reading.now, reading.script.timeZone);
    scan.refuse(`a time not before ${time} of ${date}; "day YYYY-MM-DD" opens another day`, 0);
  }
  reading.now = timed.at;
  reading.lines.push({ line, text: scan.text.trim(), ...timed, checks: [] });
}

function checkOf(scan: Scan, line: number, deed: Deed): Check {
  const from = scan.mark();
  const demand = parseDemand(scan);
  const needsWords = demand.verb === 'heard' || demand.verb === 'only';
  if (needsWords && deed.kind !== 'says')
    scan.refuse(`"${demand.verb}" under a line on which something is said`, from);
  return { line, column: from + 1, text: scan.text.trim(), demand };
}
