export interface LeastSquares {
  /** One factor for each column. */
  factors: number[];
  /** Covariance of the factors for the sigmas given; it is not scaled by what is left over. */
  covariance: number[][];
  /** What is left over, in units of the sigmas, squared and added. */
  chiSquare: number;
  /** Readings beyond the factors. */
  spare: number;
}

/**
 * Weighted linear least squares: y ≈ Σ factor·column, each reading with its own sigma.
 * @param columns one array for each factor, all as long as y
 * @param y readings
 * @param sigmas one standard deviation of each reading, > 0
 * @returns the factors; undefined when the columns do not tell them apart
 * @throws RangeError when lengths differ or there are fewer readings than factors
 * Source: QR by modified Gram-Schmidt, textbook; checked against NIST StRD Norris.
 * @example leastSquares([[1, 1], [0, 1]], [3, 5], [1, 1]).factors //=> [3, 2]
 */
export function leastSquares(
  columns: readonly (readonly number[])[],
  y: readonly number[],
  sigmas: readonly number[],
): LeastSquares | undefined {
  const [many, n] = [y.length, columns.length];
  if (many < n || sigmas.length !== many || columns.some((column) => column.length !== many))
    throw new RangeError(`${many} readings, ${sigmas.length} sigmas, ${n} columns do not go together`);
  const q = columns.map((column) => column.map((value, i) => value / sigmas[i]!));
  const rest = y.map((value, i) => value / sigmas[i]!);
  const r: number[][] = q.map(() => new Array<number>(n).fill(0));
  const along: number[] = [];
  const take = (from: number[], what: readonly number[], much: number) => {
    for (let i = 0; i < many; i++) from[i]! -= much * what[i]!;
  };
  for (let j = 0; j < n; j++) {
    const column = q[j]!;
    const before = Math.sqrt(dot(column, column));
    // Twice: once leaves what rounding made of columns that are nearly alike.
    for (let pass = 0; pass < 2; pass++)
      for (let k = 0; k < j; k++) {
        const much = dot(q[k]!, column);
        r[k]![j]! += much;
        take(column, q[k]!, much);
      }
    const length = Math.sqrt(dot(column, column));
    if (!(length > before * 1e-10)) return undefined;
    r[j]![j] = length;
    for (let i = 0; i < many; i++) column[i]! /= length;
    const much = dot(column, rest);
    along.push(much);
    take(rest, column, much);
  }
  const inverse = inverseOfUpper(r);
  const factors = inverse.map((row) => dot(row, along));
  const covariance = inverse.map((row) => inverse.map((other) => dot(row, other)));
  return { factors, covariance, chiSquare: dot(rest, rest), spare: many - n };
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

/** The inverse of an upper triangle. */
function inverseOfUpper(r: readonly (readonly number[])[]): number[][] {
  const n = r.length;
  const inverse = r.map(() => new Array<number>(n).fill(0));
  for (let j = n - 1; j >= 0; j--) {
    inverse[j]![j] = 1 / r[j]![j]!;
    for (let i = j - 1; i >= 0; i--) {
      let sum = 0;
      for (let k = i + 1; k <= j; k++) sum += r[i]![k]! * inverse[k]![j]!;
      inverse[i]![j] = -sum / r[i]![i]!;
    }
  }
  return inverse;
}
