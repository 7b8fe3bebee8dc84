/** Turns the facts of a dinner into a session script that plays the same dinner again. */
import { type Instant, localTime } from '../base/time.ts';
import { temperatureIn } from '../base/units.ts';
import type { Fact, FactOf } from '../kitchen/facts.ts';

/** Scripts tell time by whole seconds; later, so that nothing is said before it fell due. */
const toSecond = (at: Instant): Instant => Math.ceil(at / 1000) * 1000;

/** The script's text; undefined for a dinner that was never opened. */
export function scriptTextOf(facts: readonly Fact[]): string | undefined {
  const opened = facts.find(
    (fact): fact is FactOf<'dinner-opened'> => fact.type === 'dinner-opened',
  );
  if (!opened) return undefined;
  const zone = opened.timeZone;
  const start = localTime(opened.at, zone);
  const rows = [
    `# dinner ${opened.dinner}, from its log`,
    `start ${start.date} ${start.time} ${zone}`,
    `units ${opened.temperatureUnit} ${opened.weightUnit}`,
    `seed ${opened.seed}`,
  ];
  let date = start.date;
  const spokenAt = new Set(facts.filter((one) => one.type === 'words-heard').map((one) => one.at));
  for (const fact of facts) {
    const lines = spokenAt.has(fact.at) ? linesOf(fact) : unspokenLinesOf(fact, opened);
    if (lines.length === 0) continue;
    const local = localTime(toSecond(fact.at), zone);
    if (local.date !== date) {
      date = local.date;
      rows.push('', `day ${date}`);
    }
    const second = local.second > 0 ? `:${String(local.second).padStart(2, '0')}` : '';
    rows.push(
      `${local.time}${second} ${lines[0]}`,
      ...lines.slice(1).map((line) => `      ${line}`),
    );
  }
  return `${rows.join('\n')}\n`;
}

/** A number that came while nobody spoke is the thermometer's own. */
function unspokenLinesOf(fact: Fact, opened: FactOf<'dinner-opened'>): string[] {
  if (fact.type !== 'reading-taken') return linesOf(fact);
  const unit = opened.temperatureUnit;
  const asSent = fact.said?.unit === unit ? fact.said.value : undefined;
  return [`probe ${asSent ?? temperatureIn(fact.celsius, unit).toFixed(1)}`];
}

/** What the fact is in a script: its line, and the checks beneath. */
function linesOf(fact: Fact): string[] {
  if (fact.type === 'announced') return [`! ${fact.kind}`];
  if (fact.type !== 'words-heard') return [];
  // A script has one line a saying, and braces of its own.
  const text = fact.text.replace(/\s+/g, ' ').replace(/[{}]/g, '').trim();
  if (text === '') return [];
  const mark = fact.source === 'earshot' ? 'guest>' : '>';
  const intents = fact.heard.map((one) => one.intent);
  return [`${mark} ${text}`, ...(intents.length > 0 ? [`heard ${intents.join(', ')}`] : [])];
}
