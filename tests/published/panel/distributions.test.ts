import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { binomialUpperTail } from '#core/numeric/binomial-tail.ts';
import { chiSquareUpperTail } from '#core/numeric/chi-square.ts';
import { fCritical, fUpperTail } from '#core/numeric/f-distribution.ts';
import { logGamma } from '#core/numeric/log-gamma.ts';
import { noncentralFUpperTail } from '#core/numeric/noncentral-f.ts';
import { tBothTails } from '#core/numeric/t-distribution.ts';

// Forty random arguments each, tails by base R 4.2.2: fixtures/distributions.R.
const fixture: Record<string, number[][]> = JSON.parse(
  readFileSync(new URL('./fixtures/distributions.json', import.meta.url), 'utf8'),
);

describe('tails agree with base R', () => {
  // R prints fifteen digits: the arguments as printed differ from those it used by up to 5e-16 of themselves.
  const functions: [string, (...x: number[]) => number, number][] = [
    ['f', (f = 0, a = 1, b = 1) => fUpperTail(f, a, b), 2e-11],
    ['t', (t = 0, df = 1) => tBothTails(t, df), 2e-11],
    ['chiSquare', (x = 0, df = 1) => chiSquareUpperTail(x, df), 2e-11],
    ['noncentralF', (f = 0, a = 1, b = 1, n = 0) => noncentralFUpperTail(f, a, b, n), 1e-10],
    ['binomial', (s = 0, n = 0, p = 0) => binomialUpperTail(s, n, p), 1e-10],
    ['fCritical', (p = 0.5, a = 1, b = 1) => fCritical(p, a, b), 1e-9],
    ['logGamma', (x = 1) => logGamma(x), 1e-12],
  ];
  it.each(functions)('%s', (name, compute, tolerance) => {
    const rows = fixture[name] ?? [];
    expect(rows).toHaveLength(40);
    for (const row of rows) {
      const expected = row.at(-1) ?? Number.NaN;
      // Tails that round to nothing are compared on the scale of the smallest that matter.
      const error = Math.abs(compute(...row.slice(0, -1)) - expected) / Math.max(Math.abs(expected), 1e-280);
      expect(error, `${name}(${row.slice(0, -1).join(', ')})`).toBeLessThan(tolerance);
    }
  });
});
