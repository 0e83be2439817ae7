import { describe, expect, it } from 'vitest';
import { inBothSystems } from '#core/units/in-both-systems.ts';

describe('inBothSystems(stored, dimension)', () => {
  it('says a quantity in metric and US measures', () => {
    // NIST SP 811: 1 bar is 14.5038 psi; a US quart is 946.3529 mL; 22 °C is 71.6 °F.
    expect(inBothSystems(3, 'pressure')).toBe('3 bar (44 psi)');
    expect(inBothSystems(946.3529, 'volume')).toBe('946 mL (1 qt)');
    expect(inBothSystems(22, 'temperature')).toBe('22 °C (72 °F)');
    // 28.349523 g in 3.785412 L.
    expect(inBothSystems(7.489, 'concentration')).toBe('7.5 g/L (1 oz/gal)');
  });
  it('says a dash for what is no number', () => {
    expect(inBothSystems(Number.NaN, 'volume')).toBe('– (–)');
  });
});
