import { fUpperTail } from '#core/numeric/f-distribution.ts';
import { dot, matrixVector } from '#core/numeric/square-matrices.ts';
import { symmetricEigen } from '#core/numeric/symmetric-eigen.ts';
import type { MixedModel } from './mixed-model.ts';
import { type CoefficientCovariance, satterthwaite } from './satterthwaite.ts';

export interface JointTest {
  readonly f: number;
  readonly dfSample: number;
  readonly dfError: number;
  readonly p: number;
}

/** Denominator degrees of freedom of a mean of squared t values, each on its own degrees of freedom. */
function jointDf(each: readonly number[]): number {
  const [first = 1] = each;
  if (each.length === 1 || each.every((df) => Math.abs(df - first) < 1e-8 * Math.max(1, first))) {
    return each.reduce((sum, df) => sum + df, 0) / each.length;
  }
  if (each.some((df) => df <= 2)) return 2;
  const expected = each.reduce((sum, df) => sum + df / (df - 2), 0);
  return (2 * expected) / (expected - each.length);
}

/** Each sample but the first against the mean of the first and all that come after it, every score counting once. */
function successiveContrasts(scores: readonly number[], order: readonly number[]): Float64Array[] {
  return order.slice(1).map((sample, index) => {
    const l = new Float64Array(scores.length);
    const against = order.filter((_, place) => place === 0 || place > index + 1);
    const sum = against.reduce((total, other) => total + (scores[other] ?? 0), 0);
    for (const other of against) l[other] = -(scores[other] ?? 0) / sum;
    l[sample] = 1;
    return l;
  });
}

/**
 * Whether the samples differ at all, every difference between them tested at once.
 *
 * Method: the contrasts are turned into uncorrelated ones by the eigenvectors of their covariance; F is the mean of their squared
 * t values, its degrees of freedom those whose F has the same expectation. With missing scores that rule depends a little on the
 * contrasts it starts from: here those of the sequential sums of squares, in an order of the samples that is passed in.
 *
 * @param model fitted with a mean for each sample (two or more)
 * @param spread coefficientCovariance of it
 * @param scores how many scores each sample has
 * @param order the samples in the order those contrasts follow
 * Accuracy: for a complete panel the classical block F, to 1e-9.
 * Source: Fai & Cornelius, J. Stat. Comput. Simul. 54 (1996) 363, as lmerTest 3.1-3 applies it.
 */
export function jointTest(
  model: MixedModel,
  spread: CoefficientCovariance,
  scores: readonly number[],
  order: readonly number[],
): JointTest {
  const contrasts = successiveContrasts(scores, order);
  const q = contrasts.length;
  const covariance = new Float64Array(q * q);
  contrasts.forEach((one, row) => {
    const turned = matrixVector(spread.covariance, one);
    contrasts.forEach((other, column) => {
      covariance[row * q + column] = dot(turned, other);
    });
  });
  const { values, vectors } = symmetricEigen(covariance, q);
  let sum = 0;
  const each = vectors.map((vector, index) => {
    const l = new Float64Array(scores.length);
    contrasts.forEach((contrast, row) => {
      for (let k = 0; k < l.length; k += 1) l[k] = (l[k] as number) + (vector[row] as number) * (contrast[k] as number);
    });
    const { estimate, df } = satterthwaite(model, spread, l);
    sum += estimate ** 2 / (values[index] as number);
    return df;
  });
  const f = sum / q;
  const dfError = jointDf(each);
  return { f, dfSample: q, dfError, p: fUpperTail(f, q, dfError) };
}
