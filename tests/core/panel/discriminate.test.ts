import { describe, expect, it } from 'vitest';
import { discriminate } from '#core/panel/apart/discriminate.ts';
import { discriminationPower, trialsNeeded } from '#core/panel/apart/discrimination-power.ts';
import { presentationOrders } from '#core/panel/apart/presentation-orders.ts';
import { chanceCorrect } from '#core/panel/apart/thurstone.ts';
import { RefusedInput } from '#core/panel/refused-input.ts';
import { panelRequests } from '#shared/contract/panel.ts';

const methods = ['triangle', 'duo-trio', 'paired', 'paired-two-sided'] as const;

describe('discriminate', () => {
  it('below chance: d′ is 0 and says so; perfect: d′ is null and says so', () => {
    const below = discriminate({ method: 'duo-trio', correct: 10, trials: 30 });
    expect([below.dPrime, below.dPrimeLow]).toEqual([0, 0]);
    expect(below.reasons).toEqual([expect.objectContaining({ path: ['dPrime'], code: 'below-chance' })]);
    const perfect = discriminate({ method: 'triangle', correct: 12, trials: 12 });
    expect([perfect.dPrime, perfect.dPrimeHigh]).toEqual([null, null]);
    expect(perfect.dPrimeLow).toBeGreaterThan(2);
    expect(perfect.reasons.map(({ code }) => code)).toEqual(['perfect-score', 'perfect-score']);
  });

  it('the ends of the interval have the likelihood the chi-square limit asks for', () => {
    const { dPrime, dPrimeLow, dPrimeHigh } = discriminate({ method: 'triangle', correct: 22, trials: 36 });
    const log = (d: number | null): number => {
      const chance = chanceCorrect('triangle', d ?? Number.NaN);
      return 22 * Math.log(chance) + 14 * Math.log(1 - chance);
    };
    // 3.841459: the 95 % point of chi-square on one degree of freedom.
    expect(2 * (log(dPrime) - log(dPrimeLow))).toBeCloseTo(3.841459, 5);
    expect(2 * (log(dPrime) - log(dPrimeHigh))).toBeCloseTo(3.841459, 5);
    expect(chanceCorrect('triangle', dPrime ?? 0)).toBeCloseTo(22 / 36, 10);
  });

  it('refuses more correct than trials, and a two-sided count of the less chosen, at their path', () => {
    for (const wrong of [
      { method: 'triangle', correct: 13, trials: 12 },
      { method: 'paired-two-sided', correct: 5, trials: 12 },
    ] as const) {
      expect(() => discriminate(wrong)).toThrow(RefusedInput);
      expect(panelRequests['panel:discriminate'].input.safeParse(wrong).error?.issues[0]?.path).toEqual(['correct']);
    }
  });

  it('keeps to the contract for every count of small tests and for a million trials', () => {
    const { input, output } = panelRequests['panel:discriminate'];
    for (const method of methods) {
      for (let trials = 1; trials <= 9; trials += 1) {
        for (let correct = 0; correct <= trials; correct += 1) {
          const asked = input.safeParse({ method, correct, trials });
          if (asked.success) output.parse(discriminate(asked.data));
          else expect([method, 2 * correct < trials]).toEqual(['paired-two-sided', true]);
        }
      }
      output.parse(discriminate({ method, correct: 700_000, trials: 1_000_000 }));
    }
  });
});

describe('discriminationPower and trialsNeeded', () => {
  it('without a difference the power is the chance of a false find, never above alpha', () => {
    for (const method of methods) {
      for (const trials of [7, 24, 60]) expect(discriminationPower(method, 0, trials, 0.05)).toBeLessThanOrEqual(0.05);
    }
  });

  it('the fewest trials are enough, and one less is not', () => {
    for (const method of methods) {
      const needed = trialsNeeded(method, 1.5, 0.05, 0.8, 2000) ?? 0;
      expect(discriminationPower(method, 1.5, needed, 0.05)).toBeGreaterThanOrEqual(0.8);
      expect(discriminationPower(method, 1.5, needed - 1, 0.05)).toBeLessThan(0.8);
    }
    expect(trialsNeeded('triangle', 0.1, 0.05, 0.8, 200)).toBeNull();
  });
});

describe('presentationOrders', () => {
  it.each([
    ['triangle', 6],
    ['duo-trio', 4],
    ['paired', 2],
  ] as const)('%s uses its %i orders equally often', (method, orders) => {
    for (const trials of [orders, 5 * orders, 5 * orders + 1]) {
      const drawn = presentationOrders(method, trials, 3);
      const counts = [...Map.groupBy(drawn, (order) => order).values()].map(({ length }) => length);
      expect(drawn).toHaveLength(trials);
      expect(counts).toHaveLength(orders);
      expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
    }
  });
});
