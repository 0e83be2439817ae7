import { describe, expect, it } from 'vitest';
import { acidFactor_g_per_meq, acidity, titrationEndPoints } from '#core/ferment/acidity.ts';
import { readingCautions } from '#core/ferment/reading-cautions.ts';
import { mouldCaution, sellingCaution, tapWaterCaution, waterCautions } from '#core/ferment/standing-cautions.ts';
import { OutOfDomain } from '#core/out-of-domain.ts';

describe('titratable acidity', () => {
  // AOAC 942.15, grams of acid per milliequivalent, as printed to three decimals.
  it.each([
    ['lactic', 0.09],
    ['acetic', 0.06],
    ['malic', 0.067],
    ['tartaric', 0.075],
    // AOAC prints 0.070 for citric acid monohydrate; the anhydrous acid is 64.041 g per equivalent.
    ['citric', 0.064],
  ] as const)('counts %s acid at %f g/meq', (acid, factor) => {
    expect(Math.abs(acidFactor_g_per_meq[acid] - factor)).toBeLessThan(0.0005);
  });
  it('12 mL of 0.1 N on 15 mL, as tartaric, is 6.0 g/L', () => {
    const found = acidity({ titrant_mL: 12, normality: 0.1, sample_mL: 15, acid: 'tartaric' });
    expect(found.meq_per_L).toBeCloseTo(80, 9);
    expect(found.g_per_L).toBeCloseTo(6.0, 2);
  });
  it('keeps the published ratios to citric acid: malic 1.047, tartaric 1.172', () => {
    expect(acidFactor_g_per_meq.malic / acidFactor_g_per_meq.citric).toBeCloseTo(1.0469, 3);
    expect(acidFactor_g_per_meq.tartaric / acidFactor_g_per_meq.citric).toBeCloseTo(1.1718, 3);
  });
  it('names its end points', () => {
    expect(titrationEndPoints.aoac).toContain('8.1');
    expect(titrationEndPoints.oiv).toContain('7.0');
  });
  it('throws on no sample', () => {
    expect(() => acidity({ titrant_mL: 1, normality: 0.1, sample_mL: 0, acid: 'lactic' })).toThrow(OutOfDomain);
    expect(() => acidity({ titrant_mL: Number.NaN, normality: 0.1, sample_mL: 1, acid: 'lactic' })).toThrow(
      OutOfDomain,
    );
  });
});

describe('cautions about pH, water and selling', () => {
  const codes = (pH: number[], drink?: 'kombucha') =>
    readingCautions(
      pH.map((value, hours) => ({ hours, pH: value })),
      drink,
    ).map((one) => one.code);
  // 21 CFR 114.3: an acid food has an equilibrium pH of 4.6 or below.
  it('caution above 4.6 and not at it', () => {
    expect(codes([4.61])).toEqual(['ph-high']);
    expect(codes([4.6])).toEqual([]);
    expect(codes([])).toEqual([]);
  });
  it('caution a rise, not the noise of a meter', () => {
    expect(codes([3.6, 3.3, 3.6])).toEqual(['ph-rising']);
    expect(codes([3.6, 3.3, 3.35])).toEqual([]);
  });
  // Niagara Region Public Health, Kombucha best practices: above 2.5 and never above 4.2.
  it('show the guidance for kombucha only to kombucha', () => {
    expect(codes([4.4], 'kombucha')).toEqual(['ph-guidance']);
    expect(codes([2.4], 'kombucha')).toEqual(['ph-guidance']);
    expect(codes([4.4])).toEqual([]);
    expect(codes([3.2], 'kombucha')).toEqual([]);
  });
  // EPA, 40 CFR 141.65: up to 4.0 mg/L of chlorine or chloramine.
  it('caution water with a residual, with its basis', () => {
    expect(waterCautions(2)[0]?.basis).toContain('4.0 mg/L');
    expect(waterCautions(0)).toEqual([]);
    expect(tapWaterCaution().message).toContain('up to 4 mg/L');
    expect(tapWaterCaution().basis).toContain('40 CFR 141.65');
    expect(mouldCaution().message).toMatch(/discard the whole jar.*Film yeast is not mould.*in doubt, discard/);
  });
  it('send whoever sells to their authority', () => {
    expect(sellingCaution().message).toMatch(/local authority or a licensed process authority/);
  });
});
