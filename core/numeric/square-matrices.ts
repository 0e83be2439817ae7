/** tr(A·B) of two square matrices. */
export function traceOfProduct(a: Float64Array, b: Float64Array, size: number): number {
  let sum = 0;
  for (let i = 0; i < size; i += 1) {
    for (let j = 0; j < size; j += 1) sum += (a[i * size + j] as number) * (b[j * size + i] as number);
  }
  return sum;
}

/** A·B of two square matrices. */
export function matrixProduct(a: Float64Array, b: Float64Array, size: number): Float64Array {
  const out = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let k = 0; k < size; k += 1) {
      const value = a[i * size + k] as number;
      for (let j = 0; j < size; j += 1)
        out[i * size + j] = (out[i * size + j] as number) + value * (b[k * size + j] as number);
    }
  }
  return out;
}

/** Sum of the products of two lists, entry by entry. */
export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += (a[index] as number) * (b[index] as number);
  return sum;
}

/** A·v of a square matrix and a vector. */
export function matrixVector(matrix: Float64Array, vector: Float64Array): Float64Array {
  const size = vector.length;
  return vector.map((_, row) => dot(matrix.subarray(row * size, (row + 1) * size), vector));
}
