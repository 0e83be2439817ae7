import { type DunnettDistribution, dunnettDistribution } from '#core/numeric/dunnett-distribution.ts';
import { type StudentizedRange, studentizedRange } from '#core/numeric/studentized-range.ts';

/** Distributions that several attributes of one request ask for: each is prepared once. */
export interface PanelContext {
  rangeOf(samples: number): StudentizedRange;
  dunnettOf(loadings: readonly number[]): DunnettDistribution;
}

/** A fresh context; keep it for one request. */
export function panelContext(): PanelContext {
  const ranges = new Map<number, StudentizedRange>();
  const dunnetts = new Map<string, DunnettDistribution>();
  return {
    rangeOf(samples) {
      const known = ranges.get(samples) ?? studentizedRange(samples);
      ranges.set(samples, known);
      return known;
    },
    dunnettOf(loadings) {
      const key = loadings.map((loading) => loading.toPrecision(10)).join();
      const known = dunnetts.get(key) ?? dunnettDistribution(loadings);
      dunnetts.set(key, known);
      return known;
    },
  };
}
