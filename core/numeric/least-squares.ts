import { OutOfDomain } from '#core/out-of-domain.ts';

export interface LeastSquares {
  readonly coefficients: number[];
  readonly standardErrors: number[];
  /** Residual standard deviation. */
  readonly residualSd: number;
  readonly rSquared: number;
  readonly residualDf: number;
}

/**
 * Multiple linear regression.
 *
 * Method: Householder's QR on columns scaled to unit length, then one step of refinement with the residuals.
 *
 * @param rows the predictors of each observation (with a 1 where an intercept is wanted)
 * @param y one value an observation; more of them than predictors
 * @throws OutOfDomain when the lists do not fit together or the predictors depend on each other
 * Accuracy: NIST StRD Norris 1e-10, Longley 1e-9.
 * Source: Golub & Van Loan, Matrix Computations (4th ed.), section 5.3.2.
 * @example leastSquares([[1, 0], [1, 1], [1, 2]], [1, 3, 5]).coefficients // [1, 2]
 */
export function leastSquares(rows: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  const n = rows.length;
  const p = rows[0]?.length ?? 0;
  if (p === 0 || n <= p || y.length !== n)
    throw new OutOfDomain('rows', `${n} × ${p}`, 'more observations than predictors');
  const scale = Array.from({ length: p }, (_, k) => Math.hypot(...rows.map((row) => row[k] ?? 0)) || 1);
  const a = rows.map((row) => row.map((value, k) => value / (scale[k] ?? 1)));
  const at = (i: number, k: number): number => a[i]?.[k] ?? 0;
  const reflections: number[][] = [];
  const reflect = (
    v: readonly number[],
    column: (i: number) => number,
    set: (i: number, value: number) => void,
  ): void => {
    let sum = 0;
    for (let i = 0; i < n; i += 1) sum += (v[i] ?? 0) * column(i);
    for (let i = 0; i < n; i += 1) set(i, column(i) - 2 * (v[i] ?? 0) * sum);
  };
  for (let k = 0; k < p; k += 1) {
    const v = Array.from({ length: n }, (_, i) => (i < k ? 0 : at(i, k)));
    const length = Math.hypot(...v);
    v[k] = (v[k] ?? 0) + ((v[k] ?? 0) >= 0 ? length : -length);
    const size = Math.hypot(...v);
    if (!(size > 1e-13)) throw new OutOfDomain('rows', 'dependent', 'predictors that do not depend on each other');
    const unit = v.map((value) => value / size);
    reflections.push(unit);
    for (let j = k; j < p; j += 1) {
      reflect(
        unit,
        (i) => at(i, j),
        (i, value) => {
          const row = a[i];
          if (row !== undefined) row[j] = value;
        },
      );
    }
    if (!(Math.abs(at(k, k)) > 1e-13))
      throw new OutOfDomain('rows', 'dependent', 'predictors that do not depend on each other');
  }
  const solve = (right: readonly number[]): number[] => {
    const turned = [...right];
    for (const v of reflections)
      reflect(
        v,
        (i) => turned[i] ?? 0,
        (i, value) => {
          turned[i] = value;
        },
      );
    const x = new Array<number>(p).fill(0);
    for (let k = p - 1; k >= 0; k -= 1) {
      let sum = turned[k] ?? 0;
      for (let j = k + 1; j < p; j += 1) sum -= at(k, j) * (x[j] ?? 0);
      x[k] = sum / at(k, k);
    }
    return x.map((value, k) => value / (scale[k] ?? 1));
  };
  const residuals = (b: readonly number[]) =>
    rows.map((row, i) => (y[i] ?? 0) - row.reduce((sum, value, k) => sum + value * (b[k] ?? 0), 0));
  const rough = solve(y);
  const correction = solve(residuals(rough));
  const coefficients = rough.map((value, k) => value + (correction[k] ?? 0));
  const rest = residuals(coefficients).reduce((sum, value) => sum + value * value, 0);
  const mean = y.reduce((sum, value) => sum + value, 0) / n;
  const total = y.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  const residualDf = n - p;
  const residualSd = Math.sqrt(rest / residualDf);
  // Row k of R⁻¹ gives the standard error of coefficient k.
  const standardErrors = coefficients.map((_, k) => {
    let sum = 0;
    for (let column = k; column < p; column += 1) {
      const x = new Array<number>(p).fill(0);
      for (let i = column; i >= k; i -= 1) {
        let value = i === column ? 1 : 0;
        for (let j = i + 1; j <= column; j += 1) value -= at(i, j) * (x[j] ?? 0);
        x[i] = value / at(i, i);
      }
      sum += (x[k] ?? 0) ** 2;
    }
    return (residualSd * Math.sqrt(sum)) / (scale[k] ?? 1);
  });
  return { coefficients, standardErrors, residualSd, rSquared: total > 0 ? 1 - rest / total : 1, residualDf };
}
