/** A session script, read: a dinner's lines with their times and what must hold at each of them. */
import type { Instant } from '../base/time.ts';
import type { TemperatureUnit, WeightUnit } from '../base/units.ts';
import type { AnnouncementKind } from '../kitchen/facts.ts';
import type { Intent, Stage } from '../kitchen/heard.ts';
import type { StepState } from '../kitchen/plan.ts';
import type { SideState } from '../kitchen/view.ts';

/** A range in the script's unit, both ends included. */
export interface Range {
  low: number;
  high: number;
}

/** What a check demands. Patterns never heed upper and lower case. */
export type Demand =
  | { verb: 'heard' | 'only'; intents: readonly Intent[] }
  | { verb: 'stage'; stage: Stage }
  | { verb: 'serving'; date?: string; time: string; withinMinutes: number }
  | { verb: 'guests' | 'options'; count: number }
  | { verb: 'says' | 'silent-on' | 'caution'; pattern: RegExp }
  | { verb: 'asks'; what: string }
  | { verb: 'oven' | 'pull' | 'core'; range: Range }
  | { verb: 'option'; n: number; serving?: { from: string; to: string }; core?: Range }
  | { verb: 'step'; id: string; state: StepState }
  | { verb: 'sides'; id: string; state: SideState }
  | { verb: 'view'; path: readonly string[]; value: string };

export interface Check {
  /** Line and column of the file, from 1. */
  line: number;
  column: number;
  /** The check as it is written. */
  text: string;
  demand: Demand;
}

export type Deed =
  | { kind: 'says'; who: 'cook' | 'guest'; text: string }
  /** An announcement must have come since the last line, not before `from` where that is given. */
  | { kind: 'announced'; announcement: AnnouncementKind; from?: Instant }
  | { kind: 'silent' }
  /** A leave-in thermometer sends its number, in the script's unit, without a word. */
  | { kind: 'senses'; temperature: number }
  /** A bridge delivers the last thing said a second time; nothing may come of it. */
  | { kind: 'doubled' }
  | { kind: 'restart' }
  /** The clock moves, nobody says anything, and the last line stays the last line. */
  | { kind: 'unanswered' };

export interface Line {
  line: number;
  text: string;
  /** The clock moves to here before anything else happens. */
  at: Instant;
  deed: Deed;
  checks: readonly Check[];
}

/** The truth behind `{core}` and `{oven}`. SI. */
export interface KitchenSetup {
  seed: number;
  kilograms: number;
  bones: number;
  coreCelsius: number;
  /** How much hotter the oven is than its dial; negative runs cool. */
  ovenBiasKelvin: number;
}

export interface Script {
  file: string;
  startAt: Instant;
  timeZone: string;
  units: { temperature: TemperatureUnit; weight: WeightUnit };
  seed: number;
  kitchen?: KitchenSetup;
  lines: readonly Line[];
}

/** Where a script cannot be read, and what was expected there. Lines and columns from 1. */
export interface ScriptFault {
  file: string;
  line: number;
  column: number;
  expected: string;
}

export const faultSentence = (fault: ScriptFault): string =>
  `${fault.file}:${fault.line}:${fault.column}: expected ${fault.expected}`;

/** The sentence, and beneath it the line with a mark under the column. */
export function faultPointedAt(fault: ScriptFault, text: string): string {
  const row = (text.split(/\r?\n/)[fault.line - 1] ?? '').trimEnd();
  const before = row.slice(0, fault.column - 1).replace(/[^\t]/g, ' ');
  return [faultSentence(fault), ...(row === '' ? [] : [`  ${row}`, `  ${before}^`])].join('\n');
}
