/**
 * Solves a symmetric positive definite set of equations for several right-hand sides, by Cholesky's way.
 * @param matrix rows, n by n, of which the half up to the diagonal is read; left as it is
 * @param loads right-hand sides, each of n figures
 * @returns one answer for each load
 * @throws RangeError when the matrix is not positive definite: something can move for nothing
 * Source: textbook factorization.
 * @example solveSymmetric([Float64Array.of(4, 2), Float64Array.of(2, 3)], [[8, 7]]) //=> [[1.25, 1.5]]
 */
export function solveSymmetric(
  matrix: readonly Float64Array[],
  loads: readonly (readonly number[])[],
): number[][] {
  const size = matrix.length;
  const lower = matrix.map((row) => Float64Array.from(row));
  for (let row = 0; row < size; row++) {
    const line = lower[row]!;
    for (let column = 0; column <= row; column++) {
      const other = lower[column]!;
      let sum = line[column]!;
      for (let at = 0; at < column; at++) sum -= line[at]! * other[at]!;
      if (row !== column) line[column] = sum / other[column]!;
      else if (sum > 1e-12 * Math.abs(matrix[row]![row]!)) line[row] = Math.sqrt(sum);
      else throw new RangeError('the wheel is not held: some of it can move for nothing');
    }
  }
  return loads.map((load) => {
    const answer = Array.from(load);
    for (let row = 0; row < size; row++) {
      const line = lower[row]!;
      let sum = answer[row]!;
      for (let at = 0; at < row; at++) sum -= line[at]! * answer[at]!;
      answer[row] = sum / line[row]!;
    }
    for (let row = size - 1; row >= 0; row--) {
      let sum = answer[row]!;
      for (let at = row + 1; at < size; at++) sum -= lower[at]![row]! * answer[at]!;
      answer[row] = sum / lower[row]![row]!;
    }
    return answer;
  });
}
