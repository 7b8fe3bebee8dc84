/** Whether a check of a script holds at its moment; total, and when it does not, what came instead. */
import { assertNever } from '../base/assert.ts';
import { type Instant, instantOf, localTime, minutesBetween } from '../base/time.ts';
import { type TemperatureUnit, temperatureIn } from '../base/units.ts';
import type { Heard } from '../kitchen/heard.ts';
import type { View } from '../kitchen/view.ts';
import type { Announcement, Reply } from '../session/ports.ts';
import type { Demand, Range } from './script.ts';

/** What a check may look at: one line's turn, and what was announced since the line before. */
export interface Moment {
  heard: readonly Heard[];
  replies: readonly Pick<Reply, 'text' | 'speech'>[];
  announcements: readonly Pick<Announcement, 'text' | 'speech'>[];
  view: View;
  timeZone: string;
  unit: TemperatureUnit;
}

/** What came instead of what was wanted; undefined when the check holds. */
export function shortfallOf(demand: Demand, moment: Moment): string | undefined {
  const { view } = moment;
  switch (demand.verb) {
    case 'heard':
      return unless(inOrder(demand.intents, intentsOf(moment)), intentsOf(moment).join(', '));
    case 'only':
      return unless(exactly(demand.intents, intentsOf(moment)), intentsOf(moment).join(', '));
    case 'stage':
      return unless(view.stage === demand.stage, view.stage);
    case 'serving':
      return servingShortfall(demand, moment);
    case 'guests':
      return unless(view.guests === demand.count, view.guests ?? 'no number of guests');
    case 'options':
      return optionsShortfall(demand.count, view);
    case 'option':
      return optionShortfall(demand, moment);
    case 'says':
      return unless(spoken(demand.pattern, moment), quoted(moment));
    case 'silent-on':
      return unless(!spoken(demand.pattern, moment), quoted(moment));
    case 'caution':
      return unless(
        view.cautions.some((one) => demand.pattern.test(`${one.text} (${one.source})`)),
        view.cautions.map((one) => `"${one.text}"`).join(', ') || 'no caution',
      );
    case 'asks':
      return asksShortfall(demand.what, view);
    case 'oven':
      return within(demand.range, view.oven.setFahrenheit, moment.unit);
    case 'pull':
      return within(demand.range, view.target.pullFahrenheit, moment.unit);
    case 'core':
      return within(demand.range, view.forecast?.coreNowFahrenheit.p50, moment.unit);
    case 'step': {
      const step = view.steps.find((one) => one.id === demand.id);
      return unless(step?.state === demand.state, step?.state ?? known('step', view.steps));
    }
    case 'sides': {
      const side = view.sides.find((one) => one.id === demand.id);
      return unless(side?.state === demand.state, side?.state ?? known('dish', view.sides));
    }
    case 'view': {
      const found = foundAt(view, demand.path);
      return unless(found.includes(demand.value), found[0] ?? 'nothing');
    }
    default:
      return assertNever(demand);
  }
}

const unless = (holds: boolean, came: string | number): string | undefined =>
  holds ? undefined : String(came);

export const intentsOf = (moment: Moment): string[] => moment.heard.map((one) => one.intent);

/** All wanted, in that order; others may stand between. */
function inOrder(wanted: readonly string[], came: readonly string[]): boolean {
  let next = 0;
  for (const intent of came) if (intent === wanted[next]) next += 1;
  return next === wanted.length;
}

/** The same intents and no others, but for what carries no meaning of its own. */
function exactly(wanted: readonly string[], came: readonly string[]): boolean {
  const free = (intent: string): boolean => intent === 'courtesy' || intent === 'acknowledge';
  const counted = came.filter((intent) => wanted.includes(intent) || !free(intent));
  return (
    counted.every((intent) => wanted.includes(intent)) &&
    wanted.every((intent) => counted.includes(intent))
  );
}

