/** What is expected of each sample as a linear function of the coefficients: `samples` × `columns`, row by row. */
export interface SampleDesign {
  readonly samples: number;
  readonly columns: number;
  readonly rows: Float64Array;
  /** True when each sample has a coefficient of its own. */
  readonly identity: boolean;
}

/** Each sample its own mean. */
export function freeMeans(samples: number): SampleDesign {
  const rows = new Float64Array(samples * samples);
  for (let sample = 0; sample < samples; sample += 1) rows[sample * samples + sample] = 1;
  return { samples, columns: samples, rows, identity: true };
}

/** A polynomial in each sample's level: 1, x, x² … up to the degree. */
export function polynomialMeans(levels: Float64Array, degree: number): SampleDesign {
  const columns = degree + 1;
  const rows = new Float64Array(levels.length * columns);
  levels.forEach((level, sample) => {
    for (let power = 0; power < columns; power += 1) rows[sample * columns + power] = level ** power;
  });
  return { samples: levels.length, columns, rows, identity: false };
}

/** Zᵀ·M·Z: a matrix over the samples brought to the coefficients. */
export function reduceMatrix(design: SampleDesign, matrix: Float64Array): Float64Array {
  if (design.identity) return matrix;
  const { samples, columns, rows } = design;
  const reduced = new Float64Array(columns * columns);
  const half = new Float64Array(columns);
  for (let i = 0; i < samples; i += 1) {
    half.fill(0);
    for (let j = 0; j < samples; j += 1) {
      const value = matrix[i * samples + j] as number;
      for (let k = 0; k < columns; k += 1) half[k] = (half[k] as number) + value * (rows[j * columns + k] as number);
    }
    for (let k = 0; k < columns; k += 1) {
      const weight = rows[i * columns + k] as number;
      for (let l = 0; l < columns; l += 1) {
        reduced[k * columns + l] = (reduced[k * columns + l] as number) + weight * (half[l] as number);
      }
    }
  }
  return reduced;
}

/** Zᵀ·v: a vector over the samples brought to the coefficients. */
export function reduceVector(design: SampleDesign, vector: Float64Array): Float64Array {
  if (design.identity) return vector;
  const reduced = new Float64Array(design.columns);
  for (let i = 0; i < design.samples; i += 1) {
    for (let k = 0; k < design.columns; k += 1) {
      reduced[k] = (reduced[k] ?? 0) + (design.rows[i * design.columns + k] ?? 0) * (vector[i] ?? 0);
    }
  }
  return reduced;
}

/** Z·β: what is expected of each sample. */
export function fittedMeans(design: SampleDesign, coefficients: Float64Array): Float64Array {
  if (design.identity) return coefficients;
  return Float64Array.from({ length: design.samples }, (_, i) => {
    let sum = 0;
    for (let k = 0; k < design.columns; k += 1)
      sum += (design.rows[i * design.columns + k] ?? 0) * (coefficients[k] ?? 0);
    return sum;
  });
}
