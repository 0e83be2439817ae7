import { phrase } from '#core/words/phrase.ts';

/** How much of a slow start the cold explains. */
export interface SlowStart {
  readonly cold_h: { readonly low: number; readonly high: number };
  readonly rest_h: { readonly low: number; readonly high: number };
  readonly sentence: string;
}

/**
 * Splits a slow start into what the cold explains and the rest, which is not temperature.
 *
 * @param late_h how many hours later the jar started than its neighbour, at least 0
 * @param lost the equivalent hours that the cold cost
 * @example slowStart(12, { low: 2.6, high: 3.1 }).sentence // 'Of 12 h, the cold explains about 2.6 to 3.1 h; the rest is not temperature.'
 */
export function slowStart(late_h: number, lost: { readonly low: number; readonly high: number }): SlowStart {
  const share = (hours: number) => Math.min(late_h, Math.max(0, hours));
  const cold_h = { low: share(lost.low), high: share(lost.high) };
  const rest_h = { low: late_h - cold_h.high, high: late_h - cold_h.low };
  const said = (hours: number) => Number(hours.toFixed(1));
  const sentence =
    rest_h.high < 0.05
      ? phrase`The cold explains all ${said(late_h)} h.`
      : phrase`Of ${said(late_h)} h, the cold explains about ${said(cold_h.low)} to ${said(cold_h.high)} h; the rest is not temperature.`;
  return { cold_h, rest_h, sentence };
}
