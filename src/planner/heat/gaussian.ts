/**
 * Normal distributions in a few dimensions: fitted to weighted samples, conditioned on linear
 * observations, drawn from. Matrices are row by row; nothing here knows of roasts.
 */

export interface Normal {
  mean: Float64Array;
  /** Lower triangle whose product with its transpose is the covariance. */
  root: Float64Array;
}

/** Lower triangular root of a symmetric matrix; a pivot that is not positive counts as tiny. */
export function choleskyOf(matrix: Float64Array, size: number): Float64Array {
  const root = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = matrix[row * size + column]!;
      for (let k = 0; k < column; k += 1) sum -= root[row * size + k]! * root[column * size + k]!;
      root[row * size + column] =
        row === column ? Math.sqrt(Math.max(1e-12, sum)) : sum / root[column * size + column]!;
    }
  }
  return root;
}

/** Solves root·x = vector. */
export function forwardSolve(root: Float64Array, size: number, vector: Float64Array): Float64Array {
  const x = new Float64Array(size);
  for (let row = 0; row < size; row += 1) {
    let sum = vector[row]!;
    for (let k = 0; k < row; k += 1) sum -= root[row * size + k]! * x[k]!;
    x[row] = sum / root[row * size + row]!;
  }
  return x;
}

/** Solves rootᵀ·x = vector. */
function backwardSolve(root: Float64Array, size: number, vector: Float64Array): Float64Array {
  const x = new Float64Array(size);
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = vector[row]!;
    for (let k = row + 1; k < size; k += 1) sum -= root[k * size + row]! * x[k]!;
    x[row] = sum / root[row * size + row]!;
  }
  return x;
}

/** Solves matrix·x = vector by the matrix's root. */
export const solve = (root: Float64Array, size: number, vector: Float64Array): Float64Array =>
  backwardSolve(root, size, forwardSolve(root, size, vector));

/** Up to a constant that is the same for all points of a dimension. */
export function logDensity({ mean, root }: Normal, point: ArrayLike<number>, at = 0): number {
  const size = mean.length;
  const away = Float64Array.from(mean, (value, i) => point[at + i]! - value);
  const x = forwardSolve(root, size, away);
  let sum = 0;
  for (let i = 0; i < size; i += 1) sum += 0.5 * x[i]! * x[i]! + Math.log(root[i * size + i]!);
  return -sum;
}

/** Several observations, each linear in the unknowns but for what the line leaves over. */
export interface LinearModel {
  /** One for each observation: value at the unknowns' zero, slopes, and what is left over, squared. */
  intercepts: Float64Array;
  slopes: Float64Array;
  leftOver: Float64Array;
}

export interface Samples {
  /** Row by row, `size` to a row. */
  points: Float64Array;
  size: number;
  weights: ArrayLike<number>;
}

/** Weighted least squares with a little ridge; one line for each column of values. */
export function linearModelOf(
  { points, size, weights }: Samples,
  values: readonly Float64Array[],
): LinearModel {
  const count = weights.length;
  const wide = size + 1;
  const normal = new Float64Array(wide * wide);
  const right = values.map(() => new Float64Array(wide));
  const row = new Float64Array(wide);
  row[size] = 1;
  let sum = 0;
  for (let i = 0; i < count; i += 1) sum += weights[i]!;
  for (let i = 0; i < count; i += 1) {
    const weight = weights[i]! / sum;
    if (weight < 1e-9) continue;
    for (let a = 0; a < size; a += 1) row[a] = points[i * size + a]!;
    for (let a = 0; a < wide; a += 1) {
      const scaled = weight * row[a]!;
      for (let b = 0; b <= a; b += 1) normal[a * wide + b]! += scaled * row[b]!;
      for (let k = 0; k < values.length; k += 1) right[k]![a]! += scaled * values[k]![i]!;
    }
  }
  for (let a = 0; a < size; a += 1) normal[a * wide + a]! += ridge;
  const root = choleskyOf(normal, wide);
  const intercepts = new Float64Array(values.length);
  const slopes = new Float64Array(values.length * size);
  const leftOver = new Float64Array(values.length);
  right.forEach((vector, k) => {
    const line = solve(root, wide, vector);
    intercepts[k] = line[size]!;
    slopes.set(line.subarray(0, size), k * size);
    let square = 0;
    for (let i = 0; i < count; i += 1) {
      let miss = values[k]![i]! - line[size]!;
      for (let a = 0; a < size; a += 1) miss -= line[a]! * points[i * size + a]!;
      square += (weights[i]! / sum) * miss * miss;
    }
    leftOver[k] = square;
  });
  return { intercepts, slopes, leftOver };
}

const ridge = 2e-3;

/**
 * Standard normal unknowns, given that the observations came out so far from their intercepts, with
 * that covariance of their errors.
 */
export function conditioned(
  slopes: Float64Array,
  away: Float64Array,
  errors: Float64Array,
  size: number,
): Normal {
  const count = away.length;
  const errorRoot = choleskyOf(errors, count);
  // Whitened slopes, one column for each unknown.
  const white: Float64Array[] = [];
  for (let a = 0; a < size; a += 1)
    white.push(
      forwardSolve(
        errorRoot,
        count,
        Float64Array.from({ length: count }, (_, k) => slopes[k * size + a]!),
      ),
    );
  const whiteAway = forwardSolve(errorRoot, count, away);
  const precision = new Float64Array(size * size);
  const pull = new Float64Array(size);
  for (let a = 0; a < size; a += 1) {
    for (let b = 0; b <= a; b += 1) {
      let sum = a === b ? 1 : 0;
      for (let k = 0; k < count; k += 1) sum += white[a]![k]! * white[b]![k]!;
      precision[a * size + b] = sum;
      precision[b * size + a] = sum;
    }
    for (let k = 0; k < count; k += 1) pull[a]! += white[a]![k]! * whiteAway[k]!;
  }
  const precisionRoot = choleskyOf(precision, size);
  const covariance = new Float64Array(size * size);
  for (let a = 0; a < size; a += 1) {
    const unit = new Float64Array(size);
    unit[a] = 1;
    covariance.set(solve(precisionRoot, size, unit), a * size);
  }
  return { mean: solve(precisionRoot, size, pull), root: choleskyOf(covariance, size) };
}
