/**
 * Pearson's correlation of two lists.
 *
 * @param x at least 2 values
 * @param y as many
 * @returns −1 to 1, or null when either list does not vary
 * @example correlation([1, 2, 3], [2, 4, 6]) // 1
 */
export function correlation(x: readonly number[], y: readonly number[]): number | null {
  const n = x.length;
  const meanX = x.reduce((sum, value) => sum + value, 0) / n;
  const meanY = y.reduce((sum, value) => sum + value, 0) / n;
  let xx = 0;
  let yy = 0;
  let xy = 0;
  let sizeX = 0;
  let sizeY = 0;
  x.forEach((value, index) => {
    const other = y[index] ?? 0;
    xx += (value - meanX) ** 2;
    yy += (other - meanY) ** 2;
    xy += (value - meanX) * (other - meanY);
    sizeX += value * value;
    sizeY += other * other;
  });
  // What is left of equal values is rounding, not variation.
  if (!(xx > 1e-26 * sizeX) || !(yy > 1e-26 * sizeY)) return null;
  return Math.max(-1, Math.min(1, xy / Math.sqrt(xx * yy)));
}
