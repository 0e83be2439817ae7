import { describe, expect, it } from 'vitest';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { analysePanel } from '#core/panel/analyse.ts';
import type { PanelScore } from '#core/panel/panel-analysis.ts';
import { panelErrors } from '#core/panel/panel-errors.ts';

function panel(seed: number, tasters: number, samples: number, replicates: number, holes: number): PanelScore[] {
  const random = seededRandom(seed);
  const scores: PanelScore[] = [];
  for (let taster = 0; taster < tasters; taster += 1)
    for (let sample = 0; sample < samples; sample += 1)
      for (const attribute of ['tang', 'liking'])
        for (let replicate = 0; replicate < replicates; replicate += 1) {
          if (random.uniform() < holes) continue;
          scores.push({ taster: `t${taster}`, sample: `s${sample}`, attribute, score: random.below(11) + taster / 4 });
        }
  return scores;
}

describe('panelErrors(input)', () => {
  it('gives the variances and degrees of freedom of analysePanel, to the last digit', () => {
    for (const [seed, tasters, samples, replicates, holes] of [
      [1, 5, 4, 1, 0],
      [2, 4, 3, 2, 0],
      [3, 6, 5, 2, 0.2],
      [4, 2, 2, 3, 0.1],
    ] as const) {
      const scores = panel(seed, tasters, samples, replicates, holes);
      const expected = analysePanel({ scores }).attributes.flatMap(({ attribute, test, variances }) =>
        test === null || variances.error === null
          ? []
          : [
              {
                attribute,
                error: variances.error,
                tasterBySample: variances.tasterBySample,
                dfError: test.dfError,
              },
            ],
      );
      expect(expected).toHaveLength(2);
      expect(panelErrors({ scores })).toEqual(expected);
    }
  });

  it('says nothing of one taster, of one sample, and of no score', () => {
    expect(panelErrors({ scores: panel(1, 1, 4, 2, 0) })).toEqual([]);
    expect(panelErrors({ scores: panel(1, 4, 1, 2, 0) })).toEqual([]);
    expect(panelErrors({ scores: [] })).toEqual([]);
  });
});
