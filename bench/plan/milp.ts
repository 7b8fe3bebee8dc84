/**
 * The same problem for a general-purpose mixed-integer solver, written down in another way: a yes or
 * no for every task and start, an oven for every stay, and the ovens' temperature over time as itself a
 * variable, level by level, that climbs and falls no faster than an oven can. Nothing of the search
 * is used. Formulation: time-indexed, as in Artigues, Demassey, Neron, Resource-Constrained Project
 * Scheduling (2008), from memory.
 */
import { origin, type Point, type Problem, type Stay, weights } from '../../src/planner/problem.ts';

export interface MilpOptions {
  /** No start is later than this. */
  horizon: number;
  /** Plans that cost more are of no interest. */
  costAtMost?: number;
}

interface Span {
  first: number;
  last: number;
}

export function milpOf(problem: Problem, options: MilpOptions): string {
  return new Writer(problem, options).text();
}

class Writer {
  private readonly problem: Problem;
  private readonly options: MilpOptions;
  private readonly spans: Map<string, Span>;
  private readonly rows: string[] = [];
  /** Each variable once: the file format does not add up what is named twice. */
  private readonly prices = new Map<string, number>();
  private readonly binaries: string[] = [];
  private readonly bounds: string[] = [];
  private readonly from: number;

  constructor(problem: Problem, options: MilpOptions) {
    this.problem = problem;
    this.options = options;
    this.spans = spansOf(problem, options.horizon);
    this.from = Math.min(0, ...[...this.spans.values()].map((span) => span.first)) - 2;
  }

  text(): string {
    for (const task of this.problem.tasks) this.startOnce(task.id);
    this.problem.lags.forEach((_, index) => {
      this.lag(index);
    });
    for (const { id, capacity } of this.problem.resources) this.capacity(id, capacity);
    this.ovens();
    const { costAtMost } = this.options;
    const objective = [...this.prices].map(([name, price]) => `+ ${price} ${name}`).join(' ');
    if (costAtMost !== undefined && objective !== '')
      this.rows.push(`${objective} <= ${costAtMost}`);
    return [
      'minimize',
      ` obj: ${objective || '0 none'}`,
      'subject to',
      ...this.rows.map((row, index) => ` r${index}: ${row}`),
      'bounds',
      ...this.bounds.map((bound) => ` ${bound}`),
      'binaries',
      ` ${this.binaries.join(' ')}`,
      'end',
    ].join('\n');
  }

  private price(name: string, price: number): void {
    this.prices.set(name, (this.prices.get(name) ?? 0) + price);
  }

  private index(task: string): number {
    return this.problem.tasks.findIndex((one) => one.id === task);
  }

  private span(task: string): Span {
    return this.spans.get(task) ?? { first: 0, last: 0 };
  }

  private x(task: string, slot: number): string {
    return `x${this.index(task)}_${slot - this.from}`;
  }

  /** Whether a task starts then, as terms; none outside its span. */
  private starts(task: string, first: number, last: number, sign: '+' | '-'): string {
    const span = this.span(task);
    const terms: string[] = [];
    for (let slot = Math.max(first, span.first); slot <= Math.min(last, span.last); slot += 1)
      terms.push(`${sign} ${this.x(task, slot)}`);
    return terms.join(' ');
  }

  private startOnce(task: string): void {
    const span = this.span(task);
    for (let slot = span.first; slot <= span.last; slot += 1)
      this.binaries.push(this.x(task, slot));
    this.rows.push(`${this.starts(task, span.first, span.last, '+')} = 1`);
  }

  /** A point's time as terms. */
  private time(point: Point, sign: 1 | -1): string {
    if (point.task === origin) return '';
    const span = this.span(point.task);
    const terms: string[] = [];
    for (let slot = span.first; slot <= span.last; slot += 1) {
      const value = sign * slot;
      if (value !== 0)
        terms.push(`${value < 0 ? '-' : '+'} ${Math.abs(value)} ${this.x(point.task, slot)}`);
    }
    return terms.join(' ');
  }

  private lag(index: number): void {
    const lag = this.problem.lags[index];
    if (!lag) return;
    const minutes = lag.minutes + lag.from.plus - lag.to.plus;
    if (lag.weight >= weights.hard) this.hardLag(lag.from.task, lag.to.task, minutes);
    else if (lag.from.task === origin || lag.to.task === origin)
      this.priced(lag.from.task, lag.to.task, minutes, lag.weight);
    else {
      // missed >= minutes + from - to
      const missed = `p${index}`;
      this.price(missed, lag.weight);
      this.rows.push(`${missed} ${this.time(lag.from, -1)} ${this.time(lag.to, 1)} >= ${minutes}`);
    }
  }

