/**
 * Factors a symmetric positive definite matrix as L·Lᵀ.
 *
 * @param matrix n × n, row by row; only its lower triangle is read
 * @param size n
 * @returns L row by row with zeros above the diagonal, or null when the matrix is not positive definite
 * Accuracy: backward stable. Source: Golub & Van Loan, Matrix Computations (4th ed.), algorithm 4.2.2.
 * @example choleskyFactor(Float64Array.of(4, 2, 2, 5), 2) // 2 0 / 1 2
 */
export function choleskyFactor(matrix: Float64Array, size: number): Float64Array | null {
  const factor = new Float64Array(size * size);
  for (let row = 0; row < size; row += 1) {
    for (let column = 0; column <= row; column += 1) {
      let sum = matrix[row * size + column] ?? 0;
      for (let k = 0; k < column; k += 1) sum -= (factor[row * size + k] ?? 0) * (factor[column * size + k] ?? 0);
      if (row === column) {
        if (!(sum > 0)) return null;
        factor[row * size + row] = Math.sqrt(sum);
      } else {
        factor[row * size + column] = sum / (factor[column * size + column] ?? 1);
      }
    }
  }
  return factor;
}

/** ln of the determinant of the matrix whose Cholesky factor this is. */
export function choleskyLogDeterminant(factor: Float64Array, size: number): number {
  let sum = 0;
  for (let row = 0; row < size; row += 1) sum += Math.log(factor[row * size + row] ?? 1);
  return 2 * sum;
}

/** Solves L·Lᵀ·x = right. */
export function choleskySolve(factor: Float64Array, size: number, right: Float64Array): Float64Array {
  const x = Float64Array.from(right);
  for (let row = 0; row < size; row += 1) {
    let sum = x[row] ?? 0;
    for (let k = 0; k < row; k += 1) sum -= (factor[row * size + k] ?? 0) * (x[k] ?? 0);
    x[row] = sum / (factor[row * size + row] ?? 1);
  }
  for (let row = size - 1; row >= 0; row -= 1) {
    let sum = x[row] ?? 0;
    for (let k = row + 1; k < size; k += 1) sum -= (factor[k * size + row] ?? 0) * (x[k] ?? 0);
    x[row] = sum / (factor[row * size + row] ?? 1);
  }
  return x;
}

/** The inverse of the matrix whose Cholesky factor this is, row by row. */
export function choleskyInverse(factor: Float64Array, size: number): Float64Array {
  const inverse = new Float64Array(size * size);
  const unit = new Float64Array(size);
  for (let column = 0; column < size; column += 1) {
    unit.fill(0);
    unit[column] = 1;
    const solved = choleskySolve(factor, size, unit);
    for (let row = 0; row < size; row += 1) inverse[row * size + column] = solved[row] ?? 0;
  }
  return inverse;
}
