/** A day's plan as a table: when, in which lane, what, whose hands, and why then. */
import { type Instant, localTime, minuteMilliseconds } from '../base/time.ts';
import { celsiusOfFahrenheit } from '../base/units.ts';
import type { View } from '../kitchen/view.ts';

interface Row {
  at: Instant;
  time: string;
  lane: string;
  what: string;
  hands: string;
  why: string;
}

const nearestMinute = (iso: string): Instant =>
  Math.round(Date.parse(iso) / minuteMilliseconds) * minuteMilliseconds;

export function planTable(view: View): string {
  const clock = (iso: string): string => localTime(nearestMinute(iso), view.timeZone).time;
  const degrees = (fahrenheit: number): string =>
    view.units.temperature === 'F'
      ? `${Math.round(fahrenheit)} °F`
      : `${Math.round(celsiusOfFahrenheit(fahrenheit))} °C`;
  const rows: Row[] = [
    ...view.steps.map((step) => ({
      at: Date.parse(step.start),
      time: `${clock(step.start)}–${clock(step.end)}`,
      lane: step.card,
      what: step.title,
      hands: step.hands.join(', '),
      why: step.why,
    })),
    ...view.oven.program.map((move) => ({
      at: Date.parse(move.at),
      time: clock(move.at),
      lane: 'oven',
      what: move.fahrenheit > 0 ? degrees(move.fahrenheit) : 'off',
      hands: '',
      why: move.why,
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
  return [summary(view, clock, degrees), '', ...daysOf(rows, view, line), ''].join('\n');

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

function summary(
  view: View,
  clock: (iso: string) => string,
  degrees: (fahrenheit: number) => string,
): string {
  const { wanted, likely } = view.serving;
  const { serveFahrenheit, pullFahrenheit } = view.target;
  const pull = view.forecast?.pull;
  return [
    wanted ? `Table at ${clock(wanted)}` : 'No serving time',
    ...(likely && wanted && clock(likely) !== clock(wanted) ? [`likely ${clock(likely)}`] : []),
    ...(view.guests === undefined ? [] : [`for ${view.guests}`]),
    ...(pullFahrenheit === undefined ? [] : [`pull at ${degrees(pullFahrenheit)}`]),
    ...(pull ? [`about ${clock(pull.p50)} (${clock(pull.p10)} to ${clock(pull.p90)})`] : []),
    ...(serveFahrenheit === undefined ? [] : [`served at ${degrees(serveFahrenheit)}`]),
  ].join(', ');
}
