import { describe, expect, it } from 'vitest';
import { discriminate } from '#core/panel/apart/discriminate.ts';

describe('discriminate(input) with every answer correct', () => {
  it('gives a lower end that rises as its interval narrows, at every alpha, also within rounding of 1', () => {
    for (const method of ['triangle', 'duo-trio', 'paired'] as const) {
      const lows = [0.05, 0.5, 0.999, 0.9999999999999989].map(
        (alpha) => discriminate({ method, correct: 39, trials: 39, alpha }).dPrimeLow ?? Number.NaN,
      );
      expect(lows).toEqual([...lows].sort((a, b) => a - b));
      expect(Number.isFinite(lows.at(-1))).toBe(true);
      expect(lows[0]).toBeGreaterThan(0);
    }
  });
});
