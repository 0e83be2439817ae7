import type { LikelihoodAt, LikelihoodData } from './restricted-likelihood.ts';

/** First and second derivatives of the deviance by the two ratios. */
export interface Gradient {
  readonly g: readonly [number, number];
  readonly h: readonly [number, number, number];
}

/** Gradient and Hessian of the deviance by the two ratios. */
export function slopes(data: LikelihoodData, at: LikelihoodAt): Gradient {
  const d = at.derivatives;
  if (d === null) return { g: [0, 0], h: [1, 0, 1] };
  const scale = data.residualDf / at.squares;
  const [qa, qb] = d.squaresGradient;
  const [qaa, qab, qbb] = d.squaresHessian;
  const [laa, lab, lbb] = d.logHessian;
  return {
    g: [d.logGradient[0] + scale * qa, d.logGradient[1] + scale * qb],
    h: [
      laa + scale * (qaa - (qa * qa) / at.squares),
      lab + scale * (qab - (qa * qb) / at.squares),
      lbb + scale * (qbb - (qb * qb) / at.squares),
    ],
  };
}

/** Newton's step in the logarithms of the free ratios; gradient descent where the deviance is not convex. */
export function logStep({ g, h }: Gradient, a: number, b: number): readonly [number, number] {
  const ga = a * g[0];
  const gb = b * g[1];
  const haa = a * a * h[0] + ga;
  const hab = a * b * h[1];
  const hbb = b * b * h[2] + gb;
  if (b === 0) return [haa > 0 ? -ga / haa : -Math.sign(ga), 0];
  if (a === 0) return [0, hbb > 0 ? -gb / hbb : -Math.sign(gb)];
  const determinant = haa * hbb - hab * hab;
  if (haa > 0 && determinant > 1e-14 * haa * Math.abs(hbb)) {
    return [(-hbb * ga + hab * gb) / determinant, (hab * ga - haa * gb) / determinant];
  }
  return [-ga / (Math.abs(haa) + Math.abs(hab) + 1e-12), -gb / (Math.abs(hbb) + Math.abs(hab) + 1e-12)];
}
