import { tBothTails, tCritical } from '#core/numeric/t-distribution.ts';
import type { Reason } from '#core/reason.ts';
import { phrase } from '#core/words/phrase.ts';
import type { CellTable } from '../model/cell-table.ts';
import { fitMixedModel, type MixedModel } from '../model/mixed-model.ts';
import { polynomialMeans } from '../model/sample-design.ts';
import { type CoefficientCovariance, coefficientCovariance, satterthwaite } from '../model/satterthwaite.ts';
import type { Trend } from '../panel-analysis.ts';
import { pageBlocks } from '../ranks/page-blocks.ts';
import { pageTest } from '../ranks/page-test.ts';
import { bestLevel } from './best-level.ts';
import { chosenSamples } from './chosen-samples.ts';

const curvePoints = 41;

interface Fit {
  readonly model: MixedModel;
  readonly spread: CoefficientCovariance;
}

function fitPolynomial(cells: CellTable, centred: Float64Array, degree: number): Fit | null {
  const model = fitMixedModel(cells, polynomialMeans(centred, degree));
  const spread = model === null ? null : coefficientCovariance(model);
  return model === null || spread === null ? null : { model, spread };
}

export interface TrendQuestion {
  readonly cells: CellTable;
  /** Each sample's level; null where it has none. */
  readonly levels: readonly (number | null)[];
  readonly isLiking: boolean;
  readonly alpha: number;
  /** Where the trend stands in the answer. */
  readonly path: readonly (string | number)[];
}

/**
 * How an attribute moves with the levels: slope, bend, Page's test, the curve with its band, and for liking the best level.
 *
 * Method: the samples' means are replaced by a straight line (slope) and by a parabola (bend, curve, best level) inside the same
 * mixed model, fitted anew; intervals on Satterthwaite's degrees of freedom, the band point by point. With two levels the curve is
 * the line. Levels are centred on the mean of the samples' levels.
 * Leaves out: lack of fit of the line and of the parabola, which goes into the error.
 *
 * @param question samples without a level are left out
 * @returns the trend and what could not be said; null when fewer than two levels or no error is left
 */
export function trendOf(question: TrendQuestion): { readonly trend: Trend | null; readonly reasons: Reason[] } {
  const { levels, alpha, path, isLiking } = question;
  const reasons: Reason[] = [];
  const say = (at: string[], code: Reason['code'], needs: string) =>
    reasons.push({ path: [...path, ...at], code, needs });
  const kept = levels.flatMap((level, sample) => (level === null ? [] : [sample]));
  const cells = chosenSamples(question.cells, kept);
  const known = kept.map((sample) => levels[sample] ?? 0);
  const centre = known.reduce((sum, level) => sum + level, 0) / known.length;
  const half = Math.max(...known.map((level) => Math.abs(level - centre)));
  // Scaled to ±1: slopes of tiny or huge levels keep their digits. Levels closer than a hundred-thousandth of that count as one.
  const centred = Float64Array.from(known, (level) => (half > 0 ? (level - centre) / half : 0));
  const distinct = new Set(Array.from(centred, (u) => Math.round(u * 1e5))).size;
  const line = distinct < 2 ? null : fitPolynomial(cells, centred, 1);
  if (line === null) {
    if (distinct < 2) say([], 'level-missing', phrase`samples at two different levels or more`);
    else say([], 'no-variation', phrase`scores that differ about the line, to measure its slope against`);
    return { trend: null, reasons };
  }
  const slope = satterthwaite(line.model, line.spread, Float64Array.of(0, 1));
  const slopeError = Math.sqrt(slope.variance);
  const reach = tCritical(alpha, slope.df) * slopeError;
  const parabola = distinct < 3 ? null : fitPolynomial(cells, centred, 2);
  const bend = parabola === null ? null : satterthwaite(parabola.model, parabola.spread, Float64Array.of(0, 0, 1));
  if (parabola === null)
    say(['curvature'], distinct < 3 ? 'two-levels-only' : 'no-variation', phrase`three levels or more, to see a bend`);

  const first = Math.min(...known);
  const last = Math.max(...known);
  const drawn = parabola ?? line;
  const curve = Array.from({ length: curvePoints }, (_, index) => {
    const level = first + ((last - first) * index) / (curvePoints - 1);
    const u = (level - centre) / half;
    const point = satterthwaite(
      drawn.model,
      drawn.spread,
      Float64Array.of(1, u, u * u).subarray(0, drawn.model.design.columns),
    );
    const band = tCritical(alpha, point.df) * Math.sqrt(point.variance);
    return { level, fit: point.estimate, low: point.estimate - band, high: point.estimate + band };
  });

  const page = pageBlocks(cells, known);
  const pageable = page.blocks.length >= 2 && page.levels.length >= 3;
  if (!pageable) {
    const code = page.levels.length < 3 ? 'two-levels-only' : 'incomplete-panel';
    say(['pageL'], code, phrase`three levels or more, and two tasters or more who tasted them all`);
  }
  const ranked = pageable ? pageTest(page.blocks) : null;
  const best = isLiking ? bestOf(parabola, centre, half, first, last, bend?.df ?? 1, alpha) : null;
  if (isLiking && parabola === null)
    say(['best'], 'two-levels-only', phrase`three levels or more, to see where liking turns`);
  if (best !== null && 'code' in best) say(['best'], best.code, needsFor[best.code]);
  return {
    trend: {
      slope: slope.estimate / half,
      slopeLow: (slope.estimate - reach) / half,
      slopeHigh: (slope.estimate + reach) / half,
      slopeP: tBothTails(slope.estimate / slopeError, slope.df),
      curvature: bend === null ? null : bend.estimate / half / half,
      curvatureP: bend === null ? null : tBothTails(bend.estimate / Math.sqrt(bend.variance), bend.df),
      pageL: ranked?.l ?? null,
      pageP: ranked?.p ?? null,
      curve,
      best: best === null || 'code' in best ? null : best,
    },
    reasons,
  };
}

const needsFor = {
  get 'no-turning-point'() {
    return phrase`a liking that rises and then falls: this one has no top`;
  },
  get 'rising-at-end'() {
    return phrase`levels beyond the highest one: liking still rises there`;
  },
  get 'falling-from-start'() {
    return phrase`levels below the lowest one: liking falls from the first`;
  },
} as const;

function bestOf(fit: Fit | null, centre: number, half: number, first: number, last: number, df: number, alpha: number) {
  if (fit === null) return null;
  const { covariance } = fit.spread;
  const [, b1 = 0, b2 = 0] = fit.model.coefficients;
  const parabola = { b1, b2, v11: covariance[4] ?? 0, v12: covariance[5] ?? 0, v22: covariance[8] ?? 0 };
  const best = bestLevel(parabola, (first - centre) / half, (last - centre) / half, tCritical(alpha, df));
  if ('code' in best) return best;
  const back = (u: number | null): number | null => (u === null ? null : centre + half * u);
  return { level: centre + half * best.level, low: back(best.low), high: back(best.high) };
}
