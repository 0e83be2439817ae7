import { choleskyFactor, choleskySolve } from '#core/numeric/cholesky.ts';
import type { SugarReading } from './decline-models.ts';
import { studentQuantile975 } from './student-quantile-975.ts';
import { type SugarDecline, sugarAt } from './sugar-decline.ts';

/** Sugar that the fitted fall expects at an hour, with its 95 % interval; `null` where the readings do not bound it. */
export interface DeclinePoint {
  readonly hours: number;
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** Step of the derivatives, as a share of the parameter; the shape's rates are logarithms, where this is a share of the rate. */
const derivativeStep = 1e-5;

/**
 * The fitted fall of sugar at some hours, with the 95 % interval of the curve (not of a single reading).
 *
 * Method: linear approximation about the fit, value ± t(0.975) · s · √(g′(J′J)⁻¹g), J and g by central differences. Leaves out the choice
 * between the two shapes, changes of temperature, and curvature of the model, which widens the band where readings are few. Never below 0.
 *
 * @param decline from `sugarDecline` @param readings the same that it was fitted to @param at hours wanted
 * @returns one point for each hour
 * Accuracy: that of the linear approximation; 1e-4 of the value against R's nls.
 * Source: Bates and Watts (1988), Nonlinear Regression Analysis and Its Applications, section 2.3.
 */
export function declineBand(
  decline: SugarDecline,
  readings: readonly SugarReading[],
  at: readonly number[],
): DeclinePoint[] {
  const { fitted, residualSd } = decline;
  const size = fitted.model.parameters;
  const squares = new Float64Array(size * size);
  for (const { hours } of readings) {
    const slopes = slopesAt(decline, hours);
    for (let row = 0; row < size; row += 1) {
      for (let column = 0; column < size; column += 1) {
        squares[row * size + column] = (squares[row * size + column] ?? 0) + (slopes[row] ?? 0) * (slopes[column] ?? 0);
      }
    }
  }
  const factor = choleskyFactor(squares, size);
  const freedom = readings.length - size;
  const quantile = freedom > 0 ? studentQuantile975(freedom) : null;
  return at.map((hours) => {
    const value = sugarAt(decline, hours);
    if (factor === null || quantile === null) return { hours, value, low: null, high: null };
    const slopes = slopesAt(decline, hours);
    const solved = choleskySolve(factor, size, slopes);
    const variance = slopes.reduce((sum, slope, place) => sum + slope * (solved[place] ?? 0), 0);
    const half = quantile * residualSd * Math.sqrt(Math.max(0, variance));
    if (!Number.isFinite(half)) return { hours, value, low: null, high: null };
    return { hours, value, low: Math.max(0, value - half), high: value + half };
  });
}

/** How the expected sugar at an hour moves with the height and each parameter of the shape. */
function slopesAt({ fitted }: SugarDecline, hours: number): Float64Array {
  const { model, height, shape } = fitted;
  const along = shape.map((parameter, place) => {
    const step = derivativeStep * Math.max(1, Math.abs(parameter));
    const moved = (by: number) =>
      model.curve(
        hours,
        shape.map((one, other) => (other === place ? one + by : one)),
      );
    return (height * (moved(step) - moved(-step))) / (2 * step);
  });
  return Float64Array.from([model.curve(hours, shape), ...along]);
}
