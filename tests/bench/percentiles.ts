/** The value below which a share of the values lies; NaN for none. */
export function quantile(values: readonly number[], share: number): number {
  const inOrder = values.toSorted((a, b) => a - b);
  return inOrder[Math.min(inOrder.length - 1, Math.floor(share * inOrder.length))] ?? Number.NaN;
}

/** @example medianAnd95([1, 2, 3]) // '2.0 ms median, 3.0 ms 95th percentile' */
export function medianAnd95(values: readonly number[]): string {
  return `${quantile(values, 0.5).toFixed(1)} ms median, ${quantile(values, 0.95).toFixed(1)} ms 95th percentile`;
}
