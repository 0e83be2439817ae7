/** Eigenvalues in falling order, and their unit vectors: `vectors[k]` belongs to `values[k]`. */
export interface SymmetricEigen {
  readonly values: Float64Array;
  readonly vectors: readonly Float64Array[];
}

/**
 * Eigenvalues and eigenvectors of a symmetric matrix.
 *
 * Method: cyclic Jacobi rotations until nothing off the diagonal is left.
 *
 * @param matrix n × n, row by row, symmetric
 * @param size n
 * Accuracy: 1e-14 of the largest eigenvalue.
 * Source: Golub & Van Loan, Matrix Computations (4th ed.), section 8.5.
 * @example symmetricEigen(Float64Array.of(2, 1, 1, 2), 2).values // 3, 1
 */
export function symmetricEigen(matrix: Float64Array, size: number): SymmetricEigen {
  const a = Float64Array.from(matrix);
  const v = new Float64Array(size * size);
  for (let index = 0; index < size; index += 1) v[index * size + index] = 1;
  const at = (row: number, column: number): number => a[row * size + column] as number;
  for (let sweep = 0; sweep < 100; sweep += 1) {
    let off = 0;
    let all = 0;
    for (let row = 0; row < size; row += 1) {
      for (let column = 0; column < size; column += 1) {
        const square = at(row, column) ** 2;
        all += square;
        if (row !== column) off += square;
      }
    }
    if (off <= 1e-30 * all) break;
    for (let p = 0; p < size; p += 1) {
      for (let q = p + 1; q < size; q += 1) {
        const apq = at(p, q);
        if (apq * apq <= 1e-36 * all) continue;
        const tau = (at(q, q) - at(p, p)) / (2 * apq);
        const t = (tau >= 0 ? 1 : -1) / (Math.abs(tau) + Math.sqrt(1 + tau * tau));
        const c = 1 / Math.sqrt(1 + t * t);
        const s = t * c;
        for (let k = 0; k < size; k += 1) {
          const kp = a[k * size + p] as number;
          const kq = a[k * size + q] as number;
          a[k * size + p] = c * kp - s * kq;
          a[k * size + q] = s * kp + c * kq;
        }
        for (let k = 0; k < size; k += 1) {
          const pk = a[p * size + k] as number;
          const qk = a[q * size + k] as number;
          a[p * size + k] = c * pk - s * qk;
          a[q * size + k] = s * pk + c * qk;
          const vp = v[k * size + p] as number;
          const vq = v[k * size + q] as number;
          v[k * size + p] = c * vp - s * vq;
          v[k * size + q] = s * vp + c * vq;
        }
      }
    }
  }
  const order = Array.from({ length: size }, (_, index) => index).sort((x, y) => at(y, y) - at(x, x));
  return {
    values: Float64Array.from(order, (index) => at(index, index)),
    vectors: order.map((index) => Float64Array.from({ length: size }, (_, row) => v[row * size + index] ?? 0)),
  };
}
