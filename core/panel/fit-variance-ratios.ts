import type { Derivatives } from './information.ts';
import { type LikelihoodAt, type LikelihoodData, restrictedLikelihood } from './restricted-likelihood.ts';

/** Variance over error variance; 0 where the data show none or the term is not in the model. */
export interface VarianceRatios {
  readonly taster: number;
  readonly interaction: number;
}

/** A ratio below this is no variance any more; one above its inverse leaves no error. */
const least = 1e-10;
export const largestRatio = 1e9;

interface Gradient {
  readonly g: readonly [number, number];
  readonly h: readonly [number, number, number];
}

/** Gradient and Hessian of the deviance by the two ratios. */
function slopes(data: LikelihoodData, at: LikelihoodAt): Gradient {
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
function logStep({ g, h }: Gradient, a: number, b: number): readonly [number, number] {
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

interface Found {
  readonly a: number;
  readonly b: number;
  readonly at: LikelihoodAt;
}

/** Goes downhill from a start; a ratio that sinks to nothing becomes exactly zero. */
function descend(data: LikelihoodData, derivatives: Derivatives, startA: number, startB: number): Found {
  let a = startA;
  let b = startB;
  let at = restrictedLikelihood(data, a, b, derivatives);
  for (let round = 0; round < 200; round += 1) {
    let [stepA, stepB] = logStep(slopes(data, at), a, b);
    const longest = Math.max(Math.abs(stepA), Math.abs(stepB));
    if (longest === 0 || !Number.isFinite(longest)) break;
    const sunkA = a < 1e-3 && stepA < -3;
    const sunkB = b < 1e-3 && stepB < -3;
    if (sunkA || sunkB) {
      // Far below any size that matters and still falling: look at zero itself.
      const next = restrictedLikelihood(data, sunkA ? 0 : a, sunkB ? 0 : b, derivatives);
      if (next.deviance <= at.deviance) {
        a = sunkA ? 0 : a;
        b = sunkB ? 0 : b;
        at = next;
        continue;
      }
    }
    const cap = Math.min(1, 3 / longest);
    stepA *= cap;
    stepB *= cap;
    // Rounding of a sum of many logarithms: below this the deviance cannot tell better from worse.
    const slack = 1e-13 * (Math.abs(at.deviance) + data.residualDf);
    let accepted = false;
    for (let halving = 0; halving < 40; halving += 1) {
      const nextA = a * Math.exp(stepA);
      const nextB = b * Math.exp(stepB);
      const newA = nextA < least ? 0 : Math.min(nextA, largestRatio);
      const newB = nextB < least ? 0 : Math.min(nextB, largestRatio);
      const next = restrictedLikelihood(data, newA, newB, derivatives);
      if (next.deviance <= at.deviance + slack) {
        a = newA;
        b = newB;
        at = next;
        accepted = true;
        break;
      }
      stepA /= 2;
      stepB /= 2;
    }
    if (!accepted || Math.max(Math.abs(stepA), Math.abs(stepB)) < 1e-11) break;
  }
  return { a, b, at };
}

/**
 * The variance ratios that make the restricted likelihood largest, neither below zero.
 *
 * Method: a coarse grid that includes zero, Newton's method on logarithms from its best points, and from a boundary back inside
 * where the deviance still falls that way.
 *
 * @param data the likelihood
 * @param free which variances belong to the model
 * @returns the ratios and the likelihood there, with derivatives
 * Accuracy: gradient to rounding; ratios to about 1e-10 relative where the data determine them.
 */
export function fitVarianceRatios(
  data: LikelihoodData,
  free: { readonly taster: boolean; readonly interaction: boolean },
): { readonly ratios: VarianceRatios; readonly at: LikelihoodAt } {
  const derivatives: Derivatives = free.interaction ? 'both' : 'taster';
  const grid = [0, 0.02, 0.3, 4];
  const points: { a: number; b: number; deviance: number }[] = [];
  for (const a of free.taster ? grid : [0]) {
    for (const b of free.interaction ? grid : [0]) {
      points.push({ a, b, deviance: restrictedLikelihood(data, a, b, 'none').deviance });
    }
  }
  points.sort((one, other) => one.deviance - other.deviance);
  const inside = points.find(({ a, b }) => a > 0 === free.taster && b > 0 === free.interaction);
  const starts = [...points.slice(0, 1), ...(inside === undefined || inside === points[0] ? [] : [inside])];
  const tried = starts.map(({ a, b }) => descend(data, derivatives, a, b));
  for (const found of [...tried]) {
    const { g } = slopes(data, found.at);
    const intoA = free.taster && found.a === 0 && g[0] < 0;
    const intoB = free.interaction && found.b === 0 && g[1] < 0;
    if (intoA || intoB) tried.push(descend(data, derivatives, intoA ? 1e-3 : found.a, intoB ? 1e-3 : found.b));
  }
  let best = tried[0] ?? descend(data, derivatives, 0, 0);
  for (const found of tried)
    if (found.at.deviance < best.at.deviance - 1e-12 * Math.abs(best.at.deviance)) best = found;
  return { ratios: { taster: best.a, interaction: best.b }, at: best.at };
}
