import { OutOfDomain } from '#core/out-of-domain.ts';

/**
 * Where a continuous function crosses zero between two points of opposite sign.
 *
 * Method: Brent's: inverse quadratic or secant steps, bisection whenever they would not shrink the bracket.
 *
 * @param f continuous on [low, high]
 * @param low one end
 * @param high the other end; f has the opposite sign there (or is zero at an end)
 * @param tolerance width of the last bracket, absolute
 * @returns the crossing
 * @throws OutOfDomain when f has the same sign at both ends
 * Source: R. P. Brent, Algorithms for Minimization without Derivatives (1973), chapter 4.
 * @example findRoot((x) => x * x - 2, 0, 2) // 1.41421356…
 */
export function findRoot(f: (x: number) => number, low: number, high: number, tolerance = 1e-12): number {
  let a = low;
  let b = high;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  if (fa > 0 === fb > 0) throw new OutOfDomain('[low, high]', `[${low}, ${high}]`, 'ends where f has opposite signs');
  let c = a;
  let fc = fa;
  let step = b - a;
  let before = step;
  for (let round = 0; round < 200; round += 1) {
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b;
      b = c;
      c = a;
      fa = fb;
      fb = fc;
      fc = fa;
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
    const half = (c - b) / 2;
    if (Math.abs(half) <= least || fb === 0) return b;
    if (Math.abs(before) >= least && Math.abs(fa) > Math.abs(fb)) {
      const s = fb / fa;
      let p = 2 * half * s;
      let q = 1 - s;
      if (a !== c) {
        const r = fb / fc;
        const u = fa / fc;
        p = s * (2 * half * u * (u - r) - (b - a) * (r - 1));
        q = (u - 1) * (r - 1) * (s - 1);
      }
      if (p > 0) q = -q;
      p = Math.abs(p);
      if (2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(before * q))) {
        before = step;
        step = p / q;
      } else {
        step = half;
        before = half;
      }
    } else {
      step = half;
      before = half;
    }
    a = b;
    fa = fb;
    b += Math.abs(step) > least ? step : half > 0 ? least : -least;
    fb = f(b);
    if (fb > 0 === fc > 0) {
      c = a;
      fc = fa;
      step = b - a;
      before = step;
    }
  }
  return b;
}
