/**
 * Ticks at round steps that hold a range, its ends included.
 *
 * @param steps allowed, rising; above the last its multiples
 * @param most about how many spaces between ticks there may be
 * @example axisTicks(0, 84, [12, 24, 48], 6) // [0, 24, 48, 72, 96]
 */
export function axisTicks(low: number, high: number, steps: readonly number[], most: number): number[] {
  const span = Math.max(high - low, steps[0] ?? 1);
  const last = steps.at(-1) ?? 1;
  const step = steps.find((one) => span / one <= most) ?? Math.ceil(span / most / last) * last;
  const first = Math.floor(low / step + 1e-9);
  const end = Math.max(first + 1, Math.ceil(high / step - 1e-9));
  return Array.from({ length: end - first + 1 }, (_, place) => Number(((first + place) * step).toFixed(6)));
}

/** Ticks on a scale of whole points, from its lower end up. @example wholeTicks([1, 9]) // [1, 2, 3, 4, 5, 6, 7, 8, 9] */
export function wholeTicks([low, high]: readonly [number, number]): number[] {
  const step = high - low > 20 ? Math.ceil((high - low) / 5) : high - low > 8 ? 2 : 1;
  return Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, place) => low + place * step);
}
