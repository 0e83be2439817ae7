import type { Trend } from '#core/panel/panel-analysis.ts';
import { phrase } from '#core/words/phrase.ts';
import { type Factor, factorUnits } from './factor.ts';
import { rangeWords, scoreWords } from './finding-words.ts';

/**
 * Where the curve of an ordered factor is highest, in words; ends of the interval that lie outside the tested levels are not claimed.
 *
 * @example bestLevelWords(trend, 'days') // 'near 2.9 days (95 % interval 2.5 to 3.4)'
 */
export function bestLevelWords(trend: Trend, factor: Factor): string | null {
  const { best, curve } = trend;
  const first = curve[0]?.level;
  const last = curve.at(-1)?.level;
  if (best === null || first === undefined || last === undefined) return null;
  const unit = factorUnits[factor];
  const near = phrase`near ${scoreWords(best.level)}${unit === null ? '' : ` ${unit}`}`;
  const low = best.low !== null && best.low >= first ? best.low : null;
  const high = best.high !== null && best.high <= last ? best.high : null;
  if (low !== null && high !== null) return phrase`${near} (95 % interval ${rangeWords(low, high)})`;
  if (low !== null) return phrase`${near} (${scoreWords(low)} or more; how far up stays open)`;
  if (high !== null) return phrase`${near} (${scoreWords(high)} or less; how far down stays open)`;
  return phrase`${near}, though the levels tried don’t pin it down`;
}
