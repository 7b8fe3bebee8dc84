/** What a thread of the pool does: forecasts and plans, plain data in and out. */
import type { ForecastQuestion } from '../kitchen/forecast.ts';
import { forecast } from '../planner/heat/forecast.ts';
import { type PlanQuestion, plan } from '../planner/plan.ts';
import { recalling } from '../planner/solve/recall.ts';

export type Work =
  | { kind: 'forecast'; question: ForecastQuestion }
  | { kind: 'plan'; question: PlanQuestion };

const solver = recalling();

export default function work({ kind, question }: Work): unknown {
  return kind === 'forecast' ? forecast(question) : plan(question, solver);
}
