import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { correlationInterval } from '#core/panel/tasters/correlation-interval.ts';
import { tasterAgreement } from '#core/panel/tasters/taster-agreement.ts';

// Bitterness of white wine (J. H. Randall, Biometrical Journal 31 (1989) 781), the eight bottles as samples; agreement.R made the figures.
const bitterness = [
  [36, 48, 47, 67, 77, 60, 83, 90],
  [17, 22, 14, 50, 30, 51, 90, 70],
  [36, 50, 42, 23, 80, 81, 73, 62],
  [46, 27, 48, 32, 57, 37, 84, 58],
  [26, 45, 61, 41, 48, 41, 58, 55],
  [46, 30, 54, 37, 32, 60, 88, 73],
  [13, 19, 31, 29, 22, 43, 32, 49],
  [25, 32, 39, 40, 51, 45, 42, 67],
  [12, 29, 47, 28, 47, 38, 72, 65],
];
const fixture = JSON.parse(readFileSync(join(import.meta.dirname, 'fixtures', 'agreement.json'), 'utf8')) as Record<
  'r' | 'low' | 'high' | 'mean' | 'meanLow' | 'meanHigh' | 'sd',
  number
>[];

const relative = (value: number | null | undefined, wanted: number) =>
  Math.abs((value ?? Number.NaN) - wanted) / Math.max(Math.abs(wanted), 1e-6);

describe('tasterAgreement(scores)', () => {
  it('agrees with R’s cor.test and t.test for each of nine judges of wine', () => {
    const scores = bitterness.flatMap((row, judge) =>
      row.map((score, bottle) => ({ taster: `judge ${judge + 1}`, sample: `bottle ${bottle + 1}`, score })),
    );
    const found = tasterAgreement(scores);
    expect(found).toHaveLength(9);
    found.forEach((use, judge) => {
      const wanted = fixture[judge];
      if (wanted === undefined) throw new Error('a judge is missing in the fixture');
      for (const [value, from] of [
        [use.agreement, wanted.r],
        [use.agreementInterval?.[0], wanted.low],
        [use.agreementInterval?.[1], wanted.high],
        [use.mean, wanted.mean],
        [use.meanInterval?.[0], wanted.meanLow],
        [use.meanInterval?.[1], wanted.meanHigh],
        [use.spread, wanted.sd],
      ] as const) {
        expect(relative(value, from)).toBeLessThan(1e-9);
      }
    });
  });
});

describe('correlationInterval(r, n)', () => {
  it('gives the interval that R’s own help for cor.test prints for the quality of tuna', () => {
    // Hollander & Wolfe (1973), p. 187: nine lots, r = 0.5711816, 95 % interval −0.1497426 to 0.8955795 (R documentation, from memory,
    // and seen again with R 4.2.2).
    const [low, high] = correlationInterval(0.5711816, 9) ?? [Number.NaN, Number.NaN];
    expect(low).toBeCloseTo(-0.1497426, 6);
    expect(high).toBeCloseTo(0.8955795, 6);
  });
});