  /** Started by then only if the other was, so much earlier. */
  private hardLag(from: string, to: string, minutes: number): void {
    if (from === origin || to === origin) return; // In the spans already.
    const span = this.span(to);
    const first = this.span(from).first;
    for (let slot = span.first; slot <= span.last; slot += 1) {
      const before = this.starts(from, first, slot - minutes, '-');
      if (slot - minutes >= this.span(from).last) break;
      this.rows.push(`${this.starts(to, span.first, slot, '+')} ${before} <= 0`);
    }
  }

  /** A bound against the origin has a price for each start. */
  private priced(from: string, to: string, minutes: number, weight: number): void {
    const task = from === origin ? to : from;
    const span = this.span(task);
    for (let slot = span.first; slot <= span.last; slot += 1) {
      const missed = from === origin ? minutes - slot : minutes + slot;
      if (missed > 0) this.price(this.x(task, slot), weight * missed);
    }
  }

  private capacity(resource: string, capacity: number): void {
    const uses = this.problem.uses.filter((use) => use.resource === resource);
    if (uses.length <= capacity) return;
    for (let slot = this.from; slot <= this.options.horizon + 12; slot += 1) {
      const terms = uses
        .map((use) => this.starts(use.task, slot - use.to.plus + 1, slot - use.from.plus, '+'))
        .filter((one) => one !== '');
      if (terms.length > capacity) this.rows.push(`${terms.join(' ')} <= ${capacity}`);
    }
  }

  private ovens(): void {
    const { ovens, stays } = this.problem;
    if (ovens.length > 1) for (const [index, stay] of stays.entries()) this.givenOven(index, stay);
    ovens.forEach((_, oven) => {
      this.heat(oven);
      this.shelves(oven);
      this.doors(oven);
    });
  }

  /** With two ovens a stay starts in one of them: z splits x. */
  private givenOven(index: number, stay: Stay): void {
    const span = this.span(stay.task);
    for (let slot = span.first; slot <= span.last; slot += 1) {
      const parts = this.problem.ovens.map((_, oven) => `z${index}_${oven}_${slot - this.from}`);
      for (const part of parts) this.bounds.push(`0 <= ${part} <= 1`);
      this.rows.push(
        `${parts.map((part) => `+ ${part}`).join(' ')} - ${this.x(stay.task, slot)} = 0`,
      );
    }
    const chosen = this.problem.ovens.map((_, oven) => `o${index}_${oven}`);
    this.binaries.push(...chosen);
    this.rows.push(`${chosen.map((one) => `+ ${one}`).join(' ')} = 1`);
    this.problem.ovens.forEach((_, oven) => {
      this.rows.push(`${this.inOven(index, oven, span.first, span.last)} - o${index}_${oven} = 0`);
    });
    if (stay.oven !== undefined) this.rows.push(`o${index}_${stay.oven} = 1`);
  }

  /** Terms for a stay starting in an oven between two slots. */
  private inOven(index: number, oven: number, first: number, last: number, sign = '+'): string {
    const stay = this.problem.stays[index];
    if (!stay) return '';
    if (this.problem.ovens.length === 1)
      return this.starts(stay.task, first, last, sign === '+' ? '+' : '-');
    const span = this.span(stay.task);
    const terms: string[] = [];
    for (let slot = Math.max(first, span.first); slot <= Math.min(last, span.last); slot += 1)
      terms.push(`${sign} z${index}_${oven}_${slot - this.from}`);
    return terms.join(' ');
  }

  /** Slots of a stay after its task's start; other tasks are tied to it by rules, both ways. */
  private edges(stay: Stay): { from: number; to: number } {
    return { from: this.offset(stay.task, stay.from), to: this.offset(stay.task, stay.to) };
  }

  private offset(task: string, point: Point): number {
    if (point.task === task) return point.plus;
    const at = (id: string): number | undefined =>
      id === origin ? 0 : this.problem.tasks.find((one) => one.id === id)?.fixedStart;
    const here = at(task);
    const there = at(point.task);
    if (here !== undefined && there !== undefined) return there - here + point.plus;
    for (const lag of this.problem.lags)
      if (lag.weight >= weights.hard && lag.from.task === task && lag.to.task === point.task)
        return lag.minutes + lag.from.plus - lag.to.plus + point.plus;
    throw new Error(`a stay of ${task} has an end that nothing ties to it`);
  }

