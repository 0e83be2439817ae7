import { OutOfDomain } from '#core/out-of-domain.ts';

/** Points on [−1, 1] and their weights. */
export interface Quadrature {
  readonly points: Float64Array;
  readonly weights: Float64Array;
}

/**
 * Gauss–Legendre quadrature: exact for polynomials of degree 2n − 1.
 *
 * Method: Newton's method on the Legendre polynomial from Tricomi's starting values.
 *
 * @param count number of points, 1 to 500
 * @throws OutOfDomain outside that
 * Accuracy: 1e-15. Source: Davis & Rabinowitz, Methods of Numerical Integration (2nd ed. 1984), section 2.7 (from memory).
 * @example gaussLegendre(2).points // ∓ 1/√3
 */
export function gaussLegendre(count: number): Quadrature {
  if (!Number.isInteger(count) || count < 1 || count > 500)
    throw new OutOfDomain('count', count, 'whole numbers from 1 to 500');
  const points = new Float64Array(count);
  const weights = new Float64Array(count);
  for (let index = 0; index < count; index += 1) {
    let x = -Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let round = 0; round < 100; round += 1) {
      let before = 1;
      let value = x;
      for (let degree = 2; degree <= count; degree += 1) {
        const next = ((2 * degree - 1) * x * value - (degree - 1) * before) / degree;
        before = value;
        value = next;
      }
      slope = count === 1 ? 1 : (count * (x * value - before)) / (x * x - 1);
      const step = value / slope;
      x -= step;
      if (Math.abs(step) < 1e-15) break;
    }
    points[index] = x;
    weights[index] = 2 / ((1 - x * x) * slope * slope);
  }
  return { points, weights };
}

/**
 * Integral of f from low to high.
 *
 * @param rule points and weights from gaussLegendre
 */
export function integrate(f: (x: number) => number, low: number, high: number, rule: Quadrature): number {
  const half = (high - low) / 2;
  const middle = (high + low) / 2;
  let sum = 0;
  for (let index = 0; index < rule.points.length; index += 1) {
    sum += (rule.weights[index] as number) * f(middle + half * (rule.points[index] as number));
  }
  return half * sum;
}
