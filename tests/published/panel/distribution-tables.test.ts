import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dunnettDistribution } from '#core/numeric/dunnett-distribution.ts';
import { fCritical } from '#core/numeric/f-distribution.ts';
import { findRoot } from '#core/numeric/find-root.ts';
import { noncentralFUpperTail } from '#core/numeric/noncentral-f.ts';
import { studentizedRange } from '#core/numeric/studentized-range.ts';
import { tBothTails } from '#core/numeric/t-distribution.ts';
import { chanceCorrect, dPrimeAt } from '#core/panel/apart/thurstone.ts';

const endless = Number.POSITIVE_INFINITY;

describe('studentizedRange', () => {
  // Harter, Ann. Math. Stat. 31 (1960) 1122, upper 5 % and 1 % points, three decimals (from memory; endless degrees of freedom computed
  // with base R 4.2.2).
  it.each([
    [3, 10, 0.05, 3.877],
    [3, 5, 0.05, 4.602],
    [5, 20, 0.05, 4.232],
    [3, 10, 0.01, 5.27],
    [2, endless, 0.05, 2.772],
    [3, endless, 0.05, 3.314],
    [6, endless, 0.05, 4.03],
    [10, endless, 0.05, 4.474],
    [3, endless, 0.01, 4.12],
    [10, endless, 0.01, 5.157],
  ])('%i means, %f degrees of freedom, alpha %f: %f', (groups, df, alpha, q) => {
    expect(studentizedRange(groups).critical(alpha, df)).toBeCloseTo(q, 2.9);
  });

  it('of two means is Student’s t: the tail beyond q is that of |t| beyond q/√2, to 1e-11', () => {
    const range = studentizedRange(2);
    for (const df of [1, 1.5, 2, 3.7, 7.5, 20, 240, 1e5]) {
      for (const q of [0.01, 0.5, 2, 4, 9, 30]) {
        expect(Math.abs(range.upperTail(q, df) - tBothTails(q / Math.SQRT2, df))).toBeLessThan(1e-11);
      }
    }
  });

  // ptukey of base R 4.2.2 (Copenhaver & Holland 1988), whose quadrature leaves errors of some 1e-8 (at 100 means 5e-8: ours moves by 1e-10 there when all steps are halved).
  it.each([
    [3.5, 5, 20, 0.136502351580431],
    [6, 8, 3.3, 0.122378575378659],
    [4.2, 20, 1000, 0.250233946813142],
    [8, 12, 77, 1.57497614748925e-5],
    [0.5, 4, 10, 0.983964662454811],
    [5, 100, 30, 0.519441942392594],
  ])('q %f, %i means, %f degrees of freedom: %f', (q, groups, df, tail) => {
    expect(Math.abs(studentizedRange(groups).upperTail(q, df) - tail)).toBeLessThan(6e-8);
  });
});

describe('dunnettDistribution', () => {
  const equal = (comparisons: number) => new Array<number>(comparisons).fill(Math.SQRT1_2);

  // Dunnett, Biometrics 20 (1964) 482, two-sided 5 %, two decimals (from memory).
  it.each([
    [10, [2.23, 2.57, 2.76, 2.89]],
    [20, [2.09, 2.38, 2.54, 2.65]],
    [60, [2, 2.27, 2.41, 2.51]],
    [endless, [1.96, 2.21, 2.35, 2.44]],
  ])('%f degrees of freedom, one to four comparisons: %j', (df, row) => {
    row.forEach((t, index) => {
      expect(Math.abs(dunnettDistribution(equal(index + 1)).critical(0.05, df) - t)).toBeLessThan(0.0051);
    });
  });

  const { tails }: { tails: { t: number; loadings: number[]; df: number; p: number }[] } = JSON.parse(
    readFileSync(new URL('./fixtures/dunnett.json', import.meta.url), 'utf8'),
  );
  it.each(tails)('t $t, loadings $loadings, $df degrees of freedom', ({ t, loadings, df, p }) => {
    // The reference integrates at random: its own error is about 1e-7.
    const exact = loadings.map((loading) => (Math.abs(loading - Math.SQRT1_2) < 1e-11 ? Math.SQRT1_2 : loading));
    expect(Math.abs(dunnettDistribution(exact).upperTail(t, df) - p)).toBeLessThan(5e-7);
  });

  it('of one comparison is Student’s t', () => {
    for (const df of [2, 7.5, 100]) {
      for (const t of [0.3, 2, 6]) {
        expect(Math.abs(dunnettDistribution([0.5]).upperTail(t, df) - tBothTails(t, df))).toBeLessThan(1e-11);
      }
    }
  });
});

describe('noncentralFUpperTail', () => {
  it('power.anova.test(groups = 4, between.var = 1, within.var = 3, power = 0.80): n = 11.92613 (R base, the manual’s example)', () => {
    // The example's printed n stops at the solver's tolerance of about 1e-4.
    const power = (n: number): number =>
      noncentralFUpperTail(fCritical(0.05, 3, 4 * (n - 1)), 3, 4 * (n - 1), 3 * n * (1 / 3));
    expect(Math.abs(findRoot((n) => power(n) - 0.8, 2, 100) - 11.92613)).toBeLessThan(1e-4);
  });

  it('without noncentrality is the F test’s own alpha', () => {
    expect(noncentralFUpperTail(fCritical(0.05, 3, 17), 3, 17, 0)).toBeCloseTo(0.05, 10);
  });
});

describe('chanceCorrect and dPrimeAt', () => {
  // Ennis, Journal of Sensory Studies 8 (1993) 353 (formulas from memory; values by quadrature to 1e-13).
  it.each([
    [0, 0.333333, 0.5, 0.5],
    [0.5, 0.355835, 0.522347, 0.638163],
    [1, 0.418047, 0.582475, 0.76025],
    [1.5, 0.506456, 0.663462, 0.855578],
    [2, 0.604807, 0.74682, 0.92135],
    [2.5, 0.699339, 0.819585, 0.96145],
    [3, 0.781428, 0.876457, 0.983053],
    [3.5, 0.847522, 0.917835, 0.993336],
    [4, 0.89766, 0.946666, 0.997661],
  ])('d′ %f: triangle %f, duo-trio %f, paired %f', (d, triangle, duoTrio, paired) => {
    expect(Math.abs(chanceCorrect('triangle', d) - triangle)).toBeLessThan(6e-7);
    expect(Math.abs(chanceCorrect('duo-trio', d) - duoTrio)).toBeLessThan(6e-7);
    expect(Math.abs(chanceCorrect('paired', d) - paired)).toBeLessThan(6e-7);
  });

  it.each([
    ['triangle', 0.4, 0.8791],
    ['triangle', 0.5, 1.4663],
    ['triangle', 0.75, 2.7974],
    ['triangle', 0.95, 4.8007],
    ['duo-trio', 0.6, 1.1152],
    ['duo-trio', 0.75, 2.02],
    ['duo-trio', 0.95, 4.0724],
    ['paired', 0.6, 0.3583],
    ['paired', 0.75, 0.9539],
    ['paired', 0.95, 2.3262],
  ] as const)('%s right with chance %f: d′ %f', (method, correct, d) => {
    expect(Math.abs(dPrimeAt(method, correct) - d)).toBeLessThan(6e-5);
  });
});
