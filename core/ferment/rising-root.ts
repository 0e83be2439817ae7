/**
 * Where a rising function reaches a value, within a bracket that holds it.
 *
 * Method: the Illinois form of regula falsi, with a bisection whenever three steps have not halved the bracket. Leaves out checking that
 * the bracket holds the value: callers know their functions.
 *
 * @param rising the function; never falls between `low` and `high`
 * @param low where it lies at or below the value @param high where it lies at or above it
 * @param tolerance width of the bracket, or size of a step, at which it is close enough; more than 0
 * @returns the argument
 */
export function risingRoot(
  rising: (x: number) => number,
  wanted: number,
  low: number,
  high: number,
  tolerance: number,
): number {
  let [left, right] = [low, high];
  let below = rising(left) - wanted;
  let above = rising(right) - wanted;
  let last = Number.NaN;
  let checked = right - left;
  for (let step = 1; step <= 200 && right - left > tolerance; step += 1) {
    const chord = left - (below * (right - left)) / (above - below);
    const stalled = step % 3 === 0 && right - left > checked / 2;
    if (step % 3 === 0) checked = right - left;
    const next = stalled || !(chord > left && chord < right) ? (left + right) / 2 : chord;
    if (Math.abs(next - last) < tolerance) return next;
    const value = rising(next) - wanted;
    if (value === 0) return next;
    if (value < 0) {
      if (next > last) above /= 2;
      [left, below] = [next, value];
    } else {
      if (next < last) below /= 2;
      [right, above] = [next, value];
    }
    last = next;
  }
  return (left + right) / 2;
}
