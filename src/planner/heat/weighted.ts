/** Statistics of weighted samples. */
import type { Band } from '../../kitchen/forecast.ts';

/** A value and its weight, sorted by value, for as many quantiles as are wanted. */
export class Weighted {
  readonly #values: Float64Array;
  readonly #cumulative: Float64Array;
  /** Which sample stands where; not told where all weigh the same. */
  readonly order: readonly number[] | undefined;

  /**
   * Values may be infinite; weights are not negative and not all zero. What is in nearly the order of `like`,
   * the same samples by the same weights, is sorted much sooner from there, and comes out the same.
   */
  constructor(values: ArrayLike<number>, weights: ArrayLike<number>, like?: Weighted) {
    const { sorted, carried, order } = inOrder(values, weights, like?.order);
    this.#values = sorted;
    this.order = order;
    this.#cumulative = new Float64Array(carried.length);
    let sum = 0;
    for (let place = 0; place < carried.length; place += 1) {
      this.#cumulative[place] = sum + carried[place]! / 2;
      sum += carried[place]!;
    }
    for (let place = 0; place < carried.length; place += 1) this.#cumulative[place]! /= sum;
  }

  /** Each value stands for the middle of its weight; between two of them the quantile is linear. */
  quantile(p: number): number {
    const cumulative = this.#cumulative;
    let low = 0;
    let high = cumulative.length - 1;
    if (p <= cumulative[0]!) return this.#values[0]!;
    if (p >= cumulative[high]!) return this.#values[high]!;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (cumulative[middle]! <= p) low = middle;
      else high = middle;
    }
    const left = this.#values[low]!;
    const right = this.#values[high]!;
    if (!Number.isFinite(right)) return left;
    return (
      left + ((right - left) * (p - cumulative[low]!)) / (cumulative[high]! - cumulative[low]!)
    );
  }

  get band(): Band {
    return { p10: this.quantile(0.1), p50: this.quantile(0.5), p90: this.quantile(0.9) };
  }
}

interface InOrder {
  sorted: Float64Array;
  carried: ArrayLike<number>;
  order: readonly number[] | undefined;
}

/** The values that count by their size, and what weight each carries. */
function inOrder(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  like: readonly number[] | undefined,
): InOrder {
  // Where all weigh the same it matters to none which of them is where: numbers alone are sorted much sooner.
  if (areEqual(weights))
    return { sorted: new Float64Array(values).sort(), carried: weights, order: undefined };
  const order = like?.slice() ?? counting(weights);
  order.sort((a, b) => values[a]! - values[b]! || a - b);
  const sorted = new Float64Array(order.length);
  const carried = new Float64Array(order.length);
  for (let place = 0; place < order.length; place += 1) {
    sorted[place] = values[order[place]!]!;
    carried[place] = weights[order[place]!]!;
  }
  return { sorted, carried, order };
}

function counting(weights: ArrayLike<number>): number[] {
  const rows: number[] = [];
  for (let row = 0; row < weights.length; row += 1) if (weights[row]! > 0) rows.push(row);
  return rows;
}

function areEqual(weights: ArrayLike<number>): boolean {
  for (let index = 1; index < weights.length; index += 1)
    if (weights[index] !== weights[0]) return false;
  return true;
}

/** Rows of as many samples, each standing for an equal share of the weight, spread over the values. */
export function evenlyChosen(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
  count: number,
): number[] {
  const order = Array.from({ length: values.length }, (_, row) => row).sort(
    (a, b) => values[a]! - values[b]! || a - b,
  );
  const total = order.reduce((sum, row) => sum + weights[row]!, 0);
  let place = 0;
  let passed = weights[order[0]!]!;
  return Array.from({ length: count }, (_, nth) => {
    const wanted = (total * (nth + 0.5)) / count;
    while (passed < wanted && place < order.length - 1) {
      place += 1;
      passed += weights[order[place]!]!;
    }
    return order[place]!;
  });
}

export function meanAndDeviation(
  values: ArrayLike<number>,
  weights: ArrayLike<number>,
): { mean: number; deviation: number } {
  let sum = 0;
  let mean = 0;
  for (let i = 0; i < values.length; i += 1) {
    sum += weights[i]!;
    mean += weights[i]! * values[i]!;
  }
  mean /= sum;
  let square = 0;
  for (let i = 0; i < values.length; i += 1) square += weights[i]! * (values[i]! - mean) ** 2;
  return { mean, deviation: Math.sqrt(square / sum) };
}
