import type { Derivatives } from './information.ts';
import { logStep, slopes } from './newton-step.ts';
import { type LikelihoodAt, type LikelihoodData, restrictedLikelihood } from './restricted-likelihood.ts';

/** Variance over error variance; 0 where the data show none or the term is not in the model. */
export interface VarianceRatios {
  readonly taster: number;
  readonly interaction: number;
}

/** A ratio below this is no variance any more; one above its inverse leaves no error. */
const least = 1e-10;
export const largestRatio = 1e9;

/** Starting values of the ratios. */
const grid = [0, 0.02, 0.3, 4];
/** More cells than this hold too much for a second valley of the likelihood. */
const manyCells = 2000;

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
  const points: { a: number; b: number; deviance: number }[] = [];
  const look = (a: number, b: number) =>
    points.push({ a, b, deviance: restrictedLikelihood(data, a, b, 'none').deviance });
  const gridA = free.taster ? grid : [0];
  const gridB = free.interaction ? grid : [0];
  if (data.cells.count.length <= manyCells) for (const a of gridA) for (const b of gridB) look(a, b);
  else {
    // With so many cells there is one valley: look across it once, and once along.
    for (const a of gridA) look(a, free.interaction ? 0.1 : 0);
    const across = points.reduce((best, point) => (point.deviance < best.deviance ? point : best));
    for (const b of gridB) look(across.a, b);
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
