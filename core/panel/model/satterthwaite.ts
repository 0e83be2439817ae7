import { choleskyFactor, choleskyInverse } from '#core/numeric/cholesky.ts';
import type { MixedModel } from './mixed-model.ts';

/** An estimate with its variance and the degrees of freedom of that variance. */
export interface Contrast {
  readonly estimate: number;
  readonly variance: number;
  readonly df: number;
}

/** Covariance of a model's coefficients, and how it moves with each variance parameter. */
export interface CoefficientCovariance {
  readonly covariance: Float64Array;
  readonly derivatives: readonly Float64Array[];
  /** Covariance of the estimated variance parameters (ln error variance, then the ratios above zero), row by row. */
  readonly parameters: Float64Array;
}

function sandwich(inverse: Float64Array, middle: Float64Array, size: number, scale: number): Float64Array {
  const half = new Float64Array(size * size);
  const out = new Float64Array(size * size);
  for (let i = 0; i < size; i += 1) {
    for (let k = 0; k < size; k += 1) {
      const value = inverse[i * size + k] as number;
      for (let j = 0; j < size; j += 1)
        half[i * size + j] = (half[i * size + j] as number) + value * (middle[k * size + j] as number);
    }
  }
  for (let i = 0; i < size; i += 1) {
    for (let k = 0; k < size; k += 1) {
      const value = scale * (half[i * size + k] as number);
      for (let j = 0; j < size; j += 1)
        out[i * size + j] = (out[i * size + j] as number) + value * (inverse[k * size + j] as number);
    }
  }
  return out;
}

/**
 * What Satterthwaite's method needs of a model.
 *
 * Method: the covariance of the variance parameters is twice the inverse Hessian of the restricted deviance, all analytic.
 *
 * @param model a fitted model
 * @returns covariance and derivatives; null when the likelihood is flat
 * Source: Giesbrecht & Burns, Biometrics 41 (1985) 477; Kuznetsova, Brockhoff & Christensen, J. Stat. Softw. 82 (2017) 13.
 */
export function coefficientCovariance(model: MixedModel): CoefficientCovariance | null {
  const { derivatives: d, errorVariance, ratios, residualDf } = model;
  const size = model.design.columns;
  const free = [ratios.taster > 0 ? 0 : -1, ratios.interaction > 0 ? 1 : -1].filter((index) => index >= 0);
  const order = free.length + 1;
  const hessian = new Float64Array(order * order);
  hessian[0] = residualDf;
  free.forEach((k, row) => {
    const cross = -(d.squaresGradient[k] ?? 0) / errorVariance;
    hessian[row + 1] = cross;
    hessian[(row + 1) * order] = cross;
    free.forEach((l, column) => {
      hessian[(row + 1) * order + column + 1] =
        (d.logHessian[k + l] ?? 0) + (d.squaresHessian[k + l] ?? 0) / errorVariance;
    });
  });
  const factor = choleskyFactor(hessian, order);
  if (factor === null) return null;
  const covariance = d.inverse.map((value) => value * errorVariance);
  return {
    covariance,
    derivatives: [
      covariance,
      ...free.map((k) => sandwich(d.inverse, k === 0 ? d.informationA : d.informationB, size, -errorVariance)),
    ],
    parameters: choleskyInverse(factor, order).map((value) => 2 * value),
  };
}

/** lᵀ·M·l. */
export function quadraticForm(matrix: Float64Array, l: Float64Array): number {
  const size = l.length;
  let sum = 0;
  for (let i = 0; i < size; i += 1) {
    const value = l[i] as number;
    if (value === 0) continue;
    for (let j = 0; j < size; j += 1) sum += value * (matrix[i * size + j] as number) * (l[j] as number);
  }
  return sum;
}

/** A variance known as badly as this says nothing; below it critical values leave the range of numbers. */
const leastDf = 0.05;
/** A variance that moves with no variance parameter counts as known. */
const mostDf = 1e9;

/**
 * One linear combination of a model's coefficients with its variance and Satterthwaite degrees of freedom.
 *
 * Method: 2v² / (gᵀ·A·g), g the derivatives of the variance v by the variance parameters, A their covariance.
 *
 * @param model a fitted model
 * @param spread coefficientCovariance of it
 * @param l weights, one a coefficient, not all zero
 */
export function satterthwaite(model: MixedModel, spread: CoefficientCovariance, l: Float64Array): Contrast {
  let estimate = 0;
  for (let k = 0; k < l.length; k += 1) estimate += (l[k] as number) * (model.coefficients[k] as number);
  const variance = quadraticForm(spread.covariance, l);
  const gradient = Float64Array.from(spread.derivatives, (matrix) => quadraticForm(matrix, l));
  const df = (2 * variance * variance) / quadraticForm(spread.parameters, gradient);
  return { estimate, variance, df: Math.min(Math.max(df, leastDf), mostDf) };
}
