/** The forecast's errors, its bands and its rivals' errors, by lead. */
import type { Band, Forecast } from '../../src/kitchen/forecast.ts';
import type { Reading, Roast } from './cases.ts';

export const leads = [60, 45, 30, 20, 10] as const;
const fahrenheitPerKelvin = 1.8;

/** One forecast, so many minutes before the truth. */
export interface Row {
  seed: number;
  lead: number;
  readings: number;
  truthMinute: number;
  kilograms: number;
  pullMinute: Band;
  /** The straight line through the last three readings, once there are three. */
  lineMinute: number | undefined;
  peakTruthCelsius: number;
  peakCelsius: Band;
  passedAtLatestLook: boolean;
  milliseconds: number;
}

export function rowOf(
  roast: Roast,
  lead: number,
  readings: readonly Reading[],
  answer: Forecast,
  milliseconds: number,
): Row {
  return {
    seed: roast.seed,
    lead,
    readings: readings.length,
    truthMinute: roast.truth.pullMinute,
    kilograms: roast.truth.kilograms,
    pullMinute: answer.pullMinute,
    lineMinute: straightLine(readings.slice(-3), roast.pullCelsius),
    peakTruthCelsius: roast.truth.peakCelsius,
    peakCelsius: answer.peak.celsius,
    passedAtLatestLook: answer.latestLookMinute > roast.truth.pullMinute,
    milliseconds,
  };
}

function straightLine(readings: readonly Reading[], pullCelsius: number): number | undefined {
  if (readings.length < 3) return undefined;
  const minute = mean(readings.map((one) => one.minute));
  const celsius = mean(readings.map((one) => one.celsius));
  let above = 0;
  let below = 0;
  for (const one of readings) {
    above += (one.minute - minute) * (one.celsius - celsius);
    below += (one.minute - minute) ** 2;
  }
  return minute + (pullCelsius - celsius) / Math.max(0.02, above / below);
}

export interface Figures {
  lead: number;
  cases: number;
  errorMinutes: number;
  biasMinutes: number;
  /** Where there are three readings for a line. */
  lineErrorMinutes: number;
  constantErrorMinutes: number;
  overLine: number;
  overConstant: number;
  covered: number;
  widthMinutes: number;
  passedAtLatestLook: number;
  peakErrorFahrenheit: number;
  peakBiasFahrenheit: number;
  peakCovered: number;
  peakWidthFahrenheit: number;
}

export function figuresOf(rows: readonly Row[], lead: number): Figures {
  const all = rows.filter((row) => row.lead === lead);
  const lined = all.filter((row) => row.lineMinute !== undefined);
  const late = all.filter((row) => row.readings >= 3);
  const miss = (row: Row): number => row.pullMinute.p50 - row.truthMinute;
  const peakMiss = (row: Row): number =>
    (row.peakCelsius.p50 - row.peakTruthCelsius) * fahrenheitPerKelvin;
  const absolute = (values: number[]): number => mean(values.map(Math.abs));
  const holds = ({ p10, p90 }: Band, truth: number): number => Number(p10 <= truth && truth <= p90);
  const width = ({ p10, p90 }: Band): number => p90 - p10;
  const lineErrorMinutes = absolute(lined.map((row) => row.lineMinute! - row.truthMinute));
  // The constant is the best for these very roasts, found afterwards: no cook could know it.
  const constantErrorMinutes = Math.min(
    ...all.map((rate) =>
      absolute(
        all.map((row) => (rate.truthMinute / rate.kilograms) * row.kilograms - row.truthMinute),
      ),
    ),
  );
  const errorMinutes = absolute(all.map(miss));
  return {
    lead,
    cases: all.length,
    errorMinutes,
    biasMinutes: mean(all.map(miss)),
    lineErrorMinutes,
    constantErrorMinutes,
    overLine: absolute(lined.map(miss)) / lineErrorMinutes,
    overConstant: errorMinutes / constantErrorMinutes,
    covered: mean(all.map((row) => holds(row.pullMinute, row.truthMinute))),
    widthMinutes: mean(all.map((row) => width(row.pullMinute))),
    passedAtLatestLook: mean(all.map((row) => Number(row.passedAtLatestLook))),
    peakErrorFahrenheit: absolute(late.map(peakMiss)),
    peakBiasFahrenheit: mean(late.map(peakMiss)),
    peakCovered: mean(late.map((row) => holds(row.peakCelsius, row.peakTruthCelsius))),
    peakWidthFahrenheit: mean(late.map((row) => width(row.peakCelsius))) * fahrenheitPerKelvin,
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
