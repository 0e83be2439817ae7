import { describe, expect, it } from 'vitest';
import { shownSpan, typedPressure, typedSpan, typedWeight } from '#renderer/format/typed-cellar.ts';

// Factors: NIST SP 811 (2008), appendix B: 1 lb = 453.59237 g, 1 psi = 6.894757 kPa.

describe('typedWeight(text, system)', () => {
  it('reads weights as people write them, a bare number in the kitchen’s own unit', () => {
    expect(typedWeight('½ lb', 'us')).toEqual({ kind: 'amount', value: expect.closeTo(226.796185, 6) });
    expect(typedWeight('210', 'metric')).toEqual({ kind: 'amount', value: 210 });
    expect(typedWeight('8', 'us')).toEqual({ kind: 'amount', value: expect.closeTo(226.796185, 6) });
    expect(typedWeight(' ', 'us')).toEqual({ kind: 'none' });
  });

  it('says what is wrong with anything else', () => {
    for (const text of ['0 g', '3 cups', 'heavy', '200 g wet']) {
      expect(typedWeight(text, 'metric').kind, text).toBe('fault');
    }
  });
});

describe('typedPressure(text, system)', () => {
  it('reads bar and psi', () => {
    expect(typedPressure('60 psi', 'metric')).toEqual({ kind: 'amount', value: expect.closeTo(4.136854, 5) });
    expect(typedPressure('4', 'metric')).toEqual({ kind: 'amount', value: 4 });
    expect(typedPressure('0 bar', 'metric').kind).toBe('fault');
  });
});

describe('typedSpan(text, low, high)', () => {
  it('reads days, hours and weeks, a bare number as days, and writes them again', () => {
    const read = (text: string) => typedSpan(text, 1, 8784);
    expect(read('2 days')).toEqual({ kind: 'amount', value: 48 });
    expect(read('36 h')).toEqual({ kind: 'amount', value: 36 });
    expect(read('1 week')).toEqual({ kind: 'amount', value: 168 });
    expect(read('1½')).toEqual({ kind: 'amount', value: 36 });
    expect(read('2 moons').kind).toBe('fault');
    expect(read('0.5 h').kind).toBe('fault');
    expect([48, 24, 36].map(shownSpan)).toEqual(['2 days', '1 day', '36 h']);
  });
});
