import type { CellTable } from './cell-table.ts';
import { countPatterns } from './count-patterns.ts';
import { fitVarianceRatios, largestRatio, type VarianceRatios } from './fit-variance-ratios.ts';
import type { LikelihoodData, LikelihoodDerivatives } from './restricted-likelihood.ts';
import type { SampleDesign } from './sample-design.ts';

/** A fitted mixed model. */
export interface MixedModel {
  readonly design: SampleDesign;
  /** Best linear unbiased estimates, in scale points. */
  readonly coefficients: Float64Array;
  /** The variance that all ratios are relative to. */
  readonly errorVariance: number;
  /** Between repeats of the same taster and sample; 0 where repeats never differ. */
  readonly pureError: number;
  /** Taster × sample variance; null where it is not in the model. */
  readonly tasterBySample: number | null;
  readonly ratios: VarianceRatios;
  /** Which variances the model held before any was found to be zero. */
  readonly terms: { readonly taster: boolean; readonly interaction: boolean };
  readonly residualDf: number;
  readonly squares: number;
  /** −2 ln of the restricted likelihood, all constants included. */
  readonly criterion: number;
  readonly derivatives: LikelihoodDerivatives;
}

/** Which variances these scores can tell apart. */
export function estimableTerms(cells: CellTable): { taster: boolean; interaction: boolean } {
  let taster = false;
  let interaction = false;
  let several = false;
  for (let row = 0; row < cells.tasters; row += 1) {
    let scores = 0;
    let samples = 0;
    for (let sample = 0; sample < cells.samples; sample += 1) {
      const n = cells.count[row * cells.samples + sample] ?? 0;
      scores += n;
      if (n > 0) samples += 1;
      if (n > 1) interaction = true;
    }
    if (scores > 1) taster = true;
    if (samples > 1) several = true;
  }
  // With one sample a taster, what is the taster's own and what is theirs on that sample cannot be told apart.
  return { taster, interaction: interaction && several };
}

/**
 * Fits score = sample (fixed) + taster (random) + taster × sample (random) + error by restricted maximum likelihood.
 *
 * Method: restrictedLikelihood on the cells, maximised by fitVarianceRatios. A variance estimated at zero leaves the model, so that
 * tests on it are the pooled ones. Where repeats never differ, the error is nil and the cells themselves are the scores.
 * Leaves out: tasters who use the scale more widely than others (a variance of their own).
 *
 * @param cells any pattern of missing and repeated scores; every sample tasted
 * @param design what is fixed: a mean for each sample, or a curve through their levels
 * @returns the fit, or null when nothing is left to estimate an error from
 * Accuracy: against another program's fits 1e-6 relative in the variances; a complete panel's test is the block F to 1e-9.
 * Source: Patterson & Thompson, Biometrika 58 (1971) 545; Searle, Casella & McCulloch, Variance Components (1992) (from memory).
 */
export function fitMixedModel(cells: CellTable, design: SampleDesign): MixedModel | null {
  const terms = estimableTerms(cells);
  let centre = 0;
  let innerSquares = 0;
  let scores = 0;
  for (let cell = 0; cell < cells.count.length; cell += 1) {
    const n = cells.count[cell] ?? 0;
    scores += n;
    innerSquares += cells.inner[cell] ?? 0;
    centre += n === 0 ? 0 : (n * ((cells.mean[cell] ?? 0) - centre)) / scores;
  }
  const mean = cells.mean.map((value) => value - centre);
  let total = innerSquares;
  for (let cell = 0; cell < mean.length; cell += 1) total += (cells.count[cell] ?? 0) * (mean[cell] ?? 0) ** 2;
  if (terms.interaction && innerSquares <= 1e-20 * total) {
    const single = {
      ...cells,
      mean: cells.mean,
      count: cells.count.map((n) => Math.min(n, 1)),
      inner: cells.inner.map(() => 0),
    };
    const fit = fitMixedModel(single, design);
    return fit === null ? null : { ...fit, terms, pureError: 0, tasterBySample: fit.errorVariance };
  }
  const centred = { ...cells, mean };
  const residualDf = scores - design.columns;
  // Scores that differ by less than 1e-30 differ by nothing anyone wrote down; their squares soon leave the range of numbers.
  if (residualDf < 1 || !(total > 1e-60)) return null;
  const data: LikelihoodData = { cells: centred, patterns: countPatterns(centred), design, innerSquares, residualDf };
  const { ratios, at } = fitVarianceRatios(data, terms);
  const errorVariance = at.squares / residualDf;
  const hopeless =
    Math.max(ratios.taster, ratios.interaction) >= largestRatio || !(errorVariance * residualDf > 1e-20 * total);
  if (hopeless || at.derivatives === null) return null;
  const coefficients = Float64Array.from(at.coefficients);
  // Every design's columns sum to a constant: the samples' own means, or the curve's first column.
  if (design.identity)
    for (let k = 0; k < coefficients.length; k += 1) coefficients[k] = (coefficients[k] ?? 0) + centre;
  else coefficients[0] = (coefficients[0] ?? 0) + centre;
  return {
    design,
    coefficients,
    errorVariance,
    pureError: errorVariance,
    tasterBySample: terms.interaction ? ratios.interaction * errorVariance : null,
    ratios,
    terms,
    residualDf,
    squares: at.squares,
    criterion: at.logDeterminants + residualDf * (1 + Math.log((2 * Math.PI * at.squares) / residualDf)),
    derivatives: at.derivatives,
  };
}
