/** Days written down with their proved optimum, one a line, so that a changed card changes no proof. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { gunzipSync, gzipSync } from 'node:zlib';
import type { Lag, LagKind, Point, Problem } from '../../src/planner/problem.ts';

export interface ProvedDay {
  seed: number;
  /** The table wanted cannot be met. */
  late: boolean;
  problem: Problem;
  optimum: number;
}

type ShortPoint = [task: string, plus: number];
type ShortLag = [ShortPoint, ShortPoint, minutes: number, weight: number, kind: LagKind];

const short = ({ task, plus }: Point): ShortPoint => [task, plus];
const long = ([task, plus]: ShortPoint): Point => ({ task, plus });

function lineOf({ problem, ...rest }: ProvedDay): string {
  return JSON.stringify({
    ...rest,
    problem: {
      ...problem,
      lags: problem.lags.map(
        (lag): ShortLag => [short(lag.from), short(lag.to), lag.minutes, lag.weight, lag.kind],
      ),
    },
  });
}

function dayOfLine(line: string): ProvedDay {
  const day = JSON.parse(line) as Omit<ProvedDay, 'problem'> & {
    problem: Omit<Problem, 'lags'> & { lags: ShortLag[] };
  };
  const lags = day.problem.lags.map(
    ([from, to, minutes, weight, kind]): Lag => ({
      from: long(from),
      to: long(to),
      minutes,
      weight,
      kind,
    }),
  );
  return { ...day, problem: { ...day.problem, lags } };
}

const file = new URL('days.jsonl.gz', import.meta.url);

export const provedDays = (): ProvedDay[] =>
  existsSync(file)
    ? gunzipSync(readFileSync(file))
        .toString('utf8')
        .split('\n')
        .filter((line) => line !== '')
        .map(dayOfLine)
    : [];

export const keepProvedDays = (days: readonly ProvedDay[]): void =>
  writeFileSync(file, gzipSync(`${days.map(lineOf).join('\n')}\n`, { level: 9 }));
