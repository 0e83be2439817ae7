import { describe, expect, it } from 'vitest';
import type { SugarReading } from '#core/ferment/decline-models.ts';
import { simplexSearch } from '#core/ferment/simplex-search.ts';
import { studentQuantile975 } from '#core/ferment/student-quantile-975.ts';
import { sugarAt, sugarDecline } from '#core/ferment/sugar-decline.ts';
import { timeToSweetness } from '#core/ferment/time-to-sweetness.ts';
import { seededRandom } from '#core/numeric/seeded-random.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

const at = (hours: number[], curve: (t: number) => number): SugarReading[] =>
  hours.map((t) => ({ hours: t, sugar: curve(t) }));
const firstOrder = (t: number) => 60 * Math.exp(-0.03 * t);
const logistic = (t: number) => 62 / (1 + Math.exp(0.15 * (t - 30)));
const day = [0, 8, 16, 24, 32, 40, 48];

describe('sugarDecline', () => {
  it('finds the curve that made the readings', () => {
    const one = sugarDecline(at(day, firstOrder));
    expect(one.ok && one.value.fitted.model.name).toBe('first-order');
    if (one.ok) {
      expect(one.value.fitted.height).toBeCloseTo(60, 4);
      expect(Math.exp(one.value.fitted.shape[0] ?? 0)).toBeCloseTo(0.03, 6);
    }
    const two = sugarDecline(at(day, logistic));
    expect(two.ok && two.value.fitted.model.name).toBe('logistic');
    if (two.ok) expect(sugarAt(two.value, 30)).toBeCloseTo(31, 3);
  });
  it('lets a model compete only when there are readings enough for its AICc', () => {
    const four = sugarDecline(at([0, 16, 32, 48], logistic));
    expect(four.ok && four.value.aicc).toEqual({ firstOrder: null, logistic: null });
    expect(four.ok && four.value.fitted.model.name).toBe('first-order');
    const five = sugarDecline(at([0, 12, 24, 36, 48], logistic));
    expect(five.ok && five.value.aicc.logistic).toBeNull();
  });
  it('has the AICc of the textbook formula', () => {
    const readings = at(day, (t) => firstOrder(t) + (t % 16 === 0 ? 0.5 : -0.5));
    const found = sugarDecline(readings);
    if (!found.ok) throw new Error('not fitted');
    const squares = readings.reduce((sum, one) => sum + (one.sugar - sugarAt(found.value, one.hours)) ** 2, 0);
    // n = 7 readings, K = 3 (height, rate, spread).
    expect(found.value.aicc.firstOrder).toBeCloseTo(7 * Math.log(squares / 7) + 6 + 24 / 3, 6);
  });
  it('says why it draws no curve', () => {
    expect(sugarDecline(at([0, 10, 20], firstOrder))).toMatchObject({
      ok: false,
      reason: { code: 'too-few-readings' },
    });
    expect(sugarDecline(at([5, 5, 5, 5], firstOrder))).toMatchObject({
      ok: false,
      reason: { code: 'too-few-readings' },
    });
    expect(sugarDecline(at(day, () => 40))).toMatchObject({ ok: false, reason: { code: 'no-decline' } });
    expect(sugarDecline(at(day, (t) => 40 + t))).toMatchObject({ ok: false, reason: { code: 'no-decline' } });
  });
  it('throws on a negative reading', () => {
    expect(() => sugarDecline(at(day, () => -1))).toThrow(OutOfDomain);
  });
});

describe('timeToSweetness', () => {
  it('is where the curve passes the wanted sweetness', () => {
    const found = timeToSweetness(at(day, firstOrder), 20);
    expect(found.ok && found.value.hours).toBeCloseTo(Math.log(3) / 0.03, 4);
  });
  it('gives a reason for a sweetness the jar never had or will not reach', () => {
    for (const wanted of [1e4, 0, 1e-9]) {
      expect(timeToSweetness(at(day, firstOrder), wanted)).toMatchObject({
        ok: false,
        reason: { code: 'target-not-reached' },
      });
    }
  });
  it('covers the truth in about 95 of 100 simulated jars', () => {
    const random = seededRandom(11);
    let inside = 0;
    const jars = 300;
    for (let jar = 0; jar < jars; jar += 1) {
      // Sum of twelve uniforms less six: near enough to normal, spread 1.2 g/L.
      const noise = () => 1.2 * (Array.from({ length: 12 }, () => random.uniform()).reduce((a, b) => a + b) - 6);
      const found = timeToSweetness(
        at([0, 10, 20, 30, 40], (t) => Math.max(0, firstOrder(t) + noise())),
        25,
      );
      if (!found.ok) continue;
      const truth = Math.log(60 / 25) / 0.03;
      if ((found.value.low ?? -1e9) <= truth && truth <= (found.value.high ?? 1e9)) inside += 1;
    }
    // Binomial: 95 % of 300 is 285, standard error 3.8; four of them either way.
    expect(inside).toBeGreaterThan(285 - 15);
    expect(inside).toBeLessThan(300);
  });
  it('leaves an end open when the readings do not bound it', () => {
    const loose = at([0, 8, 16, 24], (t) => 40 - 0.05 * t + (t % 16 === 0 ? 3 : -3));
    const found = timeToSweetness(loose, 38);
    expect(found.ok && (found.value.low === null || found.value.high === null)).toBe(true);
  });
});

describe('studentQuantile975', () => {
  // Printed tables of Student's t (from memory).
  it.each([
    [1, 12.706],
    [2, 4.303],
    [10, 2.228],
    [11, 2.201],
    [12, 2.179],
    [20, 2.086],
    [30, 2.042],
    [60, 2.0],
    [120, 1.98],
  ])('for %f degrees of freedom is %f', (freedom, value) => {
    expect(Math.abs(studentQuantile975(freedom) - value)).toBeLessThan(0.0006);
  });
  it('throws for no freedom', () => {
    expect(() => studentQuantile975(0)).toThrow(OutOfDomain);
  });
});

describe('simplexSearch', () => {
  it('finds the floor of Rosenbrock’s valley', () => {
    // Rosenbrock (1960): the minimum of 100(y − x²)² + (1 − x)² is 0 at (1, 1).
    const found = simplexSearch(([x = 0, y = 0]) => 100 * (y - x * x) ** 2 + (1 - x) ** 2, [-1.2, 1], [0.5, 0.5]);
    expect(found.point[0]).toBeCloseTo(1, 4);
    expect(found.point[1]).toBeCloseTo(1, 4);
  });
});
