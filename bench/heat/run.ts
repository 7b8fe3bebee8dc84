/**
 * `npm run bench:heat -- [roasts] [first seed]`: the forecaster against the independent kitchen. Prints
 * mean errors against two rivals, coverage and width of the bands by lead, and the peak's error; writes
 * docs/heat/*.svg. A straight line goes through the last three readings; the constant minutes per pound
 * is the best one for these very roasts and this very cut.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import type { Band, ForecastQuestion } from '../../src/kitchen/forecast.ts';
import { forecast } from '../../src/planner/heat/forecast.ts';
import { dice, drawDinner } from './kitchen/dice.ts';
import { cook } from './kitchen/dinner.ts';
import { plot } from './plot.ts';

const leads = [60, 45, 30, 20, 10] as const;
const roasts = Number(process.argv[2] ?? 60);
const firstSeed = Number(process.argv[3] ?? 1);
const fahrenheitPerKelvin = 1.8;

interface Row {
  lead: number;
  readings: number;
  truth: number;
  kilograms: number;
  pull: Band;
  line: number | undefined;
  peakTruth: number;
  peak: Band;
  milliseconds: number;
}

const rows: Row[] = [];
for (let seed = firstSeed; seed < firstSeed + roasts; seed += 1) rows.push(...rowsOf(seed));
report();

function rowsOf(seed: number): Row[] {
  const { dinner, told } = drawDinner(seed);
  const truth = cook(dinner);
  if (!Number.isFinite(truth.pullMinute) || truth.pullMinute < 40) return [];
  const { uniform, normal } = dice(seed + 7919);
  const every = 12 + 8 * uniform();
  const scale = Math.round((truth.kilograms / 0.4536) * 10) * 0.04536;
  const readings: { minute: number; celsius: number }[] = [];
  for (let at = 40 + 20 * uniform(); at < truth.pullMinute; at += every) {
    const minute = Math.round(at);
    const said = (truth.probe[minute]! + 0.4 * normal()) * fahrenheitPerKelvin;
    readings.push({ minute, celsius: Math.round(said) / fahrenheitPerKelvin });
  }
  const found: Row[] = [];
  for (const lead of leads) {
    const now = truth.pullMinute - lead;
    const known = readings.filter((reading) => reading.minute <= now);
    if (now < 30 || known.length === 0) continue;
    const started = performance.now();
    const answer = forecast(question(told, scale, dinner.pullCelsius, known, now, seed));
    found.push({
      lead,
      readings: known.length,
      truth: truth.pullMinute,
      kilograms: truth.kilograms,
      pull: answer.pullMinute,
      line: straightLine(known.slice(-3), dinner.pullCelsius),
      peakTruth: truth.peakCelsius,
      peak: answer.peak.celsius,
      milliseconds: performance.now() - started,
    });
  }
  return found;
}

function question(
  told: ReturnType<typeof drawDinner>['told'],
  kilograms: number,
  pullCelsius: number,
  readings: readonly { minute: number; celsius: number }[],
  nowMinute: number,
  seed: number,
): ForecastQuestion {
  return {
    roast: {
      shape: {
        form: 'rib',
        kilogramsPerBone: 1.05,
        composition: { water: 0.5524, protein: 0.1653, fat: 0.261 },
      },
      kilograms,
      bones: told.bones,
      startCelsius: told.startCelsius,
    },
    oven: told.oven,
    fan: told.fan,
    readings,
    nowMinute,
    pullCelsius,
    rest: told.tented ? 'tented' : 'open',
    seed,
  };
}

function straightLine(
  readings: readonly { minute: number; celsius: number }[],
  pullCelsius: number,
): number | undefined {
  if (readings.length < 3) return undefined;
  const mean = (values: number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  const minute = mean(readings.map((one) => one.minute));
  const celsius = mean(readings.map((one) => one.celsius));
  let above = 0;
  let below = 0;
  for (const one of readings) {
    above += (one.minute - minute) * (one.celsius - celsius);
    below += (one.minute - minute) ** 2;
  }
  const slope = Math.max(0.02, above / below);
  return minute + (pullCelsius - celsius) / slope;
}

function report(): void {
  const mean = (values: number[]): number =>
    values.reduce((a, b) => a + b, 0) / Math.max(1, values.length);
  const rates = rows.map((row) => row.truth / row.kilograms).sort((a, b) => a - b);
  const figures = leads.map((lead) => {
    const all = rows.filter((row) => row.lead === lead);
    const lined = all.filter((row) => row.line !== undefined);
    const miss = (row: Row): number => Math.abs(row.pull.p50 - row.truth);
    const constant = Math.min(
      ...rates.map((rate) => mean(all.map((row) => Math.abs(rate * row.kilograms - row.truth)))),
    );
    const peaks = all.filter((row) => row.readings >= 3);
    return {
      lead,
      cases: all.length,
      error: mean(all.map(miss)),
      bias: mean(all.map((row) => row.pull.p50 - row.truth)),
      overLine: mean(lined.map(miss)) / mean(lined.map((row) => Math.abs(row.line! - row.truth))),
      overConstant: mean(all.map(miss)) / constant,
      covered: mean(
        all.map((row) => Number(row.truth >= row.pull.p10 && row.truth <= row.pull.p90)),
      ),
      width: mean(all.map((row) => row.pull.p90 - row.pull.p10)),
      peakError:
        mean(peaks.map((row) => Math.abs(row.peak.p50 - row.peakTruth))) * fahrenheitPerKelvin,
      peakBias: mean(peaks.map((row) => row.peak.p50 - row.peakTruth)) * fahrenheitPerKelvin,
      peakCovered: mean(
        peaks.map((row) => Number(row.peakTruth >= row.peak.p10 && row.peakTruth <= row.peak.p90)),
      ),
    };
  });
  for (const one of figures)
    console.log(
      Object.entries(one)
        .map(([name, value]) => `${name} ${Number.isInteger(value) ? value : value.toFixed(2)}`)
        .join('  '),
    );
  const times = rows.map((row) => row.milliseconds).sort((a, b) => a - b);
  console.log(`forecast p50 ${times[times.length >> 1]?.toFixed(0)} ms over ${rows.length}`);
  mkdirSync('docs/heat', { recursive: true });
  writeFileSync(
    'docs/heat/error-against-lead.svg',
    plot({
      title: 'Mean error of the pull time, minutes, against lead',
      across: 'minutes before the pull',
      points: figures.map((one) => ({ x: one.lead, y: one.error })),
      top: Math.ceil(Math.max(...figures.map((one) => one.error))) + 1,
    }),
  );
  writeFileSync(
    'docs/heat/band-coverage.svg',
    plot({
      title: 'Share of roasts inside the 80 % band, percent, against lead',
      across: 'minutes before the pull',
      points: figures.map((one) => ({ x: one.lead, y: 100 * one.covered })),
      top: 100,
      between: { low: 75, high: 88 },
    }),
  );
}