function servingShortfall(
  demand: Extract<Demand, { verb: 'serving' }>,
  moment: Moment,
): string | undefined {
  const wanted = moment.view.serving.wanted;
  if (wanted === undefined) return 'no serving time';
  const at = Date.parse(wanted);
  const local = localTime(at, moment.timeZone);
  // Without a date the clock on the wall is meant, on whichever day dinner is.
  const meant = instantOf(
    demand.date ?? nearestDate(at, demand.time, moment),
    demand.time,
    moment.timeZone,
  );
  const off = Math.abs(minutesBetween(meant, at));
  return unless(off <= demand.withinMinutes, `${local.date} ${local.time}`);
}

/** The day on which that clock time is nearest to the instant. */
function nearestDate(at: Instant, time: string, moment: Moment): string {
  const dates = [-1, 0, 1].map((days) => localTime(at + days * 86_400_000, moment.timeZone).date);
  const distance = (date: string): number => Math.abs(instantOf(date, time, moment.timeZone) - at);
  return dates.reduce((best, date) => (distance(date) < distance(best) ? date : best));
}

function optionsShortfall(count: number, view: View): string | undefined {
  const options = view.options ?? [];
  const titles = options.map((one) => `${one.n} "${one.title}"`).join(', ');
  return unless(options.length === count, `${options.length} options${titles && `: ${titles}`}`);
}

function optionShortfall(
  demand: Extract<Demand, { verb: 'option' }>,
  moment: Moment,
): string | undefined {
  const option = moment.view.options?.find((one) => one.n === demand.n);
  if (!option) return optionsShortfall(-1, moment.view);
  const time = localTime(Date.parse(option.serving), moment.timeZone).time;
  const { serving, core } = demand;
  const inTime = !serving || between(serving.from, serving.to, time);
  const atServing = option.coreAtServing.p50;
  const inCore = !core || within(core, atServing, moment.unit) === undefined;
  const came = `"${option.title}" at ${time}, core ${degrees(atServing, moment.unit)}`;
  return unless(inTime && inCore, came);
}

/** Whether a clock time lies between two, over midnight where the second is the smaller. */
const between = (from: string, to: string, time: string): boolean =>
  from <= to ? from <= time && time <= to : from <= time || time <= to;

const lines = (moment: Moment): readonly Pick<Reply, 'text' | 'speech'>[] => [
  ...moment.announcements,
  ...moment.replies,
];

const spoken = (pattern: RegExp, moment: Moment): boolean =>
  lines(moment).some((one) => pattern.test(one.text) || pattern.test(one.speech));

const quoted = (moment: Moment): string =>
  lines(moment)
    .map((one) => `"${one.text}"`)
    .join('\n') || 'nothing said';

function asksShortfall(what: string, view: View): string | undefined {
  const asking = view.asking;
  const holds = what === 'nothing' ? !asking : asking?.kind === what || asking?.expecting === what;
  return unless(holds, asking ? `${asking.kind}: "${asking.text}"` : 'nothing asked');
}

function within(range: Range, fahrenheit: number | undefined, unit: TemperatureUnit) {
  if (fahrenheit === undefined) return 'no temperature yet';
  const value = inUnit(fahrenheit, unit);
  return unless(range.low <= value && value <= range.high, degrees(fahrenheit, unit));
}

export const inUnit = (fahrenheit: number, unit: TemperatureUnit): number =>
  temperatureIn(((fahrenheit - 32) * 5) / 9, unit);

const degrees = (fahrenheit: number, unit: TemperatureUnit): string =>
  `${inUnit(fahrenheit, unit).toFixed(1)} °${unit}`;

const known = (thing: string, all: readonly { id: string }[]): string =>
  `no such ${thing} among ${all.map((one) => one.id).join(', ') || 'none'}`;

/** How what stands at the path may be written: as JSON or bare; nothing where nothing stands. */
function foundAt(view: View, path: readonly string[]): string[] {
  let value: unknown = view;
  for (const key of path)
    value =
      typeof value === 'object' && value !== null
        ? (value as Record<string, unknown>)[key]
        : undefined;
  return value === undefined || value === null
    ? ['nothing']
    : [JSON.stringify(value), String(value)];
}
