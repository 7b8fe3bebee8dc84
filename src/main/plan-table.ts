/** A day's plan as a table: when, in which lane, what, whose hands, and why then. */
import { type Instant, localTime } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { View } from '../kitchen/view.ts';
import { breaksFirst, shortfallsInWords } from '../reply/en/shortfalls.ts';
import { clock as clockWords } from '../reply/en/words.ts';
import type { Outlook } from '../session/outlook.ts';
import { sceneOf } from '../session/view.ts';

interface Row {
  at: Instant;
  time: string;
  lane: string;
  what: string;
  hands: string;
  why: string;
}

/** Why the oven is turned, for the page on the fridge. */
const ovenWhy: Record<string, string> = {
  preheat: 'to be hot for the roast',
  roast: 'for the roast',
  course: 'the course taken',
  hold: 'to hold the roast',
  sides: 'for the dishes',
  'finish-sear': 'for the sear at the end',
};

/** The whole page: a line that sums up, the table, and what gives or would give first. */
export function planTable(view: View, outlook: Outlook): string {
  const { dinner, plan } = outlook;
  // The clock of the reasons: twelve hours or twenty-four, as the household has it.
  const clock = (iso: string): string => clockWords(Date.parse(iso), dinner).text;
  const degrees = (fahrenheit: number): string =>
    view.units.temperature === 'F'
      ? `${Math.round(fahrenheit)} °F`
      : `${Math.round(celsiusOfFahrenheit(fahrenheit))} °C`;
  const scene = sceneOf(outlook);
  const notes = plan
    ? [...shortfallsInWords(plan, scene), ...[breaksFirst(plan) ?? []].flat()].map(
        (one) => one.text,
      )
    : [];
  const rows: Row[] = [
    ...view.steps.map((step) => ({
      at: Date.parse(step.start),
      time: `${clock(step.start)}–${clock(step.end)}`,
      lane: step.card,
      what: step.title,
      hands: step.hands.join(', '),
      why: reasonOnly(step.why),
    })),
    ...view.oven.program.map((move) => ({
      at: Date.parse(move.at),
      time: clock(move.at),
      lane: move.oven === 1 ? 'second oven' : 'oven',
      what: move.fahrenheit > 0 ? degrees(move.fahrenheit) : 'off',
      hands: '',
      why: ovenWhy[move.why] ?? '',
    })),
  ].sort((a, b) => a.at - b.at);
  const heads = { time: 'time', lane: 'lane', what: 'what', hands: 'hands', why: 'why' };
  const columns = Object.keys(heads) as (keyof typeof heads)[];
  const width = (column: keyof typeof heads): number =>
    Math.max(heads[column].length, ...rows.map((row) => row[column].length));
  const widths = new Map(columns.map((column) => [column, width(column)]));
  const line = (row: Pick<Row, keyof typeof heads>): string =>
    columns
      .map((column) => row[column].padEnd(widths.get(column) ?? 0))
      .join('  ')
      .trimEnd();
  return [summary(view, clock, degrees), ...notes, '', ...daysOf(rows, view, line), ''].join('\n');

  function daysOf(all: Row[], of: View, print: typeof line): string[] {
    let date = '';
    return [
      print(heads),
      ...all.flatMap((row) => {
        const day = localTime(row.at, of.timeZone).date;
        const heading = day === date ? [] : [`— ${day} —`];
        date = day;
        return [...heading, print(row)];
      }),
    ];
  }
}

/** The sentence without the step and the time that stand beside it. */
const reasonOnly = (why: string): string => /, (since .*)\.$/.exec(why)?.[1] ?? '';

function summary(
  view: View,
  clock: (iso: string) => string,
  degrees: (fahrenheit: number) => string,
): string {
  const { wanted, likely, onTimeChance } = view.serving;
  const { serveFahrenheit, pullFahrenheit } = view.target;
  const pull = view.forecast?.pull;
  return [
    wanted ? `Table at ${clock(wanted)}` : 'No serving time',
    ...(likely && wanted && clock(likely) !== clock(wanted) ? [`likely ${clock(likely)}`] : []),
    ...(view.guests === undefined ? [] : [`for ${view.guests}`]),
    ...(pullFahrenheit === undefined ? [] : [`pull at ${degrees(pullFahrenheit)}`]),
    ...(pull ? [`about ${clock(pull.p50)} (${clock(pull.p10)} to ${clock(pull.p90)})`] : []),
    ...(serveFahrenheit === undefined ? [] : [`served at ${degrees(serveFahrenheit)}`]),
    ...(onTimeChance === undefined
      ? []
      : [`on time within ten minutes ${Math.round(100 * onTimeChance)} times in a hundred`]),
  ].join(', ');
}
