import { choleskyFactor, choleskyInverse, choleskyLogDeterminant, choleskySolve } from '#core/numeric/cholesky.ts';
import { dot, matrixProduct, traceOfProduct } from '#core/numeric/square-matrices.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';
import type { CellTable } from './cell-table.ts';
import type { CountPattern } from './count-patterns.ts';
import { addInformation, type Derivatives, emptyInformation, mirror } from './information.ts';
import { patternWeights } from './pattern-weights.ts';
import { addRight, addSquares, emptySquares } from './residual-squares.ts';
import { fittedMeans, reduceMatrix, reduceVector, type SampleDesign } from './sample-design.ts';

/** Everything the likelihood needs, the scores boiled down to cells. */
export interface LikelihoodData {
  readonly cells: CellTable;
  readonly patterns: readonly CountPattern[];
  readonly design: SampleDesign;
  /** Squares inside the cells, which no variance ratio touches. */
  readonly innerSquares: number;
  /** Scores less coefficients. */
  readonly residualDf: number;
}

export interface LikelihoodAt {
  /** −2 ln of the restricted likelihood with the error variance at its best, less a constant. */
  readonly deviance: number;
  readonly coefficients: Float64Array;
  /** Weighted squares; the error variance is this over residualDf. */
  readonly squares: number;
  readonly logDeterminants: number;
  readonly derivatives: LikelihoodDerivatives | null;
}

/** By θa (index 0) and θb (index 1). */
export interface LikelihoodDerivatives {
  /** Of the two log determinants together. */
  readonly logGradient: readonly [number, number];
  /** aa, ab, bb. */
  readonly logHessian: readonly [number, number, number];
  readonly squaresGradient: readonly [number, number];
  readonly squaresHessian: readonly [number, number, number];
  /** (XᵀV⁻¹X)⁻¹, and XᵀV⁻¹X differentiated. */
  readonly inverse: Float64Array;
  readonly informationA: Float64Array;
  readonly informationB: Float64Array;
}

/**
 * The restricted likelihood of score = sample + taster + taster × sample + error, at given variance ratios.
 *
 * Method: each taster's covariance is a diagonal plus a rank-one matrix, so that its inverse, its determinant and their first and
 * second derivatives are written down; tasters with the same counts share them. Nothing grows with the scores, only with the cells.
 *
 * @param data cells (best centred), patterns and design
 * @param a taster variance over error variance, at least 0
 * @param b taster × sample variance over error variance, at least 0
 * @param derivatives which first and second derivatives are wanted too
 * @throws OutOfDomain when the design does not determine its coefficients
 * Accuracy: rounding; derivatives are analytic.
 * Source: Searle, Casella & McCulloch, Variance Components (1992), chapter 6 (from memory).
 */
export function restrictedLikelihood(
  data: LikelihoodData,
  a: number,
  b: number,
  derivatives: Derivatives,
): LikelihoodAt {
  const { cells, patterns, design, residualDf } = data;
  const samples = cells.samples;
  const size = design.columns;
  const information = emptyInformation(samples, derivatives);
  const right = new Float64Array(samples);
  const all = patterns.map((pattern) => patternWeights(pattern, a, b));
  let log = 0;
  const logs = [0, 0, 0, 0, 0];
  patterns.forEach((pattern, index) => {
    const weights = all[index];
    if (weights === undefined) return;
    const times = pattern.tasters.length;
    log += times * weights.log;
    const { logA, logB, logAA, logAB, logBB } = weights;
    [logA, logB, logAA, logAB, logBB].forEach((value, place) => {
      logs[place] = (logs[place] ?? 0) + times * value;
    });
    addInformation(information, samples, pattern, weights, derivatives);
    addRight(right, cells, pattern, weights.w, weights.c);
  });
  mirror(information, samples);
  const factor = choleskyFactor(reduceMatrix(design, information.m), size);
  if (factor === null) throw new OutOfDomain('design', 'singular', 'coefficients that the tasted samples determine');
  const coefficients = choleskySolve(factor, size, reduceVector(design, right));
  const fitted = fittedMeans(design, coefficients);
  const squares = emptySquares(samples);
  squares.q = data.innerSquares;
  patterns.forEach((pattern, index) => {
    const weights = all[index];
    if (weights !== undefined) addSquares(squares, cells, pattern, weights, fitted, derivatives !== 'none');
  });
  const logDeterminants = log + choleskyLogDeterminant(factor, size);
  const deviance = logDeterminants + residualDf * Math.log(squares.q);
  const at = { deviance, coefficients, squares: squares.q, logDeterminants };
  if (derivatives === 'none') return { ...at, derivatives: null };

  const inverse = choleskyInverse(factor, size);
  const idle = new Float64Array(size * size);
  const reduceB = (matrix: Float64Array) => (derivatives === 'both' ? reduceMatrix(design, matrix) : idle);
  const mA = reduceMatrix(design, information.a);
  const mAA = reduceMatrix(design, information.aa);
  const mB = reduceB(information.b);
  const mAB = reduceB(information.ab);
  const mBB = reduceB(information.bb);
  const cA = matrixProduct(inverse, mA, size);
  const cB = matrixProduct(inverse, mB, size);
  const tA = reduceVector(design, squares.towardsA);
  const tB = reduceVector(design, squares.towardsB);
  const solvedA = choleskySolve(factor, size, tA);
  const solvedB = choleskySolve(factor, size, tB);
  const trace = (matrix: Float64Array) => traceOfProduct(inverse, matrix, size);
  const [lA = 0, lB = 0, lAA = 0, lAB = 0, lBB = 0] = logs;
  return {
    ...at,
    derivatives: {
      logGradient: [lA + trace(mA), lB + trace(mB)],
      logHessian: [
        lAA + trace(mAA) - traceOfProduct(cA, cA, size),
        lAB + trace(mAB) - traceOfProduct(cA, cB, size),
        lBB + trace(mBB) - traceOfProduct(cB, cB, size),
      ],
      squaresGradient: [squares.a, squares.b],
      squaresHessian: [
        squares.aa - 2 * dot(tA, solvedA),
        squares.ab - 2 * dot(tA, solvedB),
        squares.bb - 2 * dot(tB, solvedB),
      ],
      inverse,
      informationA: mA,
      informationB: mB,
    },
  };
}
