/**
 * The nine words of the hedonic scale, from 1 to 9.
 *
 * Source: Peryam and Pilgrim, Hedonic scale method of measuring food preferences, Food Technology 11 (1957) 9.
 */
export const hedonicWords = [
  'dislike extremely',
  'dislike very much',
  'dislike moderately',
  'dislike slightly',
  'neither like nor dislike',
  'like slightly',
  'like moderately',
  'like very much',
  'like extremely',
] as const;

/** The word for a score on a scale, where the scale is the nine-point one; null elsewhere and between two words. */
export function hedonicWord(
  scale: { readonly low: number; readonly high: number; readonly lowWord?: string | null },
  score: number,
): string | null {
  if (!isHedonic(scale)) return null;
  return hedonicWords[score - 1] ?? null;
}

/** Whether a scale is the nine-point hedonic one: 1 to 9, from its first word. */
export function isHedonic(scale: {
  readonly low: number;
  readonly high: number;
  readonly lowWord?: string | null;
}): boolean {
  return scale.low === 1 && scale.high === 9 && scale.lowWord === hedonicWords[0];
}