  private times(): number[] {
    const list: number[] = [];
    for (let slot = this.from; slot <= this.options.horizon + 30; slot += 1) list.push(slot);
    return list;
  }

  /** h(level, time) says that the oven is at that level or above. */
  private heat(oven: number): void {
    const { stays, ovens } = this.problem;
    const step = 25;
    const levels: number[] = [];
    for (let level = 150; level <= 525; level += step) levels.push(level);
    const up = (ovens[oven]?.heatingKelvinPerMinute ?? step) / step;
    const down = (ovens[oven]?.coolingKelvinPerMinute ?? step) / step;
    const h = (level: number, time: number): string | undefined =>
      level < 0 || level >= levels.length ? undefined : `h${oven}_${level}_${time - this.from}`;
    for (const time of this.times())
      for (let level = 0; level < levels.length; level += 1) {
        const here = h(level, time) ?? '';
        this.bounds.push(`0 <= ${here} <= 1`);
        const above = h(level + 1, time);
        if (above) this.rows.push(`${above} - ${here} <= 0`);
        const next = h(level, time + 1);
        const lower = h(level - up, time);
        if (next && lower) this.rows.push(`${next} - ${lower} <= 0`);
        const higher = h(level + down, time);
        if (next && higher) this.rows.push(`${higher} - ${next} <= 0`);
      }
    for (const [index, stay] of stays.entries()) {
      const { from, to } = this.edges(stay);
      const low = levels.indexOf(stay.lowCelsius);
      const high = levels.indexOf(stay.highCelsius) + 1;
      for (const time of this.times()) {
        const inside = this.inOven(index, oven, time - to, time - from);
        if (inside === '') continue;
        const least = h(low, time);
        const most = h(high, time);
        if (least) this.rows.push(`${inside} - ${least} <= 0`);
        if (most) this.rows.push(`${inside} + ${most} <= 1`);
      }
    }
  }

  private shelves(oven: number): void {
    const { stays, ovens } = this.problem;
    for (const time of this.times()) {
      const terms = stays
        .map((stay, index) => {
          const { from, to } = this.edges(stay);
          const inside = this.inOven(index, oven, time - to + 1, time - from);
          return stay.shelves === 1 ? inside : inside.replaceAll('+ ', `+ ${stay.shelves} `);
        })
        .filter((one) => one !== '');
      const shelves = ovens[oven]?.shelves ?? 1;
      if (terms.length > 0) this.rows.push(`${terms.join(' ')} <= ${shelves}`);
    }
  }

  private doors(oven: number): void {
    const { stays } = this.problem;
    for (const [index, shut] of stays.entries()) {
      if (shut.doorShutMinutes === 0) continue;
      for (const [other, moving] of stays.entries()) {
        if (other === index) continue;
        const { from, to } = this.edges(moving);
        for (const edge of [from, to])
          for (const time of this.times()) {
            // The other goes in or out at `time`, strictly within the time that the door is shut.
            const begun = this.inOven(
              index,
              oven,
              time - shut.from.plus - shut.doorShutMinutes + 1,
              time - shut.from.plus - 1,
            );
            const moves = this.inOven(other, oven, time - edge, time - edge);
            if (begun !== '' && moves !== '') this.rows.push(`${begun} ${moves} <= 1`);
          }
      }
    }
  }
}

/** First and last start of each task by the rules alone. */
function spansOf(problem: Problem, horizon: number): Map<string, Span> {
  const spans = new Map<string, Span>();
  for (const task of problem.tasks)
    spans.set(task.id, {
      first: task.fixedStart ?? -60,
      last: task.fixedStart ?? horizon,
    });
  const at = (task: string): Span =>
    task === origin ? { first: 0, last: 0 } : (spans.get(task) ?? { first: 0, last: 0 });
  for (let round = 0; round <= problem.tasks.length; round += 1)
    for (const lag of problem.lags) {
      if (lag.weight < weights.hard) continue;
      const minutes = lag.minutes + lag.from.plus - lag.to.plus;
      const from = at(lag.from.task);
      const to = at(lag.to.task);
      if (lag.to.task !== origin) to.first = Math.max(to.first, from.first + minutes);
      if (lag.from.task !== origin) from.last = Math.min(from.last, to.last - minutes);
    }
  return spans;
}
