/**
 * `npm run bench:heat -- --roasts 200 --seed 1`: the forecaster against the independent kitchen. Prints
 * errors against two rivals on the same roasts, coverage and width of the bands by lead, the peak's error
 * and the time a forecast takes beside a calibration loop; with `--write` it draws docs/heat/*.svg. A
 * straight line goes through the last three readings; the constant minutes per pound is the best one for
 * these very roasts. With `--bound` the forecast is told the true mass, start, oven and core, and errs still.
 * `--kept FILE` keeps the roasts cooked, or takes those kept, so that another model meets the same ones sooner.
 */
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { forecast } from '../../src/planner/heat/forecast.ts';
import { boundQuestionAt, questionAt, type Roast, roastOf } from './cases.ts';
import { plot } from './plot.ts';
import { type Figures, figuresOf, leads, type Row, rowOf } from './score.ts';

const { values } = parseArgs({
  options: {
    roasts: { type: 'string', default: '200' },
    seed: { type: 'string', default: '1' },
    write: { type: 'boolean', default: false },
    bound: { type: 'boolean', default: false },
    kept: { type: 'string' },
  },
});
const firstSeed = Number(values.seed);
const asked = values.bound ? boundQuestionAt : questionAt;

const rows: Row[] = [];
const coldMilliseconds: number[] = [];
for (const roast of roasts()) {
  const started = performance.now();
  forecast({ ...asked(roast, 0), readings: [] });
  coldMilliseconds.push(performance.now() - started);
  for (const lead of leads) {
    const question = asked(roast, roast.truth.pullMinute - lead);
    if (question.nowMinute < 30 || question.readings.length === 0) continue;
    const before = performance.now();
    const answer = forecast(question);
    rows.push(rowOf(roast, lead, question.readings, answer, performance.now() - before));
  }
}
const figures = leads.map((lead) => figuresOf(rows, lead));
report();
if (values.write) draw();

function roasts(): Iterable<Roast> {
  if (values.kept === undefined) return cooked();
  if (existsSync(values.kept)) return JSON.parse(readFileSync(values.kept, 'utf8'));
  const all = [...cooked()];
  writeFileSync(values.kept, JSON.stringify(all));
  return all;
}

function* cooked(): Generator<Roast> {
  for (let seed = firstSeed; seed < firstSeed + Number(values.roasts); seed += 1) {
    const roast = roastOf(seed);
    if (roast !== undefined) yield roast;
  }
}

function report(): void {
  const names = Object.keys(figures[0]!) as (keyof Figures)[];
  const wide = Math.max(...names.map((name) => name.length));
  for (const name of names) {
    const cells = figures.map((one) => one[name].toFixed(name.includes('over') ? 2 : 1));
    console.log(name.padEnd(wide), cells.map((cell) => cell.padStart(8)).join(''));
  }
  const loop = calibrationMilliseconds();
  const spread = (times: number[]): string => {
    const sorted = times.toSorted((a, b) => a - b);
    const at = (p: number): number => sorted[Math.floor(p * (sorted.length - 1))]!;
    const shown = [at(0.5), at(0.99)];
    return `p50 ${shown[0]!.toFixed(0)} ms (${(shown[0]! / loop).toFixed(2)} loops), p99 ${shown[1]!.toFixed(0)} ms`;
  };
  console.log(
    `cold forecast ${spread(coldMilliseconds)}; a fresh reading ${spread(rows.map((row) => row.milliseconds))}`,
  );
  console.log(
    `calibration loop ${loop.toFixed(0)} ms; roasts ${coldMilliseconds.length}, forecasts ${rows.length}`,
  );
}

/** Twenty million divisions, so that timings of two machines can be held against each other. */
function calibrationMilliseconds(): number {
  const started = performance.now();
  let sum = 0;
  for (let i = 1; i <= 20_000_000; i += 1) sum += 1 / i;
  return sum > 0 ? performance.now() - started : 0;
}

function draw(): void {
  mkdirSync('docs/heat', { recursive: true });
  const line = (of: (one: Figures) => number, name: string, colour: string) => ({
    name,
    colour,
    points: figures.map((one) => ({ x: one.lead, y: of(one) })),
  });
  writeFileSync(
    'docs/heat/error-against-lead.svg',
    plot({
      title: 'Mean error of the pull time, minutes, against lead',
      across: 'minutes before the pull',
      lines: [
        line((one) => one.errorMinutes, 'forecast', '#a33'),
        line((one) => one.lineErrorMinutes, 'straight line', '#36a'),
      ],
      // A multiple of the four steps of its scale, so that each is a whole number.
      top: 4 * Math.ceil(Math.max(...figures.map((one) => one.lineErrorMinutes)) / 4),
    }),
  );
  writeFileSync(
    'docs/heat/band-coverage.svg',
    plot({
      title: 'Share of roasts inside the 80 % band, percent, against lead',
      across: 'minutes before the pull',
      lines: [
        line((one) => 100 * one.covered, 'pull time', '#a33'),
        line((one) => 100 * one.peakCovered, 'peak', '#36a'),
      ],
      top: 100,
      between: { low: 75, high: 88 },
    }),
  );
}
