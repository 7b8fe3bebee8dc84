/**
 * The rest of a day as pure data: what there is to do, what waits for what, who and what it takes,
 * and what each minute missed costs. Whole minutes from an origin of the asker's choosing. It knows
 * no dinner, no card and no clock; docs/planner.md gives the same with symbols.
 */

/** Low, likely and high minutes. */
export interface Span {
  low: number;
  likely: number;
  high: number;
}

export interface Task {
  id: string;
  /** Planned with the likely minutes; the others say how far it can stray. */
  minutes: Span;
  /** It was begun, or its instant is not the planner's to choose. */
  fixedStart?: number | undefined;
}

/** A point in time: so many minutes after the start of a task, or of the origin. */
export interface Point {
  /** A task's id, or `origin`. */
  task: string;
  plus: number;
}

export const origin = 'origin';

/** The stay that stands for the heat an oven has already. */
export const ovenNow = 'oven-now';

/** What a bound is for, so that a plan can say why. */
export type LagKind =
  /** One thing comes after another. */
  | 'order'
  /** Not before it is possible at all: now, a thing bought, a cook come. */
  | 'release'
  /** What the roast, its rest and its carving ask for. */
  | 'roast'
  /** The table at the time wanted. */
  | 'table'
  /** The window that keeps a dish hot and whole. */
  | 'window'
  /** Where in its window it stands best. */
  | 'wish'
  /** What the cook was told. */
  | 'promise';

/** `to` comes at least `minutes` after `from` (negative: at most so many before). */
export interface Lag {
  from: Point;
  to: Point;
  minutes: number;
  /** Cost of each minute missed; `hard` and above is a rule. */
  weight: number;
  kind: LagKind;
}

/** Something there is only so much of: hands, a tool, the rings of the hob. */
export interface Resource {
  id: string;
  capacity: number;
}

/** A task takes one of a resource between two points, the second not included. */
export interface Use {
  resource: string;
  task: string;
  from: Point;
  to: Point;
}

/** A dish, or the roast, in an oven between two points, both included, within a range of heat. */
export interface Stay {
  task: string;
  from: Point;
  to: Point;
  lowCelsius: number;
  highCelsius: number;
  /** Where in the range it does best. */
  likelyCelsius: number;
  shelves: number;
  /** The door stays shut so long after it went in: nothing else goes in or out. */
  doorShutMinutes: number;
  /** The oven it is in, where that is not the planner's to choose. */
  oven?: number | undefined;
}

export interface Oven {
  shelves: number;
  heatingKelvinPerMinute: number;
  coolingKelvinPerMinute: number;
}

export interface Problem {
  tasks: readonly Task[];
  lags: readonly Lag[];
  resources: readonly Resource[];
  uses: readonly Use[];
  ovens: readonly Oven[];
  stays: readonly Stay[];
}

/**
 * Costs of a minute missed. A weighted whole-number sum stands for the order of importance: a rule
 * outweighs any table, a table any wish.
 */
export const weights = {
  hard: 1_000_000,
  /** A time that was set for the table's other clocks: only a rule moves it. */
  clock: 500_000,
  /** A dish that is not ready when the table is: the table waits for it. */
  missing: 1_200,
  table: 1_000,
  /** A step out of its window, or a dish kept waiting longer than it bears. */
  window: 60,
  /** A rest shorter than planned, or longer than the cut likes. */
  rest: 20,
  /** What the cook was told moves. */
  promise: 3,
} as const;

/** Minutes an oven needs from the one range to the other, in time's order; 0 when they meet. */
export function changeMinutes(
  before: Pick<Stay, 'lowCelsius' | 'highCelsius'>,
  after: Pick<Stay, 'lowCelsius' | 'highCelsius'>,
  oven: Oven,
): number {
  const up = after.lowCelsius - before.highCelsius;
  const down = before.lowCelsius - after.highCelsius;
  if (up > 0) return Math.max(1, Math.ceil(up / oven.heatingKelvinPerMinute - 1e-9));
  if (down > 0) return Math.max(1, Math.ceil(down / oven.coolingKelvinPerMinute - 1e-9));
  return 0;
}
