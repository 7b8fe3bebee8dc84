/** A problem while it is being written down. */
import {
  type Lag,
  type LagKind,
  origin,
  type Point,
  type Problem,
  type Stay,
  type Task,
  type Use,
  weights,
} from '../problem.ts';

/** What there is only so much of, beside tools, of each of which there is one. */
export const hands = 'hands';
export const hob = 'hob';

export const point = (task: string, plus = 0): Point => ({ task, plus });

export class Draft {
  readonly tasks: Task[] = [];
  readonly lags: Lag[] = [];
  readonly uses: Use[] = [];
  readonly stays: Stay[] = [];

  task(id: string, minutes: number | Task['minutes'], fixedStart?: number): void {
    const span =
      typeof minutes === 'number' ? { low: minutes, likely: minutes, high: minutes } : minutes;
    this.tasks.push({ id, minutes: span, fixedStart });
  }

  has(id: string): boolean {
    return this.tasks.some((task) => task.id === id);
  }

  minutesOf(id: string): number {
    return this.tasks.find((task) => task.id === id)?.minutes.likely ?? 0;
  }

  /** `to` no sooner than `minutes` after `from`. */
  after(from: Point, to: Point, minutes: number, kind: LagKind, weight: number): void {
    this.lags.push({ from, to, minutes, weight, kind });
  }

  /** `to` no later than `minutes` after `from`. */
  within(from: Point, to: Point, minutes: number, kind: LagKind, weight: number): void {
    this.lags.push({ from: to, to: from, minutes: -minutes, weight, kind });
  }

  exactly(from: Point, to: Point, minutes: number, kind: LagKind): void {
    this.after(from, to, minutes, kind, weights.hard);
    this.within(from, to, minutes, kind, weights.hard);
  }

  notBefore(task: string, minute: number, kind: LagKind = 'release'): void {
    this.after(point(origin), point(task), minute, kind, weights.hard);
  }

  use(resource: string, task: string, from: number, to: number): void {
    if (to > from) this.uses.push({ resource, task, from: point(task, from), to: point(task, to) });
  }

  problem(rest: Pick<Problem, 'resources' | 'ovens'>): Problem {
    const { tasks, lags, uses, stays } = this;
    return { tasks, lags, uses, stays, ...rest };
  }
}
