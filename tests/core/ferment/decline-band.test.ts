import { describe, expect, it } from 'vitest';
import { declineBand } from '#core/ferment/decline-band.ts';
import { sugarDecline } from '#core/ferment/sugar-decline.ts';
import { seededRandom } from '#core/numeric/seeded-random.ts';

function fitted(hours: readonly number[], sugars: readonly number[]) {
  const readings = hours.map((hour, place) => ({ hours: hour, sugar: sugars[place] ?? 0 }));
  const decline = sugarDecline(readings);
  if (!decline.ok) throw new Error(decline.reason.needs);
  return { decline: decline.value, readings };
}

describe('declineBand(decline, readings, at)', () => {
  // Reference: R 4.2.2, nls and the delta method, fixtures/decline-band.R; printed to 8 digits, both searches end within 1e-4.
  it.each([
    {
      model: 'first-order',
      hours: [0, 12, 24, 36, 48, 60],
      sugars: [8.1, 5.5, 4.1, 2.7, 2.1, 1.3],
      fit: [8.0470958, 3.3277867, 1.3761691],
      half: [0.3442488, 0.1929566, 0.1708928],
    },
    {
      model: 'logistic',
      hours: [0, 12, 24, 36, 48, 60, 72, 84],
      sugars: [6.4, 6.1, 5.6, 5.0, 4.3, 3.5, 2.6, 2.0],
      fit: [6.409945, 5.3308815, 3.4730555],
      half: [0.08907187, 0.05918648, 0.05626454],
    },
  ])('has the band of R’s nls for a $model fall', ({ model, hours, sugars, fit, half }) => {
    const { decline, readings } = fitted(hours, sugars);
    expect(decline.fitted.model.name).toBe(model);
    const band = declineBand(decline, readings, [0, 30, 60]);
    for (const [place, point] of band.entries()) {
      const wanted = fit[place] ?? Number.NaN;
      expect(Math.abs(point.value / wanted - 1)).toBeLessThan(1e-4);
      expect(Math.abs(((point.high ?? 0) - point.value) / (half[place] ?? Number.NaN) - 1)).toBeLessThan(1e-3);
      expect((point.low ?? 0) + (point.high ?? 0)).toBeCloseTo(2 * point.value, 9);
    }
  });

  it('covers the true curve in about 95 of 100 simulated jars', () => {
    const random = seededRandom(5);
    const hours = [0, 10, 20, 30, 40, 50];
    const truth = (hour: number) => 60 * Math.exp(-0.03 * hour);
    let inside = 0;
    const jars = 300;
    for (let jar = 0; jar < jars; jar += 1) {
      const noise = () => 1.2 * (Array.from({ length: 12 }, () => random.uniform()).reduce((a, b) => a + b) - 6);
      const { decline, readings } = fitted(
        hours,
        hours.map((hour) => truth(hour) + noise()),
      );
      const [point] = declineBand(decline, readings, [25]);
      if ((point?.low ?? 99) <= truth(25) && truth(25) <= (point?.high ?? 0)) inside += 1;
    }
    // Binomial: 285 of 300 expected, standard error 3.8; four of them either way.
    expect(inside).toBeGreaterThan(270);
    expect(inside).toBeLessThan(300);
  });

  it('widens away from the readings and never goes below zero', () => {
    const { decline, readings } = fitted([0, 8, 16, 24], [8, 7.6, 6.6, 6.5]);
    const [among, beyond, far] = declineBand(decline, readings, [12, 60, 400]);
    const width = (point: typeof among) => (point?.high ?? 0) - (point?.value ?? 0);
    expect(width(beyond)).toBeGreaterThan(width(among));
    expect(far?.low).toBe(0);
  });
});
