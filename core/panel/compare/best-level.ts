import type { ReasonCode } from '#core/reason.ts';

/** A parabola b0 + b1·u + b2·u² in the level u, with the covariance of b1 and b2. */
export interface FittedParabola {
  readonly b1: number;
  readonly b2: number;
  readonly v11: number;
  readonly v12: number;
  readonly v22: number;
}

export type BestLevel =
  | { readonly level: number; readonly low: number | null; readonly high: number | null }
  | { readonly code: Extract<ReasonCode, 'no-turning-point' | 'rising-at-end' | 'falling-from-start'> };

/**
 * Where a fitted parabola is highest, with Fieller's interval.
 *
 * Method: the top lies at −b1/(2·b2); the interval holds every level at which a slope of zero cannot be ruled out. Where the bend
 * is not clear that set has an open end, given as null. The ends may lie beyond the tested levels: there they are extrapolated.
 *
 * @param parabola fitted to liking
 * @param first lowest level tested
 * @param last highest level tested
 * @param t critical value of Student's t for the interval, above 0
 * @returns the top, or why there is none between the first and the last level
 * Source: E. C. Fieller, J. R. Statist. Soc. B 16 (1954) 175.
 */
export function bestLevel(parabola: FittedParabola, first: number, last: number, t: number): BestLevel {
  const { b1, b2, v11, v12, v22 } = parabola;
  if (!(b2 < 0)) return { code: 'no-turning-point' };
  const top = -b1 / (2 * b2);
  if (top >= last) return { code: 'rising-at-end' };
  if (top <= first) return { code: 'falling-from-start' };
  // (b1 + 2·b2·u)² ≤ t²·Var(b1 + 2·b2·u): a·u² + b·u + c ≤ 0.
  const a = 4 * (b2 * b2 - t * t * v22);
  const b = 4 * (b1 * b2 - t * t * v12);
  const c = b1 * b1 - t * t * v11;
  const discriminant = b * b - 4 * a * c;
  const open = { level: top, low: null, high: null };
  if (a === 0 || discriminant <= 0) return open;
  const root = Math.sqrt(discriminant);
  const ends = [(-b - root) / (2 * a), (-b + root) / (2 * a)].sort((one, other) => one - other);
  const [low = 0, high = 0] = ends;
  if (a > 0) return { level: top, low: low, high: high };
  // Two rays: the top lies on one of them, and that one has a single end.
  return top <= low ? { ...open, high: low } : { ...open, low: high };
}
