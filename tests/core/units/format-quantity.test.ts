import { describe, expect, it } from 'vitest';
import { formatQuantity } from '#core/units/format-quantity.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import { fc } from '#tests/properties.ts';

describe('formatQuantity', () => {
  it.each([
    [75, 'mass', 'metric', '75 g'],
    [2.5, 'mass', 'metric', '2.5 g'],
    [1500, 'mass', 'metric', '1.5 kg'],
    [999.6, 'volume', 'metric', '1 L'],
    [850, 'volume', 'metric', '850 mL'],
    [236.588, 'volume', 'us', '1 cup'],
    [118.294, 'volume', 'us', '1/2 cup'],
    [354.88, 'volume', 'us', '1 1/2 cups'],
    [946.35, 'volume', 'us', '1 qt'],
    [14.787, 'volume', 'us', '1 tbsp'],
    [2.4645, 'volume', 'us', '1/2 tsp'],
    [0, 'volume', 'us', '0 tsp'],
    [113.4, 'mass', 'us', '4 oz'],
    [453.59, 'mass', 'us', '1 lb'],
    [20, 'temperature', 'us', '68 °F'],
    [-18, 'temperature', 'metric', '−18 °C'],
    [1, 'pressure', 'us', '15 psi'],
    [1.0456, 'sg', 'us', '1.046'],
    [12.34, 'brix', 'metric', '12.3 °Bx'],
  ] as const)('shows %f of %s in %s as %s', (value, dimension, system, text) => {
    expect(formatQuantity(value, dimension, system)).toBe(text);
  });
  it('shows a dash for what is not a number', () => {
    expect(formatQuantity(Number.NaN, 'mass', 'metric')).toBe('–');
  });
  it('is read back within half of its smallest step', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 50_000, noNaN: true }), fc.constantFrom('metric', 'us'), (value, system) => {
        const read = parseQuantity(formatQuantity(value, 'volume', system), 'volume');
        expect(read.ok).toBe(true);
        const half =
          system === 'metric'
            ? value < 999
              ? 0.5
              : 5
            : value < 14
              ? 0.62
              : value < 58
                ? 1.85
                : value < 930
                  ? 14.8
                  : 59.2;
        if (read.ok) expect(Math.abs(read.value.stored - value)).toBeLessThanOrEqual(half + 0.01);
      }),
    );
  });
});
