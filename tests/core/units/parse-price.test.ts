import { describe, expect, it } from 'vitest';
import { parsePrice } from '#core/units/parse-price.ts';

const priced = (text: string) => {
  const read = parsePrice(text);
  return read.ok ? read.value : read.problem.code;
};

describe('parsePrice(text)', () => {
  it.each([
    ['12.50 per kg', { price_per_kg: 12.5 }],
    ['12,50 € / kg', { price_per_kg: 12.5 }],
    ['€3/L', { price_per_L: 3 }],
    ['3 for 500 g', { price_per_kg: 6 }],
    ['USD 0 per kg', { price_per_kg: 0 }],
    ['2 per 1/2 L', { price_per_L: 4 }],
  ])('reads %s', (text, price) => expect(priced(text)).toEqual(price));
  it('reads pounds and gallons by their exact size', () => {
    // The pound is 0.45359237 kg, the US gallon 3.785411784 L (NIST SP 811, appendix B).
    expect(priced('$4.5359237 a lb')).toEqual({ price_per_kg: expect.closeTo(10, 9) });
    expect(priced('3.785411784 per gallon')).toEqual({ price_per_L: expect.closeTo(1, 9) });
  });
  it.each([
    ['12.50', 'unit-missing'],
    ['-3 per kg', 'negative'],
    ['cheap', 'not-a-number'],
    ['3 per cloud', 'unit-unknown'],
    ['3 per 20 °C', 'wrong-kind'],
    ['3 per piece', 'wrong-kind'],
    ['3 per 0 g', 'wrong-kind'],
    ['9999999 per kg', 'out-of-range'],
    ['3 per kg or so', 'unit-unknown'],
  ])('says what is unclear in %s', (text, code) => expect(priced(text)).toBe(code));
});
