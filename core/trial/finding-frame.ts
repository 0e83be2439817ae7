import type { AttributeAnalysis } from '#core/panel/panel-analysis.ts';
import type { Factor } from './factor.ts';

/** What a finding must know of the trial besides the numbers. */
export interface FindingFrame {
  readonly factor: Factor;
  readonly control: string | null;
  /** Jars of each level: with one, a finding speaks of these jars and no further. */
  readonly replicates: number;
  /** Lower and upper end of each attribute's scale. */
  readonly scales?: Readonly<Record<string, readonly [number, number]>> | undefined;
}

/** From here down a chance is called small enough to speak of a difference. Common practice, no source. */
export const sureEnough = 0.05;

/**
 * Whether a finding may speak of the levels themselves: several jars of each were tasted, and the levels stand apart further than
 * the jars of one level do. Otherwise it speaks of these jars.
 */
export function speaksOfLevels(attribute: AttributeAnalysis, frame: FindingFrame): boolean {
  return frame.replicates > 1 && attribute.jars !== null && attribute.jars.p < sureEnough;
}
