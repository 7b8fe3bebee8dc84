/** Reads the indented lines of a script: the checks. */
import { assertNever } from '../base/assert.ts';
import { questionKinds } from '../kitchen/facts.ts';
import { expectations, type Intent, intents, stages } from '../kitchen/heard.ts';
import type { Scan } from './scan.ts';
import type { Demand, Range } from './script.ts';

const verbs = [
  'heard',
  'only',
  'stage',
  'serving',
  'guests',
  'says',
  'silent-on',
  'asks',
  'oven',
  'pull',
  'core',
  'options',
  'option',
  'step',
  'sides',
  'caution',
  'view',
] as const satisfies readonly Demand['verb'][];

const stepStates = ['planned', 'due', 'active', 'done', 'skipped'] as const;
const sideStates = ['waiting', 'preparing', 'in-oven', 'done', 'held'] as const;
const askable = ['nothing', ...new Set<string>([...expectations, ...questionKinds])];

const clockTime = /([01]\d|2[0-3]):[0-5]\d/;
const stepId = /[a-z][a-z0-9-]*(?:\.[a-z][a-z0-9-]*)?/;

export function parseDemand(scan: Scan): Demand {
  const verb = scan.word(verbs, 'a check');
  const demand = demandOf(verb, scan);
  scan.end();
  return demand;
}

function demandOf(verb: (typeof verbs)[number], scan: Scan): Demand {
  switch (verb) {
    case 'heard':
    case 'only':
      return { verb, intents: intentsOf(scan) };
    case 'stage':
      return { verb, stage: scan.word(stages, 'a stage') };
    case 'serving':
      return servingOf(scan);
    case 'guests':
      return { verb, count: scan.count('how many guests') };
    case 'options':
      return { verb, count: scan.count('how many options') };
    case 'says':
    case 'silent-on':
    case 'caution':
      return { verb, pattern: patternOf(scan) };
    case 'asks':
      return { verb, what: scan.word(askable, 'a question') };
    case 'oven':
    case 'pull':
    case 'core':
      return { verb, range: rangeOf(scan) };
    case 'option':
      return optionOf(scan);
    case 'step':
      return {
        verb,
        id: scan.take(stepId, 'the id of a step, such as "roast-potatoes.in"')[0],
        state: scan.word(stepStates, 'the state of a step'),
      };
    case 'sides':
      return {
        verb,
        id: scan.take(/[a-z][a-z0-9-]*/, 'the id of a dish')[0],
        state: scan.word(sideStates, 'the state of a dish'),
      };
    case 'view':
      return viewOf(scan);
    default:
      return assertNever(verb);
  }
}

function intentsOf(scan: Scan): Intent[] {
  const named = [scan.word(intents, 'an intent')];
  while (scan.maybe(/,/)) named.push(scan.word(intents, 'an intent'));
  return named;
}

function servingOf(scan: Scan): Demand {
  const date = scan.maybe(/\d{4}-\d{2}-\d{2}/)?.[0];
  const time = scan.take(clockTime, 'a time HH:MM')[0];
  const withinMinutes = scan.maybe(/±/) ? scan.count('minutes after ±') : 0;
  return { verb: 'serving', ...(date ? { date } : {}), time, withinMinutes };
}

function rangeOf(scan: Scan): Range {
  const low = scan.number('a temperature or a range such as 108..112');
  if (!scan.maybe(/\.\./)) return { low: low - 0.5, high: low + 0.5 };
  const start = scan.mark();
  const high = scan.number('the upper end of the range');
  return high < low ? scan.refuse(`an upper end of ${low} or more`, start) : { low, high };
}

function optionOf(scan: Scan): Demand {
  const n = scan.count('the number of an option');
  let serving: { from: string; to: string } | undefined;
  let core: Range | undefined;
  const expected = '"serving HH:MM..HH:MM" or "core 122..130"';
  do {
    if (scan.word(['serving', 'core'], expected) === 'core') core = rangeOf(scan);
    else {
      const from = scan.take(clockTime, 'a time HH:MM')[0];
      const to = scan.maybe(/\.\./) ? scan.take(clockTime, 'a time HH:MM')[0] : from;
      serving = { from, to };
    }
  } while (scan.maybe(/(?=[a-z])/));
  return { verb: 'option', n, ...(serving ? { serving } : {}), ...(core ? { core } : {}) };
}

/** A regular expression between slashes; it never heeds case, with or without the `i`. */
function patternOf(scan: Scan): RegExp {
  const start = scan.mark();
  const match = scan.take(/\/((?:\\.|[^/\\])+)\/i?(?=\s|$)/, 'a regular expression, /like this/i');
  try {
    return new RegExp(match[1] ?? '', 'i');
  } catch {
    return scan.refuse('a regular expression that can be read', start);
  }
}

function viewOf(scan: Scan): Demand {
  const path = scan.take(/[A-Za-z0-9_.[\]-]+(?=\s*=)/, 'a path into the view, such as "paused"')[0];
  scan.take(/=/, '=');
  const value = scan.rest('a value, or "nothing"');
  return { verb: 'view', path: path.split(/[.[\]]+/).filter((part) => part !== ''), value };
}
