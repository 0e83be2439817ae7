import { describe, expect, it } from 'vitest';
import { baseAlcohol } from '#core/ferment/base-alcohol.ts';

const unknown = { alcohol_pctVol: null, sugarStart_g_per_L: null, sugarNow_g_per_L: null };

describe('baseAlcohol(base)', () => {
  it('is what somebody gave, also when it is none', () => {
    expect(baseAlcohol({ ...unknown, alcohol_pctVol: 0.3 })).toEqual({ pctVol: 0.3, from: 'given' });
    expect(baseAlcohol({ alcohol_pctVol: 0, sugarStart_g_per_L: 60, sugarNow_g_per_L: 40 })).toEqual({
      pctVol: 0,
      from: 'given',
    });
  });
  it('is at most what the sugar that is gone can have made', () => {
    // Gay-Lussac with CIAAW's atomic weights: 1 g of sucrose gives 0.5383 g of ethanol; OIML R 22: 0.7892391 g/mL.
    const found = baseAlcohol({ ...unknown, sugarStart_g_per_L: 60, sugarNow_g_per_L: 40 });
    expect(found).toEqual({ pctVol: expect.closeTo((20 * 0.5383) / 7.892391, 3), from: 'fermented' });
    expect(baseAlcohol({ ...unknown, sugarStart_g_per_L: 60, sugarNow_g_per_L: 60 })?.pctVol).toBe(0);
    expect(baseAlcohol({ ...unknown, sugarStart_g_per_L: 800, sugarNow_g_per_L: 0 })?.pctVol).toBe(20);
  });
  it('is not known by one sugar alone', () => {
    expect(baseAlcohol(unknown)).toBeNull();
    expect(baseAlcohol({ ...unknown, sugarStart_g_per_L: 60 })).toBeNull();
    expect(baseAlcohol({ ...unknown, sugarNow_g_per_L: 60 })).toBeNull();
  });
});
