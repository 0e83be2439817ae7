import { describe, expect, it } from 'vitest';
import { parseNumber } from '#core/units/parse-number.ts';
import { parseQuantity } from '#core/units/parse-quantity.ts';
import { units } from '#core/units/unit-table.ts';
import { fc } from '#tests/properties.ts';

function stored(text: string): number | string {
  const read = parseQuantity(text);
  return read.ok ? read.value.stored : read.problem.code;
}

describe('parseNumber', () => {
  it.each([
    ['75', 75],
    ['1.5', 1.5],
    ['1,5', 1.5],
    ['0,125', 0.125],
    ['.5', 0.5],
    ['1/2', 0.5],
    ['1 1/2', 1.5],
    ['½', 0.5],
    ['1½', 1.5],
    ['1 ⅔', 5 / 3],
    ['−18', -18],
    ['-1/2', -0.5],
    ['3 cups', 3],
    ['12.5g', 12.5],
  ])('reads %s as %f', (text, value) => {
    expect(parseNumber(text)?.value).toBeCloseTo(value, 12);
  });
  it.each(['', 'cup', '1,500', '1/0', '1.2.3', '1/2/3', '--3', 'NaN', 'Infinity'])('refuses %s', (text) => {
    expect(parseNumber(text)).toBeNull();
  });
  it('hands back what stands after the number', () => {
    expect(parseNumber('1 1/2 tbsp honey')).toEqual({ value: 1.5, rest: 'tbsp honey' });
  });
  it('reads back every decimal it is given', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 99_999 }), fc.integer({ min: 0, max: 99 }), (whole, part) => {
        const text = `${whole}.${String(part).padStart(2, '0')}`;
        expect(parseNumber(text)?.value).toBe(Number(text));
      }),
    );
  });
});

describe('parseQuantity', () => {
  it.each([
    ['1/2 cup', 118.29411825],
    ['½ qt', 473.176473],
    ['1 1/2 tbsp', 22.18014717],
    ['75 g', 75],
    ['75g', 75],
    ['1,5 L', 1500],
    ['2 fl. oz', 59.147059125],
    ['2 fl oz', 59.147059125],
    ['1 lb', 453.59237],
    ['4 oz', 113.3980925],
    ['68 °F', 20],
    ['68° F', 20],
    ['-18 C', -18],
    ['12 °Bx', 12],
    ['30 psi', 2.0684271879],
    ['50 g/L', 50],
  ])('reads %s', (text, wanted) => {
    expect(stored(text)).toBeCloseTo(wanted, 7);
  });
  it.each([
    ['-300 °C', 'below-absolute-zero'],
    ['-460 °F', 'below-absolute-zero'],
    ['-5 g', 'negative'],
    ['75', 'unit-missing'],
    ['75 bananas', 'unit-unknown'],
    ['some', 'not-a-number'],
  ])('refuses %s as %s', (text, code) => {
    expect(stored(text)).toBe(code);
  });
  it('refuses a volume where a mass is needed, naming both', () => {
    const read = parseQuantity('1 cup', 'mass');
    expect(read).toMatchObject({
      ok: false,
      problem: { code: 'wrong-kind', message: expect.stringMatching(/volume.*mass/) },
    });
  });
  it('takes the assumed unit for a bare number only', () => {
    expect(parseQuantity('2', 'volume', units.cup)).toMatchObject({
      ok: true,
      value: { stored: units.cup.factor * 2 },
    });
    expect(parseQuantity('2 tbsp', 'volume', units.cup)).toMatchObject({
      ok: true,
      value: { stored: units.tbsp.factor * 2 },
    });
  });
  it('never reads two numbers as one', () => {
    expect(stored('1.5.2 g')).toBe('not-a-number');
  });
});
